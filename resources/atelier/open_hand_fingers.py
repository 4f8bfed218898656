"""The open hand: its four fingers, each a limb that runs flat and without outline under the back of the hand."""
from engrave import Line, contour, pen, ramp
from open_hand_frame import FINGERS, LITTLE_BEND, along, at
from open_hand_tools import contact, pool, soft
from side_tools import hump, rise

# the webs beside ring and little finger, in their frames: they turn with the finger and slip under its neighbour
WEBS = {"ring": [(20.6, 1.7), (19, 2.9), (18.4, 4.4), (19.2, 6.4), (22, 9.4)],
        "little": [(21.4, 3.0), (19.4, 4.6), (18.7, 6.4), (19.4, 8.8), (23, 12)]}
# where the drawn sides begin: left, right
STARTS = {"index": (4.5, 1), "middle": (16, 8.5), "ring": (22, 24.5), "little": (24, 25.5)}
FINE = 2.4                       # longest piece of a stroke round a tip or a nail


# how the light finds the knuckles: index and middle first
SHINE = {"index": (.6, 11, 15), "middle": (.64, 13, 14), "ring": (.46, 10, 12), "little": (.3, 8, 10)}


def draw(p):
    for f in FINGERS:
        p.on("skin", f.name)
        contact(p, f.outline(f.web + 7, f.web + 7), -1, 2.9)
        web(p, f)
        p.area([*f.outline(f.mcp), f.on(f.mcp - 3.4, .6), f.on(f.mcp - 5, 0), f.on(f.mcp - 3.4, -.6)], "hand-base")
        if f.name == "little":
            p.area([at(-51, 69.4), *along(LITTLE_BEND), *f.side(-1, 22, 32), f.on(30, 0), f.on(10, .2), at(-46, 70)], "hand-base")
        knuckle(p, f)
        blood(p, f)
        light(p, f)
        joints(p, f)
        nail(p, f)
        edges(p, f)


def web(p, f):
    if f.name in WEBS:
        top = [f.at(*q) for q in WEBS[f.name]]
        (s, u), q = WEBS[f.name][0], f.mcp
        p.area([f.on(s + 6, .5), f.on(s + 5, 1), *top, f.at(s, u + 9), f.at(q + 2, u + 4), f.at(q, u - 9), f.at(s, u - 8)], "hand-base")


def blood(p, f, knuckle=True):
    """A little red where the skin is thin: over the joints, round the nail, in the web."""
    if knuckle:
        pool(p, f.side(0, f.mcp - 9, f.mcp + 10), 9, 9, "hand-warm", .1)
    pool(p, f.side(0, f.pip - 9, f.pip + 8), 6.4, 6.4, "hand-warm", .22)
    pool(p, f.side(0, f.tip - 15, f.tip - 1.5), 6.4, 6.4, "hand-warm", .22)


def knuckle(p, f):
    """The head of the hand's bone: a long low mound; the shade beside it runs on between the bones into the web."""
    m = f.mcp
    depth, back, fore = SHINE[f.name]
    if f.name != "index":
        pool(p, [f.on(m - 20, .96), f.on(m - 6, .95), f.on(m + 6, .9), f.on(f.web + 1, .86)], 2.8, 4.4, "hand-mid", .27)
    pool(p, [f.on(m - back, -.30), f.on(m - 3, -.24), f.on(m + 5, -.22), f.on(m + fore, -.2)], 4.2, 4.6, "hand-light", depth)
    p.ink(crease(f, m + 1, .34, .6, .24, .5, -.1), "hand-line", .22)


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
    "index": ((-2.8, .40, .5, .26, .3, .1), (-.3, .66, .4, .36, -.2, -.02), (2.1, .36, .6, .26, .3, .16)),
    "middle": ((-3.0, .44, .5, .28, -.3, -.1), (-.5, .70, .5, .38, .2, .02), (1.8, .50, .6, .30, -.2, .1), (4.0, .24, .6, .2, .2, -.1)),
    "ring": ((-2.4, .34, .5, .26, .4, -.12), (0, .64, .4, .34, .1, .04), (2.2, .36, .6, .26, .2, .1)),
    "little": ((-1.0, .36, .5, .26, .3, .1), (.9, .56, .5, .3, .1, -.04))}


def joints(p, f):
    q = f.rightward(f.pip) / 9
    pool(p, f.side(.2, f.pip - 7, f.pip + 6), 5 * q, 7 * q, "hand-mid", .24)
    pool(p, f.side(-.26, f.pip - 5, f.pip + 4), 3 * q, 3.4 * q, "hand-light", .55)
    for ds, half, bow, w, skew, v0 in FOLDS[f.name]:
        p.ink(crease(f, f.pip + ds, half, bow, w, skew, v0), "hand-line", .56)
    for ds, half, bow, w, v0 in ((-1.2, .34, .7, .22, .1), (.5, .54, .8, .28, -.02)):
        p.ink(crease(f, f.dip + ds, half, bow, w, .15, v0), "hand-line", .46)


# a nail: (share of its length from the root, share of its half breadth)
NAIL = [(0, 0), (.006, .26), (.035, .52), (.09, .74), (.18, .89), (.36, .98), (.60, 1), (.78, .97), (.89, .87), (.955, .68), (.99, .36), (1.0, 0)]


def nail(p, f):
    w = f.rightward(f.dip) * (.5 if f.name == "little" else .56)
    root, length = f.tip - 2.45 * w, 2.45 * w - 1.9      # the outer joint bends a little: the nail tips away from us
    put = lambda k, v: f.off(root + length * k, v * w)
    left, right = [put(k, -v) for k, v in NAIL], [put(k, v) for k, v in NAIL]
    pool(p, [put(-.3, -.1), put(-.1, 0), put(.1, .1)], w, w * .9, "hand-light", .45)
    p.area([*left, *right[-2:0:-1]], "hand-nail")
    pool(p, [put(.12, -.34), put(.5, -.38), put(.88, -.36)], w * .2, w * .24, "hand-light", .8)
    rim = [put(.885 + .045 * (1 - v * v), .94 * v) for v in (-1, -.5, 0, .5, 1)]
    p.area([(*rim[0], "c"), *rim[1:-1], (*rim[-1], "c"), *right[9:], *left[-2:8:-1]], "hand-light")
    p.ink(pen([*left[8:0:-1], left[0], *right[1:9]], [.05, .16, .2, .24, .3, .26, .05], step=FINE), "hand-line", .6)
    p.ink(pen([*left[7:], *right[-2:6:-1]], [.05, .14, .2, .05], step=FINE), "hand-line", .5)


def edges(p, f):
    """One stroke from the left root over the tip to the right root, and on into the web where the finger has one."""
    a, b = STARTS[f.name]
    bend = along(LITTLE_BEND) if f.name == "little" else []
    out = Line([*bend, *f.outline(a, b), *(f.at(*q) for q in WEBS.get(f.name, ()))])
    end = ((.97, .9), (1, .2)) if f.name in WEBS else ((.92, 1), (1, .05))
    p.ink(contour(out, .22, .6, side=-1, press=lambda t: ramp(t, (0, .05), (.045, .8), (.45, 1), *end), step=FINE * 1.6), "hand-line")
