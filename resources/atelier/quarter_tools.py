"""Three-quarter plate: the few strokes of the brush that every part of it uses."""
import math

from engrave import contour, feather, fibres, line, ramp


def shade(p, inner, edge, tone, opacity, steps=4, profile=None, cue=None):
    """A soft shade from an edge toward an inner line."""
    p.areas_of(feather(inner, edge, steps, profile), tone, opacity, cue)


def hump(a=.6):
    return lambda s: math.sin(math.pi * s) ** a


def band(p, points, wide, tone, opacity, steps=4, profile=None, cue=None):
    """A soft band lying on both sides of a line: a hollow or a ridge without an edge."""
    ln = line(points)
    f = wide if callable(wide) else (lambda t: wide)
    for k in range(1, steps + 1):
        u = k / steps
        prof = profile or hump(.7)
        a = ln.shifted(lambda t: f(t) * u * prof(t))
        b = ln.shifted(lambda t: -f(t) * u * prof(t))
        p.area([(*a[0], "c"), *a[1:-1], (*a[-1], "c"), *b[-2:0:-1]], tone, opacity, cue)


def closed(shape):
    return [q[:2] for q in shape] + [shape[0][:2]]


def outline(p, shape, tone, thick=1.3, thin=.3, press=None):
    p.ink(contour(closed(shape), thin, thick, side=-1, press=press), tone)


def muscle(p, shape, wash, thick=1.4, thin=.28, press=None):
    p.area(shape, wash)
    outline(p, shape, "muscle-line", thick, thin, press)


def lines(p, guides, n, w=.6, op=.75, **k):
    p.ink(fibres(guides, n, w, **k), "muscle-line", op)


def glints(p, guides, n, w=.9, op=.55, **k):
    p.ink(fibres(guides, n, w, lift=.5, seed=.55, **k), "muscle-light", op)


def fade_in(a, b):
    """Profile rising from 0 at a to 1 at b."""
    return lambda s: ramp(s, (a, 0), (b, 1))
