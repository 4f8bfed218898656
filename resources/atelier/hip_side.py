"""Plate: hip, seen from the side (patient lying on the left side, right hip up, the nurse at the back).

All curves were placed by hand, in millimetres of the plate (y down, origin 300 270 = greater trochanter).
    python3 hip_side.py [out.svg]
"""
from engrave import Plate, TONES, check
from names import publish


def build(path):
    import hip_side_bones
    import hip_side_flesh
    import hip_side_frame
    import hip_side_muscles
    import hip_side_skin
    plate = Plate(
        view="hip-side", size=(720, 460), origin=(300, 270), azimuth=90, markable="yes",
        title="Hip, seen from the side, patient lying on the left side",
        desc="Right hip up, seen by the nurse at the patient's back: head to the left, front of the body up, upper hip and knee "
             "bent, a sheet over the legs from mid-thigh. Layers: bone, vessel, nerve, muscle, skin.",
        tones=TONES, limbs=("leg", "pelvis", "thigh"))
    hip_side_bones.draw(plate)
    hip_side_flesh.draw(plate)
    hip_side_muscles.draw(plate)
    hip_side_skin.draw(plate)
    hip_side_frame.names(plate)
    plate.hidden_line("pelvis", "iliac-crest", hip_side_frame.CREST)
    plate.hidden_line("pelvis", "sacrum-edge", hip_side_frame.SACRUM_EDGE)
    plate.hidden_line("pelvis", "sciatic-nerve", hip_side_flesh.SCIATIC)
    plate.hidden_line("pelvis", "superior-gluteal-nerve", hip_side_flesh.GLUTEAL)
    plate.hidden_area("pelvis", "bone.ilium", hip_side_bones.ILIUM)
    plate.hidden_area("thigh", "bone.greater-trochanter", hip_side_bones.TROCHANTER)
    plate.hidden_area("pelvis", "muscle.gluteus-medius", hip_side_muscles.MEDIUS)
    plate.hidden_area("pelvis", "muscle.gluteus-maximus", hip_side_muscles.MAXIMUS)
    plate.hidden_area("pelvis", "muscle.tensor-fasciae-latae", hip_side_muscles.TENSOR)
    plate.write(path)


if __name__ == "__main__":
    publish("hip-side", build, check)
