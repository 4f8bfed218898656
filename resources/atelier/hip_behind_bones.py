"""Hip from behind: lumbar spine, sacrum, the two hip bones, the two femurs."""
import math

from engrave import Line, pen, rim, stipple
from hip_behind_frame import (ASIS, CREST_LINE, FOLD, INNER_L, INNER_R, MID, SHAFT_IN, SHAFT_OUT, SIDE_L, SIDE_R,
                              left, right)
from side_tools import hump, pool, rise, soft

SACRUM_EDGE = [(45, 132), (40, 146), (37, 160), (38, 172), (42.6, 184), (43, 194), (38, 207), (31.4, 219), (27.6, 227), (20, 235), (13, 240)]
_HALF = [(0, 124), (12, 121.4), (28, 120.6), (46, 123), (57, 131), (54, 146), (43, 158), (40, 168), *SACRUM_EDGE[4:], (11, 246), (6.4, 256), (3.4, 264), (0, 266.4)]
SACRUM = [*right(_HALF), *left(_HALF[-2:0:-1])]

# medial border of the hip bone from the crest's hind end down: PSIS, PIIS, notch, spine, lesser notch, tuberosity
INNER_EDGE = [(47.6, 140), (42, 148), (39.4, 156), (40.4, 164), (45.4, 169.4), (45.6, 176), (44.2, 182), (47.4, 188), (55.6, 190.6), (63.6, 195.6),
              (69.4, 203), (71, 211), (68.6, 220), (64.4, 231), (58, 243), (50.6, 252.4), (50, 256), (54.4, 259), (58, 265),
              (57.8, 274), (53.6, 284), (48.4, 295), (45.6, 306), (46.4, 317), (51, 325), (58, 328.4)]
OUTER_EDGE = [ASIS, (117.6, 179), (114.4, 187), (112, 194), (112.6, 201), (114, 208), (112.2, 216), (113, 224), (111, 231), (104, 237),
              (96, 244), (91, 254), (89.4, 265), (91, 275), (90, 283), (85.6, 290), (81.4, 299), (78.6, 309), (74, 319), (66.6, 326)]
ILIUM = [(*ASIS, "c"), *CREST_LINE[1:-2], *INNER_EDGE, *OUTER_EDGE[:0:-1]]
RAMUS = [(47, 309, "c"), (46.6, 318), (51, 325.4, "c"), (40, 319.6), (30, 311.6), (20, 301), (10.4, 288), (4, 278), (3.4, 262), (9, 253.6), (24, 250), (44, 246), (66, 240, "c"),
         (68, 254, "c"), (48, 257), (34, 261), (25.4, 266.4), (22.4, 275.6), (26, 287), (33.6, 297), (41, 304)]
FEMUR = [(94, 242), (101, 246.4), (108, 249), (113.4, 247), (118, 242.4), (123, 241), *[q for q in SHAFT_OUT[1:] if q[1] < 399], (114, 398), *[q for q in SHAFT_IN[::-1] if q[1] < 399], (88, 281), (74, 281),
         (62, 273), (56.6, 262), (58.6, 249), (66, 239), (78, 234), (88, 236)]
TROCHANTER = [(113.4, 247), (118, 242.4), (123, 241), *SHAFT_OUT[1:7], (124, 296), (116, 284), (112, 270), (111.4, 256)]


def outline(p, shape, thick=1.3, thin=.3, press=None):
    p.ink(rim(shape, thin, thick, press=press), "bone-line")


def ghost(p):
    """The body's outline, barely there, so that bared bones do not float."""
    for limb, ln, a, b in (("pelvis", SIDE_R, .1, .62), ("pelvis", SIDE_L, .1, .62), ("thigh", SIDE_R, .58, .8), ("thigh-left", SIDE_L, .58, .8),
                           ("thigh", INNER_R, .12, .52), ("thigh-left", INNER_L, .12, .52), ("pelvis", right(FOLD), 0, 1), ("pelvis", left(FOLD), 0, 1)):
        p.on("bone", limb)
        p.ink(pen(Line(ln), [.05, .7, .7, .7, .05], a, b), "bone-shade", .6)


def spine(p):
    p.on("bone", "pelvis", "lumbar-vertebrae", "Lumbar vertebrae")
    for y, s in ((82, .97), (106, 1)):
        body = [(-20 * s, y - 9), (0, y - 10), (20 * s, y - 9), (18 * s, y), (21 * s, y + 8), (0, y + 9), (-21 * s, y + 8), (-18 * s, y)]
        p.area(right(body), "bone-base", .8)
        p.ink(rim(right(body), .2, .8), "bone-line", .6)
        for side in (right, left):
            wing = [(13, y - 5), (28, y - 7), (40 * s, y - 8, "c"), (42.6 * s, y - 5.4), (41 * s, y - 2.4, "c"), (28, y - .6), (13, y + 3)]
            p.area(side(wing), "bone-base")
            p.ink([pen(side([(13, y - 5), (28, y - 7), (40 * s, y - 8)]), [.3, .4, .2]),
                   pen(side([(41.6 * s, y - 7), (42.6 * s, y - 5.4), (41 * s, y - 2.4), (28, y - .6), (13, y + 3)]), [.3, .8, 1.0, 1.0, .4])], "bone-line", .85)
        half = [(5, y - 6), (8, y - 13), (14, y - 15), (17, y - 9), (13.4, y - 1), (16.4, y + 6), (15, y + 12), (9, y + 13), (6, y + 7)]
        lamina = [(0, y - 4), *half, (0, y + 5), *[(-a, b) for a, b in half[::-1]]]
        p.area(right(lamina), "bone-light")
        p.ink(rim(right(lamina), .3, 1.2), "bone-line")
        sp = [(-2.2, y - 5), (0, y - 6), (2.2, y - 5), (3, y + 4), (4.4, y + 11), (0, y + 14), (-4.4, y + 11), (-3, y + 4)]
        p.area(right(sp), "bone-light")
        p.ink(rim(right(sp), .3, 1.3), "bone-line")


def sacrum(p):
    p.on("bone", "pelvis", "sacrum", "Sacrum and coccyx")
    p.area(SACRUM, "wash.sacrum")
    soft(p, right([(26, 128), (24, 144), (20, 160), (20, 180), (18, 200), (15, 216), (10, 230), (7, 240)]), right([(55, 134), (53, 146), (42, 158), (37, 172), (43, 190), (38, 207), (27, 227), (16, 238)]), "bone-shade", .46, 6, hump(.8))
    for side, w in ((right, 1), (left, .8)):
        for k, (x, y) in enumerate(((19, 145), (17.6, 164), (15.6, 183), (13, 201))):
            r = 3.4 - .35 * k
            hole = [(x - r, y), (x - .4 * r, y - 1.2 * r), (x + .8 * r, y - r), (x + r, y + .3 * r), (x + .3 * r, y + 1.1 * r), (x - .7 * r, y + .8 * r)]
            p.area(side(hole), "bone-shade", .85)
            p.ink(pen(side([(x - r, y + .4 * r), (x - .6 * r, y - r), (x + .6 * r, y - 1.1 * r), (x + r, y)]), [.05, .8, .8, .05]), "bone-line", .9)
        p.ink(pen(side([(29, 140), (28.4, 158), (27, 178), (24.6, 198), (21, 216)]), [.05, .5, .35, .5, .05]), "bone-line", .6)
    for y, h in ((139, 9), (160, 8.6), (180, 7.4), (198, 6)):
        kn = [(-2.6, y - h), (0, y - h - 1), (2.6, y - h), (3.8, y), (2.6, y + h), (0, y + h + 1), (-2.6, y + h), (-3.4, y)]
        p.area(right(kn), "bone-light", .7)
        p.ink(pen(right([(2.4, y - h), (3.8, y), (2.4, y + h), (0, y + h + 1)]), [.05, .9, .7, .05]), "bone-line", .9)
    p.ink([pen(right([(-5, 212), (-6, 222), (-4, 230)]), [.05, .7, .3]), pen(right([(5, 212), (6, 222), (4, 230)]), [.05, .8, .3])], "bone-line", .8)
    for y, w in ((240, 11), (249, 8), (257, 5.4)):
        p.ink(pen(right([(-w, y), (0, y + 1.6), (w, y)]), [.1, .7, .1]), "bone-line", .8)
    outline(p, SACRUM, 1.4)


def ramus(p, side):
    """Pubis and the ramus of the ischium lie in front: a hint, under coccyx and tuberosity."""
    p.on("bone", "pelvis", "ischium-pubis", "Ischium and pubis")
    p.area(side(RAMUS), "bone-base", .85)
    p.ink(rim(side(RAMUS), .2, 1.0), "bone-line", .7)


def hip_bone(p, side):
    """One hip bone; `side` places it. Light comes from the upper left, so the two are shaded apart."""
    r = side is right
    p.on("bone", "pelvis", "ilium", "Ilium")
    p.area(side(ILIUM), "wash.ilium." + ("right" if r else "left"))
    # the blade is hollow behind the front swell, the crest a thick lip
    lip = Line(CREST_LINE).shifted(-6.4, .03, .97)
    c = side([(88, 152)])[0]
    p.area([(c[0] + 40 * math.cos(k * math.pi / 6), c[1] + 40 * math.sin(k * math.pi / 6)) for k in range(12)], "wash.fossa." + ("right" if r else "left"))
    pool(p, side([(120, 150), (110, 172), (100, 196)]), 10, 10, "bone-light", .6, 5, .04)
    p.ink(pen(side(lip), [.05, .6, .5, .6, .4, .05]), "bone-line", .75)
    for ln, w in (([(62, 130), (60, 146), (60, 162), (64, 178), (67, 188)], .7), ([(121, 158), (106, 147), (92, 152), (82, 166), (76, 184), (74, 198)], .6)):
        p.ink(pen(side(ln), [.05, w, w * .6, w, .05]), "bone-line", .6)
    if r:
        edge, inner = Line(side(OUTER_EDGE[7:])), Line(side([(96, 224), (90, 230), (82, 242), (78, 256), (77, 270), (75, 284), (68, 300), (60, 318)]))
        soft(p, inner, edge, "bone-shade", .5, 6, hump(.6))
    else:
        med, core = Line(side(INNER_EDGE[9:])), Line(side([(72, 192), (80, 206), (80, 222), (74, 240), (67, 256), (67, 274), (65, 294), (62, 316)]))
        soft(p, core, med, "bone-shade", .5, 6, hump(.6))
    # the rim of the socket over the head
    p.ink(pen(side([(107, 230), (98, 237), (90, 246), (86, 257), (86, 268)]), [.05, .5, .6, .4, .05]), "bone-line", .6)
    # tuberosity
    pool(p, side([(66, 296), (60, 308), (57, 320)]), 9, 9, "bone-light", .7, 4)
    p.ink(pen(side([(78, 292), (68, 300), (54, 303)]), [.05, .6, .05]), "bone-line", .7)
    p.areas_of(stipple(side([(60, 300), (58, 318)]), side([(76, 300), (62, 326)]), 5, .42, depth=.8), "bone-line", .6)
    p.areas_of(stipple(side([(56, 150), (50, 160)]), side([(46, 146), (42, 160)]), 3, .42), "bone-line", .6)
    outline(p, side(ILIUM), 1.5)


def femur(p, limb, side):
    p.on("bone", limb, "femur", "Femur")
    r = side is right
    p.area(side(FEMUR), "wash.femur." + ("right" if r else "left"))
    shadow = [q for q in (SHAFT_OUT[5:] if r else SHAFT_IN[3:]) if q[1] < 399]
    mid = [(114, 300), (114, 330), (114, 370), (113, 396)]
    soft(p, side(mid), side(shadow), "bone-shade", .55, 6, rise((0, .2), (.2, 1), (1, 1)))
    # the head's ball beyond the socket's rim, the hollow of the neck, the crest between the trochanters
    ball = [(84, 235), (94, 238.6), (101, 246), (104, 257), (101.6, 269), (95, 277), (84, 281), (76, 258)]
    p.area(side(ball), "bone-light")
    rim_ = Line(side([(92, 237.4), (101, 246), (104, 257), (101.6, 269), (94, 278)]))
    soft(p, Line(side([(88, 240), (94, 248), (96, 257), (94.4, 267), (89, 276)])), rim_, "bone-shade", .5, 4, hump(.6))
    p.ink(pen(rim_, [.1, .8, .9, .9, .1]), "bone-line", .85)
    crest = Line(side([(119, 246), (115.6, 256), (114, 268), (111, 281), (104, 293), (97.4, 303)]))
    s = 1 if r else -1
    soft(p, crest.shifted(s * 11), crest, "bone-shade", .5, 5, hump(.8))
    p.ink(pen(crest, [.1, .9, .8, .9, .1]), "bone-line", .85)
    pool(p, side([(124, 252), (125.4, 264), (124, 280)]), 8, 7, "bone-light", .7, 6)
    pool(p, side([(98, 300), (97.6, 307)]), 5, 4, "bone-light", .7, 4)
    p.ink(pen(side([(116, 316), (113.4, 336), (112.6, 370), (112.4, 396)]), [.05, 1.0, .8, .8, .5]), "bone-line", .75)
    p.ink(pen(side([(101, 316), (107, 336), (110.6, 366), (110.6, 394)]), [.05, .6, .6, .05]), "bone-line", .6)
    p.areas_of(stipple(side([(124, 250), (122, 284)]), side([(136, 258), (134, 288)]), 5, .42, depth=.9), "bone-line", .55)
    outline(p, side(FEMUR), 1.6)


def washes(p):
    for n, limb, side in (("right", "thigh", 1), ("left", "thigh-left", -1)):
        x = MID + side * 112
        p.linear("wash.femur." + n, limb, (x - 18, 380), (x + 18, 388), [(0, "bone-base"), (.3, "bone-light"), (.65, "bone-base"), (1, "bone-shade")])
        x = MID + side * 85
        p.linear("wash.ilium." + n, "pelvis", (x - 46, 130), (x + 40, 230), [(0, "bone-light"), (.5, "bone-base"), (1, "bone-base")])
        p.radial("wash.fossa." + n, "pelvis", (MID + side * 88, 152), 40, [(0, "bone-shade", .5), (.4, "bone-shade", .34), (.75, "bone-shade", .1), (1, "bone-shade", 0)])
    p.linear("wash.sacrum", "pelvis", (184, 140), (262, 190), [(0, "bone-base"), (.35, "bone-light"), (1, "bone-base")])


def draw(p):
    washes(p)
    ghost(p)
    spine(p)
    femur(p, "thigh-left", left)
    femur(p, "thigh", right)
    ramus(p, left)
    ramus(p, right)
    p.area([(216.6, 266, "c"), (223.4, 266, "c"), (223.2, 272), (223.8, 277, "c"), (216.2, 277, "c"), (216.8, 272)], "bone-shade", .4)
    sacrum(p)
    hip_bone(p, left)
    hip_bone(p, right)
