"""Three-quarter plate: the skin of neck and chest, and the order of painting."""
import quarter_arm
import quarter_cloth
import quarter_forearm
from engrave import Line, between, contour, echo, glow, hatch, pen, ramp
from quarter_frame import JAW, MIDLINE, NECK_BACK, NECK_FRONT, TRUNK_BACK
from quarter_tools import hump, shade

FOLD = [(268, 280), (280, 296), (290, 309), (304, 324), (322, 338), (342, 349), (362, 356)]      # lower border of the breast muscle


def trunk(p):
    p.on("skin", "trunk")
    p.area([(290, 4, "c"), *NECK_BACK[1:-3], *TRUNK_BACK[:8], (206, 362, "c"), *quarter_cloth.ROLL[2:-1], (466, 178, "c"),
            (*NECK_FRONT[8], "c"), *NECK_FRONT[7:2:-1], (405, 124), (408, 117.5, "c"), (420, 118.5), (431, 115), (438.5, 106.5), (441, 94), (440, 60), (426, 4, "c")],
           "wash.trunk")
    hollow(p)
    chest(p)
    neck(p)
    back, front = Line([*NECK_BACK[:-2], *TRUNK_BACK[:3]]), Line(NECK_FRONT)
    p.ink(pen(TRUNK_BACK[:8], [.05, .6, .7, .8, .8, .8]), "skin-line")
    p.ink(contour(back.part(.2, 1), .3, 1.0, side=-1, press=lambda t: ramp(t, (0, .3), (.2, 1), (.7, .9), (1, .5))), "skin-line")
    p.ink(contour(front.part(.26, .555), .4, 1.4, side=-1), "skin-line")
    p.ink(pen(front.part(.04, .30), [.3, 1.7, 1.9, 1.5, .3]), "skin-line")
    p.ink(pen(Line(JAW).part(.1, .96), [.05, .25, .4, .6, .85, 1.1, 1.2, .9, .4, .05]), "skin-line", .9)


def hollow(p):
    """Side of the chest between arm and front fold: in the arm's shadow, under the overhang."""
    arm = Line([(268, 290), (266, 320), (264, 341), (263, 366)])      # runs on under the arm: a lean one is narrower
    off = Line([(300, 298), (318, 324), (334, 346), (338, 368)])
    shade(p, off, arm, "skin-shade", .1, 6, lambda s: ramp(s, (0, .5), (.4, .8), (1, 1)))
    fold = Line(FOLD)
    shade(p, fold.shifted(lambda t: 16 - 8 * t), fold, "skin-mid", .16, 4, lambda s: ramp(s, (0, 1), (.6, .8), (1, 0)))
    p.ink(hatch(Line([(298, 304), (308, 324), (313, 342), (310, 366)]), arm, 4.3, lambda s: ramp(s, (0, .8), (.4, 1), (1, 1)), .55, bow=-.05, t0=.12, t1=.98, skew=-.03), "skin-hatch")
    # the breast muscle above its border is in the light again
    p.area([(262, 256, "c"), (268, 280, "c"), *FOLD[1:-1], (*FOLD[-1], "c"), (372, 340), (360, 310), (336, 282), (304, 262)], "skin-base")
    p.ink(echo(fold.part(.2, .9), 3, 2.8, .5, .82, .07), "skin-hatch", .9)
    p.ink(echo(fold.part(.2, .9)[::-1], 3, 3, .45, .8, .1), "skin-hatch", .8)
    p.ink(pen(fold, [.8, 1.6, 1.8, 1.3, .8, .4, .05]), "skin-line")


def chest(p):
    mid = Line(MIDLINE)
    away = Line([(460, 196), (456, 230), (448, 264), (434, 296), (412, 324), (388, 344)])
    turn = lambda s: ramp(s, (0, 0), (.12, .1), (.45, 1), (1, 1))
    shade(p, between(mid, away, .15), away, "skin-mid", .18, 4, turn)
    shade(p, between(mid, away, .5), away, "skin-shade", .14, 3, turn)
    p.ink(hatch(between(mid, away, .3), away, 5.4, lambda s: ramp(s, (.1, .15), (.45, .75), (1, .8)),
                lambda s: ramp(s, (.1, .15), (.4, .55), (1, .6)), bow=.12, t0=.12, t1=.86), "skin-hatch")
    # furrow of the breastbone between two low swells
    p.areas_of(glow([(381, 222), (391, 244), (402, 272), (410, 300), (416, 330)], 17, 15, 6, .25), "skin-mid", .08)
    p.areas_of(glow([(300, 240), (322, 246), (346, 260), (366, 282)], 24, 20, 6, .3), "skin-light", .11)
    # where the muscle turns down to its lower border
    p.areas_of(glow([(292, 298), (308, 317), (328, 334), (350, 344)], 9, 16, 4, .3), "skin-mid", .09)
    p.ink(pen([(287, 312), (297, 322), (311, 331)], [.5, 1.0, .05]), "skin-line", .75, cue="full")
    # under the collar bone, and the groove against the deltoid
    p.areas_of(glow([(284, 209), (306, 212), (330, 214), (352, 219)], 9, 5, 4, .4), "skin-mid", .1)
    p.areas_of(glow([(278, 208), (286, 224), (290, 246), (289, 272), (285, 292)], 9, 13, 5, .4), "skin-mid", .13)
    p.areas_of(glow([(282, 250), (284, 270), (284, 286), (282, 300)], 5, 10, 4, .4), "skin-shade", .12)
    groove = Line([(286, 232), (283, 256), (279, 278), (275, 298)])
    p.ink(hatch(Line([(293, 232), (298, 258), (299, 280), (295, 302)]), groove, 4.4, lambda s: ramp(s, (0, .3), (.5, .8), (1, 1)),
                lambda s: ramp(s, (0, .15), (.6, .45), (1, .55)), bow=-.05, t0=.25, t1=.95, skew=-.04), "skin-hatch")


def neck(p):
    jaw = Line(Line(JAW).part(.08, .73))
    under = Line([(298, 60), (301, 78), (311, 97), (328, 112), (350, 123), (372, 131), (390, 134), (402.5, 130)])
    fall = lambda s: ramp(s, (0, 0), (.4, .6), (.8, 1), (1, 1))
    shade(p, under, jaw, "skin-mid", .2, 3, fall)
    shade(p, between(under, jaw, .5), jaw, "skin-shade", .12, 3, fall)
    p.ink(hatch(under, jaw, 5.6, lambda s: ramp(s, (0, .2), (.5, .65), (.9, .85), (1, .8)), lambda s: ramp(s, (.2, 0), (.6, .45), (1, .5)), bow=.14, t0=.38, t1=.97), "skin-hatch")
    # near strap of the neck: lit on its back, turning into shade in front
    scm = Line([(308, 86), (320, 110), (335, 140), (350, 168), (362, 190), (369, 204)])
    shade(p, scm.shifted(-15), scm, "skin-mid", .14, 4, lambda s: ramp(s, (0, 0), (.4, .7), (.85, 1), (1, .4)))
    p.areas_of(glow([(302, 92), (314, 120), (328, 150), (344, 180), (357, 200)], 7, 6, 5, .5), "skin-light", .12)
    p.ink(pen(scm.part(.24, 1), [.05, .35, .6, .9, 1.2, .3]), "skin-line", .8)
    p.ink(pen([(311, 138), (320, 158), (330, 177), (338, 190), (341, 198)], [.05, .3, .5, .5, .05]), "skin-line", .6)
    # throat and far strap
    wind = Line([(384, 138), (384, 152), (384, 168), (383, 184), (381, 198)])
    edge = Line([(404.5, 124), (404, 136), (403, 148), (402, 160), (397, 176), (390, 194)])
    shade(p, wind, edge, "skin-mid", .18, 3, lambda s: ramp(s, (0, .8), (.5, 1), (1, .5)))
    p.ink(hatch(wind, edge, 5.4, lambda s: ramp(s, (0, .8), (.6, .75), (1, .5)), .5, bow=.12, t0=.12, t1=.94), "skin-hatch")
    p.ink(pen([(403.5, 158), (399, 174), (392, 192), (386, 205)], [.3, .9, .9, .2]), "skin-line", .8)
    # pit of the neck between the two tendons
    p.areas_of(glow([(367, 200), (373, 204), (379, 205), (385, 201)], 6, 8, 4, .5), "skin-shade", .14)
    p.ink(pen([(368.5, 205), (372, 209.5), (378, 211), (384, 208)], [.1, .8, 1.0, .1]), "skin-line", .85)
    # hollow above the clavicle: a shallow dish, lines following its rim
    p.areas_of(glow([(272, 174), (290, 175), (308, 177), (328, 186)], 9, 13, 6, .4), "skin-mid", .14)
    p.ink(echo(Line([(334, 191), (318, 185), (300, 181), (282, 179.5), (268, 179)]), 4, 3.2, .55, .82, .08), "skin-hatch", .85)
    # edge of the trapezius, its long light slope
    trap = Line([(292, 108), (290, 126), (283, 143), (270, 158), (254, 170), (238, 178)])
    shade(p, trap.shifted(-12), trap, "skin-mid", .11, 4, hump(1.1))
    p.areas_of(glow([(285, 122), (276, 140), (258, 155), (238, 166), (216, 176)], 7, 6, 4, .4), "skin-light", .12)
    p.ink(pen(trap.part(.2, .85), [.05, .4, .5, .35, .05]), "skin-line", .6)
    # ear lobe
    p.ink([pen([(295.5, 24), (294.5, 36), (297, 47), (302.5, 51.5), (306, 46)], [.05, .5, .8, .6, .05]), pen([(301, 32), (300, 40), (302, 46)], [.05, .35, .05])],
          "skin-line", .55)
    p.ink([pen([(352, 140), (366, 145), (382, 145)], [.05, .5, .05]), pen([(358, 156), (370, 160), (384, 160)], [.05, .5, .05])],
          "skin-line", .6, cue="older")


def draw(p):
    p.linear("wash.trunk", "trunk", (345, 128), (388, 40), [(0, "skin-base"), (0.34, "skin-base"), (0.55, "skin-base", .5), (0.7, "skin-base", .17), (0.9, "skin-base", 0)])
    quarter_cloth.washes(p)
    trunk(p)
    quarter_cloth.gown(p)
    quarter_arm.draw(p)
    quarter_forearm.draw(p)
    quarter_arm.surface(p)
    quarter_cloth.blanket(p)
