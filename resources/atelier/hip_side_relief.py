"""From a modelled height to soft shades: contour areas of a brightness, cut at the silhouette, piled up faintly.

A field is a function of (x, y). The areas it gives are closed paths like any other; nested ones at low opacity make
the shade of a round form without a gradient.
"""
import math

from engrave import Line, area, dist, mix, unit
from hip_side_tools import steps

STEP = 3.0


class Silhouette:
    """Signed distance to a closed outline, positive inside; exact near the line, clamped to REACH away from it."""
    REACH = 9.0

    def __init__(self, points):
        ln = Line(list(points) + [points[0]])
        n = int(ln.length / 3)
        self.pts = [ln(k / n) for k in range(n)]
        self.cells = {}
        for a, b in zip(self.pts, self.pts[1:] + self.pts[:1]):
            for i in range(int(min(a[0], b[0]) // 10) - 1, int(max(a[0], b[0]) // 10) + 2):
                for j in range(int(min(a[1], b[1]) // 10) - 1, int(max(a[1], b[1]) // 10) + 2):
                    self.cells.setdefault((i, j), []).append((a, b))

    def inside(self, p):
        odd = False
        for a, b in zip(self.pts, self.pts[1:] + self.pts[:1]):
            if (a[1] > p[1]) != (b[1] > p[1]) and p[0] < a[0] + (p[1] - a[1]) / (b[1] - a[1]) * (b[0] - a[0]):
                odd = not odd
        return odd

    def __call__(self, p, inside=None):
        best = self.REACH
        for a, b in self.cells.get((int(p[0] // 10), int(p[1] // 10)), ()):
            vx, vy = b[0] - a[0], b[1] - a[1]
            u = min(1.0, max(0.0, ((p[0] - a[0]) * vx + (p[1] - a[1]) * vy) / (vx * vx + vy * vy or 1)))
            best = min(best, math.hypot(p[0] - a[0] - u * vx, p[1] - a[1] - u * vy))
        return best if (self.inside(p) if inside is None else inside) else -best


class Grid:
    """Values at the nodes of a square net over a box, and the closed contours of them."""

    def __init__(self, box, step=STEP):
        self.x0, self.y0, x1, y1 = box
        self.step = step
        self.nx, self.ny = int((x1 - self.x0) / step) + 1, int((y1 - self.y0) / step) + 1

    def node(self, i, j):
        return (self.x0 + i * self.step, self.y0 + j * self.step)

    def sample(self, f):
        return [[f(self.node(i, j)) for i in range(self.nx)] for j in range(self.ny)]

    def blurred(self, v, times=1):
        """Smoothed a little, so that contour lines do not wobble."""
        for _ in range(times):
            for rows in (v, None):
                if rows is None:
                    v = [list(c) for c in zip(*v)]
                v = [[r[0], *((a + 2 * b + c) / 4 for a, b, c in zip(r, r[1:], r[2:])), r[-1]] for r in v]
                if rows is None:
                    v = [list(c) for c in zip(*v)]
        return v

    def contours(self, v):
        """Closed rings round the nodes where v > 0 ."""
        v = [[-1.0] * self.nx, *([-1.0, *r[1:-1], -1.0] for r in v[1:-1]), [-1.0] * self.nx]      # nothing runs off the net
        step = {}
        for j in range(self.ny - 1):
            for i in range(self.nx - 1):
                c = ((i, j), (i + 1, j), (i + 1, j + 1), (i, j + 1))
                s = [v[q[1]][q[0]] > 0 for q in c]
                if all(s) or not any(s):
                    continue
                cuts = [k for k in range(4) if s[k] != s[(k + 1) % 4]]
                ins = [k for k in cuts if s[k]]           # leaving the inside along this side
                for k in ins:
                    nxt = next(m for m in (cuts[(cuts.index(k) + d) % len(cuts)] for d in range(1, len(cuts) + 1)) if not s[m])
                    a, b = (c[k], c[(k + 1) % 4]), (c[nxt], c[(nxt + 1) % 4])
                    step[frozenset(a)] = frozenset(b)
        rings = []
        while step:
            key, nxt = step.popitem()
            ring = [key]
            while nxt != key:
                ring.append(nxt)
                nxt = step.pop(nxt)
            rings.append([self._cut(v, e) for e in ring])
        return rings

    def _cut(self, v, edge):
        a, b = sorted(edge)
        va, vb = v[a[1]][a[0]], v[b[1]][b[0]]
        return mix(self.node(*a), self.node(*b), va / (va - vb))


def tidy(ring, gap=8.0):
    """A ring as few points: corners kept, the rest evenly spaced."""
    n = len(ring)
    turn = []
    for k in range(n):
        a, b, c = ring[(k - 3) % n], ring[k], ring[(k + 3) % n]
        u, w = unit((b[0] - a[0], b[1] - a[1])), unit((c[0] - b[0], c[1] - b[1]))
        turn.append(u[0] * w[0] + u[1] * w[1])
    sharp = [k for k in range(n) if turn[k] < .45 and turn[k] == min(turn[(k + d) % n] for d in range(-4, 5))]
    first = sharp[0] if sharp else 0
    res, last = [], None
    for d in range(n):
        k = (first + d) % n
        q = ring[k]
        if k in sharp:
            if last and len(res) > 1 and len(res[-1]) == 2 and dist(last, q) < gap * .5:
                res.pop()
            res.append((*q, "c"))
            last = q
        elif last is None or dist(last, q) >= gap:
            res.append(q)
            last = q
    return res


def size(ring):
    return abs(sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(ring, ring[1:] + ring[:1]))) / 2


def tint(p, grid, edge, amount, tone, total, least=60.0, o=None, cue=None):
    """Pile areas of a tone where amount (a net of 0..1) rises: total deep where it is 1, nothing where it is 0."""
    o, n = (o, max(2, round(math.log(1 - total) / math.log(1 - o)))) if o else steps(tone, total)
    for k in range(n):
        level = (k + .5) / n
        v = [[min((a - level) * 40, e - .3) for a, e in zip(ra, re)] for ra, re in zip(amount, edge)]
        for ring in grid.contours(v):
            if size(ring) >= least:
                q = tidy(ring)
                if len(q) >= 4:
                    p.area(area(q), tone, o, cue)
