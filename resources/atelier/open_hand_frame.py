"""The open hand: where its fingers hang and how broad they are; hidden names.

Left hand seen from the back, fingers up. Palm points are written (x, y): millimetres to the viewer's right of
and above the middle of the wrist crease. Finger points are written (s, u): millimetres along the finger from its
joint, and across it to the viewer's right. A finger's body leans in its frame: index and middle finger both turn
about the fork between them, so their roots stand aside and only the tips come near the axes. They stay a little
beside them (the named fingertips lie on them), so that the closed fingers lie side by side and do not cross.
"""
import math
from bisect import bisect_right

SIZE, ORIGIN = (232, 226), (126, 194)
# pale and all but neutral, so that it stands off from every skin; blood shows at knuckles, tips and webs, the shade is cool
TONES = {"hand-light": "#f8efe9", "hand-base": "#e8ddd5", "hand-mid": "#d8c3b8", "hand-shade": "#a3988f",
         "hand-line": "#372a28", "hand-nail": "#f3e2db", "hand-warm": "#dfac9d"}
FORK = (0, 108.3)


def at(x, y):
    return (ORIGIN[0] + x, ORIGIN[1] - y)


def along(points):
    return [(*at(*q[:2]), *q[2:]) for q in points]


def spline(pairs):
    """A smooth function of one number through (s, value) pairs."""
    xs, ys = [p[0] for p in pairs], [p[1] for p in pairs]
    n = len(pairs)
    slope = [(b - a) / (d - c) for a, b, c, d in zip(ys, ys[1:], xs, xs[1:])]
    tan = [slope[0]] + [(slope[i - 1] * (xs[i + 1] - xs[i]) + slope[i] * (xs[i] - xs[i - 1])) / (xs[i + 1] - xs[i - 1])
                        for i in range(1, n - 1)] + [slope[-1]]

    def f(x):
        i = min(max(bisect_right(xs, x) - 1, 0), n - 2)
        h = xs[i + 1] - xs[i]
        t = min(max((x - xs[i]) / h, 0), 1)
        a, b = t * t * (3 - 2 * t), t * (1 - t)
        return ys[i] + (ys[i + 1] - ys[i]) * a + h * b * ((1 - t) * tan[i] - t * tan[i + 1])
    return f


class Finger:
    """One finger: its frame, its middle line and its two sides."""

    def __init__(self, name, joint, angle, centre, left, right, marks, origin=ORIGIN):
        self.name, self.joint, self.angle, self.origin = name, joint, angle, origin
        a = math.radians(angle - 180)
        self.way, self.right = (-math.sin(a), math.cos(a)), (math.cos(a), math.sin(a))
        self.centre, self.left, self.rightward = spline(centre), spline(left), spline(right)
        self.mcp, self.web, self.pip, self.dip, self.tip = marks

    def at(self, s, u=0):
        """A point of the page, by distances along and across the frame."""
        return (self.origin[0] + self.joint[0] + s * self.way[0] + u * self.right[0],
                self.origin[1] - self.joint[1] - s * self.way[1] - u * self.right[1])

    def off(self, s, w):
        """A point of the page w millimetres beside the body's middle line, square to it."""
        d = self.centre(s + .5) - self.centre(s - .5)
        w /= math.hypot(1, d)
        return self.at(s - d * w, self.centre(s) + w)

    def on(self, s, v):
        """A point of the page by its share v of the breadth: -1 left side, 0 middle, 1 right side."""
        return self.off(s, v * (self.rightward(s) if v > 0 else self.left(s)))

    def side(self, v, a, b, step=2.0):
        """Points along the finger at the share v of its breadth."""
        n = max(3, math.ceil(abs(b - a) / step))
        return [self.on(a + (b - a) * k / n, v) for k in range(n + 1)]

    def outline(self, a, b=None):
        """Round the finger from s = a on its left, over the tip, back to b (or a) on its right."""
        cap = [self.tip - d for d in CAP]
        return (self.side(-1, a, cap[0])[:-1] + [self.on(s, -1) for s in cap] + [self.on(self.tip, 0)]
                + [self.on(s, 1) for s in cap[::-1]] + self.side(1, cap[0], a if b is None else b)[1:])


CAP = (10, 7.6, 5.6, 3.9, 2.5, 1.5, .8, .32, .08)


def arch(half, tip, power=2.2, depth=10):
    """Half breadths of a rounded end."""
    return [(tip - d, half * (1 - (1 - d / depth) ** power) ** (1 / power)) for d in (*(c for c in CAP if c < depth), 0)]


def body(half, mcp, web, pip, dip, tip, slender=1.0):
    """Half breadths of a finger of this girth; the joints stand out a little, the tip is a soft arch. slender: how much of that."""
    mid, low, k = (pip + dip) / 2, (web + pip) / 2, (dip - pip) / 24
    rows = [(mcp - 4, .80), (mcp + 4, .98), (web, 1.05), (low - 1, .965), (pip - 7 * k, .97), (pip - 2.4 * k, 1.014), (pip + 1.6 * k, 1.012), (pip + 7 * k, .945),
            (mid, .90), (dip - 4 * k, .885), (dip, .90), (dip + 4 * k, .87), (tip - 10, .82)]
    slim = lambda f: half * (1 - slender * (1 - f))
    return [(s, slim(f)) for s, f in rows] + arch(slim(.82), tip)


def finger(name, joint, angle, half, marks, centre):
    rows = body(half, *marks)
    return Finger(name, joint, angle, centre, rows, rows, marks)


INDEX = finger("index", FORK, 180, 9.3, (-15.4, 2, 28.5, 52, 72.2),
               [(-20, 13.2), (-15.4, 12.3), (2, 10.2), (28.5, 7.4), (52, 4.4), (63, 2.8), (72.2, 1.8)])
MIDDLE = finger("middle", FORK, 220, 9.5, (-4.8, 9, 38, 65, 88),
                [(-10.5, -17.2), (-4.8, -16.1), (9, -13.6), (38, -9.2), (65, -5), (77, -3.1), (88, -1.8)])
RING = finger("ring", (-18, 96), 228, 8.9, (2, 18, 42, 66.5, 86),
              [(-2, -13.4), (2, -12.6), (18, -9.2), (42, -3.6), (66.5, 2.2), (77, 4), (86, 5.2)])
LITTLE = finger("little", (-36, 84), 238, 8.0, (5, 19, 36.5, 54.5, 72),
                [(1, -10.4), (5, -9.4), (19, -6.3), (36.5, -2), (54.5, 2.4), (64, 4.2), (72, 5.2)])
FINGERS = (LITTLE, RING, MIDDLE, INDEX)

# the thumb is seen half from its side: its two outlines are unlike
THUMB = Finger("thumb", (25, 17), 140,
               [(-20, -3), (0, 0), (24, 1.6), (44, 3.2), (60, 3.2), (75, 2.4), (88, 2), (103, 2.6)],
               [(-20, 8), (-6, 9), (6, 9.6), (18, 9.4), (30, 9.4), (38, 10.4), (45, 11), (52, 10.2), (60, 9.2), (68, 9.5), (75, 9.9),
                (82, 9.6), (88, 9.4), (92, 8.9), *arch(8.7, 103, 2.0, 9)],
               [(-20, 9), (-8, 9.6), (0, 11.6), (6, 12.4), (12, 11.9), (24, 10.1), (36, 10.8), (44, 11.6), (52, 10.7), (60, 9.5), (68, 9.8), (75, 10.3), (82, 9.5),
                (88, 8.8), (92, 8), *arch(7.6, 103, 2.1, 9)],
               (44, 52, 74, 84, 103))

# outlines of the palm
ULNAR = [(-30, -30), (-29, -20), (-29, -11), (-29.4, -3), (-32, 5), (-37.8, 14), (-44.2, 26), (-49, 40), (-51.8, 53), (-53.6, 63),
         (-54.6, 69), (-55.8, 74), (-56.9, 78.8), (-56.9, 84)]
# the little finger's outer side comes out of the hand's in one bend that goes with the finger
LITTLE_BEND = [(-54.4, 73.6), (-57.6, 77.8)]
RADIAL = [(29, -30), (28.4, -20), (28.2, -12), (28.8, -5), (30.8, 1), (33.8, 5.4), (36.6, 9.2)]
FIRST_WEB = [(61, 65), (56.6, 63), (52.4, 60.2), (48, 58.2), (43.6, 57.6), (39, 59.6), (34.4, 65), (30.2, 72.6), (26.6, 81), (23.8, 89)]
WEB = [(4.5, 122), (2.6, 115.4), (.6, 110.8), (-2, 108.3), (-5, 108.8), (-8.4, 111.6), (-12.4, 116)]


def names(p):
    p.hang("palm", "palm", at(0, 0), 180)
    p.point("palm", "landmark.fork", at(*FORK))
    for name, y, half in (("wrist", 0, 28), ("palm", 45, 40), ("knuckles", 88, 41)):
        p.level("palm", name, at(0, y), (-1, 0), -half, 8 - half, half - 8, half)
    for f in (*FINGERS, THUMB):
        joint, across = f.at(0), (-f.right[0], f.right[1])
        p.hang(f.name, f.name, joint, f.angle, "palm")
        p.point(f.name, f"landmark.{f.name}-tip", f.at(f.tip) if f in (INDEX, MIDDLE) else f.on(f.tip, 0))
        for tag, s in (("base", (f.mcp + f.web) / 2), ("mid", (f.pip + f.dip) / 2), ("tip", f.tip - 2)):
            p.level(f.name, f"{f.name}-{tag}", f.at(max(s, 1)), across, -9, -4.5, 4.5, 9)
