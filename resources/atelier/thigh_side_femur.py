"""Thigh from the side: femur with head and trochanter, patella, the ends of tibia and fibula."""
from engrave import Line, contour, hatch, pen, ramp, stipple
from thigh_side_tools import cluster, hump, pool, rise, soft
from thigh_side_frame import FEMUR_BACK, FEMUR_FRONT, at, cm

HEAD = cm((-1, 4.4), (.4, 4.0), (1.2, 2.8), (1.3, 1.6), (.3, -.1), (-1.2, -.4), (-2.6, .2), (-3.4, 1.6), (-3.2, 3.0), (-2.3, 4.0))
TROCHANTER = cm((-1.8, 1.2), (-2.15, .2), (-2.05, -.9), (-1.4, -1.9), (-.3, -2.3), (.9, -2.2), (1.9, -1.75), (2.45, -.9), (2.6, .2), (2.3, 1.3), (1.5, 2.1), (.3, 2.35), (-.9, 2.0))
FEMUR = [*cm((-.7, 2.1), (.4, 2.6), (1.4, 3.0)), *FEMUR_FRONT, *FEMUR_BACK[:0:-1], *cm((1.4, -2.0), (.6, -2.25), (-.3, -2.3), (-1.4, -1.9), (-2.05, -.9), (-2.15, .2), (-1.8, 1.2))]
PATELLA = cm((38.05, 6.1), (38.4, 6.55), (39.4, 6.74), (40.6, 6.7), (41.7, 6.32), (42.5, 5.6), (42.55, 5.2), (41.9, 5.0), (41.0, 4.7), (39.8, 4.6), (38.7, 4.9), (38.1, 5.5))
TIBIA_FRONT = cm((43.0, 2.6), (43.5, 3.5), (44.4, 4.0), (45.6, 4.6), (46.6, 5.05), (47.4, 5.0), (48.6, 4.6), (50, 4.4), (52, 4.22), (53.4, 4.1))
TIBIA_BACK = cm((53.4, 1.1), (52, 1.1), (49.5, .95), (47.4, .4), (46.0, -.6), (45.0, -1.7), (44.0, -2.1), (43.2, -1.8), (42.95, -1.0))
TIBIA = [(*TIBIA_FRONT[0], "c"), *TIBIA_FRONT[1:-1], (*TIBIA_FRONT[-1], "c"), (*TIBIA_BACK[0], "c"), *TIBIA_BACK[1:], *cm((42.9, .2), (42.86, 1.4))]
FIBULA_FRONT = cm((44.0, -1.3), (44.3, -.5), (45.1, -.1), (46.2, -.4), (48, -.3), (51, .1), (53.4, .3))
FIBULA_BACK = cm((53.4, -.85), (51, -1.0), (48, -1.4), (46.3, -1.9), (45.2, -2.35), (44.3, -2.2), (43.9, -1.7))
FIBULA = [*FIBULA_FRONT[:-1], (*FIBULA_FRONT[-1], "c"), (*FIBULA_BACK[0], "c"), *FIBULA_BACK[1:]]


def plateau(p):
    p.ink(pen(cm((42.95, -1.0), (42.9, .2), (42.86, 1.4), (43.0, 2.6)), [.4, .9, .9, .5]), "bone-line")
    p.areas_of(stipple(cm((43.8, -1.6), (43.7, .6), (44.0, 2.8)), cm((43.0, -1.4), (42.9, .6), (43.1, 3.0)), 6, .38, depth=.9), "bone-line", .5)
    pool(p, cm((45.8, 4.3), (46.6, 4.6), (47.4, 4.5)), 4, 3.5, "bone-light", .6)



def leg(p):
    for name, title, shape, front, back in (("tibia", "Tibia", TIBIA, TIBIA_FRONT, TIBIA_BACK[::-1]), ("fibula", "Fibula", FIBULA, FIBULA_FRONT, FIBULA_BACK[::-1])):
        p.on("bone", "leg", name, title)
        p.area(shape, "wash.leg.bone")
        f, b = Line(front), Line(back)
        fade = lambda t: ramp(t, (0, 1), (.6, 1), (1, .02))
        soft(p, b.shifted(-8 if name == "tibia" else -5), b, "bone-shade", .5, rise((0, .4), (.2, 1), (.7, .7), (.98, 0)))
        p.ink(contour(f, .3, 1.0, side=-1, press=fade), "bone-line")
        p.ink(contour(b, .4, 1.5, side=1, press=fade), "bone-line")
        if name == "tibia":
            plateau(p)


def head(p):
    p.area(HEAD, "bone-light")
    low = Line(cm((-3.3, 1.1), (-2.4, 0), (-1.0, -.4), (.4, 0), (1.2, 1.4), (1.2, 2.8)))
    soft(p, low.shifted(-12), low, "bone-shade", .5, hump(.5))
    p.ink(contour(Line([*HEAD[6:], *HEAD[:4]]), .3, .9, side=-1), "bone-line")


def shaft(p):
    p.area(FEMUR, "wash.femur")
    front, back = Line(FEMUR_FRONT), Line(FEMUR_BACK)
    body = Line(back.part(.08, .9))
    soft(p, body.shifted(-13), body, "bone-shade", .55, rise((0, .3), (.15, 1), (.85, 1), (1, .4)))
    ridge = Line(front.part(.1, .86))
    soft(p, ridge.shifted(5), ridge, "bone-base", .6, hump(.5))
    pool(p, cm((6, 1.6), (12, 2.4), (19, 3.1), (26, 3.0), (33, 2.5)), 3.5, 4, "bone-light", .55)
    # the rough line behind, with the gluteal roughness at its upper end
    rough = Line(cm((3.4, .3), (5.5, .6), (8, .75), (11, 1.05)))
    p.ink([pen(rough.part(a, a + .22), [.05, .6, .05]) for a in (.02, .2, .42, .6, .76)], "bone-line", .6)
    p.ink([pen(Line(body.shifted(-2.6)).part(a, b), [.05, .45, .05]) for a, b in ((.3, .46), (.44, .62), (.65, .74))], "bone-line", .5)
    p.ink(cluster(Line(body.shifted(-17)), body, 6, .03, .2, .8, .42, .12, .08), "bone-line", .55)
    p.ink(cluster(Line(body.shifted(-16)), body, 5, .34, .6, .62, .38, .12, .08, seed=.6), "bone-line", .5)
    p.ink(cluster(Line(body.shifted(-18)), body, 7, .76, .97, .85, .42, .12, .08, seed=.2), "bone-line", .55)
    p.ink(contour(Line([*cm((.4, 2.6), (1.4, 3.0)), *FEMUR_FRONT[:11]]), .3, .9, side=-1, press=lambda t: ramp(t, (0, .2), (.1, 1), (.6, .6), (1, 1))), "bone-line")
    p.ink(contour(Line(FEMUR_BACK[:14]), .4, 1.6, side=1, press=lambda t: ramp(t, (0, .8), (.5, 1), (1, .9))), "bone-line")


def trochanter(p):
    p.on("bone", "thigh", "greater-trochanter", "Greater trochanter")
    low = Line(cm((-2.1, -.4), (-1.4, -1.8), (-.2, -2.3), (1.0, -2.2), (2.1, -1.6)))
    soft(p, low.shifted(-11), low, "bone-shade", .5, hump(.5))
    pool(p, cm((-1.3, .3), (0, .3), (1.5, .3)), 9, 9, "bone-light", .75)
    # its lower ridge, where vastus lateralis takes hold: rough, and lost toward the back
    ridge = Line(cm((1.6, 2.5), (2.3, 1.6), (2.6, .6), (2.5, -.3)))
    p.ink([pen(ridge.part(.05, .4), [.05, .6, .05]), pen(ridge.part(.45, .75), [.05, .5, .05])], "bone-line", .6)
    pool(p, cm((2.4, .6), (4.2, .9), (6.4, 1.2)), 8, 7, "bone-base", .4)
    top = Line(cm((-2.15, .3), (-1.7, 1.3), (-.8, 2.0), (.2, 2.4), (1.0, 2.6)))
    soft(p, top.shifted(-6), top, "bone-shade", .4, hump(.6))
    p.ink(pen(top.part(0, .85), [.4, .8, .6, .3, .05]), "bone-line", .85)
    p.ink(contour(Line(cm((-2.15, .4), (-2.05, -.9), (-1.4, -1.9), (-.3, -2.3), (.9, -2.2), (1.9, -1.75))), .4, 1.6, side=1), "bone-line")
    p.areas_of(stipple(cm((-1.3, -.8), (.2, -1.1), (1.6, -.8)), low, 5, .38, depth=.8), "bone-line", .5)


def condyle(p):
    p.on("bone", "thigh", "femur", "Femur")
    tail = Line(cm((36.2, -.2), (37.5, -.9), (38.6, -1.75), (39.9, -2.2), (41.1, -2.0), (42.2, -1.1), (42.75, .2), (42.7, 1.5), (42.1, 2.8)))
    soft(p, tail.shifted(-15), tail, "bone-shade", .5, rise((0, .3), (.3, 1), (.8, .9), (1, .2)))
    # the joint's own smooth edge, the epicondyle with the groove under it
    facet = Line(cm((38.6, 4.2), (39.8, 3.4), (41.0, 2.4), (41.6, 1.0), (41.4, -.4), (40.4, -1.4)))
    p.ink([pen(facet.part(0, .4), [.05, .5, .05]), pen(facet.part(.45, 1), [.05, .5, .5, .05])], "bone-line", .5)
    pool(p, cm((39.3, 1.6), (39.9, 1.4), (40.5, 1.1)), 5, 5, "bone-light", .75)
    g = Line(cm((39.0, .5), (39.8, .5), (40.6, .2), (41.0, -.6)))
    soft(p, g.shifted(6), g, "bone-shade", .4, hump(.8))
    p.ink(pen(g, [.05, .6, .5, .05]), "bone-line", .6)
    p.areas_of(stipple(cm((37.5, 1.5), (39, 2.4), (40.6, 1.6)), cm((37.6, .2), (38.6, -1.2), (40.6, -1.7)), 8, .36, depth=.9), "bone-line", .45)
    p.ink(contour(tail, .5, 1.6, side=1), "bone-line")
    p.ink(contour(Line(FEMUR_FRONT[10:16]), .3, 1.0, side=-1), "bone-line")


def kneecap(p):
    p.on("bone", "thigh", "patella", "Patella")
    p.area(PATELLA, "bone-light")
    low = Line(PATELLA[5:12])
    soft(p, low.shifted(8), low, "bone-shade", .5, hump(.5))
    p.areas_of(stipple(cm((38.6, 5.8), (41.6, 5.8)), cm((38.4, 6.6), (41.9, 6.2)), 4, .36, depth=.8), "bone-line", .45)
    p.ink(contour(Line([*PATELLA, PATELLA[0]]), .35, 1.3, side=-1), "bone-line")


def draw(p):
    p.linear("wash.femur", "thigh", at(20, 4.4), at(19.8, .6), [(0, "bone-base"), (.35, "bone-light"), (1, "bone-base")])
    p.linear("wash.leg.bone", "leg", at(47, 2), at(53.2, 2), [(0, "bone-base"), (.4, "bone-base"), (1, "bone-base", 0)])
    leg(p)
    p.on("bone", "thigh", "femur", "Femur")
    head(p)
    shaft(p)
    trochanter(p)
    condyle(p)
    kneecap(p)
