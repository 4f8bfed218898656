"""Thigh from the front: gown and brief (they go with the skin), the sheet over the other leg and the shins, the bed."""
from engrave import Line, between, feather, pen
from side_tools import each, hump, rise, soft
from thigh_front_frame import INNER, OUTER, across, at, of

GOWN = of([(-136, -44), (-131, -30), (-127, -6), (-125, 24), (-126, 60), (-128, 96), (-131, 132), (-137, 164), (-147, 190), (-161, 208)])
BAND = of([(-68, -45.2), (-67, -30), (-64, 4), (-60, 44), (-57, 80), (-56, 113), (-57, 150), (-60, 190), (-64, 232), (-68, 272)])
OPENING = of([(-52, -45), (-54, -30), (-54, -12), (-50, 8), (-41, 28), (-27, 46), (-8, 65), (13, 83), (33, 97), (50, 107), (63, 112.6), (74, 115)])
# the sheet's hem: from the other hip down to the crotch, along between the thighs, across the shin below the tuberosity
HEM = of([(-58, 300), (-36, 252), (-4, 206), (34, 164), (54, 139), (68, 125), (88, 117.4), (120, 113.4), (160, 107.4), (206, 98.4), (256, 90), (310, 83), (362, 78),
          (408, 72.4), (442, 65), (466, 54), (480, 38), (487, 18), (489, -6), (487, -28), (485, -44), (487, -57), (495, -69), (510, -78), (534, -84)])


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
    side = Line([at(q, across(OUTER, q)) for q in (-68, -64, -60, -56, -52)])
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
    p.on("cloth", "thigh")
    hem = Line(HEM)
    # the bed between hem and thigh, in the shade of both
    gap = [at(q, across(INNER, q) + .5) for q in range(64, 486, 14)]
    p.area([(*gap[0], "c"), *gap[1:-1], (*gap[-1], "c"), *hem.part(.8, .268, 14)], "cloth-base")
    low, high = Line(gap), Line(hem.part(.27, .76))
    soft(p, between(low, high, .1), high, "cloth-shade", .7, 6, hump(.5))
    p.area([(*HEM[0], "c"), *HEM[1:-1], (*HEM[-1], "c"), at(580, -90, "c"), at(580, 300, "c")], "wash.sheet")
    # the other thigh under it: a broad back in the light, its near side falling into shade, then the cloth lies flat
    ridge = Line(of([(20, 216), (90, 210), (150, 206), (220, 208), (300, 212), (380, 214), (460, 216), (540, 217), (600, 217)]))
    near = Line(of([(20, 158), (90, 150), (150, 146), (220, 149), (300, 156), (380, 160), (460, 163), (540, 165), (600, 166)]))
    foot = Line(of([(20, 140), (90, 132), (150, 124), (220, 120), (300, 118), (380, 118), (460, 124), (540, 132), (600, 138)]))
    p.area([*ridge.part(0, .99, 30), *near.part(.99, 0, 30)], "shade.near")
    p.area([*near.part(0, .99, 30), *foot.part(.99, 0, 30)], "shade.flat")
    # the turned hem
    roll = Line(hem.shifted(-5.5))
    soft(p, roll.shifted(-7), roll, "cloth-shade", .34, 5, rise((0, 0), (.25, .8), (.9, 1), (1, 0)))
    p.ink(pen(hem.part(.2, 1), [.05, .5, .7, .7, .6, .5, .6, .8, 1.0, 1.2, 1.4, 1.3, .9, .05]), "cloth-line", .85)
    p.ink([pen(roll.part(.3, .5), [.05, .45, .4, .05]), pen(roll.part(.6, .9), [.05, .5, .6, .5, .05])], "cloth-line", .6)
    # folds drawn from the crotch over the other thigh and along the valley
    crease(p, of([(80, 132), (112, 141), (160, 141), (214, 134), (262, 131)]), -9, .8, .4)
    crease(p, of([(74, 142), (88, 166), (112, 186), (144, 200), (176, 206)]), 11, .7, .3)
    crease(p, of([(106, 120.6), (146, 119), (196, 112), (240, 106)]), 5, .45, .24)
    crease(p, of([(330, 112), (366, 106), (404, 98), (432, 86), (448, 74)]), -8, .7, .3)
    # round the corner at the knee they open like a fan
    crease(p, of([(468, 66), (462, 88), (444, 110), (416, 126), (380, 136)]), -10, .9, .36)
    crease(p, of([(482, 52), (496, 80), (500, 112), (492, 146), (478, 170)]), 12, .8, .34)
    crease(p, of([(490, 26), (510, 44), (526, 70), (534, 100)]), 10, .6, .3)
    # the shin under the cloth: lit along the top, its outer side in shade, the cloth falling to the bed
    shin = Line(of([(486, -44), (502, -52), (524, -57), (552, -59), (600, -56)]))
    p.area([*of([(489, -2), (508, -6), (528, -8), (554, -8), (600, -6)]), *shin.pts[::-12]], "shade.shin")
    soft(p, shin.part(0, .7), Line(shin.shifted(16)).part(0, .7), "cloth-shade", .2, 5, rise((0, .6), (.5, 1), (1, 0)))
    p.ink(pen(shin.part(.02, .8), [.3, .9, .7, .4, .05]), "cloth-line", .75)
    crease(p, of([(489, 0), (510, 10), (530, 12), (552, 9)]), -7, .6, .26)
    crease(p, of([(488, -24), (502, -33), (520, -37), (540, -37)]), -6, .5, .26)
    crease(p, of([(493, -65), (512, -67), (532, -72)]), 6, .5, .26)


def shadow(p):
    """What the leg throws on the bed: outside the outline, so that no touch on it counts as skin."""
    p.on("surface", "thigh")
    edge = Line([at(q, across(OUTER, q) - .1) for q in range(-120, 500, 14)])
    soft(p, edge.shifted(lambda t: 7 + 15 * t), edge, "cloth-shade", .62, 8, rise((0, 0), (.3, .6), (.56, 1), (.94, .9), (1, 0)))
    soft(p, edge.shifted(5), edge, "cloth-line", .26, 5, rise((0, 0), (.2, .7), (.5, 1), (.94, .8), (1, 0)))
    p.ink([pen(of(q), [.05, .5, .4, .05]) for q in ([(-20, -70), (30, -79), (90, -85), (150, -86)], [(214, -84), (280, -83), (340, -76), (380, -74)],
                                                    [(60, -96), (130, -100), (200, -99)])], "cloth-shade", .8)


def draw(p):
    p.linear("wash.gown", "pelvis", at(-160, 0), at(-150, 0), [(0, "cloth-base", 0), (1, "cloth-base")])
    p.linear("wash.brief", "pelvis", at(0, 112), at(0, 184), [(0, "cloth-base"), (.4, "cloth-base", .7), (1, "cloth-base", 0)])
    p.radial("wash.sheet", "thigh", at(298, 36), 308, [(0, "cloth-light"), (.84, "cloth-light"), (.92, "cloth-light", .55), (1, "cloth-light", 0)])
    # great circles on either side of the valley: their rims give the shade both its width and its ends
    p.radial("shade.near", "thigh", at(280, -450), 664, [(0, "cloth-shade", .62), (.903, "cloth-shade", .6), (.95, "cloth-shade", .34), (.98, "cloth-shade", .1), (1, "cloth-shade", 0)])
    p.radial("shade.flat", "thigh", at(280, 800), 684, [(0, "cloth-shade", .6), (.951, "cloth-shade", .6), (.974, "cloth-shade", .28), (1, "cloth-shade", 0)])
    p.radial("shade.shin", "thigh", at(526, -150), 144, [(0, "cloth-shade", .7), (.63, "cloth-shade", .6), (.8, "cloth-shade", .28), (1, "cloth-shade", 0)])
    gown(p)
    brief(p)
    shadow(p)
    sheet(p)
