#include "app/words/site_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>

namespace fb {

// lupdate follows no alias: the struct itself bears the name of its context.
struct SiteWords {
    Q_DECLARE_TR_FUNCTIONS(fb::SiteWords)
};

QString siteName(Site site)
{
    switch (site) {
    //: The injection site on the shoulder muscle (deltoid).
    case Site::Deltoid: return SiteWords::tr("deltoid site");
    //: The injection site on the outer muscle of the thigh (vastus lateralis).
    case Site::VastusLateralis: return SiteWords::tr("vastus lateralis site");
    //: The injection site on the side of the hip (gluteus medius and minimus).
    case Site::Ventrogluteal: return SiteWords::tr("ventrogluteal site");
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
    case View::HipSide: return SiteWords::tr("Hip, from the side");
    case View::HipBehind: return SiteWords::tr("Hips, from behind");
    case View::ThighFront: return SiteWords::tr("Thigh, from the front");
    case View::ThighSide: return SiteWords::tr("Thigh, from the outer side");
    case View::OpenHand: return SiteWords::tr("Open hand");
    case View::TwoFingers: return SiteWords::tr("Two fingers, laid together");
    case View::ThreeFingers: return SiteWords::tr("Three fingers, laid together");
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

QString postureText(View view)
{
    switch (view) {
    case View::ShoulderSide:
    case View::ShoulderThreeQuarter:
        return SiteWords::tr("Seated, shoulder bare, elbow bent, forearm in the lap");
    case View::HipSide:
        return SiteWords::tr("Lying on the other side, hip bare, upper knee bent and slightly forward, seen "
                             "from behind the patient");
    case View::HipBehind: return SiteWords::tr("Lying face down, both hips bare, toes turned in");
    case View::ThighFront: return SiteWords::tr("Lying on the back, thigh bare, toes up, seen from above");
    case View::ThighSide:
        return SiteWords::tr("Lying on the back, thigh bare, toes up, seen from the outer side");
    //: The hand of whoever gives the injection, not of the patient.
    case View::OpenHand: return SiteWords::tr("Laid flat, fingers spread");
    case View::TwoFingers:
    case View::ThreeFingers: return SiteWords::tr("Laid flat, fingers together");
    }
    return {};
}

QString requestText(Site site, Side side)
{
    const bool left = side == Side::Left;
    switch (site) {
    case Site::Deltoid:
        return left ? SiteWords::tr("Mark the deltoid site, left arm")
                    : SiteWords::tr("Mark the deltoid site, right arm");
    case Site::VastusLateralis:
        return left ? SiteWords::tr("Mark the vastus lateralis site, left thigh")
                    : SiteWords::tr("Mark the vastus lateralis site, right thigh");
    case Site::Ventrogluteal:
        return left ? SiteWords::tr("Mark the ventrogluteal site, left hip")
                    : SiteWords::tr("Mark the ventrogluteal site, right hip");
    }
    return {};
}

QString findingRequestText(Site site, Side side)
{
    const bool left = side == Side::Left;
    switch (site) {
    //: A request that is found by hand: felt, built, then marked.
    case Site::Deltoid:
        return left ? SiteWords::tr("Find the deltoid site, left arm")
                    : SiteWords::tr("Find the deltoid site, right arm");
    case Site::VastusLateralis:
        return left ? SiteWords::tr("Find the vastus lateralis site, left thigh")
                    : SiteWords::tr("Find the vastus lateralis site, right thigh");
    case Site::Ventrogluteal:
        return left ? SiteWords::tr("Find the ventrogluteal site, left hip")
                    : SiteWords::tr("Find the ventrogluteal site, right hip");
    }
    return {};
}

QString measureNote(const Target& target)
{
    return target.surface.isSkin()
               //: How the distances of a mark are measured on arm and thigh.
               ? SiteWords::tr("Measured along the skin")
               //: How they are measured on the hip, where the picture's plane is taken for the skin.
               : SiteWords::tr("Measured straight across the picture");
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
