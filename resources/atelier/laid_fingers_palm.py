"""The laid hand: what it throws on the arm, the back of the hand with its tendons, the wrist."""
from engrave import Line, pen
from laid_fingers_frame import CURLED, FOLD, RADIAL, THUMB, ULNAR, along, at, curled, fingers
from open_hand_tools import contact, pool, soft
from side_tools import hump


def shadow(p, count):
    for f in fingers(count):
        contact(p, f.outline(f.web - 2, f.web - 2), -1, 2.7)
    for name in curled(count):
        contact(p, along(CURLED[name]), -1, 2.4)
    contact(p, along(ULNAR[1:]), -1, 2.4)
    contact(p, [*along(RADIAL[1:]), *THUMB.outline(70, 6)[::-1][:-1]], 1, 2.4)


def draw(p):
    p.linear("wash.hand", "hand", at(0, -8), at(0, -31), [(0, "hand-base"), (.5, "hand-base", .6), (1, "hand-base", 0)])
    left, right = along(ULNAR), along(RADIAL)
    top = along([(-43, 75), (-36, 78), (-29.6, 82), (-24, 88), (-14, 90), (-7, 95), (3, 104), (9.2, 113), (15, 105), (22, 103)])
    fold = along(FOLD)
    p.area([(*left[0], "c"), *left[1:-1], (*left[-1], "c"), *top[1:], (*fold[0], "c"), *fold[1:], *along([(27, 38), (30, 24)]),
            *right[::-1][:-1], (*right[0], "c")], "wash.hand")
    edge = Line(left[4:])
    soft(p, edge.shifted(17, step=3), edge, "hand-mid", .34, hump(1.2))
    tendons(p)
    wrist(p)


# the four cords, from the wrist to the knuckles, and how much of each is seen
CORDS = {"index": [(8, 3), (9, 20), (11, 42), (15, 62), (18.6, 80)], "middle": [(2, 3), (1, 20), (0, 40), (-.4, 62), (-.8, 82)],
         "ring": [(-4, 4), (-6.4, 20), (-10, 40), (-14.6, 60), (-18.4, 77)], "little": [(-10, 5), (-13, 20), (-19, 38), (-27, 55), (-34, 69)]}
CORD = {"index": 1, "middle": 1, "ring": .85, "little": .6}


def tendons(p):
    """Four flat cords: light with a soft shade on one side, inked only toward the knuckles."""
    for name, pts in CORDS.items():
        w, ln = CORD[name], Line(along(pts))
        pool(p, ln.shifted(3.4, .02, .96), 3.8, 3.4, "hand-mid", .27 * w)
        pool(p, ln.part(.02, 1), 2.2, 2.2, "hand-light", .6 * w)
        p.ink(pen(ln.shifted(1.6, .56, .86), [.05, .2 * w, .26 * w, .16 * w, .05]), "hand-line", .3)


def wrist(p):
    pool(p, along([(-17.6, 5), (-19.2, -3), (-19.8, -12)]), 5, 6, "hand-light", .56)
    pool(p, along([(-12.4, 4), (-12.8, -4), (-13, -12)]), 3.4, 4, "hand-mid", .15)
    for pts, w in (([(-20, 3.6), (-8, 1.4), (4, 1)], .26), ([(-3, -2.4), (8, -2), (17, .2)], .22)):
        p.ink(pen(along(pts), [.05, w, w, .05]), "hand-line", .32)
