"""Curves: smooth lines through hand-placed points, as short cubic pieces.

A point is (x, y) in millimetres of the plate; (x, y, "c") marks a corner.
A curve is a list of cubics, each (p0, c1, c2, p1). Nothing here knows about SVG.
"""
import math
from bisect import bisect_right

PIECE = 9.0                      # no cubic piece longer than this (contract: 10 mm)


def add(a, b, k=1.0):
    """a + k*b"""
    return (a[0] + k * b[0], a[1] + k * b[1])


def sub(a, b):
    return (a[0] - b[0], a[1] - b[1])


def mix(a, b, t):
    return (a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t)


def dist(a, b):
    return math.hypot(a[0] - b[0], a[1] - b[1])


def unit(v):
    n = math.hypot(*v) or 1.0
    return (v[0] / n, v[1] / n)


def _tangents(pts, closed):
    """One tangent a point: chord-weighted, so uneven spacing makes no loops."""
    n, out = len(pts), []
    for i in range(n):
        if closed or 0 < i < n - 1:
            a, b, c = pts[i - 1], pts[i], pts[(i + 1) % n]
            h0, h1 = dist(a, b) or 1e-6, dist(b, c) or 1e-6
            out.append(tuple(((b[k] - a[k]) / h0 * h1 + (c[k] - b[k]) / h1 * h0) / (h0 + h1)
                             for k in (0, 1)))
        elif n == 2:
            out.append(unit(sub(pts[1], pts[0])))
        else:
            out.append(None)
    if not closed and n > 2:      # free ends: mirror the neighbour's tangent about the chord
        for end, near in ((0, 1), (n - 1, n - 2)):
            d = unit(sub(pts[near], pts[end])) if end == 0 else unit(sub(pts[end], pts[near]))
            m = out[near]
            k = 2 * (m[0] * d[0] + m[1] * d[1])
            out[end] = (k * d[0] - m[0], k * d[1] - m[1])
    return out


def _run(pts, closed=False):
    tan = _tangents(pts, closed)
    res = []
    for i in range(len(pts) if closed else len(pts) - 1):
        j = (i + 1) % len(pts)
        h = dist(pts[i], pts[j]) / 3
        res.append((pts[i], add(pts[i], tan[i], h), add(pts[j], tan[j], -h), pts[j]))
    return res


def smooth(points, closed=False):
    """A curve through the points; smooth but at corners."""
    pts = [p[:2] for p in points]
    corners = [i for i, p in enumerate(points) if len(p) > 2]
    if closed:
        if not corners:
            return _run(pts, True)
        k = corners[0]
        points = list(points[k:]) + list(points[:k + 1])
        return smooth(points)
    cuts = sorted({0, len(pts) - 1, *corners})
    res = []
    for a, b in zip(cuts, cuts[1:]):
        res += _run(pts[a:b + 1])
    return res


def at_cubic(c, t):
    u = 1 - t
    k = (u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t)
    return (sum(k[i] * c[i][0] for i in range(4)), sum(k[i] * c[i][1] for i in range(4)))


def halves(c, t=0.5):
    p0, p1, p2, p3 = c
    a, b, d = mix(p0, p1, t), mix(p1, p2, t), mix(p2, p3, t)
    e, f = mix(a, b, t), mix(b, d, t)
    g = mix(e, f, t)
    return (p0, a, e, g), (g, f, d, p3)


def short(curve, limit=PIECE):
    """The same curve in pieces no longer than limit."""
    res = []
    for c in curve:
        length = dist(c[0], c[1]) + dist(c[1], c[2]) + dist(c[2], c[3])
        n = max(1, math.ceil(length / limit))
        for k in range(n, 1, -1):
            head, c = halves(c, 1.0 / k)
            res.append(head)
        res.append(c)
    return res


class Line:
    """A curve measured by arc length: line(t), t 0..1; cut, shift, reverse."""

    def __init__(self, points, closed=False):
        curve = smooth(points, closed)
        self.pts = [curve[0][0]]
        for c in curve:
            self.pts += [at_cubic(c, k / 12) for k in range(1, 13)]
        self.cum = [0.0]
        for a, b in zip(self.pts, self.pts[1:]):
            self.cum.append(self.cum[-1] + dist(a, b))
        self.length = self.cum[-1]

    def __call__(self, t):
        s = min(max(t, 0.0), 1.0) * self.length
        i = min(max(bisect_right(self.cum, s) - 1, 0), len(self.pts) - 2)
        h = self.cum[i + 1] - self.cum[i] or 1e-9
        return mix(self.pts[i], self.pts[i + 1], (s - self.cum[i]) / h)

    def normal(self, t):
        """Unit normal to the right of travel as seen on the page (y down)."""
        a, b = self(max(0, t - 0.004)), self(min(1, t + 0.004))
        d = unit(sub(b, a))
        return (-d[1], d[0])

    def part(self, t0, t1, step=6.0):
        """Points along the part t0..t1, for use in further curves."""
        n = max(3, math.ceil(abs(t1 - t0) * self.length / step))
        return [self(t0 + (t1 - t0) * k / n) for k in range(n + 1)]

    def shifted(self, amount, t0=0.0, t1=1.0, step=6.0):
        """Points moved sideways along the normal by amount (number or function of t)."""
        f = amount if callable(amount) else (lambda t: amount)
        n = max(3, math.ceil(abs(t1 - t0) * self.length / step))
        ts = [t0 + (t1 - t0) * k / n for k in range(n + 1)]
        return [add(self(t), self.normal(t), f(t)) for t in ts]

    def at_y(self, y, last=False):
        """Where the line crosses the height y (first or last crossing)."""
        hits = self._hits(lambda p: p[1] - y)
        return hits[-1 if last else 0]

    def crossings(self, origin, across):
        """Signed distances along across at which the line meets that perpendicular."""
        n = (-across[1], across[0])
        pts = self._hits(lambda p: (p[0] - origin[0]) * n[0] + (p[1] - origin[1]) * n[1])
        return [(p[0] - origin[0]) * across[0] + (p[1] - origin[1]) * across[1] for p in pts]

    def _hits(self, f):
        res = []
        for a, b in zip(self.pts, self.pts[1:]):
            fa, fb = f(a), f(b)
            if (fa <= 0) != (fb <= 0):
                res.append(mix(a, b, fa / (fa - fb)))
        if not res:
            raise ValueError("the line does not reach there")
        return res


def line(points, closed=False):
    return points if isinstance(points, Line) else Line(points, closed)


def between(a, b, t):
    """The line t of the way from line a to line b (both run the same way)."""
    n = max(4, math.ceil(max(a.length, b.length) / 6))
    return Line([mix(a(k / n), b(k / n), t) for k in range(n + 1)])
