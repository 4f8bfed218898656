"""Shoulder from the side: shared outlines, the limb axes, and the hidden names."""
import math

from engrave import Line

O = (240, 200)                       # lateral edge of the acromion
ELBOW = (240, 520)
ANGLE = 78
A = (math.sin(math.radians(ANGLE)), math.cos(math.radians(ANGLE)))       # along the forearm
U = (math.cos(math.radians(ANGLE)), -math.sin(math.radians(ANGLE)))      # its front side


def fore(t, s, *corner):
    """A point of the forearm: t mm from the elbow toward the wrist, s toward its front (upper) side."""
    return (ELBOW[0] + A[0] * t + U[0] * s, ELBOW[1] + A[1] * t + U[1] * s, *corner)


# -- skin outlines ---------------------------------------------------------------------------
ARM_BACK = [(214, 172), (201, 182), (188.5, 195), (182, 210), (179.3, 229), (178.8, 248), (180.5, 273), (185, 303),
            (191.4, 328), (192.8, 343), (190.6, 364), (187.2, 388), (187, 406), (190, 432),
            (196.5, 460), (201, 483), (202.6, 503), (202.6, 524), (206, 538), (213.5, 547.5), (225, 552.5)]
ARM_FRONT = [(258, 172), (274, 179), (287.5, 190), (296, 203), (300.3, 222), (301.5, 243), (300, 268), (296, 294),
             (290, 318), (286, 339), (287.6, 362), (291.2, 386), (293, 408), (291.6, 432),
             (287, 457), (282, 480), (280, 494)]
FORE_FRONT = [fore(-10, 36), fore(0, 40), fore(15, 45.5), fore(34, 49), fore(58, 48.8), fore(88, 45.5), fore(122, 39.5),
              fore(162, 33), fore(205, 29), fore(240, 28), fore(270, 28.5)]
FORE_BACK = [(206, 538), (213.5, 547.5), (225, 552.5), (238, 556), fore(18, -38), fore(40, -40), fore(62, -40.3),
             fore(95, -39.3), fore(140, -36), fore(190, -31.5), fore(230, -30.5), fore(270, -31)]
BACK = [(214, 8), (207.5, 30), (204, 55), (203.5, 82), (201.5, 108), (196.5, 132), (188, 152), (177, 171), (161, 198),
        (148, 228), (139, 262), (135, 298), (135.5, 335), (137.2, 365), (141, 410), (146, 460),
        (149.5, 510), (150, 565), (148, 640)]
FRONT = [(366, 62), (369, 72), (371, 86), (375.5, 97), (372, 108), (361, 113.5), (344, 115), (328, 118.5), (319.5, 126),
         (316.5, 136), (315.5, 147), (310.5, 165), (304.5, 182), (302.5, 193), (306, 206), (319, 234), (337, 264), (353, 296),
         (363, 328), (365.5, 356), (364, 400), (359, 450), (354, 510), (355, 565), (362, 640)]

# -- bone outlines read by levels --------------------------------------------------------------
HUM_BACK = [(224, 213), (218.5, 222), (217.5, 234), (219.5, 246), (224, 258), (226.8, 272), (227.4, 292), (227.6, 315),
            (228, 340), (228, 363), (227.8, 385), (228.4, 410), (229, 440), (228.4, 462), (226.4, 482), (225, 497),
            (226, 508), (229.5, 517), (231.5, 526)]
HUM_FRONT = [(262, 214), (267.3, 224), (268, 236), (264, 248), (258.4, 258), (255, 272), (253.4, 292), (252.6, 315),
             (252.4, 340), (252.8, 363), (252, 385), (250.4, 410), (248.2, 440), (246.6, 462), (246, 480), (248, 494),
             (252.4, 505), (254.4, 516), (252.6, 526)]


def names(p):
    p.hang("trunk", "trunk", O)
    p.hang("forearm", "elbow", ELBOW, ANGLE, "arm")
    p.hang("arm", "shoulder", O, 0, "trunk")
    back, front = Line(BACK), Line(FRONT)
    ab, af = Line(ARM_BACK), Line(ARM_FRONT)
    hb, hf = Line(HUM_BACK), Line(HUM_FRONT)

    def x(line, y, last=False):
        return line.at_y(y, last)[0] - O[0]

    right = (1, 0)
    for name, y, b0, b1 in (("neck", 125, -18, 22), ("shoulder", 205, -64, 61),
                            ("chest", 365, -80, 100), ("waist", 565, -68, 84)):
        p.level("trunk", name, (O[0], y), right, x(back, y), b0, b1, x(front, y))
    p.level("arm", "shoulder-top", (O[0], 178), right, x(ab, 178), -16, 18, x(af, 178))
    p.level("arm", "acromion", O, right, x(ab, 200), -22, 23, x(af, 200))
    for name, y in (("axilla", 303.5), ("mid-arm", 363.5)):
        p.level("arm", name, (O[0], y), right, x(ab, y), x(hb, y), x(hf, y), x(af, y))
    p.level("arm", "radiale", (O[0], 527), right, x(ab, 527), -8.5, 13.5, 52)
    p.level("arm", "elbow-tip", (O[0], 550), right, x(ab, 550), -12, 12, 46)
    ff, fb = Line(FORE_FRONT), Line(FORE_BACK)
    for name, t, b0, b1 in (("elbow", 0, -25, 12), ("forearm", 60, -14.5, 12), ("wrist", 262, -14, 13)):
        at = fore(t, 0)
        p.level("forearm", name, at, U, min(fb.crossings(at, U)), b0, b1, max(ff.crossings(at, U)))

    p.point("arm", "landmark.acromion.lateral", O)
    p.point("arm", "landmark.acromion.front", (263, 198))
    p.point("arm", "landmark.acromion.back", (218, 204))
    p.point("arm", "landmark.deltoid-tuberosity", (240.5, 373))
    p.point("arm", "landmark.lateral-epicondyle", (236, 514))
    p.point("arm", "landmark.axilla.front", (299, 303))
    p.point("arm", "landmark.axilla.back", (182, 303))
    p.point("trunk", "landmark.clavicle.medial", (298, 204))
    p.point("trunk", "landmark.scapula.spine", (164, 224))

    import side_bones as b
    import side_flesh as f
    import side_muscles as m
    p.hidden_line("arm", "axillary-nerve", f.AXILLARY)
    p.hidden_line("arm", "radial-nerve", f.RADIAL)
    p.hidden_line("trunk", "clavicle", [(252, 190), (270, 187.5), (285, 194), (298, 204)])
    p.hidden_area("arm", "bone.acromion", b.ACROMION)
    p.hidden_area("trunk", "bone.clavicle", b.CLAVICLE)
    p.hidden_area("arm", "bone.humerus", b.HUMERUS)
    p.hidden_area("trunk", "bone.scapula", b.SCAPULA)
    p.hidden_area("arm", "bursa", f.BURSA)
    p.hidden_area("arm", "muscle.deltoid", m.DELTOID)
