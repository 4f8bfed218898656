"""The open hand: its four fingers, each a limb that runs flat and without outline under the back of the hand."""
from engrave import Line, contour, pen, ramp
from open_hand_frame import FINGERS
from open_hand_tools import pool, soft
from side_tools import hump, rise

# the webs beside ring and little finger, in their frames: they turn with the finger and slip under its neighbour
WEBS = {"ring": [(20.6, 1.7), (19, 2.9), (18.4, 4.4), (19.2, 6.4), (22, 9.4)],
        "little": [(21.4, 3.0), (19.4, 4.6), (18.7, 6.4), (19.4, 8.8), (23, 12)]}
# where the drawn sides begin: left, right
STARTS = {"index": (0, 1), "middle": (11, 3.5), "ring": (11, 24.5), "little": (9, 25.5)}
FINE = 2.4                       # longest piece of a stroke round a tip or a nail


def draw(p):
    for f in FINGERS:
        p.on("skin", f.name)
        web(p, f)
        p.area([*f.outline(f.mcp), f.on(f.mcp - 3.4, .6), f.on(f.mcp - 5, 0), f.on(f.mcp - 3.4, -.6)], "hand-base")
        knuckle(p, f)
        light(p, f)
        joints(p, f)
        nail(p, f)
        edges(p, f)


def web(p, f):
    if f.name in WEBS:
        top = [f.at(*q) for q in WEBS[f.name]]
        (s, u), q = WEBS[f.name][0], f.mcp
        p.area([f.on(s + 6, .5), f.on(s + 5, 1), *top, f.at(s, u + 9), f.at(q + 2, u + 4), f.at(q, u - 9), f.at(s, u - 8)], "hand-base")


def knuckle(p, f):
    """The head of the hand's bone: a long low mound, a hollow to its right that runs down between the bones."""
    m = f.mcp
    pool(p, [f.on(m - 15, .80), f.on(m - 5, .84), f.on(m + 4, .8), f.on(m + 11, .7)], 2.6 if f.name == "index" else 4.2, 5.2, "hand-mid", .30)
    pool(p, [f.on(m - 14, -.30), f.on(m - 4, -.26), f.on(m + 6, -.22), f.on(m + 14, -.2)], 4.6, 5, "hand-light", .62)
    p.ink(crease(f, m + 1, .42, -.7, .28, .5, -.1), "hand-line", .24)


def light(p, f):
    """One light along each bone, a narrow shade on the right; both are gone before the root."""
    a, b = f.web - 9, f.tip - 6
    pool(p, f.side(-.22, f.web + 1, f.pip - 2), 4.2, 5, "hand-light", .72)
    pool(p, f.side(-.22, f.pip + 4, f.dip - 1), 3.6, 4.2, "hand-light", .65)
    fade = rise((0, 0), (.12, .04), (.4, .75), (.65, 1), (.9, .7), (1, 0))
    soft(p, f.side(.16, a, b), f.side(.99, a, b), "hand-mid", .58, fade)
    soft(p, f.side(.64, a, b), f.side(.99, a, b), "hand-shade", .24, fade)
    soft(p, f.side(-.62, f.web, b), f.side(-.99, f.web, b), "hand-mid", .26, hump(.9))


def crease(f, s, half, bow, weight, skew=0.0, v0=0.0):
    """A fold across the finger: half is its share of the breadth on either side of v0."""
    pts = []
    for k in range(7):
        x = k / 3 - 1
        pts.append(f.on(s + bow * (1 - x * x) + skew * x, v0 + half * x))
    return pen(pts, [.05, weight * .7, weight, weight * .9, .05], step=3)


FOLDS = {  # across the middle joint: along, half breadth, bow, weight, slant, middle
    "index": ((-4.4, .34, -.9, .24, .4, .14), (-2.2, .60, -.6, .34, .3, -.06), (0, .72, -.1, .40, -.2, .02), (2.2, .50, .5, .32, .3, .1)),
    "middle": ((-4.8, .30, -.8, .24, -.3, -.1), (-2.4, .58, -.7, .34, .2, .06), (-.1, .74, -.1, .42, .2, -.02), (1.9, .60, .4, .32, -.2, -.06),
               (4.1, .30, .7, .24, .3, .12)),
    "ring": ((-2.6, .54, -.8, .32, .4, -.08), (-.4, .72, -.2, .40, .1, .04), (1.8, .56, .4, .34, .2, .06), (3.9, .26, .7, .24, 0, -.12)),
    "little": ((-2.3, .48, -.7, .28, .3, .06), (-.2, .68, -.1, .36, .2, -.02), (1.8, .46, .5, .28, .1, -.06))}


def joints(p, f):
    q = f.rightward(f.pip) / 9
    pool(p, f.side(.2, f.pip - 7, f.pip + 6), 5 * q, 7 * q, "hand-mid", .24)
    pool(p, f.side(-.26, f.pip - 5, f.pip + 4), 3 * q, 3.4 * q, "hand-light", .55)
    for ds, half, bow, w, skew, v0 in FOLDS[f.name]:
        p.ink(crease(f, f.pip + ds, half, bow, w, skew, v0), "hand-line", .56)
    for ds, half, bow, w, v0 in ((-1.1, .36, -.4, .24, .1), (.6, .56, 0, .3, -.02)):
        p.ink(crease(f, f.dip + ds, half, bow, w, .15, v0), "hand-line", .46)


# a nail: (share of its length from the root, share of its half breadth)
NAIL = [(0, 0), (.006, .26), (.035, .52), (.09, .74), (.18, .89), (.36, .98), (.60, 1), (.78, .97), (.89, .87), (.955, .68), (.99, .36), (1.0, 0)]


def nail(p, f):
    w = f.rightward(f.dip) * .575
    root, length = f.tip - 2.6 * w, 2.6 * w - 1.4
    put = lambda k, v: f.off(root + length * k, v * w)
    left, right = [put(k, -v) for k, v in NAIL], [put(k, v) for k, v in NAIL]
    pool(p, [put(-.3, -.1), put(-.1, 0), put(.1, .1)], w, w * .9, "hand-light", .45)
    p.area([*left, *right[-2:0:-1]], "hand-nail")
    pool(p, [put(.16, -.32), put(.5, -.36), put(.84, -.34)], w * .34, w * .34, "hand-light", .8)
    rim = [put(.885 + .045 * (1 - v * v), .94 * v) for v in (-1, -.5, 0, .5, 1)]
    p.area([(*rim[0], "c"), *rim[1:-1], (*rim[-1], "c"), *right[9:], *left[-2:8:-1]], "hand-light")
    p.ink(pen([*left[8:0:-1], left[0], *right[1:9]], [.05, .24, .28, .34, .42, .38, .05], step=FINE), "hand-line", .7)
    p.ink(pen([*left[7:], *right[-2:6:-1]], [.05, .18, .26, .05], step=FINE), "hand-line", .55)


def edges(p, f):
    """One stroke from the left root over the tip to the right root, and on into the web where the finger has one."""
    a, b = STARTS[f.name]
    out = Line([*f.outline(a, b), *(f.at(*q) for q in WEBS.get(f.name, ()))])
    end = ((.97, .9), (1, .2)) if f.name in WEBS else ((.9, 1), (1, .05))
    p.ink(contour(out, .27, .88, side=-1, press=lambda t: ramp(t, (0, .05), (.09, .8), (.45, 1), *end), step=FINE * 1.6), "hand-line")
