"""Contact sheet: python3 sheet.py plate.svg out.png  (skin, muscle and bone views side by side).

Needs rsvg-convert and ImageMagick's convert. python3 sheet.py plate.svg out.png skin [WIDTH]
renders one view only.
"""
import os
import re
import subprocess
import sys
import tempfile

VIEWS = {"skin": (), "muscle": ("skin", "surface"), "bone": ("skin", "surface", "muscle"),
         "bare": ("skin", "surface", "muscle", "cloth")}
PAPER = "#f6efe2"


def render(svg, out, hide=(), width=1120, paper=PAPER):
    text = open(svg, encoding="utf-8").read()
    text = re.sub(r'<path [^>]*data-cue="(full|older)"[^>]*/>', "", text)    # not on the reference body
    for layer in hide:
        text = re.sub(f'<g id="{layer}">', f'<g id="{layer}" display="none">', text)
    with tempfile.NamedTemporaryFile("w", suffix=".svg", delete=False, encoding="utf-8") as f:
        f.write(text)
    subprocess.run(["rsvg-convert", "-w", str(width), "-b", paper, f.name, "-o", out], check=True)
    os.unlink(f.name)


def sheet(svg, out, views=("skin", "muscle", "bone"), width=700):
    parts = []
    for v in views:
        parts.append(f"{out}.{v}.png")
        render(svg, parts[-1], VIEWS[v], width)
    subprocess.run(["convert", *parts, "+append", out], check=True)
    for p in parts:
        os.unlink(p)


if __name__ == "__main__":
    if len(sys.argv) > 3:
        render(sys.argv[1], sys.argv[2], VIEWS[sys.argv[3]], int((sys.argv + [1120])[4]))
    else:
        sheet(sys.argv[1], sys.argv[2])
