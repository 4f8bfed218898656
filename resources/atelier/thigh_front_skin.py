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
    p.on("skin", "pelvis")
    flank = [at(-138, across(OUTER, -138)), *part(OUTER, -134, 70).pts[::12]]
    p.area([at(-138, 270, "c"), (*flank[0], "c"), *flank[1:-1], (*flank[-1], "c"), at(96, -10), at(70, 60), at(68, 112, "c"), at(64, 270, "c")], "wash.trunk")
    edge, lit = part(OUTER, -132, -52), Line(of([(-132, -4), (-110, -6), (-90, -6), (-70, -5), (-52, -6)]))
    soft(p, between(lit, edge, .3), edge, "skin-mid", .6, 9, rise((0, .6), (.5, 1), (1, 1)))
    soft(p, between(lit, edge, .62), edge, "skin-shade", .5, 8, rise((0, .5), (.5, 1), (1, 1)))
    # lower belly: a shallow bowl inside the crest, a low swell round the middle
    pool(p, of([(-126, 6), (-108, 10), (-90, 22), (-66, 44)]), 16, 22, "skin-mid", .2, 9, .05)
    # crest: a light upper edge, a soft shadow under it, dying toward the flank
    crest = Line(of([(-124, -20), (-114, -17.4), (-104, -13.6), (-95, -9.6), (-87, -5)]))
    soft(p, crest.shifted(-7), crest, "skin-light", .4, 6, rise((0, 0), (.6, .8), (1, .7)))
    soft(p, crest.shifted(10), crest, "skin-mid", .42, 7, rise((0, 0), (.5, .7), (1, .8)))
    # its spine: a faint round point, lit above, with a soft shadow below and behind
    pool(p, of([(-95, -2), (-87, -2), (-80, -3)]), 6, 8, "skin-light", .4, 8, .1)
    pool(p, of([(-86, -14), (-77, -13), (-70, -8)]), 7, 7, "skin-mid", .34, 9, .05)
    p.ink(pen(of([(-91, -9.6), (-85, -10), (-79.6, -7.4)]), [.05, .35, .05]), "skin-line", .5)
    p.ink(pen(crest.part(.2, .7), [.05, .3, .05]), "skin-line", .3, cue="lean")
    p.ink(contour(part(OUTER, -128, -50), .3, 1.35, side=1, press=lambda t: ramp(t, (0, .2), (.5, .9), (1, 1))), "skin-line")
    p.ink(cluster(lit, edge, 7, .2, .8, .62, .4, .1, .07), "skin-hatch")
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
    p.ink([pen(crease.part(.3, .99), [.05, .35, .55, .7, .9, .8, .3])], "skin-line", .8)
    p.ink([pen(of([(-30, 12), (-4, 38), (24, 64), (50, 90)]), [.05, .9, .9, .05])], "skin-line", .6, cue="full")
    p.ink([pen(of([(-16, 30), (12, 58), (44, 84)]), [.05, .5, .05]), pen(of([(10, 46), (34, 68), (58, 86)]), [.05, .45, .05])], "skin-line", .5, cue="older")
    # sartorius: a long low ridge from the spine inward; tensor fasciae latae: one outward; the small hollow between
    pool(p, of([(-52, 2), (-20, 18), (20, 37), (66, 55), (112, 68)]), 9, 10, "skin-light", .5, 9, .1)
    pool(p, of([(-50, -14), (-24, -18), (6, -24), (40, -31)]), 9, 9, "skin-base", .4, 10, .05)
    pool(p, of([(-44, -4), (-14, -4), (16, -5), (52, -9)]), 9, 8, "skin-mid", .4, 11, .05)
    # the trochanter: felt rather than seen, a low swell on the outer side with a dip above it
    pool(p, of([(-40, -26), (-24, -30), (-8, -33)]), 9, 9, "skin-mid", .26, 8, .05)
    pool(p, of([(-4, -35), (10, -38), (26, -39)]), 6, 8, "skin-base", .4, 8, .05)
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
    for n, t0, t1, reach, peak in ((9, .2, .45, .62, .62), (22, .45, .81, .9, .48), (7, .82, .97, .5, .4)):
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
    p.ink(contour(over, .35, 1.9, side=1, press=lambda t: ramp(t, (0, .6), (.2, .75), (.5, 1.1), (.86, .9), (1, .03))), "skin-line")
    p.ink(contour(part(OUTER, 322, 458), .35, 1.5, side=1, press=lambda t: ramp(t, (0, .05), (.25, .8), (.7, 1), (1, .5))), "skin-line")
    p.ink(contour(part(OUTER, 450, 512), .35, 1.6, side=1, press=lambda t: ramp(t, (0, .2), (.3, 1), (1, 1))), "skin-line")
    hi = Line([*part(INNER, 62.5, 300).pts[::10], *of([(322, 66.6), (342, 60), (352, 55)])])
    p.ink(contour(hi, .5, 1.2, side=-1, press=lambda t: ramp(t, (0, 1.2), (.2, .9), (.8, .8), (1, .05))), "skin-line")
    p.ink(contour(Line([*part(INNER, 304, 380).pts[::10], *of([(392, 57.6), (400, 52), (404, 46)])]), .5, 1.2, side=-1,
                  press=lambda t: ramp(t, (0, .05), (.3, .9), (.7, 1), (1, .05))), "skin-line")
    p.ink(contour(part(INNER, 384, 500), .5, 1.2, side=-1, press=lambda t: ramp(t, (0, .05), (.2, .9), (1, .8))), "skin-line")


def draw(p):
    p.linear("wash.trunk", "pelvis", at(0, 104), at(0, 190), [(0, "skin-base"), (.4, "skin-base", .7), (1, "skin-base", 0)])
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
