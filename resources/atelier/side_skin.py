"""Shoulder from the side: the skin of trunk and forearm, and the order of painting."""
import side_arm
import side_cloth
import side_head
from engrave import Line, between, contour, pen, ramp
from side_frame import BACK, FORE_BACK, FORE_FRONT, FORE_TOP, FRONT, fore
from side_tools import cluster, hump, pool, rise, soft


def trunk(p):
    p.on("skin", "trunk")
    front, back = Line(FRONT), Line(BACK)
    below = [(145, 455, "c"), (359, 455, "c")]          # ends under the gown, before the gown fades
    p.area([*[q for q in BACK if q[1] < 450], *below, *[q for q in FRONT if q[1] < 440][::-1]], "wash.trunk")
    chest(p, front)
    rear(p, back)
    side_head.neck(p, front)
    side_head.head(p, front, back)
    low = lambda ln, y: next(t / 400 for t in range(401) if ln(t / 400)[1] >= y)
    p.ink(contour(back.part(low(back, 76), low(back, 345)), .25, 1.0, side=1, press=lambda t: ramp(t, (0, .1), (.12, .8), (1, 1.2))), "skin-line")
    p.ink(contour(front.part(low(front, 109.5), low(front, 197)), .4, 1.35, side=-1, press=lambda t: ramp(t, (0, .5), (.25, 1.1), (1, .8))), "skin-line")
    p.ink(contour(front.part(low(front, 190), low(front, 330)), .4, 1.5, side=-1, press=lambda t: ramp(t, (0, .4), (.5, .8), (1, 1.25))), "skin-line")


def chest(p, front):
    c = Line([q for q in FRONT if 190 < q[1] < 345])
    soft(p, c.shifted(lambda t: 6 + 34 * t), c, "skin-mid", .5, 8, rise((0, 0), (.4, .7), (.8, 1), (1, 1)))
    soft(p, c.shifted(lambda t: 3 + 12 * t), c, "skin-shade", .3, 6, rise((0, 0), (.5, .6), (1, 1)))
    p.ink(cluster(c.shifted(lambda t: 10 + 26 * t), c, 9, .56, .92, .8, .5, .14, .1), "skin-hatch")
    # the furrow in front of the deltoid: the chest passes under it, deepest at the armpit, gone at the clavicle
    cast = Line([(296, 208), (299, 230), (299.4, 252), (297.4, 280), (294, 302), (289, 323), (284.4, 340), (283, 354)])
    over = Line([(303, 210), (312, 234), (319, 258), (324, 284), (325, 306), (320, 326), (315, 344), (311, 358)])
    soft(p, over, cast, "skin-mid", .62, 10, rise((0, .1), (.25, .6), (.6, 1), (1, 1)))
    soft(p, between(over, cast, .45), cast, "skin-shade", .6, 9, rise((0, 0), (.25, .45), (.6, 1), (1, 1)))
    p.ink(cluster(over, cast, 6, .34, .64, .72, .48, .12, .2, peak=.6), "skin-hatch")
    # front armpit fold: the edge of the pectoral, running from the arm forward and down
    fold = Line([(293, 304), (297, 311.5), (303.4, 319.4), (312, 326.6), (323, 332.6)])
    soft(p, fold.shifted(9), fold, "skin-mid", .5, 6, rise((0, .3), (.3, 1), (1, .2)))
    p.ink(pen(fold.part(.05, .8), [.5, .75, .45, .2, .05]), "skin-line", .8)
    p.ink(pen([(291, 318), (299, 327), (309, 338)], [.4, .8, .05]), "skin-line", .8, cue="full")


def rear(p, back):
    b = Line([q for q in BACK if 160 < q[1] < 350])
    soft(p, b.shifted(-13), b, "skin-mid", .22, 6, hump(.8))
    # the shoulder blade under the skin: its inner border, its lower angle, the swell of the teres
    medial = Line([(166, 236), (160, 256), (156.6, 282), (156, 306), (158, 328), (161, 340)])
    soft(p, medial.shifted(8), medial, "skin-mid", .17, 6, hump(.9))
    soft(p, medial.shifted(-9), medial, "skin-light", .22, 6, hump(.9))
    # shade of the arm on the back, and the back armpit fold, longer and softer than the front one
    rim = Line([(180, 236), (180.6, 256), (183.4, 278), (187, 299), (190, 314), (189, 330), (187.6, 352)])
    out = Line([(178, 236), (172, 260), (168, 284), (169, 304), (171, 322), (173, 338), (175, 352)])
    soft(p, out, rim, "skin-mid", .5, 7, rise((0, 0), (.3, .1), (.6, .9), (1, 1)))
    fold = Line([(184.8, 292), (181.6, 303), (176.4, 315), (169, 326.6), (159.4, 337)])
    soft(p, fold.shifted(-11), fold, "skin-mid", .42, 6, rise((0, .2), (.3, 1), (1, .3)))
    p.ink(pen(fold.part(.04, .8), [.4, .6, .4, .2, .05]), "skin-line", .75)
    p.ink(pen([(188.4, 322), (182, 330), (174, 341)], [.4, .8, .05]), "skin-line", .8, cue="full")


def forearm(p):
    side_cloth.shadow(p)
    p.on("skin", "forearm")
    p.area([*FORE_TOP[:-2], fore(226, 28), fore(234, 0), fore(226, -29.5), *FORE_BACK[-3::-1], (208, 520), (222, 496), (244, 462)], "skin-base")
    ff, fb = Line(Line(FORE_FRONT).part(.06, .86)), Line(Line(FORE_BACK).part(.075, .86))
    # brachioradialis: a long swell of light along the top, a shallow groove behind it
    pool(p, [fore(18, 33), fore(45, 37), fore(80, 34), fore(120, 27), fore(170, 20)], 13, 12, "skin-light", .62, 9, .15)
    groove = Line([fore(28, 14), fore(60, 15.5), fore(100, 14), fore(150, 10), fore(200, 7)])
    soft(p, groove.shifted(-9), groove, "skin-mid", .2, 6, hump(1))
    pool(p, [fore(36, -2), fore(80, -4), fore(140, -5)], 10, 11, "skin-light", .3, 6, .2)
    low = rise((0, 0), (.12, .6), (.34, 1), (1, .95))
    soft(p, between(ff, fb, .52), fb, "skin-mid", .66, 10, low)
    soft(p, between(ff, fb, .76), fb, "skin-shade", .5, 8, low)
    p.ink(cluster(ff, fb, 17, .17, .84, .36, .58, .13, .04, dense=.55, peak=.42), "skin-hatch")
    p.ink(contour(Line(FORE_BACK).part(.12, .86), .4, 1.9, side=1, press=lambda t: ramp(t, (0, .25), (.14, .9), (.35, 1.1), (.8, .8), (1, .6))), "skin-line")
    top = Line(FORE_TOP[2:])
    p.ink(contour(top.part(0, .84), .4, 1.2, side=-1, press=lambda t: ramp(t, (0, .4), (.12, 1.1), (1, .9))), "skin-line")


def draw(p):
    p.linear("wash.trunk", "trunk", (268, 150), (318, 24), [(0, "skin-base"), (0.30, "skin-base"), (1, "skin-base", 0)])
    side_cloth.washes(p)
    trunk(p)
    side_cloth.gown(p)
    forearm(p)
    side_arm.draw(p)
    side_cloth.blanket(p)
