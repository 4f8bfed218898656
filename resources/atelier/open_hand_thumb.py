"""The open hand: the thumb, seen half from its side, and the shading of the hand's edge that lies under it."""
from engrave import Line, contour, pen, ramp
from open_hand_fingers import FINE, crease
from open_hand_frame import FIRST_WEB, RADIAL, THUMB, along
from open_hand_palm import first_web
from open_hand_tools import contact, pool, soft
from side_tools import cluster, hump, rise


def draw(p):
    f = THUMB
    p.on("skin", "thumb")
    contact(p, f.outline(62, 30), -1, 2.8)
    p.area([*f.outline(14, 26), f.on(20, .84), f.on(8, .6), f.on(2, 0), f.on(6, -.7)], "hand-base")
    ball(p, f)
    light(p, f)
    for ds, half, bow, w, v0 in ((-2.6, .46, .5, .28, .16), (0, .64, .5, .36, .1), (2.4, .36, .7, .26, .24)):
        p.ink(crease(f, f.pip + ds, half, bow, w, .3, v0), "hand-line", .54)
    for ds, half, bow, w in ((-1.6, .28, -1, .26), (1, .36, -.4, .28)):
        p.ink(crease(f, f.mcp + ds, half, bow, w, .4, .3), "hand-line", .34)
    nail(p, f)
    edges(p, f)


def ball(p, f):
    """The muscle between thumb and index finger, the hollow of the web, the hollow at the thumb's root."""
    web = Line(along(FIRST_WEB[3:]))
    inner = web.shifted(-17, step=3)
    soft(p, inner, web, "hand-mid", .46, hump(.9))
    soft(p, web.shifted(-7, step=3), web, "hand-shade", .2, hump(.9))
    p.ink(cluster(inner, web, 8, .14, .86, .66, .34, -.10, .05), "hand-line", .42)
    pool(p, along([(24, 30), (25, 48), (20, 74)]), 7, 8, "hand-light", .55)
    # the hollow at the thumb's root, between two faint cords
    pool(p, along([(15, -9), (21, 0), (27, 9), (34, 19), (40, 28)]), 4.6, 5, "hand-mid", .34)
    pool(p, along([(12, -6), (18, 5), (25, 16), (33, 28)]), 2, 2.2, "hand-light", .5)
    pool(p, along([(25, -6), (29, 2), (33.6, 9), (38, 16)]), 2, 2.2, "hand-light", .56)


def light(p, f):
    pool(p, f.side(.1, 10, 42), 5, 6, "hand-light", .55)
    pool(p, f.side(.0, 47, 70), 5, 6, "hand-light", .72)
    pool(p, f.side(-.1, 77, 90), 4, 5, "hand-light", .5)
    pool(p, f.side(.1, 2, 14), 6, 6.4, "hand-light", .4)
    pool(p, f.side(0, f.mcp - 8, f.mcp + 8), 7, 7, "hand-warm", .13)
    pool(p, f.side(0, f.pip - 8, f.pip + 8), 6.6, 6.6, "hand-warm", .2)
    pool(p, f.side(0, 86, 101), 6.6, 6.6, "hand-warm", .22)
    fade = rise((0, 0), (.25, .5), (.5, 1), (.9, .7), (1, 0))
    soft(p, f.side(.34, 8, 95), f.side(.99, 8, 95), "hand-mid", .58, fade)
    soft(p, f.side(.7, 8, 95), f.side(.99, 8, 95), "hand-shade", .26, fade)
    soft(p, f.side(-.55, 48, 96), f.side(-.99, 48, 96), "hand-mid", .28, hump(.9))
    for s0, s1, n in ((42, 20, 6),):
        p.ink(cluster(f.side(.1, s0, s1), f.side(1, s0, s1), n, .04, .96, .8, .32, .14, .07), "hand-line", .42)


def nail(p, f):
    rows = [(87.8, .40), (88, .16), (89, -.04), (91, -.14), (94, -.18), (97, -.16), (99.4, -.06), (100.8, .14), (101.2, .40), (100.4, .66), (98.6, .82),
            (96, .90), (93, .90), (90.4, .82), (88.6, .64)]
    w = lambda s: f.rightward(min(s, 94))
    pts = [f.at(s, f.centre(s) + min(v * w(s), f.rightward(s) * .9)) for s, v in rows]
    pool(p, [f.on(83, .2), f.on(86, .3), f.on(89, .4)], 5.4, 5.4, "hand-light", .4)
    p.area(pts, "hand-nail")
    pool(p, [f.on(90.4, .18), f.on(94, .14), f.on(98, .2)], 2.2, 1.8, "hand-light", .8)
    p.ink(pen([*pts[6::-1], *pts[:11:-1]], [.05, .2, .24, .3, .28, .05], step=FINE), "hand-line", .6)
    p.ink(pen(pts[5:11], [.05, .16, .2, .05], step=FINE), "hand-line", .45)


def edges(p, f):
    """One stroke: from the wrist up the outer side, over the tip, down through the web and up to the index finger."""
    out = Line([*along(RADIAL), *f.outline(50, 11)[::-1], *first_web()[3:]])
    p.ink(contour(out, .22, .62, side=1, press=lambda t: ramp(t, (0, 0), (.05, .1), (.11, .8), (.2, 1), (.3, 1.15), (.45, 1), (.62, 1), (.72, 1.5), (.82, 1), (.95, .9), (1, .05)), step=FINE * 1.6), "hand-line")
