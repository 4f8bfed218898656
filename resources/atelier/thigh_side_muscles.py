"""Thigh from the side: belly wall and gluteus medius (pelvis), the calf's beginnings (leg); the thigh in thigh_side_quads."""
import thigh_side_quads
import thigh_side_seat
from engrave import Line, contour, pen, ramp
from thigh_side_quads import HAMSTRINGS, RECTUS, VASTUS          # named by the frame
from thigh_side_tools import hump, lines, soft
from thigh_side_frame import BELLY, at, cm

MEDIUS = cm((-10.6, 5.6, "c"), (-12.4, 2.8), (-14.0, 1.2), (-15.1, -.2), (-15.4, -1.8), (-15.0, -4.0), (-13.9, -6.8, "c"), (-11.4, -6.4), (-8.6, -5.0), (-5.6, -3.6), (-2.8, -2.6), (-.4, -2.0), (1.6, -1.6),
            (2.0, .2), (2.2, 1.4), (1.6, 2.6), (-2.0, 3.2), (-5, 4.2), (-8, 5.2))


def belly(p):
    p.linear("wash.oblique", "pelvis", at(-10, 2), at(-15.8, 2), [(0, "muscle-light"), (.3, "muscle-light"), (1, "muscle-light", 0)])
    p.linear("wash.sheath", "pelvis", at(-8, 6), at(-15.8, 7), [(0, "tendon"), (.4, "tendon"), (1, "tendon", 0)])
    p.on("muscle", "pelvis", "external-oblique", "External oblique")
    top = Line(BELLY).shifted(5, .06, .78)
    p.area([(*top[0], "c"), *top[1:-1], (*top[-1], "c"), *cm((-3.6, 7.2), (-6.6, 7.2), (-9.4, 6.9), (-12, 6.6), (-16.8, 6.4, "c"))], "wash.sheath")
    p.area(cm((-16.8, 7.2, "c"), (-14, 7.3), (-11.4, 7.5), (-9.4, 7.1, "c"), (-10.6, 5.7), (-12.4, 3.2), (-14.4, 1.6), (-15.4, .4), (-16, -1.6), (-15.8, -4.6), (-16.8, -5.4, "c"), (-16.9, 0)), "wash.oblique")
    lines(p, [cm((-15.4, 6.4), (-15.9, -1.6)), cm((-13.8, 6.8), (-15.8, -.4)), cm((-11.0, 7.1), (-15.0, .9))], 6, .45, .6, lift=.3)
    lines(p, [cm((-15.2, 8.4), (-15.2, 7.4)), cm((-10, 8.5), (-10, 7.4)), cm((-4, 8.2), (-4.6, 7.4))], 3, .4, .6, "tendon-line", lift=.3)
    p.ink([pen(cm((-9.5, 7.1), (-7.4, 7.3), (-4.6, 7.2), (-1.6, 7.4)), [.5, .8, .6, .05]), pen(Line(top).part(.25, .95), [.05, .5, .6, .05])], "tendon-line", .9)


def medius(p):
    p.linear("wash.medius", "pelvis", at(-13, 4), at(-5, -4), [(0, "muscle-light"), (.5, "muscle-base"), (1, "muscle-shade")])
    p.on("muscle", "pelvis", "gluteus-medius", "Gluteus medius")
    p.area(MEDIUS, "wash.medius")
    p.ink(contour([q[:2] for q in MEDIUS[:8]], .3, 1.0, side=1), "muscle-line")
    fan = [cm((-10.6, 5.4), (-12.6, 2.6), (-15.0, -.8), (-14.8, -4.4), (-13.4, -6.6)), cm((-6.4, 3.7), (-7.6, 2.0), (-8.6, .2), (-8.4, -2.0), (-7.6, -3.7)),
           cm((-2.4, 3.0), (-2.6, 1.8), (-2.8, .7), (-2.6, -.5), (-2.2, -1.5)), cm((.2, 2.2), (.3, 1.4), (.4, .6), (.4, -.1), (.3, -.8))]
    lines(p, fan, 13, .55, .75, lift=.14)
    # the pale sheet over its upper part, the tendon on the trochanter
    edge = Line(MEDIUS[1:7])
    soft(p, edge.shifted(-24), edge, "tendon", .4, hump(.5))
    soft(p, cm((-2.4, 2.8), (-2.4, .8), (-2.0, -1.2)), cm((1.6, 2.6), (2.1, .8), (1.8, -.8)), "tendon", .5, hump(.3))
    p.ink([pen(cm((-3.6 + .5 * (k % 3), 2.0 - .62 * k), (-.8, 1.8 - .5 * k), (1.7, 1.6 - .4 * k)), [.05, 1.2, .9, .2]) for k in range(6)], "tendon", .7)



def leg(p):
    for name, tone in (("shin", "muscle-base"), ("calf", "muscle-light")):
        p.linear("wash." + name, "leg", at(47, 0), at(53.0, 0), [(0, tone), (.35, tone), (1, tone, 0)])
    p.on("muscle", "leg", "leg-muscles", "Muscles of the leg")
    calf = [at(38.6, -2.6, "c"), *cm((41, -2.4), (43.4, -2.3), (46, -2.2), (50, -2.0), (53.2, -1.9, "c"), (53.2, -6.4, "c"), (51, -6.4), (48.6, -6.2), (46.4, -5.6), (44.4, -4.9), (42, -4.2), (40, -3.6))]
    p.area(calf, "wash.calf")
    fade = lambda t: ramp(t, (0, .6), (.3, 1), (.6, .8), (1, .05))
    lines(p, [cm((39.4, -2.8), (39.8, -3.3)), cm((44, -2.6), (44, -4.6)), cm((48, -2.4), (48, -5.8)), cm((51, -2.3), (51, -6.1))], 5, .5, .7, lift=.25)
    p.ink(contour([q[:2] for q in calf[6:][::-1]], .4, 1.4, side=1, press=fade), "muscle-line")
    shin = cm((44.4, 1.6, "c"), (46.0, 3.2), (47.8, 4.1), (50, 4.0), (53.2, 3.8, "c"), (53.2, -1.6, "c"), (50, -1.5), (47, -1.6), (45.4, -1.5, "c"), (45.6, -.2), (45.2, .9))
    p.area(shin, "wash.shin")
    lines(p, [cm((45.0, 1.9), (45.2, 1.2)), cm((47.6, 3.7), (47.4, 1.2)), cm((51, 3.6), (51, 1.2))], 4, .5, .7, lift=.25)
    lines(p, [cm((45.6, -.2), (45.6, -1.1)), cm((48, .3), (48, -1.3)), cm((51, .3), (51, -1.3))], 3, .5, .7, lift=.25)
    p.ink([pen(cm((45.2, .7), (46.4, .8), (48.6, .8), (51, .8)), [.1, .9, .7, .05]), pen(cm((45.2, -1.7), (47, -1.7), (49.4, -1.7), (51.4, -1.7)), [.2, 1.1, .8, .05]),
           pen(cm((44.4, 1.6), (46.0, 3.2), (47.8, 4.1), (49.4, 4.08), (51.4, 3.95)), [.3, .6, .6, .4, .05])], "muscle-line", .9)


def draw(p):
    belly(p)
    medius(p)
    thigh_side_seat.maximus(p)
    leg(p)
    thigh_side_quads.draw(p)
