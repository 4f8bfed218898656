#include "app/words/build_words.h"

#include <QCoreApplication>
#include <array>

#include "core/site/landmark.h"

namespace fb {

namespace build_words_detail {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(fb::BuildWords)
};

QString buildingInstruction(Convention convention)
{
    if (convention == Convention::VastusHandbreadths)
        return Words::tr("Set the ends of the thigh, set off a handbreadth at either end, lay the front line "
                         "and the outer line, then choose the field.");
    switch (buildKindOf(convention)) {
    case BuildKind::FingersAndTriangle:
        return Words::tr("Lay your fingers below the acromion, then set the base and the apex of the "
                         "triangle.");
    case BuildKind::HalvedLine:
        return Words::tr("Draw the line from the acromion to the deltoid tuberosity and halve it.");
    case BuildKind::ThighGrid:
        return Words::tr("Set the ends of the thigh, divide it into thirds, lay the front line and the outer "
                         "line, then choose the field.");
    case BuildKind::HandOnHip:
        return Words::tr("Choose your hand, lay its palm, point the index finger and open the middle "
                         "finger.");
    case BuildKind::TriangleAndMedians:
        return Words::tr("Set the three corners of the triangle, then draw a line from each to the middle of "
                         "the side facing it.");
    }
    return {};
}

QString markingInstruction(Convention convention)
{
    switch (buildKindOf(convention)) {
    case BuildKind::FingersAndTriangle:
        return Words::tr("Now mark the site: on the middle of the outer side, inside the triangle, at the "
                         "lower edge of your fingers.");
    case BuildKind::HalvedLine: return Words::tr("Now mark the site: where you halved the line.");
    case BuildKind::ThighGrid:
        return Words::tr("Now mark the site: in the field you chose, nearer the outer line than the front "
                         "line.");
    case BuildKind::HandOnHip:
        return Words::tr("Now mark the site: in the middle of the V between index and middle finger. Then "
                         "take the hand away before the needle comes.");
    case BuildKind::TriangleAndMedians: return Words::tr("Now mark the site: where the three lines cross.");
    }
    return {};
}

QString armInstruction(Handle handle)
{
    switch (handle) {
    case Handle::Fingers:
        return Words::tr("Lay the upper edge of your fingers on the lateral edge of the acromion.");
    case Handle::FingersTurn: return Words::tr("Turn your fingers until they lie square to the arm.");
    case Handle::BaseFront: return Words::tr("Set one end of the base on the front corner of the acromion.");
    case Handle::BaseBack:
        return Words::tr("Set the other end of the base on the back corner of the acromion.");
    case Handle::Apex: return Words::tr("Set the apex on the mid-lateral line, at armpit level.");
    case Handle::LineTop:
        return Words::tr("Set the upper end of the line on the lateral edge of the acromion.");
    case Handle::LineBottom: return Words::tr("Set the lower end of the line on the deltoid tuberosity.");
    case Handle::LineMiddle: return Words::tr("Slide this point until it halves the line.");
    default: return {};
    }
}

QString thighInstruction(Handle handle, Convention convention)
{
    const bool hands = convention == Convention::VastusHandbreadths;
    switch (handle) {
    case Handle::ThighTop: return Words::tr("Set the hip end of the thigh at the greater trochanter.");
    case Handle::ThighBottom:
        return Words::tr("Set the knee end of the thigh at the lateral femoral condyle.");
    case Handle::UpperLine:
        return hands ? Words::tr("Lay one line across, a handbreadth below the greater trochanter.")
                     : Words::tr("Lay one line across, where the third next to the hip ends.");
    case Handle::LowerLine:
        return hands ? Words::tr("Lay the other line across, a handbreadth above the knee.")
                     : Words::tr("Lay the other line across, where the third next to the knee begins.");
    case Handle::FrontLine:
        return Words::tr("Lay the front line down the middle of the front of the thigh, toward the middle of "
                         "the patella.");
    case Handle::OuterLine:
        return Words::tr("Lay the outer line down the middle of the outer side of the thigh.");
    default: return {};
    }
}

QString hipInstruction(Handle handle)
{
    switch (handle) {
    case Handle::Palm:
        return Words::tr("Lay your palm over the greater trochanter, the thumb toward the groin.");
    case Handle::IndexTip:
        return Words::tr("Turn the hand until the index fingertip rests on the anterior superior iliac "
                         "spine.");
    case Handle::MiddleTip:
        return Words::tr("Spread the middle finger back toward the iliac crest, as wide as it goes.");
    case Handle::CornerTrochanter: return Words::tr("Set this corner on the greater trochanter.");
    case Handle::CornerTubercle: return Words::tr("Set this corner on the iliac tubercle.");
    case Handle::CornerSpine: return Words::tr("Set this corner on the anterior superior iliac spine.");
    case Handle::FootTrochanter:
        return Words::tr("Slide the end of the line from the trochanter to the middle of the side facing "
                         "it.");
    case Handle::FootTubercle:
        return Words::tr("Slide the end of the line from the tubercle to the middle of the side facing it.");
    case Handle::FootSpine:
        return Words::tr("Slide the end of the line from the iliac spine to the middle of the side facing "
                         "it.");
    default: return {};
    }
}

}  // namespace build_words_detail

QString stageName(ByHandStage stage)
{
    using namespace build_words_detail;
    switch (stage) {
    //: The three stages of finding a site by hand, as short words on buttons.
    case ByHandStage::Feeling: return Words::tr("Feel");
    case ByHandStage::Building: return Words::tr("Build");
    //: The stage in which the site is marked (a verb).
    case ByHandStage::Marking: return Words::tr("Mark it");
    }
    return {};
}

QString stageInstruction(ByHandStage stage, Convention convention)
{
    using namespace build_words_detail;
    switch (stage) {
    case ByHandStage::Feeling:
        return Words::tr("Feel for the %n landmark(s) this site is built from. Plant a flag on each and name "
                         "it.",
                         nullptr, static_cast<int>(askedLandmarks(convention).size()));
    case ByHandStage::Building: return buildingInstruction(convention);
    case ByHandStage::Marking: return markingInstruction(convention);
    }
    return {};
}

QString handleName(Handle handle)
{
    using namespace build_words_detail;
    switch (handle) {
    //: What can be taken hold of and moved, as short names.
    case Handle::Fingers: return Words::tr("Fingers");
    case Handle::FingersTurn: return Words::tr("Turn of the fingers");
    case Handle::BaseFront: return Words::tr("Base, front end");
    case Handle::BaseBack: return Words::tr("Base, back end");
    case Handle::Apex: return Words::tr("Apex");
    case Handle::LineTop: return Words::tr("Line, upper end");
    case Handle::LineBottom: return Words::tr("Line, lower end");
    case Handle::LineMiddle: return Words::tr("Middle of the line");
    case Handle::ThighTop: return Words::tr("Thigh, hip end");
    case Handle::ThighBottom: return Words::tr("Thigh, knee end");
    case Handle::UpperLine: return Words::tr("Line across, near the hip");
    case Handle::LowerLine: return Words::tr("Line across, near the knee");
    case Handle::FrontLine: return Words::tr("Front line");
    case Handle::OuterLine: return Words::tr("Outer line");
    case Handle::Palm: return Words::tr("Palm");
    case Handle::IndexTip: return Words::tr("Index fingertip");
    case Handle::MiddleTip: return Words::tr("Middle fingertip");
    case Handle::CornerTrochanter: return Words::tr("Corner at the trochanter");
    case Handle::CornerTubercle: return Words::tr("Corner at the tubercle");
    case Handle::CornerSpine: return Words::tr("Corner at the iliac spine");
    case Handle::FootTrochanter: return Words::tr("Line from the trochanter");
    case Handle::FootTubercle: return Words::tr("Line from the tubercle");
    case Handle::FootSpine: return Words::tr("Line from the iliac spine");
    }
    return {};
}

QString handleInstruction(Handle handle, Convention convention)
{
    using namespace build_words_detail;
    for (const QString& words :
         {armInstruction(handle), thighInstruction(handle, convention), hipInstruction(handle)})
        if (!words.isEmpty())
            return words;
    return {};
}

QString choiceName(BuildChoice choice)
{
    using namespace build_words_detail;
    switch (choice) {
    case BuildChoice::WhichHand: return Words::tr("Which hand");
    case BuildChoice::HowManyFingers: return Words::tr("How many fingers");
    //: A field of the thigh between the lines laid over it.
    case BuildChoice::WhichCell: return Words::tr("Field");
    }
    return {};
}

QString choiceInstruction(BuildChoice choice)
{
    using namespace build_words_detail;
    switch (choice) {
    case BuildChoice::WhichHand: return Words::tr("Which hand do you lay on this hip?");
    case BuildChoice::HowManyFingers: return Words::tr("How many fingers do you lay below the acromion?");
    case BuildChoice::WhichCell: return Words::tr("Which field holds the site?");
    }
    return {};
}

QString handName(Side hand)
{
    using namespace build_words_detail;
    //: The hand of whoever gives the injection.
    return hand == Side::Left ? Words::tr("Left hand") : Words::tr("Right hand");
}

QString fingerCountName(int count)
{
    using namespace build_words_detail;
    return count == 2 ? Words::tr("Two fingers") : Words::tr("Three fingers");
}

QString cellName(ThighCell cell)
{
    using namespace build_words_detail;
    //: Fields of the thigh: rows from hip to knee, columns from its inner side to its back.
    const std::array<std::array<QString, 3>, 3> names{
        {{Words::tr("Field next to the hip, on the inner side of the front line"),
          Words::tr("Field next to the hip, between front line and outer line"),
          Words::tr("Field next to the hip, behind the outer line")},
         {Words::tr("Middle field, on the inner side of the front line"),
          Words::tr("Middle field, between front line and outer line"),
          Words::tr("Middle field, behind the outer line")},
         {Words::tr("Field next to the knee, on the inner side of the front line"),
          Words::tr("Field next to the knee, between front line and outer line"),
          Words::tr("Field next to the knee, behind the outer line")}}};
    return names[static_cast<std::size_t>(cell.row)][static_cast<std::size_t>(cell.column)];
}

QString partName(const QString& word)
{
    const auto isIt = [&word](auto part) {
        const std::string_view own = wordOf(part);
        return word == QLatin1StringView(own.data(), static_cast<qsizetype>(own.size()));
    };
    for (int i = 0; i < kHandleCount; ++i)
        if (isIt(static_cast<Handle>(i)))
            return handleName(static_cast<Handle>(i));
    for (const BuildChoice choice :
         {BuildChoice::WhichHand, BuildChoice::HowManyFingers, BuildChoice::WhichCell})
        if (isIt(choice))
            return choiceName(choice);
    return {};
}

}  // namespace fb
