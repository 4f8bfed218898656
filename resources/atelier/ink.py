"""Ink: every mark is a filled shape. Functions return path data or lists of it.

A stroke is one closed path of PAIRED points (contract, data-ink="stroke"): k cubics out
along one side, k back along the other, so the program can keep its weight.
"""
import math
from curves import Line, add, between, dist, line, mix, short, smooth, unit

LIGHT = unit((-0.62, -0.78))     # where light comes from: upper left of the picture
GOLDEN = 0.6180339887


def num(v):
    s = f"{v:.2f}".rstrip("0").rstrip(".")
    return "0" if s in ("-0", "") else s


def pt(p):
    return f"{num(p[0])} {num(p[1])}"


def coarse(p):
    return f"{round(p[0], 1):g} {round(p[1], 1):g}"


def cubics(curve, form=pt):
    return " ".join(f"C{form(c[1])} {form(c[2])} {form(c[3])}" for c in curve)


def area(points, closed=True):
    """Closed path data through the points (corners allowed); a tenth of a millimetre is enough."""
    curve = short(smooth(points, closed=True))
    return f"M{coarse(curve[0][0])} {cubics(curve, coarse)} Z"


def open_path(points):
    curve = short(smooth(points))
    return f"M{pt(curve[0][0])} {cubics(curve)}"


def width_of(w):
    """A width: a number (tapered at both ends), a list (spread evenly), or a function."""
    if callable(w):
        return w
    if isinstance(w, (int, float)):
        return lambda t: w * min(1.0, 4.2 * min(t, 1 - t)) ** 0.75
    def f(t):
        x = t * (len(w) - 1)
        i = min(int(x), len(w) - 2)
        u = x - i
        u = u * u * (3 - 2 * u)
        return w[i] + (w[i + 1] - w[i]) * u
    return f


def pen(points, w=0.8, t0=0.0, t1=1.0, bias=0.0, step=9.2):
    """One tapering stroke. bias -1..1 pushes its weight to one side of the line. step: shorter for tight bends."""
    ln, wf = line(points), width_of(w)
    n = max(2, math.ceil(abs(t1 - t0) * ln.length / step))
    left, right = [], []
    for k in range(n + 1):
        u = k / n
        t = t0 + (t1 - t0) * u
        half = max(wf(u), 0.07) / 2
        p, nv = ln(t), ln.normal(t)
        left.append(add(p, nv, half * (bias + 1)))
        right.append(add(p, nv, half * (bias - 1)))
    a, b = smooth(left), smooth(right[::-1])
    return f"M{pt(left[0])} {cubics(a)} L{pt(right[-1])} {cubics(b)} Z"


def contour(points, thin=0.35, thick=1.5, side=1, light=LIGHT, lift=0.0, press=None,
            t0=0.0, t1=1.0, step=9.2):
    """A contour whose weight follows the light; returns a list of strokes.

    side: +1 when the outside of the form lies to the right of travel, -1 to the left.
    lift: where the weight would fall under this, the pen leaves the paper.
    press: optional function of t (0..1) multiplying the weight (overhangs, overlaps).
    """
    ln = line(points)
    n = max(8, int(ln.length / 2))
    ws = []
    for k in range(n + 1):
        t = t0 + (t1 - t0) * k / n
        nv = ln.normal(t)
        shade = -(nv[0] * light[0] + nv[1] * light[1]) * side      # -1 lit .. 1 shaded
        x = (shade + 1) / 2
        ws.append((thin + (thick - thin) * x * x * (3 - 2 * x)) * (press(t) if press else 1))
    for _ in range(3):
        ws = [(ws[max(0, i - 1)] + 2 * ws[i] + ws[min(n, i + 1)]) / 4 for i in range(n + 1)]
    res, k = [], 0
    while k <= n:
        if ws[k] <= lift:
            k += 1
            continue
        e = k
        while e < n and ws[e + 1] > lift:
            e += 1
        if e - k >= 3:
            a, b, seg = k, e, ws[k:e + 1]
            def wf(u, seg=seg):
                x = u * (len(seg) - 1)
                i = min(int(x), len(seg) - 2)
                w = seg[i] + (seg[i + 1] - seg[i]) * (x - i)
                ends = min(u, 1 - u) * len(seg) * 2 / 9.0
                return w * min(1.0, ends) ** 0.7
            res.append(pen(ln, wf, t0 + (t1 - t0) * a / n, t0 + (t1 - t0) * b / n, -0.5 * side, step))
        k = e + 1
    return res


def rim(shape, thin=0.3, thick=1.5, **k):
    """The contour right round a closed shape; which side is outside is found from its turning."""
    pts = [q[:2] for q in shape] + [shape[0][:2]]
    turn = sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(pts, pts[1:]))
    corners = [tuple(q) for q in shape] + [tuple(shape[0])]
    return contour(corners, thin, thick, side=-1 if turn > 0 else 1, **k)


def ramp(t, *pairs):
    """Smooth interpolation through (t, value) pairs; handy for widths, depths, limits."""
    if t <= pairs[0][0]:
        return pairs[0][1]
    for (a, va), (b, vb) in zip(pairs, pairs[1:]):
        if t <= b:
            u = (t - a) / (b - a or 1)
            u = u * u * (3 - 2 * u)
            return va + (vb - va) * u
    return pairs[-1][1]


def hatch(lit, edge, gap=3.0, reach=0.6, weight=0.55, bow=0.1, t0=0.0, t1=1.0,
          skew=0.0, stagger=0.16, seed=0.37, inset=0.0, half=None):
    """Cross-contour hatching: strokes laid round a form, from a lit line toward its shaded edge.

    lit, edge: two lines running the same way (for a limb: its two outlines or core and outline).
    reach: part of the way from the edge back to the lit line each stroke covers
           (number or function of s along the form). weight likewise.
    bow: sag of the stroke as a part of its length, + toward the end of the form (or function of s:
         - above the eye, + below it, makes a form round in both directions).
    skew: shifts the lit end along the form, for a second crossing layer.
    half: function of s: part of the reach of in-between strokes at half spacing (0 = none), which
          deepen the darkest places more cleanly than crossing does.
    """
    lit, edge = line(lit), line(edge)
    fr = reach if callable(reach) else (lambda s: reach)
    fw = weight if callable(weight) else (lambda s: weight)
    fb = bow if callable(bow) else (lambda s: bow)
    n = max(1, int(edge.length * (t1 - t0) / gap))
    res = []
    marks = [(t0 + (t1 - t0) * k / n, 1.0) for k in range(n + 1)]
    if half:
        marks += [(s, half(s)) for s in (t0 + (t1 - t0) * (k + .5) / n for k in range(n))]
    for k, (s, part) in enumerate(marks):
        r, w = fr(s) * part, fw(s) * (0.6 + 0.4 * part)
        if part < 0.1 or r < 0.04 or w < 0.1:
            continue
        jitter = ((k * GOLDEN + seed) % 1.0) - 0.5
        r = max(0.03, r * (1 + 2 * stagger * jitter))
        e = edge(s)
        far = lit(min(max(s + skew, 0), 1))
        a, b = mix(e, far, r), mix(e, far, inset)
        size = dist(a, b)
        along = unit((edge(min(1, s + .01))[0] - edge(max(0, s - .01))[0],
                      edge(min(1, s + .01))[1] - edge(max(0, s - .01))[1]))
        # the cross-section is an arc: steep near the edge, flat toward the light
        mid = [add(mix(a, b, u), along, fb(s) * size * 4 * u * (1 - u) * (0.6 + 0.5 * u))
               for u in (0, .25, .5, .75, 1)]
        prof = lambda u, w=w: w * (u ** 0.85) * min(1.0, (1.03 - u) * 9) + 0.05
        res.append(pen(mid, prof))
    return res


def echo(points, count=3, gap=2.6, weight=0.5, fade=0.75, draw_in=0.08, t0=0.06, t1=0.94):
    """Lines that follow a step or hollow at growing distance (to the right of travel), fading out."""
    ln = line(points)
    res = []
    for k in range(1, count + 1):
        a, b = t0 + draw_in * k, t1 - draw_in * k
        if b - a > 0.15:
            res.append(pen(ln.shifted(gap * k, a, b), [0.05, weight * fade ** (k - 1), weight * fade ** (k - 1), 0.05]))
    return res


def fibres(guides, count, weight=0.5, v0=0.03, v1=0.97, lift=0.12, seed=0.2, breaks=0.0,
           shade=None):
    """Muscle fibres flowing through guide lines (origin first, insertion last).

    Fibre v passes every guide at its fraction v. shade(v) multiplies weight.
    breaks: part of the fibres cut short so the belly stays light.
    """
    gs = [line(g) for g in guides]
    res = []
    for k in range(count):
        v = v0 + (v1 - v0) * (k + 0.5) / count
        j = (k * GOLDEN + seed) % 1.0
        ln = Line([g(v) for g in gs]) if len(gs) > 1 else gs[0]
        a, b = lift * j * 1.2, 1 - lift * ((j * 7) % 1.0)
        w = weight * (shade(v) if shade else 1) * (0.75 + 0.5 * ((j * 3) % 1.0))
        if w < 0.1:
            continue
        if breaks and j < breaks:      # two short strokes, the light between them
            m = 0.36 + 0.2 * ((j * 5) % 1.0)
            res.append(pen(ln, [0.05, w, 0.05], a, m))
            res.append(pen(ln, [0.05, w, 0.05], m + 0.18, b))
        else:
            res.append(pen(ln, [0.05, w, w * .7, w, 0.05], a, b))
    return res


def dot(p, r):
    """A small disc as an area path."""
    k = 0.5523 * r
    x, y = p
    return (f"M{num(x + r)} {num(y)} C{pt((x + r, y + k))} {pt((x + k, y + r))} {pt((x, y + r))} "
            f"C{pt((x - k, y + r))} {pt((x - r, y + k))} {pt((x - r, y))} "
            f"C{pt((x - r, y - k))} {pt((x - k, y - r))} {pt((x, y - r))} "
            f"C{pt((x + k, y - r))} {pt((x + r, y - k))} {pt((x + r, y))} Z")


def stipple(inner, edge, count, r=0.42, depth=0.6, t0=0.0, t1=1.0, seed=0.0):
    """Dots thickening toward the edge line, thinning toward the inner one."""
    inner, edge = line(inner), line(edge)
    res = []
    for k in range(count):
        s = t0 + (t1 - t0) * (k + 0.5) / count
        u = ((k * GOLDEN + seed) % 1.0) ** 1.7 * depth + 0.05
        res.append(dot(mix(edge(s), inner(s), u), r * (1 - 0.55 * u)))
    return res


def dotted(points, gap=3.0, r=0.45):
    ln = line(points)
    n = max(2, int(ln.length / gap))
    return [dot(ln(k / n), r) for k in range(n + 1)]


def ribbon(points, w):
    """An area of varying width along a line (tendon, vessel, nerve cord)."""
    ln, wf = line(points), width_of(w)
    n = max(3, math.ceil(ln.length / 6))
    left = [add(ln(k / n), ln.normal(k / n), wf(k / n) / 2) for k in range(n + 1)]
    right = [add(ln(k / n), ln.normal(k / n), -wf(k / n) / 2) for k in range(n, -1, -1)]
    return area([(*left[0], "c"), *left[1:-1], (*left[-1], "c"),
                 (*right[0], "c"), *right[1:-1], (*right[-1], "c")])


def feather(inner, edge, steps=4, profile=None, power=1.0):
    """Nested areas from an edge toward an inner line: pile them at low opacity for a soft shade.

    profile(s) 0..1 narrows the shade along the edge; ends at zero so it has no seam.
    """
    inner, edge = line(inner), line(edge)
    prof = profile or (lambda s: math.sin(math.pi * s) ** 0.6)
    n = max(6, math.ceil(edge.length / 8))
    res = []
    for k in range(1, steps + 1):
        f = (k / steps) ** power
        out = [edge(i / n) for i in range(n + 1)]
        back = [mix(edge(i / n), inner(i / n), f * prof(i / n)) for i in range(n - 1, 0, -1)]
        res.append(area([(*out[0], "c"), *out[1:-1], (*out[-1], "c"), *back]))
    return res


def glow(points, right, left, steps=5, core=0.35):
    """Nested rounded areas about a middle line: a light or hollow without crease or pointed ends.

    right, left: half widths to the right and left of travel. core: length of the innermost part.
    """
    ln = line(points)
    n = max(5, math.ceil(ln.length / 9))
    res = []
    for k in range(steps, 0, -1):
        f = k / steps
        half = 0.5 * (core + (1 - core) * f)
        ts = [0.5 - half + 2 * half * i / n for i in range(n + 1)]
        q = [math.sqrt(max(0.0, 1 - (2 * i / n - 1) ** 2)) for i in range(n + 1)]
        one = [add(ln(t), ln.normal(t), right * f * s) for t, s in zip(ts, q)]
        two = [add(ln(t), ln.normal(t), -left * f * s) for t, s in zip(ts, q)]
        res.append(area([one[0], *one[1:-1], one[-1], *two[-2:0:-1]]))
    return res
