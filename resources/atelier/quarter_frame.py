"""Shoulder from three-quarter front: shared outlines, limb axes, hidden names.

Placed by hand after turning the side plate's body 45 degrees: a point at x cm from the midline and
z cm in front of the acromion is seen (20.5 - x + z) * 0.71 cm to the right of the origin.
"""
import math

from engrave import Line
from names import deep_names

O = (190, 200)                       # lateral edge of the acromion
TRUNK = (343, 200)                   # middle line of neck and trunk as seen
SHOULDER = (225, 200)                # axis of the round arm
ELBOW = (225, 527)
ANGLE = 77
A = (math.sin(math.radians(ANGLE)), math.cos(math.radians(ANGLE)))
U = (math.cos(math.radians(ANGLE)), -math.sin(math.radians(ANGLE)))


def fore(t, s, *corner):
    """A point of the forearm: t mm from the elbow toward the wrist, s toward its upper side."""
    return (ELBOW[0] + A[0] * t + U[0] * s, ELBOW[1] + A[1] * t + U[1] * s, *corner)


# -- skin outlines ---------------------------------------------------------------------------
ARM_BACK = [(231, 177), (224, 171.4), (216, 168.7), (207, 171.6), (198, 177.6), (187, 187.5), (177.6, 199), (170, 213), (166, 230), (164.8, 249),
            (166.4, 271), (170, 295), (174, 318), (176.4, 340), (176.6, 357), (175, 376), (173.2, 397),
            (173.4, 418), (176.6, 442), (180.8, 466), (183.2, 486), (182.2, 506), (181.6, 524), (186, 540), (195, 551.5),
            (208, 559)]
ARM_FRONT = [(268, 197), (277, 208), (283, 222), (286, 240), (286, 260), (284, 281), (281, 301), (277, 321),
             (274, 341), (273.6, 357), (276, 377), (279.6, 398), (281, 418), (279.6, 438), (276.4, 456), (272.4, 472),
             (268.5, 484), (263.5, 494), (257, 503)]      # goes on under the forearm
FORE_FRONT = [fore(-6, 14), fore(2, 24), fore(12, 33), fore(24, 41), fore(38, 46.5), fore(56, 49), fore(80, 46.5),
              fore(110, 41.5), fore(140, 36), fore(172, 31.5), fore(205, 29.5), fore(236, 30)]
FORE_BACK = [(181.6, 524), (186, 540), (195, 551.5), (208, 559), fore(4, -36.5), fore(22, -40.5), fore(45, -43), fore(75, -42.5),
             fore(110, -38.5), fore(150, -34), fore(190, -31), fore(236, -31)]
NECK_BACK = [(298, 6), (292, 28), (288.5, 52), (287, 76), (285.6, 96), (282, 114), (274, 129.5), (261, 142.5), (245, 152.5),
             (228, 160.5), (212, 168.5), (199, 177), (187, 187)]
# behind the arm; it shows only on a stout body
TRUNK_BACK = [(209, 170.3), (203, 177), (203, 188), (206, 206), (207, 230), (203, 270), (201.5, 310), (202, 352), (204, 420), (210, 480), (216, 540), (217, 580), (215, 640)]
NECK_FRONT = [(407.5, 108), (405.5, 120), (404, 134), (403, 148), (404, 158), (410, 164), (424, 168.5), (442, 172), (460, 175.5),
              (478, 180), (494, 187), (507, 198), (516, 213), (522, 234), (524, 262)]
TRUNK_FRONT = [(524, 262), (518, 300), (496, 335), (485, 365), (476, 430), (469, 490), (466, 540), (468, 580), (473, 640)]
JAW = [(299, 40), (301, 56), (306, 72), (315, 85), (330, 96), (350, 105), (374, 112), (398, 117), (418, 118.5), (431, 115),
       (438.5, 106.5), (441, 94)]
MIDLINE = [(377, 208), (386, 226), (397, 251), (408, 281), (416, 311), (421, 340), (424, 370)]

# -- bone outlines read by levels --------------------------------------------------------------
HUM_BACK = [(206, 212), (200.5, 221), (198.6, 233), (201, 245), (206.4, 257), (210.4, 271), (212, 290), (212.8, 315),
            (213, 340), (212.4, 363), (211.8, 385), (211.8, 410), (211, 440), (208.4, 462), (204.8, 480), (201.4, 495),
            (199.6, 507), (201.4, 516), (206.4, 522)]
HUM_FRONT = [(240, 211), (247.4, 219.5), (250, 231), (247.8, 243), (242.4, 254), (239, 268), (237.6, 290), (237, 315),
             (236.8, 340), (237, 363), (237, 385), (236.8, 410), (236.8, 440), (238.4, 462), (241.6, 480), (246, 494),
             (250.4, 504), (251.4, 513), (247, 520)]


def names(p):
    p.hang("trunk", "trunk", TRUNK)
    p.hang("arm", "shoulder", SHOULDER, 0, "trunk")
    p.hang("forearm", "elbow", ELBOW, ANGLE, "arm")
    right = (1, 0)
    nb, nf = Line(NECK_BACK), Line(NECK_FRONT)
    tb, tf = Line(TRUNK_BACK), Line(TRUNK_FRONT)
    ab, af, hb, hf = Line(ARM_BACK), Line(ARM_FRONT), Line(HUM_BACK), Line(HUM_FRONT)

    def x(line, y, joint, last=False):
        return line.at_y(y, last)[0] - joint[0]

    for name, y, lb, b0, b1, lf in (("neck", 125, nb, -20, 24, nf), ("shoulder", 212, tb, -90, 84, nf),
                                    ("chest", 365, tb, -112, 112, tf), ("waist", 565, tb, -60, 64, tf)):
        p.level("trunk", name, (TRUNK[0], y), right, x(lb, y, TRUNK), b0, b1, x(lf, y, TRUNK))
    p.level("arm", "shoulder-top", (SHOULDER[0], 178), right, x(ab, 178, SHOULDER), -12, 22, 40)
    p.level("arm", "acromion", SHOULDER, right, x(ab, 200, SHOULDER), -35, 20, x(af, 200, SHOULDER))
    for name, y in (("axilla", 303.5), ("mid-arm", 363.5)):
        p.level("arm", name, (SHOULDER[0], y), right, x(ab, y, SHOULDER), x(hb, y, SHOULDER), x(hf, y, SHOULDER),
                x(af, y, SHOULDER))
    p.level("arm", "radiale", (SHOULDER[0], 527.87), right, x(ab, 527, SHOULDER), -16, 22, 48)
    p.level("arm", "elbow-tip", (SHOULDER[0], 550), right, x(ab, 550, SHOULDER), -14, 10, 40)
    ff, fb = Line(FORE_FRONT), Line(FORE_BACK)
    for name, t, b0, b1 in (("elbow", 0, -22, 14), ("forearm", 60, -14, 14), ("wrist", 230, -14, 15)):
        at = fore(t, 0)
        p.level("forearm", name, at, U, min(fb.crossings(at, U)), b0, b1, max(ff.crossings(at, U)))

    p.point("arm", "landmark.acromion.lateral", O)
    p.point("arm", "landmark.acromion.front", (213, 196.5))
    p.point("arm", "landmark.acromion.back", (181.5, 203.5))
    p.point("arm", "landmark.deltoid-tuberosity", (218, 373))
    p.point("arm", "landmark.lateral-epicondyle", (202, 513))
    p.point("arm", "landmark.axilla.front", (281.5, 303))
    p.point("arm", "landmark.axilla.back", (175, 303))
    p.point("trunk", "landmark.clavicle.medial", (364, 204))
    p.point("trunk", "landmark.scapula.spine", (217, 224))

    import quarter_bones as b
    import quarter_flesh as f
    import quarter_muscles as m
    deep_names(p, b, f, m, b.CLAVICLE_AXIS)
