"""Thigh from the front: gown and brief (they go with the skin), the sheet over the other leg and the shins, the bed."""
from engrave import Line, between, pen
from side_tools import hump, rise, soft
from thigh_front_frame import INNER, OUTER, across, at, of

GOWN = of([(-136, -44), (-131, -30), (-127, -6), (-125, 24), (-126, 60), (-128, 96), (-131, 132), (-137, 164), (-147, 190), (-161, 208)])
BAND = of([(-68, -45.2), (-67, -30), (-64, 4), (-60, 44), (-57, 80), (-56, 113), (-57, 150), (-60, 190), (-64, 232), (-68, 272)])
OPENING = of([(-43, -44.7), (-46, -30), (-47, -12), (-45, 6), (-38, 25), (-26, 44), (-8, 65), (13, 83), (33, 97), (50, 107), (63, 112.6), (74, 115)])
# the sheet's hem: from the other hip down to the crotch, along between the thighs, across the shin below the tuberosity
HEM = of([(-14, 262), (-4, 240), (14, 207), (37, 170), (55, 141), (68, 125), (88, 117.4), (120, 113.4), (160, 107.4), (206, 98.4), (256, 90), (310, 83), (362, 78),
          (408, 72.4), (442, 65), (466, 54), (480, 38), (487, 18), (489, -6), (487, -28), (485, -44), (487, -57), (495, -69), (510, -78), (534, -84)])

FAR = of([(-14, 262), (20, 267.6), (80, 272), (160, 273.6), (250, 271), (330, 265), (400, 261.6), (460, 262), (520, 265), (590, 268)])


def fold(p, points, width, weight=.9, depth=.34, tone="cloth-shade"):
    """A fold: its valley, a shade on one side, and a line that comes and goes."""
    ln = Line(points)
    soft(p, ln.shifted(width), ln, tone, depth, 5, hump(1))
    if weight:
        p.ink(pen(ln, [.05, weight, weight * .7, weight * .3, .05]), "cloth-line", .75)


def gown(p):
    p.on("surface", "pelvis")
    p.area([(*GOWN[0], "c"), *GOWN[1:-1], (*GOWN[-1], "c"), at(-161, -46, "c")], "wash.gown")
    hem, fade = Line(GOWN), rise((0, .8), (.3, 1), (.5, .4), (.66, 0), (1, 0))
    soft(p, hem.shifted(7), hem, "skin-shade", .3, 6, fade)
    roll = Line(hem.shifted(-6.5))
    soft(p, roll.shifted(-7), roll, "cloth-shade", .36, 5, fade)
    p.ink(pen(hem.part(0, .58), [.5, 1.0, .8, .6, .3, .05]), "cloth-line", .85)
    p.ink(pen(roll.part(.02, .46), [.05, .5, .4, .05]), "cloth-line", .6)


def brief(p):
    p.on("surface", "pelvis")
    p.area([(*BAND[0], "c"), *BAND[1:-1], (*BAND[-1], "c"), at(20, 272, "c"), at(74, 150), (*OPENING[-1], "c"), *OPENING[-2:0:-1], (*OPENING[0], "c")], "wash.brief")
    band, leg = Line(BAND), Line(OPENING)
    fade = rise((0, .6), (.2, 1), (.4, .7), (.6, 0), (1, 0))
    soft(p, leg.shifted(8, .1, .97), leg.part(.1, .97), "skin-shade", .3, 5, hump(.7))
    soft(p, leg.shifted(-12), leg, "cloth-shade", .42, 6, rise((0, .8), (.4, .7), (.8, 1), (1, .4)))
    low = Line(band.shifted(9))
    soft(p, low.shifted(7), low, "cloth-shade", .36, 5, fade)
    side = Line([at(q, across(OUTER, q)) for q in (-68, -62, -56, -50, -43)])
    soft(p, side.shifted(-16), side, "cloth-shade", .5, 5, lambda s: 1)
    p.ink(pen(side, [1.1, 1.3, 1.1]), "cloth-line", .9)
    p.ink(pen(band.part(0, .5), [.9, .8, .6, .5, .3, .05]), "cloth-line", .8)
    p.ink(pen(low.part(.05, .45), [.5, .5, .4, .05]), "cloth-line", .6)
    p.ink(pen(leg, [1.1, .9, .6, .6, .8, .9, .4]), "cloth-line", .85)
    p.ink(pen(leg.shifted(-4, .16, .9), [.05, .4, .4, .4, .05]), "cloth-line", .55)
    fold(p, of([(46, 105), (16, 97), (-12, 96), (-34, 101)]), 8, .7, .34)
    fold(p, of([(60, 114), (36, 115), (8, 122), (-14, 132)]), 8, .5, .3)
    fold(p, of([(-14, 62), (-30, 62), (-44, 66)]), 5, .5, .24)


def crease(p, points, width, weight=.8, depth=.3):
    """A fold of the sheet: one side in shade, the line swelling and dying."""
    ln = Line(points)
    soft(p, ln.shifted(width), ln, "cloth-shade", depth, 5, hump(1))
    p.ink(pen(ln, [.05, weight * .7, weight, weight * .5, .05]), "cloth-line", .7)


def sheet(p):
    """All of it hangs on the pelvis, so that it keeps its drape when a stout thigh pushes it aside."""
    p.on("surface", "thigh")
    # the bed between the legs: up to the inner outline, and well in under the sheet
    gap = [at(q, across(INNER, q) + .1) for q in range(64, 486, 14)]
    p.area([(*gap[0], "c"), *gap[1:-1], (*gap[-1], "c"), at(486, 80, "c"), at(300, 120), at(180, 128), at(74, 140, "c")], "cloth-base")
    p.on("cloth", "pelvis")
    hem = Line(HEM)
    cast = Line(hem.part(.27, .77))
    soft(p, cast.shifted(11), cast, "cloth-shade", .6, 7, hump(.5))
    p.area([(*HEM[0], "c"), *HEM[1:-1], (*HEM[-1], "c"), at(588, -90, "c"), (*FAR[-1], "c"), *FAR[-2:0:-1]], "wash.sheet")
    # the other leg under it: a broad back in the light, its near side falling into shade down to a crease, then the cloth lies flat
    p.area([at(50, 147, "c"), at(37, 170), at(14, 207), at(4, 224, "c"), at(588, 254, "c"), at(588, 173, "c")], "shade.near")
    p.area([at(50, 147, "c"), at(588, 173, "c"), at(588, 132, "c"), at(120, 113.4, "c"), at(88, 117.4), at(68, 125), at(56, 139)], "shade.flat")
    p.ink(pen(of([(110, 152), (170, 151), (240, 154), (310, 160), (380, 163.6), (430, 164)]), [.05, .3, .45, .3, .05]), "cloth-line", .5)
    p.ink(pen(Line(FAR).part(.08, 1), [.05, .3, .5, .5, .4, .4, .4, .4]), "cloth-line", .7)
    # the turned hem
    roll = Line(hem.shifted(-5.5))
    soft(p, roll.shifted(-7), roll, "cloth-shade", .34, 5, rise((0, 0), (.25, .8), (.9, 1), (1, 0)))
    p.ink(pen(hem.part(.03, 1), [.05, .2, .5, .6, .7, .7, .6, .5, .6, .8, 1.0, 1.2, 1.4, 1.3, .9, .05]), "cloth-line", .85)
    p.ink([pen(roll.part(.1, .24), [.05, .35, .05]), pen(roll.part(.32, .5), [.05, .45, .4, .05]), pen(roll.part(.6, .9), [.05, .5, .6, .5, .05])], "cloth-line", .6)
    # folds drawn from the crotch over the other thigh
    crease(p, of([(80, 130), (112, 134), (152, 132), (196, 125), (240, 117)]), 7, .7, .3)
    crease(p, of([(58, 150), (70, 174), (84, 190), (104, 206), (132, 219), (168, 226), (204, 229)]), -10, .8, .3)
    crease(p, of([(30, 184), (40, 212), (60, 234), (90, 246)]), 10, .5, .26)
    crease(p, of([(106, 120.6), (146, 119), (196, 112), (240, 106)]), 5, .45, .24)
    # round the corner at the knee they open like a fan
    crease(p, of([(446, 74), (430, 88), (404, 100), (364, 108), (322, 112)]), 7, .7, .3)
    crease(p, of([(466, 66), (462, 90), (446, 114), (416, 134), (374, 146)]), -10, .9, .36)
    crease(p, of([(481, 52), (498, 84), (506, 118), (505, 150), (501, 174), (488, 200), (468, 220)]), 12, .9, .34)
    crease(p, of([(489, 26), (510, 44), (527, 70), (536, 102)]), 10, .6, .3)
    # the shin under the cloth: lit along the top, its outer side in shade, the cloth falling to the bed
    shin = Line(of([(486, -44), (502, -52), (524, -57), (552, -59), (585, -57)]))
    p.area([*of([(489, -2), (508, -6), (528, -8), (554, -8), (585, -6)]), *shin.pts[::-12]], "shade.shin")
    soft(p, shin.part(.12, .8), Line(shin.shifted(16)).part(.14, .8), "cloth-shade", .2, 5, rise((0, 0), (.5, 1), (1, 0)))
    p.ink(pen(shin.part(.02, .8), [.3, .9, .7, .4, .05]), "cloth-line", .75)
    crease(p, of([(489, 0), (510, 10), (530, 12), (552, 9)]), -7, .6, .26)
    crease(p, of([(488, -24), (502, -33), (520, -37), (540, -37)]), -6, .5, .26)
    crease(p, of([(493, -65), (512, -67), (532, -72)]), 6, .5, .26)


def shadow(p):
    """What the leg throws on the bed: outside the outline, so that no touch on it counts as skin."""
    p.on("surface", "thigh")
    edge = Line([at(q, across(OUTER, q) - .1) for q in range(-120, 500, 14)])
    # in a tone of ink, which on dark paper stays dark
    soft(p, edge.shifted(lambda t: 7 + 15 * t), edge, "skin-line", .2, 9, rise((0, 0), (.3, .6), (.56, 1), (.94, .9), (1, 0)))
    soft(p, edge.shifted(5), edge, "skin-line", .2, 6, rise((0, 0), (.3, .7), (.56, 1), (.94, .8), (1, 0)))
    p.ink([pen(of(q), [.05, .5, .4, .05]) for q in ([(-20, -70), (30, -79), (90, -85), (150, -86)], [(214, -84), (280, -83), (340, -76), (380, -74)],
                                                    [(60, -96), (130, -100), (200, -99)])], "cloth-shade", .8)


def draw(p):
    p.linear("wash.gown", "pelvis", at(-160, 0), at(-150, 0), [(0, "cloth-base", 0), (1, "cloth-base")])
    p.linear("wash.brief", "pelvis", at(0, 132), at(0, 194), [(0, "cloth-base"), (.4, "cloth-base", .7), (1, "cloth-base", 0)])
    p.linear("wash.sheet", "pelvis", at(-18, 0), at(52, 0), [(0, "cloth-light", 0), (.4, "cloth-light", .6), (.8, "cloth-light"), (1, "cloth-light")])
    # straight gradients only: their two ends follow a stout or a lean body as the shapes do
    p.linear("shade.near", "pelvis", at(287, 240), at(291, 159), [(0, "cloth-shade", 0), (.3, "cloth-shade", .05), (.65, "cloth-shade", .2), (1, "cloth-shade", .46)])
    p.linear("shade.flat", "pelvis", at(291, 159), at(293, 118), [(0, "cloth-shade", .46), (.4, "cloth-shade", .18), (1, "cloth-shade", 0)])
    p.linear("shade.shin", "pelvis", at(526, -4), at(526, -58), [(0, "cloth-shade", 0), (.5, "cloth-shade", .2), (1, "cloth-shade", .55)])
    gown(p)
    brief(p)
    shadow(p)
    sheet(p)
