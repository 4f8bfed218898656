"""Three-quarter plate: the gown slipped under the arm and still on the far shoulder; the blanket."""
import math

from engrave import Line, between, contour, echo, pen, ramp
from quarter_frame import FORE_BACK, TRUNK_BACK
from quarter_tools import shade

HEM = [(204, 353), (228, 361), (262, 366), (300, 366), (338, 360), (374, 347), (405, 327), (429, 301), (445, 268), (454, 234), (459, 204), (462, 174)]
ROLL = [(206, 367), (230, 375), (263, 380), (301, 380), (341, 374), (380, 360), (413, 338), (439, 309), (456, 273), (466, 236), (472, 206), (476, 177)]


def washes(p):
    p.linear("wash.gown", "trunk", (300, 330), (390, 630), [(0, "cloth-base"), (0.52, "cloth-base"), (0.72, "cloth-base", .5), (0.96, "cloth-base", 0)])
    p.radial("wash.blanket", "trunk", (372, 566), 214, [(0, "cloth-light"), (0.6, "cloth-light"), (1, "cloth-light", 0)])


def gown(p):
    p.on("skin", "trunk")
    p.area([(*HEM[0], "c"), *HEM[1:-1], (*HEM[-1], "c"), (478, 176.5), (494, 183), (509, 194), (520, 211), (526, 234), (528, 262), (525, 300),
            (520, 360), (518, 420), (522, 480), (530, 540), (540, 632, "c"), (215, 632, "c"), *TRUNK_BACK[-2:7:-1]], "wash.gown")
    hem, roll = Line(HEM), Line(ROLL)
    shade(p, between(hem, roll, .3), roll, "cloth-shade", .22, 2)
    shade(p, roll.shifted(11), roll, "cloth-shade", .18, 3)
    # arm and forearm throw their shadow on it
    arm = Line([(262, 366), (267, 392), (270, 418), (268, 442), (264, 466), (258, 488)])
    cast = Line([(296, 368), (306, 394), (311, 420), (308, 446), (300, 470), (288, 492)])
    shade(p, cast, arm, "cloth-shade", .22, 4, lambda s: ramp(s, (0, 1), (.8, 1), (1, .6)))
    p.ink(echo(arm.shifted(-9)[::-1], 4, 4.2, .6, .85, .03), "cloth-line", .6)
    rest = Line([(268, 493), (284, 491.5), (308, 497), (338, 508), (372, 521), (408, 533)])
    high = Line([(282, 466), (298, 470), (318, 477), (348, 490), (380, 507), (412, 526)])
    shade(p, high, rest, "cloth-shade", .2, 4, lambda s: ramp(s, (0, 1), (1, .3)))
    under = Line(FORE_BACK[3:-1])
    shade(p, under.shifted(lambda t: 4 + 15 * t), under, "cloth-shade", .13, 4, lambda s: ramp(s, (0, 0), (.4, .8), (1, 1)))
    # swags hang from the far shoulder toward the near side, folds fall from the gathers under the arm
    drop = lambda s: math.sin(math.pi * s ** .6)
    for fold, w, n, ink in (([(464, 262), (450, 312), (420, 354), (376, 384), (336, 394)], -10, 2, .9),
                            ([(474, 282), (462, 346), (436, 398), (404, 430), (376, 442)], -12, 2, 1.0),
                            ([(486, 300), (480, 376), (462, 444), (430, 492)], -12, 2, .9),
                            ([(472, 230), (490, 262), (500, 306), (502, 352)], 9, 2, .8), ([(475, 200), (496, 216), (510, 242), (514, 276)], 8, 1, .7),
                            ([(304, 382), (308, 402), (307, 424)], 7, 1, .8), ([(322, 382), (331, 418), (332, 462), (326, 490)], 9, 2, .9),
                            ([(342, 404), (350, 440), (351, 480), (347, 500)], 8, 1, .7)):
        ln = Line(fold)
        shade(p, ln.shifted(w), ln, "cloth-shade", .2, 2, drop)
        p.ink(pen(ln, [.05, ink, ink * .8, .4, .05]), "cloth-line", .75)
        p.ink(echo(fold[::-1] if w < 0 else fold, n, abs(w) / 3.2, .45, .8, .05, .3 if w < 0 else .05, .95 if w < 0 else .7), "cloth-line", .65)
    p.ink(pen(TRUNK_BACK[7:-1], [.8, .9, .8, .5, .2, .05]), "cloth-line")
    p.ink(contour(HEM, .5, 1.2, side=-1), "cloth-line")
    p.ink(pen(roll, [.2, .7, .9, .7, .6, .9, 1.2, 1.0, .3]), "cloth-line")
    p.ink(pen([(462, 174), (470, 173.5), (480, 176.5), (495, 183), (509.5, 194), (520, 211), (526, 234), (528, 262), (525, 300), (520, 350), (517, 410), (520, 470), (526, 516)],
              [.4, .7, .8, .9, 1.0, 1.0, .8, .7, .6, .5, .3, .05]), "cloth-line")


def blanket(p):
    p.on("cloth", "trunk")
    top = [(132, 640), (164, 631), (204, 624), (252, 621), (300, 618), (344, 615), (376, 611), (396, 601), (406, 584), (412, 562), (421, 544),
           (436, 534), (460, 531), (490, 535), (522, 546), (552, 560)]
    p.area([(*top[0], "c"), *top[1:-1], (*top[-1], "c"), (560, 640, "c")], "wash.blanket")
    lip = Line([(388, 611), (404, 600), (414, 582), (421, 564), (430, 548), (444, 540), (464, 538)])
    shade(p, lip.shifted(7), lip, "cloth-shade", .16, 3)
    p.ink(pen(lip, [.05, .6, .7, .5, .05]), "cloth-line", .8)
    drop = lambda s: math.sin(math.pi * s ** .55) ** .9
    for fold, w, n in (([(412, 594), (428, 602), (442, 616), (448, 638)], 10, 2), ([(422, 573), (448, 580), (474, 600), (488, 632)], 14, 3),
                       ([(432, 555), (464, 560), (500, 582), (522, 612)], 13, 3), ([(442, 543), (472, 544), (506, 556), (534, 576)], 8, 1),
                       ([(380, 612), (348, 620), (308, 625), (262, 629), (216, 637)], -8, 2)):
        ln = Line(fold)
        shade(p, ln.shifted(w), ln, "cloth-shade", .13, 3, drop)
        p.ink(pen(ln, [.05, 1.1, .9, .5, .25, .05]), "cloth-line", .8)
        if w > 0:
            p.ink(echo(ln, n, w / 5, .45, .8, .05, .05, .7), "cloth-line", .7)
        else:
            p.ink(echo(fold[::-1], n, -w / 4, .45, .8, .05, .3, .95), "cloth-line", .7)
    p.ink(contour(Line(top).part(.04, .97), .5, 1.6, side=-1, press=lambda u: ramp(u, (0, .1), (.3, .8), (.7, 1), (1, .05))), "cloth-line")
