"""Thigh from the front: the right hip bone, the sacrum, and a breath of the other side."""
from engrave import Line, area, contour, pen, rim, stipple
from side_tools import cluster, hump, rise
from thigh_front_tools import pool, soft
from thigh_front_frame import at, of

# outer lip of the crest from the upper spine back, thickest at the tubercle; the inner lip runs beside it
CREST = [(-85, -7), (-92, -11), (-102, -15.6), (-111, -19.4), (-120, -20.4), (-131, -17.6), (-140, -12.4), (-146.6, -4), (-148.4, 8), (-146, 22), (-140, 36),
         (-132, 48), (-123, 57)]
INNER_LIP = [(-83, 0), (-92, -2.6), (-102, -5), (-111, -7.4), (-119, -8.6), (-127, -8), (-135, -3.6), (-140.6, 3), (-142.4, 11), (-140.6, 22), (-135, 34.6), (-128, 45), (-121, 53)]
# roof of the socket, lower spine, notch, upper spine
FRONT = [(-24, 19.6), (-30, 17.6), (-36, 14.4), (-41, 10.6), (-46, 8.4), (-51, 9.6), (-56, 12.6), (-63, 12.6), (-70, 8.4), (-76, 2.6), (-80, -2.4), (-82.6, -5.4)]
BRIM = [(-120, 60), (-106, 64), (-92, 66), (-78, 67.6), (-64, 66), (-50, 62.6), (-36, 60), (-24, 60)]
# front rim of the socket: the head comes out from under it
RIM = of([(-22.6, 20.4), (-17.4, 28.6), (-10.4, 36), (-2.6, 42.4), (6, 47.6), (13, 50.4)])
ILIUM = [*of(CREST), *of(BRIM), *of([(-14, 60), (-2, 58), (8, 55.4)]), *RIM[::-1], *of(FRONT)]
PUBIS = of([(-26, 58), (-19, 66), (-10, 76), (-3, 85), (-1, 91), (-3, 97), (0, 106), (5, 110.6), (19, 111.6), (33, 110.4), (40, 105), (47, 96), (55, 86), (63, 77), (70, 68),
            (73, 59), (69, 51), (59, 46), (46, 44.4), (33, 46), (22, 48.4), (12, 52), (0, 55), (-14, 56)])
FORAMEN = of([(10, 84), (9.4, 74), (14, 65), (23, 59), (35, 57), (45, 60), (50, 67), (47, 78), (39, 90), (30, 98.4), (20, 99), (13, 94)])


def washes(p):
    p.radial("wash.wing", "pelvis", at(-114, 24), 50, [(0, "bone-shade", .6), (.4, "bone-shade", .38), (1, "bone-shade", 0)])


def sacrum(p):
    """It fades at the midline, before the skin over it does; in steps, which move with the bones."""
    p.on("bone", "pelvis", "sacrum", "Sacrum")
    p.area([*of([(-124, 60), (-119, 72)]), at(-112.4, 87, "c"), at(-54, 87, "c"), *of([(-56, 78), (-80, 68), (-104, 62)])], "bone-base", .9)
    for s1 in (92, 96.4, 100.6, 104.6, 108.4, 112):
        p.area([at(-112.4, 86, "c"), at(-107.4, s1, "c"), at(-18 - 34 * (112 - s1) / 24, s1, "c"), at(-54, 86, "c")], "bone-base", .15)
    for k, (a, half) in enumerate(((-84, 24), (-64, 21), (-44, 17))):       # old joints of its bodies, and the holes at their ends
        p.ink(pen(of([(a - 1, 113 - half), (a + .6, 113 - half * .5), (a + 1.2, 110)]), [.05, .5, .05]), "bone-line", .4 - .06 * k)
        r = 3.4 - .5 * k
        p.area(of([(a + 3, 113 - half - 6), (a - r, 113 - half - 4), (a - 1, 113 - half + 1), (a + r, 113 - half - 2)]), "bone-shade", .6)
    p.ink(pen(of([(-121, 66), (-113, 86), (-108.4, 98), (-106.6, 108)]), [.05, .8, .5, .05]), "bone-line", .7)
    p.ink(pen(of([(-104, 63), (-80, 69), (-56, 79), (-34, 91), (-14, 103), (-6, 108)]), [.1, .6, .6, .5, .3, .05]), "bone-line", .6)


def pubis(p):
    p.on("bone", "pelvis", "ischium-pubis", "Ischium and pubis")
    # the other side, fading; between the two the narrow oval of the joint
    for s1 in (121, 125, 129, 133):
        p.area([at(-1, 118, "c"), at(3, 115.4), at(19, 114.4), at(34, 115.4), at(41, 119, "c"), at(45, s1, "c"), at(-2, s1, "c")], "bone-base", .3)
    p.ink([pen(of(q), [.7, .4, .05]) for q in ([(3, 115.4), (-1, 119), (-3, 125), (-2, 131)], [(34, 115.4), (41, 120), (47, 127), (51, 132)])], "bone-line", .6)
    # the hole is open: a ring within the ring
    p.area(area(PUBIS) + " " + area(FORAMEN), "bone-base")
    pool(p, of([(-14, 64), (-6, 76), (3, 90), (9, 102)]), 4.5, 4.5, "bone-light", .75, 7)
    low = Line(of([(38, 106), (47, 96), (55, 86), (63, 77), (70, 68), (73, 59), (69, 51), (59, 46)]))
    soft(p, low.shifted(6), low, "bone-shade", .6, 6, hump(.6))
    wall = Line(FORAMEN[1:6])
    soft(p, wall.shifted(-6), wall, "bone-shade", .6, 6, hump(.6))
    p.ink(rim(FORAMEN, .35, 1.1), "bone-line")
    p.ink(rim(PUBIS, .3, 1.4), "bone-line")
    p.area([at(3, 113, "c"), *of([(9, 111.6), (19, 111), (29, 111.6)]), at(35, 113, "c"), *of([(29, 114.8), (19, 115.2), (9, 114.8)])], "bursa")
    p.ink([pen(of([(3, 113), (9, 111.4), (19, 111), (29, 111.4), (35, 113)]), [.1, .6, .7, .6, .1]), pen(of([(3, 113), (9, 115), (19, 115.4), (29, 115), (35, 113)]), [.1, .4, .1])], "bone-line", .8)
    p.areas_of(stipple(of([(0, 88), (8, 96)]), of([(-3, 84), (-2, 98)]), 4, .4), "bone-line", .6)
    p.areas_of(stipple(of([(56, 56), (66, 62)]), of([(62, 48), (72, 60)]), 4, .4), "bone-line", .6)


def ilium(p):
    p.on("bone", "pelvis", "ilium", "Ilium")
    p.area(ILIUM, "bone-base")
    crest, lip = Line(of(CREST)), Line(of(INNER_LIP))
    # the hollow of the wing: deep under the inner lip, lit where it rises again to the front border and the brim
    p.area(ILIUM, "wash.wing")
    soft(p, of([(-84, 18), (-96, 16), (-108, 14), (-116, 15), (-122, 20), (-124, 28), (-122, 38), (-118, 46)]), Line(lip.part(.0, .86)), "bone-shade", .5, 8, rise((0, 0), (.3, .7), (.6, 1), (1, 0)))
    pool(p, of([(-92, 20), (-74, 24), (-54, 28), (-36, 34)]), 10, 9, "bone-light", .7, 8, .1)
    p.ink(cluster(Line(of([(-80, 12), (-96, 14), (-108, 14), (-118, 18), (-124, 28)])), Line(lip.part(.04, .62)), 8, .2, .98, .8, .42, -.1, .04), "bone-line", .6)
    # the crest: a band between two lips, lit on its top, broad at the tubercle
    p.area([(*CREST_AT[0], "c"), *CREST_AT[1:-1], (*CREST_AT[-1], "c"), *of(INNER_LIP)[::-1]], "bone-light", .7)
    outer = Line(crest.part(.02, .5))
    soft(p, outer.shifted(5), outer, "bone-shade", .5, 5, rise((0, .4), (.4, 1), (1, .2)))
    p.ink(pen(lip, [.05, .6, .8, .9, .8, .6, .4, .05]), "bone-line", .75)
    p.areas_of(stipple(Line(crest.shifted(6, .12, .5)), Line(crest.part(.12, .5)), 6, .4), "bone-line", .6)
    # the brim: edge of the lesser pelvis
    brim = Line(of([(-98, 60), (-80, 61), (-62, 59), (-44, 56), (-28, 55)]))
    soft(p, brim.shifted(-6), brim, "bone-shade", .5, 5, hump(.7))
    p.ink(pen(brim, [.05, .6, .8, .7, .2]), "bone-line", .75)
    # the upper spine a blunt horn, the lower one a rough knob, the notch between them in shade
    pool(p, of([(-90, -6), (-86, -4), (-81, 1)]), 3.4, 3.4, "bone-light", .8, 5)
    pool(p, of([(-50, 13.4), (-45, 13), (-38, 17.6)]), 3.6, 4, "bone-light", .8, 5)
    notch = Line(of([(-74, 4.6), (-68, 9.6), (-60, 13), (-54, 11.6)]))
    soft(p, notch.shifted(-5), notch, "bone-shade", .4, 5, hump(.9))
    # roof and front lip of the socket: a raised light edge, dark where it turns under
    lip = Line([*of([(-33, 15.6), (-28, 17.4)]), *RIM[:-1]])
    soft(p, lip.shifted(-9), lip.shifted(-2), "bone-light", .8, 5, hump(.7))
    p.ink(pen(lip.shifted(-6.4, .12, .96), [.05, .5, .55, .05]), "bone-line", .6)
    p.ink(contour([q[:2] for q in of([*FRONT, *CREST, *BRIM])], .3, 1.5, side=-1), "bone-line")


CREST_AT = of(CREST)


def draw(p):
    sacrum(p)
    pubis(p)
    ilium(p)
