#include "app/lecture/lecture_bones.h"

#include <gtest/gtest.h>

#include <QPainter>
#include <algorithm>

#include "tests/support/lecture_faces.h"

namespace fb::test::lecture_bones_tests {

namespace lecture_bones_test {

LectureLook lookAt(const LectureState& state, int step)
{
    return lookOf(*state.shown, *state.policy, state.steps, step);
}

QImage painted(const LectureBody& body, const LectureLook& look)
{
    constexpr double kDots = 12.0;
    QImage image((look.area.size() * kDots).toSize(), QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    const QTransform toImage = QTransform::fromTranslate(-look.area.left(), -look.area.bottom()) *
                               QTransform::fromScale(kDots, -kDots);
    paintBones(painter, body, look, schemeOf(PaletteKind::Light), toImage);
    return image;
}

int inked(const QImage& image)
{
    int count = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            count += image.pixel(x, y) != qRgb(255, 255, 255) ? 1 : 0;
    return count;
}

}  // namespace lecture_bones_test

using namespace lecture_bones_test;

TEST(LectureBonesTest, ABoneComesWithItsLandmarksStepAndStays)
{
    for (const Convention convention : {Convention::VentroglutealHand, Convention::VentroglutealMedians}) {
        for (const View view : viewsOf(Site::Ventrogluteal)) {
            const LectureState state = stateOf(bodyFor(convention, view));
            std::size_t before = 0;
            for (std::size_t i = 0; i < state.steps.size(); ++i) {
                const auto bones = bonesFound(*state.shown, state.steps[i]);
                EXPECT_GE(bones.size(), before);
                if (state.steps[i].kind == LectureStepKind::Skin ||
                    state.steps[i].kind == LectureStepKind::Press) {
                    EXPECT_EQ(bones.size(), before) << "nothing is given away before it is felt";
                }
                before = bones.size();
            }
            EXPECT_EQ(before, 3U);
        }
    }
}

TEST(LectureBonesTest, OnlyTheHipShowsThem)
{
    for (const Convention convention : kConventions) {
        if (siteOf(convention) == Site::Ventrogluteal)
            continue;
        const LectureState state = stateOf(convention);
        for (const LectureStep& step : state.steps)
            EXPECT_TRUE(bonesFound(*state.shown, step).empty());
    }
}

TEST(LectureBonesTest, TheyArePaintedFaintlyAndUnderTheHand)
{
    const LectureState state = stateOf(Convention::VentroglutealHand);
    EXPECT_EQ(inked(painted(*state.shown, lookAt(state, 0))), 0);
    const LectureLook crest = lookAt(state, buildOf(state, StepCode::FeelCrest));
    const QImage bare = painted(*state.shown, crest);
    EXPECT_GT(inked(bare), bare.width() * bare.height() / 20);
    int darkest = 255;
    for (int y = 0; y < bare.height(); ++y)
        for (int x = 0; x < bare.width(); ++x)
            darkest = std::min(darkest, qGray(bare.pixel(x, y)));
    EXPECT_GT(darkest, 60) << "fainter than the drawing's own lines";
    LectureLook laid = lookAt(state, buildOf(state, StepCode::LayPalm));
    EXPECT_LT(inked(painted(*state.shown, laid)), inked(bare));
}

}  // namespace fb::test::lecture_bones_tests
