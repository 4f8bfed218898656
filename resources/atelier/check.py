"""Self-check of a plate against the contract. Usage: python3 check.py plate.svg"""
import math
import re
import sys
import xml.etree.ElementTree as ET

from contract import VIEWS

SVG = "{http://www.w3.org/2000/svg}"
ORDER = ["bone", "vessel", "nerve", "muscle", "skin", "surface", "cloth", "points", "lines", "areas"]
NUMBER = re.compile(r"-?\d+(?:\.\d+)?")


def segments(d):
    """[(cmd, [numbers])]; raises ValueError on anything but M L C Z with <= 2 decimals."""
    res, pos = [], 0
    for m in re.finditer(r"([A-Za-z])([^A-Za-z]*)", d):
        if d[pos:m.start()].strip():
            raise ValueError("stray text in path")
        pos = m.end()
        cmd, raw = m.group(1), m.group(2)
        if cmd not in "MLCZ":
            raise ValueError(f"command {cmd}")
        nums = NUMBER.findall(raw)
        if NUMBER.sub("", raw).replace(",", "").strip():
            raise ValueError(f"bad numbers {raw!r}")
        if any("." in n and len(n.split(".")[1]) > 2 for n in nums):
            raise ValueError("more than 2 decimals")
        if len(nums) % {"M": 2, "L": 2, "C": 6, "Z": 1}[cmd] or (cmd == "Z" and nums):
            raise ValueError("wrong count of numbers")
        res.append((cmd, [float(n) for n in nums]))
    return res


def check(path):
    bad = []
    text = open(path, encoding="utf-8").read()
    for word in ("<!DOCTYPE", "<script", "href", "<style", "style=", "class=", "transform", " stroke="):
        if word in text:
            bad.append(f"forbidden: {word}")
    root = ET.fromstring(text)
    kids = [k.tag.replace(SVG, "") for k in root]
    if kids[:3] != ["title", "desc", "defs"]:
        bad.append("root must begin title, desc, defs")
    tones = dict(t.split(":") for t in root.get("data-tones").split())
    if len(set(tones.values())) != len(tones):
        bad.append("two tones share a colour")
    for a in ("id", "data-view", "data-origin", "data-reference", "data-azimuth", "data-markable", "viewBox"):
        if not root.get(a):
            bad.append(f"root lacks {a}")
    ox, oy = map(float, root.get("data-origin").split())
    hexes, grads, ids = set(tones.values()), set(), []
    for g in root.find(SVG + "defs"):
        if not g.tag.endswith("Gradient") or g.get("gradientUnits") != "userSpaceOnUse" or not g.get("data-limb"):
            bad.append(f"gradient {g.get('id')}")
        grads.add(g.get("id"))
        for s in g:
            if s.get("stop-color") not in hexes:
                bad.append(f"stop colour {s.get('stop-color')} is no tone")
    layers = [g for g in root if g.tag == SVG + "g"]
    if [g.get("id") for g in layers] != ORDER:
        bad.append("layer order " + str([g.get("id") for g in layers]))
    count, washes, limbs = {}, 0, None
    used = set(re.findall(r"#[0-9a-f]{6}", text[text.index("<defs>"):]))
    if hexes - used:
        bad.append("tones never used: " + str([k for k, v in tones.items() if v not in used]))
    for layer in layers[:7]:
        name = layer.get("id")
        limbs = limbs or [g.get("id").split(".")[1] for g in layer]
        if [g.get("id") for g in layer] != [f"{name}.{b}" for b in limbs]:
            bad.append(f"limb groups of {name}")
        for path_el in layer.iter(SVG + "path"):
            count[name] = count.get(name, 0) + 1
            extra = set(path_el.keys()) - {"d", "fill", "fill-opacity", "data-ink", "data-cue", "id"}
            if extra:
                bad.append(f"attributes {extra}")
            fill = path_el.get("fill")
            if fill.startswith("url(#"):
                washes += name == "skin"
                if fill[5:-1] not in grads:
                    bad.append(f"no gradient {fill}")
            elif fill not in hexes:
                bad.append(f"fill {fill} is no tone")
            try:
                segs = segments(path_el.get("d"))
            except ValueError as e:
                bad.append(f"{name}: {e}")
                continue
            if path_el.get("data-ink"):
                shape = "".join(c * (len(v) // 6 if c == "C" else 1) for c, v in segs)
                m = re.fullmatch(r"M(C+)L(C+)Z", shape)
                if not m or len(m.group(1)) != len(m.group(2)):
                    bad.append(f"{name}: stroke not paired ({shape})")
            p = None
            for c, v in segs:
                for i in range(0, len(v), 6 if c == "C" else 2):
                    q = v[i:i + (6 if c == "C" else 2)]
                    if c == "C" and math.hypot(q[4] - p[0], q[5] - p[1]) > 10.01:
                        bad.append(f"{name}: piece of {math.hypot(q[4]-p[0], q[5]-p[1]):.1f} mm")
                    p = q[-2:]
    for el in root.iter():
        if el.get("id"):
            ids.append(el.get("id"))
        if el.tag == SVG + "g" and el.get("id") is None:
            bad.append("a group without id")
    bad += [f"id twice: {i}" for i in set(ids) if ids.count(i) > 1]
    deep = sum(count.get(l, 0) for l in ORDER[:4])
    top = sum(count.get(l, 0) for l in ORDER[4:7])
    if deep > 600 or top > 600:
        bad.append(f"too many shapes: deep {deep}, top {top}")
    if washes > 3:
        bad.append(f"{washes} gradient washes in the skin layer")
    bad += points_check(root, VIEWS[root.get("data-view")], ids, (ox, oy))
    print(f"{path}: {count}; deep {deep}, top {top}, skin washes {washes}, tones {len(tones)}, "
          f"{len(text) // 1024} kB")
    return bad


def points_check(root, view, ids, origin):
    bad = [f"missing {i}" for i in (view["points"] + " " + view["hidden"]).split() if i not in ids]
    pos = {c.get("id"): (float(c.get("cx")), float(c.get("cy"))) for c in root.iter(SVG + "circle")}
    group = next(g for g in root if g.get("id") == "points")
    for limb in group:
        name, angle = limb.get("id").split(".")[1], math.radians(float(limb.get("data-angle")))
        joint = pos[limb.get("data-joint")]
        axis, across = (math.sin(angle), math.cos(angle)), (math.cos(angle), -math.sin(angle))
        last = -1e9
        for lv in view["levels"][name].split():
            if f"level.{lv}" not in pos:
                bad.append(f"missing level.{lv}")
                continue
            p = pos[f"level.{lv}"]
            rel = (p[0] - joint[0], p[1] - joint[1])
            if abs(rel[0] * across[0] + rel[1] * across[1]) > 0.02:
                bad.append(f"level.{lv} is off the axis")
            t = rel[0] * axis[0] + rel[1] * axis[1]
            if t <= last:
                bad.append(f"level.{lv} out of order")
            last, row = t, []
            for tag in (*view["edges"][:2], "", *view["edges"][2:]):
                q = p if not tag else pos.get(f"edge.{lv}.{tag}")
                if q is None:
                    bad.append(f"missing edge.{lv}.{tag}")
                    continue
                r = (q[0] - p[0], q[1] - p[1])
                if abs(r[0] * axis[0] + r[1] * axis[1]) > 0.02:
                    bad.append(f"edge.{lv}.{tag} off the perpendicular")
                row.append(r[0] * across[0] + r[1] * across[1])
            if any(b - a < 3.99 for a, b in zip(row, row[1:])):
                bad.append(f"level.{lv}: edges too close or out of order {[round(v, 1) for v in row]}")
    for j in view["origin"].split():
        if pos.get(j) != origin:
            bad.append(f"{j} is not at the origin")
    return bad


if __name__ == "__main__":
    problems = check(sys.argv[1])
    print("\n".join(problems) or "obeys the contract")
    sys.exit(bool(problems))
