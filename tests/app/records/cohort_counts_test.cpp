#include "app/records/cohort_counts.h"

#include <gtest/gtest.h>

#include <QLabel>

namespace fb::test::cohort_counts_test {

TEST(CohortCountsTest, EachNumberHasItsWordAndABarOfItsShare)
{
    CohortCounts counts;
    counts.setScheme(schemeOf(PaletteKind::Light));
    counts.showCount({6, 3, 2, 1, 0});
    const auto text = [&](const char* name) {
        return counts.findChild<QLabel*>(QLatin1String(name))->text();
    };
    EXPECT_EQ(text("countPassed"), QStringLiteral("6"));
    EXPECT_EQ(text("countDue"), QStringLiteral("3"));
    EXPECT_EQ(text("countNotTried"), QStringLiteral("2"));
    EXPECT_EQ(text("countOut"), QStringLiteral("1"));
    EXPECT_EQ(text("countRunning"), QStringLiteral("0"));
    EXPECT_EQ(text("wordPassed"), QStringLiteral("passed"));
    double all = 0.0;
    const auto bars = counts.findChildren<ShareBar*>();
    for (const ShareBar* bar : bars)
        all += bar->share();
    EXPECT_DOUBLE_EQ(all, 1.0);
    EXPECT_DOUBLE_EQ(bars.first()->share(), 0.5);
    counts.showCount({});
    EXPECT_DOUBLE_EQ(bars.first()->share(), 0.0) << "an empty cohort has no shares";
}

TEST(CohortCountsTest, ABarBeginsWhereReadingBegins)
{
    ShareBar bar;
    bar.resize(100, bar.height());
    bar.setColours(Qt::red, Qt::blue);
    bar.setShare(0.25);
    const auto isFirm = [&](int x) { return bar.grab().toImage().pixelColor(x, 1) == QColor(Qt::red); };
    EXPECT_TRUE(isFirm(10));
    EXPECT_FALSE(isFirm(40));
    EXPECT_FALSE(isFirm(90));
    bar.setLayoutDirection(Qt::RightToLeft);
    EXPECT_FALSE(isFirm(10));
    EXPECT_TRUE(isFirm(90));
}

}  // namespace fb::test::cohort_counts_test
