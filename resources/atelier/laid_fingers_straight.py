"""The laid hand: its straight fingers, side by side without a gap, and the row of knuckles."""
from engrave import Line, contour, ramp
from laid_fingers_frame import FOLD, INDEX, LITTLE_KNUCKLE, RING_KNUCKLE, along, curled, fingers
from open_hand_fingers import FINE, blood, joints, knuckle, light, nail
from open_hand_tools import pool


def draw(p, count):
    for f in fingers(count):
        p.area([*f.outline(f.mcp + 4), f.on(f.mcp - 3, .6), f.on(f.mcp - 5, 0), f.on(f.mcp - 3, -.6)], "hand-base")
        knuckle(p, f)
        blood(p, f, knuckle=False)
        light(p, f)
        joints(p, f)
        nail(p, f)
        if f is not INDEX:
            start = f.mcp + 2 if f is fingers(count)[0] else f.web - 6
            p.ink(contour(Line(f.outline(start, f.tip - 26)), .22, .6, side=-1, press=side, step=FINE * 1.6), "hand-line")
    for name in curled(count):
        head(p, *HEADS[name])


# a curled finger's knuckle: middle, radius, depth of its light
HEADS = {"ring": (*RING_KNUCKLE, 7, .66), "little": (*LITTLE_KNUCKLE, 6, .6)}


def head(p, x, y, r, depth):
    """The knuckle of a curled finger stands out like a dome; at its right the valley runs up into the gap between the fingers."""
    pool(p, along([(x + r - 2.4, y - 15), (x + r, y - 6), (x + r + 2.2, y + 3), (x + r + 2.6, y + 12)]), 4, 3.4, "hand-mid", .42)
    pool(p, along([(x - 2, y - 9), (x - .6, y - 2), (x + .4, y + 5)]), r * .6, r * .6, "hand-light", depth)
    pool(p, along([(x - 4, y + .4), (x, y + 1.4), (x + 4, y + .8)]), r * .8, r * .8, "hand-warm", .16)


def side(t):
    """How the pen leans on the outline of a finger that another one touches."""
    return ramp(t, (0, .05), (.14, .9), (.88, 1), (1, .1))


def edge(p):
    """The index finger's outline: a thin line where it touches its neighbour, over the tip, down into the fold of the thumb."""
    out = Line([*INDEX.outline(INDEX.web - 6, INDEX.web - 1), *along(FOLD[1:])])
    p.ink(contour(out, .22, .6, side=-1, press=lambda t: ramp(t, (0, .05), (.06, .7), (.4, 1), (.9, .9), (1, .05)), step=FINE * 1.6), "hand-line")
