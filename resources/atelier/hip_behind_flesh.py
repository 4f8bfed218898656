"""Hip from behind: sciatic nerve, superior gluteal nerve and artery, on both sides.

The gluteal branches run 4 to 8 cm above the trochanter, the main one at 6.
"""
from engrave import Line, pen, ribbon
from hip_behind_frame import left, right
from side_flesh import cord

# it crosses PSIS-tuberosity at 0.31 and tuberosity-trochanter at 0.48, then runs straight down the thigh
SCIATIC = [(44, 190), (49.6, 204), (58, 219), (69, 236), (80, 254), (89.4, 272), (96.5, 291.4), (99, 309), (99.8, 330), (100, 352), (100, 376), (100, 398)]
GLUTEAL = [(70, 208), (78, 205), (92, 203), (108, 206), (122, 210), (136, 213), (147, 215)]
UPPER = [(74, 205), (84, 198), (98, 191.6), (112, 188), (126, 187), (138, 189.6)]
LOWER = [(92, 203), (106, 210), (118, 217.4), (130, 223), (140, 226)]


def vessels(p):
    p.on("vessel", "pelvis", "superior-gluteal-artery", "Superior gluteal artery")
    for side in (left, right):
        for w, pts in (([.3, 3.4, 3.0, 2.4, 1.6, .2], [(67, 213), (75, 203), (90, 198), (106, 200), (122, 203), (138, 206)]),
                       ([2.6, 2.2, 1.6, .9, .2], [(74, 203), (84, 192), (98, 183), (112, 178), (124, 176)]),
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
        cord(p, side(SCIATIC), [1.4, 7, 8.6, 8.4, 8, 7.6, 7.2, 7], ticks=8)


def draw(p):
    vessels(p)
    nerves(p)
