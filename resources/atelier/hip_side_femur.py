"""Hip from the side: the femur, its head in the socket, the greater trochanter turned back by the bent hip."""
import math

from engrave import Line, pen, stipple
from hip_side_frame import FEM_BACK, FEM_FRONT, th
from hip_side_model import model, outline

TROCHANTER = [th(4, -41), th(-3, -37.4), th(-6.4, -30), th(-4, -18), th(2, -8), th(10, -2), th(22, 2), th(34, 1), th(41, -6), th(41, -18), th(37, -29), th(28, -36.4), th(16, -41)]
FEMUR = [*TROCHANTER[:6], th(22, 2), *FEM_FRONT, th(414, 14), th(417, 0), th(418, -14), th(415.6, -28), *FEM_BACK[::-1], th(28, -36.4), th(16, -41)]
HEAD = [th(24.4 * math.sin(a), 24.4 * math.cos(a)) for a in (k * math.pi / 6 for k in range(12))]
NECK = [th(-4, -22), th(-8, -4), th(-3, 11), th(8, 19.4), th(22, 16.4), th(34, 10), th(44, 4), th(36, -16), th(10, -30)]


def boss(x, y):
    """The trochanter stands toward us, with a ridge from behind and above to before and below."""
    def hill(t, s, rt, rs, turn):
        q = th(t, s)
        dx, dy = x - q[0], y - q[1]
        a = math.radians(turn)
        u, w = dx * math.cos(a) + dy * math.sin(a), -dx * math.sin(a) + dy * math.cos(a)
        return math.exp(-(u / rt) ** 2 - (w / rs) ** 2)
    return 7 * hill(10, -22, 20, 15, -25) + 3 * hill(14, -18, 20, 6, -62) - 3 * hill(47, -12, 8, 16, -25)


def draw(p):
    p.on("bone", "thigh", "femur", "Femur")
    model(p, HEAD, 20, base="bone-light", dark=("bone-shade", .7))
    p.ink(outline(HEAD, 1.2), "bone-line")
    model(p, NECK, 12)
    p.ink(pen([th(-9, -6), th(-3, 11), th(8, 19.4), th(22, 16.4), th(40, 6.6)], [.1, .8, .9, .6, .05]), "bone-line")
    model(p, FEMUR, 12.5, boss, step=3)
    p.ink(outline(FEMUR, 1.7), "bone-line")
    p.on("bone", "thigh", "greater-trochanter", "Greater trochanter")
    p.ink([pen([th(40, 0), th(42.4, -9), th(40, -21), th(33, -31)], [.05, .8, .6, .05]), pen([th(6, -34), th(14, -24), th(24, -13), th(32, -6)], [.05, .5, .6, .05])], "bone-line", .65)
    p.areas_of(stipple([th(4, -16), th(24, -18)], [th(0, -37), th(26, -36)], 6, .42, depth=.9), "bone-line", .55)
    b = Line(FEM_BACK)
    p.ink([pen(Line(b.shifted(-3.4)), [.05, .5, .35, .05], .1, .3), pen(Line(b.shifted(-3.0)), [.05, .4, .3, .05], .33, .56)], "bone-line", .6)
