"""Shoulder from the side: the skin of trunk and forearm, and the order of painting."""
import math

import side_arm
import side_cloth
from engrave import Line, between, contour, echo, feather, glow, hatch, pen, ramp
from side_frame import BACK, FORE_BACK, FORE_FRONT, FRONT, fore


def shade(p, inner, edge, tone, opacity, steps=4, profile=None, cue=None):
    p.areas_of(feather(inner, edge, steps, profile), tone, opacity, cue)


def hump(a=.6):
    return lambda s: math.sin(math.pi * s) ** a


def trunk(p):
    p.on("skin", "trunk")
    front, back = Line(FRONT), Line(BACK)
    below = [(145, 455, "c"), (359, 455, "c")]          # ends under the gown, before the gown fades
    p.area([*[q for q in BACK if q[1] < 450], *below, *[q for q in FRONT if q[1] < 440][::-1]], "wash.trunk")
    chest(p, front)
    rear(p, back)
    folds(p)
    neck(p, front)
    p.ink(contour(back.part(.05, .60), .25, 1.3, side=1, press=lambda t: ramp(t, (0, .2), (.15, .9), (1, 1.2))), "skin-line")
    p.ink(contour(front.part(.085, .20), .25, 1.7, side=-1, press=lambda t: ramp(t, (0, .5), (.4, 1), (1, 1))), "skin-line")
    p.ink(contour(front.part(.188, .36), .45, 1.7, side=-1), "skin-line")
    p.ink(contour(front.part(.348, .60), .5, 2.2, side=-1), "skin-line")


def chest(p, front):
    c = Line(front.part(.36, .60))
    side = lambda s: ramp(s, (0, 0), (.35, .8), (.8, 1), (1, 1))
    shade(p, c.shifted(lambda t: 8 + 30 * t), c, "skin-mid", .17, 5, side)
    shade(p, c.shifted(lambda t: 3 + 12 * t), c, "skin-shade", .16, 3, side)
    p.ink(hatch(c.shifted(lambda t: 14 + 28 * t), c, 5.1, lambda s: ramp(s, (0, .15), (.3, .5), (1, .85)),
                lambda s: ramp(s, (0, .25), (.4, .5), (1, .65)), bow=lambda s: .02 + .12 * s, t0=.08, t1=.66), "skin-hatch")
    # the arm's soft shadow on the chest, and the front armpit fold running out of it
    cast = Line([(300, 222), (301.5, 243), (300, 268), (296, 294), (290, 318), (286, 339), (287, 356)])
    over = Line([(302, 222), (311, 246), (317, 270), (320, 296), (319, 322), (316, 340), (314, 356)])
    shade(p, over, cast, "skin-mid", .22, 4, lambda s: ramp(s, (0, 0), (.35, .8), (.7, 1), (1, 1)))
    p.ink(hatch(over, cast, 4.5, lambda s: ramp(s, (0, .2), (.45, .8), (1, .95)), .5, bow=-.06, t0=.28, t1=.94, skew=-.05), "skin-hatch")


def folds(p):
    """Front and back armpit folds: they come out from behind the arm, so they are painted before it."""
    p.ink(pen([(290, 322), (294.5, 309), (302, 299), (313, 293)], [.6, 1.6, .9, .05]), "skin-line")
    p.ink(pen([(191.5, 324), (186, 309), (180, 299), (171, 291)], [.5, 1.3, .7, .05]), "skin-line")
    p.ink([pen([(290, 336), (299, 325), (311, 319)], [.4, 1.0, .05]), pen([(192, 338), (183, 326), (173, 321)], [.4, .9, .05])],
          "skin-line", .8, cue="full")


def rear(p, back):
    rim = Line([(179, 240), (180.5, 273), (185, 303), (191.4, 328), (193, 350)])
    out = Line([(177, 240), (169, 272), (169, 303), (174, 328), (177, 350)])
    shade(p, out, rim, "skin-mid", .2, 4, lambda s: ramp(s, (0, 0), (.5, .9), (1, 1)))
    p.ink(hatch(out, rim, 6.2, lambda s: ramp(s, (.3, .3), (.6, .8), (1, .95)), .4, bow=.08, t0=.42, t1=.95), "skin-hatch")
    p.areas_of(glow([(166, 236), (159, 262), (156, 292), (157, 322), (161, 350)], 13, 10, 4), "skin-mid", .09)


def neck(p, front):
    throat = Line(front.part(.185, .36))
    shade(p, throat.shifted(lambda t: 20 - 8 * t), throat, "skin-mid", .16, 4, lambda s: ramp(s, (0, .8), (.5, 1), (1, .2)))
    p.ink(hatch(throat.shifted(lambda t: 21 - 8 * t), throat, 5.6, lambda s: ramp(s, (0, .85), (.6, .65), (1, .3)), .5, bow=.10, t0=.05, t1=.92), "skin-hatch")
    jaw = Line([(262, 66), (265, 82), (274, 96), (292, 106), (320, 113), (345, 115)])
    below = Line([(256, 80), (261, 100), (273, 114), (291, 124), (308, 130), (324, 122)])
    shade(p, below, jaw, "skin-mid", .18, 3, lambda s: ramp(s, (0, 0), (.35, .7), (.8, 1), (1, .6)))
    p.ink(hatch(below, jaw, 5.2, lambda s: ramp(s, (0, .3), (.5, .75), (1, .75)), .42, bow=.12, t0=.32, t1=.85), "skin-hatch")
    p.ink(pen(jaw.part(.02, .8), [.05, .5, .8, .6, .05]), "skin-line", .8)
    # the neck muscle running to the breastbone; hollow above the clavicle; edge of the trapezius
    scm = Line([(258, 86), (267, 112), (279, 142), (291, 171), (301, 195)])
    shade(p, scm.shifted(9), scm, "skin-mid", .15, 3, lambda s: ramp(s, (0, 0), (.6, .9), (.9, 1), (1, .6)))
    p.ink(pen(scm.part(.3, 1), [.05, .3, .6, .9, .2]), "skin-line", .7, cue="lean")
    p.areas_of(glow([(250, 173), (262, 170), (276, 173), (290, 185)], 7, 9, 4), "skin-mid", .17)
    p.ink(echo(Line([(292, 189), (276, 181.5), (263, 178), (250, 177)]), 3, 2.8, .5, .8, .09), "skin-hatch", .9, cue="lean")
    p.areas_of(glow([(216, 96), (213, 130), (209, 160), (203, 188)], 14, 20, 5), "skin-light", .06)
    trap = Line([(232, 96), (236, 118), (243, 140), (250, 158), (257, 172)])
    shade(p, trap.shifted(8), trap, "skin-mid", .11, 3, hump(1.2))
    shade(p, trap.shifted(-9), trap, "skin-light", .15, 3, hump(1.2))
    p.ink(pen(trap.part(.12, 1), [.05, .35, .5, .4, .05]), "skin-line", .6)
    p.ink([pen([(287, 132), (297, 136), (308, 134)], [.05, .5, .05]), pen([(286, 148), (297, 152), (306, 150)], [.05, .5, .05])],
          "skin-line", .6, cue="older")
    # ear lobe
    p.ink([pen([(244, 34), (243, 45), (246, 55), (251.5, 58.5), (255, 52)], [.05, .5, .8, .6, .05]),
           pen([(250, 40), (249.5, 47), (251.5, 52)], [.05, .35, .05])], "skin-line", .55)


def forearm(p):
    p.on("skin", "forearm")
    p.area([*FORE_FRONT[:-2], fore(226, 28), fore(234, 0), fore(226, -30.5), *FORE_BACK[-3::-1], (204, 520), (214, 500), (238, 486)], "skin-base")
    ff, fb = Line(Line(FORE_FRONT[1:]).part(0, .86)), Line(Line(FORE_BACK[1:]).part(0, .86))
    p.areas_of(glow(between(ff, fb, .27).part(.02, 1.0), 19, 15, 6, .6), "skin-light", .13)
    low = lambda s: ramp(s, (0, 0), (.16, .7), (.34, 1), (1, .95))
    shade(p, between(ff, fb, .48), fb, "skin-mid", .13, 7, low)
    shade(p, between(ff, fb, .74), fb, "skin-shade", .16, 4, low)
    p.ink(hatch(ff, fb, 5.0, lambda s: ramp(s, (0, .08), (.15, .26), (.4, .42), (1, .40)), .62, bow=.10, t0=.10, t1=.95,
                half=lambda s: ramp(s, (.18, 0), (.32, .5), (.58, .5), (.78, 0))), "skin-hatch")
    p.ink(contour(Line(FORE_BACK[1:]).part(0, .84), .5, 2.6, side=1, press=lambda t: ramp(t, (0, .45), (.2, .95), (.4, 1.05), (.8, .7), (1, .6))), "skin-line")
    p.ink(contour(Line(FORE_FRONT[2:]).part(0, .84), .45, 1.5, side=-1, press=lambda t: ramp(t, (0, 1), (1, 1))), "skin-line")


def draw(p):
    p.linear("wash.trunk", "trunk", (275, 165), (330, 60), [(0, "skin-base"), (0.42, "skin-base"), (1, "skin-base", 0)])
    side_cloth.washes(p)
    trunk(p)
    side_cloth.gown(p)
    forearm(p)
    side_arm.draw(p)
    side_cloth.blanket(p)
