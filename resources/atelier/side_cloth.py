"""Shoulder from the side: the gown slipped off this shoulder, the blanket over thigh and hand."""
from engrave import Line, contour, pen, ramp
from side_tools import cluster, hump, rise, soft

# the gown's edge hangs low at this side and runs up toward the other shoulder, front and back
HEM = [(132.6, 309), (142, 322), (156, 337), (174, 351), (196, 362), (222, 368), (250, 368), (274, 362), (296, 350), (316, 335), (334, 317),
       (347, 301), (356.4, 288)]
BACK_EDGE = [(132.6, 309), (130.2, 316), (130.6, 330), (132, 360), (136, 410), (141, 460), (144.5, 515), (144, 560), (141, 600), (136, 634)]
FRONT_EDGE = [(356.4, 288), (362, 294), (367.5, 312), (371, 336), (372.4, 362), (371, 404), (367, 452), (362.5, 506), (366, 548), (382, 580), (404, 606), (420, 634)]


def washes(p):
    p.linear("wash.gown", "trunk", (240, 330), (240, 628), [(0, "cloth-base"), (0.5, "cloth-base"), (1, "cloth-base", 0)])
    p.linear("wash.blanket", "forearm", (440, 585), (560, 612), [(0, "cloth-light"), (0.5, "cloth-light"), (1, "cloth-light", 0)])
    p.linear("wash.lap", "forearm", (330, 610), (190, 634), [(0, "cloth-light"), (0.55, "cloth-light"), (1, "cloth-light", 0)])


def fold(p, points, width, weight=.9, depth=.34, t1=1.0):
    """A fold: its dark valley, a shade on one side, and a line that comes and goes."""
    ln = Line(points)
    soft(p, ln.shifted(width), ln, "cloth-shade", depth, 6, hump(1))
    if weight:
        p.ink(pen(ln.part(0, t1), [.05, weight, weight * .7, weight * .3, .05]), "cloth-line", .75)


def gown(p):
    p.on("skin", "trunk")
    p.area([(*HEM[0], "c"), *HEM[1:-1], (*HEM[-1], "c"), *FRONT_EDGE[1:-1], (*FRONT_EDGE[-1], "c"), (*BACK_EDGE[-1], "c"), *BACK_EDGE[-2:0:-1]],
           "wash.gown")
    f, b, hem = Line(FRONT_EDGE), Line(BACK_EDGE), Line(HEM)
    side = rise((0, .3), (.2, 1), (.4, .8), (.7, 0), (1, 0))
    soft(p, f.shifted(lambda t: 44 - 10 * t), f, "cloth-shade", .62, 9, side)
    soft(p, b.shifted(-14), b, "cloth-shade", .36, 7, side)
    # the soft rolled rim, and the shade under it
    roll = Line(hem.shifted(lambda t: 9 + 3 * t, .03, .97))
    soft(p, hem.shifted(4, .03, .97), hem.part(.03, .97), "cloth-light", .6, 5, hump(.5))
    soft(p, hem.shifted(3.5, .03, .97), roll, "cloth-shade", .34, 5, hump(.5))
    soft(p, roll.shifted(13), roll, "cloth-shade", .5, 7, hump(.5))
    p.ink(contour(hem, .4, 1.0, side=-1), "cloth-line")
    for a, e, w in ((.03, .24, .7), (.30, .36, .4), (.62, .74, .8), (.71, .86, .5), (.88, .985, 1.1)):
        p.ink(pen(roll.part(a, e), [.05, w, w * .8, .05]), "cloth-line", .8)
    # the arm's shadow on the cloth
    a = Line([(286, 352), (289, 384), (294, 416), (290, 450), (279, 474)])
    o = Line([(308, 344), (314, 380), (318, 416), (312, 446), (298, 474)])
    soft(p, o, a, "cloth-shade", .4, 9, rise((0, .8), (.7, 1), (1, .4)))
    p.ink(cluster(o, a, 8, .42, .9, .75, .5, .12, .08), "cloth-line", .6)
    # unequal folds falling from the rim: long ones from the high front and back, gathered ones under the arm
    fold(p, [(356, 303), (349, 334), (346, 372), (347, 414), (344, 462)], -11, 1.1, .5)
    fold(p, [(346, 317), (331, 346), (324, 380), (323, 420)], -8, .8, .34)
    fold(p, [(322, 343), (312, 362), (309, 384)], -5, .6, .24)
    fold(p, [(361, 326), (360, 360), (361, 402), (357, 446)], -6, .7, .3)
    fold(p, [(141, 330), (146, 360), (150, 402), (152, 458), (151, 506)], 9, 1.0, .40)
    fold(p, [(152, 345), (164, 374), (170, 406), (169, 440)], 7, .7, .3)
    fold(p, [(172, 361), (180, 378), (183, 398)], 5, .6, .24)
    p.ink([pen([(363, 318), (366.5, 350), (366, 392), (362, 428)], [.05, .5, .4, .05]), pen([(338, 334), (334, 352), (333, 378)], [.05, .45, .05]),
           pen([(159, 348), (168, 368), (174, 392)], [.05, .4, .05])], "cloth-line", .6)
    p.ink(pen(b.part(.02, .8), [.3, .8, .6, .4, .05]), "cloth-line")
    p.ink(pen(f.part(0, .66), [.4, 1.3, 1.5, 1.0, .5, .05]), "cloth-line")


def shadow(p):
    """What the forearm throws on gown and lap; it moves with the forearm."""
    p.on("skin", "forearm")
    g = Line([(232, 538), (262, 546), (300, 560), (345, 574), (398, 587), (424, 592)])
    soft(p, [(236, 566), (266, 580), (304, 593), (345, 602), (390, 608), (412, 610)], g, "cloth-shade", .55, 8, rise((0, 0), (.4, .9), (1, 1)))


def blanket(p):
    """All of it hangs on the forearm, so that it covers the hand of a thin and of a heavy patient."""
    p.on("cloth", "forearm")
    # the lap: the near thigh under the blanket, from the bend of the hip to the right
    lap = [(150, 640, "c"), (176, 631), (214, 624), (262, 619.6), (312, 615), (346, 611.4), (378, 609.5), (420, 608), (470, 606), (520, 606), (560, 608, "c"), (560, 640, "c")]
    p.area(lap, "wash.lap")
    t = Line([q[:2] for q in lap[:-1]])
    p.ink(contour(t.part(.08, .62), .6, 1.7, side=-1, press=lambda u: ramp(u, (0, .05), (.4, .8), (1, 1))), "cloth-line")
    # the part drawn up over wrist and hand: two overlaps, hand as a soft mound
    top = [(414, 600), (424, 582), (429, 562), (434, 545), (441, 533), (451, 527.4), (466, 526), (484, 530.5), (502, 535), (520, 544), (536, 558), (550, 577), (560, 598)]
    p.area([(*top[0], "c"), *top[1:-1], (*top[-1], "c"), (560, 640, "c"), (372, 640, "c"), (388, 616)], "wash.blanket")
    rim = Line([(392, 613), (408, 604), (421, 588), (428, 566), (433.4, 546.5), (440.6, 533.4), (451, 527.4), (466, 526)])
    # turned edge: a band of the underside, then the second overlap across it
    turn = Line([(409, 611), (423, 599), (434, 581), (440.6, 562), (446, 546), (454, 537), (466, 533)])
    soft(p, turn.shifted(-9), turn, "cloth-shade", .42, 6, hump(.8))
    soft(p, turn.shifted(8), turn, "cloth-shade", .3, 6, hump(.8))
    p.ink(pen(turn, [.05, .7, 1.0, .8, .4, .05]), "cloth-line", .8)
    p.ink(contour(rim, .5, 1.4, side=-1, press=lambda u: ramp(u, (0, .1), (.2, .9), (.7, 1), (1, .5))), "cloth-line")
    over = Line([(431, 588), (443, 577), (458, 571.5), (476, 572), (494, 579)])
    soft(p, over.shifted(11), over, "cloth-shade", .46, 7, hump(.8))
    p.ink(pen(over, [.05, 1.1, 1.0, .6, .05]), "cloth-line", .85)
    hand = Line([(466, 526), (484, 530.5), (502, 535), (520, 544), (536, 558), (550, 577), (560, 598)])
    p.ink(contour(hand, .4, 1.1, side=-1, press=lambda u: ramp(u, (0, .6), (.5, 1), (1, .05))), "cloth-line")
    fold(p, [(452, 546), (474, 545), (498, 552), (518, 568)], 8, .8, .34)
    fold(p, [(462, 538), (480, 537.5), (496, 542)], 4, .5, .22)
    # folds that drape over the near thigh and tell its roundness
    fold(p, [(446, 588), (462, 598), (470, 616), (468, 640)], 13, 1.0, .42)
    fold(p, [(484, 590), (506, 602), (516, 620), (516, 640)], 10, .7, .3)
    fold(p, [(424, 606), (434, 618), (436, 638)], 7, .7, .28)
    fold(p, [(396, 618), (402, 628), (400, 640)], 5, .5, .2)
    fold(p, [(392, 614), (356, 618.6), (316, 623), (270, 629)], -7, .7, .3)
    p.ink([pen([(520, 583), (534, 598), (540, 618)], [.05, .5, .05]), pen([(372, 622), (340, 627), (306, 632)], [.05, .45, .05])], "cloth-line", .6)
