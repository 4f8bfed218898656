#include "app/demonstrate/pane_painter.h"

#include <gtest/gtest.h>

#include "tests/support/pane_sample.h"

namespace fb::test::pane_painter_test {

const std::atomic_bool kNever = false;

// Where two images differ, pixels.
QRect differs(const QImage& a, const QImage& b)
{
    QRect box;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x)
            if (a.pixel(x, y) != b.pixel(x, y))
                box |= QRect(x, y, 1, 1);
    return box;
}

TEST(PanePainterTest, ASoonImageIsAsLargeAsASharpOneAndSaysWhatItIs)
{
    PaneJob job = paneJob(stateOf(Convention::DeltoidStrip), 0);
    job.pixelRatio = 1.5;
    PanePainter painter;
    const InkResult soon = painter.quick(job);
    const auto sharp = painter.sharp(job, kNever);
    ASSERT_TRUE(sharp);
    EXPECT_EQ(soon.image.size(), sharp->image.size());
    EXPECT_EQ(soon.image.devicePixelRatio(), 1.5);
    EXPECT_EQ(sharp->image.devicePixelRatio(), 1.5);
    EXPECT_TRUE(soon.job.preview);
    EXPECT_FALSE(sharp->job.preview);
    EXPECT_EQ(sharp->job.frame, job.frame);
    EXPECT_NE(soon.image, sharp->image);
}

TEST(PanePainterTest, SharpIsWhatTheInkWorkerPaints)
{
    const PaneJob job = handJob();
    InkJob ink;
    ink.picture = job.pane.body->picture;
    ink.frame = job.frame;
    ink.scheme = job.scheme;
    ink.layers = job.layers;
    PaneJob bare = job;
    bare.pane.look.hand.reset();
    bare.pane.look.bones.clear();
    EXPECT_EQ(PanePainter().sharp(bare, kNever)->image, paintedImage(ink, ReadyInk(*ink.picture), kNever));
}

TEST(PanePainterTest, BonesThatAreFoundLieUnderTheSkinAndGoWithIt)
{
    PaneJob bare = handJob();
    bare.pane.look.hand.reset();
    bare.pane.look.bones.clear();
    PaneJob found = bare;
    found.pane.look.bones = {"bone.pelvis.ilium"};
    EXPECT_FALSE(sameDrawing(bare, found));
    PanePainter painter;
    const QImage soonBare = painter.quick(bare).image.copy();
    EXPECT_FALSE(differs(soonBare, painter.quick(found).image).isEmpty()) << "soon as well";
    const QImage without = painter.sharp(bare, kNever)->image.copy();
    const QImage with = painter.sharp(found, kNever)->image.copy();
    const QRect box = differs(without, with);
    EXPECT_GT(box.width() * box.height(), 1000);
    EXPECT_LT(box.width(), with.width()) << "nowhere but where the bone lies";
    EXPECT_EQ(painter.sharp(bare, kNever)->image, without) << "gone again";
    EXPECT_FALSE(painter.isSlow(found)) << "the body is there: bones are laid on it at once";
    for (PaneJob* each : {&bare, &found})
        each->layers.remove(Layer::Skin);
    EXPECT_EQ(painter.sharp(bare, kNever)->image.copy(), painter.sharp(found, kNever)->image)
        << "without skin they are seen anyway";
}

TEST(PanePainterTest, AHandLiesWhereItsPoseSaysAndNowhereElse)
{
    const PaneJob with = handJob();
    PaneJob without = with;
    without.pane.look.hand.reset();
    PanePainter painter;
    const QRect box = differs(painter.sharp(with, kNever)->image, painter.sharp(without, kNever)->image);
    const HandPose& pose = *with.pane.look.hand;
    const QPointF corner = with.frame.sheet().topLeft();
    const auto at = [&](Point p) { return (with.frame.toWidget({p.x, p.y}) - corner).toPoint(); };
    EXPECT_TRUE(box.contains(at(pose.wrist)));
    EXPECT_TRUE(box.adjusted(-2, -2, 2, 2).contains(at(pose.indexTip)));
    const double reach = 1.2 * pose.length.value() * with.frame.pixelsPerCm();
    EXPECT_LT(box.width(), 2.0 * reach);
    EXPECT_LT(box.height(), 2.0 * reach);
}

TEST(PanePainterTest, UnderAMovingHandTheBodyStaysSharpAndTheHandBecomesIt)
{
    const PaneJob laid = handJob();
    PaneJob bare = laid;
    bare.pane.look.hand.reset();
    PanePainter painter;
    const QImage body = painter.sharp(bare, kNever)->image;
    const InkResult first = painter.quick(movedHand(laid, 3.0));
    EXPECT_TRUE(first.job.preview) << "drawn quickly, so that it comes at once";
    const InkResult second = painter.quick(movedHand(laid, 2.0));
    EXPECT_FALSE(second.job.preview) << "its form has not changed: it is worth drawing in full";
    for (const InkResult& result : {first, second})
        EXPECT_EQ(result.image.pixel(3, 3), body.pixel(3, 3));
    const QRect moved = differs(first.image, second.image);
    EXPECT_LT(moved.width(), body.width());
    EXPECT_FALSE(moved.isEmpty());
}

TEST(PanePainterTest, FingersAreLaidAsAHandIs)
{
    const LectureState state = stateOf(Convention::DeltoidFingers);
    const PaneJob with = paneJob(state, buildOf(state, StepCode::LayFingers));
    ASSERT_TRUE(with.pane.look.fingers);
    PaneJob without = with;
    without.pane.look.fingers.reset();
    PanePainter painter;
    const QRect box = differs(painter.sharp(with, kNever)->image, painter.sharp(without, kNever)->image);
    const Point top = with.pane.look.fingers->top;
    EXPECT_TRUE(box.contains((with.frame.toWidget({top.x, top.y}) - with.frame.sheet().topLeft()).toPoint() +
                             QPoint(0, 3)));
}

TEST(PanePainterTest, WithoutALibraryThereIsABodyAndNoHand)
{
    PaneJob job = handJob();
    PanePainter painter;
    const QImage with = painter.sharp(job, kNever)->image;
    job.library = nullptr;
    EXPECT_NE(painter.sharp(job, kNever)->image, with);
}

TEST(PanePainterTest, OnlyWhatIsNotThereYetIsSlow)
{
    const PaneJob laid = handJob();
    PanePainter painter;
    EXPECT_TRUE(painter.isSlow(laid));
    ASSERT_TRUE(painter.sharp(laid, kNever));
    EXPECT_FALSE(painter.isSlow(laid));
    PaneJob other = laid;
    other.layers.remove(Layer::Cloth);
    EXPECT_TRUE(painter.isSlow(other));
    other = movedHand(laid, 1.0);
    other.moving = false;
    EXPECT_FALSE(painter.isSlow(other)) << "a hand that only lies elsewhere is not drawn anew";
}

TEST(PanePainterTest, ACancelledSharpOneIsNone)
{
    const std::atomic_bool cancelled = true;
    EXPECT_FALSE(PanePainter().sharp(handJob(), cancelled));
}

TEST(PanePainterTest, AnImageThatSomebodyHasIsNeverPaintedOver)
{
    const PaneJob laid = handJob();
    PanePainter painter;
    const InkResult held = painter.quick(movedHand(laid, 6.0));
    const QImage as = held.image.copy();
    for (int i = 0; i < 8; ++i)
        static_cast<void>(painter.quick(movedHand(laid, 0.5 * i)));
    EXPECT_EQ(held.image, as);
}

TEST(PanePainterTest, WhatIsPaintedDecidesWhetherTwoAreTheSameDrawing)
{
    const PaneJob job = handJob();
    EXPECT_TRUE(sameDrawing(job, job));
    PaneJob other = job;
    other.pane.look.caption = QStringLiteral("Words are no part of it.");
    EXPECT_TRUE(sameDrawing(job, other));
    EXPECT_FALSE(sameDrawing(job, movedHand(job, 1.0)));
    other = job;
    other.pixelRatio = 2.0;
    EXPECT_FALSE(sameDrawing(job, other));
    other = job;
    other.scheme = schemeOf(PaletteKind::Dark);
    EXPECT_FALSE(sameDrawing(job, other));
    other = job;
    other.layers.remove(Layer::Skin);
    EXPECT_FALSE(sameDrawing(job, other));
    other = job;
    other.pane.body = bodyFor(Convention::VentroglutealHand, View::HipSide, Stoutness::Heavy);
    EXPECT_FALSE(sameDrawing(job, other));
}

}  // namespace fb::test::pane_painter_test
