"""Thigh from the side: the hamstrings, which come out from under gluteus maximus."""
from engrave import Line, contour, pen, ramp, ribbon
from thigh_side_tools import lines, rise, slant, soft
from thigh_side_frame import BACK, at, cm
from thigh_side_seat import GLUTEUS_LOW

BICEPS_TOP = cm((8.9, -2.0), (11, -1.4), (14, -1.15), (20, -.85), (25, -.45), (30, .1), (34, .3), (38, .1), (41.6, -.5), (44.3, -1.0))
BICEPS_LOW = cm((7.3, -5.1), (9.6, -5.4), (13, -5.2), (18, -4.7), (24, -4.0), (30, -3.3), (35, -2.9), (39, -2.7), (42, -2.2), (44.4, -1.5))
BEHIND = [*cm((6.4, -6.6), (7.6, -7.6)), *[q for q in Line(BACK).shifted(-6.5, .3, .9) if q[0] > 262]]
HAMSTRINGS = [(*BICEPS_TOP[0], "c"), *BICEPS_TOP[1:-1], (*BICEPS_TOP[-1], "c"), at(42.4, -2.3), at(39.6, -3.4), *BEHIND[::-1], at(7.3, -5.2), at(8.2, -3.5)]


def hamstrings(p):
    p.linear("wash.biceps", "thigh", at(20, -.8), at(20.6, -4.8), [(0, "muscle-base"), (.35, "muscle-light"), (1, "muscle-base")])
    p.linear("wash.short", "thigh", at(9, -1), at(26, 0), [(0, "muscle-shade"), (1, "muscle-base")])
    p.on("muscle", "thigh", "hamstrings", "Hamstrings (biceps femoris in front)")
    # semitendinosus and semimembranosus, deeper and darker, along the back
    low = Line(BICEPS_LOW)
    p.area([at(7.5, -4.8, "c"), *cm((11, -4.9), (16, -4.6), (24, -3.7), (32, -2.9), (38, -2.6), (40.6, -3.0, "c")), at(39.6, -3.6), *BEHIND[::-1]], "muscle-shade")
    p.ink(contour(Line(BEHIND), .4, 1.6, side=1, press=lambda t: ramp(t, (0, .3), (.4, 1), (.9, .8), (1, .1))), "muscle-line")
    lines(p, [cm((7.8, -5.8), (7.6, -7.2)), cm((14, -5.5), (14, -6.7)), cm((24, -4.5), (24, -5.1)), cm((34, -3.5), (34, -3.9)), cm((39, -3.2), (39, -3.5))], 3, .5, .7, "muscle-light", lift=.2)
    p.area(ribbon(cm((30, -4.3), (34, -3.95), (38, -3.6), (41, -3.5)), [.1, 2.6, 2.4, .3]), "tendon", .85)
    # short head, from the femur's rough line; long head over it, running to the fibula's head
    p.area(cm((8.6, -1.1, "c"), (11, -.9), (15, -.8), (20, -.5), (25, 0), (29, .5), (33, .62), (37, .3), (41.2, -.5), (43.4, -.9, "c"), (40, -1.5), (34, -1.7), (26, -1.8), (16, -1.9), (11, -2.2), (8.7, -2.4)), "wash.short")
    slant(p, cm((17, -.7), (21, -.4), (25, 0), (30, .5), (36, .35)), cm((22, -1.6), (28, -1.6), (34, -1.6), (38, -1.5), (42, -1.1)), 6, .16, .5, .6)
    top = cm((8.8, -2.0), (11, -1.6), (14, -1.3), (19, -1.15), (24, -1.2), (29, -1.3), (34, -1.4), (39, -1.3), (42, -1.2), (44.3, -1.0))
    p.area([(*top[0], "c"), *top[1:-1], (*top[-1], "c"), (*BICEPS_LOW[-1], "c"), *BICEPS_LOW[-2:0:-1], (*BICEPS_LOW[0], "c"), at(8.2, -3.5)], "wash.biceps")
    lines(p, [cm((8.8, -2.4), (7.7, -4.9)), cm((13, -1.7), (13, -4.9)), cm((20, -1.5), (20, -4.2)), cm((28, -1.6), (28, -3.3)), cm((35, -1.7), (35, -2.7)), cm((39, -1.7), (39, -2.4))], 9, .55, .78, lift=.15)
    soft(p, low.shifted(-13), low, "muscle-shade", .5, rise((0, .2), (.3, 1), (.8, .8), (1, 0)))
    p.area(cm((33, -2.0, "c"), (36, -1.75), (39, -1.5), (42, -1.2), (44.4, -.9, "c"), (44.6, -1.5, "c"), (42, -2.1), (39, -2.5), (36, -2.55)), "tendon")
    p.ink([pen(cm((x, y), (x + 3, y + .12), (x + 6, y + .35)), [.05, 1.0, .6]) for x, y in ((28.6, -2.2), (30, -2.7), (29.2, -1.8), (31, -3.0))], "tendon", .85)
    p.ink([pen(cm((34, -2.0), (38, -1.9), (42, -1.5), (44.2, -1.1)), [.05, .4, .4, .1])], "tendon-line", .8)
    p.ink([pen(Line(top), [.1, .8, .8, .7, .6, .6, .3]), pen(cm((27, .25), (31, .6), (35, .5), (38, .15), (41.6, -.5), (44.2, -1.0)), [.05, .5, .7, .7, .6, .2])], "muscle-line", .9)
    p.ink(contour(low, .4, 1.4, side=1, press=lambda t: ramp(t, (0, .3), (.4, 1), (1, .7))), "muscle-line")


def draw(p):
    hamstrings(p)
    # they come out from under gluteus maximus, which is drawn with the pelvis: its lower border falls here
    low = Line(GLUTEUS_LOW)
    soft(p, low.shifted(8, .6, 1), low.part(.6, 1), "muscle-shade", .3, rise((0, .2), (.4, 1), (1, .3)))
    p.ink(pen(low, [.1, 1.0, 1.2, 1.0, .3], .62, 1), "muscle-line")
