"""Plate: both buttocks from behind (patient prone, head up, right side at the viewer's right).

All curves were placed by hand, in millimetres of the plate (y down, origin 356 268 = greater
trochanter). The drawing is split by what is drawn: frame, bones, flesh, muscles, skin, cloth.
    python3 hip_behind.py [out.svg]
"""
from engrave import Plate, TONES, check
from names import publish


def build(path):
    import hip_behind_bones
    import hip_behind_cloth
    import hip_behind_flesh
    import hip_behind_frame
    import hip_behind_muscles
    import hip_behind_skin
    plate = Plate(
        view="hip-behind", size=(440, 480), origin=(356, 268), azimuth=180, markable="no",
        title="Both buttocks, seen from behind",
        desc="Patient lying prone, head up, right side at the viewer's right; shirt at the waist, "
             "folded sheet over the thighs. Layers: bone, vessel, nerve, muscle, skin.",
        tones=TONES, limbs=("thigh-left", "thigh", "pelvis"))
    hip_behind_bones.draw(plate)
    hip_behind_flesh.draw(plate)
    hip_behind_muscles.draw(plate)
    hip_behind_skin.draw(plate)
    hip_behind_cloth.draw(plate)
    hip_behind_frame.names(plate)
    plate.write(path)


if __name__ == "__main__":
    publish("hip-behind", build, check)
