"""Thigh from the front: the belly's wall, gluteus medius, adductors and the floor of the groin, muscles of the shank."""
from engrave import Line, between, mix, pen, ribbon
from quarter_tools import glints, lines, muscle
from side_tools import hump, rise
from thigh_front_tools import soft
from thigh_front_frame import INNER, at, of

LIGAMENT = of([(-86, -4), (-72, 8), (-52, 27), (-30, 50), (-12, 71), (1, 87)])
GRACILIS_EDGE = of([(28, 108.4), (62, 107), (86, 105.4), (110, 103), (140, 98.6), (172, 92.6), (204, 86), (226, 80.6), (248, 73)])


def washes(p):
    # the belly fades out all round; only its corner above the groin is solid
    p.linear("wash.oblique", "pelvis", at(-150, 0), at(-118, 0), [(0, "muscle-base", 0), (1, "muscle-base")])
    p.radial("wash.sheath", "pelvis", at(-40, 36), 88, [(0, "tendon"), (.6, "tendon"), (.8, "tendon", .45), (1, "tendon", 0)])
    p.linear("wash.glut", "pelvis", at(0, -20), at(0, -44), [(0, "muscle-base"), (1, "muscle-shade")])
    p.linear("wash.adductor", "thigh", at(90, 108), at(80, 50), [(0, "muscle-base"), (.3, "muscle-light"), (1, "muscle-base")])
    p.linear("wash.deep", "thigh", at(60, 60), at(60, 10), [(0, "muscle-base"), (1, "muscle-shade")])
    p.linear("wash.band", "thigh", at(58, -44), at(130, -54), [(0, "tendon", 0), (.5, "tendon", .7), (1, "tendon", .92)])
    p.linear("wash.shank", "leg", at(500, 50), at(500, -50), [(0, "muscle-light"), (.5, "muscle-base"), (1, "muscle-shade")])


def belly(p):
    p.on("muscle", "pelvis", "gluteus-medius", "Gluteus medius")
    edge = of([(-122, -22), (-112, -32), (-96, -38), (-70, -41), (-40, -40.8), (-16, -41.4), (10, -43.4), (30, -45.4), (46, -46)])
    muscle(p, [(*edge[0], "c"), *edge[1:-1], (*edge[-1], "c"), at(46, -42, "c"), *of([(20, -34), (-20, -20), (-70, -16)]), at(-106, -15, "c")], "wash.glut", 1.7)
    a, b = Line(of([(-110, -18), (-70, -22), (-20, -30), (16, -38)])), Line(edge)
    lines(p, [[a(t), b(t)] for t in (.02, .3, .6, .95)], 6, .55, .75, lift=.15)
    p.on("muscle", "pelvis", "external-oblique", "External oblique")
    lig = Line(LIGAMENT)
    apo = of([(-74, 4), (-88, 26), (-106, 42), (-130, 52), (-160, 56)])
    flank = of([(-160, -35), (-146, -35), (-134, -36), (-122, -30), (-110, -19), (-98, -12)])
    p.area([(*LIGAMENT[1], "c"), *LIGAMENT[2:-1], (*LIGAMENT[-1], "c"), at(2, 113), at(-60, 150), at(-140, 140, "c"), at(-160, 40, "c"), at(-110, 10)], "wash.sheath")
    p.area([(*LIGAMENT[0], "c"), *LIGAMENT[1:2], *apo[1:-1], at(-160, 58, "c"), (*flank[0], "c"), *flank[1:]], "wash.oblique")
    line = Line(apo)
    for k in range(12):                               # fleshy slips and pale strands lock along the border
        t = .03 + .68 * k / 12
        q, j = line(t), ((k * .618) % 1)
        p.ink(pen([(q[0] - 14 - 12 * j, q[1] + 13 + 6 * j), (q[0] - 4, q[1] + 4), (q[0] + 5, q[1] - 6)], [.05, 1.5, 2.6, 2.2]), "tendon", .95 - .06 * k)
    for k in range(8):
        a0 = -140 + 6.4 * k
        p.ink(pen([at(a0, -30 + 2.4 * k), at(a0 + 14, -8 + 1.6 * k), line(.60 - .07 * k)], [.05, .6, .5, .05], 0, .86), "muscle-line", .3 + .05 * k)
    for k in range(6):                                # strands of the flat tendon run with the ligament
        p.ink(pen(Line(lig.shifted(-(7 + 6.5 * k), .02 + .03 * k, 1.0)), [.05, .4, .45, .3, .05]), "tendon-line", .75 - .1 * k)
    soft(p, of([(-96, -6), (-112, -14), (-128, -26)]), of([(-98, -12), (-112, -21), (-128, -34)]), "muscle-shade", .4, 6, rise((0, .6), (.6, .8), (1, 0)))
    # the ligament itself
    p.area(ribbon(LIGAMENT, [1.4, 4.4, 4.6, 4.4, 4.2, 2.4]), "tendon")
    p.ink(pen(lig.shifted(2), [.2, .8, .9, .8, .8, .3]), "tendon-line")
    p.ink(pen(lig.shifted(-1.8), [.1, .35, .4, .35, .1]), "tendon-line", .8)


def adductors(p):
    p.on("muscle", "thigh", "iliopsoas", "Iliopsoas")
    ps = [at(-70, 9, "c"), *of([(-58, 21)]), at(-44, 33, "c"), *of([(-20, 35), (4, 35), (28, 32), (50, 26)]), at(66, 16, "c"), *of([(50, 12), (26, 12), (0, 12), (-30, 10)])]
    muscle(p, ps, "wash.deep", .9)
    lines(p, [of([(-56, 12), (-46, 30)]), of([(-20, 14), (-14, 33)]), of([(20, 16), (24, 30)]), of([(58, 14), (60, 20)])], 5, .5, .7, lift=.15)
    p.on("muscle", "thigh", "pectineus", "Pectineus")
    pe = [at(-12, 71, "c"), at(0, 86, "c"), *of([(16, 82), (40, 72), (66, 58), (90, 44)]), at(96, 30, "c"), *of([(74, 42), (50, 56), (24, 66), (4, 69)])]
    muscle(p, pe, "wash.adductor", .9)
    lines(p, [of([(-10, 72), (0, 84)]), of([(22, 68), (30, 76)]), of([(60, 51), (64, 58)]), of([(90, 36), (92, 42)])], 4, .5, .7, lift=.15)
    p.on("muscle", "thigh", "adductor-magnus", "Adductor magnus")
    inner = Line(INNER)
    mag = [at(58, 103, "c"), *of([(100, 99), (150, 91), (190, 85)]), at(222, 79, "c"), at(222, 66, "c"), *of([(180, 70), (140, 78), (100, 86), (70, 94)])]
    muscle(p, mag, "muscle-shade", .6)
    lines(p, [of([(70, 95), (70, 101)]), of([(140, 80), (146, 91)]), of([(212, 68), (214, 80)])], 4, .5, .7, lift=.1)
    p.on("muscle", "thigh", "gracilis", "Gracilis")
    lat = of([(24, 101), (62, 99.6), (100, 97), (140, 92.6), (180, 86.6), (214, 79), (248, 69)])
    muscle(p, [at(24, 101, "c"), *lat[1:-1], (*lat[-1], "c"), (*GRACILIS_EDGE[-1], "c"), *GRACILIS_EDGE[-2:0:-1], (*GRACILIS_EDGE[0], "c")], "wash.adductor", 1.0)
    a, b = Line(lat), Line(GRACILIS_EDGE)
    lines(p, [[a(t), b(t)] for t in (.02, .3, .6, .97)], 3, .5, .7, lift=.12)
    soft(p, between(a, b, .6), a, "muscle-shade", .4, 5, hump(.6))
    p.on("muscle", "thigh", "adductor-longus", "Adductor longus")
    lo = of([(2, 87), (24, 80), (50, 70), (80, 61), (112, 55), (160, 52)])
    hi = of([(8, 96), (40, 96.6), (76, 94), (112, 89.6), (150, 83), (200, 70)])
    muscle(p, [(*lo[0], "c"), *lo[1:-1], (*lo[-1], "c"), (*hi[-1], "c"), *hi[-2:0:-1], (*hi[0], "c")], "wash.adductor", 1.2)
    a, b = Line(lo), Line(hi)
    lines(p, [[a(t), b(t)] for t in (.03, .25, .5, .75, .97)], 9, .58, .75, lift=.12)
    soft(p, between(a, b, .5), a, "muscle-shade", .4, 6, rise((0, .1), (.4, 1), (1, .6)))
    glints(p, [[a(t), b(t)] for t in (.2, .45, .7)], 2, 1.1)
    p.ink(pen([a(.0), mix(a(.08), b(.08), .5), mix(a(.22), b(.22), .5)], [1.6, 2.6, .05]), "tendon", .8)


def shank(p):
    p.on("muscle", "leg", "calf", "Calf, inner head")
    calf = [at(440, 46, "c"), *of([(456, 44.6), (474, 43.4), (496, 45.6)]), at(514, 48.4, "c"), at(514, 24.6, "c"), *of([(500, 25), (470, 31)]), at(450, 39, "c")]
    muscle(p, calf, "wash.shank", 1.1)
    lines(p, [of([(446, 40), (444, 45)]), of([(486, 30), (486, 43)]), of([(512, 27), (512, 46)])], 4, .5, .7)
    p.on("muscle", "leg", "tibialis-anterior", "Tibialis anterior")
    ta = [at(458, -26, "c"), *of([(468, -20), (486, -13), (508, -8)]), at(514, -7, "c"), at(514, -34, "c"), *of([(500, -34), (476, -34)])]
    muscle(p, ta, "wash.shank", 1.0)
    lines(p, [of([(460, -26), (466, -32)]), of([(490, -14), (490, -33)]), of([(512, -9), (512, -33)])], 5, .55, .72)
    p.on("muscle", "leg", "peroneus-longus", "Peroneus longus")
    pl = [at(462, -40, "c"), *of([(476, -34), (500, -34)]), at(514, -34, "c"), at(514, -51, "c"), *of([(500, -49), (486, -46.6)]), at(464, -45, "c")]
    muscle(p, pl, "wash.shank", 1.5)
    lines(p, [of([(464, -41), (466, -44)]), of([(496, -36), (496, -46)]), of([(512, -36), (512, -49)])], 4, .5, .72)
