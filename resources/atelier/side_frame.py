"""Shoulder from the side: shared outlines, the limb axes, and the hidden names."""
import math

from engrave import Line
from names import deep_names

O = (240, 200)                       # lateral edge of the acromion
ELBOW = (240, 520)
ANGLE = 78
A = (math.sin(math.radians(ANGLE)), math.cos(math.radians(ANGLE)))       # along the forearm
U = (math.cos(math.radians(ANGLE)), -math.sin(math.radians(ANGLE)))      # its front side


def fore(t, s, *corner):
    """A point of the forearm: t mm from the elbow toward the wrist, s toward its front (upper) side."""
    return (ELBOW[0] + A[0] * t + U[0] * s, ELBOW[1] + A[1] * t + U[1] * s, *corner)


# -- skin outlines ---------------------------------------------------------------------------
# front and back of the arm swell at different heights: deltoid and biceps in front, triceps behind between them
ARM_BACK = [(214, 172), (201, 182), (189.5, 195), (183.6, 209), (180.6, 228), (180.2, 248), (182.4, 272), (186.6, 297), (190.2, 314),
            (189.6, 328), (187.6, 345), (187, 360), (188, 380), (190.4, 402), (193.4, 426), (196.4, 450), (199.4, 474),
            (201.8, 492), (202.6, 506), (202.2, 519), (203, 530), (206.2, 538.6), (213, 545), (223, 549), (234, 552)]
ARM_FRONT = [(258, 172), (274, 179), (287, 190), (296, 203), (300.8, 220), (302.6, 239), (302.2, 258), (300.4, 280), (297, 302),
             (292, 323), (287.4, 340), (285.2, 352), (285.8, 365), (288.8, 382), (292.4, 402), (294.2, 419), (293.4, 435),
             (289.6, 450), (284.8, 462), (279.5, 472), (272, 482)]
BRACHIORADIALIS = [(257, 444), (264, 454), (273, 464), (283, 471.5), (295, 476.5)]       # it rises on the arm
FORE_FRONT = [fore(-10, 36), fore(6, 41.5), fore(24, 48), fore(42, 51.4), fore(60, 51.4), fore(84, 48.2), fore(116, 41.2),
              fore(156, 33.4), fore(200, 28.4), fore(240, 27), fore(270, 28)]
# as drawn: the brachioradialis is the forearm's upper line; FORE_FRONT measures its levels
FORE_TOP = [*BRACHIORADIALIS[1:], *FORE_FRONT[4:]]
FORE_BACK = [(206.2, 538.6), (213, 545), (223, 549), (234, 552), fore(18, -33.4), fore(38, -36.6), fore(62, -40), fore(90, -40.6),
             fore(130, -37.6), fore(180, -32.4), fore(230, -29.5), fore(270, -30)]
BACK = [(180, 4), (182, 24), (186.5, 45), (193.5, 66), (200, 84), (202.4, 102), (199.6, 120), (195.6, 136), (188.5, 149), (181.5, 162),
        (172.5, 178), (160.5, 199), (148, 228), (139.5, 262), (135.6, 298), (135.6, 335), (137.2, 365), (141, 410), (146, 460),
        (149.5, 510), (150, 565), (148, 640)]
FRONT = [(353, 58), (354.8, 66), (355, 72.5), (350.8, 80), (349.8, 86), (353, 92), (353.6, 99), (350, 106), (342, 110), (331, 113.5), (321, 119.5), (315, 127),
         (313, 137), (314, 148), (310.5, 165), (304.5, 182), (302.5, 193), (305.5, 206), (314, 226), (326, 249), (340.5, 272), (352.5, 294),
         (360.5, 316), (364, 338), (365, 360), (364, 400), (359, 450), (354, 510), (355, 565), (362, 640)]

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
    for name, y, b0, b1 in (("neck", 125, -18, 22), ("shoulder", 205, -56, 45),
                            ("chest", 365, -72, 87), ("waist", 565, -62, 72)):
        p.level("trunk", name, (O[0], y), right, x(back, y), b0, b1, x(front, y))
    p.level("arm", "shoulder-top", (O[0], 178), right, x(ab, 178), -16, 18, x(af, 178))
    p.level("arm", "acromion", O, right, x(ab, 200), -22, 23, x(af, 200))
    for name, y in (("axilla", 303.5), ("mid-arm", 363.5)):
        p.level("arm", name, (O[0], y), right, x(ab, y), x(hb, y), x(hf, y), x(af, y))
    p.level("arm", "radiale", (O[0], 527.87), right, x(ab, 527), -8.5, 13.5, 55)
    p.level("arm", "elbow-tip", (O[0], 546), right, x(ab, 546), -16, 12, 50)
    ff, fb = Line(FORE_FRONT), Line(FORE_BACK)
    for name, t, b0, b1 in (("elbow", 0, -22, 12), ("forearm", 60, -14.5, 12), ("wrist", 262, -14, 13)):
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
    deep_names(p, b, f, m, [(252, 190), (270, 187.5), (285, 194), (298, 204)])
