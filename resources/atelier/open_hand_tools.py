"""Small hands of the open hand: soft shades whose many steps keep the hue.

Each step is rounded to a whole shade of red, green and blue; for these tones and opacities the three roundings
fall alike, so that a pile of steps turns neither green nor pink.
"""
import math

from engrave import Line, feather, glow, pen, ramp

STEP = {"hand-light": .118, "hand-mid": .1, "hand-shade": .086, "hand-warm": .042, "hand-line": .036}


def count(tone, total):
    return max(2, round(math.log(1 - total) / math.log(1 - STEP[tone])))


def soft(p, inner, edge, tone, total, profile=None):
    """A shade that is total deep at the edge and gone at the inner line."""
    p.areas_of(feather(inner, edge, count(tone, total), profile), tone, STEP[tone])


def pool(p, points, right, left, tone, total, core=.05):
    """A round light or hollow about a middle line."""
    p.areas_of(glow(points, right, left, count(tone, total), core), tone, STEP[tone])


def contact(p, points, side, widest):
    """What the limb throws on the body it rests on, all round, for it is laid in any direction; and a fine light rim.

    points: its outline; side: +1 when the outside lies to the right of travel.
    """
    ln = Line(points)
    ends = lambda t: ramp(t, (0, 0), (.12, 1), (.88, 1), (1, 0))
    for k in range(4, 0, -1):
        out = ln.shifted(lambda t: side * widest * ends(t) * k / 4, step=3)
        into = ln.shifted(lambda t: -side * 1.2 * ends(t), step=3)
        p.area([(*out[0], "c"), *out[1:-1], (*out[-1], "c"), *into[-2:0:-1]], "hand-line", STEP["hand-line"])
    p.ink(pen(ln.shifted(side * .35, .04, .96, step=2), [.05, .6, .6, .6, .05], step=3), "hand-light", .8)
