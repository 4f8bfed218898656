"""Thigh from the front: femoral artery, vein and nerve, and what runs under rectus femoris."""
from engrave import Line, area, mix, pen, ribbon
from side_flesh import cord
from thigh_front_frame import FEMUR_INNER, at, of

# artery and vein come out from under the ligament and dip behind the shaft's inner border at the gap in the great adductor
ARTERY = of([(-78, 66), (-60, 59), (-42, 54), (-20, 50.6), (0, 48.6), (30, 48), (60, 50), (100, 53.6), (140, 55), (180, 53), (210, 48.6), (238, 40.6), (262, 30), (282, 18.4), (300, 6)])
VEIN = of([(-76, 75), (-60, 69.4), (-42, 64.4), (-20, 60.6), (0, 58.6), (30, 57.6), (60, 58.2), (100, 59.6), (140, 59.4), (180, 56), (210, 49.6), (238, 39.4), (260, 28), (280, 15.4), (298, 3)])
# thin down the inner side to behind the knee; well inside, so that it stays under a lean skin
SAPHENOUS = of([(24, 60), (36, 69), (58, 76.4), (92, 80), (130, 79.4), (180, 73), (240, 63.4), (300, 55.6), (346, 51.4), (384, 48.6), (412, 46), (440, 42), (468, 38.6), (494, 38)])
PROFUNDA = of([(16, 48), (30, 42), (50, 37), (90, 32), (140, 27), (190, 22)])
# round the shaft, then down under the outer border of rectus femoris
DESCENDING = of([(26, 43.6), (32, 34), (38, 22), (46, 11), (58, 2.4), (76, -4), (104, -8.6), (150, -12), (200, -14), (246, -15.6), (290, -18), (330, -22)])
LATERAL_NERVE = of([(6, 31), (24, 22), (38, 11.6), (52, -.4), (72, -8.6), (104, -13.8), (150, -17), (200, -19), (250, -21.4), (290, -25)])


def width_at(widths, t):
    i = min(int(t * (len(widths) - 1)), len(widths) - 2)
    return mix((widths[i], 0), (widths[i + 1], 0), t * (len(widths) - 1) - i)[0]


def cut_at_bone(side):
    """The part of a vessel's side that is seen, up to the shaft's inner border."""
    border = Line(FEMUR_INNER)
    res = []
    for q in side:
        if q[0] > at(230, 0)[0] and q[1] > q_border(border, q[0]):
            break
        res.append(q)
    return res


def q_border(border, x):
    return min((abs(q[0] - x), q[1]) for q in border.pts)[1]


def tube(p, points, widths, shine=.36, fill="artery"):
    """An artery: red, one dark edge."""
    ln = Line(points)
    p.area(ribbon(ln, widths), fill)
    p.ink(pen(ln.shifted(lambda t: width_at(widths, t) * shine, .01, .97), [.1, .6, .7, .6, .4, .05]), "artery-line")


def great(p, points, widths, fill, line, both):
    """Artery or vein of the thigh: fades in under the ligament, ends behind the bone's border."""
    ln = Line(points)
    low, high = (cut_at_bone(ln.shifted(lambda t: k * width_at(widths, t) / 2, step=3)) for k in (1, -1))
    p.area(area([(*low[0], "c"), *low[1:-1:2], (*low[-1], "c"), (*high[-1], "c"), *high[-2:0:-2], (*high[0], "c")]), fill)
    a = next(k for k, q in enumerate(low) if q[0] > at(-52, 0)[0])
    p.ink(pen(low[a:], [.05, .7, .8, .8, .8, .8, .7, .6]), line)
    if both:
        p.ink(pen(high[a:], [.05, .6, .6, .6, .6, .6, .5, .4]), line)


def vein(p, points, widths):
    """A vein: pale, an open double line."""
    ln = Line(points)
    p.area(ribbon(ln, widths), "vein")
    half = lambda t: width_at(widths, t) / 2
    p.ink([pen(ln.shifted(half), [.2, .7, .7, .6, .5, .05]), pen(ln.shifted(lambda t: -half(t)), [.2, .5, .5, .4, .3, .05])], "vein-line")


def vessels(p):
    for name, tone in (("wash.artery", "artery"), ("wash.vein", "vein"), ("wash.nerve", "nerve")):
        p.linear(name, "thigh", at(-74, 0), at(-40, 0), [(0, tone, 0), (1, tone)])
    p.on("vessel", "thigh", "femoral-vein", "Femoral vein")
    great(p, VEIN, [6.4, 7.4, 8, 8, 7.6, 7, 6.4, 6, 5.4, 5], "wash.vein", "vein-line", True)
    p.on("vessel", "thigh", "great-saphenous-vein", "Great saphenous vein")
    vein(p, SAPHENOUS, [4.4, 3.6, 3, 2.6, 2.4, 2.2, 2, 1.8, .6])
    p.on("vessel", "thigh", "deep-femoral-artery", "Deep artery of the thigh")
    tube(p, PROFUNDA, [5, 5, 4.2, 3, 1.6, .3])
    p.on("vessel", "thigh", "lateral-circumflex-femoral-artery", "Lateral circumflex femoral artery, descending branch")
    tube(p, of([(37, 24), (31, 13), (25, 2), (21, -8), (19, -16)]), [2.6, 2.2, 1.6, .9, .2])
    # two branches go out to vastus lateralis
    for pts in ([(98, -8), (118, -13), (136, -20), (150, -29), (160, -38)], [(186, -13.4), (208, -19), (226, -26), (242, -34.6)]):
        tube(p, of(pts), [2.2, 1.8, 1.4, .9, .3])
    tube(p, DESCENDING, [4, 4.2, 4, 3.8, 3.6, 3.2, 2.8, 2.2, 1.4, .3])
    p.on("vessel", "thigh", "femoral-artery", "Femoral artery")
    great(p, ARTERY, [6, 7, 7.2, 7, 6.6, 6.2, 5.8, 5.4, 5, 4.8], "wash.artery", "artery-line", False)


def trunk_of_nerve(p):
    """As a cord, but fading in from under the ligament."""
    ln = Line(of([(-74, 42), (-56, 40), (-36, 38.6), (-20, 37.4), (-4, 36.4), (10, 35.6)]))
    widths = [5, 5.4, 6, 6, 5, 2.2]
    p.area(ribbon(ln, widths), "wash.nerve")
    p.ink([pen(ln.shifted(lambda t: k * width_at(widths, t) / 2, .3), [.05, .5, .5, .1]) for k in (1, -1)], "nerve-line")
    for k in range(4):
        t = .42 + .14 * k
        q, nv, h = ln(t), ln.normal(t), width_at(widths, t) * .48
        p.ink(pen([(q[0] - nv[0] * h, q[1] - nv[1] * h), (q[0] + nv[0] * h, q[1] + nv[1] * h)], [.35, .5, .35]), "nerve-line", .8)


def nerves(p):
    p.on("nerve", "thigh", "femoral-nerve", "Femoral nerve")
    # it breaks up at once below the ligament: branches to rectus, the vasti, and one with the artery
    for pts, w in (([(-6, 38), (20, 42), (60, 46.6), (110, 50), (150, 50), (190, 46.4), (226, 42)], [3.2, 2.8, 2.4, 2, 1.4, .2]),
                   ([(-4, 36), (20, 35), (50, 33.6), (90, 34), (128, 36)], [2.8, 2.4, 1.8, 1.1, .1]),
                   ([(-6, 34), (14, 27), (36, 20), (62, 14), (90, 11)], [2.6, 2.2, 1.6, 1, .1])):
        cord(p, of(pts), w)
    trunk_of_nerve(p)
    p.on("nerve", "thigh", "nerve-to-vastus-lateralis", "Nerve to vastus lateralis")
    cord(p, LATERAL_NERVE, [2.8, 2.8, 2.6, 2.6, 2.4, 2, 1.4, .2], ticks=9)
    for pts in ([(112, -14.6), (128, -20), (142, -28), (150, -36)], [(196, -19), (214, -25), (228, -32)]):
        p.ink(pen(of(pts), [1.4, 1.1, .7, .05]), "nerve")
        p.ink(pen(Line(of(pts)).shifted(.5), [.3, .4, .3, .05]), "nerve-line", .8)


def draw(p):
    vessels(p)
    nerves(p)
