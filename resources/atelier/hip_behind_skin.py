"""Hip from behind: skin of trunk and thighs, and the order of painting; the buttocks are in hip_behind_seat.

All skin hangs on the pelvis: both thighs broaden with the hips then, and no seam can open above the sheet.
"""
import hip_behind_seat
from engrave import Line, between, contour, pen, ramp
from hip_behind_frame import FOLD_L, FOLD_R, INNER_L, INNER_R, SIDE_L, SIDE_R, left, right
from side_tools import cluster, pool, rise, soft

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
    """The top of one thigh: its left side lit, its right side turning away; the buttock's shadow lies over it."""
    side, s = (right, -1) if r else (left, 1)
    far, near = (cut(outer, 290, END), cut(inner, 330, END)) if r else (cut(inner, 326, END), cut(outer, 300, END))
    core = between(near, far, .62)
    soft(p, core, far, "skin-mid", .5, 10, rise((0, 0), (.4, 1), (1, 1)))
    soft(p, between(core, far, .5), far, "skin-shade", .34, 8, rise((0, 0), (.45, 1), (1, 1)))
    # what the buttock throws on the thigh
    f = Line(side(FOLD_R if r else FOLD_L))
    soft(p, f.shifted(lambda t: -s * (24 - 12 * t)), f, "skin-mid", .62, 10, rise((0, .5), (.25, 1), (.6, .9), (1, 0)))
    soft(p, f.shifted(lambda t: -s * (11 - 6 * t)), f, "skin-shade", .55, 8, rise((0, .5), (.25, 1), (.6, .8), (1, 0)))
    # the fold of a fuller body runs on outward; an older one sags in loose lines
    p.ink(pen(side([(96, 327), (108, 322), (120, 315), (130, 305)]), [.05, .6, .5, .05]), "skin-line", .75, cue="full")
    p.ink(pen(side([(18, 339), (44, 341), (70, 339)]), [.05, .45, .05]), "skin-line", .6, cue="older")


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
        p.ink(pen(Line(side([(104, 127), (120, 131), (133, 138), (142, 143)])), [.05, .5, .6, .05]), "skin-line", .7, cue="full")
        p.ink(pen(Line(side([(114, 112), (127, 118), (140, 121)])), [.05, .5, .05]), "skin-line", .6, cue="older")


def edges(p, sl, sr):
    """Contours: hair-thin on the lit left, heavier on the right, lost and found in the dip above the trochanter."""
    lost = lambda t: ramp(t, (0, .9), (.38, .9), (.5, .3), (.62, .8), (1, 1))
    p.ink(contour(cut(sl, 54, END), .3, .9, side=1, press=lost), "skin-line", .9)
    p.ink(contour(cut(sr, 54, END), .4, 1.25, side=-1, press=lost), "skin-line", .9)


def draw(p):
    p.linear("wash.flank", "pelvis", (300, 300), (385, 306), [(0, "skin-mid", 0), (.4, "skin-mid", .26), (.75, "skin-mid", .56), (1, "skin-shade", .72)])
    hip_behind_seat.washes(p)
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
