"""Three-quarter plate: the skin of neck and chest, and the order of painting."""
import math

import quarter_arm
import quarter_cloth
import quarter_forearm
from engrave import Line, between, contour, hatch, pen, ramp
from quarter_frame import JAW, MIDLINE, NECK_BACK, NECK_FRONT
from quarter_tools import band, hump, shade


def trunk(p):
    p.on("skin", "trunk")
    p.area([(290, 4, "c"), *NECK_BACK[1:-1], (187, 187, "c"), (196, 230), (200, 300), (204, 372, "c"), (320, 376), (430, 340), (470, 262),
            (486, 190, "c"), *NECK_FRONT[9:0:-1], (407.5, 112), (420, 118), (432, 115), (439, 106), (441, 90), (436, 50), (420, 4, "c")],
           "wash.trunk")
    neck(p)
    chest(p)
    back, front = Line(NECK_BACK), Line(NECK_FRONT)
    p.ink(contour(back.part(.2, .98), .3, 1.0, side=-1, press=lambda t: ramp(t, (0, .3), (.2, 1), (.8, 1), (1, .4))), "skin-line")
    p.ink(pen(front.part(.0, .30), [.6, 1.7, 1.9, 1.5, .3]), "skin-line")
    p.ink(contour(front.part(.26, .62), .4, 1.5, side=-1), "skin-line")
    jaw = Line(JAW)
    p.ink(pen(jaw.part(.1, .985), [.05, .3, .5, .8, 1.0, 1.2, 1.4, 1.4, .8, .1]), "skin-line", .9)


def neck(p):
    jaw = Line(JAW)
    # shadow the jaw throws on the neck
    under = Line([(296, 56), (299, 74), (309, 94), (326, 110), (348, 122), (374, 131), (396, 136), (405, 131)])
    shade(p, under, jaw.part(.05, .78), "skin-mid", .14, 5, lambda s: ramp(s, (0, 0), (.3, .6), (.8, 1), (1, 1)))
    shade(p, between(under, Line(jaw.part(.05, .78)), .45), jaw.part(.05, .78), "skin-shade", .12, 3, lambda s: ramp(s, (.2, 0), (.7, .9), (1, 1)))
    p.ink(hatch(under, jaw.part(.05, .78), 4.6, lambda s: ramp(s, (0, .2), (.5, .7), (.9, .9), (1, .8)), .48, bow=.14, t0=.3, t1=.97), "skin-hatch")
    # near sternomastoid: a strap lit on its back edge, turning into shade in front
    scm = Line([(309, 84), (320, 108), (334, 136), (349, 166), (361, 189), (369, 203)])
    rear = Line([(296, 86), (305, 112), (316, 140), (328, 168), (338, 187), (344, 197)])
    shade(p, scm.shifted(12), scm, "skin-mid", .13, 5, lambda s: ramp(s, (0, 0), (.4, .7), (.85, 1), (1, .5)))
    shade(p, between(rear, scm, .75), between(rear, scm, .25), "skin-light", .18, 4, hump(.8))
    p.ink(pen(scm.part(.22, 1), [.05, .35, .6, .9, 1.1, .3]), "skin-line", .8)
    p.ink(pen(rear.part(.3, .94), [.05, .35, .45, .05]), "skin-line", .55)
    # throat, far strap and the pit of the neck
    wind = Line([(388, 136), (386, 152), (383, 172), (380, 190), (377, 204)])
    far = Line([(404, 138), (402, 152), (397, 172), (390, 192), (385, 205)])
    edge = Line([(404.5, 124), (404, 136), (403, 148), (403.5, 158), (406, 164)])
    shade(p, wind, far, "skin-mid", .14, 5, lambda s: ramp(s, (0, .4), (.5, 1), (1, .6)))
    p.ink(hatch(wind, edge, 4.4, lambda s: ramp(s, (0, .85), (.7, .7), (1, .5)), .5, bow=.1, t0=.1, t1=.95), "skin-hatch")
    p.ink(pen([(402, 160), (398, 174), (391, 192), (386, 204)], [.05, .6, .8, .2]), "skin-line", .75)
    pit = Line([(368, 205), (372, 210), (378, 211), (384, 207)])
    shade(p, [(366, 192), (372, 196), (380, 196), (388, 192)], pit, "skin-shade", .13, 5, hump(.7))
    p.ink(pen(pit, [.05, .8, 1.0, .6, .05]), "skin-line", .85)
    # hollow above the clavicle, edge of the trapezius
    hollow = Line([(268, 180), (286, 183), (306, 187), (326, 190), (340, 195)])
    roof = Line([(272, 166), (288, 158), (308, 157), (326, 170), (338, 184)])
    shade(p, roof, hollow, "skin-mid", .13, 6, hump(.7))
    shade(p, between(roof, hollow, .5), hollow, "skin-shade", .09, 3, hump(.7))
    p.ink(hatch(roof, hollow, 4.2, lambda s: .78 * math.sin(math.pi * s) ** .6, .42, bow=.08, t0=.12, t1=.93), "skin-hatch")
    trap = Line([(292, 110), (289, 128), (280, 146), (266, 162), (250, 173), (236, 179)])
    shade(p, trap.shifted(-10), trap, "skin-mid", .10, 4, hump(.8))
    shade(p, trap.shifted(8), trap, "skin-light", .14, 4, hump(.8))
    p.ink(pen(trap.part(.2, .9), [.05, .4, .5, .3, .05]), "skin-line", .6)


def chest(p):
    # far side of the chest turns away from the light
    mid = Line(MIDLINE)
    away = Line([(446, 196), (452, 226), (456, 258), (450, 290), (440, 320), (428, 345), (420, 362)])
    shade(p, between(mid, away, .1), away, "skin-mid", .13, 6, lambda s: ramp(s, (0, .3), (.2, 1), (1, 1)))
    shade(p, between(mid, away, .5), away, "skin-shade", .12, 4, lambda s: ramp(s, (0, .2), (.25, 1), (1, .9)))
    p.ink(hatch(between(mid, away, .35), away, 4.6, lambda s: ramp(s, (0, .4), (.3, .85), (1, .9)), .55, bow=.12, t0=.04, t1=.72), "skin-hatch")
    # furrow of the breastbone, the near breast muscle rising from it
    shade(p, mid.shifted(16), mid, "skin-mid", .12, 5, lambda s: ramp(s, (0, .2), (.3, 1), (1, 1)))
    shade(p, mid.shifted(-9), mid, "skin-mid", .09, 3, lambda s: ramp(s, (0, .2), (.3, 1), (1, 1)))
    p.ink(hatch(mid.shifted(14), mid, 5.2, lambda s: ramp(s, (0, .3), (.4, .85), (1, .9)), .4, bow=.1, t0=.12, t1=.86), "skin-hatch", .9)
    pec = Line([(304, 232), (328, 246), (356, 268), (380, 298)])
    band(p, pec, 20, "skin-light", .11, 5)
    # under the collar bone
    clav = Line([(268, 205), (286, 207), (304, 209), (326, 210), (346, 213), (360, 215)])
    shade(p, clav.shifted(13), clav, "skin-mid", .11, 5, hump(.7))
    fossa = Line([(279, 206), (285, 216), (289, 228), (290, 244)])
    band(p, fossa, 9, "skin-mid", .12, 5)
    # the arm's shadow on the chest down to the armpit
    cast = Line([(286, 236), (286, 258), (284, 280), (281, 301), (277, 321), (274, 341), (273, 362)])
    over = Line([(292, 236), (300, 260), (306, 284), (309, 306), (308, 328), (303, 346), (298, 364)])
    shade(p, over, cast, "skin-shade", .13, 6, lambda s: ramp(s, (0, 0), (.4, .7), (.65, 1), (1, 1)))
    p.ink(hatch(over, cast, 4.2, lambda s: ramp(s, (0, .15), (.4, .7), (.7, 1), (1, 1)), .55, bow=-.05, t0=.2, t1=.94, skew=-.05), "skin-hatch")
    # lower border of the breast muscle rising to the armpit: the front fold
    fold = Line([(283, 299), (293, 310), (308, 324), (326, 338), (346, 350)])
    shade(p, fold.shifted(13), fold, "skin-shade", .12, 5, lambda s: ramp(s, (0, 1), (.5, .8), (1, 0)))
    shade(p, fold.shifted(-11), fold, "skin-light", .13, 4, hump(.8))
    p.ink(pen(fold, [.9, 1.6, 1.1, .6, .3, .05]), "skin-line")
    p.ink(hatch(fold.shifted(13), fold, 4.4, lambda s: ramp(s, (0, .95), (.6, .7), (1, .2)), .5, bow=.08, t0=.08, t1=.85), "skin-hatch")


def draw(p):
    p.linear("wash.trunk", "trunk", (338, 128), (366, 18), [(0, "skin-base"), (0.3, "skin-base"), (1, "skin-base", 0)])
    quarter_cloth.washes(p)
    trunk(p)
    quarter_cloth.gown(p)
    quarter_arm.draw(p)
    quarter_forearm.draw(p)
    quarter_arm.surface(p)
    quarter_cloth.blanket(p)
