"""Thigh from the front: femur, patella, tops of tibia and fibula; the hip bone stands in thigh_front_pelvis."""
import thigh_front_pelvis
from engrave import Line, contour, pen, rim, stipple
from side_tools import cluster, hump, rise
from thigh_front_tools import pool, soft
from thigh_front_frame import FEMUR_INNER, FEMUR_OUTER, INNER, OUTER, at, of

# of the head only what the front rim of the socket leaves free
RIM = of([(-23.4, 19), (-15, 28), (-7, 37), (1, 45), (9.6, 51.4), (17, 51)])
HEAD = [(*RIM[0], "c"), *RIM[1:-1], (*RIM[-1], "c"), *of([(22.6, 41), (24.2, 33), (22, 25), (14, 16), (4, 10), (-4, 9), (-11, 11.4), (-18, 16)])]
# neck and shaft in one: from the head's rim over the trochanter, down to the condyles
NECK_TOP = of([(-.6, 5.4), (-.8, 1.4), (-4.4, -2), (-8.4, -3.6)])
JUNCTION = of([(25, 32), (18.6, 24), (10, 17), (2.4, 13)])
ENDS = of([(432, -29), (436.4, -22), (437, -13), (433, -5.6), (429.6, 0), (433, 6), (438, 14), (439, 23), (437, 30)])
FEMUR = [at(-3.4, 10, "c"), *NECK_TOP, *FEMUR_OUTER[:-1], *ENDS, *FEMUR_INNER[-2:1:-1], (*JUNCTION[0], "c"), *JUNCTION[1:]]
TROCHANTER = of([(-10.5, -7), (-8, -13.4), (-1, -19), (10, -23), (22, -23), (30, -21.8), (32, -14), (26, -6), (14, -1), (2, .6), (-6, -2.6)])
PATELLA = of([(391.4, 0), (392.2, -9), (396, -17.6), (403.6, -22), (412, -22.4), (420, -19.4), (428, -12), (434.6, -4.4), (437, 0),
              (434.6, 4.4), (428, 12.2), (420, 19.4), (412, 22.4), (403.6, 22), (396, 17.6), (392.2, 9)])
TIBIA = [at(446, 0, "c"), *of([(443, -6), (441, -16), (440.6, -28), (443, -36.4), (449, -38.4), (457, -35), (467, -27.6), (479, -20), (496, -15.4)]), at(514, -13, "c"), at(514, 19.6, "c"),
         *of([(496, 20.6), (480, 24), (466, 31), (456, 37.6), (448, 41.2), (441.6, 39), (439.4, 28), (440, 15), (443, 6)])]
FIBULA = [*of([(446.6, -36), (448, -41.6), (453, -45), (460, -44.8), (468, -41.6), (480, -38.6), (498, -38)]), at(514, -38.6, "c"), at(514, -28.6, "c"), *of([(498, -28.6), (480, -29), (466, -30.4), (456, -31)])]


def outline(p, shape, thick=1.3, thin=.3, press=None):
    p.ink(rim(shape, thin, thick, press=press), "bone-line")


def ghost(p):
    """The flesh's outline, barely there, so that bared bones do not float; well inside, so that it stays under a lean skin."""
    lo, hi = Line(Line(OUTER).shifted(-6)), Line(Line(INNER).shifted(6))
    p.on("bone", "pelvis")
    p.ink(pen(lo, [.05, .6, .7, .7], .01, .24), "bone-shade", .6)
    p.on("bone", "thigh")
    p.ink(pen(lo, [.3, .7, .7, .7, .7, .3], .23, .87), "bone-shade", .6)
    p.ink(pen(hi, [.05, .7, .7, .7, .3], 0, .79), "bone-shade", .6)


def leg(p):
    for name, title, shape, lo, hi in (
            ("fibula", "Fibula", FIBULA, [(450, -43), (464, -43.4), (484, -38.2), (514, -38.6)], [(452, -36), (464, -36), (484, -33), (514, -33)]),
            ("tibia", "Tibia", TIBIA, [(446, -37), (458, -34), (470, -25), (490, -16.6), (514, -13)], [(450, -20), (460, -16), (470, -10), (490, -4), (514, -2)])):
        p.on("bone", "leg", name, title)
        p.area(shape, "bone-base")
        soft(p, of(hi), of(lo), "bone-shade", .55, 7, rise((0, .6), (.2, 1), (1, 1)))
        outline(p, shape, 1.5)
    # plateau, tuberosity, the sharp front edge going down from it
    pool(p, of([(452, 16), (456, 8), (462, 0)]), 9, 10, "bone-light", .7, 7)
    p.ink(pen(of([(451, -33), (455, -16), (457, 0), (455, 18), (450, 36)]), [.05, .5, .3, .5, .05]), "bone-line", .5)
    pool(p, of([(471, -2), (480, -3), (488, -3)]), 6, 6.5, "bone-light", .75, 6)
    tub = Line(of([(466, -9), (474, -11.4), (483, -11), (491, -7), (500, -5), (512, -4)]))
    soft(p, tub.shifted(7), tub, "bone-shade", .4, 5, rise((0, 0), (.4, 1), (1, .4)))
    p.ink(pen(tub, [.05, .5, .8, .7, .4, .05]), "bone-line", .75)
    p.areas_of(stipple(of([(472, 2), (488, 2)]), of([(470, -9), (490, -8)]), 5, .42), "bone-line", .6)


def femur(p):
    p.on("bone", "thigh", "femur", "Femur")
    p.area(HEAD, "bone-light")
    low = Line(of([(17, 51), (22.6, 41), (24.2, 33), (19, 24), (10, 17), (2, 12.6)]))
    soft(p, of([(10, 46), (14, 38), (14, 31), (9, 25), (2, 20), (-6, 17)]), low, "bone-shade", .6, 10, rise((0, .3), (.3, 1), (.8, .8), (1, 0)))
    pool(p, of([(-10, 22), (-3, 28), (3, 35)]), 5, 5, "bone-light", .8, 6, .2)
    p.ink(rim(HEAD, .3, 1.3), "bone-line")
    p.ink(contour(RIM, .3, .9, side=1), "bone-line")
    p.area(FEMUR, "bone-base")
    lo, hi = Line(FEMUR_OUTER), Line(FEMUR_INNER)
    soft(p, of([(10, -6), (40, -4), (90, -6), (160, -6), (230, -5), (300, -4), (340, -6), (370, -12), (400, -20), (420, -20)]), Line(lo.part(.06, .985)), "bone-shade", .6, 9, rise((0, .7), (.5, 1), (1, .8)))
    pool(p, of([(60, 6), (120, 4.4), (190, 4.6), (260, 5.6), (316, 8)]), 6, 5, "bone-light", .8, 8, .1)
    neck(p)
    # the shaft's shade comes and goes
    core, low = Line(of([(30, -2), (90, -4), (160, -4), (230, -3), (300, -2), (350, -4)])), Line(lo.part(.09, .82))
    for n, t0, t1 in ((11, .03, .42), (11, .6, .99)):
        p.ink(cluster(core, low, n, t0, t1, .8, .5, .12, .04), "bone-line", .65)
    lower(p)
    outline(p, FEMUR, 1.7)


def neck(p):
    soft(p, of([(10, 9), (17, 14), (26, 22)]), of(((2.4, 13), (12, 18.4), (25, 31))), "bone-shade", .4, 5, hump(.7))
    pool(p, of([(4, 8), (10, 4), (16, 2)]), 5, 4, "bone-light", .7, 6, .2)
    under = Line(of([(25, 32.6), (27.6, 28), (31, 24), (35, 19.6), (40, 16.4)]))
    soft(p, under.shifted(13), under, "bone-shade", .6, 7, hump(.7))
    p.ink(cluster(Line(under.shifted(14)), under, 5, .05, .95, .8, .45, .12, .05), "bone-line", .65)
    # the rough line between the trochanters; the lesser one peeps from behind
    line = Line(of([(-3, -3), (8, -4), (20, -2), (32, 3), (44, 9), (52, 13)]))
    soft(p, line.shifted(8), line, "bone-shade", .42, 5, hump(.8))
    p.ink([pen(line.part(0, .45), [.05, .7, .8, .2]), pen(line.part(.42, 1), [.2, .8, .6, .05])], "bone-line", .8)
    soft(p, of([(42, 10), (49, 9), (58, 8)]), of([(41, 16), (49, 15), (60, 13)]), "bone-shade", .6, 5)
    # greater trochanter: a blunt knob, lit above, rough
    pool(p, of([(-2, -9), (7, -13), (18, -14)]), 5, 5, "bone-light", .75, 6)
    p.ink(pen(of([(30, -21.6), (31.6, -15), (27, -9), (20, -6)]), [.05, .6, .5, .05]), "bone-line", .65)
    p.areas_of(stipple(of([(-2, -8), (26, -12)]), of([(-2, -18), (28, -22)]), 6, .42, depth=.8), "bone-line", .6)


def lower(p):
    """The condyles: two swells, the hollow for the patella between, rough points on both sides."""
    pool(p, of([(366, 18), (388, 28), (410, 32), (426, 29)]), 11, 10, "bone-light", .7, 8, .1)
    pool(p, of([(372, -14), (392, -24), (410, -27)]), 9, 7, "bone-light", .6, 7, .1)
    p.ink([pen(of([(330, -12), (350, -15), (368, -20), (384, -26)]), [.05, .5, .4, .05]), pen(of([(340, 20), (358, 25), (374, 32)]), [.05, .4, .05])], "bone-line", .55)
    for pts in ([(385, -38), (392, -33), (404, -31.6), (415, -34), (420, -38)], [(384, 39.6), (390, 34), (402, 33), (414, 36)]):
        p.ink(pen(of(pts), [.05, .45, .55, .05]), "bone-line", .6)
    p.areas_of(stipple(of([(398, -30), (412, -30)]), of([(396, -40), (414, -40)]), 5, .42), "bone-line", .6)
    p.areas_of(stipple(of([(388, 34), (412, 34)]), of([(388, 41), (412, 42)]), 4, .42), "bone-line", .6)
    for lo, hi in (([(425, -36), (433, -28), (437, -18), (436, -9)], [(418, -28), (423, -22), (426, -16), (427, -9)]), ([(434, 10), (438.6, 18), (438, 28), (432, 37)], [(426, 12), (428, 19), (427, 26), (422, 33)])):
        soft(p, of(hi), of(lo), "bone-shade", .5, 6, hump(.7))
    # the patella's shade
    soft(p, of([(384, -8), (398, -26), (416, -27), (434, -14), (442, 0)]), of([(392, -8), (402, -21), (413, -22), (428, -12), (436, 0)]), "bone-shade", .5, 5, hump(.7))


def patella(p):
    p.on("bone", "thigh", "patella", "Patella")
    p.area(PATELLA, "bone-base")
    pool(p, of([(400, 6), (410, 5), (421, 2)]), 13, 11, "bone-light", .85, 9, .2)
    low = Line(of([(393, -11), (397, -18.4), (404, -22), (412, -22.4), (420, -19.4), (428, -12), (435, -4), (436, 2), (430, 10)]))
    soft(p, of([(398, -3), (402, -8), (407, -10), (413, -9.6), (418, -7), (422, -3), (425, 0), (424, 3), (420, 6)]), low, "bone-shade", .6, 8, hump(.7))
    for k in range(6):                                # fine upright lines of its face
        s0 = 13 - 5 * k
        p.ink(pen(of([(396 + abs(k - 2.4), s0), (408, s0 * .92), (420 - 1.4 * abs(k - 2.4), s0 * .74)]), [.05, .4, .05]), "bone-line", .5)
    p.areas_of(stipple(of([(404, -10), (424, -4)]), of([(403, -21), (427, -12)]), 5, .4), "bone-line", .6)
    outline(p, PATELLA, 1.6)


def draw(p):
    thigh_front_pelvis.washes(p)
    ghost(p)
    thigh_front_pelvis.draw(p)
    leg(p)
    femur(p)
    patella(p)
