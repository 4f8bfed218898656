"""Thigh from the side: vastus lateralis, rectus femoris, tensor with the iliotibial band, sartorius."""
import thigh_side_rear
from engrave import Line, between, contour, mix, pen, ramp
from thigh_side_tools import hump, lines, muscle, pool, rise, slant, soft
from thigh_side_frame import FRONT, at, cm
from thigh_side_rear import HAMSTRINGS

# borders: vastus behind (the outer septum), vastus before (against rectus), rectus before
SEPTUM = cm((1.0, -.9), (5, -1.0), (9, -1.15), (14, -1.05), (20, -.75), (25, -.3), (29, .3), (32, 1.1), (34.6, 2.2), (36.4, 3.3))
SEAM = cm((1.6, 3.4), (4, 5.0), (7, 6.35), (11, 7.35), (15, 7.85), (19, 7.85), (23, 7.4), (27, 6.75), (31, 6.15), (34, 5.85), (36.6, 5.8))
SKIN_FRONT = Line(FRONT)
RECTUS_FRONT = SKIN_FRONT.shifted(6.5, .2, .79)
VASTUS = [*cm((1.3, .4), (1.4, 1.8)), *SEAM[:-1], (*SEAM[-1], "c"), *cm((38.2, 5.6), (39.2, 5.0, "c"), (37.8, 4.3)), *SEPTUM[::-1][:-1], *cm((2.4, -1.1), (1.3, -1.0))]
RECTUS = [at(-4.6, 6.4, "c"), *cm((-2.2, 7.2), (.2, 7.9), (2.4, 8.5)), *RECTUS_FRONT[2:-1], at(37.9, 6.3, "c"), at(37.6, 5.9), *SEAM[::-1][:-2], *cm((2.2, 4.9), (-1.2, 5.6))]


def vastus(p):
    p.linear("wash.vastus", "thigh", at(15, 8), at(16, -1.2), [(0, "muscle-base"), (.3, "muscle-light"), (.65, "muscle-base"), (1, "muscle-shade")])
    p.on("muscle", "thigh", "vastus-lateralis", "Vastus lateralis")
    p.area(VASTUS, "wash.vastus")
    seam, sept = Line(SEAM), Line(SEPTUM)
    # fibres leave trochanter and septum in one sheaf and sweep down and forward, long and flat
    origin = Line(cm((2.6, 3.6), (1.7, 1.8), (1.7, 0), (5, -.8), (9, -1.05), (14, -.95), (20, -.65), (25, -.2), (29, .4), (32, 1.2)))
    end = Line(cm((9, 6.9), (14, 7.6), (18, 7.7), (22, 7.4), (26, 6.8), (30, 6.2), (33.6, 5.8), (36.4, 5.2), (37.4, 4.6), (37.0, 4.0)))
    n = 34
    for k in range(n):
        j = ((k * .618034 + .3) % 1.0) - .5
        s = (k + .5 + .4 * j) / n
        a, b = origin(.02 + .96 * s), end(s)
        bend = (1 - s) ** 2 * -9 + 3 * s
        mid = [(a[0] + (b[0] - a[0]) * u, a[1] + (b[1] - a[1]) * u + bend * 4 * u * (1 - u)) for u in (.02, .25, .5, .75, 1)]
        w = .52 + .2 * j
        if k % 3 == 1:
            p.ink(pen(mid, [.05, w, .05], 0, .46 + .2 * j), "muscle-line", .75)
        elif k % 3 == 2:
            p.ink(pen(mid, [.05, w, w, .05], .3 + .3 * j, 1), "muscle-line", .75)
        else:
            p.ink(pen(mid, [.05, w, w * .6, w, .05]), "muscle-line", .75)
    soft(p, Line(sept.shifted(-16)), sept, "muscle-shade", .5, rise((0, .3), (.4, 1), (.85, .7), (1, 0)))
    # the pale sheet it wears above, and the tendon into the kneecap's outer border
    pool(p, cm((3.4, 2.8), (8, 4.8), (13, 6.0), (18, 6.6)), 12, 10, "tendon", .42)
    p.area(cm((36.0, 5.72, "c"), (38.3, 5.75, "c"), (39.3, 5.0, "c"), (37.9, 4.25), (36.6, 3.5, "c"), (36.4, 4.1), (35.7, 4.9)), "tendon", .92)
    tips = ((33.2, 5.6, 5.6), (34.2, 5.2, 5.3), (33.0, 4.75, 5.0), (34.4, 4.4, 4.75), (33.8, 3.9, 4.5), (35.0, 3.5, 4.3))
    p.ink([pen(cm((x, y), (36.4, (y + z) / 2), (38.4, z)), [.05, 1.3, .8]) for x, y, z in tips], "tendon", .9)
    p.ink([pen(cm((36.2, y), (37.4, y + .1), (38.7, 4.9 + .2 * k)), [.05, .4, .3]) for k, y in enumerate((3.9, 4.5, 5.1))], "tendon-line", .7)
    p.ink(contour(sept, .4, 1.6, side=1, press=lambda t: ramp(t, (0, .3), (.3, .9), (1, 1))), "muscle-line")
    p.ink(pen(seam, [.1, .9, 1.2, 1.2, 1.0, .8, .2]), "muscle-line", .9)


def rectus(p):
    p.linear("wash.rectus", "thigh", at(15, 10), at(15.2, 7.4), [(0, "muscle-light"), (.5, "muscle-light"), (1, "muscle-base")])
    p.on("muscle", "thigh", "rectus-femoris", "Rectus femoris")
    p.area(RECTUS, "wash.rectus")
    lines(p, [cm((-3.6, 6.5), (-3.2, 6.1)), cm((3, 8.2), (3, 5.3)), cm((10, 9.3), (10, 7.4)), cm((17, 9.5), (17, 8.1)), cm((24, 8.6), (24, 7.5)), cm((30, 7.4), (30, 6.6)), cm((34, 6.6), (34, 6.1))], 7, .55, .75, lift=.15)
    s = Line(SEAM)
    soft(p, Line(s.shifted(-9)), s, "muscle-shade", .35, rise((0, .2), (.4, 1), (1, .2)))
    # tendon over and under the kneecap
    p.area([*cm((30.5, 7.0, "c"), (33.4, 6.9), (36, 6.45), (38.4, 6.55, "c"), (38.2, 5.6, "c"), (36, 5.75), (33.4, 6.0))], "tendon")
    p.area(cm((42.2, 5.95, "c"), (44, 5.55), (46.4, 5.35), (47.6, 5.05, "c"), (46.6, 4.75), (44.6, 4.7), (42.3, 5.0, "c")), "tendon")
    p.ink([pen(cm((32, 6.9), (35, 6.5), (38.2, 6.3)), [.05, .35, .2]), pen(cm((33, 6.3), (36, 6.0), (38.1, 5.9)), [.05, .35, .2]), pen(cm((42.4, 5.6), (44.4, 5.2), (46.6, 5.1)), [.2, .35, .2]),
           pen(cm((42.3, 5.95), (44, 5.57), (46.4, 5.37), (47.4, 5.1)), [.4, .5, .4, .1]), pen(cm((42.3, 5.0), (44.6, 4.7), (46.6, 4.75)), [.4, .7, .1])], "tendon-line", .85)
    p.ink(contour(Line([*cm((-4.6, 6.4), (-2.2, 7.2), (.2, 7.9)), *RECTUS_FRONT[1:]]), .3, 1.1, side=-1), "muscle-line")


def sartorius(p):
    p.on("muscle", "thigh", "sartorius", "Sartorius")
    s = cm((-9.7, 7.3, "c"), (-7.6, 7.2), (-4.4, 7.5), (-1.6, 8.0), (1.6, 8.6), (4.6, 9.2), (6.6, 9.45, "c"), (3.4, 8.4), (.4, 7.4), (-2.4, 6.6), (-5.4, 6.2), (-8.2, 6.5))
    muscle(p, s, "muscle-light", 1.0)
    lines(p, [cm((-8.8, 7.1), (-8.6, 6.7)), cm((-4.4, 7.3), (-4.2, 6.5)), cm((.6, 8.2), (1.0, 7.6)), cm((4.4, 9.0), (4.8, 8.8))], 4, .5, .75, lift=.12)


def band(p):
    """Tensor and band lie on top of vastus: the tensor in full, the band as a veil through which the muscle is seen."""
    p.on("muscle", "thigh", "iliotibial-band", "Iliotibial band")
    front = cm((7.0, 5.6), (10, 5.2), (15, 4.6), (21, 3.95), (28, 3.35), (34, 3.0), (39, 2.85), (44.7, 2.75))
    back = cm((4.6, -.9), (8, -1.2), (14, -1.1), (20, -.8), (26, -.1), (32, .8), (38, 1.6), (44.7, 2.15))
    shape = [(*front[0], "c"), *front[1:-1], (*front[-1], "c"), (*back[-1], "c"), *back[-2:0:-1], (*back[0], "c"), *cm((3.4, .6), (5.0, 3.4))]
    p.area(shape, "tendon", .3)
    f, b = Line(front), Line(back)
    for k, t in enumerate((.04, .16, .3, .44, .6, .76, .9)):
        ln = between(f, b, t)
        p.ink(pen(ln, [.1, 1.1, .7, .9, .7, .1], .04 + .03 * (k % 3), 1 - .02 * (k % 2)), "tendon", .6)
    for k, t in enumerate((.12, .36, .66, .84)):
        p.ink(pen(between(f, b, t), [.05, .35, .3, .35, .1], .12 + .07 * (k % 3), .98), "tendon-line", .6)
    # below, where it hugs the knee, the veil thickens into a band
    mid = between(f, b, .5)
    for x0 in (.5, .58, .66, .74):
        half = [(t, ramp(t, (x0, 0), (x0 + .36, .96))) for t in (x0 + (1 - x0) * k / 14 for k in range(15))]
        up = [mix(mid(t), f(t), h) for t, h in half]
        down = [mix(mid(t), b(t), h) for t, h in half]
        p.area([(*mid(x0 - .03), "c"), *up[1:-1], (*up[-1], "c"), (*down[-1], "c"), *down[-2:0:-1]], "tendon", .24)
    p.ink([pen(f, [.05, .4, .3, .5, .6]), pen(b, [.05, .5, .4, .6, .8])], "tendon-line", .85)
    p.on("muscle", "thigh", "tensor-fasciae-latae", "Tensor fasciae latae")
    t = cm((-9.8, 7.0, "c"), (-7.0, 6.5), (-3.6, 6.1), (0, 5.9), (4, 5.9), (8.2, 5.6, "c"), (7.0, 4.4), (6.2, 3.2, "c"), (2.6, 2.6), (-1, 2.5), (-4.6, 3.2), (-8, 4.5), (-10.9, 5.7, "c"))
    p.linear("wash.tensor", "thigh", at(-1, 6.2), at(-1.4, 2.4), [(0, "muscle-light"), (.5, "muscle-base"), (1, "muscle-shade")])
    muscle(p, t, "wash.tensor", 1.2)
    lines(p, [cm((-9.9, 6.8), (-10.6, 5.8)), cm((-5, 6.1), (-5.6, 3.7)), cm((0, 5.7), (-.6, 2.7)), cm((4, 5.7), (3.4, 2.9)), cm((8.0, 5.4), (6.4, 3.4))], 8, .55, .78, lift=.12)
    for k in range(6):
        y = 3.4 + .38 * k
        p.ink(pen(cm((4.6 - .5 * (k % 2), y - .1), (7.2 + .2 * k, y + .1), (10 + .3 * k, y - .1)), [.05, 1.0, .1]), "tendon", .8)


def draw(p):
    thigh_side_rear.draw(p)
    vastus(p)
    rectus(p)
    sartorius(p)
    band(p)
