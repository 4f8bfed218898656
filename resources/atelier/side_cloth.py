"""Shoulder from the side: the gown slipped round the trunk, the blanket over lap and hand."""
import math

from engrave import Line, between, contour, feather, hatch, pen, ramp

HEM = [(130.5, 341), (146, 350), (170, 357), (205, 361), (250, 361), (295, 355), (330, 345), (355, 334), (370, 323)]
ROLL = [(131, 355), (148, 363), (172, 370), (206, 374), (250, 374), (297, 368), (333, 357), (358, 345), (370.5, 336)]


def washes(p):
    p.linear("wash.gown", "trunk", (240, 330), (240, 628),
             [(0, "cloth-base"), (0.5, "cloth-base"), (1, "cloth-base", 0)])
    p.radial("wash.blanket", "trunk", (430, 545), 152, [(0, "cloth-light"), (0.6, "cloth-light"), (1, "cloth-light", 0)])


def soft(p, inner, edge, tone, opacity, steps=3, profile=None):
    p.areas_of(feather(inner, edge, steps, profile), tone, opacity)


def gown(p):
    p.on("skin", "trunk")
    back = [(130.5, 341), (129.8, 350), (132, 375), (137, 415), (142.5, 465), (145, 515), (144, 560), (141, 600), (136, 634)]
    front = [(370, 323), (372, 336), (370.5, 360), (369, 400), (365, 450), (361, 510), (362, 560), (368, 600), (376, 634)]
    p.area([(*HEM[0], "c"), *HEM[1:-1], (*HEM[-1], "c"), *front[1:-1], (*front[-1], "c"), (*back[-1], "c"), *back[-2:0:-1]],
           "wash.gown")
    f, b, hem, roll = Line(front), Line(back), Line(HEM), Line(ROLL)
    side = lambda s: ramp(s, (0, .5), (.2, 1), (.45, .7), (.75, 0), (1, 0))
    soft(p, f.shifted(lambda t: 40 - 6 * t), f, "cloth-shade", .18, 5, side)
    soft(p, b.shifted(-12), b, "cloth-shade", .15, 3, side)
    soft(p, between(hem, roll, .3), roll, "cloth-shade", .18, 3)
    soft(p, roll.shifted(8), roll, "cloth-shade", .2, 3)
    a = Line([(291, 356), (288, 372), (292, 405), (289, 440), (281, 490)])
    o = Line([(316, 352), (314, 374), (317, 405), (313, 440), (303, 486)])
    soft(p, o, a, "cloth-shade", .22, 4, lambda s: ramp(s, (0, 1), (.7, 1), (1, .5)))
    p.ink(hatch(o, a, 8, .85, .5, bow=-.05, t0=.1, t1=.97), "cloth-line", .55)
    p.ink(hatch(f.shifted(30), f, 8, lambda s: ramp(s, (0, .4), (.2, .8), (.5, .6), (.68, .0)), .5, bow=.1, t0=.08, t1=.62), "cloth-line", .55)
    for fold in ([(148, 368), (157, 406), (161, 452), (157, 505)], [(170, 373), (181, 410), (184, 440)],
                 [(336, 360), (325, 396), (324, 440), (331, 486)], [(353, 350), (345, 392), (346, 436), (341, 492)]):
        ln = Line(fold)
        soft(p, ln.shifted(8), ln, "cloth-shade", .15, 3)
        p.ink(pen(ln, [.1, .9, .7, .4, .05]), "cloth-line", .75)
    p.ink(contour(HEM, .5, 1.2, side=-1), "cloth-line")
    p.ink(pen(roll, [.3, .9, .7, .5, .6, 1.0, 1.3, .4]), "cloth-line")
    p.ink(pen(b.part(0, .8), [.3, .9, .7, .4, .05]), "cloth-line")
    p.ink(pen(f.part(0, .8), [.5, 1.9, 1.7, .9, .05]), "cloth-line")


def blanket(p):
    p.on("cloth", "trunk")
    top = [(300, 628), (324, 613), (352, 607), (382, 606), (404, 598), (416, 580), (423, 556), (432, 537), (446, 527),
           (470, 523), (500, 528), (530, 542), (554, 562)]
    p.area([(*top[0], "c"), *top[1:-1], (*top[-1], "c"), (560, 600), (548, 640, "c"), (306, 640, "c")], "wash.blanket")
    t = Line(top)
    # the turned edge where it lies round the wrist
    lip = Line([(409, 604), (422, 588), (430, 562), (439, 543), (452, 533), (470, 530)])
    soft(p, lip.shifted(7), lip, "cloth-shade", .16, 3)
    p.ink(pen(lip, [.05, .6, .7, .5, .05]), "cloth-line", .8)
    for fold, w in (([(428, 592), (446, 600), (458, 614), (462, 632)], 9), ([(436, 566), (462, 576), (484, 596), (493, 622)], 12),
                    ([(446, 544), (478, 552), (508, 574), (524, 602)], 13), ([(392, 611), (402, 618), (404, 632)], 6)):
        ln = Line(fold)
        soft(p, ln.shifted(w), ln, "cloth-shade", .15, 3)
        p.ink(pen(ln, [.05, .9, .8, .4, .05]), "cloth-line", .8)
    s = Line([(330, 622), (356, 616), (380, 617)])
    p.ink(pen(s, [.05, .5, .05]), "cloth-line", .6)
    p.ink(contour(t.part(.02, .97), .6, 1.6, side=-1, press=lambda u: ramp(u, (0, .1), (.2, .9), (.7, 1), (1, .05))), "cloth-line")
