"""Hip from the side, patient lying on the left side: shared outlines, the limb axes, the hidden names.

The plate's head end is on the left, the front of the body up. Millimetres, y down; origin (300 270) is the greater
trochanter. Three frames: pel (up and front of the hip centre), th (along and front of the thigh), lg (leg).
"""
import math

from engrave import Line

O = (300, 270)
HIP = (282.5, 256.1)
ANGLE, LEG = 115, 75


def _axes(angle):
    a = math.radians(angle)
    return (math.sin(a), math.cos(a)), (math.cos(a), -math.sin(a))       # along, across; y down


TA, TU = _axes(ANGLE)
LA, LU = _axes(LEG)
KNEE = (HIP[0] + 409 * TA[0], HIP[1] + 409 * TA[1])


def pel(up, front, *corner):
    return (HIP[0] - up, HIP[1] - front, *corner)


def th(t, s, *corner):
    """A point of the thigh: t mm from the hip centre toward the knee, s toward its front."""
    return (HIP[0] + TA[0] * t + TU[0] * s, HIP[1] + TA[1] * t + TU[1] * s, *corner)


def lg(t, s, *corner):
    return (KNEE[0] + LA[0] * t + LU[0] * s, KNEE[1] + LA[1] * t + LU[1] * s, *corner)


# -- skin outlines -----------------------------------------------------------------------------
# front: the belly down to the crease of the bent hip; back: small of the back, sacrum, right buttock, into the fold
FRONT = [(-14, 153), (20, 150), (50, 148.6), (72, 148.2), (100, 148.8), (124, 150.4), (148, 152.6), (175, 156), (208, 160.4), (238, 163),
         (262, 166), (276, 168.4), (286, 172)]
BACK = [(-14, 376), (10, 369.5), (34, 361.4), (56, 355.6), (76, 353.4), (96, 355.2), (116, 361), (136, 368.4), (156, 375.6), (178, 381.6),
        (200, 385.4), (224, 388.8), (250, 390.8), (276, 391.6), (300, 390.6), (320, 387.2), (338, 380), (353, 368), (363, 353), (367.4, 338), (367.6, 328)]
FOLD = [(353, 368), (363, 353), (367.4, 338), (367.6, 326), (364.8, 314), (359.6, 304), (352, 295)]
THIGH_FRONT = [th(20, 74), th(32, 81), th(42, 85.4), th(56, 87.4), th(75, 88.4), th(100, 88.6), (*th(130, 88),), th(165, 86.6), th(210, 84),
               th(250, 80.6), th(290, 75), th(325, 66.4), th(352, 61.4), th(385, 60.6), th(404, 59), th(420, 53)]
THIGH_BACK = [th(14, -109), th(28, -104.6), th(46, -99.6), th(70, -94.4), th(100, -89.6), th(135, -85.4), th(175, -81.4), th(215, -77.6),
              th(255, -73), th(295, -67.4), th(330, -61.4), th(358, -58.4), th(390, -55), th(415, -50)]
LEG_FRONT = [th(404, 61), lg(6, 60), lg(24, 56.4), lg(60, 53), lg(100, 51.4), lg(140, 49)]
LEG_BACK = [th(398, -56), lg(12, -52), lg(40, -56), lg(80, -61), lg(120, -62), lg(150, -60)]
CREASE = [(285.6, 166.6), (276, 174.6), (264, 183), (250, 191), (236, 198)]

# -- bone outlines read by levels ----------------------------------------------------------------
ASIS, TUBERCLE, TOP, PSIS, TUBER = (196.4, 203.9), (166.4, 249), (135, 284), (179, 369), (337.5, 306)
CREST = [ASIS, (184, 215.4), (170, 231.4), (156.2, 250), (143.6, 269), (137, 278.4), TOP, (134.4, 293), (136, 306), (142, 325), (153, 344.6), (166, 359.4), PSIS]
SACRUM_EDGE = [(180, 366.6), (194, 369), (208, 369.6), (222, 368.2), (236, 363.6), (248, 356.6), (257, 349), (264, 341.4), (270, 333)]
FEM_FRONT = [th(40, 3), th(52, 6.4), th(65, 9.6), th(90, 14.6), th(120, 18.8), th(160, 22), th(210, 23), th(260, 22), th(305, 20.6), th(335, 21),
             th(358, 24), th(378, 28.6), th(395, 29), th(409, 25)]
FEM_BACK = [th(40, -30), th(52, -25), th(65, -20.6), th(90, -14.6), th(120, -9.8), th(160, -6.2), th(210, -5.2), th(260, -7), th(305, -10.6), th(335, -15.4),
            th(358, -23), th(378, -32), th(395, -37), th(409, -38.6)]


def names(p):
    p.hang("leg", "knee", KNEE, LEG, "thigh")
    p.hang("pelvis", "pelvis", HIP, 90)
    p.hang("thigh", "hip", HIP, ANGLE, "pelvis")
    p.point("pelvis", "landmark.asis", ASIS)
    p.point("pelvis", "landmark.iliac-tubercle", TUBERCLE)
    p.point("pelvis", "landmark.iliac-crest", TOP)
    p.point("pelvis", "landmark.psis", PSIS)
    p.point("pelvis", "landmark.ischial-tuberosity", TUBER)
    p.point("thigh", "landmark.greater-trochanter", O)
    p.point("thigh", "landmark.lateral-femoral-epicondyle", th(404, -6))
    front, back = Line(FRONT), Line(BACK)
    up = (0, -1)

    def y(line, at):
        return line.crossings(at, up)
    # the skeleton's extent as far as it lies near the skin: flesh outside these edges takes up the fat
    for name, x, b0, b1 in (("waist", 72.5, -64, 12), ("crest", 134.5, -88, 20), ("asis", 196.5, -105, 52.2), ("hip", 282.5, -72, 40), ("fold", 337.5, -56, 12)):
        at = (x, HIP[1])
        p.level("pelvis", name, at, up, min(y(back, at)), b0, b1, max(y(front, at)) if x < 280 else (85.6 if x < 300 else 84))
    tf, tb = Line(THIGH_FRONT), Line(THIGH_BACK)
    at = th(10, 0)
    p.level("thigh", "trochanter", at, TU, min(back.crossings(at, TU)), -41, 23, 90)
    ff, fb = Line(FEM_FRONT), Line(FEM_BACK)
    for name, t in (("thigh-upper", 65), ("mid-thigh", 210), ("lower-thigh", 355), ("epicondyle", 408.9)):
        at = th(t, 0)
        p.level("thigh", name, at, TU, min(tb.crossings(at, TU)), min(fb.crossings(at, TU)), max(ff.crossings(at, TU)), max(tf.crossings(at, TU)))
    for name, t, e in (("knee", 0, (-54, -34, 28, 60)), ("shank", 120, (-62, -14, 26, 51))):
        p.level("leg", name, lg(t, 0), LU, *e)
