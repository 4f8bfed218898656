"""Fingerbreadth atelier: everything an illustrator needs in one import.

    from engrave import *        curves -> ink -> plate -> check  (see README.md)
"""
from check import check
from curves import Line, add, between, dist, line, mix, smooth, sub, unit
from ink import (LIGHT, area, contour, dot, dotted, echo, feather, fibres, glow, hatch, open_path, pen, ramp,
                 ribbon, rim, stipple)
from plate import LAYERS, Plate

# the common tones: one meaning each, so the program can recolour them
TONES = {
    "skin-light": "#f9eadb", "skin-base": "#efd6be", "skin-mid": "#dbb598", "skin-shade": "#c0937a",
    "skin-deep": "#96664f", "skin-line": "#3d2a22", "skin-hatch": "#6e4836",
    "bone-light": "#f7efdc", "bone-base": "#e9dcbf", "bone-shade": "#bfa67c", "bone-line": "#54412a",
    "muscle-light": "#d29a86", "muscle-base": "#b9705f", "muscle-shade": "#8a4a40",
    "muscle-line": "#4c2622", "tendon": "#ecdfc9", "tendon-line": "#8d7758",
    "artery": "#b8352c", "artery-line": "#6d1a17", "vein": "#dfe6ee", "vein-line": "#38598c",
    "nerve": "#e2b13c", "nerve-line": "#7d5a12", "bursa": "#c3d3dc", "bursa-line": "#5d7f92",
    "cloth-light": "#f4f1ea", "cloth-base": "#dfe0dc", "cloth-shade": "#b4bbbd", "cloth-line": "#4a545a",
}
