"""Thigh from the front: the skin of trunk and thigh, and the order of painting."""
import thigh_front_cloth
import thigh_front_knee
from engrave import Line, between, contour, pen, ramp
from side_tools import cluster, pool, rise, soft
from thigh_front_frame import CREASE, INNER, OUTER, across, at, of


def part(curve, a0, a1):
    """The part of an outline between two levels."""
    ln = Line(curve)
    x0, x1 = at(a0, 0)[0], at(a1, 0)[0]
    t = [k / 600 for k in range(601)]
    lo = next(u for u in t if ln(u)[0] >= x0)
    hi = next((u for u in t if ln(u)[0] >= x1), 1)
    return Line(ln.part(lo, hi))


def trunk(p):
    """Belly and flank, whole up to the sheet that covers the other side."""
    p.on("skin", "pelvis")
    flank = [at(-140, across(OUTER, -140)), *part(OUTER, -136, -38).pts[::12]]
    shape = [at(-140, 162, "c"), (*flank[0], "c"), *flank[1:-1], (*flank[-1], "c"), at(-28, -32), at(30, -22), at(88, -10), at(70, 60), at(68, 112, "c"), at(66, 162, "c")]
    p.area(shape, "skin-base")
    p.area(shape, "wash.trunk")
    edge, lit = part(OUTER, -134, -52), Line(of([(-134, -4), (-110, -6), (-90, -6), (-70, -5), (-52, -6)]))
    soft(p, between(lit, edge, .3), edge, "skin-mid", .5, 9, rise((0, .6), (.5, 1), (1, 1)))
    soft(p, between(lit, edge, .62), edge, "skin-shade", .4, 8, rise((0, .5), (.5, 1), (1, 1)))
    # lower belly: a shallow bowl inside the crest, a low swell round the middle
    pool(p, of([(-126, 10), (-108, 16), (-92, 30), (-70, 52)]), 14, 20, "skin-mid", .24, 10, .05)
    pool(p, of([(-118, 84), (-98, 96), (-76, 102)]), 44, 40, "skin-light", .25, 10, .05)
    # crest: a soft light along it, shade on the foot's side, both dying toward the flank; no edge
    crest = Line(of([(-126, -22), (-116, -19), (-106, -15), (-98, -11), (-91, -7)]))
    pool(p, crest.shifted(-4), 7, 8, "skin-base", .6, 14, .05)
    pool(p, of([(-104, -26), (-96, -22), (-88, -17), (-82, -11)]), 7, 7, "skin-mid", .36, 10, .05)
    # its spine: the widest and brightest of that light
    pool(p, of([(-103, -9), (-90, -4), (-78, 0)]), 9, 10, "skin-base", .6, 14, .05)
    pool(p, of([(-94, -5), (-87, -3), (-81, -1)]), 5, 6, "skin-light", .26, 9, .05)
    pool(p, of([(-80, -14), (-75, -9), (-73, -2)]), 5, 5, "skin-mid", .26, 8, .05)
    p.ink(contour(part(OUTER, -138, -50), .25, .9, side=1, press=lambda t: ramp(t, (0, .7), (.5, .9), (1, .8))), "skin-line")
    p.ink([pen(of([(-118, 40), (-114, 70), (-113, 100)]), [.05, .8, .05]), pen(of([(-106, 28), (-100, 60), (-98, 96)]), [.05, .6, .05])], "skin-line", .55, cue="full")


def base(p):
    p.on("skin", "thigh")
    hip = part(OUTER, -61, 512)                          # begins under the brief's side
    whole = [(*CREASE[1], "c"), *CREASE[2:-1], (*CREASE[-1], "c"), *INNER[1:-4], at(512, across(INNER, 512), "c"), (*hip(1), "c"), *hip.pts[-12:0:-12], (*hip(0), "c")]
    p.area(whole, "skin-base")
    p.area(whole, "wash.light")
    p.area([at(-61, 10, "c"), at(20, 40), at(200, 30), at(420, 20), at(512, 20, "c"), *hip.pts[-12:0:-12], (*hip(0), "c")], "wash.thigh")


def groin(p):
    """The crease, the two straps that part under the spine, the hollow inside them."""
    crease = Line(CREASE)
    soft(p, crease.shifted(13), crease, "skin-mid", .5, 8, rise((0, 0), (.3, .5), (.7, 1), (1, .7)))
    soft(p, crease.shifted(-8), crease, "skin-mid", .4, 6, rise((0, 0), (.4, .5), (.7, 1), (1, .5)))
    p.ink([pen(crease.part(.34, .7), [.05, .3, .4, .3, .05]), pen(crease.part(.66, .985), [.05, .4, .7, .7, .25])], "skin-line", .7)
    p.ink([pen(of([(-30, 12), (-4, 38), (24, 64), (50, 90)]), [.05, .9, .9, .05])], "skin-line", .6, cue="full")
    p.ink([pen(of([(-16, 30), (12, 58), (44, 84)]), [.05, .5, .05]), pen(of([(10, 46), (34, 68), (58, 86)]), [.05, .45, .05])], "skin-line", .5, cue="older")
    # sartorius: a long low ridge from the spine inward; tensor fasciae latae: one outward; the small hollow between
    pool(p, of([(-52, 2), (-20, 18), (20, 37), (66, 55), (112, 68)]), 9, 10, "skin-light", .5, 9, .1)
    pool(p, of([(-50, -14), (-24, -18), (6, -24), (40, -31)]), 9, 9, "skin-base", .4, 10, .05)
    pool(p, of([(-36, -4), (-16, -4), (8, -5), (26, -7)]), 8, 7, "skin-mid", .28, 9, .05)
    # the trochanter: felt rather than seen, a low swell of the outer side, a dip toward the flank, shade toward the foot
    pool(p, of([(-36, -30), (-26, -32), (-16, -34)]), 8, 7, "skin-mid", .26, 8, .05)
    pool(p, of([(-8, -37), (6, -40), (20, -41.6)]), 6, 8, "skin-base", .5, 9, .05)
    pool(p, of([(26, -38), (36, -41), (46, -43)]), 6, 6, "skin-mid", .24, 7, .05)
    # femoral triangle: a shallow hollow inside sartorius
    pool(p, of([(-6, 56), (22, 70), (54, 80), (96, 84)]), 15, 13, "skin-mid", .46, 12, .05)
    pool(p, of([(70, 101), (110, 99), (160, 91), (220, 80)]), 9, 8, "skin-light", .4, 8, .1)


def quadriceps(p):
    # rectus femoris: a spindle of light a little inside the axis
    pool(p, of([(60, 10), (110, 13), (170, 13), (230, 10), (290, 5), (330, 3)]), 14, 22, "skin-light", .5, 15, .05)
    # its furrow against vastus lateralis: wide, soft, deepest below the middle, open at both ends
    furrow = Line(of([(70, -17), (110, -22.4), (160, -25), (210, -24), (256, -20), (300, -15.4), (342, -12)]))
    pool(p, furrow.part(0, 1, 12), 9, 12, "skin-mid", .56, 13, .05)
    pool(p, furrow.part(.3, .95, 12), 4, 5, "skin-shade", .26, 7, .05)
    p.ink([pen(furrow.part(.2, .58), [.05, .3, .4, .05]), pen(furrow.part(.64, .93), [.05, .4, .45, .05])], "skin-hatch", .7, cue="lean")
    # vastus lateralis: its own broad light, then it turns under
    pool(p, of([(80, -38), (140, -42), (200, -42.4), (256, -39), (316, -32)]), 10, 11, "skin-base", .55, 14, .05)
    edge = part(OUTER, -60, 352)
    core = Line([at(q, s) for q, s in ((-60, -6), (-10, -12), (40, -20), (90, -27), (140, -30), (200, -30), (260, -27), (310, -23), (352, -22))])
    rim = rise((0, .9), (.3, .85), (.6, 1), (.85, .8), (1, .1))
    soft(p, between(core, edge, .3), edge, "skin-mid", .34, 8, rim)
    soft(p, between(core, edge, .62), edge, "skin-shade", .42, 8, rim)
    lean = Line([(x - 11, y) for x, y in core.pts])          # the strokes lie over a little, as a hand draws them
    for n, t0, t1, reach, peak in ((22, .47, .79, .9, .48),):
        p.ink(cluster(lean, edge, n, t0, t1, reach, .5, lambda s: .1 + .16 * s, .07, peak=peak, dense=.5), "skin-hatch")
    # furrow between rectus and vastus medialis, and sartorius drawn across the inner side
    inner = Line(of([(190, 31), (232, 27.4), (274, 21), (310, 16), (346, 14)]))
    pool(p, inner.part(0, 1, 12), 7, 10, "skin-mid", .46, 11, .05)
    pool(p, inner.part(.3, 1, 12), 3, 4, "skin-shade", .18, 6, .05)
    strap = Line(of([(84, 44), (130, 50), (186, 54), (246, 56), (304, 57)]))
    pool(p, strap.part(0, 1, 14), 7, 10, "skin-mid", .36, 11, .05)
    # the inner side turns away from us, in the light: only a breath of shade along it
    top = part(INNER, 66, 330)
    soft(p, top.shifted(11), top, "skin-mid", .3, 6, rise((0, .9), (.3, .5), (.8, .4), (1, 0)))


def edges(p):
    """Contours: thin on the lit inner side, heavy under vastus lateralis; forms overlap where they meet."""
    over = Line([*part(OUTER, -58, 300).pts[::10], *of([(330, -51), (350, -46.6), (364, -41.6)])])
    p.ink(contour(over, .3, 1.05, side=1, press=lambda t: ramp(t, (0, .7), (.08, .8), (.15, .3), (.25, .3), (.34, .9), (.6, 1.1), (.86, .9), (1, .03))), "skin-line")
    p.ink(contour(part(OUTER, 322, 458), .3, 1.0, side=1, press=lambda t: ramp(t, (0, .05), (.25, .8), (.7, 1), (1, .5))), "skin-line")
    p.ink(contour(part(OUTER, 450, 512), .3, 1.1, side=1, press=lambda t: ramp(t, (0, .2), (.3, 1), (1, 1))), "skin-line")
    hi = Line([*part(INNER, 62.5, 300).pts[::10], *of([(322, 66.6), (342, 60), (352, 55)])])
    p.ink(contour(hi, .4, 1.0, side=-1, press=lambda t: ramp(t, (0, 1.2), (.2, .9), (.8, .8), (1, .05))), "skin-line")
    p.ink(contour(Line([*part(INNER, 304, 380).pts[::10], *of([(392, 57.6), (400, 52), (404, 46)])]), .5, 1.2, side=-1,
                  press=lambda t: ramp(t, (0, .05), (.3, .9), (.7, 1), (1, .05))), "skin-line")
    p.ink(contour(part(INNER, 384, 500), .5, 1.2, side=-1, press=lambda t: ramp(t, (0, .05), (.2, .9), (1, .8))), "skin-line")


def draw(p):
    p.linear("wash.trunk", "pelvis", at(-100, 40), at(-100, -46), [(0, "skin-mid", 0), (.5, "skin-mid", .16), (1, "skin-mid", .5)])
    # straight gradients: their two ends follow a stout or a lean thigh as its outline does
    p.linear("wash.thigh", "thigh", at(205, 26), at(205, -62), [(0, "skin-mid", 0), (.22, "skin-mid", .12), (.46, "skin-mid", .38), (.66, "skin-mid", .66), (.82, "skin-shade", .5), (1, "skin-shade", .78)])
    # the light lies in a band along the upper side, slanting with the bone
    p.linear("wash.light", "thigh", at(213, 88), at(204, 6), [(0, "skin-light", 0), (.4, "skin-light", .5), (.6, "skin-light", .42), (1, "skin-light", 0)])
    trunk(p)
    thigh_front_knee.leg(p)
    base(p)
    groin(p)
    quadriceps(p)
    thigh_front_knee.knee(p)
    edges(p)
    thigh_front_cloth.draw(p)
