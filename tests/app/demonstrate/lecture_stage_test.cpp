#include "app/demonstrate/lecture_stage.h"

#include <gtest/gtest.h>

#include <QPainter>
#include <QSignalSpy>
#include <QTest>

#include "tests/support/lecture_faces.h"
#include "tests/support/lecture_sample.h"

namespace fb::test::lecture_stage_test {

struct Staged : LectureSample {
    explicit Staged(Site site = Site::Ventrogluteal) : LectureSample(site), stage(presenter)
    {
        presenter.setCalm(true);
        stage.setSize({800, 450}, 1.0);
        stage.setShown(true);
    }
    [[nodiscard]] bool sharpens()
    {
        return QTest::qWaitFor([this] { return stage.isSharp(); }, 20000);
    }
    [[nodiscard]] std::shared_ptr<const Picture> drawnPicture()
    {
        const LectureFace face = stage.face();
        const auto& drawn = face.panes.front().drawn;
        return drawn ? drawn->job.picture : nullptr;
    }

    LectureStage stage;
};

TEST(LectureStageTest, BeforeTheFirstBodyThereIsPaperAndNothingIsSharp)
{
    LectureSample none(std::nullopt);
    LectureStage stage(none.presenter);
    stage.setSize({640, 360}, 1.0);
    stage.setShown(true);
    EXPECT_FALSE(stage.face().isReady);
    EXPECT_FALSE(stage.isSharp());
    EXPECT_FALSE(stage.placeAt({300, 150}));
    EXPECT_TRUE(stage.seen().isEmpty());
    QImage image(640, 360, QImage::Format_RGB32);
    QPainter painter(&image);
    stage.paint(painter);
    EXPECT_EQ(image.pixelColor(300, 150), stage.scheme().paper);
}

TEST(LectureStageTest, NothingLiesOnBarePaper)
{
    Staged staged;
    staged.presenter.goTo(staged.lastStep());
    const LectureFace bare = staged.stage.face();
    ASSERT_FALSE(bare.panes.front().drawn);
    EXPECT_TRUE(bare.panes.front().look.scene.isEmpty());
    ASSERT_TRUE(staged.sharpens());
    EXPECT_FALSE(staged.stage.face().panes.front().look.scene.isEmpty());
}

TEST(LectureStageTest, ABodyIsNeverShownOverAnothersDrawing)
{
    Staged staged;
    staged.presenter.goTo(staged.lastStep());
    ASSERT_TRUE(staged.sharpens());
    BodyValues values = staged.state().body;
    for (int i = 0; i < 12; ++i) {
        values.weightKg += 4.0;
        staged.presenter.setBody(values);
        const LecturePane pane = staged.stage.face().panes.front();
        ASSERT_TRUE(pane.drawn);
        EXPECT_EQ(pane.drawn->job.picture, pane.body->picture);
        QTest::qWait(5);
    }
    EXPECT_TRUE(QTest::qWaitFor([&] { return staged.drawnPicture() == staged.shown().picture; }));
    EXPECT_FALSE(staged.stage.isSharp()) << "a slider is still held";
    EXPECT_TRUE(staged.stage.face().panes.front().drawn->job.preview);
    staged.presenter.letGo();
    EXPECT_TRUE(staged.sharpens());
    EXPECT_FALSE(staged.stage.face().panes.front().drawn->job.preview);
}

TEST(LectureStageTest, AStepOfTheSameBodyIsShownAtOnce)
{
    Staged staged;
    ASSERT_TRUE(staged.sharpens());
    const QString before = staged.stage.face().panes.front().look.caption;
    staged.presenter.goTo(staged.lastStep());
    EXPECT_NE(staged.stage.face().panes.front().look.caption, before);
    EXPECT_TRUE(staged.stage.face().panes.front().drawn);
}

TEST(LectureStageTest, AllThatChangesAtATimeIsReadOnce)
{
    Staged staged;
    ASSERT_TRUE(staged.sharpens());
    QSignalSpy read(&staged.stage, &LectureStage::wasRead);
    for (int i = 0; i < 5; ++i)
        staged.presenter.next();
    EXPECT_EQ(read.count(), 0);
    ASSERT_TRUE(QTest::qWaitFor([&] { return read.count() > 0; }));
    EXPECT_EQ(read.count(), 1);
}

TEST(LectureStageTest, WhileASliderMovesNothingIsReadOrRepaintedBeforeThereIsANewBody)
{
    Staged staged;
    ASSERT_TRUE(staged.sharpens());
    BodyValues values = staged.state().body;
    values.weightKg += 1.0;
    staged.presenter.setBody(values);
    ASSERT_TRUE(QTest::qWaitFor([&] { return staged.drawnPicture() == staged.shown().picture; }));
    QTest::qWait(20);
    staged.bodies.holdsBack = true;
    QSignalSpy changed(&staged.stage, &LectureStage::changed);
    QSignalSpy read(&staged.stage, &LectureStage::wasRead);
    for (int i = 0; i < 9; ++i) {
        values.weightKg += 1.0;
        staged.presenter.setBody(values);
    }
    QTest::qWait(20);
    EXPECT_EQ(changed.count(), 0);
    EXPECT_EQ(read.count(), 0);
    staged.bodies.answerNewest();
    ASSERT_TRUE(QTest::qWaitFor([&] { return changed.count() > 0; }));
    EXPECT_EQ(staged.drawnPicture(), staged.shown().picture);
    EXPECT_EQ(read.count(), 1);
    staged.presenter.setBlank(true);
    EXPECT_TRUE(staged.stage.face().blank) << "what else is wished is shown at once";
}

TEST(LectureStageTest, APointerIsShownWithoutReadingAllElse)
{
    Staged staged;
    ASSERT_TRUE(staged.sharpens());
    QSignalSpy read(&staged.stage, &LectureStage::wasRead);
    QSignalSpy changed(&staged.stage, &LectureStage::changed);
    staged.presenter.point(QPointF(1, 2));
    EXPECT_EQ(staged.stage.face().pointer, QPointF(1, 2));
    QTest::qWait(20);
    EXPECT_EQ(read.count(), 0);
    EXPECT_EQ(changed.count(), 1);
}

QImage shownBy(LectureStage& stage)
{
    QImage image(800, 450, QImage::Format_RGB32);
    QPainter painter(&image);
    stage.paint(painter);
    return image;
}

TEST(LectureStageTest, WhatIsShownAgainIsWhatWouldBePaintedNow)
{
    Staged staged;
    ASSERT_TRUE(staged.sharpens());
    const auto expectTrue = [&](const char* when) {
        EXPECT_EQ(shownBy(staged.stage), paintedFace(staged.stage.face())) << when;
    };
    expectTrue("at first");
    staged.presenter.goTo(staged.lastStep());
    expectTrue("another step, its hand not yet laid");
    ASSERT_TRUE(staged.sharpens());
    expectTrue("drawn");
    for (int tool = 0; tool < kLectureToolCount; ++tool) {
        staged.presenter.setTool(static_cast<LectureTool>(tool));
        staged.presenter.setSpotlight(tool % 2 == 0);
        staged.presenter.point(staged.ideal());
        expectTrue("pointed at");
        staged.presenter.press(staged.ideal());
        staged.presenter.drag(staged.ideal() + QPointF(2, 1));
        staged.presenter.point(staged.ideal() + QPointF(2, 1));
        expectTrue("dragged");
        staged.presenter.release();
        staged.presenter.point(std::nullopt);
        expectTrue("let go");
    }
    staged.presenter.setBlank(true);
    expectTrue("blank");
    staged.presenter.setBlank(false);
    staged.stage.setScheme(schemeOf(PaletteKind::Dark));
    expectTrue("another scheme, nothing drawn");
    ASSERT_TRUE(staged.sharpens());
    expectTrue("another scheme");
}

TEST(LectureStageTest, APointerRepaintsNoMoreThanItsSigns)
{
    Staged staged;
    ASSERT_TRUE(staged.sharpens());
    staged.presenter.point(staged.ideal());
    QRegion repainted;
    QObject::connect(&staged.stage, &LectureStage::changed,
                     [&](const QRegion& where) { repainted += where; });
    staged.presenter.point(staged.ideal() + QPointF(1, 0));
    ASSERT_FALSE(repainted.isEmpty());
    EXPECT_LT(repainted.boundingRect().width(), 100);
    EXPECT_LT(repainted.boundingRect().height(), 60);
    staged.presenter.next();
    EXPECT_EQ(repainted.boundingRect(), QRect(0, 0, 800, 450));
}

TEST(LectureStageTest, AFrameOfAStepIsReadAndDrawnAsMoving)
{
    Staged staged;
    ASSERT_TRUE(staged.sharpens());
    staged.presenter.setCalm(false);
    int moving = 1;
    while (!isMoving(staged.shown(), staged.state().steps.at(static_cast<std::size_t>(moving))))
        ++moving;
    staged.presenter.goTo(moving);
    EXPECT_LT(staged.state().progress, 1.0);
    EXPECT_FALSE(staged.stage.isSharp());
    staged.clock.now += Ms{LecturePresenter::kStepMs};
    EXPECT_TRUE(staged.sharpens());
}

TEST(LectureStageTest, TwoBodiesAreBothDrawnAndOneAgainIsOne)
{
    Staged staged;
    staged.presenter.pin();
    staged.presenter.setStoutness(Stoutness::Heavy);
    ASSERT_TRUE(staged.sharpens());
    const LectureFace two = staged.stage.face();
    ASSERT_EQ(two.panes.size(), 2U);
    EXPECT_NE(two.panes[0].drawn->job.picture, two.panes[1].drawn->job.picture);
    EXPECT_FALSE(staged.stage.placeAt({600, 200})) << "only the first is pointed at";
    EXPECT_TRUE(staged.stage.placeAt({200, 200}));
    staged.presenter.unpin();
    EXPECT_TRUE(staged.sharpens());
    EXPECT_EQ(staged.stage.face().panes.size(), 1U);
}

TEST(LectureStageTest, AnotherSizeLayerSchemeOrDirectionIsDrawnAnew)
{
    Staged staged;
    ASSERT_TRUE(staged.sharpens());
    const auto becomesSharpAgain = [&](const char* what) {
        SCOPED_TRACE(what);
        EXPECT_FALSE(staged.stage.isSharp());
        EXPECT_TRUE(staged.sharpens());
    };
    staged.stage.setSize({1000, 560}, 1.0);
    becomesSharpAgain("size");
    staged.stage.setSize({1000, 560}, 2.0);
    becomesSharpAgain("fineness");
    staged.presenter.setLayerShown(Layer::Skin, false);
    becomesSharpAgain("layer");
    staged.stage.setScheme(schemeOf(PaletteKind::Projector));
    becomesSharpAgain("scheme");
    staged.stage.setDirection(Qt::RightToLeft);
    EXPECT_EQ(staged.stage.face().direction, Qt::RightToLeft);
}

TEST(LectureStageTest, WhatIsSeenIsWhatItsPlacesSay)
{
    Staged staged;
    ASSERT_TRUE(staged.sharpens());
    const QRectF seen = staged.stage.seen();
    const auto middle = staged.stage.placeAt(frameOf(staged.stage.face(), 0).sheet().center());
    ASSERT_TRUE(middle);
    EXPECT_NEAR(middle->x(), seen.center().x(), 1e-6);
    EXPECT_NEAR(middle->y(), seen.center().y(), 1e-6);
    EXPECT_TRUE(seen.contains(staged.ideal()));
}

TEST(LectureStageTest, HiddenItDrawsNothing)
{
    Staged staged;
    ASSERT_TRUE(staged.sharpens());
    staged.stage.setShown(false);
    QSignalSpy changed(&staged.stage, &LectureStage::changed);
    staged.presenter.next();
    QTest::qWait(60);
    EXPECT_EQ(changed.count(), 0);
    EXPECT_FALSE(staged.stage.face().panes.front().drawn);
}

}  // namespace fb::test::lecture_stage_test
