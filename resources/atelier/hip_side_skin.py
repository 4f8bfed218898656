"""Hip from the side: the skin. Its shade comes from the modelled form, its ink from the hand."""
import hip_side_cloth
from engrave import Line, between, contour, mix, pen, ramp
from hip_side_form import OUTLINE, brightness, local
from hip_side_frame import BACK, CREASE, FOLD, FRONT, LEG_BACK, LEG_FRONT, THIGH_BACK, THIGH_FRONT, th
from hip_side_relief import Grid, Silhouette, tint
from hip_side_tools import cluster, hump, pool, rise, soft

END = (250, 300)                 # under the sheet the shade dies away, mm along the thigh
OTHER = [(220, 382.6), (236, 389.4), (256, 396.4), (280, 402.6), (304, 404.6), (326, 401.6), (344, 395), (362, 389), (380, 385.6), (404, 383), (430, 380)]


def step(x, a, b):
    u = min(1.0, max(0.0, (x - a) / (b - a)))
    return u * u * (3 - 2 * u)


TONES = (("skin-light", .82, lambda b: step(b, .72, .98)), ("skin-mid", .86, lambda b: min(1, max(0, (.73 - b) / .42))),
         ("skin-shade", .68, lambda b: min(1, max(0, (.54 - b) / .34))), ("skin-deep", .40, lambda b: min(1, max(0, (.33 - b) / .30))))


def shade(p, limb):
    """The pelvis keeps its shade under the thigh's fading edge; the thigh takes over with its own."""
    p.on("skin", limb)
    grid = Grid((-27, 20, 600, 420))
    edge = grid.sample(Silhouette(OUTLINE))

    def share(q):
        t, s = local(q)
        return 1 - step(t, 40, 90) if limb == "pelvis" else step(t, -6, 40) * (1 - step(t, *END))
    part = [[share(grid.node(i, j)) if edge[j][i] > -7 else 0 for i in range(grid.nx)] for j in range(grid.ny)]
    light = grid.blurred([[brightness(grid.node(i, j)) if edge[j][i] > -8.9 else .5 for i in range(grid.nx)] for j in range(grid.ny)], 2)
    for tone, total, f in TONES:
        tint(p, grid, edge, [[f(b) * m for b, m in zip(rb, rm)] for rb, rm in zip(light, part)], tone, total)


def below(p):
    """What lies beneath: the shadow on the bed, the other buttock and thigh."""
    p.on("skin", "pelvis")
    low = Line([*[q for q in BACK if 20 < q[0] < 214], *OTHER])
    soft(p, low.shifted(lambda t: 8 + 30 * t), low, "cloth-shade", .62, rise((0, 0), (.2, .5), (.6, .9), (1, 1)))
    p.area([(*OTHER[0], "c"), *OTHER[1:], (434, 340), (430, 300), (405, 290), (380, 290), (340, 320), (310, 345), (280, 360), (248, 372)], "skin-base")
    o, b = Line(OTHER), Line([*[q for q in BACK if q[0] > 210], *Line(THIGH_BACK).part(.1, .36)])
    soft(p, b.shifted(lambda t: 13 + 10 * t), b, "skin-shade", .85, rise((0, 0), (.2, .8), (.5, 1), (1, 1)))
    soft(p, o.shifted(lambda t: -9 - 34 * t), o, "skin-mid", .8, rise((0, 0), (.2, .7), (.4, 1), (1, 1)))
    soft(p, o.shifted(lambda t: -6 - 22 * t), o, "skin-shade", .6, rise((0, 0), (.3, .9), (1, 1)))
    p.ink(contour(o, .4, 1.5, side=1, press=lambda t: ramp(t, (0, .1), (.2, .8), (.7, 1), (1, .8))), "skin-line")
    p.ink(pen([(347, 393.6), (353, 385), (356, 375), (355, 366)], [.3, .8, .5, .05]), "skin-line", .75)


def bases(p):
    p.on("skin", "pelvis")
    p.area([(*FRONT[0], "c"), *FRONT[1:], th(62, 66), th(78, 30), th(82, -10), th(78, -50), th(66, -84), (*BACK[-1], "c"), *BACK[-2:0:-1], (*BACK[0], "c")], "skin-base")


def thigh(p):
    p.on("skin", "thigh")
    tf, tb = Line(THIGH_FRONT), Line(THIGH_BACK)
    p.area([*tf.part(.03, .9), *tb.part(.92, .06), th(4, -80), th(2, -40), th(2, 0), th(4, 40)], "wash.thigh")
    shade(p, "thigh")
    hem = Line(hip_side_cloth.HEM[:10])
    soft(p, hem.shifted(lambda t: 9 + 5 * t), hem.shifted(-6), "skin-shade", .5, hump(.4))


def edges(p):
    p.on("skin", "pelvis")
    p.ink(contour(FRONT[:-1], .3, 1.1, side=-1, press=lambda t: ramp(t, (0, .6), (.5, 1), (.9, 1), (1, .3))), "skin-line")
    p.ink(contour(BACK, .35, 1.7, side=1, press=lambda t: ramp(t, (0, .4), (.2, .6), (.36, .9), (.5, .55), (.72, 1), (.9, 1.1), (1, .4))), "skin-line")
    p.on("skin", "thigh")
    p.ink(contour(Line(THIGH_FRONT).part(.03, .6), .3, 1.0, side=-1, press=lambda t: ramp(t, (0, .3), (.1, 1), (1, 1))), "skin-line")
    p.ink(contour(Line(THIGH_BACK).part(.11, .7), .45, 1.7, side=1, press=lambda t: ramp(t, (0, .1), (.1, .9), (1, 1))), "skin-line")
    p.ink(pen(CREASE, [.7, 1.1, .7, .35, .05]), "skin-line", .85)
    p.ink(pen(FOLD[2:], [.3, 1.2, 1.1, .6, .05]), "skin-line", .85)


def hatching(p):
    p.on("skin", "pelvis")
    b = Line(BACK)
    lit = Line(b.shifted(-60))
    p.ink(cluster(lit, b, 20, .52, .96, .42, .58, lambda s: -.12 + .24 * s, .06, peak=.62), "skin-hatch", .8)
    p.ink(cluster(lit, b, 10, .16, .42, .36, .45, lambda s: .1, .06), "skin-hatch", .7)
    p.on("skin", "thigh")
    t = Line(Line(THIGH_BACK).part(.1, .75))
    p.ink(cluster(Line(t.shifted(-60)), t, 14, .08, .6, .36, .5, .12, .05, peak=.45), "skin-hatch", .8)


def draw(p):
    p.linear("wash.thigh", "thigh", th(2, 0), th(42, 0), [(0, "skin-base", 0), (1, "skin-base")])
    hip_side_cloth.washes(p)
    below(p)
    bases(p)
    shade(p, "pelvis")
    thigh(p)
    hatching(p)
    edges(p)
    hip_side_cloth.draw(p)
