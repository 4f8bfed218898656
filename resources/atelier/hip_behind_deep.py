"""Hip from behind, left side: what lies under the gluteus maximus, which is cut away between its two ends."""
from engrave import Line, fibres, pen, ribbon, rim
from hip_behind_flesh import SCIATIC
from hip_behind_frame import left
from side_flesh import cord
from side_muscles import lines, muscle
from side_tools import hump, soft

PIRIFORMIS = [(42, 188, "c"), (56, 201), (72, 213), (92, 224), (110, 235), (123, 243, "c"), (121, 248), (104, 245), (84, 240), (66, 231), (50, 221), (36, 208, "c")]
QUADRATUS = [(76, 288, "c"), (94, 280), (112, 274, "c"), (112.4, 284), (108, 294), (102, 303, "c"), (90, 312), (76, 319, "c"), (79, 308), (80, 298)]


def slip(p, shape, guides, n, tone="muscle-base", thick=1.1):
    muscle(p, left(shape), tone, thick)
    lines(p, [left(g) for g in guides], n, .5, .75, lift=.15)


def floor(p):
    """The floor of the pelvis between coccyx and the sitting bones: one quiet tone, so that no paper shows."""
    p.on("muscle", "pelvis", "levator-ani", "Floor of the pelvis")
    p.area([(220, 268, "c"), *[(220 + x, y) for x, y in ((9, 258), (30, 228), (46, 250), (54, 284), (50, 304), (34, 305), (20, 301), (8, 308))], (220, 318, "c"),
            *[(220 - x, y) for x, y in ((8, 308), (20, 301), (34, 305), (50, 304), (54, 284), (46, 250), (30, 228), (9, 258))]], "muscle-light", .62)
    lines(p, [left([(8, 262), (36, 240)]), left([(5, 290), (36, 282)]), left([(4, 304), (30, 300)])], 3, .45, .6, lift=.2)


def rotators(p):
    p.on("muscle", "pelvis", "quadratus-femoris", "Quadratus femoris")
    slip(p, QUADRATUS, [[(78, 290), (78, 317)], [(95, 282), (92, 309)], [(111, 276), (103, 301)]], 6)
    p.on("muscle", "pelvis", "obturator-internus", "Obturator internus and gemelli")
    slip(p, [(58, 274, "c"), (66, 276), (90, 268), (117, 257, "c"), (115, 264), (94, 277), (76, 287), (62, 289, "c")], [[(60, 277), (64, 287)], [(92, 269), (95, 275)], [(115, 259), (115, 262)]], 3)
    slip(p, [(50, 254, "c"), (66, 253), (92, 250), (119, 246, "c"), (118, 252), (92, 260), (68, 264), (56, 263, "c")], [[(53, 256), (57, 262)], [(92, 252), (92, 258)], [(117, 248), (117, 251)]], 3)
    slip(p, [(54, 264, "c"), (66, 264), (92, 259), (118, 251, "c"), (117, 257), (94, 267), (68, 276), (57, 275, "c")], [[(56, 266), (58, 273)], [(92, 261), (94, 265)], [(116, 253), (116, 256)]], 3, "muscle-light")
    p.area(ribbon(left([(62, 270), (80, 268), (100, 260), (118, 253)]), [.3, 4, 4.4, 3]), "tendon", .85)
    p.on("muscle", "pelvis", "piriformis", "Piriformis")
    slip(p, PIRIFORMIS, [[(44, 190), (40, 208)], [(72, 215), (66, 230)], [(98, 229), (92, 241)], [(121, 243), (120, 247)]], 8, "muscle-light", 1.4)
    p.area(ribbon(left([(94, 234), (108, 240), (123, 246)]), [.3, 4.4, 4.4]), "tendon", .85)
    soft(p, left([(44, 198), (68, 222), (96, 234)]), left([(38, 208), (66, 231), (104, 245)]), "muscle-shade", .4, 5, hump(.7))


def cords(p):
    """Seen through the window: sciatic nerve below the piriformis, ligament to the tuberosity, a twig of the artery."""
    p.on("muscle", "pelvis", "sacrotuberous-ligament", "Sacrotuberous ligament")
    lig = [(44, 180, "c"), (47.4, 204), (50, 232), (53, 258), (60, 284), (66, 300, "c"), (52, 304, "c"), (46, 284), (40, 262), (32, 242), (24, 228, "c"), (32, 218), (39, 202)]
    p.area(left(lig), "tendon")
    p.ink(fibres([left([(43, 186), (27, 227)]), left([(48, 226), (35, 246)]), left([(53, 262), (43, 272)]), left([(63, 296), (54, 300)])], 4, .5, lift=.12), "tendon-line", .8)
    p.ink(rim(left(lig), .25, 1.1), "tendon-line")
    p.on("muscle", "pelvis")
    nerve = Line(SCIATIC)
    start = next(t / 200 for t in range(201) if nerve(t / 200)[1] > 237)
    stop = next(t / 200 for t in range(201) if nerve(t / 200)[1] > 396)
    cord(p, left(nerve.part(start, stop)), [7, 8.6, 8.2, 7.8, 7.4, 3], ticks=5)
    p.ink(pen(left(Line(PIRIFORMIS[6:11]).pts), [.2, 1.3, 1.2, .2]), "muscle-line")
    for pts in ([(70, 210), (64, 198), (63, 182), (68, 166)], [(70, 210), (78, 205), (86, 196), (90, 188)]):
        p.area(ribbon(left(pts), [2.6, 2.2, 1.4, .2]), "artery")
        p.ink(pen(Line(left(pts)).shifted(.9), [.1, .5, .4, .05]), "artery-line")


def stumps(p):
    """The two cut ends of the maximus: along its origin, and where it enters band and thigh bone."""
    p.on("muscle", "pelvis", "gluteus-maximus", "Gluteus maximus")
    org = [(63, 130, "c"), (52, 144), (44, 160), (40.6, 176), (37, 196), (29, 216), (18, 236), (8, 254), (3, 268, "c"), (10, 275, "c"), (20, 260), (30, 242), (40, 220), (47, 200), (52, 184),
           (56, 166), (64, 152), (73, 141, "c")]
    end = [(147, 262, "c"), (152, 282), (154, 304), (153, 326), (147, 348), (138, 363), (130, 369, "c"), (116, 363, "c"), (122, 350), (129, 337), (131, 324), (137, 309), (138, 297), (143, 282)]
    for shape, whole, cut, skew, r in ((org, org[:9], org[:8:-1], .1, 1.7), (end, end[:7], end[:6:-1], -.1, 1.5)):
        p.area(left(shape), "wash.stump")
        whole, cut = Line(left([q[:2] for q in whole])), Line(left([q[:2] for q in cut]))
        # the fibres keep the slant they had: down and out
        a, b = (0, .88) if skew > 0 else (.12, 1)
        lines(p, [whole.part(a, b), cut.part(max(0, skew) + a * (1 - skew) if skew > 0 else 0, 1 if skew > 0 else .86)], 11, .62, .8, v0=.02, v1=.98, lift=.12)
        s = -1 if skew > 0 else 1
        face = Line(cut.shifted(s * r, .02, .98))
        p.area(ribbon(face, [.4, 3, 3.6, 3, .4]), "muscle-light", .85)
        p.ink(pen(face.shifted(-s * 1.5), [.05, .5, .6, .4, .05]), "muscle-line", .7)
        p.ink(rim(left(shape), .3, 1.3), "muscle-line")
