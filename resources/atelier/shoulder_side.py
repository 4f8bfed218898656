"""Plate: shoulder, seen from the side (patient seated, right arm toward us, front to the right).

All curves were placed by hand, in millimetres of the plate (y down, origin 240 200 = lateral
edge of the acromion). The drawing is split by what is drawn: frame, bones, flesh, skin.
    python3 shoulder_side.py [out.svg]
"""
from engrave import Plate, TONES, check
from names import publish


def build(path):
    import side_bones
    import side_flesh
    import side_frame
    import side_skin
    plate = Plate(
        view="shoulder-side", size=(560, 640), origin=(240, 200), azimuth=90, markable="yes",
        title="Shoulder and upper arm, seen from the side",
        desc="Seated patient, right arm toward the viewer, front of the body to the right; "
             "forearm in the lap under a blanket. Layers: bone, vessel, nerve, muscle, skin.",
        tones=TONES, limbs=("trunk", "forearm", "arm"))
    side_bones.draw(plate)
    side_flesh.draw(plate)
    side_skin.draw(plate)
    side_frame.names(plate)
    plate.write(path)


if __name__ == "__main__":
    publish("shoulder-side", build, check)
