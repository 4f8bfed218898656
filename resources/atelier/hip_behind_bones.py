"""Hip from behind: lumbar spine, sacrum, the two hip bones, the two femurs.

No ghost of the body here: the program leaves the skin's own contours faintly where it is peeled.
"""
import math

from engrave import Line, pen, rim, stipple
from hip_behind_frame import ASIS, CREST_LINE, MID, SHAFT_IN, SHAFT_OUT, left, right
from side_tools import hump, pool, rise, soft

SACRUM_EDGE = [(45, 132), (40, 146), (37, 160), (38, 172), (42.6, 184), (43, 194), (38, 207), (31.4, 219), (27.6, 227), (20, 235), (13, 240)]
_HALF = [(0, 124), (12, 121.4), (28, 120.6), (46, 123), (57, 131), (54, 146), (43, 158), (40, 168), *SACRUM_EDGE[4:], (11, 246), (6.4, 256), (3.4, 264), (0, 266.4)]
SACRUM = [*right(_HALF), *left(_HALF[-2:0:-1])]

# medial border of the hip bone from the crest's hind end down: PSIS, PIIS, notch, spine, lesser notch, tuberosity
INNER_EDGE = [(47.6, 140), (42, 148), (39.4, 156), (40.4, 164), (45.4, 169.4), (45.6, 176), (44.2, 182), (47.4, 188), (55.6, 190.6), (63.6, 195.6),
              (69.4, 203), (71, 211), (68.6, 220), (64.4, 231), (58.4, 242), (51, 250.4), (45.4, 256.6), (50, 258.8), (55, 261), (58.4, 267),
              (57.8, 274), (53.6, 284), (48.4, 295), (45.6, 306), (46.4, 317), (51, 325), (58, 328.4)]
OUTER_EDGE = [ASIS, (119, 179), (117.6, 187), (117, 195), (118.4, 203), (119, 210), (117, 217), (117.6, 225), (115, 232), (107, 238),
              (98.6, 244.6), (93, 254), (91, 265), (92, 275), (90.6, 283), (85.6, 290), (81.4, 299), (78.6, 309), (74, 319), (66.6, 326)]
ILIUM = [(*ASIS, "c"), *CREST_LINE[1:-2], *INNER_EDGE, *OUTER_EDGE[:0:-1]]
RAMUS = [(47, 309, "c"), (46.6, 318), (51, 325.4, "c"), (40, 319.6), (30, 311.6), (20, 301), (10.4, 288), (4, 278), (3.4, 262), (9, 253.6), (24, 250), (44, 246), (66, 240, "c"),
         (68, 254, "c"), (48, 257), (34, 261), (25.4, 266.4), (22.4, 275.6), (26, 287), (33.6, 297), (41, 304)]
FEMUR = [(94, 242), (101, 246.4), (108, 249), (113.4, 247), (118, 242.4), (123, 241), *[q for q in SHAFT_OUT[1:] if q[1] < 399], (114, 398), *[q for q in SHAFT_IN[::-1] if q[1] < 399], (88, 281), (74, 281),
         (62, 273), (56.6, 262), (58.6, 249), (66, 239), (78, 234), (88, 236)]
TROCHANTER = [(113.4, 247), (118, 242.4), (123, 241), *SHAFT_OUT[1:7], (124, 296), (116, 284), (112, 270), (111.4, 256)]


def outline(p, shape, thick=1.3, thin=.3, press=None):
    p.ink(rim(shape, thin, thick, press=press), "bone-line")


def spine(p):
    p.on("bone", "pelvis", "lumbar-vertebrae", "Lumbar vertebrae")
    for y, s, o in ((80, .97, .6), (107, 1, 1)):
        body = [(-27 * s, y - 9), (0, y - 10), (27 * s, y - 9), (24.6 * s, y), (28 * s, y + 9), (0, y + 10.4), (-28 * s, y + 9), (-24.6 * s, y)]
        p.area(right(body), "bone-base", .85 * o)
        p.ink(rim(right(body), .25, 1.0), "bone-line", .75 * o)
        for side in (right, left):
            wing = [(16, y - 6), (30, y - 8), (44 * s, y - 9, "c"), (47 * s, y - 6), (45.4 * s, y - 2.6, "c"), (30, y - .6), (16, y + 3)]
            p.area(side(wing), "bone-base", o)
            p.ink([pen(side([(16, y - 6), (30, y - 8), (44 * s, y - 9)]), [.3, .4, .2]),
                   pen(side([(46 * s, y - 8), (47 * s, y - 6), (45.4 * s, y - 2.6), (30, y - .6), (16, y + 3)]), [.3, .8, 1.0, 1.0, .4])], "bone-line", .85 * o)
        # two plates of the arch with their joint processes, the lower pair reaching down onto the next bone
        half = [(6, y - 7), (11, y - 13), (17, y - 13.6), (20, y - 8), (17, y), (18.4, y + 8), (17, y + 15), (10.6, y + 16), (7.4, y + 9)]
        lamina = [(0, y - 7), *half, (0, y + 8), *[(-a, b) for a, b in half[::-1]]]
        p.area(right(lamina), "bone-light", o)
        p.ink(rim(right(lamina), .3, 1.1), "bone-line", .9 * o)
        sp = [(-2.8, y - 7), (0, y - 8), (2.8, y - 7), (3, y + 3), (3.8, y + 13, "c"), (-3.8, y + 13, "c"), (-3, y + 3)]
        p.area(right(sp), "bone-light", o)
        p.ink([pen(right([(2.8, y - 7), (3, y + 3), (3.8, y + 13)]), [.3, 1.0, 1.1]), pen(right([(-3.8, y + 13), (3.8, y + 13)]), [.6, 1.1, .8]),
               pen(right([(-2.8, y - 7), (-3, y + 3), (-3.8, y + 13)]), [.2, .5, .6])], "bone-line", .9 * o)


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
    spine(p)
    femur(p, "thigh-left", left)
    femur(p, "thigh", right)
    ramus(p, left)
    ramus(p, right)
    p.area([(216.6, 266, "c"), (223.4, 266, "c"), (223.2, 272), (223.8, 277, "c"), (216.2, 277, "c"), (216.8, 272)], "bone-shade", .4)
    sacrum(p)
    hip_bone(p, left)
    hip_bone(p, right)
