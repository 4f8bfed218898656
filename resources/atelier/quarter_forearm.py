"""Three-quarter plate: elbow and forearm, which comes forward in front of the trunk."""
import math

from engrave import Line, between, contour, glow, hatch, pen, ramp
from quarter_frame import FORE_BACK, FORE_FRONT, fore
from quarter_tools import hump, shade


def draw(p):
    p.on("skin", "forearm")
    p.area([*FORE_FRONT[2:-1], fore(212, 28), fore(216, 0), fore(212, -30), *FORE_BACK[-2:0:-1], (186, 520), (196, 506), (214, 496)], "skin-base")
    ff, fb = Line(Line(FORE_FRONT[2:]).part(0, .88)), Line(Line(FORE_BACK[3:]).part(0, .88))
    p.areas_of(glow(between(ff, fb, .26).part(.02, 1), 18, 15, 6, .6), "skin-light", .13)
    low = lambda s: ramp(s, (0, .05), (.16, .75), (.32, 1), (1, .95))
    shade(p, between(ff, fb, .48), fb, "skin-mid", .125, 6, low)
    shade(p, between(ff, fb, .74), fb, "skin-shade", .16, 4, low)
    p.ink(hatch(ff, fb, 6.4, lambda s: ramp(s, (0, .12), (.15, .28), (.4, .42), (1, .40)), .62, bow=.10, t0=.03, t1=.96,
                half=lambda s: ramp(s, (.14, 0), (.3, .5), (.6, .5), (.8, 0))), "skin-hatch")
    elbow(p)
    back = Line(FORE_BACK)
    p.ink(contour(back.part(.0, .34), .5, 1.9, side=1, press=lambda t: ramp(t, (0, .3), (.3, 1), (1, 1))), "skin-line")
    p.ink(contour(back.part(.28, .93), .6, 2.4, side=1, press=lambda t: ramp(t, (0, .4), (.15, 1), (.8, .9), (1, .6))), "skin-line")
    p.ink(contour(Line(FORE_FRONT[4:]).part(0, .9), .45, 1.4, side=-1), "skin-line")


def elbow(p):
    tip = Line([(181.6, 520), (186, 540), (195, 551.5), (208, 559), (224, 564), (244, 571)])
    inner = Line([(190, 516), (196, 529), (204, 537), (215, 543), (230, 547), (248, 552)])
    shade(p, inner, tip, "skin-mid", .19, 3)
    p.ink(hatch(inner, tip, 4.8, lambda s: .95 * math.sin(math.pi * min(1, s + .12)) ** .7, .48, bow=.06, t0=.08, t1=.8), "skin-hatch")
    # the muscle of the thumb side climbs from the arm's outer ridge over the bend
    ridge = Line([(214, 466), (221, 486), (232, 501), (249, 512), (272, 519)])
    shade(p, ridge.shifted(12), ridge, "skin-mid", .11, 4, hump(1.2))
    p.areas_of(glow([(226, 480), (238, 494), (254, 503), (276, 508)], 5, 7, 4, .4), "skin-light", .11)
    # bend of the elbow: biceps above, forearm below
    crease = Line([(264.5, 490), (259, 494.5), (250, 498), (238, 499.5)])
    shade(p, crease.shifted(9), crease, "skin-shade", .14, 3, lambda s: ramp(s, (0, 1), (.6, .7), (1, 0)))
    p.ink(pen(crease, [.6, 1.5, .9, .05]), "skin-line")
    p.ink(pen([(276, 496), (267, 504), (254, 508)], [.05, .7, .05]), "skin-line", .7, cue="full")
    # outer knob of the elbow, the dimple behind it
    p.areas_of(glow([(194, 505), (204, 508), (216, 505)], 8, 12, 4, .25), "skin-light", .09)
    shade(p, [(195, 524), (203, 528), (212, 522)], [(194, 516), (202, 520.5), (211, 516)], "skin-mid", .14, 3, hump(1.2))
    dimple = Line([(188, 494), (191, 509), (195, 523), (200, 534)])
    shade(p, dimple.shifted(6), dimple, "skin-mid", .14, 3, hump(1.2))
    shade(p, dimple.shifted(-5), dimple, "skin-mid", .12, 3, hump(1.2))
    p.ink([pen([(193, 474), (200, 481), (209, 483)], [.05, .5, .05]), pen([(192, 488), (198, 494), (206, 496)], [.05, .5, .05])],
          "skin-line", .6, cue="older")
