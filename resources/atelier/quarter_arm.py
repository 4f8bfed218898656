"""Three-quarter plate: the skin of the upper arm and the quiet surface cues of the shoulder."""
from engrave import Line, between, contour, echo, glow, hatch, pen, ramp
from quarter_frame import ARM_BACK, ARM_FRONT
from quarter_tools import hump, shade

BORDER_BACK = [(175, 312), (183, 329), (195, 347), (207, 363), (216, 376)]


def arm(p):
    p.on("skin", "arm")
    p.area([*ARM_BACK[:-1], (212, 560), (236, 556), (262, 520), (268, 500), *ARM_FRONT[-3:1:-1], (278, 214), (266, 204), (252, 192),
            (240, 184)], "skin-base")
    p.area([(*ARM_FRONT[2], "c"), *ARM_FRONT[3:-3], (*ARM_FRONT[-3], "c"), (262, 496), (240, 486), (222, 440), (214, 380), (216, 300),
            (236, 240), (262, 206)], "wash.arm")
    p.areas_of(glow([(200, 212), (194, 238), (194, 266), (199, 296), (208, 330)], 17, 30, 7, .3), "skin-light", .12)
    deltoid(p)
    upper(p)
    front, back = Line(ARM_FRONT[3:]), Line(ARM_BACK[1:])
    p.ink(contour(front.part(.0, .44), .3, 1.9, side=-1, press=lambda t: ramp(t, (0, .1), (.3, .5), (.6, 1.1), (1, .6))), "skin-line")
    p.ink(contour(front.part(.36, .96), .5, 2.1, side=-1, press=lambda t: ramp(t, (0, .3), (.3, 1), (.8, 1.1), (1, .6))), "skin-line")
    p.ink(contour(Line(ARM_BACK).part(.0, .47), .35, 1.3, side=1, press=lambda t: ramp(t, (0, .2), (.08, .3), (.14, 1.3), (.4, 1), (1, 1))), "skin-line")
    p.ink(contour(back.part(.42, .945), .4, 1.6, side=1, press=lambda t: ramp(t, (0, .3), (.2, 1), (.85, 1.1), (1, 1))), "skin-line")


def deltoid(p):
    edge = Line([(278, 214), (284, 232), (286, 257), (283.5, 282), (278, 304), (267, 328), (251, 350), (234, 366)])
    core = Line([(256, 210), (252, 232), (250, 255), (246, 279), (240, 302), (233, 324), (227, 346), (221, 366)])
    rim = lambda s: ramp(s, (0, 0), (.3, .8), (.55, 1), (.75, .7), (1, 0))
    shade(p, between(core, edge, .35), edge, "skin-shade", .12, 5, rim)
    p.ink(hatch(core, edge, 4.5, lambda s: ramp(s, (0, .2), (.2, .55), (.45, .9), (.7, .85), (1, .3)),
                lambda s: ramp(s, (0, .2), (.3, .6), (.65, .62), (.85, .3), (1, .1)), bow=lambda s: -.06 + .28 * s, t0=.05, t1=.9,
                half=lambda s: ramp(s, (.2, 0), (.34, .5), (.66, .55), (.8, 0))), "skin-hatch")
    # the back border turns under toward the insertion: soft, its line lost half way
    back = Line(BORDER_BACK)
    fade = lambda s: ramp(s, (0, 0), (.35, 1), (1, 0))
    shade(p, back.shifted(-16), back, "skin-mid", .13, 4, fade)
    shade(p, back.shifted(7), back, "skin-mid", .11, 3, lambda s: ramp(s, (0, 0), (.3, 1), (1, 0)))
    p.ink(pen(back.part(0, .34), [.1, .7, .4, .05]), "skin-line", .6)
    rear = Line(ARM_BACK[5:15])
    shade(p, rear.shifted(-9), rear, "skin-mid", .15, 3, hump(1.2))
    # the dimple where it ends
    p.areas_of(glow([(217, 362), (217, 374), (216, 388), (214, 400)], 8, 10, 4, .3), "skin-mid", .12)


def upper(p):
    """Biceps in front, triceps at the back edge, the outer groove between."""
    edge = Line([(274, 340), (273.8, 357), *ARM_FRONT[10:-2]])
    core = Line([(250, 342), (247, 360), (247, 384), (250, 408), (251, 430), (250, 456), (248, 478), (245, 490)])
    rim = lambda s: ramp(s, (0, .2), (.2, .9), (.7, 1), (1, .6))
    shade(p, between(core, edge, .4), edge, "skin-shade", .12, 4, rim)
    p.ink(hatch(core, edge, 5.2, lambda s: ramp(s, (0, .5), (.15, .8), (.8, .9), (1, .6)), .64, bow=lambda s: .02 + .18 * s,
                half=lambda s: ramp(s, (.1, 0), (.25, .5), (.75, .5), (.9, 0))), "skin-hatch")
    p.areas_of(glow([(230, 372), (228, 400), (229, 428), (233, 456), (238, 478)], 12, 17, 6, .3), "skin-light", .12)
    p.areas_of(glow([(209, 384), (203, 408), (202, 434), (206, 460), (214, 486)], 14, 13, 6, .25), "skin-mid", .085)
    p.ink(pen([(210, 388), (205, 410), (204, 434), (207.5, 458), (215, 482)], [.05, .3, .45, .4, .05]), "skin-hatch", .7)
    p.areas_of(glow([(188, 362), (185, 390), (186, 420), (190, 452)], 6, 8, 4, .3), "skin-light", .14)
    rear = Line(ARM_BACK[14:22])
    shade(p, rear.shifted(-7), rear, "skin-mid", .14, 3, hump(1.2))


def surface(p):
    p.on("surface", "trunk", "clavicle-line", "Line of the clavicle")
    low = Line([(242, 194), (258, 195), (276, 197.5), (297, 199.5), (318, 201), (337, 204.5), (352, 209.5), (364, 213.5)])
    top = Line([(236, 184.5), (254, 183), (274, 185), (296, 188), (318, 190), (337, 193), (352, 198), (362, 199)])
    ridge = between(top, low, .35)
    p.areas_of(glow(ridge.part(.02, .98), 4.5, 5, 4, .6), "skin-light", .17)
    shade(p, low.shifted(8), low, "skin-mid", .13, 4, lambda s: ramp(s, (0, 0), (.3, .8), (.8, 1), (1, .3)))
    p.ink(pen(low, [.05, .35, .6, .6, .75, 1.0, 1.0, .1]), "skin-line", .75)
    p.ink(echo(low.part(.35, 1), 2, 2.8, .5, .8, .08), "skin-hatch", .8, cue="lean")
    p.ink(pen(top.part(.1, .95), [.05, .35, .3, .45, .5, .4, .05]), "skin-line", .5, cue="lean")
    p.ink(pen([(356, 199.5), (363, 200), (368.5, 204.5), (369.5, 210.5), (365, 214)], [.05, .5, .8, .8, .1]), "skin-line", .65)
    far = Line([(388, 211), (398, 206.5), (413, 202.5), (430, 200), (444, 198)])
    shade(p, far.shifted(-8), far, "skin-light", .16, 3, hump(.8))
    p.ink(pen(far, [.3, .9, .8, .45, .05]), "skin-line", .7)
    p.on("surface", "trunk", "deltopectoral-groove", "Groove between deltoid and pectoral")
    p.ink(pen([(277, 206), (283.5, 219), (287.5, 237), (288, 257)], [.05, .4, .5, .05]), "skin-line", .6, cue="lean")
    p.on("surface", "arm", "acromion-step", "Step of the acromion")
    step = Line([(175, 207), (183, 205.4), (194, 203.6), (204, 202), (212, 199.9), (218.5, 196.4), (226, 193.6), (235, 193)])
    shade(p, [(183, 196), (190, 190.5), (199, 187), (208, 185.5), (217, 184.5), (226, 185), (234, 187)], step, "skin-light", .14, 4, lambda s: ramp(s, (0, 0), (.2, .8), (.7, 1), (1, .2)))
    shade(p, [(177, 211), (186, 217), (198, 219), (210, 217), (222, 210), (232, 202), (240, 197)], step, "skin-mid", .15, 4, lambda s: ramp(s, (0, .1), (.35, .8), (.75, 1), (1, 0)))
    p.ink(pen(step, [.05, .6, .75, .6, .8, .8, .5, .05]), "skin-line", .8)
    for k in range(4):
        p.ink(pen(step.shifted(2.3 * (k + 1), .12 + .11 * k, .70 - .03 * k), [.05, .35, .5 - .05 * k, .05]), "skin-hatch", .9)
    p.areas_of(glow([(221, 187), (227, 184.5), (234, 186)], 3.5, 4, 3, .5), "skin-light", .2)
    p.on("surface", "arm", "deltoid-end", "End of the deltoid")
    p.ink(pen([(228, 365), (223.5, 370.5), (218.5, 374.5), (213.5, 376)], [.05, .4, .45, .05]), "skin-line", .5)


def draw(p):
    p.radial("wash.arm", "arm", (500, 372), 292,
             [(0, "skin-shade", 0.85), (0.74, "skin-shade", 0.7), (0.84, "skin-mid", 0.6), (0.93, "skin-mid", 0.25), (1, "skin-mid", 0)])
    arm(p)
