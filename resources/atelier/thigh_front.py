"""Plate: thigh, seen from the front (patient supine, seen from above; head to the left, outer side down).

All curves were placed by hand in the thigh's own terms: at(a, s), a millimetres along from the hip
joint toward the knee, s across from the line ASIS-patella, positive toward the midline (up the page).
    python3 thigh_front.py [out.svg]
"""
from engrave import Plate, TONES, check
from names import publish


def build(path):
    import thigh_front_bones
    import thigh_front_flesh
    import thigh_front_frame
    import thigh_front_muscles
    import thigh_front_skin
    plate = Plate(
        view="thigh-front", size=(740, 400), origin=thigh_front_frame.O, azimuth=0, markable="yes",
        title="Thigh, seen from the front",
        desc="Patient lying on the back, seen from above: head to the left, the right thigh across the picture with "
             "its outer side down. Layers: bone, vessel, nerve, muscle, skin.",
        tones=TONES, limbs=("pelvis", "leg", "thigh"))
    thigh_front_bones.draw(plate)
    thigh_front_flesh.draw(plate)
    thigh_front_muscles.draw(plate)
    thigh_front_skin.draw(plate)
    thigh_front_frame.names(plate)
    plate.write(path)


if __name__ == "__main__":
    publish("thigh-front", build, check)
