"""Thigh from the front: the right hip bone, the sacrum, and a breath of the other side."""
from engrave import Line, pen, rim, stipple
from side_tools import cluster, hump, rise
from thigh_front_tools import pool, soft
from thigh_front_frame import at, of

CREST = [(-86, -6.6), (-91, -9.4), (-100, -14), (-110, -18), (-120, -19.6), (-131, -17.6), (-140, -12.4), (-146.6, -4), (-148.4, 8), (-146, 22), (-140, 36),
         (-132, 48), (-123, 57)]
FRONT = [(-25, 17.4), (-31, 14), (-38, 12), (-43.6, 8), (-48.6, 5), (-54, 6.4), (-60, 8), (-67, 5), (-74, 0), (-80, -3.6), (-84.6, -4)]       # socket's roof, lower spine, notch, upper spine
BRIM = [(-120, 60), (-106, 64), (-92, 66), (-78, 67.6), (-64, 66), (-50, 62.6), (-36, 60), (-24, 60)]
ILIUM = [*of(CREST), *of(BRIM), *of([(-14, 60), (-2, 58), (10, 55), (16, 51), (8, 44), (-6, 34), (-18, 24)]), *of(FRONT)]
PUBIS = of([(-26, 58), (-19, 66), (-10, 76), (-3, 85), (-1, 91), (-3, 97), (0, 107), (6, 111.4), (20, 111.8), (33, 110.6), (41, 106), (48, 97), (55, 86), (62, 76), (69, 66),
            (71, 57), (66, 49), (56, 45), (44, 43.4), (32, 44.6), (22, 48), (12, 52), (0, 55), (-14, 56)])
FORAMEN = of([(12, 85), (11, 74), (16, 64), (25, 58), (36, 56.6), (46, 60), (50, 68), (46, 80), (38, 90), (29, 97), (20, 97.6), (14, 93)])



def washes(p):
    p.radial("wash.wing", "pelvis", at(-116, 22), 52, [(0, "bone-shade", .55), (.45, "bone-shade", .34), (1, "bone-shade", 0)])


def sacrum(p):
    """It fades at the midline, before the skin over it does; in steps, which move with the bones."""
    p.on("bone", "pelvis", "sacrum", "Sacrum")
    p.area([*of([(-124, 60), (-119, 72)]), at(-112.4, 87, "c"), at(-54, 87, "c"), *of([(-56, 78), (-80, 68), (-104, 62)])], "bone-base", .9)
    for s1 in (92, 96.4, 100.6, 104.6, 108.4, 112):
        p.area([at(-112.4, 86, "c"), at(-107.4, s1, "c"), at(-18 - 34 * (112 - s1) / 24, s1, "c"), at(-54, 86, "c")], "bone-base", .15)
    for k, (a, half) in enumerate(((-84, 24), (-64, 21), (-44, 17))):       # old joints of its bodies, and the holes at their ends
        p.ink(pen(of([(a - 1, 113 - half), (a + .6, 113 - half * .5), (a + 1.2, 110)]), [.05, .5, .05]), "bone-line", .4 - .06 * k)
        r = 4 - .6 * k
        p.area(of([(a + 3, 113 - half - 6), (a - r, 113 - half - 4), (a - 1, 113 - half + 1), (a + r, 113 - half - 2)]), "bone-shade", .7)
    p.ink(pen(of([(-121, 66), (-113, 86), (-108.4, 98), (-106.6, 108)]), [.05, .8, .5, .05]), "bone-line", .7)
    p.ink(pen(of([(-104, 63), (-80, 69), (-56, 79), (-34, 91), (-14, 103), (-6, 108)]), [.1, .6, .6, .5, .3, .05]), "bone-line", .6)


def pubis(p):
    p.on("bone", "pelvis", "ischium-pubis", "Ischium and pubis")
    p.area(PUBIS, "bone-base")
    low = Line(of([(41, 106), (48, 97), (55, 86), (62, 76), (69, 66), (71, 57)]))
    pool(p, of([(-14, 64), (-6, 76), (4, 90), (14, 100)]), 4.5, 4.5, "bone-light", .7, 6)
    soft(p, of([(50, 52), (58, 58), (62, 66)]), of([(66, 49), (71, 57), (68, 67)]), "bone-shade", .5, 5)
    # the hole is an opening: its far rim in shade
    p.area(FORAMEN, "bone-line", .16)
    hole = Line([*FORAMEN[1:6]])
    soft(p, hole.shifted(9), hole, "bone-line", .34, 6, hump(.7))
    p.ink(rim(FORAMEN, .3, 1.1), "bone-line")
    p.ink(rim(PUBIS, .3, 1.4), "bone-line")
    # the joint between the two sides
    p.area([at(4, 111, "c"), at(20, 112), at(35, 110.6, "c"), at(35, 115.4, "c"), at(20, 114), at(4, 115, "c")], "bursa", .7)
    p.ink(pen(of([(3, 111.4), (19, 111.8), (34, 110.8)]), [.2, .7, .3]), "bone-line")
    p.areas_of(stipple(of([(0, 88), (8, 96)]), of([(-3, 84), (-2, 98)]), 5, .4), "bone-line", .6)


def ilium(p):
    p.on("bone", "pelvis", "ilium", "Ilium")
    p.area(ILIUM, "bone-base")
    crest = Line(of(CREST))
    # the hollow of the wing, deepest below the crest
    p.area(ILIUM, "wash.wing")
    pool(p, of([(-98, 4), (-76, 12), (-52, 22)]), 8, 9, "bone-light", .6, 7, .1)
    lip = Line(crest.shifted(6.5, .04, .9))
    soft(p, lip.shifted(10), lip, "bone-shade", .5, 7, rise((0, .2), (.3, 1), (.6, .8), (1, 0)))
    p.ink(pen(lip, [.05, .8, 1.0, .8, .5, .05]), "bone-line", .7)
    p.ink(cluster(Line(lip.shifted(24)), lip, 9, .06, .6, .7, .42, -.1, .04), "bone-line", .6)
    soft(p, crest.shifted(3, .02, .5), crest.part(.02, .5), "bone-shade", .4, 4, hump(.6))
    p.areas_of(stipple(Line(crest.shifted(5, .08, .5)), Line(crest.part(.08, .5)), 7, .4), "bone-line", .6)
    # the brim: edge of the lesser pelvis; joint with the sacrum
    brim = Line(of([(-98, 60), (-80, 61), (-62, 59), (-44, 56), (-28, 55)]))
    soft(p, brim.shifted(-6), brim, "bone-shade", .5, 5, hump(.7))
    p.ink(pen(brim, [.05, .6, .8, .7, .2]), "bone-line", .75)
    # socket: its roof and front rim hold the head
    roof = Line(of([(-40, 13), (-28, 17), (-17, 27), (-7, 37), (2, 46), (12, 53)]))
    soft(p, roof.shifted(-9), roof, "bone-light", .7, 5, hump(.7))
    p.ink(pen(Line(roof.shifted(-7, .2, .95)), [.05, .45, .5, .05]), "bone-line", .55)
    # front edge with its two spines
    pool(p, of([(-92, -5), (-88, -3), (-83, -1)]), 3.6, 3.4, "bone-light", .8, 5)
    pool(p, of([(-52, 9), (-46, 12), (-38, 17)]), 3.6, 3.6, "bone-light", .7, 5)
    p.areas_of(stipple(of([(-92, 2), (-80, 3)]), of([(-92, -8), (-81, -3)]), 6, .42), "bone-line", .6)
    p.ink(rim(ILIUM, .3, 1.5), "bone-line")


def draw(p):
    sacrum(p)
    pubis(p)
    ilium(p)
