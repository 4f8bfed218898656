"""Hip from the side: the body modelled as a height over the bed (toward the viewer), and its brightness.

Only the shading of the skin is taken from it; outlines and ink are drawn by hand. Millimetres.
"""
import math

from engrave import Line, ramp
from hip_side_frame import BACK, CREST, FOLD, FRONT, HIP, TA, TU, THIGH_BACK, THIGH_FRONT

LIGHT = (-0.47, -0.56, 0.68)
_n = math.sqrt(sum(c * c for c in LIGHT))
LIGHT = tuple(c / _n for c in LIGHT)


def table(points, axis=0):
    """A fast lookup of the other coordinate along an outline that does not turn back."""
    pts = sorted(Line(points).pts, key=lambda q: q[axis])

    def f(x):
        lo, hi = 0, len(pts) - 1
        if x <= pts[0][axis]:
            return pts[0][1 - axis]
        if x >= pts[-1][axis]:
            return pts[-1][1 - axis]
        while hi - lo > 1:
            m = (lo + hi) // 2
            lo, hi = (m, hi) if pts[m][axis] <= x else (lo, m)
        a, b = pts[lo], pts[hi]
        return a[1 - axis] + (b[1 - axis] - a[1 - axis]) * (x - a[axis]) / (b[axis] - a[axis] or 1)
    return f


def local(q):
    d = (q[0] - HIP[0], q[1] - HIP[1])
    return (d[0] * TA[0] + d[1] * TA[1], d[0] * TU[0] + d[1] * TU[1])


# the trunk goes on under the thigh: its front edge dives behind the crease
_front = table([*FRONT[:-1],  (290, 176), (306, 190), (322, 210), (338, 240), (354, 280), (366, 324)])
_back = table([*BACK[:-1], (372, 330)])
_tf = table([local(q) for q in THIGH_FRONT])
_tb = table([local(q) for q in THIGH_BACK])


def bow(v, p, q):
    """Half section of a form: 1 in the middle, 0 at the edge, steep and straight on beyond it."""
    v = abs(v)
    e = .985
    if v < e:
        return (1 - v ** p) ** (1 / q)
    at = (1 - e ** p) ** (1 / q)
    slope = -(at ** (1 - q)) * (p / q) * e ** (p - 1)
    return at + slope * (v - e)


def hill(x, y, cx, cy, rx, ry, turn=0.0):
    a = math.radians(turn)
    dx, dy = x - cx, y - cy
    u, w = (dx * math.cos(a) + dy * math.sin(a)) / rx, (-dx * math.sin(a) + dy * math.cos(a)) / ry
    return math.exp(-(u * u + w * w))


_h = table([(-40, 168), (10, 164), (44, 154), (72, 139), (92, 129), (108, 126.5), (124, 131), (146, 145), (176, 157), (214, 162), (255, 164), (290, 163), (320, 158), (342, 147), (358, 130), (369, 104)])
_p = table([(-14, 2.1), (60, 2.0), (110, 2.1), (170, 2.4), (230, 2.5), (361, 2.5)])
_low = table([(-60, 86), (0, 84), (80, 79), (200, 66), (320, 54), (420, 48)])
_up = table([(-60, 30), (-20, 62), (20, 77), (80, 84), (200, 80), (320, 68), (420, 56)])


def trunk(x, y):
    f, b = _front(x), _back(x)
    v = (y - (f + b) / 2) / ((b - f) / 2 + .01)
    return _h(x + .16 * (y - 262)) * bow(v, _p(x), 2.0)       # the valley of the waist runs aslant


def thigh(x, y):
    t, s = local((x, y))
    f, b = _tf(t), _tb(t)
    v = (s - (f + b) / 2) / ((f - b) / 2)
    z = _low(t) + _up(t) * bow(v, 2.3, 2.1)
    if t < 50:
        z -= .022 * (50 - t) ** 2
    # flat of the iliotibial band, vastus in front of it, the groove before the hamstrings
    z += 2.6 * math.exp(-((s - 36) / 20) ** 2) * ramp(t, (40, 0), (110, 1)) - 2.6 * math.exp(-((s + 40) / 13) ** 2) * ramp(t, (60, 0), (120, 1))
    return z


_crest = Line(CREST).part(0, .8, 4)


def crest(x, y):
    """Signed distance to the crest (positive on the gluteal side) and place along it."""
    best, res = 1e9, (0, 0)
    for k, (a, b) in enumerate(zip(_crest, _crest[1:])):
        vx, vy = b[0] - a[0], b[1] - a[1]
        u = ((x - a[0]) * vx + (y - a[1]) * vy) / (vx * vx + vy * vy)
        u = min(1.0, max(0.0, u))
        d = math.hypot(x - a[0] - u * vx, y - a[1] - u * vy)
        if d < best:
            best, res = d, ((-d if vx * (y - a[1]) - vy * (x - a[0]) > 0 else d), .8 * (k + u) / (len(_crest) - 1))
    return res


def smax(a, b, k):
    h = max(k - abs(a - b), 0) / k
    return max(a, b) + h * h * k / 4


def height(x, y):
    """The soft body: what is left of it on a fat person."""
    z = smax(trunk(x, y), thigh(x, y), ramp(y, (160, 12), (205, 40), (270, 46), (300, 26), (335, 10)))
    z += 11 * hill(x, y, 268, 334, 74, 42, -6)             # gluteal mass
    z += 8.0 * hill(x, y, 256, 212, 62, 18, -8)            # tensor
    z += 4.0 * hill(x, y, 206, 286, 46, 28, 20)            # gluteus medius behind
    z -= 7.0 * hill(x, y, 222, 186, 46, 13, 20)            # groin before it
    return z + 8.0 * hill(x, y, 138, 178, 76, 22, 5)       # lower belly


def bony(x, y):
    """What bone and lean muscle add: it fades with fat."""
    z = 6.5 * hill(x, y, 300, 268, 27, 23, -25)            # trochanter, a low swell
    dx, dy = x - 300, y - 268
    r = math.hypot(dx, dy) or 1                            # the hollow lies behind it like a crescent
    z -= 6.5 * math.exp(-((r - 38) / 15) ** 2) * max(0.0, (.42 * dx + .91 * dy) / r) ** 1.3
    z -= 3.4 * hill(x, y, 250, 252, 52, 18, -4)            # between tensor and the gluteus behind
    z += 8.0 * hill(x, y, 198, 205, 14, 11, -20)           # spine of the ilium
    if 60 < x < 280 and 140 < y < 380:
        d, t = crest(x, y)
        w = ramp(t, (.02, 0), (.22, 1), (.38, 1), (.6, .6), (.8, 0))
        z += w * (7.0 * math.exp(-((d - 1) / 15) ** 2) - 2.0 * math.exp(-((d - 38) / 22) ** 2) - 3.6 * math.exp(-((d + 30) / 22) ** 2))
    return z


def lean(x, y):
    return height(x, y) + bony(x, y)


FLAT = .66                       # an engraver's relief: flatter than life


def brightness(q, f=height, flat=FLAT):
    x, y = q
    e = 1.2
    gx = flat * (f(x + e, y) - f(x - e, y)) / (2 * e)
    gy = flat * (f(x, y + e) - f(x, y - e)) / (2 * e)
    return .25 + .75 * (-gx * LIGHT[0] - gy * LIGHT[1] + LIGHT[2]) / math.sqrt(gx * gx + gy * gy + 1)


def fold(q):
    """Darkness of the fold under the buttock, on the thigh's side of it."""
    d = min(math.hypot(q[0] - a[0], q[1] - a[1]) for a in _fold)
    t, s = local(q)
    return .42 * math.exp(-(d / 9) ** 2) if (q[0] > 362 or t > 46) else 0


_fold = Line(FOLD[2:]).part(0, .9, 3)


# the silhouette of all bare skin, down to where the sheet lies
_cut = lambda pts, a, b: Line(pts).part(a, b, 4)
_c = lambda pts: [(*pts[0], "c"), *pts[1:-1], (*pts[-1], "c")]
OUTLINE = [*_c(FRONT[:-2]), *_c(_cut(THIGH_FRONT, .04, .8)), *_c(_cut(THIGH_BACK, .75, .085)), *_c(BACK[::-1])]
