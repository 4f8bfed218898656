"""Thigh from the side: gluteus maximus and the hamstrings that come out from under it."""
from engrave import Line, contour, pen, ramp, ribbon
from thigh_side_tools import hump, lines, pool, rise, slant, soft
from thigh_side_frame import BACK, LOIN, at, cm

GLUTEUS_TOP = cm((-13.6, -7.2), (-11.4, -5.8), (-8.6, -4.3), (-5.6, -2.9), (-2.8, -1.9), (-.4, -1.3), (2.6, -.9), (6.4, -.9))
GLUTEUS_LOW = cm((-2.4, -10.6), (.4, -10.4), (2.8, -9.6), (4.9, -8.2), (6.6, -6.2), (8.0, -3.9), (9.2, -1.4))
BICEPS_TOP = cm((5.2, -2.2), (9, -1.35), (14, -1.15), (20, -.85), (25, -.45), (30, .1), (34, .3), (38, .1), (41.6, -.5), (44.3, -1.0))
BICEPS_LOW = cm((4.8, -5.6), (8, -5.5), (13, -5.2), (18, -4.7), (24, -4.0), (30, -3.3), (35, -2.9), (39, -2.7), (42, -2.2), (44.4, -1.5))
BEHIND = [*cm((6.4, -6.6), (7.6, -7.6)), *[q for q in Line(BACK).shifted(-6.5, .3, .9) if q[0] > 262]]
HAMSTRINGS = [(*BICEPS_TOP[0], "c"), *BICEPS_TOP[1:-1], (*BICEPS_TOP[-1], "c"), at(42.4, -2.3), at(39.6, -3.4), *BEHIND[::-1], at(4.6, -5)]


def hamstrings(p):
    p.linear("wash.biceps", "thigh", at(20, -.8), at(20.6, -4.8), [(0, "muscle-base"), (.35, "muscle-light"), (1, "muscle-base")])
    p.linear("wash.short", "thigh", at(9, -1), at(26, 0), [(0, "muscle-shade"), (1, "muscle-base")])
    p.on("muscle", "thigh", "hamstrings", "Hamstrings (biceps femoris in front)")
    # semitendinosus and semimembranosus, deeper and darker, along the back
    low = Line(BICEPS_LOW)
    p.area([at(5.0, -5.0, "c"), *cm((9, -5.0), (16, -4.6), (24, -3.7), (32, -2.9), (38, -2.6), (40.6, -3.0, "c")), at(39.6, -3.6), *BEHIND[::-1]], "muscle-shade")
    p.ink(contour(Line(BEHIND), .4, 1.6, side=1, press=lambda t: ramp(t, (0, .3), (.4, 1), (.9, .8), (1, .1))), "muscle-line")
    lines(p, [cm((6.4, -5.8), (6.6, -7.6)), cm((14, -5.5), (14, -6.7)), cm((24, -4.5), (24, -5.1)), cm((34, -3.5), (34, -3.9)), cm((39, -3.2), (39, -3.5))], 3, .5, .7, "muscle-light", lift=.2)
    p.area(ribbon(cm((30, -4.3), (34, -3.95), (38, -3.6), (41, -3.5)), [.1, 2.6, 2.4, .3]), "tendon", .85)
    # short head, from the femur's rough line; long head over it, running to the fibula's head
    p.area(cm((6, -1.0, "c"), (10, -.9), (15, -.8), (20, -.5), (25, 0), (29, .5), (33, .62), (37, .3), (41.2, -.5), (43.4, -.9, "c"), (40, -1.5), (34, -1.7), (26, -1.8), (16, -1.8), (9, -1.9)), "wash.short")
    slant(p, cm((17, -.7), (21, -.4), (25, 0), (30, .5), (36, .35)), cm((22, -1.6), (28, -1.6), (34, -1.6), (38, -1.5), (42, -1.1)), 8, .16, .5, .6)
    top = cm((5.2, -2.2), (9, -1.5), (14, -1.3), (19, -1.15), (24, -1.2), (29, -1.3), (34, -1.4), (39, -1.3), (42, -1.2), (44.3, -1.0))
    p.area([(*top[0], "c"), *top[1:-1], (*top[-1], "c"), (*BICEPS_LOW[-1], "c"), *BICEPS_LOW[-2:0:-1], (*BICEPS_LOW[0], "c")], "wash.biceps")
    lines(p, [cm((6, -2.5), (6, -5.3)), cm((13, -1.7), (13, -4.9)), cm((20, -1.5), (20, -4.2)), cm((28, -1.6), (28, -3.3)), cm((35, -1.7), (35, -2.7)), cm((39, -1.7), (39, -2.4))], 9, .55, .78, lift=.15)
    soft(p, low.shifted(-13), low, "muscle-shade", .5, rise((0, .2), (.3, 1), (.8, .8), (1, 0)))
    p.area(cm((33, -2.0, "c"), (36, -1.75), (39, -1.5), (42, -1.2), (44.4, -.9, "c"), (44.6, -1.5, "c"), (42, -2.1), (39, -2.5), (36, -2.55)), "tendon")
    p.ink([pen(cm((x, y), (x + 3, y + .12), (x + 6, y + .35)), [.05, 1.0, .6]) for x, y in ((28.6, -2.2), (30, -2.7), (29.2, -1.8), (31, -3.0))], "tendon", .85)
    p.ink([pen(cm((34, -2.0), (38, -1.9), (42, -1.5), (44.2, -1.1)), [.05, .4, .4, .1])], "tendon-line", .8)
    p.ink([pen(Line(top), [.1, .8, .8, .7, .6, .6, .3]), pen(cm((27, .25), (31, .6), (35, .5), (38, .15), (41.6, -.5), (44.2, -1.0)), [.05, .5, .7, .7, .6, .2])], "muscle-line", .9)
    p.ink(contour(low, .4, 1.4, side=1, press=lambda t: ramp(t, (0, .3), (.4, 1), (1, .7))), "muscle-line")


def maximus(p):
    p.linear("wash.maximus", "thigh", at(-8, -4), at(-3, -11), [(0, "muscle-light"), (.45, "muscle-base"), (1, "muscle-shade")])
    p.on("muscle", "thigh", "gluteus-maximus", "Gluteus maximus")
    back = Line(LOIN).shifted(-9, .2, .5)
    shape = [(*GLUTEUS_TOP[0], "c"), *GLUTEUS_TOP[1:-1], (*GLUTEUS_TOP[-1], "c"), at(8.2, -1.0), (*GLUTEUS_LOW[-1], "c"), *GLUTEUS_LOW[-2::-1], *back[::-1][1:]]
    p.area(shape, "wash.maximus")
    top, low = Line(GLUTEUS_TOP), Line([*cm((-12.2, -8.9), (-9, -10.0), (-5.4, -10.65)), *GLUTEUS_LOW])
    lines(p, [cm((-13.2, -7.4), (-11.4, -8.9), (-8.6, -10.0), (-5.0, -10.6)), cm((-8.0, -4.3), (-6.2, -6.8), (-3.4, -9.0), (-.6, -10.3)), cm((-1.2, -1.7), (.4, -4.2), (2.2, -6.6), (3.8, -8.8)),
              cm((3.6, -1.2), (5.0, -2.4), (6.2, -4.2), (6.8, -5.8)), cm((6.2, -1.1), (7.2, -1.3), (8.2, -1.5), (8.8, -1.8))], 15, .6, .75, lift=.16)
    soft(p, low.shifted(-26), low, "muscle-shade", .55, rise((0, .3), (.4, 1), (.85, .8), (1, .2)))
    pool(p, cm((-9, -6.6), (-4, -5.0), (1, -3.8)), 12, 9, "muscle-light", .4)
    p.ink(pen(top, [.2, .8, .8, .7, .4, .05]), "muscle-line")
    p.ink(contour(low, .5, 1.5, side=1, press=lambda t: ramp(t, (0, .3), (.4, 1), (.8, 1), (1, .2))), "muscle-line")


def draw(p):
    hamstrings(p)
    maximus(p)
