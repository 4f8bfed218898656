"""Hip from the side: the muscles, each shaded by the modelled form cut at its own outline."""
from engrave import Line, between, fibres, mix, pen, rim
from hip_side_form import brightness, local
from hip_side_frame import BACK, FRONT, THIGH_BACK, THIGH_FRONT, th
from hip_side_relief import Grid, Silhouette, tint
from hip_side_tools import rise, soft

MEDIUS = [(188.4, 214.6, "c"), (174.6, 229.6), (160.6, 248.6), (147.4, 268.4), (139.4, 284), (138.6, 296), (141, 309), (146.4, 325, "c"), (172, 327), (206, 320), (240, 307), (266, 294),
          (284, 286), (296, 282.6, "c"), (303, 276), (306.8, 266), (305.6, 254, "c"), (296, 243), (280, 231), (256, 222), (228, 216), (206, 214)]
MAX_TOP = [(141.6, 322), (160, 321.4), (184, 317.6), (214, 310), (244, 301), (272, 292), (292, 287.4), (306, 286), (326, 279), (352, 269.4), (380, 260), (404, 253.6)]
MAX_LOW = [(177.4, 371), (190, 377), (208, 380.6), (232, 382.4), (258, 383), (284, 382.6), (306, 379.4), (324, 373), (340, 362), (352.6, 346), (361, 329), (374, 306), (388, 282), (398, 264.6), (404, 253.6)]
MAXIMUS = [(*MAX_TOP[0], "c"), *MAX_TOP[1:-1], (*MAX_TOP[-1], "c"), *MAX_LOW[-2:0:-1], (*MAX_LOW[0], "c"), (166.4, 359.4), (153.6, 344.8), (146, 333)]
TFL_FRONT = [(196.6, 204.4), (222, 200), (250, 195.4), (276, 191), (300, 188), th(66, 42), th(92, 33), th(116, 23), th(130, 17)]
TFL_BACK = [(181.4, 219.6), (206, 227.4), (236, 233.4), (264, 236.6), (288, 235.4), th(44, 10), th(70, 6.4), th(96, 6), th(116, 9.6), th(130, 17)]
TENSOR = [(*TFL_FRONT[0], "c"), *TFL_FRONT[1:-1], (*TFL_FRONT[-1], "c"), *TFL_BACK[-2:0:-1], (*TFL_BACK[0], "c"), (188.6, 212.4)]
TENSOR_END = [(*th(48, 45), "c"), *TFL_FRONT[5:-1], (*TFL_FRONT[-1], "c"), *TFL_BACK[-2:5:-1], (*th(46, 9.6), "c"), th(46, 26)]

GRID = Grid((-26, 40, 560, 400), 4)
_field = []


def field():
    if not _field:
        box = Silhouette([*FRONT[:-2], *Line(THIGH_FRONT).part(.04, .9, 8), *Line(THIGH_BACK).part(.9, .08, 8), *BACK[::-1]])
        ok = lambda q: box(q) > -8.9
        _field.append(GRID.blurred([[brightness(GRID.node(i, j)) if ok(GRID.node(i, j)) else .45 for i in range(GRID.nx)] for j in range(GRID.ny)], 2))
    return _field[0]


def step(x, a, b):
    u = min(1.0, max(0.0, (x - a) / (b - a)))
    return u * u * (3 - 2 * u)


def belly(p, shape, base="muscle-base", thick=1.4, thin=.28, press=None, light=.55, dark=.72, fade=None):
    """A muscle: flat tone, the body's light and shade within its outline, its contour."""
    p.area(shape, base)
    edge = GRID.sample(Silhouette(shape))
    for tone, total, o, f in (("muscle-light", light, .14, lambda b: step(b, .70, .95)), ("muscle-shade", dark, .16, lambda b: min(1, max(0, (.68 - b) / .42)))):
        m = [[f(b) * (fade(GRID.node(i, j)) if fade else 1) if edge[j][i] > -8 else 0 for i, b in enumerate(row)] for j, row in enumerate(field())]
        tint(p, GRID, edge, m, tone, total, 50, o=o)
    if thick:
        p.ink(rim(shape, thin, thick, press=press), "muscle-line")


def lines(p, guides, n, w=.6, op=.75, **k):
    p.ink(fibres(guides, n, w, **k), "muscle-line", op)


def glints(p, guides, n, w=.9, op=.5, **k):
    p.ink(fibres(guides, n, w, lift=.5, seed=.55, **k), "muscle-light", op)


def trunk(p):
    front, back = Line(FRONT), Line(BACK)
    p.on("muscle", "pelvis", "external-oblique", "External oblique")      # and the floor of the lumbar triangle
    p.area([(-12, 262, "c"), (40, 262), (90, 264), (137, 270, "c"), (136, 284), (140, 306, "c"), (100, 300), (50, 298), (-12, 298, "c")], "muscle-shade")
    p.on("muscle", "pelvis", "latissimus-dorsi", "Latissimus dorsi and erector spinae")
    low = [q for q in back.shifted(lambda t: -6 - 10 * t, .01, .44, 10)]
    belly(p, [(low[0][0], 285, "c"), (44, 282.6), (72, 281.6), (100, 286), (122, 295), (138, 304, "c"), (141, 312), (146.4, 326), (154, 343), (166, 357), (184, 364), (200, 366, "c"), *low[-1:0:-1], (*low[0], "c")], thick=.5)
    lines(p, [[(2, 292), (2, 356)], [(66, 292), (70, 346)], [(104, 300), (112, 350)], [(138, 306), (164, 356)]], 9, .5, .7, lift=.2)
    fascia = [(*low[0], "c"), (10, 356), (32, 350), (56, 338), (84, 330), (112, 328), (136, 334), (152, 342), (172, 356), (200, 366, "c"), *low[:0:-1]]
    p.area(fascia, "tendon", .8)
    p.ink([pen([(30, 352), (60, 340), (96, 335), (136, 341)], [.05, .4, .4, .05]), pen([(40, 352), (70, 343), (104, 342), (150, 352)], [.05, .4, .4, .05])], "tendon-line", .8)
    p.on("muscle", "pelvis", "external-oblique", "External oblique")
    high = [q for q in front.shifted(6, .01, .93, 10)]
    belly(p, [(*high[0], "c"), *high[1:-1], (*high[-1], "c"), (246, 186), (222, 195), (197, 204, "c"), (184, 215.4), (170, 231.4), (156.2, 250), (143.6, 269), (136, 283, "c"), (118, 285),
            (96, 282), (70, 280), (44, 281), (high[0][0], 284, "c"), (high[0][0], 240), (high[0][0], 200)], thick=.6)
    lines(p, [[(2, 170), (2, 280)], [(70, 168), (74, 278)], [(112, 172), (112, 282)], [(168, 192), (138, 278)]], 12, .55, .75, lift=.15)
    glints(p, [[(30, 180), (30, 250)], [(70, 178), (74, 240)], [(120, 184), (118, 240)]], 4, 1.3)
    apo = [(*high[4], "c"), *high[5:-1], (*high[-1], "c"), (246, 186), (222, 195), (199, 203), (184, 196), (160, 184), (130, 172), (100, 163), (72, 158)]
    p.area(apo, "tendon", .8)
    lines(p, [[(120, 160), (170, 186)], [(180, 164), (204, 196)], [(240, 170), (244, 184)]], 5, .4, .45, lift=.2)
    p.ink(pen([(198, 203), (224, 193), (250, 183), (272, 172)], [.4, 1.2, 1.1, .3]), "tendon-line")
    p.ink(pen(Line(high), [.05, .5, .6, .6, .3]), "muscle-line", .8)
    p.ink(pen([(30, 283), (70, 280), (100, 283), (136, 284)], [.05, .7, .9, .5]), "muscle-line")
    p.ink(pen(Line(low), [.05, .8, .9, .8, .4]), "muscle-line")


def medius(p):
    p.on("muscle", "pelvis", "gluteus-medius", "Gluteus medius")
    belly(p, MEDIUS, thick=1.3)
    org = [(190, 216), (174.6, 231), (160.6, 250), (147.4, 270), (140, 288), (142, 306), (148, 323)]
    g = [org, [(218, 220), (204, 240), (192, 260), (184, 280), (184, 298), (188, 312), (196, 321)], [(254, 227), (244, 246), (238, 264), (236, 280), (240, 292), (246, 300), (252, 303)],
         [(286, 240), (282, 256), (281, 264), (281, 272), (281, 279), (282, 285), (283, 288)], [(306, 255), (308, 260), (307.6, 266), (305.6, 272), (302, 277), (298, 281), (293, 284)]]
    lines(p, g, 26, .6, .78, lift=.14, breaks=.25)
    glints(p, g[:3], 3, 1.2)
    soft(p, [(291, 250), (289, 266), (288, 283)], [(305, 255), (306.4, 266), (298, 281)], "tendon", .7, rise((0, .3), (.5, 1), (1, .6)))
    p.ink(pen([(300, 279), (304, 274), (306.8, 266), (306, 256.6), (302, 249)], [.05, .8, .9, .8, .05]), "tendon-line")
    p.ink([pen(Line([Line(q)(v) for q in g[2:]]), [.05, .5, 1.0, 1.3], a, 1) for v, a in ((.08, .62), (.2, .45), (.33, .7), (.46, .38), (.58, .66), (.7, .5), (.84, .72), (.93, .55))], "tendon", .7)


def ham_origin(p):
    """The hamstrings' root on the ischial tuberosity, hidden by gluteus maximus."""
    p.on("muscle", "pelvis", "hamstrings", "Hamstrings: biceps femoris and semitendinosus")
    root = [(327, 316, "c"), (335, 311), (338.6, 302, "c"), (356, 291), (378, 276), (404, 256), (430, 244), (*th(172, -48), "c"), (*th(172, -74), "c"), th(140, -76), th(100, -80), th(76, -80), (362, 318), (344, 322)]
    p.area(root, "muscle-base")
    soft(p, [(340, 306), (362, 304), (392, 280)], [(330, 317), (346, 323), (364, 326)], "muscle-shade", .4, rise((0, .6), (1, 1)))
    lines(p, [[(334, 304), (330, 314)], [(350, 298), (352, 320)], [th(90, -54), th(90, -80)], [th(160, -50), th(160, -72)]], 5, .5, .75)


def front_root(p):
    """Rectus and sartorius go on under their neighbours, so that a heavy body's gaps open on red."""
    p.on("muscle", "pelvis", "rectus-femoris", "Rectus femoris and sartorius")
    p.area([(197, 203, "c"), (222, 192), (248, 181), (268, 175), (286, 176), (310, 166), (330, 164), (*th(96, 62), "c"), (*th(96, 20), "c"), th(74, 14), (300, 226), (262, 228), (222, 218), (198, 208, "c")], "muscle-base")
    lines(p, [[(204, 202), (206, 206)], [(256, 182), (262, 196)], [(300, 172), (308, 200)], [th(92, 62), th(92, 40)]], 4, .5, .6)


def maximus(p):
    p.on("muscle", "pelvis", "gluteus-maximus", "Gluteus maximus")
    belly(p, MAXIMUS, thick=1.9)
    top, low = Line(MAX_TOP), Line(MAX_LOW)
    # coarse bundles sweep from sacrum and crest to the band and the back of the femur
    g = [[(144, 326), (154, 343), (170, 361), (184, 369), (212, 376), (240, 379.4), (266, 380)]] + \
        [[top(a), mix(top(a), low(b), .33), mix(top(a), low(b), .66), low(b)] for a, b in ((.22, .44), (.42, .58), (.60, .70), (.76, .80), (.90, .91))] + [[(398, 256.4), (402, 256), (402.6, 258)]]
    lines(p, g, 22, .68, .8, lift=.1, breaks=.2)
    glints(p, g[:5], 4, 1.5)
    for v, w in ((.18, .9), (.42, 1.1), (.63, 1.0), (.82, .9)):
        ln = Line([Line(q)(v) for q in g])
        p.ink(pen(ln, [.05, w, w * 1.1, w * .6, .05], .08, .86), "muscle-line", .85)
    # its upper edge lies over gluteus medius
    soft(p, top.shifted(-7), top, "muscle-shade", .5, rise((0, .3), (.2, 1), (.6, 1), (.8, 0), (1, 0)))
    p.ink(pen(top, [.4, .8, 1.0, .8, .3]), "muscle-line", .9)


def tensor(p, limb):
    p.on("muscle", limb, "tensor-fasciae-latae", "Tensor fasciae latae")
    f, b = Line(TFL_FRONT), Line(TFL_BACK)
    g = [[(194, 207), (184, 217)], [f(.3), b(.3)], [f(.6), b(.6)], [f(.85), b(.85)], [f(.97), b(.97)]]
    if limb == "pelvis":
        belly(p, TENSOR, thick=1.3)
        lines(p, g, 9, .55, .78, lift=.1)
        glints(p, g[:3], 4, 1.2)
        return
    # its lower end moves with the thigh
    belly(p, TENSOR_END, "wash.tensor", thick=0, fade=lambda q: step(local(q)[0], 46, 80))
    p.ink([pen(f, [.05, .5, .5, .3], .6, 1), pen(b, [.05, 1.0, .8, .3], .58, 1)], "muscle-line")
    lines(p, g[2:], 7, .5, .75, lift=.1)
    p.ink([pen(Line([*[Line(q)(v) for q in g[2:]], th(136, 17)]), [.05, .9, 1.4, 1.6], .55 + .08 * (k % 2), 1) for k, v in enumerate((.14, .32, .5, .68, .86))], "tendon", .8)


def upper_thigh(p):
    tf, tb = Line(THIGH_FRONT), Line(THIGH_BACK)
    far = lambda q: 1 - step(local(q)[0], 215, 250)
    p.on("muscle", "thigh", "hamstrings", "Hamstrings: biceps femoris and semitendinosus")
    low = Line(MAX_LOW)
    back = [q for q in tb.shifted(-5, .12, .70, 9)]
    ham = [(363, 325, "c"), *back, (*th(262, -43), "c"), th(235, -43), th(210, -43), th(180, -43.6), th(150, -44), (*th(118, -44), "c"), (403, 255), (398, 264.6), (388, 282), (374, 306)]
    belly(p, ham, fade=far)
    lines(p, [[(402, 258), (388, 282), (374, 306), (362, 324)], [th(150, -50), th(150, -76)], [th(200, -48), th(200, -73)], [th(255, -47), th(255, -68)]], 10, .6, .75, lift=.12)
    p.ink(pen([(372, 310), th(104, -70), th(150, -65), th(200, -62), th(250, -60)], [.05, .9, 1.1, .9, .3]), "muscle-line")
    p.on("muscle", "thigh", "rectus-femoris", "Rectus femoris and sartorius")
    front = [q for q in tf.shifted(5, .06, .64, 9)]
    rec = [(222, 198.6, "c"), (250, 187), (270, 178.6), *front, (*th(262, 40), "c"), th(230, 43), th(195, 45), th(160, 45.4), th(125, 45), th(95, 43), (*th(64, 42), "c"), (300, 188.6), (276, 192), (248, 196.6)]
    belly(p, rec, fade=far)
    lines(p, [[(284, 176), (298, 186)], [th(90, 78), th(90, 46)], [th(150, 78), th(150, 48)], [th(255, 72), th(255, 42)]], 8, .55, .75, lift=.12)
    sart = [(197, 202.4, "c"), (222, 191), (248, 180), (270, 172), (286, 166.6), th(44, 82), th(60, 84.6), th(80, 85), (*th(112, 84.4), "c"), th(90, 80.6), th(66, 75.6), th(48, 70), (280, 179), (256, 189.6), (228, 199), (206, 203.6)]
    p.area(sart, "muscle-light")
    p.ink(pen(Line([(206, 203.6), (228, 199), (256, 189.6), (280, 179), th(48, 70), th(66, 75.6), th(90, 80.6), th(108, 83.6)]), [.3, .9, 1.0, .8, .3, .05]), "muscle-line")
    lines(p, [[(202, 201), (206, 203)], [(246, 182), (252, 190)], [(284, 168), (286, 176)], [th(70, 82), th(70, 76)]], 4, .45, .7, lift=.1)
    p.on("muscle", "thigh", "vastus-lateralis", "Vastus lateralis")
    vl = [(*th(74, 42.4), "c"), th(95, 42.6), th(125, 44.6), th(160, 45), th(195, 44.6), th(230, 42.6), (*th(262, 39.6), "c"), th(262, 10), th(262, -20), (*th(262, -45), "c"), th(235, -45.4), th(210, -46),
          th(180, -46.8), th(150, -47.4), (*th(122, -48.6), "c"), (398, 258), (376, 266), (352, 275), th(54, -27), (*th(46, -16), "c"), (*th(38, 6), "c"), th(50, 6.4), th(72, 4), th(96, 3.6), th(118, 7.4), (*th(131, 17), "c"),
          th(116, 22), th(92, 32), (*th(70, 40.4), "c")]
    belly(p, vl, fade=far, thick=1.0)
    lines(p, [[th(70, 20), th(66, 38)], [th(120, 8), th(116, 43)], [th(180, 4), th(170, 44)], [th(255, 8), th(250, 41)]], 7, .55, .75, lift=.15)
    lines(p, [[th(118, -47), th(126, -30)], [th(165, -47), th(185, -20)], [th(210, -46), th(240, -12)]], 6, .55, .75, lift=.15)


def maximus_end(p):
    """Its lower end once more on the thigh, so that a heavy body's hamstrings still come out from under it."""
    p.on("muscle", "thigh", "gluteus-maximus", "Gluteus maximus")
    top, low = Line(MAX_TOP), Line(MAX_LOW)
    end = [(*MAX_TOP[8], "c"), *MAX_TOP[9:-1], (*MAX_TOP[-1], "c"), *MAX_LOW[-2:7:-1], (*MAX_LOW[7], "c"), (318, 340), (320, 308)]
    belly(p, end, "wash.maximus", thick=0, fade=lambda q: step(q[0], 322, 356))
    lines(p, [[mix(top(a), low(b), v) for v in (.06, .35, .65, .94)] for a, b in ((.66, .68), (.78, .79), (.90, .89))] + [[(398, 256.4), (402, 256), (402.6, 258)]], 10, .65, .8, lift=.2)
    g = [[mix(top(a), low(b), v) for v in (.02, .35, .65, .98)] for a, b in ((.70, .72), (.84, .84), (.93, .92))] + [[(399, 256), (403, 255.6), (403.4, 257)]]
    p.ink([pen(Line([Line(q)(v) for q in g]), [.05, .5, 1.0, 1.3], .5 + .34 * ((k * .618) % 1), .995) for k, v in enumerate((.08, .2, .33, .46, .6, .76))], "tendon", .7)
    p.ink(pen(low, [.05, .8, 1.5, 1.3, .9, .4], .62, 1), "muscle-line")
    p.ink(pen(top, [.05, .8, .8, .3], .72, 1), "muscle-line", .9)


def band(p):
    p.on("muscle", "thigh", "iliotibial-band", "Iliotibial band")
    f = [th(12, 3), th(26, 6), th(44, 9), th(66, 8), th(92, 12), th(118, 17), th(132, 19), th(165, 16), th(205, 12), th(262, 8)]
    b = [(311, 285.4), (328, 279.4), (352, 270.4), (380, 261), (403, 254.6), th(124, -45), th(144, -40), th(175, -32), th(215, -27), th(262, -24)]
    p.area([(*f[0], "c"), *f[1:-1], (*f[-1], "c"), (*b[-1], "c"), *b[-2:0:-1], (*b[0], "c"), (306, 277), (302, 262)], "wash.band")
    ff, bb = Line(f), Line(b)
    soft(p, between(ff, bb, .55), bb, "tendon-line", .4, rise((0, 0), (.3, 1), (1, 1)))
    p.ink([pen(between(ff, bb, v), [.05, .45, .35, .5, .3], a, 1) for v, a in ((.12, .2), (.24, .1), (.36, .22), (.48, .08), (.6, .16), (.72, .06), (.84, .2))], "tendon-line", .75)
    p.ink([pen(ff, [.05, .3, .8, .8, .8, .6], .3, 1), pen(bb, [.05, .6, .9, 1.0, 1.0, .8], .5, 1)], "tendon-line")


def draw(p):
    p.linear("wash.band", "thigh", th(12, -10), th(40, -10), [(0, "tendon", 0), (0.6, "tendon", .75), (1, "tendon", 1)])
    p.linear("wash.maximus", "thigh", (322, 310), (356, 310), [(0, "muscle-base", 0), (1, "muscle-base")])
    p.linear("wash.tensor", "thigh", th(46, 24), th(80, 24), [(0, "muscle-base", 0), (1, "muscle-base")])
    trunk(p)
    medius(p)
    front_root(p)
    ham_origin(p)
    maximus(p)
    tensor(p, "pelvis")
    upper_thigh(p)
    maximus_end(p)
    band(p)
    tensor(p, "thigh")
