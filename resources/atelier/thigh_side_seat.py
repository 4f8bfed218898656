"""Thigh from the side: gluteus maximus, held to the pelvis so that a heavy body does not tear it from the crest."""
from engrave import Line, contour, pen, ramp
from thigh_side_tools import lines, pool, rise, soft
from thigh_side_frame import LOIN, at, cm

GLUTEUS_TOP = cm((-13.6, -7.2), (-11.4, -5.8), (-8.6, -4.3), (-5.6, -2.9), (-2.8, -1.9), (-.4, -1.3), (2.6, -.9), (6.4, -.9))
GLUTEUS_LOW = cm((-2.4, -10.9), (.4, -10.6), (2.8, -9.6), (4.9, -8.2), (6.6, -6.2), (8.0, -3.9), (9.2, -1.4))


def maximus(p):
    p.linear("wash.maximus", "pelvis", at(-8, -4), at(-3, -11), [(0, "muscle-light"), (.45, "muscle-base"), (1, "muscle-shade")])
    p.on("muscle", "pelvis", "gluteus-maximus", "Gluteus maximus")
    # a dark ground under its lower border, where hamstrings part from it on a heavy body
    border = Line(GLUTEUS_LOW)
    one, two = border.part(.69, 1), border.shifted(15, .74, 1)[::-1]
    p.area([(*one[0], "c"), *one[1:-1], (*one[-1], "c"), (*two[0], "c"), *two[1:-1], (*two[-1], "c")], "muscle-shade")
    back = Line(LOIN).shifted(-9.5, .2, .5)
    shape = [(*GLUTEUS_TOP[0], "c"), *GLUTEUS_TOP[1:-1], (*GLUTEUS_TOP[-1], "c"), at(8.2, -1.0), (*GLUTEUS_LOW[-1], "c"), *GLUTEUS_LOW[-2::-1], *back[::-1][1:]]
    p.area(shape, "wash.maximus")
    top, low = Line(GLUTEUS_TOP), Line([*back[:-1], *GLUTEUS_LOW])
    lines(p, [cm((-13.2, -7.4), (-11.4, -8.9), (-8.6, -10.0), (-5.0, -10.6)), cm((-8.0, -4.3), (-6.2, -6.8), (-3.4, -9.0), (-.6, -10.3)), cm((-1.2, -1.7), (.4, -4.2), (2.2, -6.6), (3.8, -8.8)),
              cm((3.6, -1.2), (5.0, -2.4), (6.2, -4.2), (6.8, -5.8)), cm((6.2, -1.1), (7.2, -1.3), (8.2, -1.5), (8.8, -1.8))], 15, .6, .75, lift=.16)
    soft(p, low.shifted(-26), low, "muscle-shade", .55, rise((0, .3), (.4, 1), (.85, .8), (1, .2)))
    pool(p, cm((-9, -6.6), (-4, -5.0), (1, -3.8)), 12, 9, "muscle-light", .4)
    p.ink(pen(top, [.2, .8, .8, .7, .4, .05]), "muscle-line")
    p.ink(contour(low, .5, 1.5, side=1, press=lambda t: ramp(t, (0, .3), (.4, 1), (.8, 1), (1, .2))), "muscle-line")
