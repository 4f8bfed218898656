"""Thigh from the side: lateral circumflex femoral artery with its descending branch; sciatic nerve and its fork."""
from engrave import Line, pen, ribbon
from side_flesh import cord
from thigh_side_frame import cm

SCIATIC = cm((-6.4, -7.35), (-3.9, -5.6), (-1.0, -3.5), (2.34, -1.56), (5, -1.15), (9, -1.15), (14, -1.2), (20, -1.35), (26, -1.65), (29.6, -1.95))
TIBIAL = cm((28.6, -1.9), (31.6, -2.4), (35, -3.05), (38.4, -3.4), (41, -3.4), (43.6, -3.15), (46.6, -3.0))
PERONEAL = cm((28.6, -1.75), (32, -1.9), (35.6, -2.2), (39.4, -2.5), (42.4, -2.5), (44.6, -2.35), (45.9, -1.6), (46.6, -.6), (47.6, .4))
CIRCUMFLEX = cm((.2, 5.9), (1.6, 5.5), (3.0, 5.35), (4.6, 5.6), (7, 6.15), (11, 6.8), (15, 7.15), (19, 7.1), (24, 6.7), (29, 6.0), (33, 5.4), (36.8, 4.9))
TWIGS = ((cm((3.2, 5.4), (2.0, 4.6), (.2, 4.4), (-1.8, 4.8), (-3.6, 5.2)), [2.0, 1.8, 1.2, .2]), (cm((4.4, 5.6), (4.6, 4.4), (4.2, 3.0), (3.2, 1.6)), [2.0, 1.7, 1.1, .2]),
         (cm((9.6, 6.6), (11.6, 6.0), (13.8, 4.6), (15.2, 3.4)), [1.7, 1.4, .8, .15]), (cm((17.6, 7.15), (20, 6.4), (22.4, 5.0), (23.8, 3.8)), [1.5, 1.2, .7, .15]),
         (cm((25, 6.6), (27.4, 5.8), (29.4, 4.6)), [1.2, .9, .15]), (cm((13, 7.0), (15.4, 7.9), (18, 8.4)), [1.2, .9, .15]))


def artery(p):
    p.on("vessel", "thigh", "lateral-circumflex-femoral-artery", "Descending branch of the lateral circumflex femoral artery")
    for pts, w in TWIGS:
        p.area(ribbon(pts, w), "artery")
    ln = Line(CIRCUMFLEX)
    p.area(ribbon(ln, [.4, 3.2, 3.6, 3.4, 3.2, 3.0, 2.6, 2.0, 1.4, .2]), "artery")
    p.ink(pen(ln.shifted(1.15, .05, .96), [.1, .5, .55, .4, .05]), "artery-line")
    p.ink(pen(Line(TWIGS[1][0]).shifted(.6, .1, .9), [.1, .4, .05]), "artery-line")


def draw(p):
    artery(p)
    p.on("nerve", "thigh", "sciatic-nerve", "Sciatic nerve")
    cord(p, TIBIAL, [3.6, 3.4, 3.3, 3.0, 2.6, .2], ticks=3)
    cord(p, PERONEAL, [2.4, 2.4, 2.3, 2.2, 2.0, .2], ticks=4)
    cord(p, SCIATIC, [1.2, 4.6, 6.4, 6.2, 5.8, 5.6, 5.4, 5.0], ticks=9)
