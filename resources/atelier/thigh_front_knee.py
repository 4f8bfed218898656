"""Thigh from the front: the skin of the knee (teardrop, patella and its hollows, tendon) and of the shin."""
from engrave import Line, pen
from side_tools import hump, pool, rise, soft
from thigh_front_frame import INNER, OUTER, across, at, of


def leg(p):
    p.on("skin", "leg")
    inner, outer = of([(q, across(INNER, q)) for q in range(396, 517, 12)]), of([(q, across(OUTER, q)) for q in range(396, 517, 12)])
    p.area([(*inner[0], "c"), *inner[1:-1], (*inner[-1], "c"), (*outer[-1], "c"), *outer[-2:0:-1], (*outer[0], "c")], "skin-base")


def knee(p):
    p.on("skin", "thigh")
    # vastus medialis: the teardrop, lit on its upper left, shaded where it ends above the joint
    pool(p, of([(292, 45), (322, 49), (350, 50), (372, 46)]), 13, 12, "skin-light", .62, 12, .05)
    low = Line(of([(340, 20), (362, 20), (384, 24), (398, 32), (402, 42), (397, 53), (388, 60.6)]))
    soft(p, low.shifted(-15), low, "skin-mid", .5, 10, rise((0, 0), (.3, .5), (.62, 1), (.85, .5), (1, 0)))
    soft(p, low.shifted(10), low, "skin-mid", .36, 9, rise((0, 0), (.4, .5), (.62, 1), (.9, .2), (1, 0)))
    p.ink(pen(low.part(.48, .74), [.05, .32, .45, .3, .05]), "skin-line", .5)
    # the quadriceps tendon's flat, and the hollow over the outer edge of the patella where vastus lateralis ends
    pool(p, of([(340, 0), (360, 0), (382, 0)]), 9, 9, "skin-light", .42, 8, .1)
    end = Line(of([(334, -20), (352, -24), (366, -29), (374, -37)]))
    pool(p, of([(352, -23), (370, -27), (386, -31)]), 8, 9, "skin-mid", .46, 10, .05)
    p.ink(pen(end.part(.1, .8), [.05, .35, .4, .05]), "skin-line", .45, cue="lean")
    # iliotibial band: a flat light strip along the outer side, dark behind
    band = Line(of([(318, -46.4), (350, -42.6), (384, -41.6), (416, -39), (444, -33)]))
    pool(p, band.part(0, 1, 10), 3.5, 5, "skin-light", .34, 7, .1)
    edge = Line([at(q, across(OUTER, q)) for q in range(350, 480, 10)])
    soft(p, edge.shifted(-12), edge, "skin-mid", .42, 7, hump(.7))
    soft(p, edge.shifted(-6), edge, "skin-shade", .4, 6, hump(.7))
    patella(p)


def patella(p):
    """A rounded shield under the skin: a plane of light, its lower and outer border turning down, no ring."""
    pool(p, of([(374, 3), (396, 6), (414, 6), (436, 2)]), 21, 15, "skin-light", .4, 12, .05)
    pool(p, of([(398, 9), (412, 9)]), 10, 8, "skin-light", .26, 8, .2)
    low = Line(of([(378, -12), (388, -19.6), (398, -23), (408, -23), (417, -19.6), (426, -13), (433, -5.6), (437.6, 2), (438, 10), (432, 18)]))
    into = Line(of([(380, -2), (388, -6), (398, -8), (407, -8), (414, -6), (420, -2.6), (424, 1), (426, 4), (425, 7), (421, 10)]))
    around = rise((0, 0), (.3, .6), (.6, .9), (.85, .3), (1, 0))
    soft(p, into, low, "skin-mid", .38, 9, around)
    soft(p, low.shifted(18), low, "skin-mid", .42, 11, around)
    soft(p, low.shifted(8), low, "skin-shade", .2, 6, around)
    p.ink(pen(low.part(.2, .42), [.05, .4, .4, .05]), "skin-line", .5)
    top = Line(of([(434, 18), (424, 22.6), (410, 24.6), (396, 22.6), (384, 17)]))
    soft(p, top.shifted(12), top, "skin-mid", .22, 7, rise((0, 0), (.25, 1), (.7, 0), (1, 0)))
    # hollows beside the patella and its tendon; between them the tendon, more felt than seen, to the tuberosity
    pool(p, of([(398, 34), (416, 32), (432, 26), (450, 16)]), 8, 9, "skin-mid", .46, 11, .05)
    pool(p, of([(402, -32), (418, -30), (432, -25), (448, -17)]), 7, 8, "skin-mid", .42, 10, .05)
    pool(p, of([(440, 16), (456, 11), (476, 8)]), 6, 8, "skin-mid", .34, 9, .05)
    pool(p, of([(440, 1), (456, -.6), (474, -3)]), 6, 7, "skin-light", .4, 9, .05)
    pool(p, of([(470, -1), (481, -2), (492, -3)]), 8, 8, "skin-light", .34, 8, .05)
    pool(p, of([(478, -14), (488, -12), (496, -8)]), 5, 6, "skin-mid", .36, 8, .05)
    p.ink(pen(of([(476, -11), (484, -12), (490.6, -9)]), [.05, .35, .05]), "skin-line", .45)
    # condyles: the outer one clear, the inner one broad
    pool(p, of([(394, -40), (409, -41.6), (424, -40)]), 5, 8, "skin-base", .5, 10, .05)
    p.ink(pen(of([(396, -34.6), (404, -33), (414, -33.4)]), [.05, .3, .05]), "skin-line", .4, cue="lean")
    pool(p, of([(404, 48), (416, 47), (430, 42)]), 8, 9, "skin-light", .4, 9, .05)
    p.ink([pen(of([(386, 12), (384, 2), (386, -9)]), [.05, .5, .05]), pen(of([(380, 15), (377.6, 2), (380, -12)]), [.05, .4, .05])], "skin-line", .5, cue="older")
    p.ink(pen(of([(414, 36), (422, 33), (430, 27)]), [.05, .5, .05]), "skin-line", .4, cue="full")
