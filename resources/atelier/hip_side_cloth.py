"""Hip from the side: the sheet over both legs, the shirt drawn up to the ribs."""
from engrave import Line, contour, pen, ramp
from hip_side_drape import FOLDS, height
from hip_side_form import brightness
from hip_side_relief import Grid, Silhouette, tint
from hip_side_tools import hump, rise, soft

# the hem crosses the upper thigh, falls into the gap behind it, runs over the other thigh and out on the bed
HEM = [(453, 80), (450, 94), (450.4, 116), (454, 142), (458, 170), (459, 198), (455, 226), (446, 252), (434, 275), (421, 297), (409, 319), (399.6, 341), (394, 361), (392, 379),
       (397, 395), (410, 408), (430, 419), (458, 428), (492, 434)]
SHEET_TOP = [(453, 80), (480, 69), (510, 58), (545, 46.6), (580, 35.6), (606, 27.6), (626, 25), (646, 28), (668, 38), (694, 48), (726, 57), (764, 66), (800, 78), (850, 96), (900, 114)]
SHIRT = [(-20, 112), (4, 114), (22, 122), (34, 133), (42, 146), (49.6, 166), (53, 192), (55, 222), (55.4, 252), (54.4, 282), (51, 314), (46.4, 342), (42, 360), (42, 372), (43, 382), (38, 394), (24, 402), (2, 406), (-20, 407)]


def washes(p):
    p.linear("wash.sheet", "thigh", (560, 380), (585, 456), [(0, "cloth-light"), (.2, "cloth-light"), (1, "cloth-light", 0)])


# its end beyond the paper slants, so that the paper's edge stays covered on stout and on thin bodies
SHEET = [(*SHEET_TOP[0], "c"), *SHEET_TOP[1:-1], (*SHEET_TOP[-1], "c"), (888, 150), (874, 185), (860, 220), (846, 255), (832, 290), (816, 322), (794, 352), (764, 382), (728, 411), (690, 432),
         (650, 446), (606, 454), (560, 455), (520, 446), (*HEM[-1], "c"), *HEM[-2:0:-1]]


def sheet(p):
    p.on("cloth", "thigh")
    hem = Line(HEM)
    p.area(SHEET, "wash.sheet")
    grid = Grid((376, 14, 920, 474), 4)
    edge = grid.sample(Silhouette(SHEET))
    near = lambda q: ramp(q[1], (395, 1), (450, 0))
    dark = [[min(1, max(0, (.70 - brightness(grid.node(i, j), height, .6)) / .5)) * near(grid.node(i, j)) if edge[j][i] > -7 else 0 for i in range(grid.nx)] for j in range(grid.ny)]
    dark = grid.blurred(dark, 4)
    tint(p, grid, edge, dark, "cloth-shade", .34, 90, o=.08)
    for pts, up, wide in FOLDS:
        ln = Line(pts)
        soft(p, ln.shifted(1.5 * wide), ln, "cloth-shade", .045 * up, hump(.8))
        p.ink(pen(ln, [.05, .08 * up, .11 * up, .05 * up, .05], .04, .9), "cloth-line", .65)
    top = Line(SHEET_TOP)
    p.ink(contour(top, .4, 1.1, side=-1, press=lambda t: ramp(t, (0, .8), (.6, 1), (1, .8))), "cloth-line")
    # turned hem
    band = Line(hem.shifted(lambda t: -9 - 2 * t, .01, .97))
    soft(p, band.shifted(-7), band, "cloth-shade", .32, hump(.5))
    p.ink(pen(band.part(0, .55), [.05, .5, .6, .3, .05]), "cloth-line", .7)
    p.ink(pen(band.part(.6, 1), [.05, .5, .4, .05]), "cloth-line", .7)
    p.ink(contour(hem, .5, 1.5, side=1, press=lambda t: ramp(t, (0, .6), (.3, .9), (.6, 1.1), (.8, .9), (1, .05))), "cloth-line")


def shirt(p):
    """The gown, drawn up and bunched: its rolls run round the body, its tails lie on the bed before and behind."""
    p.on("cloth", "pelvis")
    hem = Line(SHIRT)
    p.area([(-50, 112, "c"), (*SHIRT[0], "c"), *SHIRT[1:-1], (*SHIRT[-1], "c"), (-50, 407, "c"), *[(-50, y) for y in range(372, 130, -36)]], "cloth-base")
    soft(p, hem.shifted(20), hem.shifted(-1), "cloth-light", .6, rise((0, .2), (.25, 1), (.6, .8), (1, .1)))
    for pts, w, d, k in (([(2, 122), (16, 130), (24, 143), (33, 158), (38, 190), (41, 230), (40, 268), (36, 306), (31, 340)], 13, .55, 1.1),
                         ([(34, 366), (37, 330), (42, 296), (43, 262)], 9, .4, .8),
                         ([(-8, 136), (8, 146), (17, 165), (23, 200), (25, 240), (22, 282), (16, 322), (13, 352), (10, 376)], 13, .6, 1.0),
                         ([(-4, 168), (4, 192), (8, 226), (7, 262), (2, 300)], 11, .5, .8),
                         ([(31, 366), (31, 378), (24, 389), (6, 395)], 8, .45, .8), ([(12, 372), (11, 383), (2, 390), (-14, 392)], 7, .4, .7)):
        ln = Line(pts)
        soft(p, ln.shifted(w), ln, "cloth-shade", d * .7, hump(.7))
        p.ink(pen(ln, [.05, k * .5, k * .7, k * .4, .05]), "cloth-line", .7)
    p.ink(contour(hem, .5, 1.5, side=-1, press=lambda t: ramp(t, (0, .3), (.2, .9), (.6, 1.1), (1, .3))), "cloth-line")


def draw(p):
    sheet(p)
    shirt(p)
