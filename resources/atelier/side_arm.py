"""Shoulder from the side: the skin of the arm, and the quiet surface cues of the shoulder."""
import math

from engrave import Line, between, contour, echo, glow, hatch, pen, ramp
from side_frame import ARM_BACK, ARM_FRONT

INSERT = (242, 376)
BORDER_FRONT = [(294, 298), (284, 319), (269, 343), (254, 363), INSERT]
BORDER_BACK = [(185, 302), (197, 325), (212, 346), (228, 365), (240, 377)]


def arm(p):
    from side_skin import hump, shade
    p.on("skin", "arm")
    p.area([*ARM_BACK[2:], (224, 549), (228, 537), (241, 522), (260, 510), (272, 503), *ARM_FRONT[:2:-1],
            (286, 191), (276, 187), (262, 183), (240, 181), (218, 184), (202, 190)], "skin-base")
    p.area([(*ARM_FRONT[2], "c"), *ARM_FRONT[3:-1], (*ARM_FRONT[-1], "c"), (266, 500), (244, 480), (228, 400), (230, 320),
            (246, 240), (268, 198)], "wash.arm")
    p.areas_of(glow([(220, 205), (210, 232), (209, 262), (214, 294), (224, 332)], 19, 27, 7, .3), "skin-light", .12)
    p.areas_of(glow([(209, 356), (206, 388), (208, 422), (215, 466)], 12, 20, 5, .3), "skin-light", .14)
    deltoid(p, shade, hump)
    upper(p, shade, hump)
    elbow(p, shade, hump)
    front, back = Line(ARM_FRONT[2:]), Line(ARM_BACK[2:])
    p.ink(contour(front.part(.0, .44), .4, 2.0, side=-1, press=lambda t: ramp(t, (0, .15), (.4, .8), (.75, 1.1), (1, .6))), "skin-line")
    p.ink(contour(front.part(.40, 1), .5, 2.2, side=-1, press=lambda t: ramp(t, (0, .4), (.3, 1), (1, 1.1))), "skin-line")
    p.ink(contour(back.part(.10, .38), .3, 1.4, side=1, press=lambda t: ramp(t, (0, .2), (.3, 1), (1, 1))), "skin-line")
    p.ink(contour(back.part(.35, 1), .4, 1.7, side=1, press=lambda t: ramp(t, (0, .4), (.2, 1), (.85, 1.15), (1, 1.3))), "skin-line")


def deltoid(p, shade, hump):
    edge = Line([(288, 193), *ARM_FRONT[3:8], (288, 312), (278, 332), (263, 355), (247, 375)])
    core = Line([(278, 196), (274, 222), (270, 246), (264, 272), (257, 296), (250, 316), (246, 332), (243, 350), (241, 368)])
    rim = lambda s: ramp(s, (0, 0), (.3, .8), (.55, 1), (.75, .8), (1, 0))
    shade(p, between(core, edge, .45), edge, "skin-shade", .11, 5, rim)
    p.ink(hatch(core, edge, 4.2, lambda s: ramp(s, (0, .1), (.2, .5), (.45, .9), (.7, .9), (1, .5)),
                lambda s: ramp(s, (0, .25), (.3, .6), (.65, .65), (.85, .4), (1, .2)), bow=lambda s: -.08 + .26 * s, t0=.06, t1=.93,
                half=lambda s: ramp(s, (.22, 0), (.34, .5), (.72, .55), (.86, 0))), "skin-hatch")
    back = Line(BORDER_BACK)
    shade(p, back.shifted(lambda t: -17), back, "skin-mid", .12, 5, lambda s: ramp(s, (0, .9), (.3, 1), (1, .0)))
    shade(p, back.shifted(lambda t: 7), back, "skin-mid", .10, 3, lambda s: ramp(s, (0, .6), (.3, 1), (1, .0)))
    p.ink(hatch(back.shifted(lambda t: -19), back, 4.6, lambda s: ramp(s, (0, .9), (.4, .6), (1, .2)),
                lambda s: ramp(s, (0, .5), (.45, .36), (.7, .12)), bow=.12, t0=.03, t1=.6), "skin-hatch")
    p.ink(pen(back.part(0, .42), [.8, .8, .4, .05]), "skin-line", .75, cue="lean")
    rear = Line(ARM_BACK[4:9])
    shade(p, rear.shifted(-9), rear, "skin-mid", .12, 3)


def upper(p, shade, hump):
    """Biceps in front, triceps behind, the groove between."""
    edge = Line([(286.5, 334), (286.3, 345), *ARM_FRONT[10:]])
    core = Line([(268, 340), (264, 360), (263, 386), (262, 410), (261, 434), (260, 460), (259, 482), (258, 494)])
    rim = lambda s: ramp(s, (0, .2), (.2, .9), (.7, 1), (1, .6))
    shade(p, between(core, edge, .5), edge, "skin-shade", .11, 4, rim)
    p.ink(hatch(core, edge, 4.1, lambda s: ramp(s, (0, .5), (.15, .8), (.8, .9), (1, .55)), .66,
                bow=lambda s: .04 + .12 * s, half=lambda s: ramp(s, (.08, 0), (.2, .5), (.75, .5), (.9, 0))), "skin-hatch")
    p.areas_of(glow([(244, 382), (243, 408), (244, 434), (248, 460), (253, 488)], 13, 10, 4), "skin-mid", .09)
    rear = Line(ARM_BACK[9:18])
    shade(p, rear.shifted(-8), rear, "skin-mid", .12, 3)


def elbow(p, shade, hump):
    tip = Line([(202.6, 520), (206, 538), (213.5, 547.5), (225, 552.5), (240, 555), (256, 559)])
    inner = Line([(210, 520), (215, 531), (221, 537), (229, 541), (241, 543), (256, 546)])
    shade(p, inner, tip, "skin-mid", .19, 3)
    p.ink(hatch(inner, tip, 4.6, lambda s: .95 * math.sin(math.pi * min(1, s + .12)) ** .7, .48, bow=.06, t0=.06, t1=.66), "skin-hatch")
    # hollow between olecranon and lateral epicondyle, and the epicondyle's own small swell
    hollow = Line([(213, 492), (219, 508), (224, 522), (227, 536)])
    shade(p, hollow.shifted(8), hollow, "skin-mid", .16, 3, hump(1.2))
    shade(p, hollow.shifted(-5), hollow, "skin-mid", .13, 3, hump(1.2))
    p.ink(echo(hollow, 3, 2.7, .5), "skin-hatch", .9)
    knob = Line([(229, 510), (232, 518), (238, 523), (246, 523), (254, 518)])
    shade(p, knob.shifted(7), knob, "skin-mid", .09, 3, lambda s: math.sin(math.pi * s ** 1.4))
    p.areas_of(glow([(231, 511), (238, 515), (247, 511)], 5, 8, 3), "skin-light", .14)
    # crease of the bend; brachioradialis rising from the humerus
    crease = Line([(280.8, 488), (277, 496), (269.5, 502), (259, 505.5)])
    p.ink(pen(crease, [.5, 1.2, .6, .05]), "skin-line")
    swell = Line([(251, 452), (257, 472), (266, 490), (280, 505), (300, 515)])
    shade(p, swell.shifted(12), swell, "skin-mid", .10, 4, hump(1.3))
    p.ink(pen([(287, 504), (280, 511), (269, 514)], [.05, .7, .05]), "skin-line", .7, cue="full")
    p.ink([pen([(209, 470), (216, 478), (226, 481)], [.05, .5, .05]), pen([(207, 484), (214, 491), (223, 494)], [.05, .5, .05])],
          "skin-line", .6, cue="older")


def surface(p):
    from side_skin import hump, shade
    p.on("surface", "trunk", "clavicle-line", "Line of the clavicle")
    clav = Line([(265, 191.5), (274, 190), (283, 193), (290.5, 199), (297, 206), (302, 208.5)])
    top = Line([(259, 183.5), (271, 181), (282, 184), (290, 190), (296, 196.5), (301, 199.5)])
    shade(p, clav, between(clav, top, .8), "skin-light", .16, 3, hump(.9))
    shade(p, clav.shifted(6), clav, "skin-mid", .12, 3, hump(1))
    p.ink(pen(clav, [.05, .5, .75, .9, .2]), "skin-line", .7)
    p.ink(pen(top.part(.1, .95), [.05, .35, .5, .4, .05]), "skin-line", .55, cue="lean")
    # one ridge: spine of the scapula, its corner, the acromion's outer edge, its front tip
    p.on("surface", "trunk", "scapular-spine", "Spine of the scapula")
    spine = Line([(163, 231), (180, 221.5), (198, 212.5), (216, 205.5)])
    shade(p, spine.shifted(-12), spine, "skin-light", .15, 4, lambda s: ramp(s, (0, 0), (.6, .8), (.9, .9), (1, .4)))
    shade(p, spine.shifted(14), spine, "skin-mid", .12, 4, lambda s: ramp(s, (0, 0), (.5, .8), (1, .2)))
    p.ink(pen(spine.part(.1, .94), [.05, .35, .5, .6, .15]), "skin-line", .6)
    p.on("surface", "arm", "acromion-step", "Step of the acromion")
    step = Line([(213, 206.5), (219, 206), (230, 204.8), (241, 203.4), (252, 202.2), (262, 201.2), (267, 198), (268.5, 193)])
    shade(p, [(210, 194), (224, 186), (240, 181), (254, 180), (264, 182), (270, 187)], step, "skin-light", .13, 4,
          lambda s: ramp(s, (0, .2), (.2, .9), (.7, 1), (1, .3)))
    below = Line([(208, 212), (220, 219), (236, 222), (252, 220), (266, 211), (272, 199)])
    shade(p, below, step, "skin-mid", .14, 4, lambda s: ramp(s, (0, .1), (.35, .8), (.75, 1), (1, 0)))
    p.ink(pen(step, [.1, .8, .55, .5, .6, .8, .9, .05]), "skin-line", .8)
    for k in range(4):
        p.ink(pen(step.shifted(2.3 * (k + 1), .10 + .13 * k, .80 - .01 * k), [.05, .35, .5 - .05 * k, .05]), "skin-hatch", .9)
    p.on("surface", "arm", "deltoid-end", "End of the deltoid")
    pit = Line([(232, 365), (238, 375), (242, 379), (246, 376), (253, 365)])
    shade(p, [(236, 388), (239, 391), (242, 392), (245, 391), (248, 388)], pit, "skin-mid", .15, 4, hump(1))
    p.ink([pen([(231, 366), (236, 373), (241.5, 379)], [.05, .6, .1]), pen([(254, 364), (248, 372), (242.5, 379)], [.05, .7, .1])], "skin-line", .7, cue="lean")


def draw(p):
    # a great circle off to the right: its rim runs down the arm, so the shade has no edge anywhere
    p.radial("wash.arm", "arm", (512, 338), 280,
             [(0, "skin-shade", 0.85), (0.74, "skin-shade", 0.75), (0.84, "skin-mid", 0.62), (0.93, "skin-mid", 0.25), (1, "skin-mid", 0)])
    arm(p)
    surface(p)
