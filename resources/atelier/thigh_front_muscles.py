"""Thigh from the front: quadriceps, sartorius, tensor and band; adductors and the wall of the belly in thigh_front_groin."""
import thigh_front_groin
from engrave import Line, between, contour, mix, pen, ramp, ribbon
from quarter_tools import glints, lines, muscle
from side_tools import hump, rise
from thigh_front_tools import soft
from thigh_front_frame import at, of

RF_IN = of([(-40, 8.4), (-18, 12), (8, 17.4), (40, 23), (80, 28), (120, 30.4), (160, 30.2), (200, 27.6), (240, 23), (274, 18.4), (304, 15)])
RF_OUT = of([(-42, 3.4), (-20, 1.6), (8, -3), (40, -10.6), (80, -18.6), (120, -23.6), (160, -25.2), (200, -24), (240, -20.6), (274, -16.8), (304, -13.6)])
RECTUS = [(*RF_IN[0], "c"), *RF_IN[1:-1], *of([(334, 13.6), (362, 13.8), (384, 15.6)]), at(392, 16, "c"), at(391, 0), at(392, -15, "c"), *of([(384, -14), (362, -12), (334, -12)]), *RF_OUT[-2:0:-1],
          (*RF_OUT[0], "c")]
VL_EDGE = of([(36, -41), (65, -47.4), (98, -53), (135, -56.8), (172, -58.4), (210, -58.8), (246, -57.4), (282, -54.4), (310, -50.6), (332, -45.6)])      # 4 mm under the skin
VL_LOW = of([(350, -40), (366, -35), (380, -29.6), (392, -23)])
VASTUS_LATERALIS = [at(22, -26, "c"), *of([(30, -14), (50, -13)]), *RF_OUT[4:], *of([(334, -12), (362, -12)]), at(386, -14, "c"), at(394, -19, "c"), *VL_LOW[-2::-1], *VL_EDGE[:0:-1], at(36, -41, "c")]
SART_OUT = of([(-79.4, -5), (-56, -1), (-26, 10), (14, 25), (60, 38.6), (110, 47.6), (160, 52.6), (210, 55), (260, 56.6), (300, 57), (335, 56.8), (365, 54.6), (392, 49),
               (420, 42.4), (446, 33.6), (464, 21), (474, 12.4), (484, 4.6)])
SART_IN = of([(-80, -.4), (-62, 15), (-34, 30.4), (6, 48), (56, 64.4), (108, 75.4), (160, 80), (210, 80.4), (250, 77.4), (290, 70.4), (330, 65.8), (362, 63.6), (384, 58.6),
              (410, 54), (436, 49.4), (460, 40), (478, 26.6), (490, 13)])
VM_LOW = of([(372, 61), (386, 55.6), (398, 47), (408, 36), (415, 24)])
VASTUS_MEDIALIS = [at(44, 28, "c"), at(70, 26), *RF_IN[5:], *of([(334, 13.6), (362, 13.8), (384, 15.6)]), at(396, 17.4), at(416, 22.4, "c"), *VM_LOW[-2::-1], at(362, 63, "c"), *of([(330, 64), (290, 64), (250, 62), (210, 60), (160, 57), (110, 51), (70, 42)])]
TFL_IN = of([(-84, -9), (-60, -9), (-30, -12), (4, -17), (36, -24), (66, -33), (96, -43)])
TFL_OUT = of([(-106, -17), (-84, -26), (-56, -32.6), (-24, -37.4), (10, -42), (40, -45.6), (70, -49.6), (104, -53.6)])


def cut(a, b, *ts):
    return [[a(t), b(t)] for t in ts]


def washes(p):
    for name, a, b, stops in (
            ("wash.vl", at(200, -12), at(200, -60), [(0, "muscle-light"), (.3, "muscle-base"), (.72, "muscle-base"), (1, "muscle-shade")]),
            ("wash.rf", at(160, 31), at(160, -26), [(0, "muscle-base"), (.28, "muscle-light"), (.7, "muscle-base"), (1, "muscle-shade")]),
            ("wash.vm", at(330, 66), at(330, 12), [(0, "muscle-base"), (.3, "muscle-light"), (.75, "muscle-base"), (1, "muscle-shade")]),
            ("wash.sartorius", at(60, 73), at(70, 44), [(0, "muscle-light"), (.5, "muscle-light"), (1, "muscle-base")]),
            ("wash.tfl", at(30, -30), at(94, -48), [(0, "muscle-base"), (.4, "muscle-base", .85), (1, "muscle-base", 0)])):
        p.linear(name, "thigh", a, b, stops)
    # both vasti come up out of the depth
    deep = [(0, "muscle-shade"), (.16, "muscle-shade"), (.5, "muscle-shade", .45), (1, "muscle-shade", 0)]
    p.linear("shade.vl", "thigh", at(24, -20), at(104, -34), deep)
    p.linear("shade.vm", "thigh", at(46, 30), at(114, 42), deep)


def bed(p):
    """What fills the clefts beside rectus: the deep heads, in shadow. Nothing of it lies under rectus itself."""
    p.on("muscle", "thigh")
    p.area([at(-48, 6, "c"), *of([(-26, 14), (14, 27), (60, 40)]), at(80, 40, "c"), at(80, 26, "c"), *of([(40, 22), (8, 16.6), (-20, 10)])], "muscle-shade")
    p.area([at(-52, 3, "c"), *of([(-20, 3), (8, -1), (40, -8), (70, -15)]), at(80, -20, "c"), at(70, -36, "c"), *of([(34, -30), (0, -22), (-30, -14), (-62, -11)]), at(-84, -9, "c"), at(-70, -4)], "muscle-shade")
    lines(p, [of([(-20, 12), (-24, 13)]), of([(14, 20), (12, 25)]), of([(60, 28), (60, 38)])], 3, .5, .6, lift=.1)
    lines(p, [of([(-20, 0), (-20, -10)]), of([(14, -5), (12, -20)]), of([(60, -15), (58, -32)])], 5, .5, .6, lift=.15)


def lateralis(p):
    p.on("muscle", "thigh", "vastus-lateralis", "Vastus lateralis")
    muscle(p, VASTUS_LATERALIS, "wash.vl", 1.9)
    p.area([at(22, -26, "c"), *of([(30, -14), (50, -13)]), at(110, -22, "c"), at(110, -52, "c"), at(36, -41, "c")], "shade.vl")
    # from the outer septum and the trochanter slanting to the tendon beside rectus
    lo = Line([*of([(22, -27)]), *VL_EDGE, *VL_LOW])
    hi = Line([*RF_OUT[3:], *of([(334, -12), (362, -12), (390, -16)])])
    n = 18
    for k in range(n):
        u = k / n
        j = ((k * .618 + .3) % 1) - .5
        a, b = lo(.02 + .86 * u), hi(min(.985, .30 + .72 * u + .02 * j))
        m, m2 = mix(a, b, .34), mix(a, b, .7)
        mid = (m[0] - 4, m[1] - 3.4), (m2[0] - 3, m2[1] - 2.6)
        p.ink(pen([a, *mid, b], [.1, .75 - .2 * j, .5, .6, .05], .02 + .1 * (j + .5), .97 - .12 * (j + .5)), "muscle-line", .72)
    glints(p, [[at(60, -24), at(70, -36)], [at(150, -30), at(160, -42)], [at(240, -26), at(250, -38)], [at(320, -18), at(320, -26)]], 4, 1.2)
    soft(p, hi.shifted(8), hi, "muscle-shade", .4, 5, rise((0, .2), (.3, 1), (.8, .8), (1, 0)))
    soft(p, between(lo, hi, .34), lo, "muscle-shade", .42, 6, rise((0, .2), (.3, .9), (.7, 1), (1, .2)))
    tendon_end(p, [(300, -13.4), (326, -14), (352, -14.4), (392, -18.6)], [(336, -22), (352, -26), (372, -27), (393, -21)], 5)


def tendon_end(p, near, far, n):
    """The pale slip into which a belly runs out, its strands of unequal length."""
    a, b = Line(of(near)), Line(of(far))
    for k in range(n):
        v = (k + .5) / n
        ln = Line([mix(a(t), b(t), v) for t in (0, .33, .66, 1)])
        p.ink(pen(ln, [.05, 1.5, 2.0, 1.4], .1 + .3 * ((k * .618) % 1), 1), "tendon", .8)
        p.ink(pen(ln.shifted(.9), [.05, .3, .4, .2], .35 + .2 * ((k * .618) % 1), .98), "tendon-line", .6)


def medialis(p):
    p.on("muscle", "thigh", "vastus-medialis", "Vastus medialis")
    muscle(p, VASTUS_MEDIALIS, "wash.vm", 1.5)
    p.area([at(44, 28, "c"), at(70, 26), at(120, 30, "c"), at(120, 52, "c"), *of([(110, 51), (70, 42)])], "shade.vm")
    lo = Line([*RF_IN[4:], *of([(334, 13.6), (362, 13.8), (390, 16.4), (415, 23)])])
    hi = Line(of([(66, 40), (110, 49), (160, 55), (210, 58), (250, 60), (290, 62), (330, 64), (362, 63), (376, 60.4), (388, 54.6), (399, 46), (409, 34)]))
    n = 18
    for k in range(n):
        u = (k + .3) / n
        j = ((k * .618 + .1) % 1) - .5
        lead = .22 - .12 * u                       # steep above, lying over toward the patella below
        a, b = hi(.02 + .95 * u), lo(min(.99, u + lead))
        m, m2 = mix(a, b, .3), mix(a, b, .68)
        p.ink(pen([a, (m[0] + 2, m[1] - 2.6), (m2[0] + 1.6, m2[1] - 1.4), b], [.1, .7 - .2 * j, .5, .55, .05], .02, .95 - .12 * (j + .5)), "muscle-line", .72)
    soft(p, lo.shifted(-9), lo, "muscle-shade", .46, 6, rise((0, .2), (.4, 1), (.8, .6), (1, 0)))
    low = Line(VM_LOW)
    soft(p, low.shifted(8), low, "muscle-shade", .36, 5, hump(.8))
    glints(p, [[at(300, 46), at(306, 56)], [at(340, 42), at(346, 54)], [at(378, 36), at(384, 46)]], 3, 1.2)
    tendon_end(p, [(352, 17), (372, 18), (392, 18.6), (404, 21)], [(376, 30), (390, 30), (402, 27), (413, 25)], 4)


def rectus(p):
    p.on("muscle", "thigh", "rectus-femoris", "Rectus femoris")
    muscle(p, RECTUS, "wash.rf", 1.6)
    top, low = Line(RF_IN), Line(RF_OUT)
    axis = between(top, low, .5)
    # feathered on both sides of a pale seam
    for side, edge in ((0, top), (1, low)):
        for k in range(12):
            u = .03 + .78 * k / 12
            j = ((k * .618 + .4 * side) % 1) - .5
            a, b = axis(u), edge(min(.99, u + .24 + .03 * j))
            m, m2 = mix(a, b, .36), mix(a, b, .72)
            bend = 1.8 if side == 0 else -1.8
            p.ink(pen([a, (m[0], m[1] - bend * .6), (m2[0], m2[1] - bend), b], [.05, .6 - .2 * j, .5, .35, .05], .04 + .1 * (j + .5), .97), "muscle-line", .72)
    seam = Line(axis.part(.02, .66))
    p.ink(pen(seam, [.2, 1.6, 1.7, 1.1, .6, .05]), "tendon", .85)
    p.ink(pen(seam.shifted(.9, .1, .9), [.05, .4, .35, .05]), "tendon-line", .6)
    soft(p, between(axis, low, .3), low, "muscle-shade", .44, 7, rise((0, .2), (.4, 1), (.8, .8), (1, 0)))
    glints(p, [[at(70, 12), at(70, 22)], [at(140, 13), at(140, 26)], [at(210, 12), at(210, 22)]], 3, 1.3)
    # the tendon: strands running up into the belly, a flat band down to the patella
    p.area([at(286, 3, "c"), *of([(306, 10), (330, 13), (362, 13.6), (384, 15.4)]), at(392, 16, "c"), at(391, 0), at(392, -15, "c"), *of([(384, -13.8), (362, -11.6), (330, -11.6), (306, -8)])], "tendon", .92)
    for k in range(5):
        v = (k + .5) / 5 * 2 - 1
        a = 262 + 30 * abs(v) + 14 * ((k * .618) % 1)
        p.ink(pen(of([(a, 12 * v), (326, 11.4 * v), (362, 12 * v), (390, 14.6 * v)]), [.05, 1.3, 1.5, .8]), "tendon", .8)
        p.ink(pen(of([(a + 14, 11.6 * v + 1), (330, 11.2 * v + 1), (364, 11.8 * v + 1), (388, 14.2 * v + .8)]), [.05, .35, .4, .1]), "tendon-line", .65)
    soft(p, of([(300, -3), (340, -4), (390, -5)]), of([(304, -10), (340, -11.6), (390, -14.6)]), "tendon-line", .3, 5)


def strap(p):
    p.on("muscle", "thigh", "sartorius", "Sartorius")
    a, b = Line(SART_OUT), Line(SART_IN)
    low, top = a.part(0, .9, 12), b.part(0, .91, 12)
    shape = [(*low[0], "c"), *low[1:-1], (*low[-1], "c"), (*top[-1], "c"), *top[-2:0:-1], (*top[0], "c")]
    # its shadow on what it crosses
    under = Line(a.part(.2, .74))
    soft(p, under.shifted(6), under, "muscle-shade", .5, 5, hump(.6))
    p.area(shape, "wash.sartorius")
    p.ink(contour(low, .3, 1.5, side=1, press=lambda t: ramp(t, (0, .6), (.9, 1), (1, .05))), "muscle-line")
    p.ink(contour(top, .4, 1.2, side=-1, press=lambda t: ramp(t, (0, .6), (.9, 1), (1, .05))), "muscle-line")
    lines(p, cut(a, b, 0, .12, .3, .5, .7, .86, .95), 7, .6, .75, lift=.12)
    glints(p, cut(a, b, .14, .3, .46, .62), 2, 1.2)
    soft(p, between(a, b, .5), a, "muscle-shade", .4, 6, rise((0, .2), (.3, 1), (.7, .9), (1, 0)))
    # its tendon, the first of three that fan out on the shin
    p.area([(*a(.85), "c"), *a.part(.87, .96, 8), *between(a, b, .5).part(1, .99, 4)[:1], *b.part(.96, .885, 8), (*b(.86), "c"), *between(a, b, .5).part(.845, .83, 4)], "tendon")
    p.ink([pen(a.part(.86, .99), [.05, .7, .6, .05]), pen(b.part(.86, .99), [.05, .5, .4, .05])], "tendon-line", .8)
    for k in range(5):
        v = (k + .5) / 5
        ln = between(a, b, v)
        p.ink(pen(ln.part(.78 + .06 * ((k * .618) % 1), 1), [.05, 1.1, .9, .5, .05]), "tendon", .8)
        p.ink(pen(ln.part(.85 + .03 * ((k * .618) % 1), .985), [.05, .4, .35, .05]), "tendon-line", .65)
    p.ink([pen(between(a, b, v).part(0, .07 + .05 * v), [1.0, 1.6, .05]) for v in (.25, .5, .8)], "tendon", .85)


def foot_of_goose(p):
    """The tendons of gracilis and semitendinosus come round the inner knee behind sartorius and spread on the shin."""
    p.on("muscle", "leg", "pes-anserinus", "Tendons of gracilis and semitendinosus")
    for pts in ([(404, 51), (424, 49), (444, 44.6), (462, 37.4), (478, 28.6), (492, 18)], [(410, 53.4), (430, 51), (450, 46.4), (468, 40), (484, 32), (500, 24)]):
        ln = Line(of(pts))
        p.area(ribbon(ln, [1.6, 3.4, 3.4, 3.2, 3.8, 1.4]), "tendon")
        p.ink(pen(ln.shifted(1.7), [.05, .6, .7, .6, .4, .05]), "tendon-line", .8)


def tensor(p):
    p.on("muscle", "thigh", "iliotibial-band", "Iliotibial band")
    # seen almost on its edge: a pale strip along the outer side, turning forward below to the shin's head
    front = of([(60, -34), (84, -42.6), (110, -49), (150, -52.4), (200, -53.4), (250, -51.4), (296, -47), (330, -42), (362, -38.6), (394, -36.6), (424, -33), (444, -27.6), (458, -21), (466, -17)])
    back = of([(62, -49.8), (98, -54), (135, -56.8), (172, -58.4), (210, -58.8), (246, -57.4), (282, -54.4), (314, -50.4), (342, -47), (366, -45), (392, -44.8), (420, -43), (442, -37), (458, -31.6), (469, -26)])
    p.area([(*front[0], "c"), *front[1:-1], *front[-1:], at(471, -20), *back[-1:], *back[-2:0:-1], (*back[0], "c")], "wash.band")
    f, b = Line(front), Line(back)
    for k, (v, t0, t1) in enumerate(((.2, .12, .6), (.45, .05, .74), (.7, .1, .9), (.35, .5, .98), (.6, .62, .99), (.82, .7, .99))):
        p.ink(pen(between(f, b, v).part(t0, t1), [.05, .4, .45, .35, .05]), "tendon-line", .65)
    for k in range(4):                              # it widens again on its own bump of the shin
        v = .1 + .27 * k
        p.ink(pen([between(f, b, v)(.93), between(f, b, v)(.97), at(470 + 5 * ((k * .618) % 1), -15 - 4.2 * k)], [.05, 1.3, .05]), "tendon", .9)
    p.ink(pen(f.part(.42, .98), [.05, .4, .7, .6, .05]), "tendon-line", .75)
    p.ink(pen(b, [.05, .7, 1.1, 1.2, 1.1, .9, .8, .6, .05]), "tendon-line")
    p.on("muscle", "thigh", "tensor-fasciae-latae", "Tensor fasciae latae")
    a, b = Line(TFL_IN), Line(TFL_OUT)
    # the belly melts into the band: its tone dies along the fibres, its borders with it
    p.area([(*TFL_IN[0], "c"), *TFL_IN[1:-1], (*TFL_IN[-1], "c"), (*TFL_OUT[-1], "c"), *TFL_OUT[-2:0:-1], (*TFL_OUT[0], "c"), at(-97, -11)], "wash.tfl")
    p.ink(contour(b.part(0, .96), .3, 1.5, side=1, press=lambda t: ramp(t, (0, .6), (.5, 1), (1, .05))), "muscle-line")
    p.ink(pen(a.part(0, .92), [.2, .6, .7, .5, .05]), "muscle-line")
    lines(p, cut(a, b, .02, .25, .5, .72, .88), 6, .6, .75, lift=.16)
    soft(p, between(a, b, .5), b, "muscle-shade", .4, 6, rise((0, .2), (.4, 1), (.7, .6), (1, 0)))
    glints(p, cut(a, b, .2, .45, .6), 2, 1.1)
    for k in range(7):                              # pale strands, of unequal length
        v, j = (k + .5) / 7, (k * .618) % 1
        ln = between(a, b, v)
        p.ink(pen(ln.part(.56 + .24 * j, .98), [.05, .7, 1.1, .8, .05]), "tendon", .8)


def knee(p):
    """What holds the patella: its tendon, thin sheets on both sides, the pad of fat behind."""
    p.on("muscle", "leg", "patellar-tendon", "Patellar tendon")
    ten = [at(430, 11, "c"), *of([(442, 9.4), (456, 9), (470, 8)]), at(482, 6, "c"), at(486, -3), at(482, -11, "c"), *of([(468, -12), (454, -11.4), (442, -10.6)]), at(430, -11, "c"), at(436.6, 0)]
    p.area(ten, "tendon")
    soft(p, of([(434, -2), (456, -4), (480, -6)]), of([(432, -11), (454, -11.4), (481, -11)]), "tendon-line", .34, 5)
    for k in range(4):
        v = (k + .5) / 4 * 2 - 1
        p.ink(pen(of([(434 - 4 * abs(v) + 4, 10 * v), (452, 9.6 * v - .8), (478, 8 * v - 3)]), [.05, .45, .35, .05]), "tendon-line", .65)
    p.ink([pen(of([(430, -11), (442, -10.6), (454, -11.4), (468, -12), (482, -11)]), [.2, .9, 1.0, .3]), pen(of([(430, 11), (442, 9.4), (456, 9), (470, 8), (482, 6)]), [.2, .5, .5, .2])], "tendon-line")
    p.on("muscle", "thigh")
    for side in ([(398, -24), (394, -34), (402, -41), (418, -40), (436, -36), (450, -34), (452, -20), (436, -14), (424, -21), (410, -25)],
                 [(420, 22), (413, 30), (403, 42), (412, 46), (428, 44), (446, 38), (456, 28), (450, 14), (438, 10), (430, 14)]):
        p.area(of(side), "tendon", .5)
    for pts in ([(392, -20), (404, -24), (420, -27), (444, -26)], [(380, -26), (404, -31), (430, -31), (452, -26)], [(408, 26), (420, 26), (434, 22), (450, 15)], [(400, 40), (416, 36), (434, 28), (456, 20)]):
        p.ink(pen(of(pts), [.05, 2.2, 2.4, 1.0, .05]), "tendon", .5)
        p.ink(pen(of(pts), [.05, .35, .4, .05], .1, .9), "tendon-line", .5)


def draw(p):
    washes(p)
    thigh_front_groin.washes(p)
    thigh_front_groin.belly(p)
    thigh_front_groin.shank(p)
    thigh_front_groin.adductors(p)
    bed(p)
    lateralis(p)
    medialis(p)
    rectus(p)
    tensor(p)
    foot_of_goose(p)
    strap(p)
    knee(p)
