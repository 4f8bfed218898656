#include "app/demonstrate/difference_text.h"

#include <gtest/gtest.h>

#include "tests/support/lecture_faces.h"

namespace fb::test::difference_text_test {

TargetDifference difference(double apart, double lower, double forward)
{
    return {Cm{apart}, Cm{lower}, Cm{forward}};
}

TEST(DifferenceTextTest, TheDistanceToTheMillimetre)
{
    EXPECT_EQ(apartText(difference(1.44, 1.2, 0.6)), QStringLiteral("Ideal points 1.4 cm apart"));
    EXPECT_EQ(apartText(difference(0.04, 0.0, 0.04)), QStringLiteral("Ideal points in the same place"));
}

TEST(DifferenceTextTest, WhichWayTheOtherLies)
{
    struct Row {
        double lower, forward;
        const char* words;
    };
    for (const Row& row : std::initializer_list<Row>{{1.2, 0.6, "1.2 cm lower and 0.6 cm further forward"},
                                                     {-1.2, 0.6, "1.2 cm higher and 0.6 cm further forward"},
                                                     {1.2, -0.6, "1.2 cm lower and 0.6 cm further back"},
                                                     {-1.2, -0.6, "1.2 cm higher and 0.6 cm further back"},
                                                     {2.0, 0.02, "2.0 cm lower"},
                                                     {0.02, -0.3, "0.3 cm further back"}}) {
        const TargetDifference at = difference(1.4, row.lower, row.forward);
        EXPECT_EQ(whereText(at, Compare::SideBySide),
                  QStringLiteral("The pinned body's lies %1.").arg(QLatin1String(row.words)));
        EXPECT_EQ(whereText(at, Compare::OtherConvention),
                  QStringLiteral("The other convention's lies %1.").arg(QLatin1String(row.words)));
    }
}

TEST(DifferenceTextTest, NothingWhereNothingDiffersOrIsCompared)
{
    EXPECT_EQ(whereText(difference(0.0, 0.0, 0.0), Compare::Overlay), QString());
    EXPECT_EQ(whereText(difference(1.0, 1.0, 0.0), Compare::Nothing), QString());
}

std::string whyOf(Convention convention, const BodyValues& shown, const BodyValues& pinned)
{
    const View view = askedViews(siteOf(convention)).front();
    const auto made = [&](const BodyValues& values) {
        const BodyAsk ask{patientOf(values, Side::Right), convention, view, 0};
        return makeLectureBody(*facesLibrary(), facesLibrary()->defaultPolicy(), ask).value();
    };
    const LectureBody one = made(shown);
    const LectureBody other = made(pinned);
    return whyText(one, other, differenceOf(*one.target, *other.target)).toStdString();
}

TEST(DifferenceTextTest, WhyTwoBodiesOfOneStatureDifferIsSaidTrulyAtEverySite)
{
    const BodyValues lean = withStoutness({}, Stoutness::Lean);
    const BodyValues heavy = withStoutness({}, Stoutness::Heavy);
    EXPECT_EQ(
        whyOf(Convention::VentroglutealHand, lean, heavy),
        "Bone decides, not weight: the ideal points lie 0.0 cm apart. Skin and fat over the muscle: 8 mm "
        "here, 51 mm on the pinned body.");
    EXPECT_EQ(
        whyOf(Convention::DeltoidStrip, heavy, lean),
        "Bone decides, not weight: the ideal points lie 0.0 cm apart. Skin and fat over the muscle: 16 mm "
        "here, 8 mm on the pinned body.");
    EXPECT_EQ(
        whyOf(Convention::VastusThirds, lean, heavy),
        "The lines start from bone, but their middle lies on the skin: on the thicker thigh 1.8 cm farther "
        "round. Skin and fat: 10 mm here, 19 mm on the pinned body.");
}

TEST(DifferenceTextTest, OfBodiesThatDifferInMoreThanWeightItTellsTheFatAlone)
{
    BodyValues tall;
    tall.statureCm = 190.0;
    for (const Convention convention : kConventions)
        EXPECT_EQ(whyOf(convention, {}, tall).rfind("Skin and fat over the muscle: ", 0), 0U);
}

}  // namespace fb::test::difference_text_test
