"""Small hands of the open hand: soft shades whose many steps keep the hue.

Each step is rounded to a whole shade of red, green and blue; for these tones and opacities the three roundings
fall alike, so that a pile of steps turns neither green nor pink.
"""
import math

from engrave import feather, glow

STEP = {"hand-light": .114, "hand-mid": .094, "hand-shade": .086}


def count(tone, total):
    return max(2, round(math.log(1 - total) / math.log(1 - STEP[tone])))


def soft(p, inner, edge, tone, total, profile=None):
    """A shade that is total deep at the edge and gone at the inner line."""
    p.areas_of(feather(inner, edge, count(tone, total), profile), tone, STEP[tone])


def pool(p, points, right, left, tone, total, core=.05):
    """A round light or hollow about a middle line."""
    p.areas_of(glow(points, right, left, count(tone, total), core), tone, STEP[tone])
