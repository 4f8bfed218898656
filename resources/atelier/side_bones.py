"""Shoulder from the side: scapula, clavicle, ribs, humerus, radius, ulna."""
import math

from engrave import Line, between, contour, feather, hatch, pen, ramp, ribbon, rim, stipple
from side_frame import ARM_BACK, ARM_FRONT, BACK, FORE_BACK, FORE_FRONT, FRONT, HUM_BACK, HUM_FRONT, fore

SCAP_LATERAL = [(231, 256), (224, 270), (213, 289), (198, 312), (182, 333), (170, 346)]
SCAP_MEDIAL = [(190, 189), (179, 200), (166, 219), (158.5, 240), (154.5, 270), (153, 305), (154.5, 332), (159, 346)]
SCAPULA = [(*SCAP_MEDIAL[0], "c"), *SCAP_MEDIAL[1:], (164, 350.5), *SCAP_LATERAL[::-1], (236, 246), (241, 228), (240, 212),
           (229, 201), (211, 194)]
SPINE = [(*q, *c) for q, c in zip([(222, 194), (207, 198.5), (190, 206.5), (172, 217), (159.5, 227), (158.5, 234), (172, 231.5),
                                   (189, 222.5), (206, 213), (219, 206)], [("c",)] + [()] * 8 + [("c",)])]
ACROMION = [(213, 200.5), (219, 194.5), (229, 191.8), (242, 190), (256, 188.5), (263.5, 189.5), (267, 193.5), (263, 198),
            (252, 199), (240, 200), (228, 201.8), (218, 204), (213.5, 204)]
CORACOID = [(242, 209), (252, 205.5), (263, 206), (273, 211), (279.5, 219), (281, 227), (277, 230.5), (270.5, 227),
            (262, 220.5), (250, 218.5)]
CLAVICLE = [(249.5, 185.5), (257, 182.5), (268, 181), (279, 183.5), (288, 189.5), (295.5, 195), (300.5, 198.5), (302, 205),
            (297.5, 209.5), (290.5, 207), (283, 200), (274.5, 193.5), (265, 191.5), (254, 193), (249, 191)]
HUMERUS = [*HUM_BACK, (235, 531), (243, 531.8), *HUM_FRONT[::-1], (254.5, 208.8), (245, 206.8), (234, 207.8)]
ULNA = [fore(-12.5, -9, "c"), fore(-15.5, -14), fore(-14, -20), fore(-7, -25), fore(4, -26), fore(20, -24), fore(42, -19.5),
        fore(75, -15.5), fore(120, -12.5), fore(175, -11.5), fore(225, -13), fore(250, -17.5), fore(262, -16),
        fore(262, -7), fore(248, -4.5), fore(225, -3.5), fore(175, -2), fore(120, -3), fore(75, -5), fore(45, -6.5),
        fore(28, -5), fore(18, 0.5), fore(14, 3, "c"), fore(11.5, -6), fore(3.5, -12.5), fore(-6, -12)]
RADIUS = [fore(13, -9.5), fore(12.8, 0), fore(13, 10.5), fore(16, 12.6), fore(21, 12), fore(25.5, 8), fore(32, 7),
          fore(48, 9.5), fore(85, 14.5), fore(135, 17.5), fore(185, 17), fore(225, 17.5), fore(246, 20.5), fore(260, 21.5),
          fore(265, 15), fore(263, 3), fore(258, -5), fore(245, -3), fore(220, 1.5), fore(185, 4.5), fore(135, 5.5),
          fore(90, 3), fore(62, -.5), fore(46, -5), fore(38, -6), fore(30, -5.3), fore(25, -6), fore(21, -10.5), fore(16.5, -11.6)]


def outline(p, shape, thick=1.3, thin=0.3, press=None):
    p.ink(rim(shape, thin, thick, press=press), "bone-line")


def shade(p, inner, edge, tone="bone-shade", opacity=.2, steps=3, profile=None):
    p.areas_of(feather(inner, edge, steps, profile), tone, opacity)


def ghost(p):
    """The body's outline, barely there, so that bared bones do not float."""
    back, front = Line(BACK), Line(FRONT)
    p.on("bone", "trunk")
    for ln, a, b in ((back, .10, .74), (front, .09, .34), (front, .345, .70)):
        p.ink(pen(ln, [.05, .7, .7, .7, .05], a, b), "bone-shade", .6)
    p.on("bone", "forearm")
    p.ink(pen(Line(FORE_BACK[2:]), [.05, .7, .7, .7, .3]), "bone-shade", .6)
    p.ink(pen(Line(FORE_FRONT[2:]), [.05, .7, .7, .7, .3]), "bone-shade", .6)
    p.on("bone", "arm")
    p.ink(pen(Line(ARM_BACK[3:]), [.05, .7, .7, .7, .7, .05]), "bone-shade", .6)
    p.ink(pen(Line(ARM_FRONT[3:]), [.05, .7, .7, .7, .05]), "bone-shade", .6)


def ribs(p):
    p.on("bone", "trunk", "ribs", "Ribs")
    rows = [((163, 196), (214, 208), (274, 226), (316, 234)),
            ((152, 222), (208, 246), (280, 268), (333, 266)),
            ((146, 252), (206, 288), (284, 312), (348, 298)),
            ((143, 284), (206, 330), (284, 354), (354, 330)),
            ((142, 318), (206, 372), (282, 396), (352, 366)),
            ((143, 354), (206, 412), (278, 436), (344, 404))]
    for k, row in enumerate(rows):
        ln = Line(row)
        w = lambda t: ramp(t, (0, 1), (.07, 7), (.5, 9.5), (.93, 8), (1, 1))
        p.area(ribbon(ln, w), "wash.rib")
        low, top = ln.shifted(lambda t: w(t) / 2), ln.shifted(lambda t: -w(t) / 2)
        o = ramp(k, (0, .6), (3, .55), (5, .3))
        p.ink(pen(low, [.05, 1.0, .8, .7, .05]), "bone-line", o)


def scapula(p):
    p.on("bone", "trunk", "scapula", "Scapula")
    p.area(SCAPULA, "wash.scapula")
    med, lat = Line(SCAP_MEDIAL), Line(SCAP_LATERAL)
    core = Line([(214, 246), (204, 268), (192, 292), (178, 318), (166, 340)])
    shade(p, core, lat, opacity=.3, steps=4, profile=lambda s: ramp(s, (0, .9), (.7, 1), (1, .1)))
    shade(p, Line([(190, 240), (180, 262), (172, 290), (166, 318)]), Line([(212, 236), (200, 258), (186, 288), (172, 320)]), opacity=.1, steps=3)
    p.ink(hatch([(196, 228), (183, 262), (172, 296), (163, 330)], [(227, 262), (207, 296), (190, 320), (170, 343)], 11,
                lambda s: ramp(s, (0, .7), (.6, .75), (1, .6)), .5, bow=-.08, t0=.05, t1=.95), "bone-line", .6)
    outline(p, SCAPULA, 1.5)
    rim = Line([(233, 254), (226, 268), (214, 287), (199, 310), (184, 330)])
    p.ink(pen(rim.shifted(4.5), [.05, .6, .5, .3, .05]), "bone-line", .6)
    # the spine: a raised bar running out to the acromion
    p.area(SPINE, "bone-light")
    low = Line([(219, 206), (206, 213), (189, 222.5), (172, 231.5), (160, 234)])
    shade(p, low.shifted(10), low, opacity=.28, steps=3)
    p.ink(hatch(low.shifted(9), low, 13, lambda s: .85 * math.sin(math.pi * s) ** .6, .4, t0=.1, t1=.9), "bone-line", .6)
    p.ink(pen(low, [.3, 1.2, 1.1, .7, .1]), "bone-line")
    p.ink(pen([(220, 194.5), (207, 198.5), (190, 206.5), (172, 217), (160, 227)], [.2, .5, .4, .5, .1]), "bone-line")
    p.area(CORACOID, "bone-base")
    shade(p, [(250, 210), (264, 212), (275, 222)], [(250, 218.5), (262, 220.5), (275, 230)], opacity=.3)
    outline(p, CORACOID, 1.3)


def clavicle(p):
    p.on("bone", "trunk", "clavicle", "Clavicle")
    p.area(CLAVICLE, "bone-light")
    low = Line([(252, 193), (265, 191.5), (274.5, 193.5), (283, 200), (290.5, 207), (297.5, 209.5)])
    mid = Line([(252, 187), (266, 185), (278, 188), (287, 194), (294, 200), (300, 202)])
    shade(p, mid, low, opacity=.3, steps=4)
    p.ink(hatch(mid, low, 5, .7, .42, bow=.1, t0=.4, t1=.95), "bone-line", .65)
    outline(p, CLAVICLE, 1.4)
    p.areas_of(stipple([(294, 202), (297, 199)], [(299, 208), (302, 203)], 4, .4), "bone-line", .6)


def forearm(p):
    for name, title, shape, lo, hi in (
            ("ulna", "Ulna", ULNA, [fore(-2, -25.5), fore(20, -24), fore(60, -17), fore(120, -12.5), fore(175, -11.5), fore(240, -15)],
             [fore(0, -16), fore(20, -12), fore(60, -10), fore(120, -7), fore(175, -6), fore(240, -8)]),
            ("radius", "Radius", RADIUS, [fore(20, -10), fore(34, -5.6), fore(60, -.5), fore(135, 5.5), fore(185, 4.5), fore(250, -4)],
             [fore(20, 2), fore(34, 2), fore(60, 6), fore(135, 12), fore(185, 11), fore(250, 9)])):
        p.on("bone", "forearm", name, title)
        p.area(shape, "wash.fore")
        shade(p, hi, lo, opacity=.26, steps=4, profile=lambda s: ramp(s, (0, .6), (.1, 1), (1, 1)))
        p.ink(hatch(hi, lo, 7.5, .7, lambda s: .5 * ramp(s, (.18, 1), (.3, 0), (.55, 0), (.75, 1)), bow=.1, t0=.03, t1=.80, stagger=.3), "bone-line", .65)
        outline(p, shape, 1.5)
    p.ink([pen([fore(22, -11), fore(23, 0), fore(21.5, 11.5)], [.05, .6, .05])], "bone-line", .7)
    p.areas_of(stipple([fore(-8, -17), fore(6, -17)], [fore(-14, -17), fore(4, -25)], 6, .42), "bone-line", .6)


def humerus(p):
    p.on("bone", "arm", "humerus", "Humerus")
    p.area(HUMERUS, "wash.humerus")
    back, front = Line(HUM_BACK), Line(HUM_FRONT)
    # head: the greater tubercle faces us, the groove for the biceps tendon in front of it
    shade(p, [(252, 226), (254, 240), (250, 254)], [(266.5, 222), (268, 236), (259, 257)], opacity=.24, steps=3)
    groove = Line([(255, 214), (257.5, 228), (255.5, 244), (251.5, 260), (248.5, 282)])
    shade(p, groove.shifted(5), groove, opacity=.3, steps=3)
    p.ink(pen(groove, [.05, .8, 1.0, .7, .05]), "bone-line", .8)
    p.ink(pen([(226, 214), (232, 211.5), (240, 214), (246, 211.5), (253, 213)], [.05, .5, .3, .5, .05]), "bone-line", .7)
    p.ink(pen([(221, 246), (229, 252.5), (239, 254), (249, 251)], [.05, .5, .4, .05]), "bone-line", .55)
    p.areas_of(stipple([(236, 224), (238, 250)], [(222, 218), (224, 252)], 7, .42, depth=.8), "bone-line", .55)
    p.areas_of(stipple([(256, 222), (256, 250)], [(267, 222), (260, 254)], 5, .42, depth=.8, seed=.4), "bone-line", .55)
    outline(p, HUMERUS, 1.7)
    p.ink(hatch(back.part(.2, .88), front.part(.2, .86), 5.4, lambda s: ramp(s, (0, .38), (.5, .3), (1, .36)), lambda s: .56 * ramp(s, (.28, 1), (.42, 0), (.55, 0), (.7, 1)), stagger=.3,
                bow=lambda s: -.05 + .2 * s, t0=.02, t1=.97), "bone-line", .7)
    # lower end: ridge, epicondyle, capitulum, hollow behind
    p.ink(pen([(243, 440), (240, 462), (236, 482), (233, 498), (232, 509)], [.05, .6, .8, .7, .1]), "bone-line", .7)
    cap = Line([(247, 504), (242, 509), (241, 517), (244, 525), (249, 529)])
    shade(p, cap.shifted(-7), cap, opacity=.25, steps=3)
    p.ink(pen(cap, [.05, .7, .9, .6, .05]), "bone-line", .75)
    p.ink(pen([(229, 506), (233, 510), (236, 515), (235, 521)], [.05, .6, .6, .05]), "bone-line", .7)
    p.areas_of(stipple([(238, 508), (238, 524)], [(229, 510), (232, 525)], 6, .42), "bone-line", .6)
    p.on("bone", "arm", "deltoid-tuberosity", "Deltoid tuberosity")
    left, right = [(235.5, 348), (237, 360), (240, 372), (242, 381)], [(247, 345), (247.6, 358), (245.4, 371), (242, 381)]
    p.area([*left, *right[-2::-1], (241, 343)], "bone-light", .85)
    shade(p, [(241, 348), (242, 360), (242, 379)], right, opacity=.25, steps=3, profile=lambda s: 1 - s * .9)
    p.ink([pen(right, [.05, .8, 1.1, .6, .05]), pen(left, [.05, .5, .6, .5, .05])], "bone-line", .85)
    p.areas_of(stipple([(240, 350), (242, 374)], [(246, 350), (243, 376)], 4, .4, depth=.9), "bone-line", .6)


def draw(p):
    p.linear("wash.rib", "trunk", (240, 200), (225, 490),
             [(0, "bone-base", 0.8), (0.55, "bone-base", 0.6), (1, "bone-base", 0)])
    p.linear("wash.humerus", "arm", (224, 300), (256, 300),
             [(0, "bone-base"), (0.28, "bone-light"), (0.6, "bone-base"), (1, "bone-shade")])
    p.linear("wash.scapula", "trunk", (158, 240), (226, 300), [(0, "bone-light"), (0.55, "bone-base"), (1, "bone-base")])
    p.linear("wash.fore", "forearm", fore(100, 20), fore(100, -22), [(0, "bone-base"), (0.35, "bone-light"), (1, "bone-base")])
    ghost(p)
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
