"""Hip from behind: the two buttocks as they lie in the light, cleft and folds, and the quiet surface cues."""
import math

from engrave import Line, contour, pen, ramp
from hip_behind_frame import FOLD, MID, left, right
from side_tools import cluster, hump, pool, rise, soft

# the cleft: the right buttock's edge passes a little before the left
CLEFT = [(.8, 212), (.2, 226), (-.8, 242), (-1.5, 260), (-1.4, 280), (-.6, 300), (.4, 316), (.6, 330), (.2, 346)]


def light(p, c, r, wash):
    """A round light that ends in nothing: a disc filled with its own radial wash."""
    p.area([(c[0] + r * math.cos(a), c[1] + r * math.sin(a)) for a in (math.pi / 6 * k for k in range(12))], wash)


def dome_right(p):
    light(p, (MID + 50, 226), 70, "wash.seat.right")
    edge = Line(right(FOLD[::-1]))
    # falls away below toward the fold, first widely, then closely
    for far, tone, total, n in (([(112, 250), (100, 262), (86, 270), (71, 275), (55, 279), (39, 285), (25, 294), (13, 306), (4, 320)], "skin-mid", .5, 15),
                                ([(108, 276), (98, 288), (84, 297), (70, 303), (54, 307), (38, 310), (24, 314), (12, 319), (4, 323)], "skin-shade", .5, 13)):
        soft(p, right(far), edge, tone, total, n, rise((0, 0), (.2, .5), (.45, 1), (.8, 1), (1, .1)))
    soft(p, edge.shifted(9), edge, "skin-deep", .2, 5, rise((0, 0), (.3, .4), (.6, 1), (.9, .7), (1, 0)))
    far = right([(112, 262), (100, 280), (86, 292), (70, 298), (54, 302), (38, 306), (22, 312), (6, 322)])
    p.ink(cluster(far, edge, 19, .12, .86, .8, .56, lambda s: .2 - .3 * s, .1, peak=.42), "skin-hatch")


def dome_left(p):
    light(p, (MID - 82, 222), 76, "wash.seat.left")
    edge = Line(right([(.2, 200), (.2, 226), (-.8, 242), (-1.5, 260), (-1.4, 280), (-1.2, 300), (-1.4, 318), *[(-x, y) for x, y in FOLD[1:]]]))
    for far, tone, total, n in (([(30, 176), (50, 204), (63, 230), (70, 252), (75, 267), (80, 277), (87, 284), (95, 289), (103, 293), (112, 298)], "skin-mid", .5, 15),
                                ([(14, 196), (29, 224), (40, 250), (47, 270), (54, 285), (62, 294), (72, 300), (82, 303), (94, 304), (106, 303)], "skin-shade", .5, 13)):
        soft(p, left(far), edge, tone, total, n, rise((0, 0), (.2, .5), (.45, 1), (.8, 1), (1, .1)))
    soft(p, edge.shifted(-9), edge, "skin-deep", .22, 5, rise((0, 0), (.3, .4), (.55, 1), (.8, .7), (1, 0)))
    far = left([(14, 196), (28, 230), (40, 258), (46, 278), (54, 292), (62, 300), (74, 304), (88, 305), (104, 304)])
    p.ink(cluster(far, edge, 21, .16, .78, .8, .56, lambda s: -.16 + .36 * s, .08, peak=.56), "skin-hatch")


def hollows(p):
    """Behind each trochanter the flesh sinks in; the trochanter itself lies as a broad soft rise in front of it."""
    for side, s in ((left, 1), (right, -1)):
        d = .5 if s > 0 else .46
        pool(p, side([(106, 190), (114, 228), (118, 264), (114, 312)]), 22, 22, "skin-mid", d, 14, .02)
        pool(p, side([(113, 222), (117.4, 250), (116, 286)]), 13, 13, "skin-shade", .16, 7, .02)
        # gluteus medius swells above; between it and the maximus a slanting shallow valley
        pool(p, side([(70, 148), (86, 172), (100, 196), (112, 222)]), 15, 15, "skin-mid", .2, 8, .02)
    pool(p, left([(143, 236), (146, 264), (147, 300)]), 11, 11, "skin-light", .5, 8, .02)
    pool(p, left([(122, 140), (131, 174), (136, 216)]), 15, 19, "skin-light", .55, 11, .02)
    # the sacrum's three-cornered field sinks a little between the two swells
    pool(p, left([(46, 164), (34, 186), (18, 206), (4, 222)]), 9, 9, "skin-mid", .3, 8, .02)
    pool(p, right([(48, 164), (36, 186), (20, 206), (6, 222)]), 8, 8, "skin-mid", .2, 7, .02)


def cleft(p):
    c = Line(right(CLEFT))
    # it opens above into the flat of the sacrum
    pool(p, right([(0, 194), (.2, 212), (-.6, 234), (-1, 258)]), 9, 9, "skin-mid", .6, 10, .06)
    p.ink(pen(c, [.05, .5, 1.2, 1.7, 2.0, 1.9, 2.0, 1.6, .9]), "skin-line")
    for side, s, w in ((right, 1, 1.8), (left, -1, 1.5)):
        f = Line(side(FOLD))
        p.ink(contour(f.part(0, .97), .5, w, side=s, press=lambda t: ramp(t, (0, .75), (.12, 1.05), (.45, .85), (.75, .4), (1, .02))), "skin-line")


def surface(p):
    p.on("surface", "pelvis", "sacral-dimples", "Dimples over the posterior superior spines")
    for side in (left, right):
        c = side([(45, 155)])[0]
        at = lambda *d: [(c[0] + x, c[1] + y) for x, y in d]
        pool(p, at((1.5, -8), (0, 0), (-.5, 8)), 9, 9, "skin-mid", .46, 10, .06)
        pool(p, at((-1, -4), (-1.4, -.6), (-1.2, 3)), 4, 4, "skin-shade", .3, 6, .1)
        pool(p, at((5.6, 2), (5, 6), (2, 10)), 3.6, 3.6, "skin-light", .5, 6, .06)
        p.ink(pen(at((-4, 2.6), (-4.6, -1.4), (-2.4, -5)), [.05, .4, .05]), "skin-hatch", .6, cue="lean")


def seat(p):
    hollows(p)
    dome_left(p)
    dome_right(p)
    cleft(p)
