"""The small figure of the side picker: one person facing the viewer, head to hip.

    python3 side_figure.py        writes ../icons/figure.svg

Three groups: figure (the whole person), arm-left and arm-right (what is laid over the arm on the
viewer's left or right to mark it: a tone, close ruling and a stout outline). The body is drawn once,
its two halves are mirror images; only the light is not. The program replaces the colours below.
"""
from ink import area, contour, dot, feather, hatch, pen, ramp
from curves import Line

WASH, SHADE, CLOTH, FOLD, INK, ACCENT = "#eeddcc", "#ccbbaa", "#dddddd", "#aaaaaa", "#000000", "#ff0000"
CX = 120

HALF = dict(
    head=[(0, 19), (13, 22), (22, 34), (24, 52), (22.5, 68), (18, 84), (10, 95), (0, 99)],
    neck=[(15, 84), (14.5, 98), (16, 108), (26, 116), (42, 121)],
    arm_out=[(42, 121), (56, 126), (66, 138), (70.5, 157), (71, 182), (75, 206), (79, 226), (80.5, 246), (79, 268)],
    hand=[(79, 268), (83.4, 280), (85, 292), (84.4, 304), (82, 316), (78.6, 322.5), (75.8, 318), (73.6, 306), (71.6, 298.5),
          (69.4, 304.5), (66, 304), (64.6, 295), (65.8, 282), (69, 268)],
    arm_in=[(69, 268), (64, 246), (60, 224), (57, 206), (53, 190), (49.5, 172)],
    side=[(49.5, 172), (47.5, 196), (43.5, 222), (42.5, 238), (47, 262), (53, 288), (56, 322)],
)


def at(points, way):
    """Half a body to the viewer's right (way 1) or left (way -1)."""
    return [(CX + way * x, y) for x, y in points]


def arm(way):
    return at(HALF["arm_out"] + HALF["hand"][1:] + HALF["arm_in"][1:], way)


def both(name):
    return at(HALF[name], -1), at(HALF[name], 1)


def path(d, fill, opacity=1.0):
    alpha = "" if opacity == 1 else f' fill-opacity="{opacity:g}"'
    return f'<path d="{d}" fill="{fill}"{alpha}/>'


def washes():
    left, right = both("side")
    top = [(*p, "c") for p in at([(-49.5, 150), (-42, 121), (42, 121), (49.5, 150)], 1)]
    trunk = left[:0:-1] + top + right[1:]
    neck = at(HALF["neck"], -1)[::-1] + at(HALF["neck"], 1)
    head = at(HALF["head"], 1) + at(HALF["head"][1:-1], -1)[::-1]
    res = [path(area([(*trunk[0], "c")] + trunk[1:-1] + [(*trunk[-1], "c")]), "url(#trunk)")]
    res += [path(area([(*neck[0], "c"), *neck[1:-1], (*neck[-1], "c"), (CX, 128, "c")]), WASH)]
    res += [path(area(arm(w)), WASH) for w in (-1, 1)]
    res += [path(area(head), WASH)]
    return res


def cloth():
    edge = at([(-49.5, 172), (-26, 184), (0, 188), (26, 184), (49.5, 172)], 1)
    left, right = both("side")
    drape = [(*edge[0], "c")] + edge[1:-1] + [(*edge[-1], "c")] + right[1:-1] + [(*right[-1], "c"), (*left[-1], "c")] + left[-2:0:-1]
    res = [path(area(drape), "url(#cloth)")]
    res += [path(d, INK) for d in contour(edge, 0.9, 1.5, side=-1)]
    res += [path(pen([(x, y + 4.2) for x, y in edge], 0.7), INK, 0.8)]
    for fold in ([(-30, 196), (-27, 226), (-31, 258)], [(-12, 200), (-9, 240), (-13, 300)], [(14, 202), (16, 236), (10, 276)],
                 [(33, 196), (30, 222), (34, 252)], [(22, 262), (26, 288), (25, 310)], [(-34, 272), (-33, 292), (-36, 312)]):
        res.append(path(pen(at(fold, 1), [0.1, 1.2, 0.1]), INK, 0.75))
    return res


def shade():
    core = at([(30, 172), (27, 200), (24, 236), (29, 270), (34, 318)], 1)
    res = [path(d, FOLD, 0.16) for d in feather(core, at(HALF["side"], 1), steps=4)]
    for way in (-1, 1):
        out, inn = at(HALF["arm_out"][2:], way), at(HALF["arm_in"][::-1], way)
        lit, dark = (out, inn) if way < 0 else (inn, out)
        res += [path(d, SHADE, 0.2) for d in feather(lit, dark, steps=4)]
        res += [path(d, INK, 0.8) for d in hatch(lit, dark, gap=5.2, reach=lambda s: ramp(s, (0, .2), (.25, .45), (.8, .4), (1, .2)),
                                                 weight=1.0, bow=0.1, t0=0.04, t1=0.97)]
    face = at([(4, 34), (6, 60), (2, 88)], 1)
    res += [path(d, SHADE, 0.15) for d in feather(face, at(HALF["head"][1:], 1), steps=5)]
    res += [path(d, INK, 0.7) for d in hatch(face, at(HALF["head"][2:], 1), gap=4.6, reach=0.36, weight=0.9, bow=0.12, t0=0.08, t1=0.9)]
    res += [path(d, INK, 0.7) for d in hatch(at([(0, 100), (2, 116)], 1), at([(15, 92), (15.5, 106)], 1), gap=3.6, reach=0.7, weight=0.9, bow=-0.2)]
    res += [path(d, INK, 0.7) for d in hatch(core, at(HALF["side"], 1), gap=5.6, reach=0.62, weight=1.0, bow=0.12, t0=0.06, t1=0.94)]
    return res


def face():
    res = []
    for way in (-1, 1):
        res.append(path(pen(at([(5, 50), (10, 47.6), (16, 49.5)], way), [0.3, 1.6, 0.4]), INK))
        res.append(path(pen(at([(5.6, 58), (10.5, 55.4), (15.6, 57.8)], way), [0.3, 1.3, 0.3]), INK))
        res.append(path(pen(at([(7.4, 60.2), (10.5, 61.2), (14, 60)], way), 0.6), INK, 0.7))
        res.append(path(dot(at([(10.6, 58)], way)[0], 1.9), INK))
        res.append(path(pen(at([(23.6, 52), (26.6, 54), (26, 62), (22.6, 69)], way), [0.4, 1.2, 0.5]), INK))
    res.append(path(pen(at([(1.6, 57), (2.6, 66), (4.6, 71), (1, 73)], 1), [0.2, 1.0, 1.1, 0.3]), INK))
    res.append(path(pen(at([(-6.4, 82), (-2, 81), (0, 81.6), (2, 81), (6.6, 82)], 1), [0.3, 1.3, 0.9, 1.3, 0.3]), INK))
    res.append(path(pen(at([(-3, 86.4), (0, 87), (3.4, 86.4)], 1), 0.8), INK, 0.7))
    hair = at([(-24.6, 54), (-25.5, 34), (-15, 18), (0, 13.5), (16, 17.5), (26, 34), (24.8, 54)], 1)
    line_in = at([(21.6, 47), (18, 35), (8, 28.5), (-4, 30), (-14, 36), (-21.6, 48)], 1)
    res.append(path(area([(*hair[0], "c")] + hair[1:-1] + [(*hair[-1], "c"), (*line_in[0], "c")] + line_in[1:-1] + [(*line_in[-1], "c")]), SHADE))
    top, low = Line(hair), Line(line_in[::-1])
    for k in range(1, 22):
        t = k / 22
        a, b = top(t), low(t)
        mid = ((a[0] + b[0]) / 2 + (b[0] - CX) * 0.07, (a[1] + b[1]) / 2)
        res.append(path(pen([a, mid, b], [0.7, 1.3 if t > .5 else 1.0, 0.3]), INK, 0.85))
    res += [path(d, INK) for d in contour(hair, 0.7, 1.7, side=-1)]
    return res


def contours():
    res = []
    for way in (-1, 1):
        side = 1 if way < 0 else -1
        for name, thin, thick in (("neck", 0.6, 1.7), ("arm_out", 0.7, 2.4), ("hand", 0.6, 1.8), ("arm_in", 0.6, 2.0), ("side", 0.6, 2.0)):
            res += [path(d, INK) for d in contour(at(HALF[name], way), thin, thick, side=side)]
        res += [path(d, INK) for d in contour(at(HALF["head"][3:], way), 0.6, 2.0, side=side)]
        res.append(path(pen(at([(6, 123), (20, 121.4), (36, 123.6)], way), [0.3, 1.3, 0.3]), INK, 0.85))
        res.append(path(pen(at([(50, 172), (49, 160), (53, 149)], way), [1.6, 1.0, 0.2]), INK, 0.9))
        for k, (x, y) in enumerate(((75, 300), (78.4, 300.5), (81.6, 299))):
            res.append(path(pen(at([(x, y), (x + 0.5, y + 8), (x - 0.6, y + 17 - 3 * k)], way), 0.9), INK, 0.8))
        res.append(path(pen(at([(71.6, 298.5), (71.4, 292), (72.6, 285)], way), [1.3, 0.9, 0.2]), INK, 0.9))
    res.append(path(pen(at([(5, 101), (3.4, 112), (2.2, 123)], 1), [0.2, 1.0, 0.4]), INK, 0.8))
    res.append(path(pen(at([(-7, 102), (-4.6, 113), (-2.2, 123)], 1), [0.2, 1.0, 0.4]), INK, 0.8))
    return res


def marked(way):
    outline = arm(way)
    out = Line(at(HALF["arm_out"] + [(85, 295), (78, 318)], way))
    inn = Line(at([(42, 122), (46, 140)] + HALF["arm_in"][::-1] + [(66, 290), (74, 316)], way))
    res = [path(area(outline), ACCENT, 0.30)]
    rows = 44
    for k in range(2, rows):
        a, b = inn(k / rows), out(k / rows)
        res.append(path(pen([a, ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2 + 2.4), b], [0.5, 1.3, 0.5]), ACCENT))
    for name in ("arm_out", "hand", "arm_in"):
        res.append(path(pen(at(HALF[name], way), lambda t: 3), ACCENT))
    return res


def fading(name, colour):
    """Full down to the hip, then gone: the figure has no lower edge."""
    return (f'<linearGradient id="{name}" gradientUnits="userSpaceOnUse" x1="120" y1="250" x2="120" y2="322">'
            f'<stop offset="0" stop-color="{colour}"/><stop offset="1" stop-color="{colour}" stop-opacity="0"/></linearGradient>')


def main():
    groups = [("figure", washes() + cloth() + shade() + contours() + face()), ("arm-left", marked(-1)), ("arm-right", marked(1))]
    body = "\n".join(f'<g id="{name}">\n' + "\n".join(paths) + "\n</g>" for name, paths in groups)
    defs = "<defs>" + "".join(fading(name, colour) for name, colour in (("trunk", WASH), ("cloth", CLOTH))) + "</defs>"
    text = f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="29 8 182 318">\n{defs}\n{body}\n</svg>\n'
    with open("../icons/figure.svg", "w", encoding="utf-8") as out:
        out.write(text)


if __name__ == "__main__":
    main()
