"""Hip from behind: muscles of loin and thigh, gluteus medius, and the gluteus maximus of the right side."""
import hip_behind_deep
from engrave import Line, between, contour, fibres, pen, rim
from hip_behind_frame import MID, left, right
from side_muscles import glints, lines
from side_tools import hump, pool, rise, soft

ORIGIN = [(63, 130), (52, 144), (44, 160), (40.6, 176), (37, 196), (29, 216), (18, 236), (8, 254), (3, 268)]       # of the maximus
TOP_EDGE = [(63, 130), (76, 142), (92, 164), (110, 192), (127, 220), (139, 242), (147, 262)]
LOW_EDGE = [(3, 268), (6, 284), (15, 302), (29, 318), (48, 332), (70, 344), (92, 354), (111, 361), (127, 364)]
INTO_BAND = [(147, 262), (150.4, 281), (151, 302), (148.6, 323), (142.6, 343), (134, 357), (127, 364)]
MAXIMUS = [(*ORIGIN[0], "c"), *TOP_EDGE[1:-1], *INTO_BAND[:-1], (*INTO_BAND[-1], "c"), *LOW_EDGE[-2:0:-1], (*LOW_EDGE[0], "c"), *ORIGIN[-2:0:-1]]
# the medius: from the crest in front of the hind gluteal line, narrowing to the trochanter's side
MED_TOP = [(66, 131), (76, 121.6), (88, 115.4), (100, 113), (112, 114), (122, 119.4), (128, 128)]
MED_SIDE = [(128, 128), (133.6, 140), (139.6, 158), (144, 181), (146.6, 204), (147.6, 226), (145, 245), (138.6, 264)]
MED_BACK = [(66, 131), (74, 150), (86, 176), (100, 204), (112, 228), (122, 246), (129, 262)]
MEDIUS = [(*MED_TOP[0], "c"), *MED_TOP[1:-1], *MED_SIDE[:-1], (*MED_SIDE[-1], "c"), (134, 271), (*MED_BACK[-1], "c"), *MED_BACK[-2:0:-1]]


def washes(p):
    """Shirt and sheet hide where the flesh ends, so nothing has to fade; every wash runs with the light."""
    def across(name, x0, x1, *stops):
        p.linear("wash." + name, "pelvis", (MID + x0, 200), (MID + x1, 206), stops)
    m = [(k, "muscle-" + k) for k in ("light", "base", "shade")]
    light, base, shade = (t for _, t in m)
    across("oblique.l", -146, -96, (0, base), (.4, light), (1, base))
    across("oblique.r", 96, 146, (0, base), (.4, base), (1, shade))
    across("lat", -110, 110, (0, light), (1, light))
    across("belly.l", -160, 0, (0, base), (.3, light), (.62, base), (1, shade))
    across("belly.r", 0, 160, (0, base), (.25, light), (.6, base), (1, shade))
    across("pale.l", -70, -36, (0, light), (.5, light), (1, base))
    across("pale.r", 36, 70, (0, light), (.5, light), (1, base))
    across("shadow", 34, 78, (0, "tendon-line", 0), (.5, "tendon-line", .16), (1, "tendon-line", .5))
    for x, tag in ((MID - 105, "l"), (MID + 105, "r")):
        p.linear("wash.medius." + tag, "pelvis", (x - 44, 150), (x + 50, 190), [(0, "muscle-base"), (.35, "muscle-light"), (.7, "muscle-base"), (1, "muscle-shade")])
    p.linear("wash.stump", "pelvis", (MID - 160, 240), (MID - 10, 250), [(0, "muscle-base"), (.25, "muscle-light"), (.6, "muscle-base"), (1, "muscle-shade")])
    p.linear("wash.columns", "pelvis", (MID - 74, 100), (MID + 74, 100), [(0, "muscle-light", 0), (.3, "muscle-light", .3), (.46, "muscle-light", .04), (.5, "muscle-light", 0),
             (.55, "muscle-light", .04), (.74, "muscle-light", .36), (1, "muscle-light", 0)])
    p.linear("wash.maximus", "pelvis", (MID + 20, 180), (MID + 150, 350), [(0, "muscle-base"), (.3, "muscle-light"), (.62, "muscle-base"), (1, "muscle-shade")])


def loin(p):
    """Above the crest: the erector's columns under their fascia, edges of latissimus and outer oblique."""
    for side, tag in ((left, "l"), (right, "r")):
        p.on("muscle", "pelvis", "external-oblique", "External oblique")
        obl = [(110, 40, "c"), (141.4, 40, "c"), (141, 48), (137.6, 64), (136.8, 78), (138.4, 93), (140.6, 107), (140, 118), (136, 128), (130.8, 138, "c"), (130.6, 132), (126, 121),
               (118, 113.2), (108, 109.4), (98, 109.6, "c"), (100, 84), (106, 56)]
        p.area(side(obl), "wash.oblique." + tag)
        lines(p, [side([(114, 48), (139, 50)]), side([(106, 78), (136, 80)]), side([(102, 92), (138, 104)]), side([(101, 106), (131, 132)])], 6, .5, .7, lift=.2)
        p.ink(pen(side([(141, 48), (137.6, 64), (136.8, 78), (138.4, 93), (140.6, 107), (140, 118), (136, 128), (131, 138)]), [.05, .6, .8, .9, .7, .1]), "muscle-line")
    for side in (left, right):
        p.on("muscle", "pelvis", "latissimus-dorsi", "Latissimus dorsi")
        lat = [(49, 40, "c"), (117, 40, "c"), (112, 56), (104, 84), (97, 109.6, "c"), (88, 110.4), (78, 100), (66, 80), (54, 56)]
        p.area(side(lat), "wash.lat")
        lines(p, [side([(54, 48), (60, 66), (74, 90), (90, 110)]), side([(84, 40), (90, 60), (98, 80), (101, 92)]), side([(112, 34), (114, 44), (112, 54), (108, 66)])][::-1],
              6, .5, .7, lift=.15)
        p.ink(pen(side([(115, 44), (110, 60), (103, 86), (97, 109)]), [.05, .8, .9, .5]), "muscle-line", .85)
    p.on("muscle", "pelvis", "erector-spinae", "Erector spinae under its fascia")
    half = [(0, 40, "c"), (49, 40, "c"), (54, 56), (66, 80), (78, 100), (90, 111), (80, 115.6), (66, 124), (54, 137), (45.6, 150), (41.4, 166), (39, 182), (34, 202), (26, 220), (15, 238), (0, 252)]
    p.area([*right(half), *left(half[:0:-1])], "tendon")
    p.area([*right(half), *left(half[:0:-1])], "wash.columns")
    p.area(right([(20, 46, "c"), *half[1:9], (30, 160), (22, 100)]), "wash.shadow")
    soft(p, right([(7, 50), (6, 110), (5, 170), (2, 230)]), right([(.4, 50), (.4, 110), (.4, 170), (.4, 240)]), "tendon-line", .32, 4, hump(.6))
    for side, w in ((left, .4), (right, .5)):
        for k in range(5):
            y = 70 + 33 * k
            x = (52, 62, 50, 37, 27)[k]
            p.ink(pen(side([(3, y + 12), (x * .45, y), (x * .92, y - 13 if k < 3 else y - 4)]), [.05, w, .05]), "tendon-line", .75)
        p.ink(pen(side([(46, 40), (54, 56), (66, 80), (78, 100), (90, 111)]), [.05, .5, .7, .6, .1]), "tendon-line", .85)
    p.ink(pen([(MID, 60), (MID, 130), (MID, 236)], [.2, .8, .7, .2]), "tendon-line", .9)


def thigh(p, side, tag):
    belly, pale = (f"wash.{n}.{tag}" for n in ("belly", "pale"))
    few = 2 if tag == "r" else 3                        # most of the right side lies under the maximus
    p.on("muscle", "pelvis", "vastus-lateralis", "Vastus lateralis")
    vl = [(111, 318, "c"), (116, 305), (125, 294), (137, 286), (150, 276, "c"), (153, 292), (152.4, 314), (150.6, 342), (149.8, 372), (149, 404, "c"), (102.4, 404, "c"), (105, 376)]
    p.area(side(vl), belly)
    lines(p, [side([(114, 314), (146, 288)]), side([(112, 350), (142, 350)]), side([(107, 384), (140, 384)]), side([(104, 400), (139, 400)])], few, .5, .7, lift=.15)
    if tag == "l":
        p.ink(pen(side([(108, 350), (111, 318), (116, 305), (125, 294), (137, 286), (150, 277)]), [.05, 1.0, 1.0, .8, .6, .2]), "muscle-line", .9)
    p.on("muscle", "pelvis", "adductor-magnus", "Adductor magnus")
    add = [(-.3, 316, "c"), (20, 300), (48, 306), (76, 312), (104, 301, "c"), (113, 306), (111, 340), (105, 376), (102, 404, "c"), (0, 404, "c"), (-.2, 380)]
    p.area(side(add), belly)
    lines(p, [side([(60, 318), (74, 316)]), side([(78, 336), (104, 318)]), side([(86, 366), (108, 346)])], few, .5, .7, lift=.15)
    lines(p, [side([(10, 312), (40, 316)]), side([(8, 350), (38, 350)]), side([(8, 390), (36, 390)]), side([(8, 402), (35, 402)])], few + 1, .5, .7, lift=.18)
    if tag == "r":
        p.ink(pen(side([(0, 320), (.2, 340), (.2, 366), (.2, 398)]), [.1, 1.1, 1.2, .9]), "muscle-line", .9)
    p.on("muscle", "pelvis", "hamstrings", "Hamstrings")
    semi = [(50, 312, "c"), (58, 306), (66, 316), (67, 350), (69, 390), (69.4, 404, "c"), (36.4, 404, "c"), (37.4, 390), (41, 350)]
    bic = [(60, 308, "c"), (72, 309), (80, 322), (87, 346), (93, 376), (97.4, 404, "c"), (69, 404, "c"), (68, 390), (65, 345)]
    for shape, wash in ((semi, pale), (bic, belly)):
        p.area(side(shape), wash)
        edge = side([q[:2] for q in shape[1:5]]) if shape is bic else side([q[:2] for q in shape[::-1][1:4]])
        p.ink(pen(edge, [.3, 1.0, 1.1, .05]), "muscle-line", .9)
    lines(p, [side([(55, 318), (64, 320)]), side([(45, 350), (66, 350)]), side([(40, 390), (68, 390)]), side([(38, 402), (68, 402)])], few, .55, .75, lift=.15)
    lines(p, [side([(64, 318), (74, 316)]), side([(67, 350), (86, 348)]), side([(70, 390), (93, 382)]), side([(70.6, 402), (95, 400)])], few, .55, .75, lift=.15)
    # the common tendon: it grips the tuberosity and frays downward into both bellies
    if tag == "l":
        p.area(side([(53, 306), (58, 300), (66, 300), (74, 306), (77, 314), (70, 319), (62, 322), (55, 317)]), "tendon", .6)
        for x0, x1, y1, w in ((56, 53, 326, 3.2), (60, 58, 340, 3.6), (64, 64.6, 329, 3.2), (68.6, 70, 343, 3.6), (72.4, 74, 326, 3)):
            p.ink(pen(side([(x0, 308), ((x0 + x1) / 2, 322), (x1, y1)]), [w * .6, w, .05]), "tendon", .9)
    p.on("muscle", "pelvis", "iliotibial-band", "Iliotibial band")
    itt = [(132, 276), (137, 256), (146, 236), (147.6, 206, "c"), (150.6, 230), (154, 252), (156, 270), (155.4, 290), (153.6, 314), (151.6, 342), (150.6, 372), (150, 404, "c"), (143.6, 404, "c"), (139, 380), (138, 352), (137, 324), (133, 298)]
    p.area(side(itt), "tendon")
    lines_ = [side([(145, 230), (149.4, 226)]), side([(138, 275), (154, 272)]), side([(140, 310), (152.4, 310)]), side([(141, 350), (150, 350)]), side([(141, 400), (149, 400)])]
    p.ink(fibres(lines_, 2, .4, lift=.1), "tendon-line", .7)
    out = Line(side([(148, 208), (150.8, 231), (154.2, 252), (156.2, 270), (155.6, 290), (153.8, 314), (151.8, 342), (150.8, 372), (150.2, 396)]))
    p.ink(pen(out, [.05, .6, 1.0, 1.1, .9, .05] if tag == "r" else [.05, .4, .6, .6, .5, .05]), "muscle-line")


def medius(p, side, tag):
    p.on("muscle", "pelvis", "gluteus-medius", "Gluteus medius")
    p.area(side(MEDIUS), "wash.medius." + tag)
    guides = [side(MED_TOP), side([(76, 150), (92, 140), (108, 138), (122, 142), (136, 148)]), side([(95, 192), (110, 184), (124, 182), (136, 184), (145, 188)]),
              side([(114, 231), (124, 226), (132, 226), (140, 228), (147, 232)]), side([(130, 262), (133, 263), (136, 263.6), (137, 264), (138, 264)])]
    lines(p, guides, 15, .62, .78, lift=.14)
    glints(p, guides, 3, 1.4)
    # under a thin fascia at the crest; a pale tendon gathers on the trochanter
    soft(p, side([(74, 140), (90, 130), (104, 127), (118, 131), (130, 142)]), side(MED_TOP), "tendon", .34, 5, hump(1))
    for x0, y0, x1, w in ((119, 243, 131.6, 1.2), (123.6, 232, 132.4, 1.6), (127, 245, 133.4, 1.6), (130.6, 228, 134.4, 1.8), (134, 241, 135.2, 1.7), (137.6, 231, 136, 1.7),
                          (141, 243, 137, 1.4), (144.4, 236, 138, 1.2)):
        p.ink(pen(side([(x0, y0), ((x0 + x1) / 2 + .6, (y0 + 265) / 2), (x1, 267)]), [.05, w * .7, w * 1.3]), "tendon", .85)
    p.ink(rim(side(MEDIUS), .3, 1.6), "muscle-line")


def maximus(p):
    p.on("muscle", "pelvis", "gluteus-maximus", "Gluteus maximus")
    shape = right(MAXIMUS)
    p.area(shape, "wash.maximus")
    org, into = Line(right(ORIGIN)), Line(right(INTO_BAND))
    top, low = Line(right(TOP_EDGE)), Line(right(LOW_EDGE))
    guides = [org]
    for k, u in enumerate((.2, .42, .64, .84)):        # bundles lie in long flat curves, sagging a little over the seat
        a, b = top(u), low(u)
        m = ((a[0] + b[0]) / 2 + 2, (a[1] + b[1]) / 2 + 3)
        guides.append(Line([a, m, b]))
    guides.append(into)
    pool(p, right([(64, 180), (72, 206), (80, 236)]), 26, 26, "muscle-light", .5, 7, .03)
    soft(p, between(top, low, .55), low, "muscle-shade", .5, 8, rise((0, 0), (.2, .08), (.45, .6), (.75, 1), (1, .3)))
    soft(p, between(top, low, .3), top, "muscle-shade", .14, 3, hump(.8))
    lines(p, guides, 27, .64, .82, lift=.14, breaks=.1)
    # deeper grooves between the coarse bundles, light along their backs
    p.ink(fibres(guides, 6, 1.2, .08, .94, lift=.3, seed=.71), "muscle-line", .75)
    glints(p, guides, 6, 1.7)
    # it grows out of the fascia and runs out into the band, slip by slip
    soft(p, org.shifted(-12), org, "tendon", .42, 7, hump(.9))
    soft(p, into.shifted(8), into, "tendon", .4, 5, hump(.7))
    for k in range(7):
        u, j = (k + .5) / 7, ((k * .618) % 1)
        a, b = guides[-2](u * .98 + .01), into(u)
        d = (b[0] - a[0], b[1] - a[1])
        at = lambda t: (b[0] + d[0] * t, b[1] + d[1] * t)
        p.ink(pen([at(-.3 - .5 * j), at(-.12), at(-.01)], [.05, .6 + .4 * j, .8]), "tendon", .8)
    low_rim = [q[:2] for q in shape]
    n = len(TOP_EDGE) - 1
    # no ink along the band: there the red melts into it
    p.ink(contour(low_rim[:n + 1], .35, 1.7, side=-1), "muscle-line")
    p.ink(contour([*low_rim[len(TOP_EDGE) + len(INTO_BAND) - 3:], low_rim[0]], .35, 1.8, side=-1), "muscle-line")


def draw(p):
    washes(p)
    thigh(p, left, "l")
    thigh(p, right, "r")
    loin(p)
    hip_behind_deep.floor(p)
    hip_behind_deep.rotators(p)
    medius(p, left, "l")
    medius(p, right, "r")
    hip_behind_deep.cords(p)
    hip_behind_deep.stumps(p)
    maximus(p)
