"""The laid hand: the fingers curled into the palm, of which knuckle and first segment are seen, foreshortened."""
from engrave import Line, contour, pen, ramp
from laid_fingers_frame import CURLED, LITTLE_KNUCKLE, RING_KNUCKLE, ULNAR, along, at, curled
from open_hand_tools import pool, soft
from side_tools import hump, rise

KNUCKLES = {"ring": RING_KNUCKLE, "little": LITTLE_KNUCKLE}
JOINTS = {"ring": (-17.4, 98.2), "little": (-34, 88.4)}


def bases(p, count):
    for name in curled(count):
        p.area(along(CURLED[name]), "hand-base")


def draw(p, count):
    for name in curled(count):
        segment(p, name)


def segment(p, name):
    """Lit along its back, darker at its right and where it turns over at the middle joint."""
    pts = along(CURLED[name])
    (jx, jy), (kx, ky) = JOINTS[name], KNUCKLES[name]
    put = lambda t, u=0: at(kx + (jx - kx) * t + u, ky + (jy - ky) * t)
    n = len(pts)
    left, right = pts[:5], pts[n - 1:n - 6:-1]
    middle = [put(t, 1) for t in (0, .3, .6, .85)]
    fade = rise((0, 0), (.36, 0), (.66, 1), (1, .6))
    pool(p, [put(.2), put(.6), put(1.2)], 6.4, 9, "hand-mid", .44)
    pool(p, [put(.05, -2), put(.4, -2), put(.75, -1.6)], 3.6, 4, "hand-light", .6)
    soft(p, middle, right, "hand-mid", .62, fade)
    soft(p, Line(right).shifted(-5, step=2), right, "hand-shade", .36, fade)
    soft(p, Line(left).shifted(4.4, step=2), left, "hand-mid", .34, hump(.8))
    over = Line(pts[3:10])
    soft(p, over.shifted(5.4, step=2), over, "hand-mid", .5, hump(.7))
    soft(p, over.shifted(2.6, step=2), over, "hand-shade", .22, hump(.7))
    pool(p, [put(.84, -5.4), put(.96), put(.86, 5.4)], 4, 4, "hand-warm", .26)
    pool(p, [put(.84, -3.6), put(.94, -.8), put(.88, 2)], 2.6, 2.6, "hand-light", .5)
    for t, u, half, w in ((.66, -.2, 4.6, .24), (.86, .2, 3.6, .2)):
        p.ink(pen([put(t + .07 * (1 - k * k), u + half * k) for k in (-1, -.6, -.2, .2, .6, 1)], [.05, w * .7, w, w * .9, .05], step=3), "hand-line", .36)
    out = [*along(ULNAR[1:]), *pts[1:9]] if name == "little" else pts[1:9]
    start = ((0, .05), (.13, .9)) if name == "little" else ((0, .1), (.2, .9))
    p.ink(contour(Line(out), .22, .6, side=-1, press=lambda t: ramp(t, *start, (.9, .95), (1, .2)), step=4), "hand-line")
