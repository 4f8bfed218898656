"""Thigh from the side: the shirt drawn up over the belly, and the short underwear."""
from engrave import Line, contour, pen
from thigh_side_tools import hump, rise, soft
from thigh_side_frame import LOIN, at, cm

WAIST = cm((-8.0, 9.42), (-8.5, 7.4), (-8.9, 4), (-9.2, 0), (-9.7, -4), (-10.4, -8), (-11.1, -10.95))
LEG = cm((1.6, 9.32), (-.3, 8.1), (-2.2, 6.3), (-3.8, 4.3), (-4.6, 2.4), (-4.5, .6), (-3.7, -1.4), (-2.4, -3.4), (-.6, -5.5), (1.4, -7.5), (3.1, -9.1), (4.5, -10.2))
HEM = cm((-13.2, 10.15), (-14.2, 8.4), (-14.7, 5), (-14.8, 1), (-14.6, -3), (-14.0, -7), (-13.1, -10.2))


def fold(p, points, width, weight=.8, depth=.3, t1=1.0):
    """A fold: its dark valley, a shade on one side, and a line that comes and goes."""
    ln = Line(points)
    soft(p, ln.shifted(width), ln, "cloth-shade", depth, hump(1))
    p.ink(pen(ln.part(0, t1), [.05, weight, weight * .7, weight * .3, .05]), "cloth-line", .7)


def underwear(p):
    top = cm((1.6, 9.32), (.5, 9.66), (-1.2, 9.6), (-3.4, 9.4), (-6.5, 9.55), (-8.0, 9.6))
    low = [WAIST[-1], *[q for q in LOIN if 64 < q[0] < 205], LEG[-1]]
    shape = [(*top[0], "c"), *top[1:-1], (*top[-1], "c"), *WAIST[1:-1], (*low[0], "c"), *low[1:-1], (*low[-1], "c"), *LEG[-2:0:-1]]
    p.area(shape, "cloth-base")
    w, leg, under, up = Line(WAIST), Line(LEG), Line(low), Line(top[::-1])
    soft(p, Line(up.shifted(20)), up, "cloth-light", .7, hump(.5))
    soft(p, under.shifted(-62), under, "cloth-shade", .62, hump(.4))
    soft(p, under.shifted(-26), under, "cloth-shade", .4, hump(.4))
    # the waistband and the sewn edge of the leg
    inner = Line(w.shifted(-13))
    soft(p, inner.shifted(-6), inner, "cloth-shade", .4, hump(.5))
    p.ink(pen(inner, [.1, .3, .25, .4, .5, .3]), "cloth-line", .7)
    p.ink(pen(w, [.3, .5, .3, .45, .7, .7]), "cloth-line")
    seam = Line(leg.shifted(5))
    p.ink(pen(seam.part(.03, .9), [.05, .3, .25, .3, .2, .05]), "cloth-line", .6)
    p.ink(pen(leg, [.4, .7, .45, .35, .5, .8, .8]), "cloth-line")
    p.ink(contour(up.part(0, 1), .4, 1.0, side=-1), "cloth-line")
    p.ink(contour(under.part(0, 1), .4, 1.0, side=1), "cloth-line")
    fold(p, cm((-4.8, 1.6), (-5.8, 1.7), (-7.0, 2.3)), 5, .5)
    fold(p, cm((-4.4, -.4), (-5.6, -1.0), (-7.4, -1.2)), 6, .6)
    fold(p, cm((-3.8, 4.8), (-5.0, 5.3), (-6.6, 6.2)), -5, .5)
    fold(p, cm((-2.0, -4.4), (-4.2, -6.2), (-7.4, -7.0)), 7, .6)
    fold(p, cm((.4, -6.8), (-2.0, -8.4), (-5.4, -9.2)), 7, .6)
    fold(p, cm((-1.0, 7.8), (-3.0, 8.0), (-5.0, 8.4)), -4, .4, .24)


def shirt(p):
    p.linear("wash.shirt", "pelvis", at(-15.9, 2), at(-16.95, 2.1), [(0, "cloth-base"), (.2, "cloth-base"), (1, "cloth-base", 0)])
    top, low = cm((-13.2, 10.15), (-15, 10.4), (-17.4, 10.5)), cm((-17.4, -8.9), (-15.4, -9.4), (-13.1, -10.2))
    p.area([(*HEM[0], "c"), *HEM[1:-1], (*low[-1], "c"), *low[-2:0:-1], (*low[0], "c"), (*top[-1], "c"), top[1]], "wash.shirt")
    h = Line(HEM)
    roll = Line(h.shifted(9, .02, .98))
    soft(p, h.shifted(4, .02, .98), h.part(.02, .98), "cloth-light", .5, hump(.5))
    soft(p, roll.shifted(10), roll, "cloth-shade", .46, hump(.6))
    low_half = Line(HEM[3:])
    soft(p, low_half.shifted(24), low_half, "cloth-shade", .3, rise((0, 0), (.5, 1), (.8, .7), (1, 0)))
    p.ink(contour(h, .45, 1.1, side=-1), "cloth-line")
    for a, e, w in ((.02, .2, .8), (.26, .34, .4), (.5, .72, .7), (.78, .98, 1.0)):
        p.ink(pen(roll.part(a, e), [.05, w, w * .8, .05]), "cloth-line", .75)
    fold(p, cm((-14.6, 6.4), (-15.6, 7.0), (-16.6, 7.2)), 5, .6)
    fold(p, cm((-15.2, -1.4), (-16.0, -1.0), (-16.8, -1.0)), 5, .5)
    fold(p, cm((-14.8, -6), (-15.6, -5.2), (-16.6, -4.9)), 6, .7)
    p.ink(pen(top, [.8, .7, .05]), "cloth-line")
    # its shadow on the belly
    p.on("skin", "pelvis")
    soft(p, h.shifted(-11), h, "skin-mid", .4, hump(.6))


def draw(p):
    p.on("cloth", "pelvis")
    underwear(p)
    shirt(p)
