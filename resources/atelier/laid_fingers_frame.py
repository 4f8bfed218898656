"""The laid hand: a left hand from the back, fingers up, two or three of them straight and side by side; hidden names.

Points are written (x, y): millimetres to the viewer's right of and above the middle of the wrist crease. Fingers are
measured along the same heights: their s is y, their u is x. One drawing of the hand serves both counts.
"""
from engrave import Line
from open_hand_frame import Finger, arch, body

SIZE, ORIGIN = (116, 230), (57, 194)
HEIGHT = 148                     # where the joined fingers lie on the arm: amid their last two segments
SLENDER = .8                    # fingers pressed together keep more of their breadth between the joints


def at(x, y):
    return (ORIGIN[0] + x, ORIGIN[1] - y)


def along(points):
    return [(*at(*q[:2]), *q[2:]) for q in points]


def straight(name, half, marks, centre, under=0.0):
    """A straight finger; `under`: how far its right side runs under its neighbour."""
    left = body(half, *marks, SLENDER)
    right = [(s, w + (under if s < marks[4] - 18 else 0)) for s, w in left]
    return Finger(name, (0, 0), 180, centre, left, right, marks, ORIGIN)


INDEX = straight("index", 8.9, (84, 107, 124.5, 148.5, 169), [(70, 19.6), (84, 19.4), (107, 18.3), (124.5, 17.5), (148, 16.6), (160, 16.3), (169, 16.2)])
MIDDLE = straight("middle", 8.9, (86.5, 110, 130, 157, 181), [(72, -1), (86.5, -.9), (110, -.4), (130, 0), (157, .4), (170, .7), (181, .8)], .5)
RING = straight("ring", 8.5, (82, 106, 123, 149, 171.5), [(68, -18.6), (82, -19), (106, -18.4), (123, -17.5), (149, -16), (160, -15.4), (171.5, -15.2)], .6)
LITTLE_KNUCKLE, RING_KNUCKLE = (-35.6, 73.4), (-19, 82)

# the thumb lies along the hand: seen half from its side, its upper part goes under the back of the hand
THUMB = Finger("thumb", (16.8, 9), 166,
               [(-20, 1), (0, 2), (24, 4.4), (44, 5.2), (60, 4.2), (75, 1.6), (88, -2.6), (103, -8.6)],
               [(-20, 8), (0, 9), (24, 9.4), (38, 10), (45, 10.4), (52, 9.8), (60, 8.8), (68, 8.9), (75, 9.2), (82, 8.9), (88, 8.6), (92, 8.2), *arch(8.0, 103, 2.0, 9)],
               [(-20, 8), (-8, 8.6), (0, 9.8), (8, 10), (24, 9.4), (36, 10), (44, 10.6), (52, 10), (60, 9), (68, 9.1), (75, 9.6), (82, 9),
                (88, 8.5), (92, 7.9), *arch(7.5, 103, 2.1, 9)],
               (44, 52, 74, 84, 103), ORIGIN)

# outlines of the back of the hand
ULNAR = [(-29, -32), (-28.4, -20), (-28, -10), (-28.6, -2), (-31.4, 5.6), (-35.6, 14), (-39.4, 25), (-42.2, 37), (-44, 49), (-44.9, 60), (-45.2, 67), (-45, 73)]
RADIAL = [(27.4, -32), (26.8, -20), (26.4, -11), (26.6, -4), (27.6, 2)]
# the fold between thumb and hand: from the index finger's side down to where it is lost in the ball of the hand
FOLD = [(28, 104), (28.5, 97), (29.2, 90), (29.8, 82), (29.9, 74), (29, 66), (26.8, 58), (23.4, 50.6)]
# the curled fingers' first segments, foreshortened: left root, over the middle joint, right root
CURLED = {"ring": [(-28.8, 79), (-28.4, 84.6), (-27, 90), (-26.6, 94.4), (-25.7, 98.6), (-23.4, 101.8), (-18, 103.4), (-12.8, 102.6), (-9.6, 100), (-8, 96), (-7.8, 90), (-9, 84)],
          "little": [(-45, 73), (-44.2, 78), (-42.4, 82.4), (-41.9, 86.2), (-40.8, 89.6), (-38.4, 92), (-34, 93.2), (-29.8, 92.2), (-27.2, 89.6), (-26.8, 85), (-27.6, 79), (-28, 74)]}


def fingers(count):
    """The straight fingers, in the order they are painted."""
    return (MIDDLE, INDEX) if count == 2 else (RING, MIDDLE, INDEX)


def curled(count):
    return ("little", "ring") if count == 2 else ("little",)


def names(p, count):
    lowest = fingers(count)[0]
    p.hang("hand", "hand", at(0, 0), 180)
    p.point("hand", "landmark.upper-edge", crossing(INDEX, 1))
    p.point("hand", "landmark.lower-edge", crossing(lowest, -1))
    for name, y, left, right in (("wrist", 0, -28, 28), ("knuckles", 84, -42, 40), ("tips", 160, -8.4, 24)):
        p.level("hand", name, at(0, y), (-1, 0), *(-right, 4 - right, -left - 4.2, -left))


def crossing(f, side):
    """Where a finger's outer side meets the height of the arm."""
    y = ORIGIN[1] - HEIGHT
    return (round(Line(f.side(side, HEIGHT - 12, HEIGHT + 12)).at_y(y)[0], 2), y)
