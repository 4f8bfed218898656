"""The open hand that is laid over a hip: the nurse's left hand from the back, index and middle finger spread.

    python3 open_hand.py [out.svg]        draws, checks, and only then replaces ../hands/open-hand.svg
"""
import os
import sys

from engrave import Plate, check
from names import publish


def build(path):
    import open_hand_fingers
    import open_hand_frame
    import open_hand_palm
    import open_hand_thumb
    plate = Plate(
        view="open-hand", size=open_hand_frame.SIZE, origin=open_hand_frame.ORIGIN, azimuth=0, markable="no",
        title="Open left hand, seen from the back",
        desc="Left hand laid flat, fingers up: the index finger straight, the middle finger spread away from it, "
             "ring and little finger following, the thumb at the right.",
        tones=open_hand_frame.TONES, limbs=("palm", "little", "ring", "middle", "index", "thumb"),
        reference="female 35y 172cm 70kg")
    open_hand_palm.draw(plate)
    open_hand_fingers.draw(plate)
    open_hand_thumb.draw(plate)
    open_hand_frame.names(plate)
    plate.write(path)


if __name__ == "__main__":
    here = os.path.dirname(os.path.abspath(__file__))
    folder = os.path.join(here, "..", "hands")
    os.makedirs(folder, exist_ok=True)
    if len(sys.argv) < 2:
        sys.argv.append(os.path.join(folder, "open-hand.svg"))
    publish("open-hand", build, check)
