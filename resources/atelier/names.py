"""What every shoulder plate does alike: its hidden lines and areas, and the way it is published."""
import os
import shutil
import sys
import tempfile


def deep_names(p, bones, flesh, muscles, clavicle):
    """The hidden lines and areas, from the modules that drew them; `clavicle` is its axis."""
    p.hidden_line("arm", "axillary-nerve", flesh.AXILLARY)
    p.hidden_line("arm", "radial-nerve", flesh.RADIAL)
    p.hidden_line("trunk", "clavicle", clavicle)
    p.hidden_area("arm", "bone.acromion", bones.ACROMION)
    p.hidden_area("trunk", "bone.clavicle", bones.CLAVICLE)
    p.hidden_area("arm", "bone.humerus", bones.HUMERUS)
    p.hidden_area("trunk", "bone.scapula", bones.SCAPULA)
    p.hidden_area("arm", "bursa", flesh.BURSA)
    p.hidden_area("arm", "muscle.deltoid", muscles.DELTOID)


def publish(name, build, problems_of):
    """Draws a trial, checks it, and only then replaces the plate (or the file named as an argument)."""
    here = os.path.dirname(os.path.abspath(__file__))
    target = sys.argv[1] if len(sys.argv) > 1 else os.path.join(here, "..", "plates", name + ".svg")
    trial = os.path.join(tempfile.gettempdir(), name + "-trial.svg")
    build(trial)
    problems = problems_of(trial)
    if problems:
        print("\n".join(problems[:30]))
        sys.exit(f"The plate is as it was; the trial to look at is {trial}")
    shutil.copyfile(trial, target)
