"""Hip from behind: the shirt drawn up at the waist, the folded sheet over the thighs and the couch beside them."""
from engrave import Line, contour, pen, ramp
from hip_behind_frame import SIDE_L, SIDE_R
from side_cloth import fold
from side_tools import hump, rise, soft

# the sheet lies straight across body and couch, a little aslant; its top edge is folded over once
TOP = [(9, 358), (30, 356.6), (44, 353.4), (56, 349.4), (70, 347.6), (110, 346.8), (160, 346.6), (206, 347), (240, 346.4), (290, 345), (340, 343.8), (368, 344.2),
       (382, 346.6), (395, 350), (410, 352), (431, 352.6)]
LOW = [(9, 377), (32, 375.4), (46, 371.6), (58, 368), (74, 366), (112, 365), (160, 365.4), (206, 366.4), (240, 365.6), (290, 363.6), (340, 362.6), (370, 363.2),
       (384, 366.2), (397, 370.4), (411, 372.8), (431, 373.4)]
HEM = [(68, 60), (76, 63), (104, 67), (146, 70.6), (190, 73.6), (222, 74.6), (256, 72.8), (300, 69), (340, 64.6), (366, 60.6), (372.6, 57.4)]


def sheet(p):
    p.on("cloth", "pelvis")
    cloth = [(*TOP[0], "c"), *TOP[1:-1], (*TOP[-1], "c"), (432, 400), (431, 440), (429, 480, "c"), (11, 480, "c"), (9, 440), (8, 400)]
    p.area(cloth, "wash.sheet")
    top, low = Line(TOP), Line(LOW)
    soft(p, low.shifted(-8, .02, .98), low.part(.02, .98), "cloth-shade", .24, 5, hump(.6))
    soft(p, low.shifted(11, .02, .98), low.part(.02, .98), "cloth-shade", .46, 7, hump(.6))
    ends = lambda t: ramp(t, (0, .1), (.1, .9), (.4, .6), (.7, .9), (1, .1))
    p.ink(contour(low, .4, 1.0, side=1, press=ends), "cloth-line")
    p.ink(contour(top, .45, 1.0, side=-1, press=ends), "cloth-line")
    # slack folds run crosswise, from one side of the couch to the other; none follows the legs
    for a, w, wt, d in (([(30, 394), (72, 386), (124, 388), (176, 398)], 9, .7, .3), ([(150, 380), (206, 388), (262, 388), (306, 380)], 8, .7, .3),
                        ([(268, 402), (318, 392), (366, 390), (408, 398)], 10, .9, .38), ([(60, 418), (118, 412), (176, 418), (226, 430)], 9, .6, .26),
                        ([(244, 424), (300, 416), (352, 418), (396, 428)], 9, .7, .28), ([(120, 358), (150, 353.6), (184, 354.6)], 4, .5, .2),
                        ([(284, 357), (316, 352), (350, 353.4)], 4, .5, .22)):
        fold(p, a, w, wt, d)


def shirt(p):
    side_r, side_l = [(371.6, 40), (373, 20), (376, -4)], [(68.4, 40), (67, 20), (64, -4)]
    hem = Line(HEM)
    p.area([(*HEM[0], "c"), *HEM[1:-1], (*HEM[-1], "c"), *side_r[:-1], (*side_r[-1], "c"), (*side_l[-1], "c"), *side_l[-2::-1]], "wash.shirt")
    roll = Line(hem.shifted(lambda t: -11 - 2 * t, .02, .98))
    soft(p, hem.shifted(-5, .02, .98), hem.part(.02, .98), "cloth-shade", .34, 5, hump(.5))
    soft(p, roll.shifted(5), roll, "cloth-light", .6, 5, hump(.5))
    soft(p, roll.shifted(-9), roll, "cloth-shade", .4, 6, hump(.5))
    p.ink(contour(hem, .5, 1.3, side=1), "cloth-line")
    p.ink([pen(roll.part(a, e), [.05, w, w * .7, .05]) for a, e, w in ((.04, .3, .7), (.36, .5, .5), (.58, .8, .7), (.86, .97, .9))], "cloth-line", .8)
    # drawn up, the cloth lies in slack cross folds, pulled together here and there
    for a, w, wt, d in (([(73, 40), (94, 47), (126, 48), (160, 42)], -7, .8, .36), ([(368, 34), (346, 44), (312, 46), (276, 40)], 8, 1.0, .42),
                        ([(158, 52), (190, 58), (226, 57), (256, 50)], -7, .7, .34), ([(104, 22), (136, 31), (172, 32), (206, 24)], -6, .6, .26),
                        ([(350, 16), (318, 27), (282, 29), (248, 22)], 6, .7, .3), ([(196, 36), (222, 41), (250, 36)], -5, .5, .22)):
        fold(p, a, w, wt, d)
    fold(p, [(120, 57), (112, 46), (112, 34)], -5, .6, .26)
    fold(p, [(338, 55), (344, 44), (342, 32)], 6, .7, .32)
    p.ink(contour(Line([HEM[-1], *side_r]), .5, 1.4, side=1, press=lambda t: ramp(t, (0, .7), (.4, .6), (.7, 0), (1, 0))), "cloth-line")
    p.ink(contour(Line([HEM[0], *side_l]), .4, .9, side=-1, press=lambda t: ramp(t, (0, .7), (.4, .6), (.7, 0), (1, 0))), "cloth-line")


def shadow(p):
    """What the shirt's hem throws on the back; the sheet's fold throws nothing upward: light comes from above."""
    hem = Line(HEM)
    p.on("skin", "pelvis")
    soft(p, hem.shifted(14, .04, .96), hem.part(.04, .96), "skin-mid", .55, 8, hump(.5))
    soft(p, hem.shifted(5, .04, .96), hem.part(.04, .96), "skin-shade", .4, 5, hump(.5))


def ground(p):
    """The couch: its two edges, the body's shadow on it (stronger to the right), a few wrinkles drawn out from under the body.

    The edges hang on the thighs: beyond the pelvis's skin every level stretches apart, and straight lines would wave.
    """
    for limb, x, s in (("thigh-left", 9, -1), ("thigh", 431, 1)):
        p.on("cloth", limb)
        for off, w, o in ((0, .9, .8), (4.4, .6, .5)):
            x1 = x + s * off
            p.ink(pen([(x1, 6), (x1 - s * .8, 120), (x1 + s * .6, 220), (x1, 306)], [.05, w, w * .7, w, .05]), "cloth-line", o)
    p.on("cloth", "pelvis")
    for edge, width, depth in (([(375, 16), (373, 40), (366.6, 56), *[q for q in SIDE_R if 60 < q[1] < 350], (375.6, 362)], -9.5, .5),
                               ([(66, 16), (68, 40), (74, 56), *[q for q in SIDE_L if 60 < q[1] < 350], (64.4, 362)], 6.5, .3)):
        line = Line(edge)
        soft(p, line.shifted(width), line, "cloth-shade", depth, 7, rise((0, 0), (.15, .5), (.5, 1), (1, 1)))
    for a, w, d in (([(386, 236), (402, 228), (420, 226)], -5, .3), ([(385, 292), (402, 300), (422, 302)], 5, .3), ([(373, 116), (392, 106), (414, 104)], -4, .24),
                    ([(55, 238), (40, 230), (22, 229)], 4, .24), ([(56, 294), (40, 303), (20, 304)], -4, .26), ([(68, 112), (48, 102), (26, 101)], 4, .2)):
        fold(p, a, w, .6, d)


def draw(p):
    # a fade that runs down the plate only: one that ran outward would shrink with a lean body and bare the thighs
    p.linear("wash.sheet", "pelvis", (220, 346), (220, 479), [(0, "cloth-light"), (.5, "cloth-light"), (.8, "cloth-light", .6), (1, "cloth-light", 0)])
    p.linear("wash.shirt", "pelvis", (220, 76), (220, 2), [(0, "cloth-base"), (.56, "cloth-base"), (1, "cloth-base", 0)])
    shadow(p)
    ground(p)
    sheet(p)
    shirt(p)
