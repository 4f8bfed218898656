"""Thigh from the side: the skin of the knee and the upper leg."""
from engrave import Line, contour, pen, ramp
from thigh_side_tools import cluster, pool, rise, soft
from thigh_side_frame import CALF, FRONT, SHIN, cm

BORDER = cm((37.7, 6.3), (38.0, 5.5), (38.8, 4.85), (40, 4.55), (41.3, 4.7), (42.3, 5.2), (43.0, 5.8))     # the kneecap's outer border


def teardrop(p):
    """Where vastus lateralis ends: a rounded lower rim, a hollow between it and the kneecap."""
    pool(p, cm((29.5, 5.6), (32, 5.2), (34.6, 4.9)), 14, 12, "skin-light", .36, .05)
    rim = Line(cm((30.0, 1.7), (33.0, 2.1), (35.2, 2.9), (36.5, 4.2), (36.9, 5.6)))
    pool(p, rim.part(.08, 1), 15, 13, "skin-mid", .42)
    p.ink(pen(rim.part(.45, .85), [.05, .4, .05]), "skin-line", .4, cue="lean")
    pool(p, cm((37.0, 2.8), (38.2, 3.6), (39.4, 3.7)), 9, 8, "skin-mid", .3, .05)


def kneecap(p):
    """No ring: the light of its front turns over the outer border into one soft shade, darkest low and right."""
    k = Line(BORDER)
    pool(p, cm((37.6, 6.2), (39.6, 6.3), (41.8, 6.1)), 13, 8, "skin-light", .42, .05)
    pool(p, k.part(.15, 1), 17, 9, "skin-mid", .5)
    pool(p, k.part(.4, 1), 8, 5, "skin-shade", .2)
    p.ink(pen(k.part(.62, .93), [.05, .3, .45, .3, .05]), "skin-line", .5)
    # ligament of the kneecap, fat pad beside it
    pool(p, cm((43.0, 5.6), (44.8, 5.4), (46.6, 5.3)), 5, 4, "skin-light", .36, .05)
    pool(p, cm((42.8, 3.9), (44.2, 4.0), (45.8, 4.4)), 8, 6, "skin-mid", .26, .05)


def folds(p):
    """A roll of fat above the knee and a crease behind it; in age the skin gathers above the kneecap."""
    p.ink([pen(cm((33.4, 7.2), (34.0, 6.2), (33.8, 4.9), (33.0, 3.8)), [.05, .6, .4, .05]), pen(cm((42.2, -4.6), (41.5, -3.7), (41.7, -2.5), (42.6, -1.7)), [.3, .7, .4, .05])],
          "skin-line", .55, cue="full")
    p.ink([pen(cm((36.3, 6.75), (36.75, 6.0), (36.7, 5.1)), [.05, .5, .05]), pen(cm((35.2, 6.9), (35.55, 6.3), (35.5, 5.6)), [.05, .4, .05]),
           pen(cm((43.3, 6.1), (43.1, 5.4), (43.5, 4.7)), [.05, .4, .05])], "skin-line", .5, cue="older")


def outer_side(p):
    # the band's cord running to the tibia, then the plane of the condyle
    cord = Line(cm((33.0, 1.8), (36, 2.1), (39, 2.4), (42, 2.6), (44.6, 2.7)))
    pool(p, cord.pts[::6], 5, 6, "skin-light", .3, .05)
    soft(p, cord.shifted(13), cord.shifted(4), "skin-mid", .22, rise((0, 0), (.5, 1), (.8, .5), (1, 0)))
    # the condyle, just felt between the band's cord and the tendon of biceps
    pool(p, cm((37.6, 1.2), (40, 1.1), (42.4, .9)), 15, 11, "skin-light", .19)
    pool(p, cm((38.8, -.6), (40.4, -.8), (42, -.5)), 8, 6, "skin-mid", .2)
    # the tendon of biceps as the upper rim of the hollow of the knee, and the fibula's head it runs to
    rim = Line(cm((31.0, -2.7), (34.5, -2.9), (37.8, -3.0), (40.8, -2.8), (43.4, -2.1), (45.2, -1.7)))
    pool(p, cm((32.5, -3.3), (36, -3.6), (39.5, -3.6), (42.6, -2.9)), 10, 8, "skin-shade", .3)
    pool(p, cm((33, -1.7), (36.5, -1.9), (39.5, -1.8), (42, -1.3)), 4, 8, "skin-mid", .24)
    p.ink(pen(rim.part(.4, .9), [.05, .45, .55, .3, .05]), "skin-line", .5)
    p.ink(pen(rim.shifted(-8, .4, .85), [.05, .4, .4, .05]), "skin-line", .35, cue="lean")
    head = Line(cm((43.6, -2.2), (44.8, -2.5), (46.0, -2.2), (46.8, -1.2)))
    pool(p, head.part(0, 1), 8, 5, "skin-mid", .34)


def leg(p):
    p.on("skin", "leg")
    pool(p, cm((46.4, 3.0), (49, 3.2), (52, 3.1), (55.5, 2.7)), 12, 10, "skin-light", .3, .05)
    edge = Line(cm((46.6, 5.1), (48.6, 4.5), (51, 4.2), (53.4, 4.1)))
    soft(p, edge.shifted(9), edge.shifted(2), "skin-mid", .2, rise((0, 0), (.5, 1), (1, 1)))
    groove = Line(cm((46.6, -2.2), (48.4, -2.4), (50.6, -2.4), (53.2, -2.3)))
    soft(p, groove.shifted(11), groove, "skin-mid", .34, rise((0, 0), (.4, 1), (1, 1)))
    soft(p, groove.shifted(-10), groove, "skin-mid", .24, rise((0, 0), (.4, 1), (1, 1)))
    part = Line(Line(CALF).part(.26, .78))
    soft(p, part.shifted(-28), part, "skin-mid", .45, rise((0, 0), (.3, .8), (1, 1)))
    soft(p, part.shifted(-15), part, "skin-shade", .5, rise((0, 0), (.3, .8), (1, 1)))
    p.ink(cluster(part.shifted(-28), part, 13, .1, .96, .8, .55, .1, .05, peak=.5), "skin-hatch")
    p.ink(contour(Line(CALF).part(.14, .78), .4, 1.5, side=1, press=lambda t: ramp(t, (0, .1), (.3, 1), (1, .8))), "skin-line")
    p.ink(contour(Line(SHIN).part(.2, .8), .35, 1.0, side=-1, press=lambda t: ramp(t, (0, .1), (.2, 1), (1, .9))), "skin-line")


def draw(p):
    leg(p)
    p.on("skin", "thigh")
    teardrop(p)
    outer_side(p)
    kneecap(p)
    folds(p)
    cap = Line(FRONT).part(.79, .995)
    p.ink(contour(cap, .35, 1.3, side=-1, press=lambda t: ramp(t, (0, .3), (.5, 1), (.85, .8), (1, .1))), "skin-line")
