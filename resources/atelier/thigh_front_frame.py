"""Thigh from the front: shared outlines, the axis, and the hidden names."""
from engrave import Line

O = (170, 310)                       # greater trochanter
HIP = (160, 287)
KNEE_A = 409                         # the epicondyle's level, along from the hip
ACROSS = (0, -1)                     # inner side: up the page


def at(a, s, *corner):
    """A point of the plate: a mm from the hip toward the knee, s toward the midline from the axis."""
    return (HIP[0] + a, HIP[1] - s, *corner)


def of(pairs):
    return [at(*q) for q in pairs]


MID = 113                            # the midline

# -- skin -----------------------------------------------------------------------------------------
# the outer side: flank, a faint hollow above the trochanter, vastus lateralis fullest a little above the
# middle, the hollow over the iliotibial band, condyle, head of the fibula, calf
OUTER = of([(-165, -32.5), (-148, -36), (-128, -40.2), (-108, -43), (-86, -44.6), (-64, -45), (-40, -44.8), (-18, -46.8), (6, -50.2),
            (24, -51.8), (42, -53), (65, -55), (98, -58.4), (135, -61), (172, -62.6), (210, -63), (246, -61.8), (282, -59), (314, -55.4),
            (342, -51.6), (366, -48.8), (386, -48.4), (404, -50), (420, -50.8), (434, -49.4), (446, -48.8), (458, -49.4), (474, -50),
            (498, -52.6), (529, -56), (560, -57.4), (600, -56.4)])
# the inner side: from the crotch in one long taper to the teardrop of vastus medialis, which swells lower
# than the outer muscle; then the inner condyle and the tendons of the goose's foot
INNER = of([(62, 111.4), (70, 110.6), (86, 109.6), (110, 107.2), (140, 102.8), (172, 96.8), (204, 90.4), (236, 84), (268, 78), (296, 73.4),
            (318, 70.6), (338, 69.2), (354, 68.4), (368, 66.8), (382, 63.4), (394, 60), (408, 58.4), (420, 57.2), (436, 53.6),
            (454, 49.4), (474, 47.6), (496, 49.4), (529, 54.4), (560, 58), (600, 59.4)])
CREASE = of([(-74, -17), (-58, -1), (-38, 18), (-15, 39), (8, 59), (30, 77), (48, 92), (59, 103), (63, 111.4)])

# -- bone edges read by levels ----------------------------------------------------------------------
FEMUR_OUTER = of([(-10.5, -7), (-8, -13.4), (-1, -19), (10, -23), (22, -23), (36, -21.2), (62, -20.4), (100, -19.8), (150, -18.6), (210, -17.4),
                  (262, -16.8), (296, -17.6), (322, -20.4), (346, -25.4), (368, -32.2), (386, -38), (400, -40.8), (410, -41), (422, -38.6),
                  (431, -32)])
FEMUR_INNER = of([(22, 36), (24.6, 30), (30, 23.2), (37, 17.4), (43.4, 15.2), (50, 16.6), (56.6, 15.6), (64, 12), (80, 10), (120, 9.2), (165, 9.4), (210, 10.4),
                  (262, 12), (296, 14), (322, 17.8), (346, 24), (368, 32.2), (384, 38.8), (394, 41.6), (410, 41.4), (422, 40),
                  (433, 35)])


def across(curve, a):
    """Where a curve crosses the level a: signed distance from the axis."""
    return Line(curve).crossings(at(a, 0)[:2], ACROSS)[0]


def names(p):
    p.hang("pelvis", "pelvis", HIP, 90)
    p.hang("leg", "knee", at(KNEE_A, 0), 90, "thigh")
    p.hang("thigh", "hip", HIP, 90, "pelvis")
    # toward the midline the trunk has no outline of its own: its half ends at the midline; its inner bone edges (the brim)
    # lie alike, so that the sheet beyond the midline keeps its drape on a stout body
    for name, a, b0, b1 in (("crest", -148, -6, 56), ("asis", -86, -7, 60), ("hip", 0, -19.6, 60)):
        p.level("pelvis", name, at(a, 0), ACROSS, across(OUTER, a), b0, b1, MID)
    p.level("pelvis", "fold", at(55, 0), ACROSS, across(OUTER, 55), across(FEMUR_OUTER, 55), 60, MID - 1)
    # so high up the skeleton reaches to pubis and ischium: the adductors' origins stay on them, however stout the thigh
    for name, a, inner, skin in (("trochanter", 10, 107.6, MID - 1), ("thigh-upper", 65, 78, across(INNER, 65))):
        p.level("thigh", name, at(a, 0), ACROSS, across(OUTER, a), across(FEMUR_OUTER, a), inner, skin)
    for name, a in (("mid-thigh", 210), ("lower-thigh", 355), ("epicondyle", KNEE_A)):
        p.level("thigh", name, at(a, 0), ACROSS, across(OUTER, a), across(FEMUR_OUTER, a), across(FEMUR_INNER, a), across(INNER, a))
    a = KNEE_A
    p.level("leg", "knee", at(a, 0), ACROSS, across(OUTER, a), across(FEMUR_OUTER, a), across(FEMUR_INNER, a), across(INNER, a))
    a = KNEE_A + 120
    p.level("leg", "shank", at(a, 0), ACROSS, across(OUTER, a), -39, 19, across(INNER, a))

    p.point("thigh", "landmark.greater-trochanter", O)
    p.point("pelvis", "landmark.asis", at(-86, -5))
    p.point("thigh", "landmark.lateral-femoral-epicondyle", at(409, -40))
    p.point("thigh", "landmark.patella", at(413, 0))

    import thigh_front_bones as b
    import thigh_front_flesh as f
    import thigh_front_muscles as m
    p.hidden_line("thigh", "femoral-artery", f.ARTERY[2:-1])        # from the ligament to the bone
    p.hidden_line("thigh", "lateral-circumflex-femoral-artery", f.DESCENDING)
    p.hidden_area("thigh", "bone.greater-trochanter", b.TROCHANTER)
    p.hidden_area("thigh", "bone.femur", b.FEMUR)
    p.hidden_area("thigh", "bone.patella", b.PATELLA)
    p.hidden_area("thigh", "muscle.vastus-lateralis", m.VASTUS_LATERALIS)
    p.hidden_area("thigh", "muscle.rectus-femoris", m.RECTUS)
