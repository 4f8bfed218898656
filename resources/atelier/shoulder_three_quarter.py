"""Plate: shoulder, seen from three-quarter front (companion of the side view, shown only).

The same seated adult turned so that we look 45 degrees from the front right. All curves were placed
by hand in millimetres of the plate (y down, origin 190 200 = lateral edge of the acromion).
    python3 shoulder_three_quarter.py [out.svg]
"""
from engrave import Plate, TONES, check
from names import publish


def build(path):
    import quarter_bones
    import quarter_flesh
    import quarter_frame
    import quarter_skin
    plate = Plate(
        view="shoulder-three-quarter", size=(560, 640), origin=quarter_frame.O, azimuth=45, markable="no",
        title="Shoulder and upper arm, seen from three-quarter front",
        desc="The same seated patient seen from the front right: clavicle, round of the deltoid, front armpit "
             "fold, arm with the forearm in the lap. Layers: bone, vessel, nerve, muscle, skin.",
        tones=TONES, limbs=("trunk", "arm", "forearm"))
    quarter_bones.draw(plate)
    quarter_flesh.draw(plate)
    quarter_skin.draw(plate)
    quarter_frame.names(plate)
    plate.write(path)


def problems_of(path):
    """The common check; in this view trunk and arm hang from joints of their own."""
    own = ("joint.trunk is not at the origin", "joint.shoulder is not at the origin")
    return [b for b in check(path) if b not in own]


if __name__ == "__main__":
    publish("shoulder-three-quarter", build, problems_of)
