"""A bone rounded from its own outline: blown up at the rim, with hills and hollows added, shaded like the body."""
import math

from engrave import rim
from hip_side_form import LIGHT
from hip_side_relief import Grid, Silhouette, tint


def outline(shape, thick=1.3, thin=0.3, press=None):
    return rim(shape, thin, thick, press=press)


def model(p, shape, round_over, more=None, base="bone-base", light=("bone-light", .8), dark=("bone-shade", .75), step=2.5, o=(.22, .16)):
    """round_over: how far in from the rim the form still turns away, mm. more(x, y): height added to the blown-up outline."""
    p.area(shape, base)
    xs, ys = [q[0] for q in shape], [q[1] for q in shape]
    grid = Grid((min(xs) - 14, min(ys) - 14, max(xs) + 14, max(ys) + 14), step)
    sil = Silhouette(shape)
    sil.REACH = max(9.0, round_over + 2)
    edge = grid.sample(sil)

    def z(i, j):
        d = max(-2.0, min(edge[j][i], round_over)) / round_over
        up = round_over * math.sqrt(1 - (1 - d) ** 2) if d > 0 else 3 * d * round_over
        return up + (more(*grid.node(i, j)) if more else 0)
    h = grid.blurred([[z(i, j) for i in range(grid.nx)] for j in range(grid.ny)], 1)

    def bright(i, j):
        gx = (h[j][min(i + 1, grid.nx - 1)] - h[j][max(i - 1, 0)]) / (2 * step)
        gy = (h[min(j + 1, grid.ny - 1)][i] - h[max(j - 1, 0)][i]) / (2 * step)
        return .25 + .75 * (-gx * LIGHT[0] - gy * LIGHT[1] + LIGHT[2]) / math.sqrt(gx * gx + gy * gy + 1)
    b = [[bright(i, j) for i in range(grid.nx)] for j in range(grid.ny)]
    for (tone, total), k, f in ((light, o[0], lambda v: (v - .76) / .2), (dark, o[1], lambda v: (.72 - v) / .4)):
        tint(p, grid, edge, [[min(1, max(0, f(v))) for v in r] for r in b], tone, total, 30, o=k)
