"""Hip from behind: sciatic nerve, superior gluteal nerve and artery, on both sides.

The gluteal branches run 4 to 8 cm above the trochanter, the main one at 6.
"""
from engrave import Line, pen, ribbon
from hip_behind_frame import left, right
from side_flesh import cord

# it crosses PSIS-tuberosity at 0.31 and tuberosity-trochanter at 0.48, then runs straight down the thigh
SCIATIC = [(44, 190), (49.6, 204), (58, 219), (69, 236), (80, 254), (89.4, 272), (96.5, 291.4), (99, 309), (99.8, 330), (100, 352), (100, 376), (100, 398)]
# from behind the branches vanish round the front of the blade: they taper out on its face
GLUTEAL = [(71.4, 215), (77, 207), (90, 203), (104, 204.4), (116, 207.6)]
UPPER = [(74, 205), (84, 198), (96, 192), (107, 188.6), (115, 187.6)]
LOWER = [(88, 203), (98, 206.6), (106, 211), (111, 215)]


def vessels(p):
    p.on("vessel", "pelvis", "superior-gluteal-artery", "Superior gluteal artery")
    for side in (left, right):
        for w, pts in (([2.2, 3.4, 3.0, 2.2, 1.2, .2], [(70.6, 207.6), (76, 202), (88, 198.4), (100, 199), (110, 201), (117, 203.4)]),
                       ([2.6, 2.2, 1.6, .9, .2], [(74, 203), (83, 193), (94, 184.6), (105, 179.4), (113, 177.6)]),
                       ([2.0, 1.6, 1.0, .2], [(73, 203), (70, 190), (72, 176), (78, 162)])):
            ln = Line(side(pts))
            p.area(ribbon(ln, w), "artery")
            p.ink(pen(ln.shifted(w[1] * .36, .06, .94), [.1, .5, .5, .3, .05]), "artery-line")


def nerves(p):
    p.on("nerve", "pelvis", "superior-gluteal-nerve", "Superior gluteal nerve")
    for side in (left, right):
        for pts, w, n in ((UPPER, [1.8, 1.6, 1.2, .2], 2), (LOWER, [1.8, 1.6, 1.2, .2], 1), (GLUTEAL, [2.2, 2.8, 2.6, 2.0, 1.4, .2], 4)):
            cord(p, side(pts), w, ticks=n)
    p.on("nerve", "pelvis", "sciatic-nerve", "Sciatic nerve")
    for side in (left, right):
        # under the piriformis it is only seen through
        ln = Line(SCIATIC)
        start = next(t / 400 for t in range(401) if ln(t / 400)[1] > 226)
        for a, o in ((0, .3), (start * .4, .35), (start * .75, .4)):
            p.area(ribbon(side(ln.part(a, start * 1.02, 4)), [4.4, 6.2, 7.2]), "nerve", o)
        cord(p, side(ln.part(start, 1)), [7.2, 8.6, 8.4, 8, 7.6, 7.2, 7], ticks=7)


def draw(p):
    vessels(p)
    nerves(p)
