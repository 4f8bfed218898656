"""The small figure of the side picker for hip and thigh: one person facing the viewer, waist to shin.

    python3 side_figure_legs.py   writes ../icons/figure-legs.svg

Groups as in side_figure.py: figure, then leg-left and leg-right, which mark hip and thigh on the
viewer's left or right.
"""
from ink import area, contour, feather, hatch, pen, ramp
from curves import Line
from side_figure import ACCENT, CLOTH, CX, FOLD, INK, SHADE, WASH, at, path

FLANK = [(41, 14), (40, 34), (44.5, 62), (53, 92), (57.5, 122)]
LEG_OUT = [(57.5, 122), (58.5, 146), (57, 178), (52.5, 214), (48.5, 242), (47, 256), (48.6, 274), (49.6, 296), (47.5, 322)]
LEG_IN = [(3.5, 158), (6, 184), (9.5, 212), (13, 238), (14, 254), (12.5, 272), (14, 296), (17, 322)]
BAND, HEM = [(-42, 52), (-20, 58), (0, 60), (20, 58), (42, 52)], [(57, 119), (40, 131), (20, 146), (3.5, 158)]


def sharp(points):
    return [(*points[0], "c")] + points[1:-1] + [(*points[-1], "c")]


def half(way):
    """Hip and thigh down to the knee: what is marked."""
    return at(FLANK[2:] + LEG_OUT[1:6], way), at(LEG_IN[:5], way)


def washes():
    res = []
    for way in (-1, 1):
        body = at([(0, 14)] + FLANK, way), at(LEG_OUT[1:], way), at(LEG_IN[::-1] + [(0, 156)], way)
        res.append(path(area(sharp(body[0] + body[1]) + sharp(body[2])), "url(#skin)"))
    return res


def cloth():
    left, right = at(FLANK[2:], -1), at(FLANK[2:], 1)
    edge = at(BAND, 1)
    drape = sharp(edge) + right[1:] + sharp(at(HEM, 1)) + sharp(at(HEM[::-1], -1)) + left[:0:-1]
    res = [path(area(drape), CLOTH)]
    res += [path(d, INK) for d in contour(edge, 0.8, 1.5, side=-1)]
    res += [path(pen([(x, y + 5) for x, y in edge], 0.7), INK, 0.8)]
    for way in (-1, 1):
        res += [path(d, INK) for d in contour(at(HEM, way), 0.7, 1.6, side=way)]
        res.append(path(pen(at([(10, 84), (7, 112), (4, 138)], way), [0.1, 1.1, 0.1]), INK, 0.75))
        res.append(path(pen(at([(44, 86), (36, 104), (32, 118)], way), [0.1, 1.1, 0.1]), INK, 0.75))
    return res


def shade():
    res = []
    for way in (-1, 1):
        out, inn = at(LEG_OUT[:-2], way), at(LEG_IN[:-2], way)
        lit, dark = (out, inn) if way < 0 else (inn, out)
        res += [path(d, SHADE, 0.2) for d in feather(lit, dark, steps=4)]
        res += [path(d, INK, 0.75) for d in hatch(lit, dark, gap=5.6, reach=lambda s: ramp(s, (0, .12), (.3, .3), (.7, .34), (1, .15)),
                                                  weight=1.0, bow=0.1, t0=0.06, t1=0.86)]
    core = at([(22, 16), (20, 44), (26, 80), (34, 112)], 1)
    res += [path(d, FOLD, 0.16) for d in feather(core, at(FLANK, 1), steps=4)]
    res += [path(d, INK, 0.7) for d in hatch(core, at(FLANK, 1), gap=5.6, reach=0.6, weight=1.0, bow=0.12, t0=0.12, t1=0.94)]
    return res


def contours():
    res = [path(pen(at([(0, 22), (-1.2, 30), (0.6, 34)], 1), [0.3, 1.4, 0.3]), INK, 0.8)]  # the navel
    for way in (-1, 1):
        side = 1 if way < 0 else -1
        for line, thin, thick in ((FLANK, 0.6, 2.2), (LEG_OUT[:-1], 0.7, 2.4), (LEG_IN[:-1], 0.6, 2.0)):
            res += [path(d, INK) for d in contour(at(line, way), thin, thick, side=side)]
        res.append(path(pen(at([(22, 240), (20, 252), (25, 264)], way), [0.2, 1.3, 0.2]), INK, 0.85))
        res.append(path(pen(at([(40, 238), (42, 250), (38, 263)], way), [0.2, 1.3, 0.2]), INK, 0.85))
        res.append(path(pen(at([(26, 268), (31, 271), (36, 268)], way), [0.2, 1.1, 0.2]), INK, 0.7))
    return res


def marked(way):
    outer, inner = half(way)
    top = at([(44.5, 62), (30, 92), (14, 128), (3.5, 158)], way)
    outline = sharp(outer) + sharp(inner[::-1]) + top[-2:0:-1]
    res = [path(area(outline), ACCENT, 0.30)]
    out, inn = Line(outer), Line(top + inner[1:])
    for k in range(2, 40):
        a, b = inn(k / 40), out(k / 40)
        res.append(path(pen([a, ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2 + 2.4), b], [0.5, 1.3, 0.5]), ACCENT))
    for line in (outer, inner, top):
        res.append(path(pen(line, lambda t: 3), ACCENT))
    return res


def fading(name, colour):
    """The figure has neither an upper nor a lower edge."""
    stops = ((0, 0), (0.12, 1), (0.84, 1), (1, 0))
    return (f'<linearGradient id="{name}" gradientUnits="userSpaceOnUse" x1="{CX}" y1="14" x2="{CX}" y2="322">'
            + "".join(f'<stop offset="{o}" stop-color="{colour}" stop-opacity="{a}"/>' for o, a in stops) + "</linearGradient>")


def main():
    groups = [("figure", washes() + cloth() + shade() + contours()), ("leg-left", marked(-1)), ("leg-right", marked(1))]
    body = "\n".join(f'<g id="{name}">\n' + "\n".join(paths) + "\n</g>" for name, paths in groups)
    text = f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="29 8 182 318">\n<defs>{fading("skin", WASH)}</defs>\n{body}\n</svg>\n'
    with open("../icons/figure-legs.svg", "w", encoding="utf-8") as out:
        out.write(text)


if __name__ == "__main__":
    main()
