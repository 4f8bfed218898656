"""Three-quarter plate: the few strokes of the brush that every part of it uses."""
import math

from engrave import feather, fibres, ramp, rim


def shade(p, inner, edge, tone, opacity, steps=4, profile=None, cue=None):
    """A soft shade from an edge toward an inner line."""
    p.areas_of(feather(inner, edge, steps, profile), tone, opacity, cue)


def hump(a=.6):
    return lambda s: math.sin(math.pi * s) ** a


def outline(p, shape, tone, thick=1.3, thin=.3, press=None):
    p.ink(rim(shape, thin, thick, press=press), tone)


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
