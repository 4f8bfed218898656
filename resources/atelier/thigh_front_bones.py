"""Thigh from the front: femur, patella, tops of tibia and fibula; the hip bone stands in thigh_front_pelvis."""
import thigh_front_pelvis
from engrave import Line, contour, pen, ramp, rim, stipple
from side_tools import cluster, hump, rise
from thigh_front_tools import pool, soft
from thigh_front_frame import FEMUR_INNER, FEMUR_OUTER, at, of
from thigh_front_pelvis import RIM

# the head: a ball about (1, 32); of it what the front rim of the socket leaves free
HEAD = [(*RIM[0], "c"), *RIM[1:-1], (*RIM[-1], "c"), *of([(18.4, 47.6), (22.4, 41.4), (24.4, 34), (23.6, 26), (20, 18.6), (14.2, 12.8), (6.8, 9.4), (-1, 8.8), (-8.4, 10.6), (-14.6, 14.2), (-19.4, 18.4)])]
# neck and shaft in one: from the head over the trochanter, down to the condyles
NECK_TOP = of([(6.6, 5.2), (7, 1), (4.4, -2.2), (-.4, -3.8), (-5.4, -4.8)])
JUNCTION = of([(24, 31), (18.6, 24), (10, 16), (4, 9)])
ENDS = of([(432, -29), (436.4, -22), (437, -13), (433, -5.6), (429.6, 0), (433, 6), (438, 14), (439, 23), (437, 30)])
FEMUR = [(*JUNCTION[-1], "c"), *NECK_TOP, *FEMUR_OUTER[:-1], *ENDS, *FEMUR_INNER[-2:0:-1], (*JUNCTION[0], "c"), *JUNCTION[1:-1]]
TROCHANTER = of([(-10.5, -7), (-8, -13.4), (-1, -19), (10, -23), (22, -23), (30, -21.8), (32, -14), (26, -6), (14, -1), (2, .6), (-6, -2.6)])
PATELLA = of([(391.4, 0), (392.2, -9), (396, -17.6), (403.6, -22), (412, -22.4), (420, -19.4), (428, -12), (434.6, -4.4), (437, 0),
              (434.6, 4.4), (428, 12.2), (420, 19.4), (412, 22.4), (403.6, 22), (396, 17.6), (392.2, 9)])
TIBIA = [at(446, 0, "c"), *of([(443, -6), (441, -16), (440.6, -28), (443, -36.4), (449, -38.4), (457, -35), (467, -27.6), (479, -20), (496, -15.4)]), at(514, -13, "c"), at(514, 19.6, "c"),
         *of([(496, 20.6), (480, 24), (466, 31), (456, 37.6), (448, 41.2), (441.6, 39), (439.4, 28), (440, 15), (443, 6)])]
FIBULA = [*of([(446.6, -34), (448, -38.6), (453, -41.4), (460, -41.4), (468, -39.6), (480, -38), (498, -38)]), at(514, -38.6, "c"), at(514, -28.6, "c"), *of([(498, -28.6), (480, -29), (466, -30.4), (456, -31)])]


def outline(p, shape, thick=1.3, thin=.3, press=None):
    p.ink(rim(shape, thin, thick, press=press), "bone-line")


def leg(p):
    for name, title, shape, lo, hi in (
            ("fibula", "Fibula", FIBULA, [(450, -40), (464, -40.4), (484, -38), (514, -38.6)], [(452, -36), (464, -36), (484, -33), (514, -33)]),
            ("tibia", "Tibia", TIBIA, [(446, -37), (458, -34), (470, -25), (490, -16.6), (514, -13)], [(450, -20), (460, -16), (470, -10), (490, -4), (514, -2)])):
        p.on("bone", "leg", name, title)
        p.area(shape, "wash.leg")
        soft(p, of(hi), of(lo), "bone-shade", .55, 7, rise((0, .6), (.2, 1), (.6, .8), (1, 0)))
        # the outline fades with the bone, under the sheet
        a, b = (k for k, q in enumerate(shape) if q[0] == at(514, 0)[0])
        p.ink(contour([q[:2] for q in (*shape[b:], *shape[:a + 1])], .3, 1.5, side=1, press=lambda t: ramp(t, (0, 0), (.16, 1), (.84, 1), (1, 0))), "bone-line")
    # plateau, tuberosity, the sharp front edge going down from it
    pool(p, of([(452, 16), (456, 8), (462, 0)]), 9, 10, "bone-light", .7, 7)
    p.ink(pen(of([(451, -33), (455, -16), (457, 0), (455, 18), (450, 36)]), [.05, .5, .3, .5, .05]), "bone-line", .5)
    pool(p, of([(471, -2), (480, -3), (488, -3)]), 6, 6.5, "bone-light", .75, 6)
    tub = Line(of([(466, -9), (474, -11.4), (483, -11), (491, -7), (498, -5.4), (505, -4.4)]))
    soft(p, tub.shifted(7), tub, "bone-shade", .4, 5, rise((0, 0), (.4, 1), (1, .4)))
    p.ink(pen(tub, [.05, .5, .8, .7, .4, .05]), "bone-line", .75)


def femur(p):
    p.on("bone", "thigh", "femur", "Femur")
    p.area(FEMUR, "bone-base")
    lo, hi = Line(FEMUR_OUTER), Line(FEMUR_INNER)
    soft(p, of([(10, -6), (40, -4), (90, -6), (160, -6), (230, -5), (300, -4), (340, -6), (370, -12), (400, -20), (420, -20)]), Line(lo.part(.06, .985)), "bone-shade", .6, 9, rise((0, .7), (.5, 1), (1, .8)))
    pool(p, of([(66, 6), (120, 4.4), (190, 4.6), (260, 5.6), (316, 8)]), 6, 5, "bone-light", .8, 8, .1)
    neck(p)
    # the shaft's shade comes and goes
    core, low = Line(of([(30, -2), (90, -4), (160, -4), (230, -3), (300, -2), (350, -4)])), Line(lo.part(.09, .82))
    for n, t0, t1 in ((8, .06, .40), (9, .62, .99)):
        p.ink(cluster(core, low, n, t0, t1, .8, .5, .12, .04), "bone-line", .65)
    lower(p)
    outline(p, FEMUR, 1.7)
    head(p)


def head(p):
    """The ball in its socket: a round light, a crescent of shade, the lip's shadow on it."""
    p.area(HEAD, "bone-light")
    under = Line(of([(17, 49), (22.4, 41.4), (24.4, 34), (23.6, 26), (20, 18.6), (14.2, 12.8), (6.8, 9.4), (-1, 8.8), (-8.4, 10.6)]))
    soft(p, of([(9, 46), (12, 40), (13, 34), (12, 28.6), (9, 24), (5, 21), (0, 19), (-4, 18), (-9, 17)]), under, "bone-shade", .62, 12, rise((0, .5), (.3, 1), (.75, .9), (1, 0)))
    lip = Line(RIM)
    soft(p, lip.shifted(6), lip, "bone-shade", .5, 6, hump(.6))
    p.ink(cluster(Line(of([(13, 40), (13, 34), (11, 28), (7, 23)])), Line(of([(22.4, 41.4), (24.4, 34), (23.6, 26), (20, 18.6)])), 6, .02, .98, .8, .42, .12, .06), "bone-line", .6)
    p.ink(contour([q[:2] for q in HEAD[len(RIM) - 1:]] + [RIM[0]], .4, 1.4, side=-1), "bone-line")
    p.ink(pen(lip, [.3, 1.1, 1.2, 1.1, .4]), "bone-line")


def neck(p):
    """Narrower than the ball; short and hollow above, long below; a rough line runs between the two trochanters."""
    under = Line(of([(24, 30), (29.4, 23.4), (36, 17.6), (43, 14.6)]))
    soft(p, under.shifted(12), under, "bone-shade", .55, 7, hump(.7))
    pool(p, of([(9, 9), (16, 5), (24, 2)]), 5, 5, "bone-light", .75, 6, .2)
    soft(p, of([(13, 4), (22, 13), (30, 26)]), of([(4.6, 8), (12, 13), (24, 29)]), "bone-shade", .5, 6, hump(.7))
    line = Line(of([(-1, -6), (9, -6.4), (20, -3.4), (31, 2), (42, 8.4), (50, 12)]))
    soft(p, line.shifted(8), line, "bone-shade", .45, 5, hump(.8))
    p.ink([pen(line.part(0, .5), [.05, .8, .8, .2]), pen(line.part(.46, 1), [.2, .8, .7, .05])], "bone-line", .8)
    # the lesser trochanter: a small knob that peeps out on the inner side
    pool(p, of([(46, 14), (51, 14.4), (56, 13.4)]), 3, 3, "bone-light", .7, 4)
    p.ink(pen(of([(44, 12.6), (47, 9.8), (53, 9), (59, 10.6)]), [.05, .6, .5, .05]), "bone-line", .7)
    # greater trochanter: a rough block, flat outward, lit above
    pool(p, of([(-3, -10), (7, -13.4), (18, -13)]), 5, 5, "bone-light", .75, 6)
    soft(p, of([(22, -14), (24, -8), (21, -3)]), of([(31.6, -21), (32, -13), (27, -6)]), "bone-shade", .5, 5, hump(.7))
    p.ink(pen(of([(31, -21.4), (32.4, -15), (28.6, -8), (22, -4.6)]), [.05, .7, .6, .05]), "bone-line", .7)
    p.areas_of(stipple(of([(-2, -8), (26, -12)]), of([(-2, -18), (28, -22)]), 5, .42, depth=.8), "bone-line", .6)


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
    for k in range(5):                                # fine upright lines of its face
        s0 = 13 - 5 * k
        p.ink(pen(of([(396 + abs(k - 2.4), s0), (408, s0 * .92), (420 - 1.4 * abs(k - 2.4), s0 * .74)]), [.05, .4, .05]), "bone-line", .5)
    p.areas_of(stipple(of([(404, -10), (424, -4)]), of([(403, -21), (427, -12)]), 5, .4), "bone-line", .6)
    outline(p, PATELLA, 1.6)


def draw(p):
    thigh_front_pelvis.washes(p)
    p.linear("wash.leg", "leg", at(488, 0), at(514, 0), [(0, "bone-base"), (1, "bone-base", 0)])
    thigh_front_pelvis.draw(p)
    leg(p)
    femur(p)
    patella(p)
