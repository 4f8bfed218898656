"""Shoulder from the side: the skin of the arm, and the quiet surface cues of the shoulder."""
from engrave import Line, between, contour, pen, ramp
from side_frame import ARM_BACK, ARM_FRONT, BRACHIORADIALIS, fore
from side_tools import cluster, hump, pool, rise, soft

# lower borders of the deltoid: they lose themselves before they meet
BORDER_FRONT = [(291, 326), (283.5, 340), (273.5, 352), (262, 362), (252, 369)]
BORDER_BACK = [(190.2, 314), (196.4, 327), (206, 340.5), (217.5, 353), (230, 365)]
CORNER = [fore(9, -32.7), fore(18, -33.4), fore(32, -35.6)]           # the elbow's line runs on into the forearm's


def arm(p):
    p.on("skin", "arm")
    p.area([*ARM_BACK[2:], (238, 548), (246, 530), (262, 504), (279, 480), (*ARM_FRONT[-2], "c"), *ARM_FRONT[-3:1:-1],
            (284, 188), (274, 184.5), (262, 183), (240, 181), (218, 184), (202, 190)], "skin-base")
    p.area([(*ARM_FRONT[2], "c"), *ARM_FRONT[3:-2], (*ARM_FRONT[-2], "c"), *BRACHIORADIALIS[2::-1], (244, 440), (232, 390), (230, 320),
            (244, 240), (268, 196)], "wash.arm")
    deltoid(p)
    upper(p)
    elbow(p)
    edges(p)


def edges(p):
    """Contours: light on the back, none before the furrow, heaviest where biceps and elbow overhang."""
    back, front = Line(ARM_BACK[2:]), Line(ARM_FRONT[2:])
    at = lambda ln, y: next(t / 500 for t in range(501) if ln(t / 500)[1] >= y)
    # deltoid's back runs past the notch into its border; the triceps comes out from under it
    d = Line([*back.part(at(back, 240), at(back, 311)), *BORDER_BACK[:3]])
    p.ink(contour(d, .3, 1.0, side=1, press=lambda t: ramp(t, (0, .1), (.4, 1), (.75, 1.1), (1, .1))), "skin-line")
    p.ink(contour(back.part(at(back, 322), at(back, 517)), .3, 1.15, side=1, press=lambda t: ramp(t, (0, .2), (.2, 1), (.6, .8), (1, .9))), "skin-line")
    tip = Line([*back.part(at(back, 511), 1), *CORNER])
    p.ink(contour(tip, .45, 1.75, side=1, press=lambda t: ramp(t, (0, .3), (.3, 1.1), (.6, 1), (1, .1))), "skin-line")
    p.ink(contour(front.part(at(front, 292), at(front, 352)), .4, 1.25, side=-1, press=lambda t: ramp(t, (0, .1), (.4, .9), (.8, .9), (1, .2))), "skin-line")
    p.ink(contour(front.part(at(front, 343), at(front, 470.5)), .45, 1.6, side=-1, press=lambda t: ramp(t, (0, .1), (.3, .8), (.75, 1.2), (.95, .9), (1, .3))), "skin-line")
    b = Line([*BRACHIORADIALIS[:-1], (290, 474.6)])
    p.ink(contour(b, .5, 1.1, side=-1, press=lambda t: ramp(t, (0, .05), (.4, .9), (.7, 1.1), (1, .3))), "skin-line")


def deltoid(p):
    # its light, high on the rounding toward us; shade falling round its lower front
    pool(p, [(214, 216), (208, 238), (209, 262), (217, 292), (229, 324)], 24, 34, "skin-light", .76, 20, .05)
    edge = Line([*ARM_FRONT[3:10], (288, 330), (279, 344), (263, 360), (248, 371)])
    core = Line([(284, 206), (280, 232), (274, 258), (268, 280), (261, 300), (254, 318), (248, 334), (245, 348), (242, 362)])
    rim = rise((0, 0), (.2, .5), (.42, 1), (.56, .6), (.70, 0), (1, 0))
    soft(p, between(core, edge, .25), edge, "skin-shade", .50, 9, rim)
    p.ink(cluster(core, edge, 16, .25, .80, .92, .55, lambda s: -.06 + .26 * s, .07, peak=.58), "skin-hatch")
    back, front = Line(BORDER_BACK), Line(BORDER_FRONT)
    pool(p, [(188, 300), (193, 322), (206, 341), (220, 355), (233, 366)], 13, 19, "skin-mid", .58, 14, .05)
    pool(p, [(294, 312), (285, 333), (274, 349), (261, 361), (250, 369)], 10, 15, "skin-mid", .46, 11, .05)
    p.ink(cluster(back.shifted(-20), back, 7, .12, .74, .75, .42, .14, .10), "skin-hatch")
    rear = Line(ARM_BACK[5:9])
    soft(p, rear.shifted(-11), rear, "skin-mid", .24, 6, hump(.9))
    # the end: two shades that die before they meet, one dimple
    pool(p, [(241.6, 371), (241.8, 379), (242.4, 392)], 9, 9, "skin-mid", .22, 9, .05)


def upper(p):
    """Biceps in front, triceps behind, the groove over brachialis between."""
    pool(p, [(207, 338), (203, 358), (204.5, 384), (209, 412), (214, 440)], 14, 19, "skin-light", .64, 14, .05)
    edge = Line([(286, 350), (286, 364), (289, 382), (292.4, 402), (294.2, 419), (293.2, 435), (289.2, 450), (281, 466)])
    core = Line([(268, 350), (266, 364), (265, 384), (265, 404), (265, 420), (264, 436), (262, 448), (264, 456)])
    rim = rise((0, 0), (.25, .7), (.7, 1), (1, .3))
    soft(p, between(core, edge, .35), edge, "skin-shade", .45, 8, rim)
    p.ink(cluster(core, edge, 12, .28, .93, .86, .6, lambda s: .02 + .16 * s, .06, peak=.62), "skin-hatch")
    # lateral groove between the flexors and triceps, running down from the dimple
    groove = Line([(242, 392), (241.6, 412), (243, 432), (246.5, 450), (251, 466)])
    pool(p, groove.pts[::6], 14, 13, "skin-mid", .28, 11, .05)
    # lateral head of the triceps over its flat tendon
    ten = Line([(229, 424), (224, 446), (217, 466), (209.5, 484)])
    pool(p, ten.pts[::6], 9, 10, "skin-mid", .2, 8, .05)
    rear = Line(ARM_BACK[8:14])
    soft(p, rear.shifted(-9), rear, "skin-mid", .30, 6, hump(1))


def elbow(p):
    # two planes: the tendon's flat above the corner, the ulnar edge below it
    tip = Line([(203, 530), (206.2, 538.6), (213, 545), (223, 549), (234, 552), (246, 554.6), (258, 557.4)])
    inner = Line([(212, 526), (214.5, 532), (219, 536), (226, 539), (236, 541), (247, 543.6), (259, 547)])
    soft(p, inner, tip, "skin-mid", .5, 8, rise((0, 0), (.3, .9), (.7, 1), (1, 0)))
    soft(p, between(inner, tip, .5), tip, "skin-shade", .35, 6, rise((0, 0), (.35, .9), (.7, 1), (1, 0)))
    pool(p, [(208.5, 500), (209, 514), (211.5, 529)], 4.5, 4, "skin-light", .55, 6)
    # hollow between olecranon and epicondyle; the epicondyle shaded on one side only
    hollow = Line([(215.5, 490), (219, 504), (222.4, 518), (225.5, 533)])
    pool(p, hollow.pts[::6], 7, 8, "skin-mid", .46, 11, .05)
    p.ink(pen(hollow.shifted(-3, .3, .8), [.05, .4, .05]), "skin-hatch", .6, cue="lean")
    pool(p, [(231, 509), (236, 512), (243, 511)], 5, 6, "skin-light", .34, 8)
    pool(p, [(232, 522), (238, 525.4), (246, 523.6)], 5, 6, "skin-mid", .2, 6, .05)
    # crease of the bend, under the brachioradialis; the muscle's hinder side going down the forearm
    swell = Line([(252, 452), (255, 470), (260, 486), (268, 500), (280, 511), (296, 519)])
    pool(p, swell.pts[::6], 8, 7, "skin-mid", .24, 9, .1)
    pool(p, [(262, 460), (270, 472), (282, 483), (296, 490)], 8, 7, "skin-light", .5, 7)
    b = Line(BRACHIORADIALIS)
    soft(p, b.shifted(-8, 0, .75), b.part(0, .75), "skin-shade", .4, 6, rise((0, 0), (.5, .9), (.85, .8), (1, 0)))
    p.ink(pen([(287, 490), (279, 497), (268, 500)], [.05, .7, .05]), "skin-line", .7, cue="full")
    p.ink([pen([(208, 472), (216, 479), (226, 481)], [.05, .5, .05]), pen([(207, 486), (214, 492), (223, 494)], [.05, .5, .05])],
          "skin-line", .6, cue="older")


def surface(p):
    p.on("surface", "trunk", "clavicle-line", "Line of the clavicle")
    clav = Line([(262, 192.5), (270, 191), (278, 191.6), (285, 195), (291, 200.4), (295, 204.5)])
    top = Line([(256, 186.5), (266, 184.2), (276, 184), (285, 187.6), (292, 193), (298, 198.6)])
    soft(p, between(clav, top, .95), between(clav, top, .25), "skin-light", .55, 6, hump(.9))
    soft(p, clav.shifted(7), clav, "skin-mid", .5, 7, hump(.9))
    p.ink(pen(clav.part(.04, .9), [.05, .3, .4, .3, .05]), "skin-line", .55)
    p.ink(pen(top.part(.3, 1), [.05, .3, .45, .3, .05]), "skin-line", .45, cue="lean")
    # one ridge: spine of the scapula, its corner, the acromion's outer edge, its front tip
    p.on("surface", "trunk", "scapular-spine", "Spine of the scapula")
    spine = Line([(166, 229), (180, 221.5), (197, 213), (212, 207)])
    soft(p, spine.shifted(-11), spine, "skin-light", .3, 7, rise((0, 0), (.6, .9), (1, .6)))
    soft(p, spine.shifted(13), spine, "skin-mid", .26, 7, rise((0, 0), (.5, .9), (1, .55)))
    p.ink(pen(spine.part(.35, .97), [.05, .3, .4, .3]), "skin-line", .5, cue="lean")
    p.on("surface", "arm", "acromion-step", "Step of the acromion")
    step = Line([(211, 207.6), (215.5, 206.6), (224, 205.6), (240, 204), (252, 202.6), (262, 201.2), (268, 201.2), (271.6, 204), (273, 208.5)])
    above = Line([(209, 196), (214, 193), (223, 189.5), (240, 186), (252, 185.6), (262, 187.6), (270, 192), (274.5, 198), (276, 205)])
    soft(p, above, step, "skin-light", .5, 8, rise((0, .3), (.2, .9), (.7, 1), (1, .1)))
    below = Line([(209, 211), (214, 216), (224, 219), (240, 218), (252, 216), (262, 213.6), (267, 211), (269, 209.6), (271, 209)])
    soft(p, below, step, "skin-mid", .55, 8, rise((0, .2), (.3, .9), (.75, 1), (1, .1)))
    p.ink([pen(step.part(.0, .44), [.1, .95, .5, .28, .2, .05]), pen(step.part(.52, 1), [.05, .2, .3, .5, .95, .5, .05])], "skin-line", .75)
    p.on("surface", "arm", "deltoid-end", "End of the deltoid")
    b, f = Line(BORDER_BACK), Line(BORDER_FRONT)
    p.ink([pen(b.part(.52, .82), [.05, .35, .05]), pen(f.part(.02, .6), [.05, .45, .3, .05])], "skin-line", .5, cue="lean")


def draw(p):
    # a great circle off to the right: its rim runs down the arm, so the shade has no edge anywhere
    p.radial("wash.arm", "arm", (512, 338), 280,
             [(0, "skin-shade", 0.7), (0.74, "skin-shade", 0.62), (0.84, "skin-mid", 0.58), (0.93, "skin-mid", 0.25), (1, "skin-mid", 0)])
    arm(p)
    surface(p)
