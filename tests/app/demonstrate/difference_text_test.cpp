#include "app/demonstrate/difference_text.h"

#include <gtest/gtest.h>

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

}  // namespace fb::test::difference_text_test
