"""Hip from the side: the sheet over both legs, modelled as a height; its shade, and the lines of its folds."""
import math

from engrave import Line, ramp
from hip_side_frame import th

# a fold: its line, its depth, its width
RAISED = [th(120, 8), th(200, 10), th(280, 8), th(340, 2), (628, 106), (660, 108), (692, 116), (724, 126), (760, 136), (820, 152), (900, 172)]
OTHER_LEG = [(340, 326), (400, 330), (470, 330), (540, 322), (600, 312), (660, 306), (740, 304), (820, 306), (900, 310)]
FOLDS = [([(446, 262), (470, 276), (500, 279), (536, 262), (572, 232)], 9, 9),
         ([(424, 294), (450, 306), (484, 306), (526, 292), (572, 276), (620, 268)], 7, 10),
         ([(626, 128), (604, 168), (584, 212), (572, 256), (566, 300)], 9, 10),
         ([(650, 132), (642, 180), (640, 226), (648, 284)], 8, 10),
         ([(676, 140), (684, 184), (700, 226)], 6, 9),
         ([(640, 60), (606, 74), (580, 98), (560, 130)], 5, 9),
         ([(632, 44), (592, 56), (552, 76), (520, 100)], 4, 8),
         ([(468, 92), (476, 120), (482, 150), (482, 184)], 3.5, 8),
         ([(402, 352), (430, 366), (470, 368), (520, 358), (570, 352)], 5, 8),
         ([(430, 398), (480, 398), (540, 390), (600, 392), (660, 400)], 4, 9),
         ([(470, 420), (530, 420), (590, 424), (640, 432)], 3.5, 8),
         ([(600, 330), (624, 356), (640, 384), (646, 410)], 5, 9)]
_raised, _other = Line(RAISED).part(0, 1, 8), Line(OTHER_LEG).part(0, 1, 8)


def nearest(pts, x, y):
    """Signed distance to a broken line and the place 0..1 along it."""
    best, res = 1e18, (0, 0)
    for k, (a, b) in enumerate(zip(pts, pts[1:])):
        vx, vy = b[0] - a[0], b[1] - a[1]
        u = min(1.0, max(0.0, ((x - a[0]) * vx + (y - a[1]) * vy) / (vx * vx + vy * vy)))
        dx, dy = x - a[0] - u * vx, y - a[1] - u * vy
        d = dx * dx + dy * dy
        if d < best:
            best, res = d, (math.copysign(math.sqrt(d), vx * dy - vy * dx), (k + u) / (len(pts) - 1))
    return res


def height(x, y):
    d, t = nearest(_raised, x, y)
    w = ramp(t, (0, 92), (.5, 80), (.68, 72), (1, 62))
    z = ramp(t, (0, 150), (.6, 118), (1, 92)) * math.exp(-(abs(d) / w) ** 2.6)
    d, t = nearest(_other, x, y)
    low = 78 * math.exp(-(abs(d) / 54) ** 2.4)
    h = max(60 - abs(z - low), 0) / 60
    return max(z, low) + h * h * 60 / 4
