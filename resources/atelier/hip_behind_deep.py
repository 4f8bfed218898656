"""Hip from behind, left side: what lies under the gluteus maximus, which is cut away between its two ends."""
from engrave import Line, between, fibres, pen, ribbon
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
    lig = [(46, 168, "c"), (45, 186), (47, 208), (49.6, 232), (53, 256), (60, 278), (70, 296, "c"), (62, 303), (50, 307, "c"), (47, 290), (41, 268), (31, 248), (15, 238, "c"), (27, 226), (37, 206), (40, 184)]
    p.area(left(lig), "tendon", .92)
    p.ink(fibres([left([(45, 174), (18, 236)]), left([(47, 206), (30, 240)]), left([(51, 244), (40, 264)]), left([(58, 274), (46, 286)]), left([(68, 296), (52, 304)])], 6, .45, lift=.15), "tendon-line", .75)
    p.ink([pen(left([(45, 186), (47, 208), (49.6, 232), (53, 256), (60, 278), (69, 294)]), [.05, .6, .8, .8, .05]),
           pen(left([(18, 239), (31, 248), (41, 268), (47, 290), (50, 305)]), [.05, .5, .6, .05])], "tendon-line")
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
    end = [(147, 262, "c"), (150.4, 281), (151, 302), (148.6, 323), (142.6, 343), (134, 357), (127, 364, "c"), (113, 359, "c"), (120, 345), (127, 329), (132, 313), (136, 298), (141, 281)]
    for shape, whole, cut in ((org, org[:9], org[:8:-1]), (end, end[:7], end[:6:-1])):
        whole, cut = Line(left([q[:2] for q in whole])), Line(left([q[:2] for q in cut]))
        p.area(left(shape), "muscle-light", .5)
        soft(p, cut, whole, "muscle-base", .96, 7, lambda s: 1)
        # a few fibres keep the slant they had, down and out; the cut itself is one pale line where the colour lifts off
        lines(p, [whole.part(0, .9), between(whole, cut, .8).part(.08, 1)] if shape is org else [between(cut, whole, .25).part(0, .9), whole.part(.1, 1)], 6, .5, .6, lift=.3)
        p.ink(pen(cut, [.3, 1.0, 1.3, 1.0, .3]), "tendon", .9)
        p.ink(pen(whole, [.1, .8, .9, .7, .1]), "muscle-line", .8)
