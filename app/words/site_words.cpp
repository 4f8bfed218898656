#include "app/words/site_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>

namespace fb {

namespace site_words_detail {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(fb::SiteWords)
};

}  // namespace site_words_detail

using SiteWords = site_words_detail::Words;

QString siteName(Site site)
{
    switch (site) {
    //: The injection site on the shoulder muscle (deltoid).
    case Site::Deltoid: return SiteWords::tr("deltoid site");
    }
    return {};
}

QString sexName(Sex sex)
{
    //: Sex of the patient, as in a table.
    return sex == Sex::Female ? SiteWords::tr("female") : SiteWords::tr("male");
}

QString sideName(Side side)
{
    //: Side of the patient's body, not of the picture.
    return side == Side::Left ? SiteWords::tr("left") : SiteWords::tr("right");
}

QString viewName(View view)
{
    switch (view) {
    case View::ShoulderSide: return SiteWords::tr("Shoulder, from the side");
    //: The shoulder seen halfway between front and side.
    case View::ShoulderThreeQuarter: return SiteWords::tr("Shoulder, three-quarter front");
    }
    return {};
}

QString layerName(Layer layer)
{
    switch (layer) {
    case Layer::Bone: return SiteWords::tr("Bone");
    case Layer::Vessel: return SiteWords::tr("Vessels");
    case Layer::Nerve: return SiteWords::tr("Nerves");
    case Layer::Muscle: return SiteWords::tr("Muscle");
    case Layer::Skin: return SiteWords::tr("Skin");
    //: The fine drawing on the skin: folds, furrows, shade.
    case Layer::Surface: return SiteWords::tr("Surface");
    //: Drape and clothing in the drawing.
    case Layer::Cloth: return SiteWords::tr("Cloth");
    }
    return {};
}

QString helpLevelName(HelpLevel level)
{
    switch (level) {
    case HelpLevel::DrawnAndNamed: return SiteWords::tr("Landmarks drawn and named");
    case HelpLevel::NamedOnly: return SiteWords::tr("Landmarks named only");
    case HelpLevel::Nothing: return SiteWords::tr("No help");
    }
    return {};
}

QString hazardName(HazardCode code)
{
    switch (code) {
    case HazardCode::Acromion: return SiteWords::tr("Acromion (bone)");
    case HazardCode::JointAndBursa: return SiteWords::tr("Shoulder joint and bursa");
    //: Axilla level: the height of the armpit.
    case HazardCode::BelowArmpit: return SiteWords::tr("Below armpit level: radial nerve");
    case HazardCode::RadialNerveBehind: return SiteWords::tr("Radial nerve, back of the arm");
    case HazardCode::BursaEdge: return SiteWords::tr("Lower edge of the bursa");
    case HazardCode::AxillaryNerveFront: return SiteWords::tr("Axillary nerve, front");
    case HazardCode::AxillaryNerveBack: return SiteWords::tr("Axillary nerve, back");
    }
    return {};
}

QString stepName(StepCode code)
{
    switch (code) {
    case StepCode::FeelAcromion: return SiteWords::tr("Feel the acromion's lateral edge");
    case StepCode::AcromionBase: return SiteWords::tr("Base: the acromion from front to back");
    case StepCode::ArmpitLevel: return SiteWords::tr("Armpit level");
    case StepCode::Apex: return SiteWords::tr("Apex: mid-lateral at armpit level");
    case StepCode::Triangle: return SiteWords::tr("Triangle");
    case StepCode::MidLateralLine: return SiteWords::tr("Mid-lateral line");
    case StepCode::MeasureDown: return SiteWords::tr("Measure down from the acromion");
    case StepCode::LayFingers: return SiteWords::tr("Lay the fingers below the acromion");
    case StepCode::FeelTuberosity: return SiteWords::tr("Feel where the deltoid ends");
    case StepCode::Region: return SiteWords::tr("Target region");
    case StepCode::IdealPoint: return SiteWords::tr("Ideal point");
    }
    return {};
}

QString postureText(View view)
{
    switch (view) {
    case View::ShoulderSide:
    case View::ShoulderThreeQuarter:
        return SiteWords::tr("Seated, shoulder bare, elbow bent, forearm in the lap");
    }
    return {};
}

QString requestText(Site site, Side side)
{
    switch (site) {
    case Site::Deltoid:
        return side == Side::Left ? SiteWords::tr("Mark the deltoid site, left arm")
                                  : SiteWords::tr("Mark the deltoid site, right arm");
    }
    return {};
}

QString landmarkName(std::string_view key)
{
    //: Bony landmarks of the shoulder and arm, as short labels on the plate.
    if (key == "acromion")
        return SiteWords::tr("Acromion, lateral edge");
    if (key == "acromion_front")
        return SiteWords::tr("Acromion, front corner");
    if (key == "acromion_back")
        return SiteWords::tr("Acromion, back corner");
    if (key == "axilla")
        return SiteWords::tr("Armpit level");
    if (key == "axilla_front")
        return SiteWords::tr("Armpit, front fold");
    if (key == "axilla_back")
        return SiteWords::tr("Armpit, back fold");
    if (key == "deltoid_tuberosity")
        return SiteWords::tr("Deltoid tuberosity");
    if (key == "lateral_epicondyle")
        return SiteWords::tr("Lateral epicondyle");
    if (key == "clavicle_medial")
        return SiteWords::tr("Clavicle, inner end");
    if (key == "scapula_spine")
        return SiteWords::tr("Spine of the scapula");
    return {};
}

QString cautionSentence()
{
    return SiteWords::tr("Training aid. Local policy and licensed practice decide.");
}

QString cmText(double cm)
{
    const double shown = std::round(cm * 10.0) / 10.0;
    //: A length in centimetres, one decimal.
    return SiteWords::tr("%1 cm").arg(QLocale().toString(shown == 0.0 ? 0.0 : shown, 'f', 1));
}

}  // namespace fb
