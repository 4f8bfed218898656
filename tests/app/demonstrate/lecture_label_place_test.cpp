#include "app/demonstrate/lecture_label_place.h"

#include <gtest/gtest.h>

#include <QFontMetricsF>

#include "app/demonstrate/lecture_painter_labels.h"

namespace fb::test::lecture_label_place_tests {

namespace lecture_label_place_test {

const QRectF kPaper(0, 0, 900, 400);

NameGround bare() { return {kPaper, {}, {}, {}, {}}; }
LabelAsk point(QPointF at, const QString& text = QStringLiteral("Greater trochanter"))
{
    return {LabelKind::Name, text, labelFont(true), {at}};
}

}  // namespace lecture_label_place_test

using namespace lecture_label_place_test;

TEST(LectureLabelPlaceTest, ANameStandsBesideItsPointAndNotOnIt)
{
    for (const QPointF at : {QPointF(450, 200), QPointF(5, 5), QPointF(895, 395), QPointF(450, 2)}) {
        const auto placed = placeName(point(at), bare());
        ASSERT_TRUE(placed.has_value());
        EXPECT_TRUE(kPaper.contains(placed->box));
        EXPECT_FALSE(placed->box.adjusted(-10, -10, 10, 10).contains(at));
        EXPECT_LT(QLineF(placed->box.center(), at).length(), 220.0);
        EXPECT_TRUE(placed->hasLeader);
        EXPECT_EQ(placed->anchor, at);
    }
}

TEST(LectureLabelPlaceTest, ItKeepsClearOfHandRegionAndWhatIsTaken)
{
    NameGround ground = bare();
    ground.laid = {{{300, 200}, {600, 200}, 45.0}};
    const QRectF region(380, 60, 140, 70);
    ground.areas = {QPolygonF(region)};
    ground.taken = {QRectF(0, 260, 900, 40)};
    const LabelAsk finger{
        LabelKind::Plaque, QStringLiteral("Middle finger"), labelFont(true), {{300, 200}, {600, 200}}};
    const auto placed = placeName(finger, ground);
    ASSERT_TRUE(placed.has_value());
    EXPECT_FALSE(placed->box.intersects(QRectF(300, 158, 300, 84)));
    EXPECT_FALSE(placed->box.intersects(region.adjusted(4, 4, -4, -4)));
    EXPECT_FALSE(placed->box.intersects(ground.taken.front()));
    EXPECT_NEAR(placed->anchor.y(), 200.0, 1e-9) << "the leader ends on the finger";
}

TEST(LectureLabelPlaceTest, TheLeaderOfAnAreaEndsWithinIt)
{
    const QPolygonF area{{300, 100}, {600, 100}, {450, 300}};
    const LabelAsk ask{LabelKind::Word, QStringLiteral("Target region"), labelFont(true), area};
    NameGround ground = bare();
    ground.areas = {area};
    const auto placed = placeName(ask, ground);
    ASSERT_TRUE(placed.has_value());
    EXPECT_TRUE(area.containsPoint(placed->anchor, Qt::OddEvenFill));
    EXPECT_TRUE(area.intersected(QPolygonF(placed->box)).isEmpty());
}

TEST(LectureLabelPlaceTest, WhatIsOffThePaperOrFindsNoPlaceHasNone)
{
    EXPECT_FALSE(placeName(point({-20, 100}), bare()).has_value());
    NameGround full = bare();
    full.taken = {kPaper};
    EXPECT_FALSE(placeName(point({450, 200}), full).has_value());
    EXPECT_FALSE(
        placeName({LabelKind::Plaque, QStringLiteral("Base"), labelFont(true), {}}, bare()).has_value());
}

TEST(LectureLabelPlaceTest, LinesComeOutAboutAsLong)
{
    const auto placed =
        placeName(point({450, 200}, QStringLiteral("Posterior superior iliac spine")), bare());
    ASSERT_TRUE(placed.has_value());
    const double whole =
        QFontMetricsF(labelFont(true)).horizontalAdvance(QStringLiteral("Posterior superior iliac spine"));
    EXPECT_LT(placed->box.width(), 0.72 * whole);
}

}  // namespace fb::test::lecture_label_place_tests
