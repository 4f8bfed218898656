"""Thigh from the front: femoral artery, vein and nerve, and what runs under rectus femoris."""
from engrave import Line, mix, pen, ribbon
from side_flesh import cord
from thigh_front_frame import at, of

ARTERY = of([(-78, 66), (-60, 59), (-42, 54), (-20, 50.6), (0, 48.6), (30, 48), (60, 50.4), (100, 55), (140, 57.6), (180, 57.6), (220, 55), (260, 50), (300, 42.4), (330, 34), (352, 26)])
VEIN = of([(-76, 75), (-60, 69.4), (-42, 64.4), (-20, 60.6), (0, 58.6), (30, 57.6), (60, 58.4), (100, 60.6), (140, 61.6), (180, 60), (220, 55.6), (260, 48.6), (300, 39.6), (330, 30.6), (350, 23)])
PROFUNDA = of([(16, 48), (30, 42), (50, 37), (90, 32), (140, 27), (190, 22)])
# round the shaft under rectus femoris, then down between it and the deep head, from its middle on nearer the outer border
DESCENDING = of([(26, 43.6), (32, 34), (38, 22), (46, 9), (58, -2), (76, -9.4), (104, -13.4), (150, -16), (200, -18.4), (246, -20.4), (290, -23), (330, -27)])
LATERAL_NERVE = of([(6, 31), (24, 22), (38, 10), (52, -3), (72, -13), (104, -18), (150, -20.8), (200, -23.4), (250, -26), (290, -29)])


def tube(p, points, widths, shine=.36):
    """An artery: red, one dark edge, one fine light."""
    ln = Line(points)
    p.area(ribbon(ln, widths), "artery")
    n = len(widths) - 1
    at_ = lambda t: mix((widths[min(int(t * n), n - 1)], 0), (widths[min(int(t * n), n - 1) + 1], 0), t * n - min(int(t * n), n - 1))[0]
    p.ink(pen(ln.shifted(lambda t: at_(t) * shine, .01, .97), [.1, .6, .7, .6, .4, .05]), "artery-line")


def vein(p, points, widths):
    """A vein: pale, an open double line."""
    ln = Line(points)
    p.area(ribbon(ln, widths), "vein")
    n = len(widths) - 1
    half = lambda t: mix((widths[min(int(t * n), n - 1)], 0), (widths[min(int(t * n), n - 1) + 1], 0), t * n - min(int(t * n), n - 1))[0] / 2
    p.ink([pen(ln.shifted(half), [.2, .8, .8, .7, .5, .05]), pen(ln.shifted(lambda t: -half(t)), [.2, .6, .6, .5, .4, .05])], "vein-line")


def vessels(p):
    p.on("vessel", "thigh")
    # the sheath: a film round the three in the groin, so that they do not hang in the air
    p.area([at(-58, 56, "c"), *of([(-40, 66), (-16, 67), (10, 64.6), (36, 64)]), at(76, 61, "c"), *of([(46, 46), (20, 42.6), (-8, 43.4), (-36, 48)])], "tendon", .6)
    p.on("vessel", "thigh", "femoral-vein", "Femoral vein")
    vein(p, VEIN, [.4, 6.4, 8, 8, 7.4, 6.8, 6, 5, 3.4, .6])
    # the great saphenous vein joins it from the inner side
    vein(p, of([(24, 60), (34, 70), (52, 79), (84, 86), (124, 88)]), [4.6, 3.8, 3.4, 2.6, .4])
    p.on("vessel", "thigh", "deep-femoral-artery", "Deep artery of the thigh")
    tube(p, PROFUNDA, [5, 5, 4.4, 3.6, 2.4, .3])
    p.on("vessel", "thigh", "lateral-circumflex-femoral-artery", "Lateral circumflex femoral artery, descending branch")
    tube(p, of([(36, 26), (30, 14), (24, 2), (20, -9), (18, -18)]), [2.8, 2.6, 2, 1.3, .2])
    tube(p, DESCENDING, [4, 4.2, 4, 3.8, 3.6, 3.2, 2.8, 2.2, 1.4, .2])
    for pts in ([(104, -13.6), (118, -19), (134, -27), (146, -36)], [(190, -18), (206, -25), (224, -31)], [(240, -20.4), (258, -17), (276, -11)]):
        tube(p, of(pts), [1.8, 1.4, .9, .1])
    p.on("vessel", "thigh", "femoral-artery", "Femoral artery")
    tube(p, ARTERY, [.3, 6.4, 7.2, 7, 6.6, 6.2, 5.8, 5.2, 4.2, 2.6, .3])


def nerves(p):
    p.on("nerve", "thigh", "femoral-nerve", "Femoral nerve")
    # it breaks up at once below the ligament: branches to rectus, the vasti, and one with the artery
    for pts, w in (([(-6, 38), (20, 42), (60, 46.6), (110, 50), (160, 51.6), (210, 50), (256, 46)], [3.2, 2.8, 2.4, 2, 1.4, .2]),
                   ([(-4, 36), (20, 35), (50, 33.6), (90, 34), (128, 36)], [2.8, 2.4, 1.8, 1.1, .1]),
                   ([(-6, 34), (14, 27), (36, 20), (62, 14), (90, 11)], [2.6, 2.2, 1.6, 1, .1])):
        cord(p, of(pts), w)
    cord(p, of([(-74, 42), (-56, 40), (-36, 38.6), (-20, 37.4), (-4, 36.4), (10, 35.6)]), [.3, 4.6, 6, 6, 5, 2.2], ticks=5)
    p.on("nerve", "thigh", "nerve-to-vastus-lateralis", "Nerve to vastus lateralis")
    cord(p, LATERAL_NERVE, [2.8, 2.8, 2.6, 2.6, 2.4, 2, 1.4, .2], ticks=9)
    for pts in ([(112, -18.6), (126, -26), (138, -35)], [(176, -22), (192, -30), (206, -36)]):
        p.ink(pen(of(pts), [1.4, 1, .05]), "nerve")
        p.ink(pen(Line(of(pts)).shifted(.5), [.3, .4, .05]), "nerve-line", .8)


def draw(p):
    vessels(p)
    nerves(p)
