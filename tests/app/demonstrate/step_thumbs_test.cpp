#include "app/demonstrate/step_thumbs.h"

#include <gtest/gtest.h>

#include <set>

#include "app/practice/practice_state.h"
#include "tests/support/lecture_sample.h"

namespace fb::test::step_thumbs_test {

ThumbAsk askOf(const LectureSample& sample)
{
    return {sample.state().shown, sample.state().policy,        lectureLibrary(), sample.state().steps,
            allLayers(),          schemeOf(PaletteKind::Light), {112, 63},        1.0};
}

TEST(StepThumbsTest, OneForEachStepOfTheSizeThatIsAsked)
{
    for (const Site site : kSites) {
        const LectureSample sample(site);
        ThumbAsk ask = askOf(sample);
        ask.pixelRatio = 2.0;
        const std::vector<QImage> thumbs = paintThumbs(ask, false);
        ASSERT_EQ(thumbs.size(), ask.steps.size());
        for (const QImage& thumb : thumbs) {
            EXPECT_EQ(thumb.size(), QSize(224, 126));
            EXPECT_EQ(thumb.devicePixelRatio(), 2.0);
        }
    }
}

TEST(StepThumbsTest, EveryPressAndEveryWrongPlaceLooksLikeNoOtherStep)
{
    const LectureSample sample(Site::Ventrogluteal);
    const ThumbAsk ask = askOf(sample);
    const std::vector<QImage> thumbs = paintThumbs(ask, false);
    ASSERT_EQ(thumbs.size(), ask.steps.size());
    for (std::size_t i = 1; i < thumbs.size(); ++i)
        EXPECT_NE(thumbs[i], thumbs[i - 1]) << keyOf(ask.steps[i]);
}

TEST(StepThumbsTest, TheHandIsPaintedWhereTheLibraryHasOne)
{
    const LectureSample sample(Site::Ventrogluteal);
    ThumbAsk ask = askOf(sample);
    const std::vector<QImage> with = paintThumbs(ask, false);
    ask.library = nullptr;
    const std::vector<QImage> without = paintThumbs(ask, false);
    ASSERT_EQ(with.size(), without.size());
    int others = 0;
    for (std::size_t i = 0; i < with.size(); ++i) {
        const bool laid = lookOf(*ask.body, *ask.policy, ask.steps, static_cast<int>(i)).hand.has_value();
        EXPECT_EQ(with[i] != without[i], laid) << keyOf(ask.steps[i]);
        others += laid ? 1 : 0;
    }
    EXPECT_GT(others, 0);
}

TEST(StepThumbsTest, NothingOnceItIsCancelledOrThereIsNothingToShow)
{
    const LectureSample sample;
    EXPECT_TRUE(paintThumbs(askOf(sample), true).empty());
    ThumbAsk none = askOf(sample);
    none.body = nullptr;
    EXPECT_TRUE(paintThumbs(none, false).empty());
}

TEST(StepThumbsTest, TheSameOnlyWhereEverythingIsTheSame)
{
    const LectureSample sample;
    const ThumbAsk ask = askOf(sample);
    EXPECT_TRUE(sameThumbs(ask, askOf(sample)));
    ThumbAsk other = ask;
    other.layers.remove(Layer::Skin);
    EXPECT_FALSE(sameThumbs(ask, other));
    other = ask;
    other.scheme = schemeOf(PaletteKind::Dark);
    EXPECT_FALSE(sameThumbs(ask, other));
    other = ask;
    other.size = {100, 60};
    EXPECT_FALSE(sameThumbs(ask, other));
}

}  // namespace fb::test::step_thumbs_test
