"""Thigh from the side: the mattress with its sheet, and the sheet turned back over the shin."""
from engrave import Line, contour, pen, ramp
from thigh_side_tools import each, hump, soft
from thigh_side_frame import BACK, LOIN, at, cm
from thigh_side_wear import fold

# the bed gives under the buttock and leaves the knee free
PELVIS_TOP = [*cm((-17, -8.8), (-14.9, -9.4)), *[q for q in LOIN if 30 < q[0] < 200], at(4.2, -10.35)]
THIGH_TOP = [at(4.2, -10.35), *[q for q in BACK if 213 < q[0] < 320], *cm((18, -7.4), (21, -7.2), (25, -7.05), (30, -6.85), (35, -6.55), (39.9, -6.35))]
LEG_TOP = cm((39.9, -6.35), (42, -6.5), (44.4, -6.8), (46.6, -7.05), (48.6, -7.15))


def mattress(p):
    """Short, and close to the body: what lies far outside the skin is carried far by a heavy patient's map."""
    for limb, top in (("leg", [*LEG_TOP, *cm((52, -7.15), (57, -7.1))]), ("thigh", THIGH_TOP), ("pelvis", PELVIS_TOP)):
        p.on("cloth", limb)
        low = [(q[0], q[1] + 15) for q in top][::-1]
        p.area([(*top[0], "c"), *top[1:-1], (*top[-1], "c"), (*low[0], "c"), *low[1:-1], (*low[-1], "c")], "cloth-light", .5)
    # the body's shadow, each part on the limb that throws it; equal where two limbs meet
    for limb, top, depth in (("pelvis", PELVIS_TOP, lambda t: ramp(t, (0, 4), (.5, 11), (1, 12))), ("leg", LEG_TOP, lambda t: ramp(t, (0, 10), (.6, 11), (1, 11))),
                             ("thigh", THIGH_TOP, lambda t: ramp(t, (0, 12), (.35, 9), (1, 10)))):
        p.on("cloth", limb)
        t = Line(top)
        up = t.part(0, 1)
        for k in range(6):
            low = [(q[0], q[1] + depth(u / (len(up) - 1)) * (k + 1) / 6) for u, q in enumerate(up)][::-1]
            p.area([(*up[0], "c"), *up[1:-1], (*up[-1], "c"), (*low[0], "c"), *low[1:-1], (*low[-1], "c")], "cloth-shade", each(.5, 6))
    p.ink(pen(t.part(.4, 1), [.05, .45, .5, .5, .4]), "cloth-line", .8)
    p.on("cloth", "leg")
    p.ink(pen(LEG_TOP, [.4, .5, .5, .3]), "cloth-line", .8)
    p.on("cloth", "thigh")
    fold(p, cm((8.6, -9.3), (11, -9.9), (15, -10.0), (19, -9.7)), 4, .6)
    fold(p, cm((6.2, -10.2), (8.0, -10.9), (10.6, -11.3), (13.6, -11.2)), 5, .6)
    fold(p, cm((22, -7.9), (26, -8.4), (31, -8.3)), 4, .5)
    p.on("cloth", "pelvis")
    fold(p, cm((-10, -11.3), (-12.2, -11.5), (-14.6, -11.2)), -4, .5)
    fold(p, cm((-3.6, -12.4), (-2.4, -12.9), (-.6, -13.1)), 4, .5)


def sheet(p):
    p.linear("wash.sheet", "leg", at(53.5, 0), at(56.9, .2), [(0, "cloth-light"), (.1, "cloth-light"), (1, "cloth-light", 0)])
    p.on("cloth", "leg")
    edge = cm((50.2, 5.35), (49.9, 4.2), (50.2, 2), (50.4, -1), (50.0, -4), (49.3, -6.4), (48.9, -7.8), (49.1, -9.2))
    top = cm((50.2, 5.35), (51.6, 5.5), (54, 5.1), (57.4, 4.8))
    hem = cm((49.1, -9.2), (50.5, -9.9), (52.4, -9.6), (54.6, -10.0), (57.4, -9.8))
    p.area([(*edge[0], "c"), *edge[1:-1], (*edge[-1], "c"), *hem[1:-1], (*hem[-1], "c"), (*top[-1], "c"), *top[-2:0:-1]], "wash.sheet")
    under = Line(hem)
    soft(p, under.shifted(8), under, "cloth-shade", .4, lambda t: ramp(t, (0, .5), (.5, 1), (1, 0)))
    p.ink(pen(under, [.6, .9, .6, .4, .05]), "cloth-line", .85)
    e = Line(edge)
    turn = Line(e.shifted(-13, .02, .96))
    soft(p, turn.shifted(7), turn, "cloth-shade", .3, hump(.6))
    soft(p, turn.shifted(-9), turn, "cloth-shade", .46, hump(.6))
    p.ink(pen(turn, [.05, .7, .5, .8, .6, .05]), "cloth-line", .8)
    p.ink(contour(e, .5, 1.3, side=1, press=lambda t: ramp(t, (0, .7), (.6, 1), (1, .5))), "cloth-line")
    p.ink(pen(top, [.9, .9, .6, .05]), "cloth-line")
    fold(p, cm((52.0, 3.4), (53.4, 3.6), (55, 3.2)), 5, .6)
    fold(p, cm((51.8, -2.0), (53.4, -3.4), (54.6, -5.6)), -7, .8)
    fold(p, cm((51.2, -5.2), (52.3, -6.8), (52.8, -8.8)), -7, .7)


def draw(p):
    mattress(p)
    sheet(p)
