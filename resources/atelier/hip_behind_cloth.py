"""Hip from behind: the shirt drawn up at the waist, the folded sheet over the thighs and the couch beside them."""
import math

from engrave import Line, contour, pen, ramp
from hip_behind_frame import SIDE_R
from side_cloth import fold
from side_tools import hump, rise, soft

# the sheet's top edge is folded over once: the fold above, the free edge below it; it climbs from the couch over the thighs
TOP = [(4, 403), (22, 400.4), (36, 396.4), (46, 389.6), (55, 382.6), (68, 378.8), (92, 376.8), (124, 375.6), (162, 376.4), (196, 380), (219, 386.4), (243, 380),
       (282, 374.6), (322, 372.8), (356, 373.8), (376, 377), (388, 383), (397, 391), (409, 396.6), (424, 399.6), (437, 401.4)]
LOW = [(4, 423), (24, 420), (38, 415.6), (48, 408.6), (60, 402.4), (86, 399), (124, 397.6), (162, 398.4), (196, 402), (219, 408.6), (243, 402),
       (282, 396.4), (322, 394.6), (356, 395.8), (378, 399), (391, 405), (402, 412.6), (416, 417.4), (437, 420.6)]
HEM = [(68, 60), (76, 63), (104, 67), (146, 70.6), (190, 73.6), (222, 74.6), (256, 72.8), (300, 69), (340, 64.6), (366, 60.6), (372.6, 57.4)]


def sheet(p):
    p.on("cloth", "pelvis")
    p.area([(*TOP[0], "c"), *TOP[1:-1], (*TOP[-1], "c"), (440, 482, "c"), (0, 482, "c")], "wash.sheet")
    top, low = Line(TOP), Line(LOW)
    # thighs under the cloth: each a broad round that falls off to the right, to the couch and into the sag between them
    for name, x, y, r in (("side", 396, 430, 44), ("sag", 222, 440, 58)):
        p.area([(x + r * math.cos(k * math.pi / 6), y + min(r * math.sin(k * math.pi / 6), 46)) for k in range(12)], "wash.sheet." + name)
    p.ink(pen([(219, 396), (219.8, 416), (219.4, 442), (219, 472)], [.05, .9, 1.1, .7, .05]), "cloth-line", .75)
    # the fold's rounded rim, the free edge and its shadow
    soft(p, low.shifted(-8, .02, .98), low.part(.02, .98), "cloth-shade", .3, 5, hump(.6))
    soft(p, low.shifted(10, .02, .98), low.part(.02, .98), "cloth-shade", .5, 7, hump(.6))
    ends = lambda t: ramp(t, (0, .05), (.1, .9), (.5, .9), (.9, 1), (1, .05))
    p.ink(contour(low, .45, 1.1, side=1, press=ends), "cloth-line")
    p.ink(contour(top, .5, 1.1, side=-1, press=ends), "cloth-line")
    for a, w, wt in (([(196, 381), (208, 390), (216, 402)], 6, .7), ([(243, 381), (232, 390), (223, 402)], -6, .8), ([(112, 376.6), (119, 386), (121, 396)], -5, .5),
                     ([(350, 374), (343, 384), (341, 394)], 5, .5), ([(48, 390), (52, 398), (50, 407)], -4, .6), ([(394, 390), (392, 398), (396, 406)], 4, .8)):
        fold(p, a, w, wt, .3)
    fold(p, [(192, 404), (202, 420), (207, 442), (208, 464)], 9, .8, .34)
    fold(p, [(248, 403), (238, 420), (233, 440), (232, 458)], -9, .8, .38)
    fold(p, [(58, 404), (50, 420), (47, 448)], -8, .8, .3)
    fold(p, [(386, 404), (395, 420), (398, 448)], 9, 1.0, .42)
    fold(p, [(128, 402), (140, 418), (146, 440)], 7, .5, .2)
    fold(p, [(300, 399), (290, 416), (286, 436)], -7, .5, .22)
    fold(p, [(404, 415), (412, 430), (414, 446)], 5, .6, .24)


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
    """The body's shadow on the couch, to its right."""
    p.on("cloth", "pelvis")
    edge = Line([(375, 16), (373, 40), (368.4, 60), *[q for q in SIDE_R if 80 < q[1] < 380], (384, 400)])
    soft(p, edge.shifted(-15), edge, "cloth-shade", .5, 8, rise((0, 0), (.15, .5), (.5, 1), (1, 1)))


def draw(p):
    p.radial("wash.sheet", "pelvis", (220, 120), 360, [(0, "cloth-light"), (.9, "cloth-light"), (1, "cloth-light", 0)])
    for name, at, r, o in (("side", (396, 430), 44, .58), ("sag", (222, 440), 58, .72)):
        p.radial("wash.sheet." + name, "pelvis", at, r, [(0, "cloth-shade", o), (.35, "cloth-shade", o * .72), (.7, "cloth-shade", o * .2), (1, "cloth-shade", 0)])
    p.linear("wash.shirt", "pelvis", (220, 76), (220, 2), [(0, "cloth-base"), (.56, "cloth-base"), (1, "cloth-base", 0)])
    shadow(p)
    ground(p)
    sheet(p)
    shirt(p)
