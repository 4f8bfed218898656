"""Shoulder from the side: vessels, nerves and bursa; muscles in side_muscles.py."""
from engrave import Line, dotted, feather, mix, pen, ribbon
from side_tools import each, soft

AXILLARY = [(187, 249), (202, 250), (220, 252), (240, 254.5), (264, 258.5), (280, 261), (292, 262)]
# behind the bone down to d 18.5, through the lateral septum at d 20.8, before the bone from d 23 on
RADIAL = [(228.4, 320), (227.6, 340), (227.6, 362), (229.4, 382), (234.4, 396), (242, 408), (249, 420), (254, 434), (256.6, 452), (257.6, 474),
          (258.4, 494), (260, 508), (262, 518)]
BURSA = [(226, 204.5), (240, 202.5), (258, 200.5), (270, 204), (275, 216), (272, 231), (262, 240.5), (246, 243),
         (230, 240), (221, 229), (220, 215)]


def vessels(p):
    """Both come round the surgical neck from behind and taper out under the front of the deltoid."""
    art = Line([(222.4, 259.6), (224.6, 257.4), (230, 257), (240, 259), (262, 263), (278, 265.4), (290, 266)])
    vein = Line([(223, 265), (225.4, 262.6), (230, 262.2), (240, 264), (262, 268), (277, 271), (287, 272.4)])
    p.on("vessel", "arm", "posterior-circumflex-humeral-artery", "Posterior circumflex humeral artery")
    for w, pts in (([.9, 2.8, 3.4, 3.4, 3.1, 2.4, 1.5, .2], art), ([2.2, 1.7, 1.1, .2], Line([(224.4, 257.6), (212, 254), (200, 253.4), (189, 255.4)])),
                   ([1.6, 1.2, .7, .2], Line([(262, 263), (269, 268), (273, 275), (275, 284)]))):
        p.area(ribbon(pts, w), "artery")
        p.ink(pen(pts.shifted(w[2] * .38, .1, .96), [.1, .5, .55, .4, .05]), "artery-line")
    p.on("vessel", "arm", "posterior-circumflex-humeral-vein", "Posterior circumflex humeral vein")
    wide = [.9, 2.9, 3.5, 3.5, 3.2, 2.5, 1.6, .4]
    p.area(ribbon(vein, wide), "vein")
    at = lambda t: mix((wide[min(int(t * 7), 6)], 0), (wide[min(int(t * 7) + 1, 7)], 0), t * 7 - min(int(t * 7), 6))[0] / 2
    p.ink([pen(vein.shifted(at), [.2, .7, .7, .6, .1]), pen(vein.shifted(lambda t: -at(t)), [.2, .6, .6, .5, .1])], "vein-line")


def cord(p, points, widths, t0=0.0, t1=1.0, ticks=0):
    """A nerve: a pale cord, fine lengthwise lines, small cross-ticks as the second cue; tapering out."""
    ln = Line(Line(points).part(t0, t1, 5))
    p.area(ribbon(ln, widths), "nerve")
    n = len(widths) - 1

    def half(t):
        i = min(int(t * n), n - 1)
        return (widths[i] + (widths[i + 1] - widths[i]) * (t * n - i)) / 2
    p.ink([pen(ln.shifted(half), [.1, .55, .5, .1]), pen(ln.shifted(lambda t: -half(t)), [.1, .4, .35, .1])], "nerve-line")
    p.ink(pen(ln.shifted(lambda t: half(t) * .15), [.05, .3, .25, .05]), "nerve-line", .7)
    for k in range(ticks):
        t = (k + .7) / (ticks + .4)
        a, nv, h = ln(t), ln.normal(t), half(t) * .95
        p.ink(pen([(a[0] - nv[0] * h, a[1] - nv[1] * h), (a[0] + nv[0] * h, a[1] + nv[1] * h)], [.35, .5, .35]), "nerve-line", .8)


def nerves(p):
    p.on("nerve", "arm", "subacromial-bursa", "Subacromial and subdeltoid bursa")
    # a thin film slipping under the acromion: tone along the edge, clear in the middle
    p.area(BURSA, "bursa", .3)
    edge = Line(BURSA[3:])
    inner = Line([(262, 206), (265, 215), (263, 226), (256, 233), (245, 235), (234, 232.5), (228.6, 225), (228, 214)])
    p.areas_of(feather(inner, edge, 5, lambda s: min(1, 6 * s, 6 * (1 - s))), "bursa", each(.8, 5))
    soft(p, [(222, 209), (240, 208), (258, 206.5), (270, 209)], [(222, 204.6), (240, 202.4), (258, 200.4), (270, 203)], "bursa-line", .3, 5)
    p.ink(pen(edge, [.05, .35, .5, .5, .35, .05]), "bursa-line", .6)
    p.areas_of(dotted(edge.part(.04, .96), 5.6, .6), "bursa-line")
    p.on("nerve", "arm", "axillary-nerve", "Axillary nerve")
    cord(p, [(222, 253), (212, 250.3), (200, 249.2), (187, 249)], [2.2, 1.8, 1.1, .2])
    for pts in ([(252, 256), (258, 248), (262, 238)], [(236, 254), (239, 246), (240, 238)], [(272, 260), (279, 254), (284, 246)]):
        p.ink(pen(pts, [1.1, .8, .05]), "nerve")
    cord(p, [(221.4, 255), (224, 252.8), (230, 252.6), *AXILLARY[3:]], [.8, 2.6, 3.2, 3.1, 2.8, 2.1, 1.2, .15], ticks=6)
    p.on("nerve", "arm", "radial-nerve", "Radial nerve")
    ln = Line(RADIAL)
    at = lambda y: next(t / 500 for t in range(501) if ln(t / 500)[1] >= y)
    for k, y in enumerate((323, 333.5, 344, 354.5, 365, 375.5)):           # behind the bone: dashes growing out of nothing
        p.ink(pen(ln, [.3, 1.3 + .22 * k, 1.3 + .22 * k, .3], at(y), at(y + 7)), "nerve", .45 + .09 * k)
    cord(p, RADIAL, [1.2, 3.0, 3.6, 3.6, 3.4, 3.2, 3.0, 2.6], at(384), 1, ticks=8)
    for pts in ([(261.6, 516), (266, 523), (276, 529), (290, 533)], [(261.4, 515), (262.6, 524), (260.4, 533), (254.6, 540)]):
        p.ink(pen(pts, [2.0, 1.7, 1.0, .05]), "nerve")
        p.ink(pen(Line(pts).shifted(.7), [.3, .5, .3, .05]), "nerve-line", .8)


def draw(p):
    import side_muscles
    vessels(p)
    nerves(p)
    side_muscles.draw(p)
