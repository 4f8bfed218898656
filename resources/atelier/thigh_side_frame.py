"""Thigh from the lateral side, lying on the back: shared outlines in centimetres, axes, hidden names.

Head to the left, front of the body up. at(x, y): centimetres right of and above the greater trochanter.
"""
from engrave import Line

O = (170, 165)                       # greater trochanter
AXIS = 2.0                           # height of the axis hip centre - knee
HIP, KNEE = -1.0, 39.9
ACROSS = (0, -1)


def at(x, y, *corner):
    return (O[0] + 10 * x, O[1] - 10 * y, *corner)


def cm(*points):
    return [at(*q) for q in points]


# -- skin outlines -----------------------------------------------------------------------------
BELLY = cm((-19, 10.15), (-15.8, 10.0), (-12.5, 9.85), (-9.6, 9.6), (-6.5, 9.3), (-3.5, 9.25), (-1, 9.5), (1.5, 9.7), (4, 9.6), (7, 9.2))
FRONT = cm((-6.6, 6.4), (-3.6, 7.5), (-.5, 8.75), (2.2, 9.45), (5.5, 9.95), (9, 10.3), (13, 10.5), (17, 10.4), (20, 10.15), (24, 9.6), (28, 8.8),
           (31, 8.1), (33.4, 7.5), (35.4, 7.08), (36.9, 6.92), (37.9, 7.02), (39, 7.28), (40.3, 7.36), (41.5, 7.16), (42.5, 6.7), (43.5, 6.3))
SHIN = cm((38.6, 6.9), (40.3, 7.1), (41.5, 7.1), (42.5, 6.7), (43.5, 6.3), (44.8, 6.02), (46.2, 5.92), (47.3, 5.8), (48.5, 5.36), (50, 5.06), (51.9, 4.86), (55, 4.6), (58, 4.4))
LOIN = cm((-19, -8.1), (-15.8, -9.0), (-13.5, -10.0), (-11, -11.0), (-8, -11.65), (-4.5, -11.9), (-1, -11.75), (2, -11.25), (4.2, -10.35),
          (5.8, -9.4), (7.4, -8.9), (10, -8.6))
BACK = cm((-4.5, -11.9), (-1, -11.75), (2, -11.25), (4.2, -10.35), (5.8, -9.4), (7.4, -8.9), (10, -8.55), (14, -7.95), (18, -7.2), (22, -6.4), (26, -5.82), (30, -5.36),
          (34.5, -4.98), (37, -4.72), (39.9, -4.5), (41.6, -4.62), (43, -5.0))
CALF = cm((37, -4.72), (39.9, -4.5), (41.6, -4.62), (43, -5.0), (45, -5.75), (47.2, -6.5), (49.5, -6.95), (51.9, -7.1), (55, -7.1), (58, -6.9))

# -- bone outlines read by levels ----------------------------------------------------------------
FEMUR_FRONT = cm((2.6, 3.0), (4.2, 2.72), (6, 2.68), (9, 2.98), (13, 3.48), (17, 3.86), (20, 4.0), (24, 4.04), (28, 3.9), (31, 3.74), (34.5, 3.76), (36.4, 4.06),
                 (38, 4.36), (39.6, 4.3), (41, 3.76), (42.1, 2.8), (42.7, 1.5))
FEMUR_BACK = cm((1.2, -2.2), (2.6, -1.4), (4.0, -.66), (5.5, -.3), (8, .02), (12, .56), (16, 1.0), (20, 1.22), (24, 1.2), (28, .92), (31, .58), (34, .2),
                (36.2, -.2), (37.5, -.86), (38.6, -1.72), (39.9, -2.2), (41.1, -2.0), (42.2, -1.1), (42.75, .2))


def x_of(x):
    return at(x, AXIS)


def names(p):
    p.hang("pelvis", "pelvis", x_of(HIP), 90)
    p.hang("thigh", "hip", x_of(HIP), 90, "pelvis")
    p.hang("leg", "knee", x_of(KNEE), 90, "thigh")

    def across(points, x, pick=max):
        return pick(Line(points).crossings(x_of(x), ACROSS))

    for name, x, b0, b1 in (("crest", -15.8, -80, 5), ("asis", -9.6, -114, 52), ("hip", -1.0, -88, 52), ("fold", 4.5, -61, 5)):
        front = max(across(BELLY, x), across(FRONT, x) if x > -6 else 0)
        p.level("pelvis", name, x_of(x), ACROSS, across(LOIN, x, min), b0, b1, front)
    for name, x in (("trochanter", 0.0), ("thigh-upper", 5.5), ("mid-thigh", 20.0), ("lower-thigh", 34.5), ("epicondyle", KNEE)):
        b0, b1 = (-42, 22) if x == 0 else (across(FEMUR_BACK, x, min), across(FEMUR_FRONT, x))
        p.level("thigh", name, x_of(x), ACROSS, across(BACK, x, min), b0, b1, across(FRONT, x))
    p.level("leg", "knee", x_of(KNEE), ACROSS, across(CALF, KNEE, min), across(FEMUR_BACK, KNEE, min), across(FEMUR_FRONT, KNEE), across(FRONT, KNEE))
    p.level("leg", "shank", x_of(51.9), ACROSS, across(CALF, 51.9, min), -29, 23, across(SHIN, 51.9))

    p.point("pelvis", "landmark.asis", at(-9.6, 7.2))
    p.point("thigh", "landmark.greater-trochanter", O)
    p.point("thigh", "landmark.lateral-femoral-epicondyle", at(39.9, 1.4))
    p.point("thigh", "landmark.patella", at(40.3, 6.5))

    import thigh_side_femur as b
    import thigh_side_flesh as f
    import thigh_side_muscles as m
    p.hidden_line("thigh", "sciatic-nerve", f.SCIATIC)
    for name, shape in (("bone.greater-trochanter", b.TROCHANTER), ("bone.femur", b.FEMUR), ("bone.patella", b.PATELLA),
                        ("muscle.vastus-lateralis", m.VASTUS), ("muscle.rectus-femoris", m.RECTUS), ("muscle.hamstrings", m.HAMSTRINGS)):
        p.hidden_area("thigh", name, shape)
