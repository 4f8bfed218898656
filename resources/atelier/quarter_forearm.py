"""Three-quarter plate: elbow and forearm, which comes forward in front of the trunk."""
import math

from engrave import Line, between, contour, hatch, pen, ramp
from quarter_frame import FORE_BACK, FORE_FRONT
from quarter_tools import band, hump, shade


def draw(p):
    p.on("skin", "forearm")
    p.area([*FORE_FRONT[2:], *FORE_BACK[:0:-1], (186, 520), (196, 506), (214, 496)], "skin-base")
    ff, fb = Line(FORE_FRONT[2:]), Line(FORE_BACK[3:])
    glow = lambda s: math.sin(math.pi * min(1, s * 1.02)) ** .8
    shade(p, between(ff, fb, .08), between(ff, fb, .26), "skin-light", .2, 4, glow)
    shade(p, between(ff, fb, .5), between(ff, fb, .26), "skin-light", .15, 6, glow)
    low = lambda s: ramp(s, (0, .1), (.15, .8), (.3, 1), (1, .95))
    shade(p, between(ff, fb, .48), fb, "skin-mid", .15, 6, low)
    shade(p, between(ff, fb, .74), fb, "skin-shade", .15, 4, low)
    p.ink(hatch(ff, fb, 4.4, lambda s: ramp(s, (0, .12), (.15, .3), (.4, .42), (1, .40)), .62, bow=.10, t0=.02, t1=.9), "skin-hatch")
    p.ink(hatch(between(ff, fb, .3), fb, 4.9, lambda s: ramp(s, (0, .1), (.3, .3), (1, .34)), .48, bow=.08, t0=.12, t1=.85, skew=.05, seed=.7), "skin-hatch", .8)
    elbow(p)
    back = Line(FORE_BACK)
    p.ink(contour(back.part(.0, .34), .5, 1.9, side=1, press=lambda t: ramp(t, (0, .3), (.3, 1), (1, 1))), "skin-line")
    p.ink(contour(back.part(.28, 1), .6, 2.4, side=1, press=lambda t: ramp(t, (0, .4), (.15, 1), (1, 1))), "skin-line")
    p.ink(contour(FORE_FRONT[4:], .45, 1.4, side=-1), "skin-line")


def elbow(p):
    tip = Line([(181.6, 520), (186, 540), (195, 551.5), (208, 559), (224, 564), (244, 571)])
    inner = Line([(190, 516), (196, 529), (204, 537), (215, 543), (230, 547), (248, 552)])
    shade(p, inner, tip, "skin-mid", .16, 4)
    p.ink(hatch(inner, tip, 4.6, lambda s: .95 * math.sin(math.pi * min(1, s + .12)) ** .7, .48, bow=.06, t0=.08, t1=.9), "skin-hatch")
    # the muscle of the thumb side climbs from the arm's outer ridge over the bend
    ridge = Line([(214, 470), (221, 488), (232, 502), (248, 512), (268, 518)])
    shade(p, ridge.shifted(10), ridge, "skin-mid", .11, 4, hump(.8))
    shade(p, ridge.shifted(-11), ridge, "skin-light", .12, 4, hump(.8))
    # bend of the elbow: biceps above, forearm below
    crease = Line([(269, 482), (262, 491), (251, 497), (238, 499)])
    shade(p, crease.shifted(-9), crease, "skin-shade", .13, 4, lambda s: ramp(s, (0, 1), (.6, .8), (1, 0)))
    p.ink(pen(crease, [1.7, 1.5, 1.0, .5, .05]), "skin-line")
    # outer knob of the elbow, the dimple behind it
    knob = Line([(196, 519), (202, 521.5), (209, 519), (213, 513)])
    band(p, [(197, 512), (203, 509), (209, 508)], 6, "skin-light", .14, 4)
    shade(p, knob.shifted(6), knob, "skin-mid", .14, 3, hump(.9))
    p.ink(pen(knob, [.05, .4, .4, .05]), "skin-line", .5)
    dimple = Line([(189, 500), (192, 514), (195, 527), (200, 535)])
    band(p, dimple, 6, "skin-mid", .12, 4)
