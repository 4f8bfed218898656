"""The laid hand: the thumb along its side, and the fold in which the hand's edge lies over it."""
from engrave import Line, contour, ramp
from laid_fingers_frame import FOLD, RADIAL, THUMB, along
from open_hand_fingers import FINE, crease
from open_hand_thumb import nail
from open_hand_tools import pool, soft
from side_tools import cluster, hump, rise


def body(p):
    f = THUMB
    p.area([*f.outline(4, 4), f.on(-6, .8), f.on(-8, 0), f.on(-6, -.7)], "hand-base")
    pool(p, f.side(.05, 47, 70), 4.4, 5, "hand-light", .72)
    pool(p, f.side(-.05, 77, 90), 4, 4.4, "hand-light", .5)
    pool(p, f.side(0, f.pip - 8, f.pip + 8), 6.4, 6.4, "hand-warm", .2)
    pool(p, f.side(0, 86, 101), 6.4, 6.4, "hand-warm", .22)
    fade = rise((0, 0), (.25, .5), (.5, 1), (.9, .7), (1, 0))
    soft(p, f.side(.34, 8, 95), f.side(.99, 8, 95), "hand-mid", .58, fade)
    soft(p, f.side(.7, 8, 95), f.side(.99, 8, 95), "hand-shade", .26, fade)
    for ds, half, bow, w, v0 in ((-2.6, .46, .5, .28, .16), (0, .64, .5, .36, .1), (2.4, .36, .7, .26, .24)):
        p.ink(crease(f, f.pip + ds, half, bow, w, .3, v0), "hand-line", .54)
    nail(p, f)
    # in the fold the thumb lies in the hand's shadow
    over = Line(along(FOLD[:-1]))
    soft(p, over.shifted(-7, step=3), over, "hand-mid", .6, hump(.6))
    soft(p, over.shifted(-4, step=3), over, "hand-shade", .4, hump(.6))


def fold(p):
    """The ball of the thumb; the hand's edge over it turns away."""
    f = THUMB
    pool(p, f.side(.1, 10, 42), 5, 6, "hand-light", .5)
    for ds, half, bow, w in ((-1.6, .28, -1, .26), (1, .36, -.4, .28)):
        p.ink(crease(f, f.mcp + ds, half, bow, w, .4, .4), "hand-line", .34)
    p.ink(cluster(f.side(.1, 40, 18), f.side(1, 40, 18), 6, .04, .96, .8, .32, .14, .07), "hand-line", .42)
    rim = Line(along(FOLD[1:]))
    fade = rise((0, 0), (.2, .25), (.6, 1), (.85, .8), (1, 0))
    soft(p, rim.shifted(11, step=3), rim, "hand-mid", .42, fade)
    soft(p, rim.shifted(4, step=3), rim, "hand-shade", .16, fade)
    inner = Line(along([(24, 86), (21.5, 76), (19, 67), (17.4, 58), (17, 50), (18, 44)]))
    p.ink(cluster(inner, rim, 7, .26, .94, .62, .3, -.12, .05, peak=.6), "hand-line", .36)


def edge(p):
    """One stroke from the wrist up the outer side and over the tip; it ends under the index finger."""
    out = Line([*along(RADIAL[1:]), *THUMB.outline(97, 5)[::-1]])
    p.ink(contour(out, .22, .6, side=1, press=lambda t: ramp(t, (0, .05), (.1, .8), (.4, 1), (.9, .9), (1, .05)), step=FINE * 1.6), "hand-line")
