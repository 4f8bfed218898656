"""Hip from behind: the two buttocks as they lie in the light, cleft and folds, and the quiet surface cues."""
import math

from engrave import Line, contour, pen, ramp
from hip_behind_frame import FOLD_L, FOLD_R, MID, left, right
from side_tools import cluster, pool, rise, soft

# the cleft: the right buttock's edge passes a little before the left
CLEFT = [(.8, 206), (.4, 222), (-.6, 240), (-1.5, 260), (-1.5, 280), (-.9, 300), (0, 316), (.6, 328)]


def light(p, c, r, wash):
    """A round light that ends in nothing: a disc filled with its own radial wash."""
    p.area([(c[0] + r * math.cos(a), c[1] + r * math.sin(a)) for a in (math.pi / 6 * k for k in range(12))], wash)


def washes(p):
    for name, x, y, r, o in (("seat.left", -82, 222, 76, .85), ("seat.right", 50, 226, 70, .72), ("rise.left", -136, 262, 23, .5), ("rise.right", 136, 262, 23, .34),
                             ("swell.left", -122, 176, 28, .5), ("swell.right", 114, 176, 30, .32)):
        p.radial("wash." + name, "pelvis", (MID + x, y), r, [(0, "skin-light", o), (.3, "skin-light", o * .73), (.65, "skin-light", o * .24), (1, "skin-light", 0)])


def dome_right(p):
    light(p, (MID + 50, 226), 70, "wash.seat.right")
    edge = Line(right(FOLD_R[::-1]))
    # falls away below toward the fold, first widely, then closely
    for far, tone, total, n in (([(112, 286), (102, 280), (88, 277), (72, 279), (55, 283), (39, 289), (25, 298), (13, 309), (4, 321)], "skin-mid", .5, 15),
                                ([(104, 312), (96, 308), (84, 306), (70, 308), (54, 311), (38, 314), (24, 318), (12, 322), (4, 325)], "skin-shade", .5, 13)):
        soft(p, right(far), edge, tone, total, n, rise((0, 0), (.2, .5), (.45, 1), (.62, 1), (1, 0)))
    soft(p, edge.shifted(9), edge, "skin-deep", .2, 5, rise((0, 0), (.3, .4), (.6, 1), (.9, .7), (1, 0)))
    rim = Line(right([(125, 258), (123, 278), (117, 298), (107, 314), (93, 327), (74, 333), (52, 335), (30, 334.6)]))
    far = right([(84, 236), (80, 256), (72, 274), (62, 287), (50, 296), (38, 304), (26, 312), (16, 320)])
    p.ink(cluster(far, rim, 17, .2, .86, .66, .54, lambda s: .2 - .34 * s, .12, peak=.5), "skin-hatch")


def dome_left(p):
    light(p, (MID - 82, 222), 76, "wash.seat.left")
    edge = Line(right([(.2, 200), (.2, 226), (-.8, 242), (-1.5, 260), (-1.4, 280), (-1.2, 300), (-1.4, 318), *[(-x, y) for x, y in FOLD_L[1:]]]))
    for far, tone, total, n in (([(16, 180), (36, 206), (52, 232), (64, 254), (72, 269), (80, 279), (88, 286), (97, 293), (106, 302), (114, 314)], "skin-mid", .46, 17),
                                ([(14, 196), (29, 224), (40, 250), (47, 270), (54, 285), (62, 294), (72, 300), (82, 303), (95, 307), (108, 316)], "skin-shade", .5, 13)):
        soft(p, left(far), edge, tone, total, n, rise((0, 0), (.2, .5), (.45, 1), (.62, 1), (1, 0)))
    soft(p, edge.shifted(-9), edge, "skin-deep", .22, 5, rise((0, 0), (.3, .4), (.55, 1), (.8, .7), (1, 0)))
    far = left([(14, 196), (28, 230), (40, 258), (46, 278), (54, 292), (62, 300), (74, 304), (88, 305), (104, 304)])
    p.ink(cluster(far, edge, 21, .16, .78, .8, .56, lambda s: -.16 + .36 * s, .08, peak=.56), "skin-hatch")


def hollows(p):
    """Behind each trochanter the flesh sinks in; the trochanter itself lies as a broad soft rise in front of it."""
    for side, s in ((left, 1), (right, -1)):
        bow = side([(116, 214), (107, 236), (104, 260), (108, 284), (119, 304)])
        pool(p, bow, 17 if s > 0 else 15, 15 if s > 0 else 17, "skin-mid", .36, 11, .02)
        # gluteus medius swells above; between it and the maximus a slanting shallow valley
        pool(p, side([(70, 148), (86, 172), (100, 196), (112, 222)]), 15, 15, "skin-mid", .2, 8, .02)
    # the sacrum's three-cornered field sinks a little between the two swells
    pool(p, left([(46, 164), (34, 186), (18, 206), (4, 222)]), 9, 9, "skin-mid", .3, 8, .02)
    pool(p, right([(48, 164), (36, 186), (20, 206), (6, 222)]), 8, 8, "skin-mid", .2, 7, .02)


def cleft(p):
    c = Line(right(CLEFT))
    # it opens above into the flat of the sacrum, and ends at the folds in a small shade
    pool(p, right([(0, 186), (.2, 206), (-.6, 232), (-1, 262)]), 9, 9, "skin-mid", .6, 10, .03)
    p.ink(pen(c, [.05, .25, .6, 1.0, 1.2, 1.15, .9, .2]), "skin-line", .92)
    pool(p, right([(0, 318), (.2, 332), (.2, 352)]), 7, 7, "skin-shade", .5, 7, .03)
    p.ink(pen(right([(.4, 335), (.2, 344), (.3, 358)]), [.05, .6, .5]), "skin-line", .8)
    for side, fold, s, w in ((right, FOLD_R, 1, 1.5), (left, FOLD_L, -1, 1.3)):
        p.ink(contour(Line(side(fold)), .4, w, side=s, press=lambda t: ramp(t, (0, .3), (.14, .9), (.35, 1), (.6, .6), (.85, .2), (1, .02))), "skin-line", .92)


def surface(p):
    """Shallow oval dimples over the posterior superior spines, slanting inward and down; light on the lower right lip."""
    p.on("surface", "pelvis", "trochanter-rise", "Rise over the greater trochanter")
    light(p, (MID - 136, 262), 23, "wash.rise.left")
    light(p, (MID + 136, 262), 23, "wash.rise.right")
    p.on("surface", "pelvis", "medius-swell", "Swell of the gluteus medius")
    light(p, (MID - 122, 176), 28, "wash.swell.left")
    light(p, (MID + 114, 176), 30, "wash.swell.right")
    p.on("surface", "pelvis", "sacral-dimples", "Dimples over the posterior superior spines")
    for side, o in ((left, .36), (right, .46)):
        d = 1 if side is right else -1
        c = side([(45, 155)])[0]
        at = lambda *q: [(c[0] + x, c[1] + y) for x, y in q]
        pool(p, at((3.6 * d, -8), (.6 * d, 0), (-2.6 * d, 8)), 7.6, 7.6, "skin-mid", o, 10, .03)
        pool(p, at((1.6 * d - .8, -5), (-.8, 0), (-1.6 * d - .8, 4)), 4, 4, "skin-shade", o * .5, 5, .05)
        pool(p, at((7 + 1.6 * d, 1), (6, 6), (5 - 2 * d, 11)), 3.4, 3.4, "skin-light", .4, 5, .03)


def seat(p):
    hollows(p)
    dome_left(p)
    dome_right(p)
    cleft(p)
