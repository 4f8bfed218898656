"""Thigh from the front: the belly's wall, gluteus medius, adductors and the floor of the groin, muscles of the shank."""
from engrave import Line, between, contour, mix, pen, ramp, ribbon
from quarter_tools import glints, lines, muscle
from side_tools import hump, rise
from thigh_front_tools import soft
from thigh_front_frame import at, of

LIGAMENT = of([(-82, -1), (-71, 9), (-52, 27), (-30, 50), (-12, 71), (1, 87)])
# gracilis hugs the pubis until it is clear of it, however stout the thigh
GRACILIS_EDGE = of([(8, 105), (24, 102.6), (40, 100.6), (62, 100.4), (86, 100.8), (110, 99.6), (140, 96.4), (172, 91.2), (204, 85.2), (226, 80.2), (248, 73)])
# from here inward the belly's muscle is a flat tendon
APO = of([(-82, 1), (-96, 11), (-112, 19), (-130, 26), (-148, 32), (-166, 37)])


def washes(p):
    p.linear("wash.oblique", "pelvis", at(-160, 0), at(-134, 0), [(0, "muscle-base", 0), (.5, "muscle-base", .7), (1, "muscle-base")])
    # the flat tendon fades out beyond the midline and up the belly
    p.radial("wash.sheath", "pelvis", at(-44, 36), 116, [(0, "tendon"), (.78, "tendon"), (.88, "tendon", .6), (1, "tendon", 0)])
    p.linear("wash.glut", "pelvis", at(0, -18), at(0, -44), [(0, "muscle-base"), (1, "muscle-shade")])
    p.linear("wash.adductor", "thigh", at(90, 108), at(80, 50), [(0, "muscle-base"), (.3, "muscle-light"), (1, "muscle-base")])
    p.linear("wash.deep", "thigh", at(60, 60), at(60, 10), [(0, "muscle-base"), (1, "muscle-shade")])
    p.linear("wash.band", "thigh", at(58, -44), at(473, -44), [(0, "tendon", 0), (.09, "tendon", .7), (.17, "tendon", .92), (.94, "tendon", .92), (1, "tendon", 0)])
    p.linear("wash.shank", "leg", at(484, 0), at(513, 0), [(0, "muscle-base"), (1, "muscle-base", 0)])


def belly(p):
    p.on("muscle", "pelvis", "gluteus-medius", "Gluteus medius")
    edge = of([(-124, -22.4), (-114, -30), (-98, -36.6), (-72, -40), (-40, -39.8), (-16, -40), (6, -40), (22, -37)])
    p.area([(*edge[0], "c"), *edge[1:-1], (*edge[-1], "c"), *of([(16, -30), (-20, -18), (-70, -8)]), at(-84, -5, "c"), *of([(-94, -11), (-104, -16), (-112, -19.4)])], "wash.glut")
    p.ink(contour(edge, .3, 1.6, side=1), "muscle-line")
    a, b = Line(of([(-90, -10), (-66, -14), (-20, -24), (10, -32)])), Line(edge)
    lines(p, [[a(t), b(t)] for t in (.02, .3, .6, .95)], 6, .55, .75, lift=.15)
    p.on("muscle", "pelvis", "external-oblique", "External oblique")
    apo, lig = Line(APO), Line(LIGAMENT)
    p.area([(*LIGAMENT[1], "c"), *LIGAMENT[2:-1], (*LIGAMENT[-1], "c"), at(0, 100), at(-3, 112), at(-10, 130), at(-22, 153, "c"), at(-161, 153, "c"), at(-161, 36, "c"), at(-112, 17)], "wash.sheath")
    # its flesh comes down over the flank and ends on the crest's outer lip
    lip = of([(-87, -6), (-94, -10), (-104, -15), (-112, -19), (-121, -21.4), (-130, -26), (-144, -32.4), (-160, -34.6)])
    p.area([(*APO[0], "c"), *APO[1:-1], (*APO[-1], "c"), (*lip[-1], "c"), *lip[-2:0:-1], (*lip[0], "c")], "wash.oblique")
    for k in range(11):                               # red and cream run into each other by unequal strokes
        t, j, i = .04 + .6 * k / 11, (k * .618) % 1, (k * .382 + .3) % 1
        q, f = apo(t), 1 - .07 * k
        p.ink(pen([(q[0] - 6 - 12 * j, q[1] + 7 + 11 * j), (q[0], q[1]), (q[0] + 5, q[1] - 5)], [.05, .5 + .5 * i, .9 + .5 * i, .4]), "tendon", .8 * f)
        r = apo(t + .02 + .02 * j)
        p.ink(pen([(r[0] - 6, r[1] + 7), r, (r[0] + 3 + 8 * i, r[1] - 3 - 9 * i)], [1.0, 1.0 + .4 * j, .05]), "muscle-base", .6 * f)
    low = Line(lip)
    for k in range(9):
        u = .04 + .74 * k / 9
        a, b = low(u), apo(min(1, u * .9 + .06))
        p.ink(pen([a, mix(a, b, .5), b], [.05, .6, .55, .05], 0, .9), "muscle-line", .7 - .05 * k)
    p.ink(contour(low.part(.0, .62), .3, 1.2, side=-1, press=lambda t: ramp(t, (0, .6), (.6, 1), (1, .05))), "muscle-line")
    for k in range(6):                                # strands of the flat tendon run with the ligament
        p.ink(pen(Line(lig.shifted(-(7 + 7 * k), .04 + .03 * k, 1.0)), [.05, .4, .45, .3, .05]), "tendon-line", .75 - .09 * k)
    p.area(ribbon(LIGAMENT, [2.4, 4.4, 4.6, 4.4, 4.2, 2.4]), "tendon")
    p.ink(pen(lig.shifted(2), [.2, .8, .9, .8, .8, .3]), "tendon-line")
    p.ink(pen(lig.shifted(-1.8), [.1, .35, .4, .35, .1]), "tendon-line", .8)


def adductors(p):
    # short adductors and what closes the hole of the pelvis: a quiet red ground on which no paper opens
    p.on("muscle", "thigh")
    p.area([*of([(4, 70), (2, 84), (8, 98)]), at(20, 103, "c"), *of([(60, 100), (120, 95), (180, 84)]), at(224, 72, "c"), *of([(150, 52), (90, 34), (50, 44), (20, 60)])], "muscle-shade")
    p.on("muscle", "thigh", "iliopsoas", "Iliopsoas")
    ps = [at(-70, 9, "c"), *of([(-58, 21)]), at(-44, 33, "c"), *of([(-20, 35), (4, 35), (28, 32), (50, 26)]), at(66, 16, "c"), *of([(50, 12), (26, 12), (0, 12), (-30, 10)])]
    muscle(p, ps, "wash.deep", .9)
    lines(p, [of([(-56, 12), (-46, 30)]), of([(-20, 14), (-14, 33)]), of([(20, 16), (24, 30)]), of([(58, 14), (60, 20)])], 5, .5, .7, lift=.15)
    p.on("muscle", "thigh", "pectineus", "Pectineus")
    pe = [at(-12, 71, "c"), at(0, 86, "c"), *of([(16, 82), (40, 72), (66, 58), (90, 44)]), at(96, 30, "c"), *of([(74, 42), (50, 56), (24, 66), (4, 69)])]
    muscle(p, pe, "wash.adductor", .9)
    lines(p, [of([(-10, 72), (0, 84)]), of([(22, 68), (30, 76)]), of([(60, 51), (64, 58)]), of([(90, 36), (92, 42)])], 4, .5, .7, lift=.15)
    p.on("muscle", "thigh", "adductor-magnus", "Adductor magnus")
    mag = [at(58, 98, "c"), *of([(100, 96), (150, 89), (190, 83.6)]), at(222, 79, "c"), at(222, 66, "c"), *of([(180, 70), (140, 78), (100, 86), (70, 94)])]
    muscle(p, mag, "muscle-shade", .6)
    lines(p, [of([(70, 95), (70, 101)]), of([(140, 80), (146, 91)]), of([(212, 68), (214, 80)])], 4, .5, .7, lift=.1)
    p.on("muscle", "thigh", "gracilis", "Gracilis")
    lat = of([(14, 97.6), (34, 95.2), (62, 93.4), (100, 92.6), (140, 89.4), (180, 84.6), (214, 77.6), (248, 69)])
    muscle(p, [(*lat[0], "c"), *lat[1:-1], (*lat[-1], "c"), (*GRACILIS_EDGE[-1], "c"), *GRACILIS_EDGE[-2:0:-1], (*GRACILIS_EDGE[0], "c")], "wash.adductor", 1.0)
    a, b = Line(lat), Line(GRACILIS_EDGE)
    lines(p, [[a(t), b(t)] for t in (.02, .3, .6, .97)], 3, .5, .7, lift=.12)
    p.ink([pen(between(a, b, v).part(.005, .1 + .07 * v), [1.3, 1.6, .8, .05]) for v in (.3, .7)], "tendon", .75)
    soft(p, between(a, b, .6), a, "muscle-shade", .4, 5, hump(.6))
    p.on("muscle", "thigh", "adductor-longus", "Adductor longus")
    lo = of([(1, 88), (24, 80), (50, 70), (80, 61), (112, 55), (160, 52)])
    hi = of([(7, 98), (24, 96.4), (48, 93.6), (78, 91), (112, 87.6), (150, 83), (200, 70)])
    muscle(p, [(*lo[0], "c"), *lo[1:-1], (*lo[-1], "c"), (*hi[-1], "c"), *hi[-2:0:-1], (*hi[0], "c")], "wash.adductor", 1.2)
    a, b = Line(lo), Line(hi)
    lines(p, [[a(t), b(t)] for t in (.03, .25, .5, .75, .97)], 7, .58, .75, lift=.12)
    soft(p, between(a, b, .5), a, "muscle-shade", .4, 6, rise((0, .1), (.4, 1), (1, .6)))
    glints(p, [[a(t), b(t)] for t in (.2, .45, .7)], 2, 1.1)
    p.ink([pen(between(a, b, v).part(.004, .1 + .12 * (1 - v)), [1.0, 1.5, .8, .05]) for v in (.2, .5, .8)], "tendon", .7)


def belly_of(p, name, title, upper, lower, count):
    """A belly of the shank between two borders, fading out under the sheet."""
    p.on("muscle", "leg", name, title)
    a, b = Line(of(upper)), Line(of(lower))
    p.area([(*a(0), "c"), *a.part(.1, .9), (*a(1), "c"), (*b(1), "c"), *b.part(.9, .1), (*b(0), "c")], "wash.shank")
    p.ink([pen(a, [.3, .7, .6, .05]), pen(b, [.3, 1.3, 1.1, .05])], "muscle-line")
    lines(p, [[a(t), b(t)] for t in (.03, .4, .9)], count, .5, .72)


def shank(p):
    belly_of(p, "calf", "Calf, inner head", [(440, 47), (456, 45), (474, 43.8), (496, 45.6), (513, 48.4)], [(446, 41), (462, 35), (480, 29), (500, 25), (513, 24.6)], 3)
    belly_of(p, "tibialis-anterior", "Tibialis anterior", [(458, -25), (468, -20), (486, -13), (500, -9.6), (513, -7)], [(459, -28), (470, -34), (486, -34.6), (500, -34), (513, -34)], 3)
    belly_of(p, "peroneus-longus", "Peroneus longus", [(462, -39), (476, -35), (490, -34.6), (513, -34)], [(462, -44), (474, -45.6), (490, -47.4), (513, -51)], 3)
