"""Shoulder from the side: scapula, clavicle, ribs, humerus, radius, ulna."""
import math

from engrave import Line, between, contour, feather, hatch, pen, ramp, ribbon, rim, stipple
from side_tools import hump, pool, soft
from side_frame import HUM_BACK, HUM_FRONT, fore

SCAP_LATERAL = [(231, 256), (224, 270), (213, 289), (198, 312), (182, 333), (170, 346)]
SCAP_MEDIAL = [(190, 189), (179, 200), (166, 219), (158.5, 240), (154.5, 270), (153, 305), (154.5, 332), (159, 346)]
SCAPULA = [(*SCAP_MEDIAL[0], "c"), *SCAP_MEDIAL[1:], (164, 350.5), *SCAP_LATERAL[::-1], (236, 246), (241, 228), (240, 212),
           (229, 201), (211, 194)]
SPINE = [(222, 194, "c"), (207, 198.5), (190, 205.5), (174, 213.5), (161, 222), (155.8, 231), (157, 243), (164, 238), (174, 231),
         (189, 222.5), (206, 213), (219, 206, "c")]
ACROMION = [(213, 200.5), (219, 194.5), (229, 191.8), (242, 190), (256, 188.5), (263.5, 189.5), (267, 193.5), (263, 198),
            (252, 199), (240, 200), (228, 201.8), (218, 204), (213.5, 204)]
CORACOID = [(242, 209), (252, 205.5), (263, 206), (273, 211), (279.5, 219), (281, 227), (277, 230.5), (270.5, 227),
            (262, 220.5), (250, 218.5)]
CLAVICLE = [(254, 194, "c"), (254.6, 188.2, "c"), (260, 184.6), (269, 181.4), (279, 182.6), (288, 188), (295.5, 194.4), (300.5, 198.5), (302, 205),
            (297.5, 209.5), (290.5, 207), (283, 200), (274.5, 193), (266, 190.4)]
HUMERUS = [*HUM_BACK, (235, 531), (243, 531.8), *HUM_FRONT[::-1], (254.5, 208.8), (245, 206.8), (234, 207.8)]
ULNA = [(228.5, 506, "c"), (221, 509), (213, 515.5), (208.6, 525), (208.2, 533), (211.5, 540), (220, 544.4), fore(0, -26.8), fore(20, -25),
        fore(42, -20.5), fore(75, -15.5), fore(120, -12.5), fore(175, -11.5), fore(225, -13), fore(250, -17.5), fore(262, -16),
        fore(262, -7), fore(248, -4.5), fore(225, -3.5), fore(175, -2), fore(120, -3), fore(75, -5), fore(45, -7.5),
        fore(30, -8), (263, 531), (259.5, 525.5, "c"), (255, 531), (245, 534.5), (235, 532.5), (228.6, 525), (226.6, 515)]
RADIUS = [fore(13, -9.5), fore(12.8, 0), fore(13, 10.5), fore(16, 12.6), fore(21, 12), fore(25.5, 8), fore(32, 7),
          fore(48, 9.5), fore(85, 14.5), fore(135, 17.5), fore(185, 17), fore(225, 17.5), fore(246, 20.5), fore(260, 21.5),
          fore(265, 15), fore(263, 3), fore(258, -5), fore(245, -3), fore(220, 1.5), fore(185, 4.5), fore(135, 5.5),
          fore(90, 3), fore(62, -.5), fore(46, -5), fore(38, -6), fore(30, -5.3), fore(25, -6), fore(21, -10.5), fore(16.5, -11.6)]


def outline(p, shape, thick=1.3, thin=0.3, press=None):
    p.ink(rim(shape, thin, thick, press=press), "bone-line")


def shade(p, inner, edge, tone="bone-shade", opacity=.2, steps=3, profile=None):
    p.areas_of(feather(inner, edge, steps, profile), tone, opacity)


def ribs(p):
    p.on("bone", "trunk", "ribs", "Ribs")
    rows = [((176, 198), (216, 212), (270, 236), (312, 246), (322, 242)),
            ((163, 226), (208, 248), (272, 280), (324, 296), (336, 291)),
            ((160, 258), (206, 284), (272, 322), (330, 342), (345, 336)),
            ((160, 292), (204, 322), (270, 364), (328, 386), (346, 379)),
            ((163, 332), (204, 362), (268, 406), (320, 426), (338, 418))]
    for k, row in enumerate(rows):
        ln = Line(row)
        w = lambda t: ramp(t, (0, .6), (.2, 6), (.5, 8), (.93, 7), (1, 1))
        p.area(ribbon(ln, w), "wash.rib")
        low = ln.shifted(lambda t: w(t) / 2)
        o = ramp(k, (0, .42), (2, .36), (4, .2))
        p.ink(pen(low, [.05, .05, .6, .7, .6, .05]), "bone-line", o)


def scapula(p):
    p.on("bone", "trunk", "scapula", "Scapula")
    p.area(SCAPULA, "wash.scapula")
    med, lat = Line(SCAP_MEDIAL), Line(SCAP_LATERAL)
    core = Line([(214, 246), (204, 268), (192, 292), (178, 318), (166, 340)])
    shade(p, core, lat, opacity=.3, steps=4, profile=lambda s: ramp(s, (0, .9), (.7, 1), (1, .1)))
    for k in range(5):
        ln = between(core, lat, .34 + .15 * k)
        p.ink(pen(ln, [.05, .35 + .07 * k, .4, .05], .10 + .05 * ((k * 3) % 4), .86 - .05 * ((k * 2) % 5)), "bone-line", .55)
    pool(p, [(198, 232), (186, 250), (176, 276), (170, 304)], 12, 14, "bone-shade", .2, 8)
    pool(p, [(205, 200), (196, 200), (188, 203)], 5, 4, "bone-shade", .4, 5)
    outline(p, SCAPULA, 1.5)
    rim = Line([(233, 254), (226, 268), (214, 287), (199, 310), (184, 330)])
    p.ink(pen(rim.shifted(4.5), [.05, .6, .5, .3, .05]), "bone-line", .6)
    # the spine: a raised bar running out to the acromion
    p.area(SPINE, "bone-light")
    low = Line([(219, 206), (206, 213), (189, 222.5), (174, 231), (164, 238), (158, 242)])
    shade(p, low.shifted(10), low, opacity=.28, steps=3)
    p.ink(hatch(low.shifted(9), low, 16, lambda s: .85 * math.sin(math.pi * s) ** .6, .4, t0=.1, t1=.9), "bone-line", .6)
    p.ink(pen(low, [.3, 1.2, 1.1, .7, .1]), "bone-line")
    p.ink(pen([(220, 194.5), (207, 198.5), (190, 205.5), (174, 213.5), (161, 222), (156, 231)], [.2, .5, .4, .5, .1]), "bone-line")
    p.area(CORACOID, "bone-base")
    shade(p, [(250, 210), (264, 212), (275, 222)], [(250, 218.5), (262, 220.5), (275, 230)], opacity=.3)
    outline(p, CORACOID, 1.3)


def clavicle(p):
    p.on("bone", "trunk", "clavicle", "Clavicle")
    p.area(CLAVICLE, "bone-light")
    low = Line([(260, 191), (266, 190.4), (274.5, 193), (283, 200), (290.5, 207), (297.5, 209.5)])
    mid = Line([(259, 188), (267, 186), (278, 187.6), (287, 193.5), (294, 200), (300, 202)])
    shade(p, mid, low, opacity=.3, steps=4)
    p.ink(hatch(mid, low, 5, .7, .42, bow=.1, t0=.4, t1=.95), "bone-line", .65)
    p.ink(contour(CLAVICLE[1:], .3, 1.4, side=-1), "bone-line")
    p.areas_of(stipple([(294, 202), (297, 199)], [(299, 208), (302, 203)], 4, .4), "bone-line", .6)


def forearm(p):
    for name, title, shape, lo, hi in (
            ("ulna", "Ulna", ULNA, [(209, 534), (220, 544.4), fore(0, -26.6), fore(20, -25), fore(60, -17), fore(120, -12.5), fore(175, -11.5), fore(240, -15)],
             [(216, 531), (224, 538), fore(0, -19), fore(20, -15), fore(60, -10), fore(120, -7), fore(175, -6), fore(240, -8)]),
            ("radius", "Radius", RADIUS, [fore(20, -10), fore(34, -5.6), fore(60, -.5), fore(135, 5.5), fore(185, 4.5), fore(250, -4)],
             [fore(20, 2), fore(34, 2), fore(60, 6), fore(135, 12), fore(185, 11), fore(250, 9)])):
        p.on("bone", "forearm", name, title)
        p.area(shape, "wash.fore")
        shade(p, hi, lo, opacity=.26, steps=4, profile=lambda s: ramp(s, (0, .6), (.1, 1), (1, 1)))
        p.ink(hatch(hi, lo, 11, .7, lambda s: .5 * ramp(s, (.18, 1), (.3, 0), (.55, 0), (.75, 1)), bow=.1, t0=.03, t1=.80, stagger=.3), "bone-line", .65)
        outline(p, shape, 1.5)
    p.ink([pen([fore(22, -11), fore(23, 0), fore(21.5, 11.5)], [.05, .6, .05])], "bone-line", .7)
    p.areas_of(stipple([(222, 514), (224, 538)], [(210.5, 520), (213, 540)], 9, .42), "bone-line", .6)


def humerus(p):
    p.on("bone", "arm", "humerus", "Humerus")
    p.area(HUMERUS, "wash.humerus")
    back, front = Line(HUM_BACK), Line(HUM_FRONT)
    # the smooth head behind and above; greater tubercle toward us, lesser in front of the biceps' groove
    soft(p, [(252, 226), (254, 240), (250, 254)], [(266.5, 222), (268, 236), (259, 257)], "bone-shade", .5, 6)
    pool(p, [(232, 222), (231, 234), (233, 246)], 9, 8, "bone-light", .8, 6)
    neck = Line([(219.5, 225), (226, 215.5), (236, 213), (246, 214.5), (253, 219)])
    soft(p, neck.shifted(5), neck, "bone-shade", .42, 5)
    p.ink(pen(neck, [.05, .6, .4, .5, .05]), "bone-line", .7)
    groove = Line([(254, 217), (257.2, 230), (255.8, 244), (252, 260), (248.5, 284)])
    soft(p, groove.shifted(6), groove, "bone-shade", .6, 5)
    p.ink(pen(groove, [.05, .8, .9, .6, .05]), "bone-line", .8)
    pool(p, [(262, 226), (262.5, 235), (260, 243)], 3, 3, "bone-light", .6, 4)
    p.ink(pen([(221, 247), (228, 253), (237, 255), (246, 252.5)], [.05, .5, .35, .05]), "bone-line", .55)
    p.areas_of(stipple([(234, 224), (236, 252)], [(222, 222), (224, 252)], 6, .42, depth=.8), "bone-line", .55)
    outline(p, HUMERUS, 1.7)
    p.ink(hatch(back.part(.2, .88), front.part(.2, .86), 9, lambda s: ramp(s, (0, .38), (.5, .3), (1, .36)), lambda s: .56 * ramp(s, (.28, 1), (.42, 0), (.55, 0), (.7, 1)), stagger=.3,
                bow=lambda s: -.05 + .2 * s, t0=.02, t1=.97), "bone-line", .7)
    # lower end: ridge, epicondyle, capitulum, hollow behind
    p.ink(pen([(243, 440), (240, 462), (236, 482), (233, 498), (232, 509)], [.05, .6, .8, .7, .1]), "bone-line", .7)
    ball = [(243.2, 504.6), (251, 507), (255, 514), (254.2, 522), (248.6, 528.4), (240.6, 529), (234.6, 524), (233, 516), (236.6, 508)]
    p.area(ball, "bone-light")
    low = Line([(233.2, 519), (236, 525.6), (241, 529), (248.6, 528.4), (254.2, 522), (255, 513), (252, 508)])
    soft(p, [(236, 516), (239, 519), (243, 521), (247, 519.5), (249.6, 516), (250.4, 513), (250, 510)], low, "bone-shade", .75, 6, hump(.7))
    p.ink(pen(low, [.05, .7, 1.1, 1.2, .9, .4, .05]), "bone-line", .85)
    p.ink(pen([(236, 508.6), (241, 505.2), (247, 505.4)], [.05, .4, .05]), "bone-line", .6)
    p.ink(pen([(229, 507), (231.4, 511), (232.2, 516), (231.4, 521)], [.05, .6, .6, .05]), "bone-line", .7)
    p.on("bone", "arm", "deltoid-tuberosity", "Deltoid tuberosity")
    # a rough V of short strokes, its point at the landmark's lower end; no outline
    pool(p, [(240.6, 346), (241, 358), (241, 370), (241.4, 380)], 6, 5.5, "bone-light", .7, 5)
    for k in range(7):
        u = (k + .4) / 7
        j = ((k * .618) % 1) - .5
        for x0, s, w in ((234.4, 1, .55), (248.2, -1, .85)):
            x, y = x0 + (241.2 - x0) * u ** 1.15 + j, 344 + 36 * u + 1.5 * j * s
            p.ink(pen([(x, y), (x + s * (.9 + j), y + 3.2), (x + s * 2.6, y + 6.4 + j)], [.05, w * (1 - .3 * u), .05]), "bone-line", .8)
    soft(p, [(242, 350), (242, 362), (241.6, 378)], [(248.4, 346), (246, 362), (241.8, 380)], "bone-shade", .5, 4)
    p.areas_of(stipple([(241, 350), (241, 374)], [(246, 350), (243, 376)], 5, .4, depth=.9), "bone-line", .6)


def draw(p):
    p.linear("wash.rib", "trunk", (240, 200), (225, 490),
             [(0, "bone-base", 0.62), (0.5, "bone-base", 0.45), (1, "bone-base", 0)])
    p.linear("wash.humerus", "arm", (224, 300), (256, 300),
             [(0, "bone-base"), (0.28, "bone-light"), (0.6, "bone-base"), (1, "bone-shade")])
    p.linear("wash.scapula", "trunk", (158, 240), (226, 300), [(0, "bone-light"), (0.55, "bone-base"), (1, "bone-base")])
    p.linear("wash.fore", "forearm", fore(100, 20), fore(100, -22), [(0, "bone-base"), (0.35, "bone-light"), (1, "bone-base")])
    ribs(p)
    scapula(p)
    clavicle(p)
    forearm(p)
    humerus(p)
    p.on("bone", "arm", "acromion", "Acromion")
    p.area(ACROMION, "bone-light")
    low, mid = Line([(215, 204), (228, 201.8), (240, 200), (252, 199), (264, 197.5)]), Line([(215, 199), (228, 196), (242, 194), (254, 193), (265, 193)])
    shade(p, mid, low, opacity=.3, steps=3)
    p.ink(contour([(214.5, 204), (218, 204), *ACROMION[-3:6:-1], *ACROMION[6:2:-1], (232, 191.3), (221, 193.8)], .35, 1.7, side=1), "bone-line")
