"""Shoulder from the side: neck, nape, jaw and ear, lightly drawn and fading out above the ear."""
from engrave import Line, between, pen
from side_tools import cluster, hump, pool, rise, soft

# one sternomastoid for skin and muscle: from the mastoid to breastbone and clavicle
SCM_FRONT = [(251, 64), (258, 84), (268, 108), (279, 135), (289, 160), (296, 180), (300, 196)]
SCM_BACK = [(238, 64), (242, 84), (248.5, 110), (256, 136), (263, 158), (268, 172), (271, 183)]
TRAPEZIUS = [(222, 84), (226, 106), (232.5, 128), (241, 148), (251, 165), (260, 177)]
JAW = [(256.5, 62), (260, 73), (265, 82), (273, 89), (287, 95), (305, 101), (325, 107), (343, 110)]


def neck(p, front):
    throat = Line([(331, 113.5), (321, 119.5), (315, 127), (313, 137), (314, 148), (310.5, 165), (304.5, 182), (302.5, 193)])
    soft(p, throat.shifted(lambda t: 24 - 12 * t), throat, "skin-mid", .5, 8, rise((0, .1), (.22, .55), (.5, 1), (1, .3)))
    p.ink(cluster(throat.shifted(lambda t: 20 - 10 * t), throat, 10, .12, .74, .82, .5, .10, .07), "skin-hatch")
    jaw = Line(JAW)
    below = Line([(252, 74), (256, 88), (262, 100), (272, 110), (286, 117), (302, 121), (317, 121), (334, 114)])
    soft(p, below, jaw, "skin-mid", .58, 9, rise((0, 0), (.3, .6), (.7, 1), (1, .4)))
    p.ink(cluster(below, jaw, 11, .36, .88, .66, .42, .12, .1), "skin-hatch")
    # sternomastoid: light along its belly, a shade before and behind
    f, b = Line(SCM_FRONT), Line(SCM_BACK)
    soft(p, f.shifted(-10), f, "skin-mid", .40, 7, rise((0, 0), (.4, .7), (.85, 1), (1, .5)))
    soft(p, b.shifted(8), b, "skin-mid", .30, 6, rise((0, 0), (.4, .7), (.9, 1), (1, .3)))
    pool(p, between(f, b, .46).part(.18, .92), 8, 9, "skin-light", .50, 7, .2)
    p.ink(pen(f.part(.28, 1), [.05, .3, .55, .8, .2]), "skin-line", .75, cue="lean")
    p.ink(pen(b.part(.38, .92), [.05, .3, .35, .05]), "skin-line", .6, cue="lean")
    # hollow above the clavicle; the trapezius border fainter, behind it
    pool(p, [(257, 174), (268, 172), (280, 177), (291, 188)], 9, 11, "skin-mid", .42, 10, .05)
    t = Line(TRAPEZIUS)
    soft(p, t.shifted(-9), t, "skin-mid", .22, 6, hump(1.1))
    p.ink(pen(t.part(.3, .96), [.05, .3, .3, .05]), "skin-line", .55)
    p.ink([pen([(285, 128), (297, 133), (308, 132)], [.05, .5, .05]), pen([(286, 147), (297, 152), (307, 150)], [.05, .5, .05])],
          "skin-line", .6, cue="older")


def head(p, front, back):
    # jaw, chin and lower lip in one hairline that loses itself
    p.ink(pen(Line(JAW).part(.06, .9), [.05, .4, .55, .45, .4, .3, .05]), "skin-line", .8)
    p.ink(pen([(336, 112), (344.5, 109.6), (350.6, 105.6), (353.7, 99), (353, 92), (349.9, 86), (350.9, 80), (355, 72.6), (355, 66), (353.6, 60)],
              [.3, .9, .9, .7, .5, .35, .3, .3, .15, .05]), "skin-line", .85)
    p.ink(pen([(350.6, 80.4), (345, 80.6), (340, 79.4)], [.05, .3, .05]), "skin-line", .6)
    # ear: lobe, the notch before it, antitragus and the rim rising out of sight
    p.ink([pen([(255.6, 59.5), (252, 62.4), (247.2, 60), (243.6, 52), (240, 41), (237.8, 28), (239, 16), (243, 8)], [.1, .55, .65, .55, .5, .4, .2, .05]),
           pen([(254.6, 60), (256.4, 53), (257, 46), (254.4, 41), (257.4, 36), (258, 29), (257, 22)], [.3, .35, .35, .3, .25, .15, .05]),
           pen([(253, 47), (250, 51.4), (247, 49), (245.4, 43)], [.05, .45, .4, .05]),
           pen([(246.6, 44), (243.4, 33), (243.2, 22), (246, 14)], [.3, .35, .2, .05]),
           pen([(253.6, 42.6), (250.4, 39.4), (249, 33)], [.05, .35, .05])], "skin-line", .7)
    pool(p, [(252.5, 44), (250, 36), (249.6, 28)], 3.4, 3.4, "skin-mid", .45, 4)
    # hair at the nape: fine strokes growing down and back from the hairline
    line = Line([(238, 46), (236.5, 58), (232.5, 68), (226, 76), (218, 82), (209, 86), (201.5, 86)])
    root = Line([(236, 18), (233, 30), (228, 40), (220, 46), (211, 50), (200, 50), (190, 44)])
    for k in range(21):
        s = (k + .5) / 21
        j = ((k * .618) % 1) - .5
        a, b = root(s), line(max(0, s - .02 + .02 * j))
        q = .20 + .30 * ((k * .382) % 1)
        m = lambda u, d=0: (a[0] + (b[0] - a[0]) * u - d, a[1] + (b[1] - a[1]) * u)
        p.ink(pen([m(q), m(.66, 1.6), m(1 - .07 * abs(j))], [.05, .42 + .1 * j, .05]), "skin-line", .62)
