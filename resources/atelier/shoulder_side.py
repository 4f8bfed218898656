"""Plate: shoulder, seen from the side (patient seated, right arm toward us, front to the right).

All curves were placed by hand, in millimetres of the plate (y down, origin 240 200 = lateral
edge of the acromion). The drawing is split by what is drawn: frame, bones, flesh, skin.
    python3 shoulder_side.py [out.svg]
"""
import os
import shutil
import sys

from engrave import Plate, TONES, check

HERE = os.path.dirname(os.path.abspath(__file__))
OUT = os.path.join(HERE, "..", "plates", "shoulder-side.svg")


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
    target = sys.argv[1] if len(sys.argv) > 1 else OUT
    trial = "/tmp/shoulder-side-trial.svg"      # kept when the check fails, to look at
    build(trial)
    problems = check(trial)
    if problems:
        print("\n".join(problems[:30]))
        sys.exit(1)
    shutil.copyfile(trial, target)
