"""Shoulder from the side: muscles of neck and trunk (simply), forearm, arm, deltoid in three parts."""
import math

from engrave import Line, between, contour, feather, fibres, glow, hatch, mix, pen, ramp, ribbon, rim
from side_frame import BACK, FRONT, fore

# -- deltoid: origin line, borders, insertion ---------------------------------------------------
DELT_FRONT = [(285, 198), (293, 208), (297, 224), (298, 243), (296, 267), (289, 295), (277, 324), (262, 350), (249, 371)]
DELT_BACK = [(171, 222), (177, 236), (181.5, 254), (186, 277), (194, 304), (206, 330), (221, 354), (234, 372)]
DELT_TOP = [(171, 222), (190, 211.5), (214, 203), (240, 199.5), (260, 198), (267.5, 193.5), (276, 192.5), (285, 198)]
DELTOID = [(*DELT_TOP[0], "c"), *DELT_TOP[1:-1], (*DELT_TOP[-1], "c"), *DELT_FRONT[1:],
           (245, 381), (242, 384), (238.5, 381), *DELT_BACK[:0:-1]]


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
    scm = [(254, 82, "c"), (266, 84), (276, 108), (288, 142), (298, 176), (302, 197, "c"), (296, 196), (285, 186, "c"), (272, 188),
           (268, 184), (272, 168), (266, 136), (258, 108)]
    p.area(scm, "wash.strap")
    lines(p, [[(256, 92), (266, 92)], [(264, 126), (282, 126)], [(270, 168), (294, 168)], [(276, 184), (300, 194)]], 6, .5, .7, lift=.2)
    p.ink(pen([(258, 100), (266, 132), (272, 164), (270, 184)], [.05, .4, .6, .3]), "muscle-line")
    p.ink(pen([(268, 92), (280, 118), (291, 150), (299, 178), (302, 196)], [.05, .7, 1.2, 1.2, .3]), "muscle-line")
    p.on("muscle", "trunk", "trapezius", "Trapezius")
    trap = [(206, 96, "c"), (204, 118), (197, 142), (187, 160), (175, 178), (161, 202), (149, 229), (141, 262), (138.5, 300),
            (140, 340), (147, 378, "c"), (153, 330), (158, 280), (163, 246), (168, 229), (190, 207), (214, 195.5), (242, 189.5), (258, 183.5), (268, 181.5),
            (265, 178), (252, 166), (241, 144), (234, 120), (229, 92, "c")]
    p.area(trap, "wash.trap")
    p.ink(pen([(230, 100), (235, 122), (242, 144), (253, 166), (267, 181)], [.05, .8, 1.1, 1.0, .2]), "muscle-line")
    p.ink(pen([(267, 181.5), (258, 183.5), (242, 189.5), (214, 195.5), (190, 207), (168, 229), (160, 258), (155, 310), (147, 378)],
              [.3, .7, .8, .7, .9, .9, .7, .05]), "muscle-line")
    p.ink(pen([(204, 116), (197, 142), (187, 160), (175, 178), (161, 202), (149, 229), (141, 262), (138.5, 300), (140, 340), (147, 376)],
              [.05, .3, .4, .4, .4, .4, .4, .3, .05]), "muscle-line")
    lines(p, [[(204, 122), (234, 122)], [(197, 148), (243, 148)], [(206, 188), (258, 176)], [(216, 194), (262, 182)]], 8, .5, .7, lift=.22)
    lines(p, [[(150, 230), (186, 164)], [(158, 228), (199, 182)], [(170, 224), (212, 197)]], 6, .45, .65, lift=.25)
    lines(p, [[(141, 268), (147, 360)], [(150, 252), (151, 330)], [(160, 238), (158, 270)]], 4, .45, .65, lift=.2)
    shade(p, [(232, 110), (246, 150), (262, 182)], [(222, 110), (228, 152), (236, 190)], "muscle-light", .12, 3)


def torso(p):
    p.on("muscle", "trunk")
    back, front = Line(BACK), Line(FRONT)
    body = [*back.shifted(-4.5, .37, .735), *front.shifted(4.5, .40, .70)[::-1], (286, 215), (240, 212), (190, 224)]
    p.area(body, "wash.flank")
    # infraspinatus and teres, then latissimus sweeping up to the back armpit fold
    infra = [(162, 240, "c"), (176, 232), (190, 244), (202, 262), (206, 282), (196, 290), (178, 302), (160, 312), (157, 280)]
    muscle(p, infra, "muscle-light", .9)
    lines(p, [[(160, 252), (161, 306)], [(178, 246), (184, 296)], [(196, 262), (204, 284)]], 4, .45, .7, lift=.2)
    teres = [(157, 316, "c"), (176, 303), (196, 288), (210, 280), (214, 290), (202, 306), (184, 324), (164, 340), (154, 338)]
    muscle(p, teres, "muscle-base", 1.0)
    lines(p, [[(158, 320), (158, 336)], [(182, 304), (188, 320)], [(208, 282), (212, 292)]], 4, .45, .7)
    lat = [(153, 342, "c"), (166, 338), (186, 322), (206, 304), (220, 300), (222, 330), (212, 372), (202, 420), (196, 474, "c"), (150, 474, "c"), (145, 420),
           (143, 372)]
    p.area(lat, "wash.lat")
    lines(p, [[(146, 376), (152, 440), (192, 440)], [(164, 348), (178, 378), (204, 388)], [(200, 314), (206, 318), (214, 322)]], 9, .5, .7, lift=.2)
    p.ink(pen([(206, 304), (186, 322), (166, 338), (153, 342)], [.2, .9, .9, .1]), "muscle-line")
    p.ink(pen([(220, 320), (212, 372), (203, 420), (199, 450)], [.3, 1.1, .8, .05]), "muscle-line")
    # serratus: four fingers on the ribs; outer oblique below them
    for k, (x0, y0, x1, y1) in enumerate(((284, 322, 330, 352), (282, 350, 326, 383), (280, 380, 320, 414), (278, 410, 312, 440))):
        f = [(x0, y0, "c"), (x0 + 18, y0 + 4), (x1, y1, "c"), (x0 + 22, y0 + 27), (x0, y0 + 24, "c")]
        p.area(f, "wash.lat")
        p.ink(contour([q[:2] for q in f[:3]], .3, .9, side=-1), "muscle-line", ramp(k, (0, 1), (3, .4)))
        p.ink(contour([q[:2] for q in f[2:]], .4, 1.1, side=-1), "muscle-line", ramp(k, (0, 1), (3, .4)))
        lines(p, [[(x0, y0 + 4), (x0, y0 + 20)], [(x0 + 22, y0 + 8), (x0 + 20, y0 + 24)], [mix((x0, y0), (x1, y1), .9), (x1 - 3, y1 - 1)]], 3, .4, .6)
    lines(p, [[(322, 368), (316, 424)], [(338, 390), (332, 440)], [(350, 410), (344, 444)]], 6, .45, .6, lift=.2)
    edge = front.part(.34, .66)
    shade(p, Line(edge).shifted(22), Line(edge).shifted(4.5), "muscle-shade", .2, 4, lambda s: ramp(s, (0, 0), (.4, 1), (.8, .8), (1, 0)))
    p.ink(pen(Line(edge).shifted(4.5), [.3, 1.0, 1.5, 1.8, 1.4, .05]), "muscle-line")
    p.ink(pen(back.shifted(-4.5, .5, .72), [.05, .5, .4, .05]), "muscle-line")
    p.on("muscle", "trunk", "pectoralis-major", "Pectoralis major")
    pec = [(272, 192, "c"), (286, 199), (300, 207), (307, 217), (318, 240), (334, 267), (349, 295), (357, 322), (358, 340), (351, 350), (338, 347),
           (322, 336), (308, 322), (296, 310), (276, 300), (262, 280), (262, 236)]
    muscle(p, pec, "wash.pec", 1.6)
    lines(p, [[(288, 202), (306, 214)], [(300, 232), (309, 240)], [(296, 262), (298, 268)], [(280, 288), (280, 290)]], 6, .5, .75, lift=.15)
    lines(p, [[(309, 220), (334, 266), (356, 322), (344, 348)], [(309, 246), (324, 274), (336, 308), (326, 334)],
              [(298, 272), (302, 284), (308, 300), (304, 314)], [(280, 290), (280, 292), (280, 296), (280, 300)]], 13, .6, .75, lift=.12)
    p.ink(pen([(303, 222), (306, 246), (301, 266), (290, 284)], [.05, .8, 1.0, .3]), "muscle-line", .85)
    glints(p, [[(314, 236), (344, 292)], [(308, 256), (322, 296)], [(298, 276), (302, 294)]], 3)


def forearm(p):
    p.on("muscle", "forearm", "extensors", "Forearm extensors")
    p.area([(206, 420), (206, 500), (216, 528), (236, 522), (262, 512), (279, 494), (283, 470), (276, 440), (240, 420)], "muscle-shade")
    env = [(240, 505, "c"), fore(14, 30), fore(60, 34), fore(120, 32), fore(200, 24), fore(228, 21), fore(236, 0), fore(228, -26),
           fore(190, -28), fore(140, -33), fore(95, -37), fore(62, -38.5), fore(40, -38), fore(18, -34.5), fore(4, -29.5), fore(-6, -26), (225, 537), (229, 520)]
    p.area(env, "wash.fore.muscle")
    p.ink(pen([fore(-2, -27), fore(18, -34.5), fore(40, -38), fore(62, -38.5), fore(95, -37), fore(140, -33), fore(190, -28), fore(258, -26)],
              [.4, 1.6, 1.9, 2.0, 1.8, 1.6, 1.5, .4]), "muscle-line")
    low0, low1 = Line([fore(14, -20), fore(60, -22), fore(120, -18), fore(190, -14), fore(250, -12)]), Line([fore(10, -32), fore(50, -38.5), fore(110, -36), fore(190, -28), fore(250, -26)])
    shade(p, low0, low1, "muscle-shade", .2, 4, lambda s: ramp(s, (0, .3), (.15, 1), (1, .9)))
    # borders: extensor carpi radialis | extensor digitorum | extensor carpi ulnaris | ulna | flexor
    for a in ([(238, 513), fore(30, 6), fore(80, 12), fore(140, 15), fore(210, 13)], [(236, 516), fore(24, -6), fore(80, -4), fore(150, -3), fore(220, -5)],
              [(234, 520), fore(22, -13), fore(80, -15), fore(150, -14), fore(220, -15)]):
        p.ink(pen(a, [.1, 1.0, .9, .7, .1]), "muscle-line", .9)
    p.area(ribbon([fore(-4, -24), fore(24, -25.5), fore(80, -25), fore(140, -22.5), fore(210, -20)], [3, 5, 3.5, 2.5, 1]), "tendon", .9)
    p.ink(pen([fore(4, -28), fore(26, -28), fore(80, -27), fore(140, -24), fore(210, -20.5)], [.1, .9, .7, .5, .05]), "tendon-line")
    lines(p, [[(240, 512), (237, 516)], [fore(40, 4), fore(40, -4)], [fore(100, 10), fore(100, -2)], [fore(190, 11), fore(190, -2)]], 4, .5, .7)
    lines(p, [[(236, 517), (235, 520)], [fore(40, -8), fore(40, -12)], [fore(100, -6), fore(100, -13)], [fore(190, -6), fore(190, -13)]], 4, .5, .7)
    lines(p, [[fore(6, -28), fore(14, -33)], [fore(50, -29), fore(50, -36)], [fore(110, -27), fore(110, -34)], [fore(190, -22), fore(190, -26)]], 3, .5, .7)
    anc = [(235, 517, "c"), fore(12, -8), fore(34, -20), fore(14, -22), fore(-2, -20, "c")]
    muscle(p, anc, "muscle-light", .8)
    lines(p, [[(235, 518), (233, 524)], [fore(26, -18), fore(6, -21)]], 4, .45, .7)
    brach = [(245, 438, "c"), (254, 446), (265, 462), (274, 477), (283, 484), fore(46, 44.8), fore(58, 44), fore(90, 40.5), fore(125, 35), fore(165, 28.5),
             fore(205, 24), fore(258, 22), fore(258, 18), fore(205, 15), fore(165, 16), fore(120, 16), fore(75, 13), fore(35, 7), (243, 505), (242, 476)]
    muscle(p, brach, "wash.fore.muscle", 1.3)
    p.ink(pen([(244, 474), (252, 496), fore(26, 20), fore(62, 26), fore(110, 25), fore(160, 22)], [.1, .9, 1.1, .9, .6, .05]), "muscle-line", .9)
    lines(p, [[(247, 446), (256, 452)], [(256, 480), (270, 482)], [fore(34, 26), fore(34, 41)], [fore(80, 28), fore(80, 39)], [fore(150, 23), fore(150, 29)]], 6, .55, .75, lift=.15)
    lines(p, [[(243, 482), (246, 492)], [fore(14, 10), fore(20, 20)], [fore(70, 15), fore(70, 25)], [fore(150, 17), fore(150, 21)]], 4, .5, .75, lift=.15)
    p.area(ribbon([fore(140, 27), fore(180, 22.5), fore(215, 20), fore(258, 19)], [.5, 3.4, 4.6, 4.6]), "tendon", .9)


def arm(p):
    p.on("muscle", "arm", "triceps", "Triceps brachii")
    long_head = [(204, 268, "c"), (194, 292), (194.5, 322), (195.8, 342), (193.5, 366), (190.5, 390), (190.5, 408), (193.8, 434), (199.5, 460), (204, 484),
                 (212, 490, "c"), (214, 450), (216, 400), (222, 340), (226, 290)]
    muscle(p, long_head, "wash.triceps", 1.2)
    lines(p, [[(196, 296), (222, 296)], [(197, 340), (220, 340)], [(193, 396), (215, 396)], [(201, 456), (213, 452)]], 7, .55, .75, lift=.18)
    lateral = [(216, 292, "c"), (228, 300), (240, 340), (242.5, 380), (242.5, 420), (243.5, 450), (241.5, 480), (237, 504), (234, 514, "c"), (226, 500),
               (218, 474), (212, 444), (209.5, 410), (209.5, 370), (211, 330)]
    muscle(p, lateral, "wash.triceps", 1.3)
    lines(p, [[(216, 306), (232, 310)], [(213, 360), (240, 364)], [(213, 410), (241, 414)], [(222, 466), (240, 466)], [(231, 502), (237, 500)]], 9, .55, .75, lift=.15)
    glints(p, [[(216, 340), (226, 340)], [(214, 390), (226, 390)], [(218, 440), (228, 440)]], 2, 1.2)
    ten = [(204, 420, "c"), (207, 444), (214, 470), (223, 496), (231, 516), (231, 530), (226, 541), (219, 540), (211, 530), (206.5, 512), (204.5, 486), (200, 456)]
    p.area(ten, "tendon")
    shade(p, [(208, 450), (216, 488), (220, 526)], [(204, 440), (206, 492), (212, 532)], "tendon-line", .14, 3)
    p.ink([pen([(204, 420), (207, 444), (214, 470), (223, 496), (231, 516)], [.1, .7, .9, .8, .2]),
           pen([(200, 456), (204.5, 486), (206.5, 512), (211, 530), (219, 540)], [.2, .7, .9, 1.1, .3])], "tendon-line")
    p.ink(fibres([[(203, 446), (206, 446)], [(206, 480), (216, 482)], [(209, 512), (228, 516)], [(216, 536), (228, 534)]], 5, .4, lift=.2), "tendon-line", .8)
    p.on("muscle", "arm", "brachialis", "Brachialis")
    bra = [(244, 372, "c"), (252, 372), (262, 378), (270, 400), (274, 430), (277, 456), (277, 478, "c"), (270, 471), (262, 459), (253, 446), (245, 438, "c"),
           (243, 410)]
    p.area(bra, "muscle-base")
    p.ink(pen([(277, 470), (270, 471), (262, 459), (253, 446), (245, 438), (243, 410), (244, 376)], [.05, 1.0, 1.2, 1.1, .9, .6, .1]), "muscle-line")
    shade(p, [(250, 384), (254, 410), (262, 440), (270, 466)], [(262, 378), (269, 410), (272, 440), (276, 470)], "muscle-shade", .2, 3)
    lines(p, [[(246, 380), (258, 380)], [(246, 410), (268, 412)], [(250, 436), (273, 440)], [(264, 458), (276, 470)]], 7, .5, .75, lift=.18)
    p.on("muscle", "arm", "biceps", "Biceps brachii")
    bic = [(266, 296, "c"), (290, 290), (287, 312), (283.5, 332), (283, 345), (284.6, 364), (287.8, 386), (289.6, 408), (288.4, 432), (284.5, 456),
           (280.5, 474), (278, 483, "c"), (273, 472), (270, 452), (266, 424), (262.5, 396), (260.5, 364), (261, 330)]
    muscle(p, bic, "wash.biceps", 1.9)
    lines(p, [[(266, 320), (284, 320)], [(262, 364), (284, 364)], [(264, 404), (288, 408)], [(270, 444), (286, 442)], [(275, 474), (280, 472)]], 9, .6, .75, lift=.12)
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
    lines(p, gp, 8, .62, .8, lift=.16)
    glints(p, gp[1:5], 3, 1.3)
    ga = [[(264, 197), (274, 195), (284, 198)]] + [cut(s2, front, t) for t in (.2, .42, .65, .85)] + [[(245, 376), (248, 373)]]
    lines(p, ga, 8, .7, .85, lift=.12)
    # middle: tendon slips down from the acromion, slips up from the insertion, fibres slanting between
    mid = [between(s1, s2, v) for v in (0, .17, .34, .5, .66, .83, 1)]
    for i in (1, 3, 5):
        p.ink(pen(mid[i].part(.0, .62), [1.8, 1.5, 1.0, .05]), "tendon", .8)
    for i in (2, 4):
        p.ink(pen(mid[i].part(.34, 1), [.05, 1.0, 1.5, 2.0]), "tendon", .8)
    for i in range(6):
        down, up = (mid[i], mid[i + 1]) if i % 2 else (mid[i + 1], mid[i])
        n = 6
        for k in range(n):
            u = .03 + .56 * (k + .5 * (i % 3) / 3) / n
            a, b = down(u), up(min(.97, u + .25))
            m = mix(a, b, .5)
            p.ink(pen([a, (m[0], m[1] + 1.5), b], [.1, .6 + .04 * i, .1]), "muscle-line", .75)
    p.ink(pen(s1, [.1, .9, 1.0, .8, .4]), "muscle-line", .8)
    p.ink(pen(s2, [.1, 1.0, 1.2, 1.0, .5]), "muscle-line", .85)
    # insertion: pale fan of tendon into the tuberosity
    p.areas_of(glow([(242, 350), (242, 364), (241.8, 382)], 7, 7, 4, .55), "tendon", .42)
    p.ink(fibres([[(235, 362), (250, 362)], [(240, 380), (244, 380)]], 6, .45, lift=.2), "tendon-line", .85)
    rim0, rim1 = Line([(280, 215), (280, 250), (268, 300), (252, 350)]), Line([(295, 215), (297, 250), (287, 298), (258, 356)])
    shade(p, rim0, rim1, "muscle-shade", .2, 4)
    p.ink(hatch(rim0, rim1, 10, lambda s: ramp(s, (0, .3), (.5, .95), (1, .5)), .55, bow=lambda s: -.05 + .2 * s, t0=.15, t1=.9), "muscle-line", .55)


def draw(p):
    washes(p)
    torso(p)
    neck(p)
    forearm(p)
    arm(p)
