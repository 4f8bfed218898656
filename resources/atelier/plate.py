"""The plate: layers, limbs, structures, gradients, hidden points; writes the SVG."""
from xml.sax.saxutils import escape

from contract import VIEWS
from curves import Line, line
from ink import area, num, open_path, pt

LAYERS = ("bone", "vessel", "nerve", "muscle", "skin", "surface", "cloth")


class Plate:
    def __init__(self, view, size, origin, azimuth, markable, title, desc, tones, limbs,
                 reference="male 35y 172cm 70kg"):
        self.view, self.size, self.origin = view, size, origin
        self.azimuth, self.markable = azimuth, markable
        self.title, self.desc, self.tones, self.limbs = title, desc, tones, limbs
        self.reference = reference
        self.gradients = []
        self.layers = {l: {b: [] for b in limbs} for l in LAYERS}   # lists of (id, title, shapes)
        self.frames, self.points = {}, {b: [] for b in limbs}
        self.lines, self.areas = {b: [] for b in limbs}, {b: [] for b in limbs}
        self._into = None
        self.used = set()                # only tones in use are declared

    # -- tones and gradients -------------------------------------------------------------
    def tone(self, name):
        self.used.add(name)
        return self.tones[name]

    def fill(self, tone):
        """A tone's colour, or url(#id) for a gradient declared before."""
        if any(tone == g[0] for g in self.gradients):
            return f"url(#{tone})"
        return self.tone(tone)

    def _stops(self, stops):
        res = []
        for off, tone, *op in stops:
            o = f' stop-opacity="{num(op[0])}"' if op else ""
            res.append(f'<stop offset="{num(off)}" stop-color="{self.tone(tone)}"{o}/>')
        return "".join(res)

    def linear(self, name, limb, a, b, stops):
        head = (f'linearGradient id="{name}" data-limb="{limb}" gradientUnits="userSpaceOnUse" '
                f'x1="{num(a[0])}" y1="{num(a[1])}" x2="{num(b[0])}" y2="{num(b[1])}"')
        self.gradients.append((name, f"<{head}>{self._stops(stops)}</linearGradient>"))

    def radial(self, name, limb, c, r, stops):
        head = (f'radialGradient id="{name}" data-limb="{limb}" gradientUnits="userSpaceOnUse" '
                f'cx="{num(c[0])}" cy="{num(c[1])}" r="{num(r)}"')
        self.gradients.append((name, f"<{head}>{self._stops(stops)}</radialGradient>"))

    # -- drawing -------------------------------------------------------------------------
    def on(self, layer, limb, structure=None, title=None):
        """Further marks go to this layer and limb (and structure, if named)."""
        group = self.layers[layer][limb]
        key = f"{layer}.{limb}.{structure}" if structure else None
        for g in group:
            if key and g[0] == key:
                self._into = g[2]
                return self
        if not (group and key is None and group[-1][0] is None):
            group.append((key, title, []))
        self._into = group[-1][2]
        return self

    def _put(self, d, tone, opacity=None, stroke=False, cue=None):
        o = f' fill-opacity="{num(opacity)}"' if opacity is not None and opacity < 1 else ""
        s = ' data-ink="stroke"' if stroke else ""
        c = f' data-cue="{cue}"' if cue else ""
        self._into.append(f'<path d="{d}" fill="{self.fill(tone)}"{o}{s}{c}/>')

    def area(self, points_or_d, tone, opacity=None, cue=None):
        d = points_or_d if isinstance(points_or_d, str) else area(points_or_d)
        self._put(d, tone, opacity, cue=cue)

    def areas_of(self, ds, tone, opacity=None, cue=None):
        for d in ds:
            self._put(d, tone, opacity, cue=cue)

    def ink(self, strokes, tone, opacity=None, cue=None):
        for d in ([strokes] if isinstance(strokes, str) else strokes):
            self._put(d, tone, opacity, True, cue)

    # -- hidden names --------------------------------------------------------------------
    def hang(self, limb, joint, at, angle=0, parent=None):
        self.frames[limb] = (joint, parent, angle)
        self.points[limb].append((f"joint.{joint}", at))

    def point(self, limb, name, at):
        self.points[limb].append((name, at))

    def level(self, limb, name, at, across, *edges):
        """A level and its four edges (skin, bone, bone, skin), signed distances along `across` (x right, y down)."""
        self.point(limb, f"level.{name}", at)
        for tag, d in zip(VIEWS[self.view]["edges"], edges, strict=True):
            self.point(limb, f"edge.{name}.{tag}", (at[0] + across[0] * d, at[1] + across[1] * d))

    def hidden_line(self, limb, name, points):
        self.lines[limb].append(f'<path id="line.{name}" d="{open_path(points)}" fill="none"/>')

    def hidden_area(self, limb, name, points):
        self.areas[limb].append(f'<path id="area.{name}" d="{area(points)}" fill="none"/>')

    # -- writing -------------------------------------------------------------------------
    def write(self, path, hide=()):
        w, h = self.size
        out = ['<?xml version="1.0" encoding="UTF-8"?>',
               f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {w} {h}" id="plate.{self.view}"'
               f' data-view="{self.view}" data-origin="{pt(self.origin)}"'
               f' data-reference="{self.reference}" data-azimuth="{self.azimuth}"'
               f' data-markable="{self.markable}" data-tones="'
               + " ".join(f"{k}:{v}" for k, v in self.tones.items() if k in self.used) + '">',
               f"<title>{escape(self.title)}</title>", f"<desc>{escape(self.desc)}</desc>", "<defs>"]
        out += [g for _, g in self.gradients] + ["</defs>"]
        for layer in LAYERS:
            hid = ' display="none"' if layer in hide else ""
            out.append(f'<g id="{layer}"{hid}>')
            for limb in self.limbs:
                out.append(f'<g id="{layer}.{limb}">')
                for key, title, shapes in self.layers[layer][limb]:
                    if key:
                        out.append(f'<g id="{key}"><title>{escape(title or key)}</title>')
                    out += shapes
                    if key:
                        out.append("</g>")
                out.append("</g>")
            out.append("</g>")
        out.append('<g id="points" display="none">')
        for limb in self.limbs:
            joint, parent, angle = self.frames[limb]
            par = f' data-parent="{parent}"' if parent else ""
            out.append(f'<g id="points.{limb}"{par} data-joint="joint.{joint}" data-angle="{num(angle)}">')
            out += [f'<circle id="{n}" cx="{num(p[0])}" cy="{num(p[1])}" r="1"/>'
                    for n, p in self.points[limb]]
            out.append("</g>")
        out.append("</g>")
        for name, store in (("lines", self.lines), ("areas", self.areas)):
            out.append(f'<g id="{name}" display="none">')
            for limb in self.limbs:
                out += [f'<g id="{name}.{limb}">', *store[limb], "</g>"]
            out.append("</g>")
        out.append("</svg>\n")
        with open(path, "w", encoding="utf-8") as f:
            f.write("\n".join(out))
