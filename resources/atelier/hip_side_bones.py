"""Hip from the side: lumbar hint, sacrum, hip bone, knee; each rounded from its own outline. Femur in hip_side_femur."""
import math

import hip_side_femur
from engrave import Line, pen, ramp, stipple
from hip_side_frame import CREST, HIP, SACRUM_EDGE, lg, th
from hip_side_model import model, outline
from hip_side_tools import hump, soft

NOTCH = [(210.5, 364.4), (219.5, 356.5), (227.6, 343), (234, 328), (239.6, 316.4), (246.4, 310.4), (257, 309.4), (268, 312.6), (279.4, 318.6), (288, 325.4)]
FRONT_BORDER = [(199.6, 205), (203, 209), (207, 214.4), (213.6, 218.2), (221.6, 218.6), (228.6, 216), (235, 214.2), (240.4, 216.4), (243.2, 222), (248.6, 227), (257, 228.4)]
RIM = [(257, 228.4), (252.4, 240), (251.6, 255), (255, 269), (262.6, 280.6), (274, 287.6), (288, 288.4)]
ILIUM = [*CREST[:-1], (177.4, 366.4), (185, 369.6), (194, 367.4), (203, 367.6), NOTCH[0], *NOTCH[1:8], (282, 300), (306, 276), (310, 248), (296, 228), (276, 222), *FRONT_BORDER[::-1]]
ISCHIUM = [(262, 300, "c"), (268, 312.6), (279.4, 318.6), (286.6, 325.6), (290.2, 324.4), (292.6, 318.6), (299, 315), (309, 317.4), (321, 320.4), (331.6, 317.4), (338.4, 309), (338.6, 300),
           (333.6, 288), (331, 270), (327, 246), (320, 217, "c"), (310, 222), (315, 246), (319, 268), (318, 284), (308, 290), (300, 280), (280, 276)]
PUBIS = [(255, 234, "c"), (262, 223), (270, 215), (279, 206), (287, 201.8), (297, 203.6), (309, 208.6), (320, 215.4), (317, 222), (306, 222), (297, 227), (292, 236), (280, 240)]
SACRUM = [(150, 318, "c"), (158, 344), (168, 358), *SACRUM_EDGE, (272.4, 329), (268.4, 327.4), (260, 334), (250, 340), (238, 343.6), (226, 343), (212, 336), (190, 320)]


def spine(p):
    """Lumbar vertebrae, only hinted: they tell where the trunk is."""
    p.on("bone", "pelvis", "lumbar-spine", "Lumbar spine")
    for k, (x, y) in enumerate(((34, 1), (71, 0), (108, 2), (144, 7))):
        o = (.4, .5, .6, .65)[k]
        arch = [(x - 13, y + 292), (x + 2, y + 296), (x + 13, y + 304), (x + 12, y + 311), (x + 18, y + 317), (x + 17, y + 325), (x + 9, y + 328), (x - 4, y + 326), (x - 8, y + 319),
                (x - 16, y + 314), (x - 17, y + 304)]
        p.area(arch, "bone-base", o)
        p.ink(outline(arch, .9), "bone-line", o)
        body = [(x - 15, y + 264, "c"), (x - 5, y + 266.4), (x + 5, y + 266.4), (x + 15.4, y + 264, "c"), (x + 14, y + 281), (x + 15.4, y + 298, "c"), (x + 5, y + 295.4), (x - 5, y + 295.4), (x - 15, y + 298, "c"), (x - 13.6, y + 281)]
        p.area(body, "bone-base", o)
        p.ink(outline(body, .9), "bone-line", o)


def sacrum(p):
    p.on("bone", "pelvis", "sacrum", "Sacrum and coccyx")
    model(p, SACRUM, 10, lambda x, y: 2.5 * math.sin((x - 180) / 6.4) * math.exp(-((y - 363 + .012 * (x - 215) ** 2) / 8) ** 2), o=(.27, .24))
    for x, y in ((222, 352), (237, 350.4), (250, 345)):
        p.ink(pen([(x - 3, y + 1), (x, y - .6), (x + 3, y + .4)], [.3, 1.3, .3]), "bone-line", .55)
    p.ink(pen([(258, 336.6), (261, 341), (260.6, 345.4)], [.05, .7, .05]), "bone-line", .6)
    p.ink(outline(SACRUM, 1.5), "bone-line")


def blade(x, y):
    """The outer face of the ilium: lip of the crest, pillar below the tubercle, the hollow behind it, the rim of the socket."""
    z = 6.5 * math.exp(-(((y - 247) + .12 * (x - 166)) / 15) ** 2) * ramp(x, (150, 0), (170, 1), (240, .8), (262, 0))
    z -= 8 * math.exp(-((x - 196) / 34) ** 2 - ((y - 296) / 26) ** 2)
    z -= 3 * math.exp(-((x - 212) / 14) ** 2 - ((y - 232) / 9) ** 2)
    z += 5 * math.exp(-((x - 166) / 10) ** 2 - ((y - 247) / 11) ** 2)
    z += 4 * math.exp(-((x - 192) / 22) ** 2 - ((y - 352) / 14) ** 2)
    r = math.hypot(x - HIP[0], y - HIP[1])
    return z + 5 * math.exp(-((r - 31) / 5) ** 2)


def hip_bone(p):
    p.on("bone", "pelvis", "ischium-pubis", "Ischium and pubis")
    for s in (PUBIS, ISCHIUM):
        model(p, s, 9, o=(.27, .24))
        p.ink(outline(s, 1.4), "bone-line")
    p.areas_of(stipple([(312, 306), (328, 302)], [(310, 317), (337, 309)], 6, .42, depth=.8), "bone-line", .6)
    p.on("bone", "pelvis", "ilium", "Ilium")
    model(p, ILIUM, 9, blade)
    p.ink(outline(ILIUM, 1.7), "bone-line")
    # outer lip of the crest, widest at the tubercle
    lip = Line(Line(CREST).shifted(lambda t: -ramp(t, (0, 3), (.1, 5), (.27, 13), (.4, 9), (.6, 6.5), (.9, 4)), .02, .95))
    p.ink([pen(lip, [.05, .5, .9, .7, .4, .05], .02, .5), pen(lip, [.05, .5, .4, .05], .54, .9)], "bone-line", .7)
    p.areas_of(stipple(lip.part(.1, .42), Line(CREST).part(.1, .42), 9, .4, depth=.9), "bone-line", .6)
    # gluteal lines: posterior, anterior, inferior
    for pts, w in (([(143, 325), (158, 333), (180, 339), (204, 342), (224, 341)], .6), ([(166, 236), (168, 256), (176, 280), (193, 301), (214, 313), (234, 317)], .7),
                   ([(213, 221), (222, 240), (232, 264), (242, 288), (250, 304)], .5)):
        ln = Line(pts)
        p.ink([pen(ln, [.05, w, w, .05], .02, .46), pen(ln, [.05, w, w * .8, .05], .5, .98)], "bone-line", .6)
    p.ink(pen(RIM, [.1, 1.0, 1.3, 1.0, .2]), "bone-line")
    soft(p, [(250, 228), (244, 243), (243, 258), (248, 276), (258, 290)], [(257, 230), (252.4, 242), (251.6, 256), (255, 269), (262, 280)], "bone-shade", .45, hump(.6))


def knee(p):
    p.on("bone", "leg", "tibia", "Tibia and fibula")
    fib = [lg(26, -20), lg(30, -14), lg(46, -15), lg(62, -16), lg(62, -26), lg(46, -27), lg(36, -29), lg(28, -28)]
    tib = [lg(14, 26), lg(20, 31), lg(34, 28), lg(48, 24), lg(64, 22), lg(64, -8), lg(48, -12), lg(34, -18), lg(18, -30), lg(10, -28), lg(9, 0)]
    for s in (tib, fib):
        p.area(s, "bone-base")
        p.ink(outline(s, 1.4), "bone-line")
    p.on("bone", "leg", "patella", "Patella")
    pat = [th(380, 38), th(386, 48), th(402, 51), th(418, 48), th(424, 40), th(412, 35), th(396, 34)]
    p.area(pat, "bone-light")
    p.ink(outline(pat, 1.4), "bone-line")


def draw(p):
    spine(p)
    sacrum(p)
    hip_bone(p)
    knee(p)
    hip_side_femur.draw(p)


TROCHANTER = hip_side_femur.TROCHANTER
