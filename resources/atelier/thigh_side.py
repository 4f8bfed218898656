"""Plate: thigh from the lateral side (lying on the back, head to the left, toes to the ceiling).

All curves were placed by hand, in centimetres from the greater trochanter (thigh_side_frame.at).
    python3 thigh_side.py [out.svg]
"""
from engrave import Plate, TONES, check
from names import publish


def build(path):
    import thigh_side_bed
    import thigh_side_bones
    import thigh_side_flesh
    import thigh_side_frame
    import thigh_side_muscles
    import thigh_side_skin
    import thigh_side_wear
    plate = Plate(
        view="thigh-side", size=(740, 340), origin=thigh_side_frame.O, azimuth=90, markable="yes",
        title="Thigh, seen from the lateral side",
        desc="Patient lying on the back, seen from the right side, head to the left, toes to the ceiling; "
             "from the lower belly to below the knee. Layers: bone, vessel, nerve, muscle, skin.",
        tones=TONES, limbs=("pelvis", "leg", "thigh"))
    thigh_side_bones.draw(plate)
    thigh_side_flesh.draw(plate)
    thigh_side_muscles.draw(plate)
    thigh_side_skin.draw(plate)
    thigh_side_bed.draw(plate)
    thigh_side_wear.draw(plate)
    thigh_side_frame.names(plate)
    plate.write(path)


if __name__ == "__main__":
    publish("thigh-side", build, check)
