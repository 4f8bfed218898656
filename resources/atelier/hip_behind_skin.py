"""Hip from behind: skin of trunk and thighs, and the order of painting; the buttocks are in hip_behind_seat.

All skin hangs on the pelvis: both thighs broaden with the hips then, and no seam can open above the sheet.
"""
import hip_behind_seat
from engrave import Line, between, contour, pen, ramp
from hip_behind_frame import FOLD, INNER_L, INNER_R, MID, SIDE_L, SIDE_R, left, right
from side_tools import cluster, hump, pool, rise, soft

END = 397                            # the skin ends under the sheet, before the sheet fades


def down(line, y):
    """How far along a line that runs down the plate the height y is reached."""
    return next(t / 800 for t in range(801) if line(t / 800)[1] >= y)


def cut(line, y0, y1):
    return Line(line.part(down(line, y0), down(line, y1)))


def body(p, sl, sr):
    l, r = cut(sl, 36, END).part(0, 1, 8), cut(sr, 36, END).part(0, 1, 8)
    shape = [(*l[0], "c"), *l[1:-1], (*l[-1], "c"), (*r[-1], "c"), *r[-2:0:-1], (*r[0], "c")]
    p.area(shape, "skin-base")
    p.area(shape, "wash.flank")


def thigh(p, outer, inner, r):
    """One thigh: round, its left side lit, its right side turning away; the buttock's shadow lies over its top."""
    side, s = (right, -1) if r else (left, 1)
    far, near = (cut(outer, 297, END), cut(inner, 330, END)) if r else (cut(inner, 326, END), cut(outer, 300, END))
    core = between(near, far, .62)
    soft(p, core, far, "skin-mid", .5, 12, rise((0, 0), (.4, 1), (1, 1)))
    soft(p, between(core, far, .5), far, "skin-shade", .32 if r else .42, 9, rise((0, 0), (.45, 1), (1, 1)))
    p.ink(cluster(core, far, 9, .34 if r else .2, .96, .56, .5, lambda t: .1 + .1 * t, .07, peak=.6), "skin-hatch")
    # the groove before the outer septum
    pool(p, side([(133, 310), (137, 350), (136, 404)]), 10, 10, "skin-mid", .26, 8, .04)
    # what the buttock throws on the thigh
    f = Line(side(FOLD))
    soft(p, f.shifted(lambda t: -s * (24 - 12 * t)), f, "skin-mid", .62, 10, rise((0, .5), (.25, 1), (.6, .9), (1, 0)))
    soft(p, f.shifted(lambda t: -s * (11 - 6 * t)), f, "skin-shade", .55, 8, rise((0, .5), (.25, 1), (.6, .8), (1, 0)))
    if r:
        p.ink(pen(cut(inner, 340, END), [1.0, 1.3, 1.2, 1.0]), "skin-line")
    p.ink(pen(side([(28, 343.5), (61, 346.5), (95, 337.5)]), [.05, .65, .05]), "skin-line", .7, cue="full")
    p.ink([pen(side([(20, 338), (38, 342), (58, 340)]), [.05, .5, .05]), pen(side([(28, 347), (46, 350), (62, 347)]), [.05, .4, .05])],
          "skin-line", .6, cue="older")


def back(p):
    """Small of the back: it sinks in below the ribs; the furrow of the spine runs between the two columns of the erector."""
    pool(p, right([(-118, 96), (-60, 86), (0, 82), (60, 86), (118, 96)]), 34, 34, "skin-mid", .3, 11, .02)
    pool(p, right([(-1, 56), (-1.4, 84), (-1, 110), (0, 150)]), 11, 12, "skin-mid", .5, 11, .04)
    pool(p, right([(.6, 60), (.4, 84), (.6, 118)]), 4, 4.4, "skin-shade", .34, 6, .06)
    p.ink(pen(right([(-.6, 66), (-.8, 84), (0, 102), (.4, 114)]), [.1, .5, .4, .05]), "skin-hatch", .7)
    pool(p, left([(30, 40), (30, 94), (26, 146)]), 14, 16, "skin-light", .46, 10, .02)
    pool(p, right([(18, 40), (19, 94), (20, 144)]), 10, 13, "skin-light", .4, 9, .02)
    pool(p, right([(50, 40), (51, 90), (46, 140)]), 14, 17, "skin-mid", .3, 9, .02)


def crest(p):
    """The crest under the skin: a soft roll of the flank above it, its shade below; dimples over its hind ends."""
    for side, s in ((left, 1), (right, -1)):
        line = Line(side([(56, 149), (68, 140), (84, 132.4), (102, 129), (120, 131), (134, 137.4), (144.6, 144.6)]))
        pool(p, line, 12, 12, "skin-mid", .38 if s > 0 else .42, 12, .04)
        up = Line(side([(88, 112), (108, 108.6), (128, 111), (142, 117)]))
        pool(p, up, 12, 12, "skin-light", .5 if s > 0 else .3, 10, .02)
        p.ink(pen(Line(line.part(.7, .96)), [.05, .3, .05]), "skin-hatch", .5, cue="lean")
        p.ink(pen(Line(side([(112, 126), (128, 131), (140, 140), (150.4, 143)])), [.05, .6, .9, .5]), "skin-line", .7, cue="full")
        p.ink(pen(Line(side([(118, 112), (132, 119), (146, 122)])), [.05, .5, .4]), "skin-line", .6, cue="older")


def edges(p, sl, sr):
    """Contours: hair-thin on the lit left, heavier on the right; each starts anew where one form passes before the next."""
    low = lambda t: ramp(t, (0, .2), (.12, .9), (.8, .95), (1, 1))
    p.ink(contour(cut(sl, 54, 141), .3, .9, side=1, press=lambda t: ramp(t, (0, .9), (.6, .9), (1, .5))), "skin-line")
    p.ink(contour(cut(sl, 137, END), .3, .9, side=1, press=low), "skin-line")
    p.ink(contour(cut(sr, 54, 144), .4, 1.15, side=-1, press=lambda t: ramp(t, (0, .9), (.7, 1.1), (1, .7))), "skin-line")
    waist = cut(sr, 66, 140)
    p.ink(cluster(waist.shifted(30), waist, 8, .12, .9, .7, .48, lambda s: .1 - .1 * s, .07, peak=.6), "skin-hatch")
    flank = cut(sr, 176, 292)
    p.ink(cluster(flank.shifted(44), flank, 11, .14, .84, .8, .5, lambda s: -.1 + .26 * s, .07, peak=.55), "skin-hatch")
    p.ink(contour(cut(sr, 138, END), .4, 1.4, side=-1, press=low), "skin-line")


def draw(p):
    p.linear("wash.flank", "pelvis", (300, 200), (386, 206), [(0, "skin-mid", 0), (.45, "skin-mid", .28), (.8, "skin-mid", .62), (1, "skin-shade", .8)])
    p.radial("wash.seat.left", "pelvis", (MID - 82, 222), 76, [(0, "skin-light", .85), (.3, "skin-light", .62), (.65, "skin-light", .2), (1, "skin-light", 0)])
    p.radial("wash.seat.right", "pelvis", (MID + 50, 226), 70, [(0, "skin-light", .72), (.3, "skin-light", .54), (.65, "skin-light", .18), (1, "skin-light", 0)])
    sl, sr = Line(SIDE_L), Line(SIDE_R)
    p.on("skin", "pelvis")
    body(p, sl, sr)
    thigh(p, sl, Line(INNER_L), False)
    thigh(p, sr, Line(INNER_R), True)
    back(p)
    crest(p)
    hip_behind_seat.seat(p)
    edges(p, sl, sr)
    hip_behind_seat.surface(p)
