"""Three-quarter plate: the skin of the upper arm and the quiet surface cues of the shoulder."""
from engrave import Line, between, contour, hatch, pen, ramp
from quarter_frame import ARM_BACK, ARM_FRONT
from quarter_tools import band, hump, shade

INSERT = (217, 374)
BORDER_FRONT = [(281, 292), (272, 316), (257, 340), (238, 360), INSERT]
BORDER_BACK = [(171, 304), (181, 326), (195, 346), (208, 362), (216, 375)]


def arm(p):
    p.on("skin", "arm")
    p.area([*ARM_BACK[3:-1], (212, 560), (236, 556), (262, 520), (268, 500), *ARM_FRONT[:1:-1], (278, 214), (266, 206), (246, 200),
            (226, 192), (206, 187)], "skin-base")
    p.area([(*ARM_FRONT[2], "c"), *ARM_FRONT[3:-1], (*ARM_FRONT[-1], "c"), (262, 496), (240, 486), (222, 440), (214, 380), (216, 300),
            (236, 240), (262, 206)], "wash.arm")
    deltoid(p)
    upper(p)
    front, back = Line(ARM_FRONT[3:]), Line(ARM_BACK[1:])
    p.ink(contour(front.part(.0, .44), .3, 1.9, side=-1, press=lambda t: ramp(t, (0, .1), (.3, .5), (.6, 1.1), (1, .6))), "skin-line")
    p.ink(contour(front.part(.38, 1), .5, 2.1, side=-1, press=lambda t: ramp(t, (0, .3), (.3, 1), (1, 1.15))), "skin-line")
    p.ink(contour(back.part(.02, .44), .35, 1.3, side=1, press=lambda t: ramp(t, (0, .3), (.3, 1), (1, 1))), "skin-line")
    p.ink(contour(back.part(.40, .94), .4, 1.6, side=1, press=lambda t: ramp(t, (0, .3), (.2, 1), (.85, 1.1), (1, 1))), "skin-line")


def deltoid(p):
    lit = Line([(204, 214), (196, 238), (195, 264), (200, 292), (210, 326)])
    shade(p, lit.shifted(15), lit, "skin-light", .15, 6, hump(.8))
    shade(p, lit.shifted(lambda t: -36 + 16 * t), lit, "skin-light", .13, 7, hump(.8))
    edge = Line([(280, 216), (285, 234), (286, 258), (283.5, 282), (278, 304), (266, 328), (247, 352), (224, 370)])
    core = Line([(258, 212), (256, 232), (254, 254), (249, 278), (241, 302), (232, 324), (225, 346), (217, 364)])
    rim = lambda s: ramp(s, (0, 0), (.3, .8), (.55, 1), (.75, .8), (1, 0))
    shade(p, between(core, edge, .4), edge, "skin-shade", .11, 5, rim)
    p.ink(hatch(core, edge, 3.9, lambda s: ramp(s, (0, .25), (.2, .55), (.45, .9), (.7, .9), (1, .5)),
                lambda s: ramp(s, (0, .3), (.3, .62), (.65, .65), (.85, .42), (1, .2)), bow=lambda s: -.06 + .26 * s, t0=.08, t1=.93), "skin-hatch")
    p.ink(hatch(core, edge, 4.6, lambda s: ramp(s, (.25, 0), (.45, .34), (.6, .42), (.8, .15)), .5, bow=lambda s: .2 * s,
                t0=.3, t1=.74, skew=.07, seed=.71), "skin-hatch", .85)
    # the back border turns under toward the insertion
    back = Line(BORDER_BACK)
    fade = lambda s: ramp(s, (0, .8), (.3, 1), (1, 0))
    shade(p, back.shifted(-15), back, "skin-mid", .12, 5, fade)
    shade(p, back.shifted(7), back, "skin-mid", .10, 3, fade)
    p.ink(hatch(back.shifted(-16), back, 4.4, lambda s: ramp(s, (0, .9), (.4, .6), (1, .2)),
                lambda s: ramp(s, (0, .5), (.45, .36), (.75, .12)), bow=.12, t0=.03, t1=.66), "skin-hatch")
    p.ink(pen(back.part(0, .5), [.8, .8, .4, .05]), "skin-line", .75)
    rear = Line(ARM_BACK[5:12])
    shade(p, rear.shifted(-8), rear, "skin-mid", .13, 3)
    p.ink(hatch(rear.shifted(-11), rear, 4.6, lambda s: .6 * hump(.7)(s), .36, bow=.1, t0=.15, t1=.95), "skin-hatch", .8)


def upper(p):
    """Biceps in front, triceps at the back edge, the outer groove between."""
    edge = Line([(274, 340), (273.8, 357), *ARM_FRONT[10:]])
    core = Line([(250, 342), (246, 360), (246, 384), (249, 408), (250, 430), (249, 456), (247, 478), (244, 490)])
    rim = lambda s: ramp(s, (0, .2), (.2, .9), (.7, 1), (1, .6))
    shade(p, between(core, edge, .45), edge, "skin-shade", .11, 4, rim)
    p.ink(hatch(core, edge, 4.0, lambda s: ramp(s, (0, .5), (.15, .8), (.8, .9), (1, .6)), .64, bow=lambda s: .02 + .16 * s), "skin-hatch")
    p.ink(hatch(core, edge, 4.7, lambda s: ramp(s, (.15, 0), (.35, .36), (.75, .4), (.95, .1)), .5, bow=.08,
                t0=.25, t1=.8, skew=.09, seed=.6), "skin-hatch", .85)
    bic = Line([(228, 376), (226, 400), (227, 426), (231, 452), (236, 474)])
    band(p, bic, 14, "skin-light", .11, 6)
    groove = Line([(212, 380), (205, 402), (203, 428), (205, 454), (210, 478), (217, 496)])
    shade(p, groove.shifted(-13), groove, "skin-mid", .12, 5, hump(.8))
    shade(p, groove.shifted(8), groove, "skin-mid", .11, 4, hump(.8))
    p.ink(hatch(groove.shifted(-12), groove, 4.8, lambda s: .85 * hump(.7)(s), .38, bow=.1, t0=.1, t1=.86), "skin-hatch", .85)
    tri = Line([(187, 372), (185, 398), (186, 424), (190, 448)])
    band(p, tri, 8, "skin-light", .13, 4)
    rear = Line(ARM_BACK[12:20])
    shade(p, rear.shifted(-7), rear, "skin-mid", .12, 3)


def surface(p):
    p.on("surface", "trunk", "clavicle-line", "Line of the clavicle")
    clav = Line([(238, 193), (254, 193.5), (274, 196), (296, 198.5), (318, 200.5), (338, 204), (352, 209), (364, 213)])
    shade(p, clav.shifted(-9), clav, "skin-light", .2, 4, hump(.5))
    p.ink(pen(clav, [.05, .5, .7, .6, .8, 1.0, .9, .1]), "skin-line", .75)
    top = Line([(240, 184), (256, 183.5), (274, 185), (296, 187.5), (318, 190), (336, 193), (350, 197)])
    p.ink(pen(top, [.05, .4, .3, .5, .5, .4, .05]), "skin-line", .55)
    p.ink(pen([(352, 199), (360, 199), (368, 203), (370, 210), (365, 214)], [.05, .5, .8, .9, .2]), "skin-line", .7)
    p.ink(hatch(clav.shifted(8), clav, 4.6, lambda s: .8 * hump(.6)(s), .4, bow=.05, t0=.22, t1=.94), "skin-hatch", .85)
    far = Line([(389, 211), (400, 206), (416, 202), (432, 200), (446, 198)])
    shade(p, far.shifted(-7), far, "skin-light", .16, 4, hump(.5))
    p.ink(pen(far, [.3, .9, .8, .5, .05]), "skin-line", .7)
    p.on("surface", "trunk", "deltopectoral-groove", "Groove between deltoid and pectoral")
    groove = Line([(276, 205), (283, 218), (287.5, 236), (288, 256), (286, 276)])
    p.ink(pen(groove, [.05, .4, .6, .7, .05]), "skin-line", .65, cue="lean")
    p.on("surface", "arm", "acromion-step", "Step of the acromion")
    step = Line([(179.5, 206), (183, 204.5), (190, 203), (199, 202), (208, 200.5), (215, 198.5), (219, 195)])
    plate = Line([(184, 196), (191, 191), (200, 188.5), (209, 187), (217, 187), (222, 189)])
    shade(p, step, plate, "skin-light", .22, 4, hump(.4))
    shade(p, step.shifted(10), step, "skin-mid", .15, 5, hump(.6))
    p.ink(pen(step, [.05, .6, .6, .8, .7, .7, .05]), "skin-line", .8)
    p.ink(hatch(step.shifted(9), step, 4.2, lambda s: .85 * hump(.6)(s), .42, bow=0, t0=.1, t1=.9), "skin-hatch")
    knob = Line([(219, 187), (225, 183.5), (232, 184), (237, 188)])
    band(p, knob, 5, "skin-light", .16, 3)
    p.ink(pen(knob, [.05, .45, .45, .05]), "skin-line", .55)
    p.on("surface", "arm", "deltoid-end", "End of the deltoid")
    pit = Line([(208, 362), (213, 371), (217, 376), (222, 373), (229, 364)])
    shade(p, [(211, 382), (214, 385), (217, 386), (221, 385), (225, 382)], pit, "skin-mid", .14, 4, hump(.6))
    p.ink([pen([(205, 361), (210.5, 369), (216.5, 376)], [.05, .6, .1]), pen([(232, 362), (225, 369.5), (218, 376)], [.05, .7, .1])], "skin-line", .7)


def draw(p):
    p.radial("wash.arm", "arm", (500, 330), 282,
             [(0, "skin-shade", 0.85), (0.74, "skin-shade", 0.7), (0.84, "skin-mid", 0.6), (0.93, "skin-mid", 0.25), (1, "skin-mid", 0)])
    arm(p)
