"""Thigh from the side: the hip bone with the sacrum behind it; femur and knee in thigh_side_femur."""
import thigh_side_femur
from engrave import Line, contour, hatch, pen, ramp, stipple
from thigh_side_tools import cluster, hump, pool, rise, soft
from thigh_side_frame import at, cm

CREST = cm((-9.6, 7.2), (-10.6, 6.2), (-11.7, 4.5), (-12.6, 2.7), (-14.3, 1.4), (-15.4, .2), (-15.8, -1.2), (-15.6, -3.0), (-14.8, -5.1), (-13.4, -7.4), (-11.3, -9.3))
NOTCH = cm((-11.3, -9.3), (-10.3, -9.2), (-9.3, -8.3), (-8.3, -7.0), (-7.6, -5.6), (-6.7, -4.0), (-5.6, -2.9), (-4.4, -2.6), (-3.0, -3.2), (-1.6, -3.9))
SEAT = cm((-1.6, -3.9), (-.7, -3.0), (.6, -3.2), (2.2, -4.2), (3.6, -4.5), (4.7, -3.9), (5.1, -2.7), (4.8, -1.5), (4.0, -.6), (3.0, .1))
BROW = cm((-2.6, 5.0), (-4.0, 4.9), (-5.0, 5.3), (-5.8, 5.9), (-6.5, 5.6), (-7.2, 5.9), (-8.2, 6.7), (-9.0, 7.3))
ILIUM = [(*CREST[0], "c"), *CREST[1:-1], (*CREST[-1], "c"), *NOTCH[1:-1], (*NOTCH[-1], "c"), *SEAT[1:], *cm((2.2, 1.2), (1.9, 2.4), (1.6, 3.6), (.6, 4.7), (-1.0, 5.2)), *BROW]
PUBIS = cm((-2.0, 4.6, "c"), (-2.5, 5.6), (-2.3, 6.7), (-1.3, 7.3), (-.2, 7.0), (1.2, 6.0), (2.5, 4.4), (3.8, 2.2), (4.9, -.2), (5.1, -2.0, "c"), (4.3, -.9), (3.4, .6), (2.6, 2.2), (1.6, 3.9), (.2, 4.9))
SACRUM = cm((-13.4, -7.6), (-12.8, -8.7), (-11.4, -9.3), (-9.6, -9.5), (-7.4, -9.4), (-5.2, -9.0), (-3.2, -8.2), (-1.4, -7.1), (-.5, -5.9), (-.9, -5.5), (-2.4, -6.5), (-4.2, -7.1),
            (-6.0, -7.2), (-8.0, -6.6), (-10.0, -5.9), (-12.2, -5.9))


def behind(p):
    """Sacrum and pubis lie deeper: paler, finer."""
    p.on("bone", "pelvis", "sacrum", "Sacrum")
    p.area(SACRUM, "bone-base", .6)
    back = Line(SACRUM[1:9])
    soft(p, back.shifted(-14), back, "bone-shade", .4, hump(.6))
    p.ink(contour(back, .3, 1.2, side=1), "bone-line", .8)
    p.ink([pen(cm((-11.0, -8.7), (-9.2, -8.8), (-7.0, -8.6), (-4.8, -8.0), (-3.0, -7.3)), [.05, .5, .4, .05]),
           pen(cm((-.9, -5.5), (-2.4, -6.5), (-4.2, -7.1), (-6.0, -7.2), (-7.6, -6.8)), [.3, .6, .6, .5, .05])], "bone-line", .6)
    for x, y in ((-10.2, -9.4), (-8.0, -9.4), (-5.8, -9.1), (-3.8, -8.4)):
        p.ink(pen(cm((x, y), (x + .3, y + .7), (x + .2, y + 1.3)), [.7, .4, .05]), "bone-line", .5)
    p.on("bone", "pelvis", "ischium-pubis", "Ischium and pubis")
    p.area(PUBIS, "bone-base", .85)
    low = Line(PUBIS[8:14])
    soft(p, low.shifted(7), low, "bone-shade", .5, hump(.6))
    p.ink(contour([q[:2] for q in PUBIS[1:10]], .3, 1.1, side=-1), "bone-line", .85)
    p.ink(pen([q[:2] for q in PUBIS[9:15]], [.2, .7, .8, .7, .05]), "bone-line", .8)


def ilium(p):
    p.on("bone", "pelvis", "ilium", "Ilium")
    p.area(ILIUM, "wash.ilium")
    crest = Line(CREST)
    # the wing: hollow in its middle, lit along the crest, a buttress running from the tubercle to the socket
    pool(p, cm((-13.4, -3.6), (-10.6, -2.8), (-7.8, -1.4), (-5.6, 0)), 24, 17, "bone-shade", .42)
    pool(p, cm((-9.4, 4.6), (-8.0, 4.0), (-6.4, 3.8)), 9, 9, "bone-shade", .28)
    pool(p, cm((-12.2, 2.4), (-9.4, 2.0), (-6.4, 2.2), (-4.4, 2.4)), 9, 9, "bone-light", .6)
    lip = Line(crest.shifted(-6, .03, .97))
    soft(p, crest.shifted(-5), crest, "bone-light", .7, hump(.4))
    soft(p, lip.shifted(-9), lip, "bone-shade", .3, hump(.6))
    p.ink([pen(lip.part(.03, .32), [.05, .5, .6, .05]), pen(lip.part(.36, .62), [.05, .4, .3, .05]), pen(lip.part(.66, .97), [.05, .5, .5, .05])], "bone-line", .6)
    p.areas_of(stipple(crest.shifted(-6), crest, 12, .36, depth=.8, t0=.05, t1=.95), "bone-line", .5)
    # gluteal lines: roughnesses, hardly more than a row of touches
    for pts, w in ((cm((-13.8, -6.2), (-11.6, -5.4), (-9.4, -5.0), (-7.6, -5.0)), .4), (cm((-11.4, 3.6), (-10.2, 1.0), (-8.4, -.8), (-6.2, -1.9)), .45),
                   (cm((-6.6, 4.8), (-5.6, 3.0), (-4.6, 1.4)), .35)):
        p.ink(pen(pts, [.05, w, w * .6, w, .05]), "bone-line", .5)
    notch, seat = Line(NOTCH), Line(SEAT[:8])
    soft(p, notch.shifted(-11), notch, "bone-shade", .5, hump(.5))
    soft(p, seat.shifted(-9), seat, "bone-shade", .5, hump(.5))
    p.ink(cluster(notch.shifted(-13), notch, 9, .25, .92, .8, .42, .1, .08), "bone-line", .55)
    p.areas_of(stipple(seat.shifted(-10), seat, 8, .38, depth=.8, t0=.3, t1=1), "bone-line", .5)
    p.ink(contour(crest, .3, 1.2, side=1, press=lambda t: ramp(t, (0, .9), (.5, 1), (1, 1))), "bone-line")
    p.ink(contour(notch, .4, 1.5, side=1), "bone-line")
    p.ink(contour(Line(SEAT), .4, 1.5, side=1), "bone-line")
    p.ink(contour(Line([*BROW, CREST[0]]), .35, .9, side=1), "bone-line")
    socket(p)


def socket(p):
    """The rim of the socket, with the head of the femur sunk in it."""
    rim = Line(cm((-3.9, .9), (-4.1, 2.4), (-3.5, 3.9), (-2.2, 4.9), (-.6, 5.1), (.9, 4.6), (1.9, 3.5), (2.2, 2.1)))
    soft(p, rim.shifted(-6), rim, "bone-light", .6, hump(.5))
    soft(p, rim.shifted(8), rim, "bone-shade", .6, hump(.5))
    p.ink([pen(rim.part(0, .55), [.05, .5, .8, .4, .05]), pen(rim.part(.5, 1), [.05, .6, 1.0, .8, .05])], "bone-line", .8)


def draw(p):
    p.linear("wash.ilium", "pelvis", at(-13, 6), at(-5, -7), [(0, "bone-light"), (.5, "bone-base"), (1, "bone-base")])
    behind(p)
    ilium(p)
    thigh_side_femur.draw(p)
