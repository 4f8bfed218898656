#include "app/demonstrate/lecture_face.h"

#include <gtest/gtest.h>

#include "app/demonstrate/lecture_painter_page.h"
#include "app/words/site_words.h"
#include "tests/support/lecture_faces.h"

namespace fb::test::lecture_face_test {

constexpr QSizeF kSize{1280, 720};

QStringList wordsOf(const LectureFace& face)
{
    QStringList words;
    for (const PaintedText& text : textsOf(face))
        words << text.text;
    return words;
}

qsizetype countOf(const Scene& scene, Role role)
{
    return std::count_if(scene.begin(), scene.end(),
                         [role](const SceneShape& shape) { return shape.role == role; });
}

LectureState compared(Compare compare)
{
    LectureState state = stateOf(Convention::VentroglutealHand, Stoutness::Lean);
    state.step = buildOf(state, StepCode::Region);
    state.compare = compare;
    state.beside = compare == Compare::OtherConvention
                       ? bodyFor(Convention::VentroglutealMedians, View::HipSide, Stoutness::Lean)
                       : bodyFor(Convention::VentroglutealHand, View::HipSide, Stoutness::Heavy);
    return state;
}

TEST(LectureFaceTest, ShowsTheStepThatTheStateIsAt)
{
    LectureState state = stateOf(Convention::DeltoidStrip);
    state.step = buildOf(state, StepCode::Apex);
    const LectureFace face = plainFace(state, kSize);
    ASSERT_EQ(face.panes.size(), 1U);
    const LectureLook look = lookOf(*state.shown, *state.policy, state.steps, state.step);
    EXPECT_EQ(face.panes[0].look.caption, look.caption);
    EXPECT_EQ(face.panes[0].look.scene.size(), look.scene.size());
    EXPECT_TRUE(wordsOf(face).contains(look.heading));
    EXPECT_TRUE(wordsOf(face).contains(conventionName(Convention::DeltoidStrip)));
}

TEST(LectureFaceTest, NothingButTheCautionBeforeItIsReady)
{
    const LectureFace face = plainFace(LectureState{}, kSize);
    EXPECT_FALSE(face.isReady);
    EXPECT_EQ(wordsOf(face).join(u' '), cautionSentence());
    EXPECT_FALSE(paintedFace(face).isNull());
}

TEST(LectureFaceTest, ANoticeIsNeverShownToTheRoom)
{
    LectureState state = stateOf(Convention::DeltoidStrip);
    const QImage calm = paintedFace(plainFace(state, kSize));
    state.notice = Fault{Problem::ScreenLost, {}, {}};
    EXPECT_EQ(paintedFace(plainFace(state, kSize)), calm);
}

TEST(LectureFaceTest, BlankIsDarkAndEmptyInEveryPalette)
{
    LectureState state = stateOf(Convention::DeltoidStrip);
    state.blank = true;
    for (const PaletteKind palette : kPaletteKinds) {
        const LectureFace face = plainFace(state, kSize, palette);
        EXPECT_TRUE(textsOf(face).isEmpty());
        const QImage image = paintedFace(face);
        const QRgb dark = image.pixel(0, 0);
        EXPECT_LT(qGray(dark), 40);
        QImage plain(image.size(), image.format());
        plain.fill(dark);
        EXPECT_EQ(image, plain);
    }
}

TEST(LectureFaceTest, TwoBodiesSideBySideAreSeenAtOneScale)
{
    const LectureFace face = plainFace(compared(Compare::SideBySide), kSize);
    ASSERT_EQ(face.panes.size(), 2U);
    EXPECT_EQ(frameOf(face, 0).pixelsPerCm(), frameOf(face, 1).pixelsPerCm());
    const QPointF one = frameOf(face, 0).toWidget({0, 0}) - frameOf(face, 0).sheet().topLeft();
    const QPointF other = frameOf(face, 1).toWidget({0, 0}) - frameOf(face, 1).sheet().topLeft();
    EXPECT_LT(QLineF(one, other).length(), 1.0) << "one landmark stands at the same height in both";
    EXPECT_LT(frameOf(face, 0).sheet().right(), frameOf(face, 1).sheet().left());
    EXPECT_EQ(face.panes[0].name, "Body-mass index 19");
    EXPECT_TRUE(face.panes[1].name.contains("38"));
    EXPECT_TRUE(wordsOf(face).contains(face.panes[1].name));
    EXPECT_EQ(face.panes[1].look.caption, face.panes[0].look.caption);
}

TEST(LectureFaceTest, TargetsOverEachOtherAreNamedAndMeasured)
{
    for (const Compare compare : {Compare::Overlay, Compare::OtherConvention}) {
        const LectureState state = compared(compare);
        const LectureFace face = plainFace(state, kSize);
        ASSERT_EQ(face.panes.size(), 1U);
        const Scene& extra = face.panes[0].extra;
        EXPECT_EQ(countOf(extra, Role::Region), 1);
        EXPECT_EQ(countOf(extra, Role::Other), 1);
        EXPECT_EQ(countOf(face.panes[0].look.scene, Role::Region), 0) << "it would be drawn twice";
        const bool isBodies = compare == Compare::Overlay;
        const QString other = isBodies ? QStringLiteral("Body-mass index 38")
                                       : conventionName(Convention::VentroglutealMedians);
        EXPECT_TRUE(wordsOf(face).contains(other));
    }
}

TEST(LectureFaceTest, TheRoomSeesTheRegionOnlyWhenItIsRevealed)
{
    LectureState state = stateOf(Convention::DeltoidStrip);
    RoomMark mark;
    mark.at = state.shown->target->ideal;
    mark.grade = gradeMark(*state.shown->target, *state.policy, mark.at, MarkedLimb::Arm);
    state.room = {mark};
    const Scene asked = plainFace(state, kSize).panes[0].extra;
    EXPECT_EQ(countOf(asked, Role::Region), 0);
    EXPECT_EQ(countOf(asked, Role::Landmark), 1);
    state.revealed = true;
    const Scene revealed = plainFace(state, kSize).panes[0].extra;
    EXPECT_EQ(countOf(revealed, Role::Region), 1);
    EXPECT_EQ(countOf(revealed, Role::MarkOnTarget), 1);
    state.step = buildOf(state, StepCode::Region);
    EXPECT_EQ(countOf(plainFace(state, kSize).panes[0].extra, Role::Region), 0)
        << "the step shows it already";
}

TEST(LectureFaceTest, WhileTheRoomIsAskedTheCaptionAsksAndThenCounts)
{
    LectureState state = stateOf(Convention::DeltoidStrip);
    const QString own = plainFace(state, kSize).panes[0].look.caption;
    RoomMark hit;
    hit.at = state.shown->target->ideal;
    hit.grade = gradeMark(*state.shown->target, *state.policy, hit.at, MarkedLimb::Arm);
    RoomMark beside;
    state.room = {hit, beside};
    EXPECT_EQ(plainFace(state, kSize).panes[0].look.caption, own) << "the steps go on over what was asked";
    state.tool = LectureTool::Ask;
    EXPECT_EQ(plainFace(state, kSize).panes[0].look.caption, "Where would you put the needle?");
    state.revealed = true;
    EXPECT_TRUE(plainFace(state, kSize).panes[0].look.caption.startsWith("1 of 2 "));
}

TEST(LectureFaceTest, WhatIsComparedIsSaidInTheCaption)
{
    LectureState state = compared(Compare::OtherConvention);
    state.difference = differenceOf(*state.shown->target, *state.beside->target);
    const QString apart = cmText(state.difference->apart.value());
    EXPECT_TRUE(plainFace(state, kSize).panes[0].look.caption.contains(apart));
    state = compared(Compare::Overlay);
    state.difference = TargetDifference{Cm{0.0}, Cm{0.0}, Cm{0.0}};
    EXPECT_TRUE(plainFace(state, kSize).panes[0].look.caption.startsWith("Bone decides, not weight: "));
    state.difference = TargetDifference{Cm{1.26}, Cm{1.0}, Cm{0.7}};
    EXPECT_TRUE(plainFace(state, kSize).panes[0].look.caption.contains("1.3 cm"));
}

TEST(LectureFaceTest, WhyTwoBodiesLieSoFitsThePictureAtEverySite)
{
    for (const Convention convention : kConventions) {
        LectureState state = stateOf(convention, Stoutness::Lean);
        state.compare = Compare::Overlay;
        state.beside = bodyFor(convention, state.view, Stoutness::Heavy);
        state.difference = differenceOf(*state.shown->target, *state.beside->target);
        state.step = static_cast<int>(state.steps.size()) - 1;
        for (const QSizeF size : {QSizeF(1024, 768), QSizeF(1920, 1080)}) {
            const LectureFace face = plainFace(state, size);
            EXPECT_TRUE(face.panes[0].look.caption.contains(" mm here, "));
            for (const LecturePage::Words& words : pageOf(face).words)
                EXPECT_LE(words.set.lines.size(), 4) << std::string(wordOf(convention));
        }
    }
}

TEST(LectureFaceTest, TheFrameHoldsTheWholeArea)
{
    for (const Convention convention : kConventions) {
        for (const View view : viewsOf(siteOf(convention))) {
            const LectureFace face = plainFace(stateOf(bodyFor(convention, view)), kSize);
            const ViewFrame frame = frameOf(face, 0);
            const QRectF area = face.panes[0].look.area;
            const QRectF seen = frame.cmToWidget().mapRect(area);
            EXPECT_TRUE(frame.sheet().adjusted(-1, -1, 1, 1).contains(seen))
                << std::string(wordOf(convention)) << " " << std::string(wordOf(view));
        }
    }
}

TEST(LectureFaceTest, BonesStandStillWhileWeightChanges)
{
    for (const Convention convention : kConventions) {
        for (const QSizeF size : {QSizeF(1024, 768), QSizeF(1920, 1080)}) {
            const LectureFace lean = plainFace(stateOf(convention, Stoutness::Lean), size);
            const LectureFace heavy = plainFace(stateOf(convention, Stoutness::Heavy), size);
            const auto bones = [](const LectureFace& face, const char* name) {
                const Point at = face.panes[0].body->target->landmarks.at(name);
                return frameOf(face, 0).toWidget({at.x, at.y});
            };
            const char* bone = siteOf(convention) == Site::Deltoid ? "acromion" : "greater_trochanter";
            EXPECT_LT(QLineF(bones(lean, bone), bones(heavy, bone)).length(), 0.5)
                << std::string(wordOf(convention));
            EXPECT_EQ(frameOf(lean, 0).pixelsPerCm(), frameOf(heavy, 0).pixelsPerCm());
        }
    }
}

TEST(LectureFaceTest, AFinerScreenShowsTheSameFiner)
{
    LectureState state = stateOf(Convention::VentroglutealHand);
    state.step = buildOf(state, StepCode::FingerTriangle);
    state.pointer = QPointF(0.0, 0.0);
    const LectureFace face = plainFace(state, kSize);
    const QImage plain = paintedFace(face);
    QImage fine(plain.size() * 2, QImage::Format_RGB32);
    fine.setDevicePixelRatio(2.0);
    {
        QPainter painter(&fine);
        paintLecture(painter, face);
    }
    fine.setDevicePixelRatio(1.0);
    const QImage smaller = fine.scaled(plain.size(), Qt::IgnoreAspectRatio, Qt::SmoothTransformation)
                               .convertToFormat(plain.format());
    double sum = 0.0;
    for (int y = 0; y < plain.height(); ++y)
        for (int x = 0; x < plain.width(); ++x)
            sum += std::abs(qGray(plain.pixel(x, y)) - qGray(smaller.pixel(x, y)));
    EXPECT_LT(sum / (plain.width() * plain.height()), 2.5);
}

TEST(LectureFaceTest, EveryPixelIsPainted)
{
    for (const Compare compare : {Compare::Nothing, Compare::SideBySide}) {
        LectureState state = compared(compare);
        const QImage image = paintedFace(drawnFace(plainFace(state, {1023, 767})));
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x)
                ASSERT_NE(image.pixel(x, y), QColor(Qt::magenta).rgb()) << x << ", " << y;
    }
}

TEST(LectureFaceTest, ADrawingOfAnotherMomentStandsInWhereItBelongs)
{
    const LectureState state = stateOf(Convention::DeltoidStrip);
    const LectureFace small = drawnFace(plainFace(state, {640, 360}));
    LectureFace large = plainFace(state, kSize);
    large.panes[0].drawn = small.panes[0].drawn;
    const QImage stretched = paintedFace(large);
    const QImage sharp = paintedFace(drawnFace(large));
    // Skin where skin is, paper where paper is.
    int alike = 0;
    int all = 0;
    const QRect pane = frameOf(large, 0).sheet().toRect();
    for (int y = pane.top(); y < pane.bottom(); y += 7) {
        for (int x = pane.left(); x < pane.right(); x += 7) {
            ++all;
            alike += std::abs(qGray(stretched.pixel(x, y)) - qGray(sharp.pixel(x, y))) < 24 ? 1 : 0;
        }
    }
    EXPECT_GT(alike, all * 9 / 10);
}

TEST(LectureFaceTest, StrokesLieOnTheFirstPaneAlone)
{
    LectureState state = compared(Compare::SideBySide);
    const QImage without = paintedFace(plainFace(state, kSize));
    PenStroke stroke;
    for (int i = 0; i <= 40; ++i)
        stroke.points.push_back(QPointF(-30.0 + i, 2.0));
    state.strokes = {stroke};
    const LectureFace face = plainFace(state, kSize);
    const QImage with = paintedFace(face);
    const QRect pane = frameOf(face, 0).sheet().toRect();
    int inside = 0;
    for (int y = 0; y < with.height(); ++y) {
        for (int x = 0; x < with.width(); ++x) {
            if (with.pixel(x, y) == without.pixel(x, y))
                continue;
            ASSERT_TRUE(pane.contains(x, y)) << x << ", " << y;
            ++inside;
        }
    }
    EXPECT_GT(inside, 300);
}

}  // namespace fb::test::lecture_face_test
