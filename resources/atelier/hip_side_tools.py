"""Small hands of the side-lying hip: soft shades whose steps survive rounding, and hatching from side_tools."""
import math

from engrave import area, feather, glow
from side_tools import cluster, hump, rise          # noqa: F401 - one import for the sisters

# the opacity of one step, chosen so that many of them piled up do not drift in hue (eight bits a colour)
FINE = {"skin-light": .13, "skin-mid": .11, "skin-shade": .09, "skin-deep": .10, "cloth-shade": .12, "cloth-base": .12, "cloth-light": .12,
        "muscle-shade": .08, "muscle-light": .09, "bone-shade": .09, "bone-light": .12, "tendon": .12}


def steps(tone, total):
    """(opacity, count) for a shade that is total deep."""
    o = FINE.get(tone, .1)
    n = math.log(1 - total) / math.log(1 - o)
    return (o, round(n)) if n >= 2 else (max(.03, round(1 - (1 - total) ** .5, 2)), 2)


def soft(p, inner, edge, tone, total, profile=None, cue=None):
    """A shade that is total deep at the edge and gone at the inner line."""
    o, n = steps(tone, total)
    p.areas_of(feather(inner, edge, n, profile), tone, o, cue)


def pool(p, points, right, left, tone, total, core=.2, cue=None):
    """A round light or hollow about a middle line."""
    o, n = steps(tone, total)
    p.areas_of(glow(points, right, left, n, core), tone, o, cue)
