"""Shoulder from the side: vessels, nerves and bursa; muscles in side_muscles.py."""
from engrave import Line, dot, dotted, pen, ribbon

AXILLARY = [(187, 249), (202, 250), (220, 252), (240, 254.5), (264, 258.5), (280, 261), (292, 262)]
RADIAL = [(226.5, 322), (229.5, 340), (235, 360), (241.5, 378), (247.5, 398), (252.5, 420), (255, 446), (255, 474),
          (254.5, 496), (257, 512)]
BURSA = [(226, 204.5), (240, 202.5), (258, 200.5), (270, 204), (275, 216), (272, 231), (262, 240.5), (246, 243),
         (230, 240), (221, 229), (220, 215)]


def vessels(p):
    art = Line([(213, 268), (219, 260.5), (227, 257.5), (240, 259), (264, 263), (280, 265.5), (290, 268)])
    vein = Line([(212, 274), (219, 266), (227, 262.6), (240, 264), (264, 268), (279, 271), (288, 274)])
    p.on("vessel", "arm", "posterior-circumflex-humeral-artery", "Posterior circumflex humeral artery")
    for w, pts in ((3.4, art), (2.0, Line([(224, 258), (212, 254.5), (200, 253.5), (191, 255)])),
                   (1.6, Line([(262, 262.5), (270, 268), (275, 279)]))):
        p.area(ribbon(pts, [w, w, w * .85, w * .7, w * .3]), "artery")
        p.ink(pen(pts.shifted(w * .46), [.3, .6, .5, .3, .05]), "artery-line")
    p.on("vessel", "arm", "posterior-circumflex-humeral-vein", "Posterior circumflex humeral vein")
    w = lambda t: 3.6 - 2.4 * t
    p.area(ribbon(vein, w), "vein")
    p.ink([pen(vein.shifted(lambda t: w(t) / 2), [.4, .8, .7, .6, .2]), pen(vein.shifted(lambda t: -w(t) / 2), [.3, .7, .6, .5, .2])], "vein-line")


def beaded(p, points, w, gap=8.5, r=1.75):
    ln = Line(points)
    wf = lambda t: (w[0] + (w[-1] - w[0]) * t) * min(1, .25 + t * 14)
    p.area(ribbon(points, wf), "nerve")
    p.ink([pen(ln.shifted(lambda t: wf(t) / 2), [.2, .6, .5, .2]), pen(ln.shifted(lambda t: -wf(t) / 2), [.15, .4, .3, .15])], "nerve-line")
    n = int(ln.length / gap)
    for k in range(1, n + 1):
        t = (k - .3) / n
        s = wf(t) / w[0]
        p.area(dot(ln(t), r * s), "nerve-line")


def nerves(p):
    p.on("nerve", "arm", "subacromial-bursa", "Subacromial and subdeltoid bursa")
    p.area(BURSA, "bursa", .68)
    p.area([(229, 208), (244, 206), (260, 205), (266, 210), (252, 213), (236, 214), (227, 216)], "bursa", .5)
    p.areas_of(dotted([*BURSA, BURSA[0]], 5.6, .75), "bursa-line")
    p.on("nerve", "arm", "axillary-nerve", "Axillary nerve")
    twig = Line([(221, 254), (212, 250.5), (200, 249.3), (187, 249)])
    p.area(ribbon(twig, [2.4, 2.0, .8]), "nerve")
    p.ink(pen(twig.shifted(.9), [.2, .5, .05]), "nerve-line")
    for pts in ([(252, 256), (258, 248), (262, 238)], [(236, 254), (239, 246), (240, 238)], [(272, 260), (279, 254), (284, 246)]):
        p.ink(pen(pts, [1.1, .9, .3]), "nerve")
    beaded(p, [(213, 263), (218, 256.5), (226, 252.7), *AXILLARY[3:]], [3.2, 2.9, 1.0])
    p.on("nerve", "arm", "radial-nerve", "Radial nerve")
    beaded(p, RADIAL, [3.8, 3.6, 3.4, 1.8], gap=10)


def draw(p):
    import side_muscles
    vessels(p)
    nerves(p)
    side_muscles.draw(p)
