"""The names each view's plate must carry: limbs with their levels, edges, points, lines and areas."""
SIDE = "skin-back bone-back bone-front skin-front".split()       # across the axis, viewer's order
FRONT = "skin-outer bone-outer bone-inner skin-inner".split()
BEHIND = "skin-left bone-left bone-right skin-right".split()

SHOULDER = {
    "edges": SIDE,
    "levels": {"trunk": "neck shoulder chest waist",
               "arm": "shoulder-top acromion axilla mid-arm radiale elbow-tip",
               "forearm": "elbow forearm wrist"},
    "origin": "joint.trunk joint.shoulder landmark.acromion.lateral",
    "points": "joint.trunk joint.shoulder joint.elbow landmark.acromion.lateral landmark.acromion.front "
              "landmark.acromion.back landmark.deltoid-tuberosity landmark.lateral-epicondyle "
              "landmark.axilla.front landmark.axilla.back landmark.clavicle.medial landmark.scapula.spine",
    "hidden": "line.axillary-nerve line.radial-nerve line.clavicle area.bone.acromion area.bone.clavicle "
              "area.bone.humerus area.bone.scapula area.bursa area.muscle.deltoid"}
THIGH = {"pelvis": "crest asis hip fold",
         "thigh": "trochanter thigh-upper mid-thigh lower-thigh epicondyle",
         "leg": "knee shank"}
THIGH_POINTS = ("joint.pelvis joint.hip joint.knee landmark.greater-trochanter landmark.asis "
                "landmark.lateral-femoral-epicondyle landmark.patella")
THIGH_AREAS = ("area.bone.greater-trochanter area.bone.femur area.bone.patella area.muscle.vastus-lateralis "
               "area.muscle.rectus-femoris")
FINGERS = "thumb index middle ring little"
LAID = {"edges": "skin-left bone-left bone-right skin-right".split(), "levels": {"hand": "wrist knuckles tips"},
        "origin": "joint.hand", "points": "joint.hand landmark.upper-edge landmark.lower-edge", "hidden": ""}

VIEWS = {
    "shoulder-side": SHOULDER,
    "shoulder-three-quarter": {**SHOULDER, "origin": "landmark.acromion.lateral"},
    "hip-side": {
        "edges": SIDE,
        "levels": {"pelvis": "waist crest asis hip fold",
                   "thigh": "trochanter thigh-upper mid-thigh lower-thigh epicondyle",
                   "leg": "knee shank"},
        "origin": "landmark.greater-trochanter",
        "points": "joint.pelvis joint.hip joint.knee landmark.greater-trochanter landmark.asis "
                  "landmark.iliac-tubercle landmark.iliac-crest landmark.psis landmark.ischial-tuberosity "
                  "landmark.lateral-femoral-epicondyle",
        "hidden": "line.iliac-crest line.sacrum-edge line.sciatic-nerve line.superior-gluteal-nerve "
                  "area.bone.ilium area.bone.greater-trochanter area.muscle.gluteus-medius "
                  "area.muscle.gluteus-maximus area.muscle.tensor-fasciae-latae"},
    "hip-behind": {
        "edges": BEHIND,
        "levels": {"pelvis": "waist crest psis hip fold",
                   "thigh": "trochanter thigh-upper mid-thigh",
                   "thigh-left": "trochanter-left thigh-upper-left mid-thigh-left"},
        "origin": "landmark.greater-trochanter",
        "points": "joint.pelvis joint.hip joint.hip-left landmark.greater-trochanter landmark.iliac-crest "
                  "landmark.psis landmark.ischial-tuberosity landmark.coccyx",
        "hidden": "line.iliac-crest line.sacrum-edge line.sciatic-nerve line.superior-gluteal-nerve "
                  "area.bone.ilium area.bone.sacrum area.bone.greater-trochanter area.muscle.gluteus-medius "
                  "area.muscle.gluteus-maximus"},
    "thigh-side": {"edges": SIDE, "levels": THIGH, "origin": "landmark.greater-trochanter",
                   "points": THIGH_POINTS,
                   "hidden": THIGH_AREAS + " line.sciatic-nerve area.muscle.hamstrings"},
    "thigh-front": {"edges": FRONT, "levels": THIGH, "origin": "landmark.greater-trochanter",
                    "points": THIGH_POINTS,
                    "hidden": THIGH_AREAS + " line.femoral-artery line.lateral-circumflex-femoral-artery"},
    "open-hand": {
        "edges": "skin-left bone-left bone-right skin-right".split(),
        "levels": {"palm": "wrist palm knuckles", **{f: f"{f}-base {f}-mid {f}-tip" for f in FINGERS.split()}},
        "origin": "joint.palm",
        "points": "joint.palm " + " ".join(f"joint.{f} landmark.{f}-tip" for f in FINGERS.split())
                  + " landmark.fork",
        "hidden": ""},
    "two-fingers": LAID,
    "three-fingers": LAID,
}
