"""Small hands of the thigh plate: soft shades in few steps, each strong enough to keep its hue."""
import math

from engrave import Line, fibres, feather, glow, mix, pen, rim
from side_tools import cluster, each, hump, rise

# one step of these tones over its usual ground is two to three levels of eight bits: unseen, and safe from rounding
STEP = {"skin-light": .1, "skin-mid": .06, "skin-shade": .05, "cloth-shade": .09, "cloth-light": .13,
        "bone-shade": .1, "bone-light": .2, "muscle-shade": .07, "muscle-light": .1}


def steps_for(tone, total):
    return max(2, min(12, round(math.log(1 - total) / math.log(1 - STEP.get(tone, .07)))))


def soft(p, inner, edge, tone, total, profile=None, cue=None):
    """A shade that is total deep at the edge and gone at the inner line."""
    n = steps_for(tone, total)
    p.areas_of(feather(inner, edge, n, profile), tone, each(total, n), cue)


def pool(p, points, right, left, tone, total, core=.05, cue=None):
    """A round light or hollow about a middle line; right and left of travel in millimetres."""
    n = steps_for(tone, total)
    p.areas_of(glow(points, right, left, n, core), tone, each(total, n), cue)


def muscle(p, shape, wash, thick=1.3, thin=.26, press=None):
    p.area(shape, wash)
    p.ink(rim(shape, thin, thick, press=press), "muscle-line")


def lines(p, guides, n, w=.55, op=.75, tone="muscle-line", **k):
    p.ink(fibres(guides, n, w, **k), tone, op)


def slant(p, start, end, n, lead, w=.5, op=.7, sag=0.0, tone="muscle-line", t0=.03, t1=.97, short=.0):
    """Fibres that leave one border and reach the other further on: fibre k starts at s on start, ends at s + lead on end.

    short: part left open at the far end (a number, swinging a little from fibre to fibre).
    """
    a, b = Line(start), Line(end)
    res = []
    for k in range(n):
        j = ((k * .618034 + .3) % 1.0) - .5
        s = t0 + (t1 - t0 - lead) * (k + .5 + .5 * j) / n
        p0, p1 = a(s), b(min(1, s + lead))
        far = 1 - short * (1 + j)
        mid = [mix(p0, p1, u * far) for u in (.02, .3, .6, 1)]
        lift = [0, .9 * sag, sag, 0]
        pts = [(q[0], q[1] + h) for q, h in zip(mid, lift)]
        res.append(pen(pts, [.05, w * (1 + .5 * j), w * .7, w * (1 + .3 * j), .05]))
    p.ink(res, tone, op)
