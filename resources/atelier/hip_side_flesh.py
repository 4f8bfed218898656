"""Hip from the side: superior gluteal nerve and artery fanning between the small glutei, sciatic nerve."""
from engrave import Line, mix, pen, ribbon
from hip_side_frame import th
from side_flesh import cord

GLUTEAL = [(243, 317), (237.4, 307), (233.6, 294), (233, 279), (235.4, 262), (239.6, 246), (245, 231), (252, 219)]
# out of the notch, across the line spine - tuberosity at 0.31, midway between tuberosity and trochanter, down the thigh
SCIATIC = [(211, 362), (220, 356), (228.1, 349.5), (242, 339.6), (260, 327), (280, 313.8), (300, 301.2), (319.5, 288.7), (342, 275.4), th(80, -40), th(120, -37), th(170, -34), th(225, -31), th(262, -30)]
DEEP = [(246, 320), (238, 312), (229, 306), (214, 299), (198, 287), (186, 271), (178.6, 254), (175, 240)]


def tube(p, points, widths):
    """An artery: red, with one darker side."""
    p.area(ribbon(points, widths), "artery")
    p.ink(pen(Line(points).shifted(max(widths) * .3, .05, .93), [.1, .5, .4, .3, .05]), "artery-line")


def draw(p):
    p.on("vessel", "pelvis", "superior-gluteal-artery", "Superior gluteal artery")
    tube(p, DEEP, [.6, 3.4, 3.2, 2.8, 2.4, 1.9, 1.2, .2])
    tube(p, [(235, 310), (228, 298), (225.4, 282), (226.6, 264), (230.6, 247), (236, 233), (242, 223)], [.6, 2.6, 2.4, 2.0, 1.5, .9, .2])
    for pts in ([(214, 299), (206, 304), (194, 305), (184, 301)], [(225.6, 284), (214, 274), (206, 261), (202, 248)], [(227.4, 260), (220, 246), (217, 234)], [(192, 280), (180, 280), (169, 275)]):
        p.ink(pen(pts, [1.3, 1.0, .7, .05]), "artery")
    p.on("nerve", "pelvis", "superior-gluteal-nerve", "Superior gluteal nerve")
    for pts in ([(236.6, 305), (226, 290), (213, 277), (203, 262), (197, 247)], [(233, 284), (224, 268), (219, 252)], [(233.2, 276), (243, 267), (252, 264)], [(237, 256), (250, 246), (264, 242)],
                [(242, 239), (232, 229), (222, 224)]):
        p.ink(pen(pts, [1.7, 1.3, .9, .05]), "nerve")
        p.ink(pen(Line(pts).shifted(.6), [.2, .35, .3, .05]), "nerve-line", .7)
    cord(p, GLUTEAL, [.5, 3.2, 3.1, 2.8, 2.4, 1.9, 1.2, .2], ticks=5)
    p.on("nerve", "pelvis", "sciatic-nerve", "Sciatic nerve")
    for k, (a, b) in enumerate((((226, 351), (236, 344)), ((232, 346.8), (243, 339)))):      # it fades in from under the rim
        p.ink(pen([a, mix(a, b, .5), b], [.2, 4.6 + k, .2]), "nerve", .4 + .2 * k)
    cord(p, [(233, 346), *SCIATIC[3:10]], [.3, 6.4, 7.8, 8, 7.6, 7.2, 7, 7], ticks=5)
    p.on("nerve", "thigh", "sciatic-nerve", "Sciatic nerve")
    cord(p, SCIATIC[8:], [7.1, 7, 6.8, 6.4, 4.6, .3], ticks=5)
