"""Hip from the side: the skin. Its shade comes from the modelled form, its ink from the hand."""
import hip_side_cloth
from engrave import Line, contour, pen, ramp
from hip_side_form import OUTLINE, brightness, fold, lean, local
from hip_side_frame import BACK, CREASE, FOLD, FRONT, THIGH_BACK, THIGH_FRONT, th
from hip_side_relief import Grid, Silhouette, tint
from hip_side_tools import cluster, hump, pool, rise, soft

END = (250, 300)                 # under the sheet the shade dies away, mm along the thigh
SEAM = ((262, 180), (.8, -.6))
# the other buttock, resting on the bed: the outer line runs on into it, the cleft branches off within
OTHER = [(150, 366), (164, 375), (178, 381.6), (194, 387.4), (213, 394), (234, 401.6), (258, 409.4), (284, 414.4), (308, 415.4), (330, 411.4), (348, 404), (362, 396.6), (378, 391.6), (404, 388), (430, 386), (470, 386), (510, 388), (550, 390)]


def step(x, a, b):
    u = min(1.0, max(0.0, (x - a) / (b - a)))
    return u * u * (3 - 2 * u)


TONES = (("skin-light", .82, lambda b: step(b, .75, 1.0)), ("skin-mid", .86, lambda b: min(1, max(0, (.765 - b) / .44))),
         ("skin-shade", .68, lambda b: min(1, max(0, (.54 - b) / .34))), ("skin-deep", .40, lambda b: min(1, max(0, (.33 - b) / .30))))


def beyond(q):
    """How far a point lies beyond the line from the crease to the fold, toward the knee: there the thigh takes over."""
    return (q[0] - SEAM[0][0]) * SEAM[1][0] + (q[1] - SEAM[0][1]) * SEAM[1][1]


def shade(p, limb):
    """The pelvis keeps its shade under the thigh's fading edge; the thigh takes over with its own."""
    p.on("skin", limb)
    grid = Grid((-27, 20, 600, 420))
    edge = grid.sample(Silhouette(OUTLINE))

    def share(q):
        u = beyond(q)
        return 1 - step(u, 42, 74) if limb == "pelvis" else step(u, -4, 34) * (1 - step(local(q)[0], *END))
    part = [[share(grid.node(i, j)) if edge[j][i] > -7 else 0 for i in range(grid.nx)] for j in range(grid.ny)]
    light = grid.blurred([[brightness(grid.node(i, j)) - fold(grid.node(i, j)) if edge[j][i] > -8.9 else .5 for i in range(grid.nx)] for j in range(grid.ny)], 2)
    for tone, total, f in TONES:
        tint(p, grid, edge, [[f(b) * m for b, m in zip(rb, rm)] for rb, rm in zip(light, part)], tone, total)


def below(p):
    """What lies beneath: the shadow on the bed, the other buttock and thigh."""
    p.on("skin", "pelvis")
    low = Line([*[q for q in BACK if 20 < q[0] < 170], *OTHER[2:]])
    soft(p, low.shifted(lambda t: 8 + 26 * t), low, "cloth-shade", .62, rise((0, 0), (.2, .5), (.6, .9), (1, 1)))
    high = Line([q for q in FRONT if 60 < q[0] < 270])
    soft(p, high.shifted(-13), high, "cloth-shade", .4, hump(.6))
    p.area([(*OTHER[0], "c"), *OTHER[1:], (552, 340), (550, 290), (520, 270), (480, 268), (440, 276), (405, 290), (380, 296), (340, 320), (310, 345), (280, 360), (248, 366), (210, 366)], "skin-base")
    o, b = Line(OTHER), Line([*[q for q in BACK if q[0] > 190], *Line(THIGH_BACK).part(.12, .6)])
    soft(p, b.shifted(lambda t: ramp(t, (0, 4), (.3, 16), (1, 24))), b, "skin-shade", .85, rise((0, 0), (.2, .8), (.4, 1), (1, 1)))
    pool(p, [(362, 356), (367, 342), (369, 328), (374, 322)], 8, 8, "skin-shade", .7)
    soft(p, o.shifted(lambda t: -ramp(t, (0, 4), (.3, 26), (.6, 44), (1, 50))), o, "skin-mid", .8, rise((0, 0), (.18, .7), (.3, 1), (1, 1)))
    soft(p, o.shifted(lambda t: -ramp(t, (0, 3), (.3, 16), (.6, 26), (1, 30))), o, "skin-shade", .6, rise((0, 0), (.2, .9), (1, 1)))
    p.ink(pen([(356, 399.4), (362, 391), (366, 381), (366, 370)], [.3, .9, .6, .05]), "skin-line", .8)


def bases(p):
    p.on("skin", "pelvis")
    p.area([(*FRONT[0], "c"), *FRONT[1:], th(66, 70), th(70, 40), th(84, 10), th(96, -20), th(110, -50), (*th(118, -82), "c"), th(100, -86), th(80, -89), th(62, -92.6), th(46, -96), (*BACK[-1], "c"), *BACK[-2:0:-1], (*BACK[0], "c")], "skin-base")


def thigh(p):
    p.on("skin", "thigh")
    tf, tb = Line(THIGH_FRONT), Line(THIGH_BACK)
    p.area([*tf.part(.03, .9), *tb.part(.92, .1), (350, 296), (326, 264), (302, 232), (280, 202), (266, 184)], "wash.thigh")
    shade(p, "thigh")
    hem = Line(hip_side_cloth.HEM[:10])
    soft(p, hem.shifted(lambda t: 9 + 5 * t), hem.shifted(-6), "skin-shade", .5, hump(.4))


def edges(p):
    p.on("skin", "pelvis")
    p.ink(contour(FRONT[:-1], .3, 1.1, side=-1, press=lambda t: ramp(t, (0, .6), (.5, 1), (.9, 1), (1, .3))), "skin-line")
    out = Line([*[q for q in BACK if q[0] < 174], *OTHER[2:]])
    p.ink(contour(out, .35, 1.65, side=1, press=lambda t: ramp(t, (0, .5), (.15, .7), (.28, .55), (.5, .8), (1, .7))), "skin-line")
    p.ink(contour(Line([(194, 377), (204, 383.4), *[q for q in BACK if q[0] > 214][:-1], *FOLD[3:]]), .3, 1.25, side=1, press=lambda t: ramp(t, (0, .1), (.2, .4), (.44, .75), (.74, 1.1), (.88, .6), (1, .05))), "skin-line")
    p.ink(pen([(130, 151), (134, 154.2), (138.6, 153.6), (143, 152.4)], [.1, .9, .6, .05]), "skin-line", .8)       # the navel's edge
    p.on("skin", "thigh")
    p.ink(contour(Line(THIGH_FRONT).part(.03, .6), .3, 1.0, side=-1, press=lambda t: ramp(t, (0, .3), (.1, 1), (1, 1))), "skin-line")
    p.ink(contour(Line(THIGH_BACK).part(.095, .7), .45, 1.7, side=1, press=lambda t: ramp(t, (0, .5), (.1, .9), (1, 1))), "skin-line")
    c = Line(CREASE)
    soft(p, c.shifted(-12), c, "skin-mid", .4, rise((0, .2), (.3, 1), (1, .1)))
    soft(p, c.shifted(-5), c, "skin-shade", .3, rise((0, .3), (.3, 1), (1, 0)))
    p.ink(pen(c, [.6, 1.1, .8, .4, .05], 0, .92), "skin-line", .85)
    p.ink(pen([(281, 180), (270, 189), (257, 196.6), (243, 202)], [.05, .7, .5, .05]), "skin-line", .7, cue="full")


def hatching(p):
    p.on("skin", "pelvis")
    b = Line(BACK)
    lit = Line(b.shifted(-66))
    p.ink(cluster(lit, b, 26, .50, .95, .58, .6, lambda s: -.10 + .22 * s, .05, peak=.60), "skin-hatch", .8)
    p.on("skin", "thigh")
    t = Line(Line(THIGH_BACK).part(.1, .75))
    p.ink(cluster(Line(t.shifted(-56)), t, 8, .08, .42, .5, .5, .12, .05, peak=.5), "skin-hatch", .8)


def surface(p):
    """What a finger finds: spine of the ilium, crest, hollow and trochanter, dimple at the back; it fades with fat."""
    p.on("surface", "pelvis", "bony-landmarks", "Crest, spine of the ilium and trochanter under the skin")
    grid = Grid((60, 140, 372, 384))
    edge = grid.sample(Silhouette(OUTLINE))
    rows = [(j, [grid.node(i, j) for i in range(grid.nx)]) for j in range(grid.ny)]
    gain = grid.blurred([[brightness(q, lean) - brightness(q) if edge[j][i] > 0 else 0 for i, q in enumerate(r)] for j, r in rows], 6)
    edge = [[e - 3 for e in r] for r in edge]
    tint(p, grid, edge, [[min(1, max(0, (v - .010) / .16)) * step(324 - q[1] - .3 * q[0], -92, -56) for v, q in zip(r, row)] for r, (j, row) in zip(gain, rows)], "skin-light", .62, cue="lean", o=.08)
    tint(p, grid, edge, [[min(1, max(0, (-v - .012) / .20)) for v in r] for r in gain], "skin-mid", .44, cue="lean", o=.08)


def draw(p):
    p.linear("wash.thigh", "thigh", (307, 240), (307 + 32, 240 - 24), [(0, "skin-base", 0), (1, "skin-base")])
    hip_side_cloth.washes(p)
    below(p)
    bases(p)
    shade(p, "pelvis")
    thigh(p)
    hatching(p)
    edges(p)
    surface(p)
    hip_side_cloth.draw(p)
