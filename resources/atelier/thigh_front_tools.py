"""Small hands of the thigh's front view: shades in few steps for bone and muscle, whose room is for lines."""
from side_tools import pool as _pool, soft as _soft

FEW = .54


def soft(p, inner, edge, tone, total, steps=7, profile=None, cue=None):
    _soft(p, inner, edge, tone, total, steps * FEW, profile, cue)


def pool(p, points, right, left, tone, total, steps=7, core=.1, cue=None):
    _pool(p, points, right, left, tone, total, steps * FEW, core, cue)
