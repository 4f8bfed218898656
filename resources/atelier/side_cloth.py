"""Shoulder from the side: the gown slipped round the trunk, the blanket over lap and hand."""
import math

from engrave import Line, between, contour, echo, feather, hatch, pen, ramp

HEM = [(133, 342.5), (146, 350), (170, 357), (205, 361), (250, 361), (295, 355), (330, 345), (355, 334.5), (367, 325)]
ROLL = [(130.5, 356), (148, 363.5), (172, 370), (206, 374), (250, 374), (297, 368), (333, 357), (358, 345.5), (370, 337)]


def washes(p):
    p.linear("wash.gown", "trunk", (240, 330), (240, 628),
             [(0, "cloth-base"), (0.5, "cloth-base"), (1, "cloth-base", 0)])
    p.radial("wash.blanket", "trunk", (396, 560), 212, [(0, "cloth-light"), (0.6, "cloth-light"), (1, "cloth-light", 0)])


def soft(p, inner, edge, tone, opacity, steps=3, profile=None):
    p.areas_of(feather(inner, edge, steps, profile), tone, opacity)


def gown(p):
    p.on("skin", "trunk")
    back = [(133, 342.5), (129.6, 346), (129.6, 356), (132, 378), (137, 415), (142.5, 465), (145, 515), (144, 560), (141, 600), (136, 634)]
    front = [(367, 325), (371.5, 331), (372, 344), (371, 364), (369, 400), (365, 450), (361, 510), (372, 548), (400, 580), (424, 612), (430, 636)]
    p.area([(*HEM[0], "c"), *HEM[1:-1], (*HEM[-1], "c"), *front[1:-1], (*front[-1], "c"), (*back[-1], "c"), *back[-2:0:-1]],
           "wash.gown")
    f, b, hem, roll = Line(front), Line(back), Line(HEM), Line(ROLL)
    side = lambda s: ramp(s, (0, .5), (.2, 1), (.45, .7), (.75, 0), (1, 0))
    soft(p, f.shifted(lambda t: 40 - 6 * t), f, "cloth-shade", .2, 4, side)
    soft(p, b.shifted(-12), b, "cloth-shade", .15, 3, side)
    soft(p, between(hem, roll, .3), roll, "cloth-shade", .18, 3)
    soft(p, roll.shifted(8), roll, "cloth-shade", .2, 3)
    a = Line([(291, 356), (288, 372), (292, 405), (289, 440), (281, 490)])
    o = Line([(316, 352), (314, 374), (317, 405), (313, 440), (303, 486)])
    soft(p, o, a, "cloth-shade", .22, 4, lambda s: ramp(s, (0, 1), (.7, 1), (1, .5)))
    p.ink(echo(Line([(281, 490), (289, 440), (292, 405), (288, 372), (291, 358)]), 4, 3.6, .6, .85, .03), "cloth-line", .6)
    p.ink(echo(f.part(.06, .6), 4, 4.2, .65, .88, .02), "cloth-line", .6)
    drop = lambda s: math.sin(math.pi * s ** .6)
    for fold, w, n in (([(141, 366), (147, 400), (152, 446), (151, 500)], 7, 1), ([(160, 371), (168, 404), (171, 446), (166, 488)], 8, 2),
                       ([(176, 374), (184, 398), (186, 424)], -6, 1), ([(333, 361), (324, 390), (322, 424), (327, 462)], -8, 2),
                       ([(352, 352), (344, 384), (342, 424), (345, 470)], -8, 2)):
        ln = Line(fold)
        soft(p, ln.shifted(w), ln, "cloth-shade", .15, 3, drop)
        p.ink(pen(ln, [.05, 1.0, .8, .4, .05]), "cloth-line", .75)
        p.ink(echo(fold[::-1] if w < 0 else fold, n, abs(w) / 3.2, .45, .8, .05, .05, .7), "cloth-line", .65)
    # the forearm's shadow
    g = Line([(224, 546), (262, 557), (300, 566), (345, 575), (398, 584), (424, 590)])
    soft(p, [(224, 560), (262, 579), (302, 591), (345, 600), (390, 604), (412, 606)], g, "cloth-shade", .15, 4, lambda s: ramp(s, (0, 0), (.5, .9), (1, 1)))
    p.ink(contour(HEM, .5, 1.2, side=-1), "cloth-line")
    p.ink(pen(roll, [.3, .9, .7, .5, .6, 1.0, 1.3, .4]), "cloth-line")
    p.ink(pen(b.part(0, .8), [.3, .9, .7, .4, .05]), "cloth-line")
    p.ink(pen(f.part(0, .58), [.5, 1.9, 1.7, .9, .05]), "cloth-line")


def blanket(p):
    p.on("cloth", "trunk")
    top = [(150, 640), (184, 627), (228, 617), (278, 611), (326, 608), (372, 606), (402, 598), (416, 580), (423, 556), (432, 537),
           (446, 527), (470, 523), (502, 527), (532, 538), (560, 553)]
    p.area([(*top[0], "c"), *top[1:-1], (*top[-1], "c"), (560, 640, "c")], "wash.blanket")
    t = Line(top)
    # the turned edge where it lies round the wrist
    lip = Line([(407, 604), (421, 588), (429.5, 562), (439, 543), (452, 533), (472, 530)])
    soft(p, lip.shifted(7), lip, "cloth-shade", .16, 3)
    p.ink(pen(lip, [.05, .6, .7, .5, .05]), "cloth-line", .8)
    drop = lambda s: math.sin(math.pi * s ** .55) ** .9
    for fold, w, n in (([(425, 588), (441, 597), (455, 614), (462, 639)], 11, 2), ([(434, 567), (460, 575), (486, 597), (500, 630)], 15, 3),
                       ([(443, 549), (476, 556), (510, 577), (534, 608)], 14, 3), ([(452, 536), (482, 537), (516, 550), (546, 572)], 8, 1),
                       ([(400, 603), (372, 613), (330, 618), (284, 622), (236, 631)], -9, 2), ([(412, 600), (408, 616), (392, 634)], -8, 0)):
        ln = Line(fold)
        soft(p, ln.shifted(w), ln, "cloth-shade", .13, 3, drop)
        p.ink(pen(ln, [.05, 1.1, .9, .5, .25, .05]), "cloth-line", .8)
        if w > 0:
            p.ink(echo(ln, n, w / 5, .45, .8, .05, .05, .7), "cloth-line", .7)
        else:
            p.ink(echo(fold[::-1], n, -w / 4, .45, .8, .05, .3, .95), "cloth-line", .7)
    p.ink(contour(t.part(.06, .98), .5, 1.6, side=-1, press=lambda u: ramp(u, (0, .1), (.3, .8), (.7, 1), (1, .05))), "cloth-line")
