"""Small hands of the side view: smooth shades in many faint steps, and clusters of hatching."""
import math

from engrave import add, dist, feather, glow, line, mix, pen, ramp, unit


def each(total, steps):
    """The opacity of one step, so that all steps together reach total."""
    return round(1 - (1 - total) ** (1 / steps), 3)


LEAST = {"skin-light": .13, "skin-mid": .05}      # fainter steps are lost to rounding and shift the hue
SPARE = .72                      # part of the steps asked for; the sheet has room for 600 shapes


def count(tone, total, steps):
    most = math.log(1 - total) / math.log(1 - LEAST.get(tone, .04))
    return max(2, min(round(steps * SPARE), round(most)))


def soft(p, inner, edge, tone, total, steps=7, profile=None, cue=None):
    """A shade that is total deep at the edge and gone at the inner line, without visible steps."""
    steps = count(tone, total, steps)
    p.areas_of(feather(inner, edge, steps, profile), tone, each(total, steps), cue)


def pool(p, points, right, left, tone, total, steps=7, core=.2, cue=None):
    """A round light or hollow about a middle line."""
    steps = count(tone, total, steps)
    p.areas_of(glow(points, right, left, steps, core), tone, each(total, steps), cue)


def hump(a=.6):
    return lambda s: math.sin(math.pi * s) ** a


def rise(*pairs):
    return lambda s: ramp(s, *pairs)


def cluster(lit, edge, n, t0, t1, reach, weight=.6, bow=.1, inset=.05, seed=.31, dense=.45, peak=.5):
    """n strokes round the form: crowded and long in the middle of the cluster, opening and shortening
    toward its ends; each begins a sliver inside the edge, which keeps its reflected light."""
    lit, edge = line(lit), line(edge)
    res = []
    for k in range(n):
        u = (k + .5) / n
        q = u ** (math.log(.5) / math.log(peak))
        s = t0 + (t1 - t0) * (u + dense * math.sin(2 * math.pi * u) / (2 * math.pi))
        jit = ((k * .618034 + seed) % 1.0) - .5
        h = math.sin(math.pi * q) ** .8
        r = reach * (.35 + .65 * h) * (1 + .22 * jit)
        w = weight * (.4 + .6 * h)
        e, far = edge(s), lit(s)
        a, b = mix(e, far, r), mix(e, far, inset + .02 * (1 + jit))
        p0, p1 = edge(max(0, s - .01)), edge(min(1, s + .01))
        along = unit((p1[0] - p0[0], p1[1] - p0[1]))
        size = dist(a, b)
        f = bow(s) if callable(bow) else bow
        mid = [add(mix(a, b, v), along, f * size * 4 * v * (1 - v) * (.6 + .5 * v)) for v in (0, .25, .5, .75, 1)]
        res.append(pen(mid, lambda v, w=w: w * v ** .8 * min(1, (1.02 - v) * 7) + .04))
    return res
