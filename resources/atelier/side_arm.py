"""Shoulder from the side: the skin of the arm, and the quiet surface cues of the shoulder."""
import math

from engrave import Line, between, contour, hatch, pen, ramp
from side_frame import ARM_BACK, ARM_FRONT

INSERT = (242, 376)
BORDER_FRONT = [(293, 296), (284, 318), (269, 343), (254, 363), INSERT]
BORDER_BACK = [(187, 302), (198, 324), (212, 346), (228, 365), (240, 377)]


def arm(p):
    from side_skin import hump, shade
    p.on("skin", "arm")
    p.area([*ARM_BACK[2:-3], (212, 530), (236, 524), (258, 513), (272, 503), *ARM_FRONT[:2:-1],
            (286, 191), (276, 187), (262, 183), (240, 181), (218, 184), (202, 190)], "skin-base")
    p.area([(*ARM_FRONT[2], "c"), *ARM_FRONT[3:-1], (*ARM_FRONT[-1], "c"), (266, 500), (244, 480), (228, 400), (230, 320),
            (246, 240), (268, 198)], "wash.arm")
    lit = Line([(206, 205), (199, 232), (200, 258), (207, 290), (220, 326)])
    shade(p, lit.shifted(14), lit, "skin-light", .15, 5, hump(.8))
    shade(p, lit.shifted(lambda t: -38 + 18 * t), lit, "skin-light", .13, 7, hump(.8))
    tri = Line([(206, 362), (203, 392), (206, 426), (212, 462)])
    shade(p, tri.shifted(10), tri, "skin-light", .14, 4, hump(.8))
    shade(p, tri.shifted(-22), tri, "skin-light", .13, 5, hump(.8))
    deltoid(p, shade, hump)
    upper(p, shade, hump)
    elbow(p, shade, hump)
    front, back = Line(ARM_FRONT[2:]), Line(ARM_BACK[2:])
    p.ink(contour(front.part(.0, .44), .4, 2.0, side=-1, press=lambda t: ramp(t, (0, .15), (.4, .8), (.75, 1.1), (1, .6))), "skin-line")
    p.ink(contour(front.part(.40, 1), .5, 2.2, side=-1, press=lambda t: ramp(t, (0, .4), (.3, 1), (1, 1.1))), "skin-line")
    p.ink(contour(back.part(.05, .38), .3, 1.4, side=1, press=lambda t: ramp(t, (0, .2), (.3, 1), (1, 1))), "skin-line")
    p.ink(contour(back.part(.35, 1), .4, 1.7, side=1, press=lambda t: ramp(t, (0, .4), (.2, 1), (.85, 1.15), (1, 1.3))), "skin-line")


def deltoid(p, shade, hump):
    edge = Line([(288, 193), *ARM_FRONT[3:8], (288, 312), (278, 332), (263, 355), (247, 375)])
    core = Line([(278, 196), (274, 222), (270, 246), (264, 272), (257, 296), (250, 316), (246, 332), (243, 350), (241, 368)])
    rim = lambda s: ramp(s, (0, 0), (.3, .8), (.55, 1), (.75, .8), (1, 0))
    shade(p, between(core, edge, .45), edge, "skin-shade", .11, 5, rim)
    p.ink(hatch(core, edge, 4.0, lambda s: ramp(s, (0, .1), (.2, .5), (.45, .9), (.7, .9), (1, .5)),
                lambda s: ramp(s, (0, .25), (.3, .6), (.65, .65), (.85, .4), (1, .2)), bow=lambda s: -.08 + .26 * s, t0=.06, t1=.93), "skin-hatch")
    p.ink(hatch(core, edge, 4.6, lambda s: ramp(s, (.25, 0), (.45, .34), (.6, .42), (.8, .15)), .5, bow=lambda s: .2 * s,
                t0=.32, t1=.74, skew=.07, seed=.71), "skin-hatch", .85)
    back = Line(BORDER_BACK)
    shade(p, back.shifted(lambda t: -17), back, "skin-mid", .12, 5, lambda s: ramp(s, (0, .9), (.3, 1), (1, .0)))
    shade(p, back.shifted(lambda t: 7), back, "skin-mid", .10, 3, lambda s: ramp(s, (0, .6), (.3, 1), (1, .0)))
    p.ink(hatch(back.shifted(lambda t: -19), back, 4.6, lambda s: ramp(s, (0, .9), (.4, .6), (1, .2)),
                lambda s: ramp(s, (0, .5), (.45, .36), (.7, .12)), bow=.12, t0=.03, t1=.6), "skin-hatch")
    p.ink(pen(back.part(0, .42), [.8, .8, .4, .05]), "skin-line", .75)
    rear = Line(ARM_BACK[3:9])
    shade(p, rear.shifted(-9), rear, "skin-mid", .12, 3)


def upper(p, shade, hump):
    """Biceps in front, triceps behind, the groove between."""
    edge = Line([(286.5, 334), (286.3, 345), *ARM_FRONT[10:]])
    core = Line([(268, 340), (264, 360), (263, 386), (262, 410), (261, 434), (260, 460), (259, 482), (258, 494)])
    rim = lambda s: ramp(s, (0, .2), (.2, .9), (.7, 1), (1, .6))
    shade(p, between(core, edge, .5), edge, "skin-shade", .11, 4, rim)
    p.ink(hatch(core, edge, 4.1, lambda s: ramp(s, (0, .5), (.15, .8), (.8, .9), (1, .55)), .66,
                bow=lambda s: .04 + .12 * s), "skin-hatch")
    p.ink(hatch(core, edge, 4.7, lambda s: ramp(s, (.15, .0), (.35, .36), (.75, .4), (.95, .1)), .5, bow=.06,
                t0=.3, t1=.78, skew=.09, seed=.6), "skin-hatch", .85)
    groove = Line([(243, 384), (241, 406), (242, 430), (245, 454), (249, 476)])
    shade(p, groove.shifted(17), groove, "skin-mid", .10, 5, hump(.8))
    shade(p, groove.shifted(-7), groove, "skin-mid", .10, 3, hump(.8))
    rear = Line(ARM_BACK[9:18])
    shade(p, rear.shifted(-8), rear, "skin-mid", .12, 3)


def elbow(p, shade, hump):
    tip = Line([(202.6, 520), (206, 538), (213.5, 547.5), (225, 552.5), (240, 555), (256, 559)])
    inner = Line([(210, 520), (215, 531), (221, 537), (229, 541), (241, 543), (256, 546)])
    shade(p, inner, tip, "skin-mid", .16, 4)
    p.ink(hatch(inner, tip, 5, lambda s: .95 * math.sin(math.pi * min(1, s + .12)) ** .7, .48, bow=.06, t0=.08, t1=.88), "skin-hatch")
    # hollow between olecranon and lateral epicondyle, and the epicondyle's own small swell
    hollow = Line([(216, 500), (221, 514), (225, 526), (226, 536)])
    shade(p, hollow.shifted(9), hollow, "skin-mid", .13, 4, hump(.9))
    shade(p, hollow.shifted(-6), hollow, "skin-mid", .13, 3, hump(.9))
    p.ink(hatch(hollow.shifted(9), hollow, 4.2, lambda s: .8 * math.sin(math.pi * s) ** .6, .38, bow=.05, t0=.1, t1=.9), "skin-hatch")
    knob = Line([(230, 519), (236, 522.5), (244, 522), (250, 517)])
    shade(p, knob.shifted(6), knob, "skin-mid", .14, 3, hump(.9))
    shade(p, knob.shifted(-9), knob, "skin-light", .18, 4, hump(.9))
    # crease of the bend; brachioradialis rising from the humerus
    crease = Line([(281, 486), (277, 495), (269, 502), (258, 506)])
    p.ink(pen(crease, [1.5, 1.2, .6, .05]), "skin-line")
    swell = Line([(252, 458), (259, 476), (268, 492), (281, 506), (298, 515)])
    shade(p, swell.shifted(10), swell, "skin-mid", .11, 4, hump(.8))


def surface(p):
    from side_skin import hump, shade
    p.on("surface", "trunk", "clavicle-line", "Line of the clavicle")
    clav = Line([(262, 192), (272, 190.5), (283, 193), (293, 200), (301, 208)])
    shade(p, clav.shifted(-7), clav, "skin-light", .2, 4, hump(.6))
    p.ink(pen(clav, [.05, .5, .7, .8, .1]), "skin-line", .65)
    p.ink(pen([(258, 184.5), (270, 182), (283, 185), (294, 193), (300, 199)], [.05, .4, .45, .4, .05]), "skin-line", .55, cue="lean")
    p.on("surface", "trunk", "scapular-spine", "Spine of the scapula")
    spine = Line([(213, 206.5), (199, 212), (183, 220), (167, 229)])
    shade(p, spine.shifted(8), spine, "skin-light", .2, 4, hump(.7))
    shade(p, spine.shifted(-10), spine, "skin-mid", .14, 4, hump(.7))
    p.ink(pen(spine.part(.0, .9), [.05, .55, .45, .05]), "skin-line", .6)
    p.on("surface", "trunk", "armpit-folds", "Front and back armpit folds")
    p.ink(pen([(292, 318), (296.5, 306), (303, 298), (312, 292)], [.3, 1.3, .8, .05]), "skin-line")
    p.ink(pen([(189.5, 320), (185, 306), (179.5, 297), (172, 290)], [.3, 1.0, .6, .05]), "skin-line")
    p.on("surface", "arm", "acromion-step", "Step of the acromion")
    step = Line([(216, 205.5), (221, 206.3), (230, 205), (240, 203.5), (252, 202.3), (261, 201.3), (266, 199)])
    plate = Line([(215, 199), (221, 195), (231, 192), (241, 190), (252, 189), (261, 189.5), (266, 193)])
    shade(p, step, plate, "skin-light", .2, 4, hump(.4))
    shade(p, step.shifted(11), step, "skin-mid", .16, 5, hump(.6))
    p.ink(pen(step, [.05, .55, .5, .75, .6, .7, .05]), "skin-line", .75)
    p.ink(hatch(step.shifted(9), step, 4.8, lambda s: .85 * math.sin(math.pi * s) ** .6, .42, bow=0, t0=.1, t1=.9), "skin-hatch")
    p.ink(pen(plate.part(.1, .7), [.05, .3, .3, .05]), "skin-line", .5, cue="lean")
    p.on("surface", "arm", "deltoid-end", "End of the deltoid")
    pit = Line([(233, 366), (238, 375), (242, 379), (246, 376), (252, 366)])
    shade(p, [(236, 386), (239, 388), (242, 389), (245, 388), (248, 386)], pit, "skin-mid", .15, 4, hump(.6))
    p.ink([pen([(231, 366), (236, 373), (241.5, 379)], [.05, .6, .1]), pen([(254, 364), (248, 372), (242.5, 379)], [.05, .7, .1])], "skin-line", .7)


def draw(p):
    # a great circle off to the right: its rim runs down the arm, so the shade has no edge anywhere
    p.radial("wash.arm", "arm", (512, 338), 280,
             [(0, "skin-shade", 0.85), (0.74, "skin-shade", 0.75), (0.84, "skin-mid", 0.62), (0.93, "skin-mid", 0.25), (1, "skin-mid", 0)])
    arm(p)
    surface(p)
