"""Thigh from the side: the skin of the thigh itself, its two great swells and the groove between."""
from engrave import Line, contour, pen, ramp
from thigh_side_tools import cluster, pool, rise, soft
from thigh_side_frame import BACK, FRONT, cm

GROOVE = cm((7.0, -2.9), (10, -2.3), (14, -1.85), (18, -1.6), (22, -1.35), (26, -1.0), (30, -.55), (33, -.15), (36, .3))
BAND = cm((8, 1.7), (14, 1.3), (19, 1.2), (24, 1.3), (29, 1.6), (33, 1.9))


def swells(p):
    # quadriceps: the light rides high on the front, fullest above the middle
    pool(p, cm((3.0, 7.8), (9, 8.6), (15, 8.8), (21, 8.3), (27, 7.3), (33, 6.0)), 30, 17, "skin-light", .7, .05)
    pool(p, cm((10, 4.9), (16, 5.2), (22, 4.8), (28, 4.2), (33, 4.0)), 20, 18, "skin-light", .28, .05)
    # rectus from vastus: a long shallow valley, seen in the upper half only
    valley = Line(cm((4.0, 6.6), (9, 7.1), (13, 7.3), (17, 7.2), (22, 6.8)))
    pool(p, valley.pts[::6], 8, 9, "skin-mid", .15, .05)
    p.ink(pen(valley.part(.25, .8), [.05, .4, .3, .05]), "skin-line", .13, cue="lean")


def band(p):
    """The iliotibial band: a long flat between the swell and the groove, drawn tight toward the knee."""
    pool(p, Line(BAND).pts[::6], 13, 15, "skin-mid", .34, .1)
    front = Line(cm((19, 2.75), (23, 2.7), (27, 2.75), (31, 2.9), (34, 3.0)))
    p.ink(pen(front.part(.05, .95), [.05, .35, .3, .05]), "skin-line", .16, cue="lean")


def groove(p):
    g = Line(GROOVE)
    # its upper lip overhangs: firm above, soft below
    soft(p, g.shifted(17), g, "skin-mid", .5, rise((0, 0), (.3, .8), (.7, 1), (1, 0)))
    soft(p, g.shifted(-12), g, "skin-mid", .36, rise((0, 0), (.3, .8), (.7, 1), (1, 0)))
    soft(p, g.shifted(8), g, "skin-shade", .3, rise((0, 0), (.3, .5), (.65, 1), (1, 0)))
    p.ink([pen(g.part(.2, .5), [.05, .3, .4, .05]), pen(g.part(.54, .86), [.05, .45, .5, .3, .05])], "skin-hatch", .42)
    p.ink(pen(g.part(.3, .92), [.05, .6, .7, .05]), "skin-line", .4, cue="lean")
    p.ink(cluster(g.shifted(18), g, 15, .42, .88, .85, .42, .12, .1, peak=.55), "skin-hatch", .8)


def hamstrings(p):
    back = Line(BACK)
    part = Line(back.part(.3, .93))
    ends = rise((0, .1), (.25, .9), (.75, 1), (1, 0))
    soft(p, part.shifted(-30), part, "skin-mid", .45, ends)
    soft(p, part.shifted(-17), part, "skin-shade", .5, ends)
    p.ink(cluster(part.shifted(-46), part, 20, .03, .48, .8, .5, .12, .05, peak=.45), "skin-hatch")
    p.ink(cluster(part.shifted(-40), part, 20, .5, .94, .85, .55, .12, .05, peak=.6, seed=.7), "skin-hatch")
    # fuller: the flesh of the back of the thigh rests on the bed in a roll; older: it hangs loose toward the knee
    p.ink(pen(cm((10.6, -7.9), (12.0, -7.2), (14.6, -6.6), (17.6, -6.3)), [.05, .6, .4, .05]), "skin-line", .5, cue="full")
    p.ink([pen(cm((33.2, -4.7), (34.2, -4.0), (35.8, -3.7)), [.05, .5, .05]), pen(cm((36.0, -4.5), (36.8, -4.0), (38.2, -3.9)), [.05, .4, .05])], "skin-line", .55, cue="older")

def edges(p):
    f, b = Line(FRONT), Line(BACK)
    p.ink(contour(f.part(.13, .42), .3, .85, side=-1, press=lambda t: ramp(t, (0, .5), (.3, 1), (.8, .6), (1, .1))), "skin-line")
    p.ink(contour(f.part(.44, .80), .3, 1.2, side=-1, press=lambda t: ramp(t, (0, .1), (.3, .9), (.8, 1.1), (1, .2))), "skin-line")
    p.ink(contour(b.part(.24, .64), .4, 1.25, side=1, press=lambda t: ramp(t, (0, .3), (.3, .8), (1, 1))), "skin-line")
    p.ink(contour(b.part(.62, .962), .4, 1.6, side=1, press=lambda t: ramp(t, (0, .5), (.5, 1.1), (.85, .7), (1, .2))), "skin-line")


def draw(p):
    p.on("skin", "thigh")
    swells(p)
    band(p)
    groove(p)
    hamstrings(p)
    edges(p)
