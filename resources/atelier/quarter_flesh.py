"""Three-quarter plate: vessels, nerves and bursa; muscles in quarter_muscles.py and quarter_torso.py."""
from engrave import Line, dotted, pen, ribbon
from side_flesh import cord

AXILLARY = [(170, 249), (188, 250.5), (207, 254), (226, 257.5), (246, 261), (262, 262.5), (275, 262)]
RADIAL = [(211.5, 338), (206.5, 350), (206, 366), (210, 384), (215.5, 404), (218.5, 426), (217.5, 450), (214, 474), (213, 496), (217, 512)]
BURSA = [(184, 205), (198, 202.5), (214, 200.5), (230, 198.5), (243, 204), (249.5, 216), (248, 231), (237, 240.5), (219, 243.5), (201, 241.5),
         (189, 231), (183, 217)]


def vessels(p):
    art = Line([(196, 266), (203, 262.5), (212, 262.5), (226, 264), (244, 267), (258, 269), (270, 270)])
    vein = Line([(194, 273), (202, 268.5), (212, 268), (226, 269.5), (243, 272.5), (257, 275), (268, 277)])
    p.on("vessel", "arm", "posterior-circumflex-humeral-artery", "Posterior circumflex humeral artery")
    for w, pts in ((3.4, art), (2.0, Line([(204, 262), (194, 257.5), (184, 255.5), (174, 256)])), (1.6, Line([(246, 267), (254, 273), (259, 284)]))):
        p.area(ribbon(pts, [w * .4, w, w * .95, w * .85, w * .7, w * .15]), "artery")
        p.ink(pen(pts.shifted(w * .46), [.3, .6, .5, .3, .05]), "artery-line")
    p.on("vessel", "arm", "posterior-circumflex-humeral-vein", "Posterior circumflex humeral vein")
    w = lambda t: (3.6 - 3 * t) * min(1, .3 + 6 * t)
    p.area(ribbon(vein, w), "vein")
    p.ink([pen(vein.shifted(lambda t: w(t) / 2), [.4, .8, .7, .6, .2]), pen(vein.shifted(lambda t: -w(t) / 2), [.3, .7, .6, .5, .2])], "vein-line")


def nerves(p):
    p.on("nerve", "arm", "subacromial-bursa", "Subacromial and subdeltoid bursa")
    p.area(BURSA, "bursa", .68)
    p.area([(191, 209), (206, 206.5), (222, 204.5), (236, 206), (226, 211), (208, 213), (194, 217)], "bursa", .5)
    p.areas_of(dotted([*BURSA, BURSA[0]], 6.2, .7), "bursa-line")
    p.on("nerve", "arm", "axillary-nerve", "Axillary nerve")
    twig = Line([(204, 254.5), (194, 251), (182, 249.2), (170, 249)])
    p.area(ribbon(twig, [2.4, 2.0, .8]), "nerve")
    p.ink(pen(twig.shifted(.9), [.2, .5, .05]), "nerve-line")
    for pts in ([(236, 259), (243, 250), (246, 240)], [(218, 256), (221, 248), (221, 240)], [(256, 261), (264, 254), (269, 246)]):
        p.ink(pen(pts, [1.1, .9, .3]), "nerve")
    cord(p, [(197, 260.5), (202, 256.5), *AXILLARY[2:]], [.9, 3.2, 2.9, .7], ticks=6)
    p.on("nerve", "arm", "radial-nerve", "Radial nerve")
    cord(p, RADIAL, [1.2, 3.6, 3.4, 1.5], ticks=9)


def draw(p):
    import quarter_muscles
    vessels(p)
    nerves(p)
    quarter_muscles.draw(p)
