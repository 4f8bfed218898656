"""Hip from behind: shared outlines, the limb axes, and the hidden names.

x is counted from the midline (right side positive), y down the plate; `right` and `left` place them.
"""
from engrave import Line

MID = 220
O = (356, 268)                       # greater trochanter of the right femur
HIP = (300, 258)                     # centre of the right hip


def right(points):
    return [(MID + q[0], *q[1:]) for q in points]


def left(points):
    return [(MID - q[0], *q[1:]) for q in points]


# -- skin outlines, top to bottom: flank, over the crest, gluteus medius, trochanter, thigh -----------
SIDE_R = right([(153, -6), (149.6, 14), (147.6, 32), (146, 48), (143, 62), (141.8, 76), (142.6, 90), (145.6, 104), (149, 118), (151, 131),
                (151.6, 145), (151.6, 159), (151.8, 174), (152.5, 188), (153.5, 202), (155, 217), (157, 233), (159.2, 250), (161, 267), (160.8, 283),
                (159.4, 301), (157.6, 320), (156.2, 340), (155.4, 360), (155, 385), (154.6, 410), (154, 445), (153.4, 468), (152.6, 490)])
SIDE_L = left([(152, -6), (149.2, 14), (147.4, 32), (146, 48), (143.6, 61), (142.6, 74), (143.6, 88), (146.6, 102), (149.8, 115), (151.4, 128),
               (151.8, 143), (151.6, 158), (151.6, 173), (152.3, 188), (153.3, 202), (154.8, 217), (156.8, 233), (159, 250), (161, 267), (161, 283),
               (159.8, 301), (158, 320), (156.6, 340), (155.6, 360), (155, 385), (154.6, 410), (154, 445), (153.2, 468), (152.4, 490)])
# the thighs lie side by side and touch down to the sheet
INNER_R = right([(.6, 300), (.6, 318), (.4, 336), (.4, 356), (.8, 380), (2, 410), (4.4, 446), (6.4, 468), (9, 490)])
INNER_L = left([(0, 300), (0, 318), (.2, 336), (.2, 356), (.2, 380), (1.4, 410), (4, 446), (6, 468), (9, 490)])
# the gluteal folds: deepest in their inner third, nearly level, dying outward; the right one lower and shorter
FOLD_L = [(1.2, 325), (7, 329), (19, 332), (36, 333), (54, 332.6), (71, 331), (87, 328.4), (101, 325), (110, 322)]
FOLD_R = [(1.2, 326), (7, 330.4), (19, 333.8), (36, 335), (53, 334.8), (69, 333.4), (84, 331), (97, 328)]

# -- bones ---------------------------------------------------------------------------------------------
ASIS, CREST, PSIS = (118, 172), (108, 110), (45, 155)
NOTCH, SPINE, TUBER, COCCYX = (71, 209), (50, 254), (60, 313), (0, 266)
CREST_LINE = [ASIS, (126, 160), (130.6, 147), (130.4, 133), (126, 121), (118.4, 113.4), CREST, (95, 110.8), (81, 115), (67, 123.4),
              (55.4, 135), (48.4, 145.4), PSIS]
SHAFT_OUT = [(125, 243), (131.6, 249), (135.8, 258), (137, 268), (136, 280), (132.6, 294), (129.4, 308), (128, 326), (127.4, 350),
             (126.8, 380), (126.6, 396), (125.6, 430), (124, 468), (123, 492)]
SHAFT_IN = [(94.6, 283), (96.6, 292), (93.6, 300), (93.4, 308), (97.6, 315), (101.4, 325), (102.2, 345), (101.6, 380), (101, 396), (99.4, 430),
            (97, 468), (95.6, 492)]


def names(p):
    p.hang("pelvis", "pelvis", (MID, HIP[1]))
    p.hang("thigh", "hip", HIP, 0, "pelvis")
    p.hang("thigh-left", "hip-left", (2 * MID - HIP[0], HIP[1]), 0, "pelvis")
    sr, sl, ir, il = Line(SIDE_R), Line(SIDE_L), Line(INNER_R), Line(INNER_L)
    out = Line(SHAFT_OUT)
    # the waist's level lies at its narrowest, else fat would double the dip between waist and crest
    # the skeleton's extent: vertebra, crest, crest, trochanters; at the fold the sitting bones, so that the seats broaden with fat
    for name, y, b in (("waist", 74, 46), ("crest", 110, 109), ("psis", 155, 122), ("hip", 258, 135.6), ("fold", 322, 78)):
        p.level("pelvis", name, (MID, y), (1, 0), sl.at_y(y)[0] - MID, -b, b, sr.at_y(y)[0] - MID)
    # the hip's own axis runs medial to the shaft, so the bone's inner edge is set just inside the axis
    for name, y, b in (("trochanter", 268, -21.8), ("thigh-upper", 323, -6), ("mid-thigh", 468, -6)):
        x = HIP[0]
        skin = ir.at_y(max(y, 301))[0] - x
        p.level("thigh", name, (x, y), (1, 0), skin, b, MID + out.at_y(y)[0] - x, sr.at_y(y)[0] - x)
        x = 2 * MID - HIP[0]
        skin = il.at_y(max(y, 301))[0] - x
        p.level("thigh-left", name + "-left", (x, y), (1, 0), sl.at_y(y)[0] - x, MID - out.at_y(y)[0] - x, -b, skin)

    p.point("thigh", "landmark.greater-trochanter", O)
    for name, q in (("iliac-crest", CREST), ("psis", PSIS), ("ischial-tuberosity", TUBER), ("coccyx", COCCYX)):
        p.point("pelvis", "landmark." + name, right([q])[0])

    import hip_behind_bones as b
    import hip_behind_flesh as f
    import hip_behind_muscles as m
    p.hidden_line("pelvis", "iliac-crest", right(CREST_LINE))
    p.hidden_line("pelvis", "sacrum-edge", right(b.SACRUM_EDGE))
    p.hidden_line("pelvis", "sciatic-nerve", right(f.SCIATIC))
    p.hidden_line("pelvis", "superior-gluteal-nerve", right(f.GLUTEAL))
    p.hidden_area("pelvis", "bone.ilium", right(b.ILIUM))
    p.hidden_area("pelvis", "bone.sacrum", b.SACRUM)
    p.hidden_area("thigh", "bone.greater-trochanter", right(b.TROCHANTER))
    p.hidden_area("pelvis", "muscle.gluteus-medius", right(m.MEDIUS))
    p.hidden_area("pelvis", "muscle.gluteus-maximus", right(m.MAXIMUS))
