"""The open hand: the back of the hand with its web, tendons and the stump of the wrist."""
from engrave import Line, contour, pen, ramp
from open_hand_frame import FIRST_WEB, INDEX, RADIAL, THUMB, ULNAR, WEB, along, at
from open_hand_tools import contact, pool, soft
from side_tools import hump


def draw(p):
    p.linear("wash.palm", "palm", at(0, -6), at(0, -28), [(0, "hand-base"), (.5, "hand-base", .6), (1, "hand-base", 0)])
    p.on("skin", "palm")
    contact(p, along(ULNAR[1:12]), -1, 2.6)
    contact(p, [*along(RADIAL[1:]), *THUMB.side(1, 9, 24)], 1, 2.6)
    left, right, web = along(ULNAR), along(RADIAL), Line(along(WEB)).part(0, 1, 1.5)
    first = Line(first_web()).part(0, 1, 2)
    border = along([(-53, 90), (-45, 92), (-38, 98), (-30, 102), (-22, 106), (-15, 113)])
    p.area([(*left[0], "c"), *left[1:-1], (*left[-1], "c"), *border[1:], (*web[-1], "c"), *web[-2:0:-1], (*web[0], "c"), *along([(10, 118)]),
            (*first[-1], "c"), *first[-2:0:-1], (*first[0], "c"), *along([(60, 66)]), *THUMB.side(.9, 44, 30, 6), *THUMB.side(1, 26, 11), *right[::-1][:-1],
            (*right[0], "c")], "wash.palm")
    edge = Line(left[3:11])
    soft(p, edge.shifted(12), edge, "hand-mid", .34, hump(.8))
    tendons(p)
    wrist(p)
    edges(p)


def first_web():
    """The web between thumb and index finger, which runs on into the finger's side."""
    return [*along(FIRST_WEB), INDEX.on(-9, 1), *INDEX.side(1, -3, 9, 3)]


def tendons(p):
    """Four flat cords that fan out from a bundle at the wrist: light with a soft shade on one side, inked only toward the knuckles."""
    for pts, w, a, b in (([(9, 3), (7, 20), (7, 40), (9, 62), (11.6, 82)], 1, .56, .86), ([(2, 3), (-1, 20), (-4, 40), (-6.6, 62), (-8.6, 85)], 1, .6, .92),
                         ([(-5, 4), (-8.6, 20), (-13, 38), (-19, 60), (-25.6, 79)], .85, .54, .8), ([(-12, 5), (-15, 18), (-21.6, 36), (-32, 55), (-42, 70)], .5, .6, .82)):
        ln = Line(along(pts))
        pool(p, ln.shifted(3.6, .02, .96), 4, 3.6, "hand-mid", .28 * w)
        pool(p, ln.part(.02, 1), 2.3, 2.3, "hand-light", .62 * w)
        p.ink(pen(ln.shifted(1.7, a, b), [.05, .2 * w, .26 * w, .16 * w, .05]), "hand-line", .3)


def wrist(p):
    pool(p, along([(-18.4, 4), (-20, -4), (-20.6, -13)]), 5, 6, "hand-light", .56)
    pool(p, along([(-13, 3), (-13.4, -4), (-13.6, -12)]), 3.4, 4, "hand-mid", .15)
    for pts, w in (([(-21, 3.6), (-9, 1.4), (3, 1)], .26), ([(-3, -2.4), (8, -2), (18, .2)], .22)):
        p.ink(pen(along(pts), [.05, w, w, .05]), "hand-line", .32)


def edges(p):
    left = Line(along(ULNAR))
    p.ink(contour(left, .22, .6, side=-1, press=lambda t: ramp(t, (0, 0), (.12, .1), (.2, .9), (.27, .9), (.31, 0), (.36, .9), (.84, .9), (.94, .8), (1, .05))), "hand-line")
    p.ink(contour(Line(along(WEB)).part(.2, .85, 1), .26, .5, side=1, press=lambda t: ramp(t, (0, .1), (.5, 1), (1, .1)), step=2), "hand-line")
