"""The hand that measures fingerbreadths on an arm: two, then three fingers straight and held together.

    python3 laid_fingers.py               draws, checks, and only then replaces ../hands/two-fingers.svg and three-fingers.svg
    python3 laid_fingers.py OUTDIR        the same, into another folder
"""
import os
import sys

from engrave import Plate, check
from names import publish
from open_hand_frame import TONES

NAMES = {2: "two-fingers", 3: "three-fingers"}
FINGERS = {2: "index and middle finger", 3: "index, middle and ring finger"}


def builder(count):
    import laid_fingers_curled
    import laid_fingers_frame as frame
    import laid_fingers_palm
    import laid_fingers_straight
    import laid_fingers_thumb

    def build(path):
        plate = Plate(
            view=NAMES[count], size=frame.SIZE, origin=frame.ORIGIN, azimuth=0, markable="no",
            title=f"Left hand with {NAMES[count].split('-')[0]} fingers laid together, seen from the back",
            desc=f"Left hand, fingers up: {FINGERS[count]} straight and side by side, the others curled into the palm, "
                 "the thumb along the hand at the right.",
            tones=TONES, limbs=("hand",), reference="female 35y 172cm 70kg")
        plate.on("skin", "hand")
        laid_fingers_palm.shadow(plate, count)
        laid_fingers_thumb.body(plate)
        laid_fingers_curled.bases(plate, count)
        laid_fingers_palm.draw(plate)
        laid_fingers_thumb.edge(plate)
        laid_fingers_curled.draw(plate, count)
        laid_fingers_straight.draw(plate, count)
        laid_fingers_thumb.fold(plate)
        laid_fingers_straight.edge(plate)
        frame.names(plate, count)
        plate.write(path)
    return build


if __name__ == "__main__":
    here = os.path.dirname(os.path.abspath(__file__))
    folder = sys.argv[1] if len(sys.argv) > 1 else os.path.join(here, "..", "hands")
    for count, name in NAMES.items():
        sys.argv[1:] = [os.path.join(folder, name + ".svg")]
        publish(name, builder(count), check)
