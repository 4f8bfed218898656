"""Thigh from the front: gown and brief (they go with the skin), the sheet over the other leg and the shins, the bed."""
from engrave import Line, pen, ramp
from side_tools import hump, pool, rise, soft
from thigh_front_frame import INNER, OUTER, across, at, of

# hem of the shirt, waistband and leg opening meet the outer side where they do in the side view
GOWN = of([(-138, -42), (-136, -30), (-131, -8), (-127, 20), (-124, 60), (-122.4, 100), (-122, 130), (-122, 158)])
BAND = of([(-81, -45), (-79, -32), (-75.4, -12), (-72.4, 14), (-70.4, 50), (-69.4, 90), (-69, 126), (-69, 158)])
OPENING = of([(-37, -45.1), (-39.6, -30), (-40.6, -12), (-39.4, 6), (-34.6, 24), (-25, 43), (-8, 65), (13, 83), (33, 97), (50, 107), (63, 112.4), (76, 115), (90, 118)])
# the sheet's hem: over the other half of the belly, down to the crotch, along between the thighs, across the shin below the tuberosity
HEM = of([(-168, 149), (-130, 151), (-90, 151.4), (-50, 150), (-14, 146), (16, 140), (42, 130), (64, 119), (90, 113), (120, 110), (160, 105.4), (206, 98), (256, 90), (310, 83), (362, 78),
          (408, 72.4), (442, 65), (466, 54), (480, 38), (487, 18), (489, -6), (487, -28), (485, -44), (487, -57), (495, -69), (510, -78), (534, -84)])
# its edge is turned back, broad over the belly, narrowing down the thigh
TURNED = of([(-168, 180), (-130, 184), (-92, 183), (-52, 178), (-12, 170), (28, 158.6), (70, 145), (112, 132.6), (156, 121.4), (204, 109), (256, 98.4), (312, 89.6), (362, 83), (400, 77.4), (432, 71)])
FAR = of([(-168, 258), (-110, 260), (-50, 264), (10, 269), (70, 273), (160, 273.6), (250, 271), (330, 265), (400, 261.6), (460, 262), (520, 265), (590, 268)])


def fold(p, points, width, weight=.9, depth=.34, tone="cloth-shade"):
    """A fold: its valley, a shade on one side, and a line that comes and goes."""
    ln = Line(points)
    soft(p, ln.shifted(width), ln, tone, depth, 5, hump(1))
    if weight:
        p.ink(pen(ln, [.05, weight, weight * .7, weight * .3, .05]), "cloth-line", .75)


def gown(p):
    p.on("surface", "pelvis")
    p.area([(*GOWN[0], "c"), *GOWN[1:-1], (*GOWN[-1], "c"), at(-168, 158, "c"), at(-168, -38, "c"), at(-152, -40.6)], "cloth-base")
    p.ink(pen(of([(-167, -38), (-152, -40.6), (-138, -42)]), [.6, .8, .7]), "cloth-line", .9)
    hem = Line(GOWN)
    soft(p, hem.shifted(7), hem, "skin-shade", .3, 6, rise((0, .8), (.3, 1), (.7, .5), (1, .5)))
    roll = Line(hem.shifted(lambda t: -5.5 - 3 * t))
    soft(p, roll.shifted(-8), roll, "cloth-shade", .34, 6, rise((0, .8), (.5, .8), (1, .3)))
    p.ink(pen(hem, [.5, .9, .7, .6, .5, .4]), "cloth-line", .85)
    p.ink(pen(roll.part(.02, .7), [.05, .5, .4, .3, .05]), "cloth-line", .6)
    fold(p, of([(-131, 60), (-140, 64), (-150, 63)]), 6, .5, .26)


def brief(p):
    p.on("surface", "pelvis")
    p.area([(*BAND[0], "c"), *BAND[1:-1], (*BAND[-1], "c"), at(40, 158, "c"), at(96, 150, "c"), (*OPENING[-1], "c"), *OPENING[-2:0:-1], (*OPENING[0], "c")], "cloth-base")
    band, leg = Line(BAND), Line(OPENING)
    # a swell in the middle takes the light; toward the flank the cloth turns down
    pool(p, of([(-44, 108), (-14, 120), (20, 134)]), 26, 30, "cloth-light", .6, 9, .05)
    soft(p, leg.shifted(8, .1, .97), leg.part(.1, .97), "skin-shade", .3, 5, hump(.7))
    soft(p, leg.shifted(-9), leg, "cloth-shade", .34, 6, rise((0, .8), (.4, .6), (.8, 1), (1, .4)))
    low = Line(band.shifted(8))
    soft(p, low.shifted(7), low, "cloth-shade", .3, 5, rise((0, .8), (.4, .7), (1, .3)))
    side = Line([at(q, across(OUTER, q)) for q in (-81, -72, -64, -56, -48, -37)])
    soft(p, side.shifted(-20), side, "cloth-shade", .5, 16, lambda s: 1)
    p.ink(pen(side, [.8, 1.0, .8]), "cloth-line", .9)
    p.ink(pen(band, [.8, .7, .5, .4, .5, .3]), "cloth-line", .8)
    p.ink(pen(low.part(.05, .8), [.4, .4, .3, .3, .05]), "cloth-line", .6)
    p.ink(pen(leg, [.8, .6, .5, .5, .6, .7, .3]), "cloth-line", .85)
    p.ink(pen(leg.shifted(-4, .16, .9), [.05, .35, .35, .35, .05]), "cloth-line", .55)
    fold(p, of([(46, 105), (16, 97), (-12, 96), (-34, 101)]), 8, .6, .3)
    fold(p, of([(60, 114), (36, 115), (8, 122), (-14, 132)]), 8, .5, .26)
    fold(p, of([(-14, 62), (-30, 62), (-44, 66)]), 5, .45, .22)


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
    soft(p, Line(gap).shifted(-9), Line(gap), "cloth-shade", .4, 6, hump(.4))
    p.on("cloth", "pelvis")
    hem, turned = Line(HEM), Line(TURNED)
    cast = Line(hem.part(.02, .84))
    soft(p, cast.shifted(9), cast, "cloth-shade", .5, 7, rise((0, .5), (.4, .7), (.6, 1), (1, 0)))
    p.area([(*HEM[0], "c"), *HEM[1:-1], (*HEM[-1], "c"), at(588, -90, "c"), (*FAR[-1], "c"), *FAR[-2:0:-1], (*FAR[0], "c")], "cloth-light")
    # the other leg under it: a broad back in the light, its near side falling softly into shade
    side = Line(of([(-40, 188), (20, 178), (90, 168), (170, 163), (260, 162), (340, 166), (420, 170), (510, 168), (590, 166)]))
    come = rise((0, 0), (.3, 1), (1, 1))
    soft(p, side.shifted(-52), side, "cloth-shade", .24, 12, come)
    soft(p, side.shifted(26), side, "cloth-shade", .24, 10, come)
    p.ink(pen(Line(FAR).part(.2, 1), [.05, .3, .5, .5, .4, .4, .4, .4]), "cloth-line", .6)
    # the turned edge, and the shade under its free border
    p.area([(*HEM[0], "c"), *HEM[1:15], (*HEM[15], "c"), (*TURNED[-1], "c"), *TURNED[-2:0:-1], (*TURNED[0], "c")], "cloth-light")
    soft(p, turned.shifted(-7), turned, "cloth-shade", .4, 6, rise((0, .6), (.5, 1), (1, 0)))
    soft(p, hem.shifted(-6, 0, .7), hem.part(0, .7), "cloth-shade", .26, 5, rise((0, .6), (.4, .9), (1, 0)))
    p.ink(pen(turned, [.2, .5, .6, .7, .6, .5, .6, .5, .3, .05]), "cloth-line", .75)
    p.ink(pen(hem, [.2, .4, .5, .7, .7, .8, .6, .5, .4, .5, .6, .7, .9, 1.1, 1.2, 1.0, .05]), "cloth-line", .85)
    roll = Line(hem.shifted(-5, .66, .98))
    soft(p, roll.shifted(-6), roll, "cloth-shade", .26, 5, rise((0, 0), (.25, .8), (.9, 1), (1, 0)))
    p.ink(pen(roll.part(.1, .9), [.05, .4, .5, .4, .05]), "cloth-line", .55)
    for pts, w in (([(-104, 156), (-98, 166), (-94, 178)], .4), ([(-20, 152), (-12, 160), (-8, 167)], .45), ([(100, 119), (106, 126), (112, 130)], .35)):
        crease(p, of(pts), 4, w, .2)
    # two folds run up the other thigh from its knee, the cloth hangs in a few more between the legs
    pool(p, of([(376, 226), (402, 224), (428, 220)]), 20, 18, "cloth-light", .6, 8, .05)
    crease(p, of([(398, 196), (352, 190), (296, 190), (236, 194), (180, 200)]), 9, .7, .26)
    crease(p, of([(408, 247), (360, 243), (300, 236), (240, 232), (196, 231)]), 9, .5, .22)
    crease(p, of([(120, 142), (150, 147), (196, 144), (240, 135)]), 7, .5, .24)
    crease(p, of([(-60, 190), (-20, 200), (30, 203), (76, 197)]), 9, .5, .24)
    # round the corner at the knee they open like a fan
    crease(p, of([(446, 74), (430, 88), (404, 100), (364, 108), (322, 112)]), 7, .7, .3)
    crease(p, of([(466, 66), (462, 90), (446, 114), (416, 134), (374, 146)]), -10, .9, .36)
    crease(p, of([(481, 52), (498, 80), (506, 108), (505, 134), (498, 156)]), 10, .8, .28)
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
    # in a tone of ink, which on dark paper stays dark; narrow at the knee, where a stout body would carry it far
    deep = lambda t: ramp(t, (0, 5), (.45, 15), (.66, 12), (.78, 5), (1, 5))
    soft(p, edge.shifted(deep), edge, "skin-line", .2, 9, rise((0, 0), (.3, .6), (.56, 1), (.94, .9), (1, 0)))
    soft(p, edge.shifted(lambda t: deep(t) * .4), edge, "skin-line", .18, 6, rise((0, 0), (.3, .7), (.56, 1), (.94, .8), (1, 0)))
    # the mattress: its edge a quiet straight line further down, a wrinkle or two on the way
    p.on("surface", "pelvis")
    p.ink(pen(of([(-158, -93), (-40, -94), (120, -95), (280, -95), (400, -95), (468, -94)]), [.05, .5, .6, .6, .5, .05]), "cloth-shade", .9)
    p.ink([pen(of(q), [.05, .5, .4, .05]) for q in ([(-30, -66), (20, -74), (70, -78)], [(214, -80), (270, -78), (320, -73)])], "cloth-shade", .8)


def draw(p):
    p.linear("shade.shin", "pelvis", at(526, -4), at(526, -58), [(0, "cloth-shade", 0), (.5, "cloth-shade", .14), (1, "cloth-shade", .4)])
    gown(p)
    brief(p)
    shadow(p)
    sheet(p)
