"""Thigh from the side: the flat skin of all limbs, and the forms of belly, hip and buttock."""
import thigh_side_knee
import thigh_side_thigh
from engrave import Line, contour, pen, ramp
from thigh_side_tools import cluster, hump, pool, rise, soft
from thigh_side_wear import LEG
from thigh_side_frame import BACK, BELLY, CALF, FRONT, LOIN, SHIN, at, cm


def flats(p):
    """One tone for all limbs; one shade, falling square to the leg, whose ends meet without a seam."""
    # thigh and leg take it from the knee, where they meet, so that it still meets on other bodies
    for limb, one, two in (("pelvis", at(14.5, 5.2), at(16.1, -8.6)), ("leg", at(40, 8.16), at(41.6, -5.64)), ("thigh", at(40, 8.16), at(41.6, -5.64))):
        p.linear("wash." + limb, limb, one, two,
                 [(0, "skin-mid", 0), (.25, "skin-mid", .12), (.5, "skin-mid", .42), (.74, "skin-mid", .76), (1, "skin-shade", .74)])
    shapes = {
        "pelvis": [at(-14.9, 9.9, "c"), *BELLY[3:-4], at(-1, 9.5), at(.4, 9.58), at(1.5, 9.3), at(3.2, 8.7), at(5.0, 7), at(6, 3.5), at(6.2, 0), at(6.2, -3.5), at(6, -6.5),
                   at(5.8, -9.0, "c"), *[q for q in LOIN[::-1] if 20 < q[0] < 225], at(-14.9, -9.0, "c"), at(-14.9, -5), at(-14.9, -1), at(-14.9, 3), at(-14.9, 7)],
        "leg": [at(39.9, 7.0, "c"), *SHIN[2:-2], at(53.4, 4.72, "c"), at(53.4, 2), at(53.4, -1), at(53.4, -4), at(53.4, -7.05, "c"), *CALF[-3:1:-1], at(39.9, -4.5, "c"), at(39.9, -1.5), at(39.9, 1.5), at(39.9, 4.5)],
        "thigh": [(*FRONT[0], "c"), *FRONT[1:-1], (*FRONT[-1], "c"), at(43.6, 4.2), at(43.0, 1.0), at(42.6, -2.0), at(41.9, -4.0), at(41.0, -4.54, "c"), *BACK[-3:0:-1], (*BACK[0], "c"),
                  at(-5.2, -6), at(-4.6, 0), at(-5.4, 4)]}
    for limb, shape in shapes.items():
        p.on("skin", limb)
        p.area(shape, "skin-base")
        p.area(shape, "wash." + limb)


def belly(p):
    p.on("skin", "pelvis")
    front = Line(BELLY)
    pool(p, cm((-15, 7.9), (-11.5, 8.2), (-8, 8.2), (-4, 8.0)), 20, 14, "skin-light", .5, .05)
    # the flank sinks before the crest, the hip rises behind it
    pool(p, cm((-9.6, 6.3), (-10.9, 4.9), (-12.4, 2.8), (-14.0, .8), (-15.6, -2.4)), 24, 9, "skin-mid", .22)
    p.ink(contour(front.part(.13, .7), .3, .9, side=-1, press=lambda t: ramp(t, (0, .6), (.6, 1), (1, .7))), "skin-line")
    low = Line(LOIN)
    p.ink(contour(low.part(.2, .5), .4, 1.1, side=1, press=lambda t: ramp(t, (0, .3), (.5, 1), (1, .9))), "skin-line")


def hip(p):
    """What crosses from pelvis to thigh is drawn with the thigh, which lies on top."""
    p.on("skin", "thigh")
    # tensor fasciae latae swells from the spine of the ilium down and back
    pool(p, cm((-6.0, 5.4), (-1.6, 5.3), (3.4, 5.1), (8.6, 5.2)), 20, 18, "skin-light", .3, .05)
    # before the trochanter a dip, behind it the hollow of the buttock
    pool(p, cm((-4.6, 2.0), (-2.8, 2.3), (-.9, 3.2)), 11, 9, "skin-mid", .16, .05)
    pool(p, cm((-1.6, -3.0), (1.0, -3.5), (4.0, -3.3), (7.4, -2.6)), 16, 12, "skin-mid", .38, .05)
    edge = Line(LOIN[4:-1])
    soft(p, edge.shifted(-40), edge, "skin-mid", .5, rise((0, .2), (.4, 1), (.85, 1), (1, .5)))
    soft(p, edge.shifted(-20), edge, "skin-shade", .4, rise((0, .2), (.4, 1), (.85, 1), (1, .5)))
    p.ink(cluster(edge.shifted(-44), edge, 12, .52, .95, .8, .55, lambda s: -.14 + .2 * s, .05, peak=.6), "skin-hatch")
    # what the underwear's edge throws on the skin
    leg = Line(LEG)
    soft(p, leg.shifted(-8), leg.shifted(2), "skin-shade", .4, rise((0, .1), (.3, .7), (.7, 1), (1, .3)))
    # gluteal fold, shut by the bed
    fold = Line(cm((6.3, -9.15), (6.2, -8.4), (6.6, -7.4), (7.4, -6.4), (8.6, -5.5)))
    pool(p, cm((6.5, -9.6), (6.3, -8.4), (6.8, -7.2), (8.0, -5.8)), 9, 13, "skin-mid", .5)
    p.ink(pen(fold.part(0, .5), [.7, .5, .3, .05]), "skin-line", .75)
    p.ink(pen(cm((8.6, -8.6), (8.6, -7.8), (9.3, -6.8), (10.4, -6.1)), [.3, .8, .4, .05]), "skin-line", .7, cue="full")


def surface(p):
    p.on("surface", "pelvis", "asis-point", "Front spine of the ilium")
    pool(p, cm((-10.9, 7.3), (-9.6, 7.4), (-8.6, 7.7)), 9, 9, "skin-light", .3)
    pool(p, cm((-11.0, 6.0), (-10.0, 6.1), (-9.0, 6.5), (-8.2, 7.0)), 7, 5, "skin-mid", .16)
    p.on("surface", "thigh", "trochanter-rise", "Rise of the greater trochanter")
    pool(p, cm((-3.2, .6), (0, .9), (3.4, .9)), 26, 24, "skin-light", .26, .05)
    pool(p, cm((-1.6, -1.8), (.2, -2.2), (2.4, -1.9)), 9, 7, "skin-mid", .2, .05)
    under = Line(cm((-2.3, -.6), (-1.2, -1.7), (.4, -2.1), (2.0, -1.7)))
    p.ink(pen(under.part(.2, .8), [.05, .35, .3, .05]), "skin-line", .2, cue="lean")


def draw(p):
    flats(p)
    belly(p)
    hip(p)
    thigh_side_thigh.draw(p)
    thigh_side_knee.draw(p)
    surface(p)
