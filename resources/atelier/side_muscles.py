"""Shoulder from the side: muscles of neck and trunk (simply), forearm, arm, deltoid in three parts."""

from engrave import Line, between, feather, fibres, mix, pen, ramp, ribbon, rim
from side_frame import BACK, FRONT, fore
from side_head import SCM_BACK, SCM_FRONT, TRAPEZIUS
from side_tools import rise, soft

# -- deltoid: origin line, borders, insertion ---------------------------------------------------
DELT_FRONT = [(285, 198), (293, 208), (297, 224), (298, 243), (296, 267), (289, 295), (277, 324), (262, 350), (247, 372)]
DELT_BACK = [(171, 222), (177, 236), (181.5, 254), (186, 277), (194, 304), (206, 330), (221, 354), (234, 372)]
DELT_TOP = [(171, 222), (190, 211.5), (214, 203), (240, 199.5), (260, 198), (267.5, 193.5), (276, 192.5), (285, 198)]
DELTOID = [(*DELT_TOP[0], "c"), *DELT_TOP[1:-1], (*DELT_TOP[-1], "c"), *DELT_FRONT[1:],
           (244, 378), (242, 380.5), (239.6, 378), *DELT_BACK[:0:-1]]


def muscle(p, shape, wash, thick=1.4, thin=.28, press=None):
    p.area(shape, wash)
    p.ink(rim(shape, thin, thick, press=press), "muscle-line")


def shade(p, inner, edge, tone="muscle-shade", opacity=.2, steps=3, profile=None):
    p.areas_of(feather(inner, edge, steps, profile), tone, opacity)


def lines(p, guides, n, w=.6, op=.75, **k):
    p.ink(fibres(guides, n, w, **k), "muscle-line", op)


def glints(p, guides, n, w=.9, op=.55, **k):
    p.ink(fibres(guides, n, w, lift=.5, seed=.55, **k), "muscle-light", op)


def washes(p):
    a, b = (250, 150), (262, 95)
    p.linear("wash.neck", "trunk", a, b, [(0, "muscle-shade"), (0.9, "muscle-shade", 0)])
    p.linear("wash.trap", "trunk", a, b, [(0, "muscle-light"), (0.9, "muscle-light", 0)])
    p.linear("wash.strap", "trunk", a, b, [(0, "muscle-base"), (0.9, "muscle-base", 0)])
    p.linear("wash.flank", "trunk", (240, 380), (240, 476), [(0, "muscle-base"), (0.2, "muscle-base"), (1, "muscle-base", 0)])
    p.linear("wash.lat", "trunk", (240, 380), (240, 474), [(0, "muscle-light"), (0.2, "muscle-light"), (1, "muscle-light", 0)])
    p.linear("wash.pec", "trunk", (290, 230), (362, 290), [(0, "muscle-base"), (0.35, "muscle-light"), (1, "muscle-shade")])
    p.linear("wash.deltoid", "arm", (176, 240), (300, 268),
             [(0, "muscle-base"), (0.27, "muscle-light"), (0.6, "muscle-base"), (1, "muscle-shade")])
    p.linear("wash.triceps", "arm", (190, 400), (240, 404), [(0, "muscle-base"), (0.35, "muscle-light"), (1, "muscle-base")])
    p.linear("wash.biceps", "arm", (258, 400), (291, 404), [(0, "muscle-light"), (0.4, "muscle-base"), (1, "muscle-shade")])
    p.linear("wash.fore.muscle", "forearm", fore(80, 42), fore(80, -40),
             [(0, "muscle-base"), (0.3, "muscle-light"), (0.62, "muscle-base"), (1, "muscle-shade")])


def neck(p):
    p.on("muscle", "trunk")
    p.area([(206, 92), (203, 118), (196, 142), (186, 164), (190, 186), (214, 195), (240, 189), (262, 182.5), (279, 183.5),
            (293, 193), (301, 197), (301, 190), (304, 178), (312, 146),
            (314, 128), (322, 119), (300, 112), (270, 96), (240, 84)], "wash.neck")
    p.area([(309, 122, "c"), (312, 146), (305, 172), (300, 190), (292, 184), (292, 160), (296, 134)], "wash.strap")
    lines(p, [[(299, 128), (310, 128)], [(294, 160), (307, 162)], [(294, 184), (300, 188)]], 4, .45, .6)
    # the same sternomastoid as on the skin: a round cord to the breastbone, a flatter head to the clavicle
    f, b = Line(SCM_FRONT), Line(SCM_BACK)
    fr, bk = f.part(.17, .97), b.part(.17, .98)
    p.area([(*fr[0], "c"), *fr[1:-1], (300, 195, "c"), (296.6, 191), (291, 176), (287, 166, "c"), (285.4, 176), (284, 186, "c"), (277, 183.4), (*bk[-1], "c"),
            *bk[-2:0:-1], (*bk[0], "c")], "wash.strap")
    p.area(ribbon([(292, 172), (296.6, 183), (299.8, 196)], [.4, 2.4, 2.6]), "tendon", .85)
    lines(p, [[b(.2), f(.2)], [b(.55), f(.55)], [(270, 170), (290, 170)], [(274, 183), (283, 185)]], 6, .5, .7, v1=.8, lift=.2)
    lines(p, [[b(.3), f(.3)], [b(.6), f(.6)], [(286, 166), (294, 176)], [(297, 188), (299.6, 190)]], 4, .5, .7, v0=.55, lift=.2)
    p.ink([pen(f.part(.2, 1), [.05, .7, 1.0, 1.0, .3]), pen(b.part(.2, .98), [.05, .4, .6, .3]), pen([(287, 164), (285.6, 175), (284, 186)], [.05, .7, .4])],
          "muscle-line")
    p.on("muscle", "trunk", "trapezius", "Trapezius")
    trap = [(206, 96, "c"), (204, 118), (197, 142), (187, 160), (175, 178), (161, 202), (149, 229), (141, 262), (138.5, 300),
            (140, 340), (147, 378, "c"), (153, 330), (158, 280), (163, 246), (168, 229), (190, 207), (214, 195.5), (242, 189.5), (258, 183.5), (268, 181.5),
            (262, 178), (251, 165), (241, 148), (232.5, 128), (226, 106), (224, 92, "c")]
    p.area(trap, "wash.trap")
    p.ink(pen(Line(TRAPEZIUS).part(.1, 1), [.05, .7, .9, .8, .2]), "muscle-line")
    p.ink(pen([(267, 181.5), (258, 183.5), (242, 189.5), (214, 195.5), (190, 207), (168, 229), (160, 258), (155, 310), (147, 378)],
              [.3, .7, .8, .7, .9, .9, .7, .05]), "muscle-line")
    p.ink(pen([(204, 116), (197, 142), (187, 160), (175, 178), (161, 202), (149, 229), (141, 262), (138.5, 300), (140, 340), (147, 376)],
              [.05, .3, .4, .4, .4, .4, .4, .3, .05]), "muscle-line")
    lines(p, [[(204, 122), (229, 122)], [(197, 148), (241, 148)], [(206, 188), (258, 176)], [(216, 194), (262, 182)]], 6, .5, .7, lift=.22)
    lines(p, [[(150, 230), (186, 164)], [(158, 228), (199, 182)], [(170, 224), (212, 197)]], 4, .45, .65, lift=.25)
    lines(p, [[(141, 268), (147, 360)], [(150, 252), (151, 330)], [(160, 238), (158, 270)]], 3, .45, .65, lift=.2)
    shade(p, [(232, 110), (246, 150), (262, 182)], [(222, 110), (228, 152), (236, 190)], "muscle-light", .12, 3)


def torso(p):
    p.on("muscle", "trunk")
    back, front = Line(BACK), Line(FRONT)
    body = [*back.shifted(-4.5, .44, .735), *front.shifted(4.5, .47, .70)[::-1], (300, 288), (280, 296), (262, 306, "c"), (262, 386, "c"), (236, 386, "c"), (220, 312, "c"), (200, 322), (168, 330), (152, 300)]
    p.area(body, "wash.flank")
    # infraspinatus and teres minor converge on the greater tubercle; teres major passes before the long triceps head
    infra = [(160, 244, "c"), (175, 233), (190, 225), (206, 216), (218, 212.6), (223, 216, "c"), (221, 228), (213, 250), (199, 276), (180, 304), (160, 318), (156.4, 282)]
    muscle(p, infra, "muscle-light", .9)
    lines(p, [[(161, 246), (159, 312)], [(182, 231), (190, 286)], [(206, 219), (211, 250)], [(220, 215), (221, 226)]], 8, .5, .75, lift=.22)
    for k in range(3):
        p.ink(pen([(211 - k, 219 + 4.5 * k), (217, 217 + 3.6 * k), (222.4 - .3 * k, 216.6 + 3 * k)], [.05, 1.6, 1.2]), "tendon", .75)
    minor = [(184, 300, "c"), (199, 275), (212, 251), (220, 231), (222.6, 236), (220.4, 249), (210, 268), (196, 292), (188, 304)]
    muscle(p, minor, "muscle-light", 1.0)
    lines(p, [[(186, 300), (190, 302)], [(206, 263), (211, 266)], [(220, 235), (221, 243)]], 3, .45, .7, lift=.15)
    teres = [(158, 322, "c"), (178, 307), (196, 292), (214, 283), (225, 279, "c"), (226, 289, "c"), (216, 299), (204, 309), (186, 325), (166, 342), (156, 341)]
    muscle(p, teres, "muscle-base", 1.0)
    lines(p, [[(159, 324), (159, 339)], [(186, 304), (192, 320)], [(222, 281), (223, 290)]], 4, .45, .7, lift=.15)
    lat = [(153, 344, "c"), (166, 341), (186, 325), (206, 308), (222, 300), (224, 330), (214, 372), (203, 420), (196, 474, "c"), (150, 474, "c"), (145, 420), (143, 372)]
    p.area(lat, "wash.lat")
    lines(p, [[(146, 376), (152, 440), (192, 440)], [(164, 350), (178, 378), (204, 388)], [(202, 315), (208, 320), (216, 324)]], 6, .5, .7, lift=.2)
    p.ink(pen([(206, 308), (186, 325), (166, 341), (153, 344)], [.2, .9, .9, .1]), "muscle-line")
    p.ink(pen([(222, 322), (214, 372), (204, 420), (200, 450)], [.3, 1.1, .8, .05]), "muscle-line")
    # serratus: four blunt slips, each locking with a slip of the outer oblique
    for k, (x0, y0, x1, y1) in enumerate(((282, 340, 322, 362), (281, 366, 321, 391), (279, 393, 316, 419), (278, 420, 310, 443))):
        f = [(x0, y0, "c"), (x0 + 18, y0 + 4), (x1 - 4, y1 - 8), (x1, y1 - 1), (x1 - 4, y1 + 3), (x0 + 22, y0 + 20), (x0, y0 + 22, "c")]
        p.area(f, "wash.lat", .6)
        p.ink(pen([q[:2] for q in f], [.05, .5, .9, 1.0, .6, .05]), "muscle-line", ramp(k, (0, .5), (3, .2)))
        lines(p, [[(x0, y0 + 4), (x0, y0 + 19)], [(x0 + 20, y0 + 8), (x0 + 20, y0 + 18)], [(x1 - 3, y1 - 5), (x1 - 3, y1)]], 3, .4, .6)
    lines(p, [[(322, 368), (316, 424)], [(338, 390), (332, 440)], [(350, 410), (344, 444)]], 6, .45, .6, lift=.2)
    edge = front.part(.34, .66)
    shade(p, Line(edge).shifted(22), Line(edge).shifted(4.5), "muscle-shade", .2, 4, lambda s: ramp(s, (0, 0), (.4, 1), (.8, .8), (1, 0)))
    p.ink(pen(Line(edge).shifted(4.5), [.3, 1.0, 1.5, 1.8, 1.4, .05]), "muscle-line")
    p.ink(pen(back.shifted(-4.5, .5, .72), [.05, .5, .4, .05]), "muscle-line")
    p.on("muscle", "trunk", "pectoralis-major", "Pectoralis major")
    # two parts with a split between; flat lower border from the arm to the front; the tendon to the crest of the bone
    low = [(357, 334), (342, 331), (326, 324), (312, 314), (298, 304), (284, 297)]
    pec = [(288, 196, "c"), (299, 203), (307, 214), (317, 236), (331, 258), (344, 281), (354, 304), (358.6, 322), (357, 334, "c"), *low[1:-1], (284, 297, "c"), (274, 300), (262, 304, "c"),
           (258, 276, "c"), (268, 272), (276, 262), (278, 236), (280, 212)]
    p.area(pec, "wash.pec")
    soft(p, [(296, 250), (304, 276), (312, 296), (330, 318)], [(272, 268), (284, 297), (312, 314), (342, 331)], "muscle-shade", .6, 6, rise((0, .6), (.4, 1), (1, 0)))
    p.area([(284, 297, "c"), (274, 300), (262, 304), (253.5, 307, "c"), (253.5, 274, "c"), (262, 272.6), (270, 271, "c"), (276, 280)], "tendon", .8)
    lines(p, [[(255, 276), (255, 304)], [(278, 272), (280, 296)]], 5, .45, .7, lift=.2)
    lines(p, [[(291, 199), (306, 214)], [(291, 226), (304, 238)], [(282, 250), (290, 260)], [(272, 268), (276, 274)]], 6, .5, .75, lift=.15)
    lines(p, [[(309, 218), (331, 258), (357, 318), (352, 332)], [(301, 246), (316, 270), (334, 304), (326, 323)], [(288, 264), (296, 278), (304, 294), (300, 304)],
              [(274, 272), (275, 279), (276, 288), (276, 297)]], 11, .6, .78, lift=.12)
    p.ink([pen([(308, 216), (303, 238), (292, 258), (278, 270)], [.05, .9, 1.0, .3]), pen(low, [.05, .8, 1.2, 1.3, .8, .3])], "muscle-line", .9)


def forearm(p):
    p.on("muscle", "forearm", "extensors", "Forearm extensors")
    env = [(240, 505, "c"), fore(14, 30), fore(60, 34), fore(120, 32), fore(200, 24), fore(228, 21), fore(236, 0), fore(228, -26),
           fore(190, -28), fore(140, -33), fore(95, -37), fore(62, -38.5), fore(40, -33.6), fore(18, -29.6), fore(10, -27.6), fore(2, -26), (227, 536), (231, 520)]
    p.area(env, "wash.fore.muscle")
    p.ink(pen([fore(1, -26.4), fore(9, -28.4), fore(20, -30.6), fore(40, -34), fore(62, -38), fore(95, -37), fore(140, -33), fore(190, -28), fore(258, -26)],
              [.2, 1.0, 1.6, 1.8, 1.8, 1.6, 1.5, .4]), "muscle-line")
    low0, low1 = Line([fore(14, -20), fore(60, -22), fore(120, -18), fore(190, -14), fore(250, -12)]), Line([fore(10, -27.8), fore(50, -35.8), fore(110, -36), fore(190, -28), fore(250, -26)])
    shade(p, low0, low1, "muscle-shade", .2, 4, lambda s: ramp(s, (0, .3), (.15, 1), (1, .9)))
    # borders: extensor carpi radialis | extensor digitorum | extensor carpi ulnaris | ulna | flexor
    for a in ([(238, 513), fore(30, 6), fore(80, 12), fore(140, 15), fore(210, 13)], [(236, 516), fore(24, -6), fore(80, -4), fore(150, -3), fore(220, -5)],
              [(234, 520), fore(22, -13), fore(80, -15), fore(150, -14), fore(220, -15)]):
        p.ink(pen(a, [.1, 1.0, .9, .7, .1]), "muscle-line", .9)
    p.area([(211.5, 540, "c"), (209, 534), (214, 536), (222, 539), fore(2, -22), fore(28, -25.6), fore(62, -27), fore(86, -26.4), fore(110, -25.6), fore(130, -24.6), fore(150, -23.4), fore(130, -25), fore(110, -26.6), fore(86, -28.2), fore(62, -29.4), fore(28, -29), fore(2, -27.4), (220, 544.6)], "tendon")
    p.ink(pen([(212, 541), (221, 545), fore(3, -27.6), fore(28, -29.2), fore(64, -29.4), fore(112, -26.6), fore(160, -23)], [.2, .9, .9, .8, .6, .4, .05]), "tendon-line")
    lines(p, [[(240, 512), (237, 516)], [fore(40, 4), fore(40, -4)], [fore(100, 10), fore(100, -2)], [fore(190, 11), fore(190, -2)]], 3, .5, .7)
    lines(p, [[(236, 517), (235, 520)], [fore(40, -8), fore(40, -12)], [fore(100, -6), fore(100, -13)], [fore(190, -6), fore(190, -13)]], 3, .5, .7)
    lines(p, [[fore(10, -26), fore(22, -30)], [fore(50, -29), fore(50, -36)], [fore(110, -27), fore(110, -34)], [fore(190, -22), fore(190, -26)]], 3, .5, .7)
    anc = [(235, 516, "c"), fore(12, -8), fore(27, -15.6), fore(40, -21), fore(18, -23), (225, 539), (217, 535), (218, 526), (225, 519.6)]
    muscle(p, anc, "muscle-light", .8)
    lines(p, [[(234, 518), (230, 520)], [fore(28, -19), (224, 536)]], 4, .45, .7)
    brach = [(245, 432, "c"), (254, 446), (265, 459), (274, 468), (284, 475), fore(46, 48.6), fore(60, 48.4), fore(90, 44), fore(125, 36), fore(165, 28.5),
             fore(205, 24), fore(258, 22), fore(258, 18), fore(205, 15), fore(165, 16), fore(120, 16), fore(75, 13), fore(35, 7), (243, 505), (242, 476)]
    muscle(p, brach, "wash.fore.muscle", 1.3)
    p.ink(pen([(244, 474), (252, 496), fore(26, 20), fore(62, 26), fore(110, 25), fore(160, 22)], [.1, .9, 1.1, .9, .6, .05]), "muscle-line", .9)
    lines(p, [[(247, 446), (256, 452)], [(256, 480), (270, 482)], [fore(34, 26), fore(34, 41)], [fore(80, 28), fore(80, 39)], [fore(150, 23), fore(150, 29)]], 5, .55, .75, lift=.15)
    lines(p, [[(243, 482), (246, 492)], [fore(14, 10), fore(20, 20)], [fore(70, 15), fore(70, 25)], [fore(150, 17), fore(150, 21)]], 3, .5, .75, lift=.15)
    p.area(ribbon([fore(128, 30), fore(160, 25.4), fore(190, 22), fore(225, 20), fore(258, 19.4)], [.1, 1.6, 3.4, 3.6, 3.4]), "tendon", .9)


def arm(p):
    p.on("muscle", "arm", "triceps", "Triceps brachii")
    long_head = [(212, 262, "c"), (203, 288), (196, 312), (193.4, 330), (191.6, 346), (191, 361), (192, 380), (194.4, 402), (197.2, 426), (200.4, 450), (204.4, 470, "c"),
                 (210, 456), (214, 440), (216, 400), (222, 340), (226, 290), (220, 262, "c")]
    muscle(p, long_head, "wash.triceps", 1.2)
    lines(p, [[(213, 266), (219, 266)], [(203, 296), (222, 296)], [(194, 350), (218, 350)], [(196, 410), (214, 404)], [(203, 466), (209, 456)]], 6, .55, .75, lift=.18)
    # medial head: a small belly low down, between tendon, epicondyle and brachioradialis
    medial = [(243, 428, "c"), (244.4, 452), (243, 476), (238, 498), (233, 509), (227, 514), (220, 511, "c"), (210, 498), (209, 480), (220, 462), (232, 452)]
    muscle(p, medial, "muscle-base", .9)
    lines(p, [[(236, 446), (243, 446)], [(226, 470), (242, 474)], [(220, 496), (238, 496)], [(220, 508), (230, 508)]], 5, .5, .75, lift=.15)
    lateral = [(216, 290, "c"), (228, 298), (238, 330), (242, 362), (243.2, 396), (243.4, 428, "c"), (236, 446), (226, 464), (215, 484), (210.4, 494, "c"), (209, 470), (208.6, 440), (208.4, 410),
               (209, 370), (211, 330)]
    muscle(p, lateral, "wash.triceps", 1.3)
    lines(p, [[(216, 300), (232, 310)], [(211, 352), (241, 352)], [(210, 400), (243, 398)], [(209.6, 440), (240, 436)], [(211, 486), (216, 480)]], 7, .55, .78, lift=.15)
    glints(p, [[(214, 330), (226, 334)], [(213, 380), (230, 380)], [(212, 430), (230, 426)]], 3, 1.2)
    # common tendon: a narrow strip along the back edge, growing out of the red above, gripping the olecranon
    ten = [(204.4, 430, "c"), (207, 452), (209.4, 474), (211.6, 492), (215.4, 506), (221, 511, "c"), (219, 516), (211.4, 526), (208.6, 533, "c"), (206.6, 522), (206, 506), (205.4, 490), (203.6, 468)]
    p.area(ten, "tendon")
    soft(p, [(206, 470), (209, 500), (213, 516)], [(203.8, 468), (205.6, 500), (208, 530)], "tendon-line", .3, 4)
    for k in range(7):
        y = 440 + 9 * k
        p.ink(pen([(212 + .6 * k, y - 7), (208.6 + .45 * k, y + 2), (206.4 + .3 * k, y + 12)], [.05, .5, .05]), "muscle-line" if k < 3 else "tendon-line", .75)
    p.ink([pen([(204.4, 430), (207, 452), (209.4, 474), (211.6, 492), (215.4, 506), (221, 511)], [.05, .3, .6, .8, .8, .2]),
           pen([(203.6, 468), (205.4, 490), (206, 506), (206.6, 522), (208.6, 534)], [.05, .7, .9, 1.0, .3])], "tendon-line")
    # the olecranon itself, bony, in its grip
    p.area([(221, 510.5, "c"), (213, 517), (208.8, 526), (208.4, 533), (211.5, 540, "c"), (213.8, 534), (215.2, 526), (217.6, 518)], "bone-light")
    soft(p, [(215.6, 520), (214, 528), (213, 536)], [(209.4, 524), (208.4, 533), (211.6, 540)], "bone-shade", .5, 4)
    p.ink(pen([(210.4, 522.6), (208.6, 529), (209, 535), (212, 540.4)], [.2, 1.0, 1.3, .3]), "bone-line")
    p.on("muscle", "arm", "brachialis", "Brachialis")
    bra = [(243.4, 385, "c"), (247.6, 371), (253.6, 356), (260, 348), (264, 366), (270, 400), (275, 430), (277, 452), (276, 468, "c"), (270, 464), (262, 455), (253, 442), (245, 432, "c"),
           (243, 410)]
    p.area(bra, "muscle-base")
    p.ink(pen([(276, 467), (270, 464), (262, 455), (253, 442), (245, 432), (243, 410), (244, 376)], [.05, 1.0, 1.2, 1.1, .9, .6, .1]), "muscle-line")
    shade(p, [(250, 384), (254, 410), (262, 440), (270, 466)], [(262, 378), (269, 410), (272, 440), (276, 470)], "muscle-shade", .2, 3)
    lines(p, [[(254, 358), (260, 360)], [(246, 410), (268, 412)], [(250, 436), (273, 440)], [(264, 458), (276, 468)]], 4, .5, .75, lift=.18)
    p.on("muscle", "arm", "biceps", "Biceps brachii")
    # the long head's tendon climbs the groove; the short head goes up to the coracoid
    p.area(ribbon([(256, 216), (257, 232), (256.8, 252), (259, 276), (265, 304), (267, 318)], [.6, 3.2, 3.4, 3.4, 3.8, .3]), "tendon")
    p.ink([pen([(258.6, 222), (259, 250), (261.4, 276), (268, 306)], [.05, .7, .7, .05]), pen([(255, 224), (255.2, 252), (257.4, 278), (263, 306)], [.05, .4, .4, .05])], "tendon-line")
    bic = [(262, 300, "c"), (272, 286), (280, 262), (283, 262), (285, 284), (286, 306), (284, 332), (281.6, 350), (282, 366), (285, 384), (288.4, 402), (290.2, 419), (289.4, 434), (285.6, 449),
           (281, 461), (276, 469, "c"), (272, 464), (270, 452), (266, 424), (262.5, 396), (260.5, 364), (261, 330)]
    muscle(p, bic, "wash.biceps", 1.9)
    lines(p, [[(278, 270), (283, 270)], [(266, 310), (284, 310)], [(262, 364), (281, 364)], [(264, 404), (287, 408)], [(270, 444), (285, 442)], [(274, 464), (278, 463)]], 7, .6, .75, lift=.12)
    glints(p, [[(264, 350), (272, 350)], [(265, 390), (274, 390)], [(269, 430), (276, 430)]], 2, 1.2)
    deltoid(p)


def deltoid(p):
    p.on("muscle", "arm", "deltoid", "Deltoid")
    muscle(p, DELTOID, "wash.deltoid", 2.0)
    back, front = Line(DELT_BACK), Line(DELT_FRONT)
    s1 = Line([(215, 203), (214, 232), (214, 262), (218, 300), (227, 340), (238, 374)])      # posterior | middle
    s2 = Line([(263, 197.5), (270, 226), (272, 256), (268, 294), (258, 334), (246, 374)])    # middle | anterior
    # under each seam the next part turns away a little
    shade(p, s1.shifted(9), s1, "muscle-shade", .15, 3, lambda s: ramp(s, (0, .3), (.4, 1), (1, .2)))
    shade(p, s2.shifted(-10), s2, "muscle-shade", .15, 3, lambda s: ramp(s, (0, .3), (.4, 1), (1, .2)))
    # posterior: long, nearly parallel fibres from the spine
    cut = lambda a, b, t: [a(t), b(t)]
    gp = [[(173, 222), (192, 211), (213, 204)]] + [cut(back, s1, t) for t in (.2, .42, .65, .85)] + [[(236, 373), (239, 376)]]
    lines(p, gp, 7, .62, .8, lift=.16)
    glints(p, gp[1:5], 3, 1.3)
    ga = [[(264, 197), (274, 195), (284, 198)]] + [cut(s2, front, t) for t in (.2, .42, .65, .85)] + [[(245, 376), (248, 373)]]
    lines(p, ga, 6, .7, .85, lift=.12)
    # middle: tendon slips down from the acromion, slips up from the insertion, fibres slanting between
    mid = [between(s1, s2, v) for v in (0, .17, .34, .5, .66, .83, 1)]
    for i in (1, 3, 5):
        p.ink(pen(mid[i].part(.0, .5 + .05 * i), [.2, 1.3, 1.0, .6, .05]), "tendon", .8)
    for i in (2, 4):
        p.ink(pen(mid[i].part(.42 - .04 * i, .97), [.05, .5, 1.0, 1.3, .6]), "tendon", .8)
    for i in range(6):
        down, up = (mid[i], mid[i + 1]) if i % 2 else (mid[i + 1], mid[i])
        n = 5
        for k in range(n):
            u = .03 + .56 * (k + .7 * ((i * 5 + k * 2) % 4) / 4) / n
            a, b = down(u), up(min(.97, u + .20 + .05 * ((i + 2 * k) % 4)))
            m = mix(a, b, .5)
            p.ink(pen([a, (m[0], m[1] + 1.5), b], [.1, .6 + .04 * i, .1]), "muscle-line", .75)
    p.ink(pen(s1, [.1, .9, 1.0, .8, .4]), "muscle-line", .8)
    p.ink(pen(s2, [.1, 1.0, 1.2, 1.0, .5]), "muscle-line", .85)
    # insertion: the pale slips run into a small fan of tendon that dips between brachialis and triceps
    for k in range(9):
        v = (k - 4) / 4
        y = 349 + 9 * abs(v) - 15 * ((k * .618 + .1) % 1)
        p.ink(pen([(242 + 6.2 * v, y), (242 + 4 * v, 366), (241.8 + 1.5 * v, 377 + 2 * (1 - abs(v)))], [.05, 1.2, 1.5, .5]), "tendon", .85)
        if k % 2:
            p.ink(pen([(242 + 5.6 * v, y + 5), (242 + 3.6 * v, 367), (241.8 + 1.2 * v, 377)], [.05, .4, .2]), "tendon-line", .7)
    rim0, rim1 = Line([(280, 215), (280, 250), (268, 300), (252, 350)]), Line([(295, 215), (297, 250), (287, 298), (258, 356)])
    soft(p, rim0, rim1, "muscle-shade", .6, 6)

def draw(p):
    washes(p)
    torso(p)
    neck(p)
    forearm(p)
    arm(p)
