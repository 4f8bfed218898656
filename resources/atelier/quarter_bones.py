"""Three-quarter plate: ribs and breastbone, scapula nearly edge-on, clavicle, humerus, forearm bones.

From here we look along the plane of the scapula: its blade is a narrow strip behind the humerus.
"""
import side_bones
import side_frame
from engrave import Line, between, glow, hatch, pen, ramp, ribbon, stipple
from quarter_frame import HUM_BACK, HUM_FRONT, fore
from quarter_tools import outline, shade

SCAPULA = [(216, 206, "c"), (211, 222), (209, 246), (206, 276), (201, 308), (196.5, 334), (197.5, 345), (203, 350), (212, 346), (226, 330),
           (240, 306), (250, 278), (255, 250), (255, 228), (250, 212), (244, 203, "c"), (230, 201)]
ACROMION = [(180.5, 201), (182, 196.5), (187.5, 192.5), (196, 189.5), (205, 187), (213, 186), (217.5, 189), (216.5, 194), (211, 197.5), (201, 199.5),
            (190, 200.8), (184.5, 203), (181.5, 203.5)]
CORACOID = [(238, 202), (247, 201), (256, 205), (263, 212.5), (266.5, 221.5), (265, 228.5), (260, 230), (255.5, 225.5), (252, 218.5), (245, 213.5), (238, 212)]
CLAVICLE_AXIS = [(219, 188), (236, 186), (256, 187), (276, 190.5), (298, 193), (318, 194), (338, 197.5), (354, 202.5), (364, 206)]
CLAVICLE = [(216, 186), (222, 182.5), (234, 180.5), (250, 181), (268, 184), (286, 188), (304, 189.5), (322, 190), (340, 193), (355, 197.5),
            (364, 199), (369.5, 204), (369, 211), (363, 213.5), (355, 209), (340, 203.5), (322, 200), (304, 199), (286, 197.5), (268, 194.5),
            (250, 192.5), (234, 191.5), (222, 192.5), (216.5, 190.5)]
HUMERUS = [*HUM_BACK, (213, 528), (221, 526.5), (229, 530), (239, 530.5), *HUM_FRONT[::-1], (230, 206.6), (218, 207.4)]
STERNUM = [(365, 207), (371, 209), (377, 212.5), (384, 211.5), (390.5, 208.5), (395.5, 214), (394.5, 224), (400, 242), (409, 266), (418, 294), (424, 320),
           (427, 342), (426, 358), (422, 364), (419.5, 354), (414, 336), (405, 310), (394, 280), (384, 250), (376, 229), (368.5, 221), (363.5, 213)]


def turned(shape, back, up):
    """A forearm bone of the side plate, foreshortened into this view."""
    a, u, (ex, ey) = side_frame.A, side_frame.U, side_frame.ELBOW
    res = []
    for q in shape:
        x, y = q[0] - ex, q[1] - ey
        res.append(fore((x * a[0] + y * a[1]) * .88 - back, (x * u[0] + y * u[1]) + up, *q[2:]))
    return res


ULNA, RADIUS = turned(side_bones.ULNA, 4, 10.5), turned(side_bones.RADIUS, 8, 8)


def ribs(p):
    p.on("bone", "trunk", "ribs", "Ribs and breastbone")
    rows = [((296, 190), (312, 207), (338, 217), (366, 216)),
            ((268, 211), (290, 239), (328, 256), (362, 246), (386, 232)),
            ((234, 222), (266, 272), (322, 300), (366, 282), (394, 254)),
            ((226, 262), (258, 310), (318, 338), (370, 316), (402, 276)),
            ((220, 296), (254, 346), (318, 374), (374, 346), (409, 297)),
            ((217, 332), (252, 382), (318, 410), (376, 378), (414, 318)),
            ((216, 368), (252, 418), (316, 444), (374, 412), (418, 340)),
            ((217, 404), (254, 454), (312, 476), (366, 446), (408, 384))]
    for k, row in enumerate(rows):
        ln = Line(row)
        w = lambda t, k=k: ramp(t, (0, 1.5), (.14, 8), (.3, 10), (.7, 11), (1, 9 if k < 7 else 2)) * (.8 if k == 0 else 1)
        p.area(ribbon(ln, w), "wash.rib")
        o = ramp(k, (0, .65), (4, .5), (7, .15))
        p.ink(pen(ln.shifted(lambda t: -w(t) / 2), [.05, .45, .35, .45, .2]), "bone-line", o)
        p.ink(pen(ln.shifted(lambda t: w(t) / 2), [.05, 1.0, .9, .8, .2]), "bone-line", o)
    for k, row in enumerate((((394, 226), (418, 238), (436, 256)), ((404, 250), (428, 264), (446, 284)), ((413, 276), (436, 292), (452, 312)))):
        ln = Line(row)
        w = lambda t: 10 - 3.5 * t
        p.area(ribbon(ln, w), "wash.rib.far")
        p.ink(pen(ln.shifted(lambda t: w(t) / 2), [.2, .9, .4, .05], 0, .5), "bone-line", .4)
    p.area(STERNUM, "wash.sternum")
    right = Line([(394, 222), (400, 242), (409, 266), (418, 294), (424, 320), (427, 342)])
    shade(p, right.shifted(12), right, "bone-shade", .25, 3)
    p.ink(pen(right.shifted(3), [.05, .6, .5, .05]), "bone-line", .5)
    p.ink(pen([(376, 229), (386, 229), (395, 225)], [.05, .7, .05]), "bone-line", .7)
    p.ink(pen([(365, 207), (371, 209), (377, 212.5), (384, 211.5), (390.5, 208.5)], [.2, .8, .9, .7, .2]), "bone-line")
    p.ink(pen([(363.5, 213), (368.5, 221), (376, 229), (384, 250), (394, 280), (405, 310), (414, 336), (420, 356)], [.2, .7, .6, .6, .5, .4, .3, .05]), "bone-line", .85)
    p.ink(pen([(390.5, 208.5), (395.5, 214), (394.5, 224), (400, 242), (409, 266), (418, 294), (424, 320), (427, 342), (425, 358)],
              [.3, 1.1, 1.2, 1.3, 1.3, 1.2, 1.0, .7, .05]), "bone-line", .85)


def scapula(p):
    p.on("bone", "trunk", "scapula", "Scapula")
    p.area(SCAPULA, "wash.scapula")
    edge = Line([(254, 250), (249, 278), (239, 306), (225, 330), (211, 346)])
    core = Line([(238, 250), (232, 276), (222, 304), (211, 326), (202, 344)])
    shade(p, core, edge, "bone-shade", .2, 3, lambda s: ramp(s, (0, .9), (.7, 1), (1, .2)))
    p.ink(pen([(210, 250), (212, 280), (208, 308), (202, 334)], [.05, .7, .6, .05]), "bone-line", .6)
    outline(p, SCAPULA, "bone-line", 1.4)
    p.area(CORACOID, "bone-light")
    low = Line([(240, 212), (247, 214), (253, 219.5), (258, 229)])
    shade(p, [(242, 206), (250, 208), (256, 214), (260, 222)], low, "bone-shade", .3, 3)
    outline(p, CORACOID, "bone-line", 1.4)


def clavicle(p):
    p.on("bone", "trunk", "clavicle", "Clavicle")
    far = [(388, 202), (398, 200), (412, 196), (430, 191), (446, 187), (448, 193), (432, 198), (416, 203), (402, 209), (391, 212), (387, 208)]
    p.area(far, "wash.rib.far")
    p.ink([pen([(388, 203), (398, 200), (412, 196), (430, 191), (446, 187)], [.2, .6, .5, .05]),
           pen([(388, 209), (402, 209), (416, 203), (432, 198), (448, 193)], [.3, 1.0, .8, .05])], "bone-line", .5)
    p.area(CLAVICLE, "bone-light")
    low = Line([(220, 192), (234, 191.5), (250, 192.5), (268, 194.5), (286, 197.5), (304, 199), (322, 200), (340, 203.5), (355, 209), (363, 213)])
    mid = Line([(220, 186), (234, 184.5), (250, 185), (268, 188), (286, 191.5), (304, 193), (322, 193.5), (340, 197), (355, 202), (366, 205)])
    shade(p, mid, low, "bone-shade", .28, 4)
    p.ink([pen(low.shifted(-2.2, .06, .5), [.05, .5, .5, .05]), pen(low.shifted(-2.4, .45, .98), [.05, .5, .6, .05]), pen(low.shifted(-4.2, .55, .95), [.05, .4, .05])], "bone-line", .6)
    outline(p, CLAVICLE, "bone-line", 1.5)
    p.areas_of(stipple([(362, 205), (361, 211)], [(369, 203), (368, 211)], 4, .4), "bone-line", .6)


def forearm(p):
    for name, title, shape, lo, hi in (
            ("ulna", "Ulna", ULNA, [fore(-4, -14.8), fore(14, -13.8), fore(51, -6.8), fore(102, -2.3), fore(150, -1.2), fore(208, -4.6)],
             [fore(-4, -7), fore(14, -2), fore(51, 0), fore(102, 3), fore(150, 4), fore(208, 2)]),
            ("radius", "Radius", RADIUS, [fore(10, -2), fore(22, 2.4), fore(47, 7.5), fore(111, 13.5), fore(155, 12.5), fore(212, 4)],
             [fore(10, 10), fore(22, 10), fore(47, 14), fore(111, 20), fore(155, 19), fore(212, 17)])):
        p.on("bone", "forearm", name, title)
        p.area(shape, "wash.fore")
        shade(p, hi, lo, "bone-shade", .26, 4, lambda s: ramp(s, (0, .6), (.1, 1), (1, 1)))
        p.ink(pen(between(Line(lo), Line(hi), .3).part(.05, .85), [.05, .45, .35, .5, .05]), "bone-line", .6)
        outline(p, shape, "bone-line", 1.5)


def humerus(p):
    p.on("bone", "arm", "humerus", "Humerus")
    p.area(HUMERUS, "wash.humerus")
    back, front = Line(HUM_BACK), Line(HUM_FRONT)
    # lesser tubercle to the right, greater to the left, the groove for the biceps tendon between
    shade(p, [(236, 224), (238, 238), (235, 250)], [(249.5, 222), (249.5, 236), (242, 254)], "bone-shade", .24, 4)
    groove = Line([(229, 211), (232.5, 224), (231, 240), (228.5, 258), (227.5, 280)])
    shade(p, groove.shifted(5), groove, "bone-shade", .3, 3)
    shade(p, groove.shifted(-4), groove, "bone-shade", .16, 2)
    p.ink(pen(groove, [.05, .9, 1.1, .8, .05]), "bone-line", .85)
    p.ink(pen([(237, 212), (241, 220), (240, 231), (235, 242)], [.05, .6, .6, .05]), "bone-line", .7)
    p.ink(pen([(206, 214), (213, 211), (221, 213.5), (228, 211)], [.05, .5, .4, .05]), "bone-line", .7)
    p.ink(pen([(202, 246), (210, 252), (219, 253.5), (227, 251)], [.05, .5, .4, .05]), "bone-line", .55)
    p.areas_of(stipple([(216, 224), (217, 250)], [(201, 220), (203, 250)], 7, .42, depth=.8), "bone-line", .55)
    p.areas_of(stipple([(240, 222), (239, 248)], [(249, 220), (244, 252)], 6, .42, depth=.8, seed=.4), "bone-line", .55)
    p.ink(hatch(back.part(.2, .88), front.part(.2, .86), 6.2, lambda s: ramp(s, (0, .5), (.14, .3), (.4, .2), (.7, .26), (1, .5)),
                lambda s: ramp(s, (0, .6), (.2, .45), (.45, .0), (.6, .3), (1, .6)), bow=lambda s: -.05 + .2 * s, stagger=.3), "bone-line", .65)
    outline(p, HUMERUS, "bone-line", 1.7)
    # lower end: hollow above the joint, capitulum and trochlea
    hollow = Line([(222, 494), (227, 500), (234, 500), (240, 494)])
    p.areas_of(glow([(223, 493), (231, 495), (239, 492)], 5, 8, 4, .4), "bone-shade", .22)
    p.ink(pen(hollow, [.05, .7, .7, .05]), "bone-line", .7)
    p.ink(pen([(207, 512), (213, 506), (220, 507), (223, 514), (222, 524)], [.05, .7, .6, .8, .1]), "bone-line", .75)
    p.ink(pen([(225, 510), (231, 508), (239, 510), (243, 518)], [.05, .6, .6, .05]), "bone-line", .7)
    p.areas_of(stipple([(209, 500), (209, 514)], [(201, 498), (201, 514)], 5, .42), "bone-line", .6)


def tuberosity(p):
    p.on("bone", "arm", "deltoid-tuberosity", "Deltoid tuberosity")
    left, right = [(215.5, 340), (213.4, 354), (213.6, 368), (216, 380)], [(219.5, 342), (222.6, 355), (222, 368), (217.5, 381)]
    p.area([*left, *right[-2::-1]], "bone-light", .85)
    shade(p, [(217.5, 345), (218, 358), (217.5, 378)], right, "bone-shade", .25, 3, lambda s: 1 - s * .9)
    p.ink([pen(right, [.05, .8, 1.1, .6, .05]), pen(left, [.05, .5, .6, .5, .05])], "bone-line", .85)
    p.areas_of(stipple([(217, 348), (217.5, 374)], [(222, 348), (219, 376)], 4, .4, depth=.9), "bone-line", .6)


def draw(p):
    p.linear("wash.rib", "trunk", (250, 220), (270, 500), [(0, "bone-base", .8), (.55, "bone-base", .6), (1, "bone-base", 0)])
    p.linear("wash.rib.far", "trunk", (394, 250), (446, 238), [(0, "bone-base", .7), (1, "bone-base", 0)])
    p.linear("wash.sternum", "trunk", (378, 210), (420, 372), [(0, "bone-light"), (.6, "bone-base", .9), (1, "bone-base", .2)])
    p.linear("wash.humerus", "arm", (204, 300), (256, 304), [(0, "bone-base"), (.3, "bone-light"), (.55, "bone-base"), (1, "bone-shade")])
    p.linear("wash.scapula", "trunk", (198, 250), (246, 270), [(0, "bone-light"), (.5, "bone-base"), (1, "bone-shade")])
    p.linear("wash.fore", "forearm", fore(100, 24), fore(100, -18), [(0, "bone-base"), (.35, "bone-light"), (1, "bone-base")])
    scapula(p)
    ribs(p)
    clavicle(p)
    humerus(p)
    tuberosity(p)
    p.on("bone", "arm", "acromion", "Acromion")
    p.area(ACROMION, "bone-light")
    low, mid = Line([(182, 203), (190, 201), (201, 199.5), (211, 197.5), (216, 194)]), Line([(183, 198), (191, 195.5), (201, 193.5), (210, 191.5), (217, 189)])
    shade(p, mid, low, "bone-shade", .3, 3)
    p.ink(pen(low.shifted(-2, .08, .8), [.05, .5, .4, .05]), "bone-line", .6)
    outline(p, ACROMION, "bone-line", 1.6)
    forearm(p)
