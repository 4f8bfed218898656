"""Looks at the open hand as the program shows it: from closed to wide open, half transparent, on two grounds; a right hand last.

    python3 open_hand_poses.py PLATE.svg OUT.png [WIDTH]
"""
import math
import re
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ET

SVG = "{http://www.w3.org/2000/svg}"
OPENINGS, GROUNDS, DRAWN = (6, 12, 18, 25, 32, 40, 45), ("#9a6a4c", "#f3dcc6"), 40
ROOM = 14                        # millimetres more paper above: the closed middle finger stands out of its own
TURNED = ("middle", "ring", "little")


def turned(d, pivot, degrees):
    """Path data turned about a point; positive turns the fingers to the viewer's left."""
    a = math.radians(-degrees)
    c, s = math.cos(a), math.sin(a)
    nums = iter(re.findall(r"[MLCZ]|-?\d+(?:\.\d+)?", d))
    out = []
    for n in nums:
        if n in "MLCZ":
            out.append(n)
            continue
        x, y = float(n) - pivot[0], float(next(nums)) - pivot[1]
        out.append(f"{pivot[0] + c * x - s * y:.2f} {pivot[1] + s * x + c * y:.2f}")
    return " ".join(out)


def pose(path, opening, ground, opacity=.65):
    root = ET.parse(path).getroot()
    pos = {c.get("id"): (float(c.get("cx")), float(c.get("cy"))) for c in root.iter(SVG + "circle")}
    for g in root.iter(SVG + "g"):
        limb = (g.get("id") or "").split(".")[-1]
        if limb in TURNED and g.get("id").startswith("skin."):
            for e in g.iter(SVG + "path"):
                e.set("d", turned(e.get("d"), pos[f"joint.{limb}"], opening - DRAWN))
        if g.get("id") == "skin":
            g.set("opacity", str(opacity))
    w, h = (int(n) for n in root.get("viewBox").split()[2:])
    root.set("viewBox", f"0 {-ROOM} {w} {h + ROOM}")
    back = ET.Element(SVG + "rect", {"y": str(-ROOM), "width": str(w), "height": str(h + ROOM), "fill": ground})
    root.insert(3, back)
    return ET.tostring(root, encoding="unicode")


def sheet(path, out, width=700):
    rows = []
    for k, ground in enumerate(GROUNDS):
        row = []
        for o in OPENINGS:
            with tempfile.NamedTemporaryFile("w", suffix=".svg", encoding="utf-8", delete=False) as f:
                f.write(pose(path, o, ground))
            row.append(f"{f.name}.png")
            subprocess.run(["rsvg-convert", "-w", str(width), f.name, "-o", row[-1]], check=True)
        rows.append(f"{out}.{k}.png")
        subprocess.run(["convert", *row, "+append", "+repage", rows[-1]], check=True)
    subprocess.run(["convert", *rows, "(", rows[0], "-flop", ")", "-append", "+repage", out], check=True)
    subprocess.run(["rm", *rows], check=True)


if __name__ == "__main__":
    sheet(sys.argv[1], sys.argv[2], int((sys.argv + [700])[3]) if len(sys.argv) > 3 else 700)
