#include "app/demonstrate/lecture_painter_page.h"

#include <gtest/gtest.h>

#include "app/words/site_words.h"
#include "tests/support/lecture_faces.h"

namespace fb::test::lecture_painter_page_test {

constexpr QSizeF kSizes[]{{1024, 768}, {1280, 720}, {1920, 1080}, {3840, 2160}};

TEST(LecturePainterPageTest, PlacesKeepTheirSharesOnEveryScreen)
{
    const LecturePlan small = lecturePlan({1920, 1080}, 1, Qt::LeftToRight);
    const LecturePlan large = lecturePlan({3840, 2160}, 1, Qt::LeftToRight);
    EXPECT_NEAR(large.unit, 2.0 * small.unit, 1e-9);
    EXPECT_NEAR(large.caption.top(), small.caption.top(), 1e-6);
    EXPECT_NEAR(large.panes[0].height(), small.panes[0].height(), 1e-6);
}

TEST(LecturePainterPageTest, PlacesStandUnderEachOtherAndWithinThePicture)
{
    for (const QSizeF size : kSizes) {
        for (const int panes : {1, 2}) {
            const LecturePlan plan = lecturePlan(size, panes, Qt::LeftToRight);
            EXPECT_GE(plan.heading.top(), 0.0);
            EXPECT_GT(plan.panes[0].top(), plan.heading.bottom());
            EXPECT_GT(plan.caption.top(), plan.panes[0].bottom());
            EXPECT_GT(plan.caution.top(), plan.caption.bottom());
            EXPECT_LE(plan.caution.bottom(), plan.size.height());
            // About half of the height is the patient's, and mostly more.
            EXPECT_GT(plan.panes[0].height(), plan.size.height() * (panes == 1 ? 0.55 : 0.45));
            EXPECT_EQ(plan.panes.size(), panes);
            EXPECT_EQ(plan.names.size(), panes == 1 ? 0 : 2);
        }
    }
}

TEST(LecturePainterPageTest, TheFirstPaneStandsWhereReadingBegins)
{
    const LecturePlan left = lecturePlan({1280, 720}, 2, Qt::LeftToRight);
    const LecturePlan right = lecturePlan({1280, 720}, 2, Qt::RightToLeft);
    EXPECT_LT(left.panes[0].right(), left.panes[1].left());
    EXPECT_GT(right.panes[0].left(), right.panes[1].right());
    EXPECT_EQ(left.names[1].left(), left.panes[1].left());
}

TEST(LecturePainterPageTest, TheCautionIsThereEvenBeforeAPlateIs)
{
    LectureFace face;
    face.size = {1280, 720};
    face.scheme = schemeOf(PaletteKind::Light);
    face.isReady = false;
    const LecturePage page = pageOf(face);
    ASSERT_EQ(page.words.size(), 1);
    QStringList words;
    for (const SetLines::Line& line : page.words[0].set.lines)
        words << line.text;
    EXPECT_EQ(words.join(u' '), cautionSentence());
}

TEST(LecturePainterPageTest, ABlankPictureHasNoWords)
{
    LectureState state = stateOf(Convention::DeltoidStrip);
    state.blank = true;
    EXPECT_TRUE(pageOf(plainFace(state, {1280, 720})).words.isEmpty());
}

TEST(LecturePainterPageTest, AShortCaptionLeavesThePlateAloneAndALongOneGrowsUpward)
{
    LectureFace face = plainFace(stateOf(Convention::DeltoidStrip), {1280, 720});
    const auto captionOf = [&](const QString& text) {
        face.panes[0].look.caption = text;
        return pageOf(face);
    };
    const auto backed = [](const LecturePage& page) {
        return std::count_if(page.words.begin(), page.words.end(),
                             [](const LecturePage::Words& words) { return !words.backing.isEmpty(); });
    };
    EXPECT_EQ(backed(captionOf("One line.")), 0);
    const LecturePage longer =
        captionOf(QStringLiteral("A caption that needs many words to say it. ").repeated(5));
    ASSERT_EQ(backed(longer), 1);
    for (const LecturePage::Words& words : longer.words) {
        if (words.backing.isEmpty())
            continue;
        EXPECT_LT(words.backing.top(), longer.plan.panes[0].bottom());
        EXPECT_TRUE(words.backing.adjusted(-1, -1, 1, 1).contains(words.set.box));
        EXPECT_LE(words.set.box.bottom(), longer.plan.caution.top());
    }
}

TEST(LecturePainterPageTest, LabelsKeepOffWordsThatReachOverThePlate)
{
    LectureState state = stateOf(Convention::DeltoidStrip);
    state.step = stepOf(state, LectureStepKind::Hazards);
    LectureFace face = plainFace(state, {1280, 720});
    face.panes[0].look.caption = QStringLiteral("A caption that needs many words to say it. ").repeated(5);
    const LecturePage page = pageOf(face);
    for (const LecturePage::Words& words : page.words)
        for (const LectureLabel& label : page.panes[0].labels)
            EXPECT_FALSE(label.placed.box.intersects(words.backing));
}

TEST(LecturePainterPageTest, WordsOfAPressHaveAPlaceOfTheirOwn)
{
    LectureState state = stateOf(Convention::VentroglutealHand);
    state.step = stepOf(state, LectureStepKind::Press);
    const LecturePage page = pageOf(plainFace(state, {1280, 720}));
    EXPECT_FALSE(page.panes[0].pressWords.isEmpty());
    EXPECT_TRUE(page.panes[0].place.contains(page.panes[0].pressWords));
    EXPECT_FALSE(page.panes[0].pressText.isEmpty());
}

}  // namespace fb::test::lecture_painter_page_test
