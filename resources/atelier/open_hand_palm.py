"""The open hand: the back of the hand with its web, tendons and the stump of the wrist."""
from engrave import Line, contour, pen, ramp
from open_hand_frame import FIRST_WEB, INDEX, RADIAL, THUMB, ULNAR, WEB, along, at
from open_hand_tools import pool, soft
from side_tools import hump


def draw(p):
    p.linear("wash.palm", "palm", at(0, -6), at(0, -28), [(0, "hand-base"), (.5, "hand-base", .6), (1, "hand-base", 0)])
    p.on("skin", "palm")
    left, right, web = along(ULNAR), along(RADIAL), Line(along(WEB)).part(0, 1, 1.5)
    first = Line(first_web()).part(0, 1, 2)
    border = along([(-53, 90), (-45, 92), (-38, 98), (-30, 102), (-22, 106), (-15, 113)])
    p.area([(*left[0], "c"), *left[1:-1], (*left[-1], "c"), *border, (*web[-1], "c"), *web[-2:0:-1], (*web[0], "c"), *along([(10, 118)]),
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
    """Four flat cords that fan out from under the wrist's band; each has its own length."""
    for pts, a, b, w in (([(2, 18), (3.4, 40), (7, 62), (11, 82)], .06, .86, 1), ([(-2.4, 18), (-4.4, 40), (-6.4, 62), (-8.6, 84)], .2, .9, 1),
                         ([(-6, 18), (-11, 38), (-18, 60), (-25.6, 79)], .1, .76, .9), ([(-9, 18), (-18, 36), (-30, 55), (-42, 71)], .3, .8, .75)):
        ln = Line(along(pts))
        pool(p, ln.shifted(4.4, .1, .95), 4.6, 4.2, "hand-mid", .24 * w)
        pool(p, ln.part(.05, 1), 2.9, 2.9, "hand-light", .62 * w)
        p.ink(pen(ln.shifted(2, a, b), [.05, .22 * w, .32 * w, .24 * w, .05]), "hand-line", .32)


def wrist(p):
    pool(p, along([(-19.4, 3), (-20.6, -4), (-21, -11)]), 5.4, 5.4, "hand-light", .45)
    for pts, w in (([(-20, 4.6), (-8, 2), (8, 1.8), (20, 4)], .32), ([(-13, -1.4), (-3, -2.8), (8, -2.6)], .24)):
        p.ink(pen(along(pts), [.05, w, w, .05]), "hand-line", .32)


def edges(p):
    left = Line(along(ULNAR))
    p.ink(contour(left, .28, .92, side=-1, press=lambda t: ramp(t, (0, 0), (.12, .1), (.25, .9), (.93, .9), (1, .1))), "hand-line")
    p.ink(contour(Line(along(WEB)).part(.2, .85, 1), .32, .66, side=1, press=lambda t: ramp(t, (0, .1), (.5, 1), (1, .1)), step=2), "hand-line")
