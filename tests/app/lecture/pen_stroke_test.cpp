#include "app/lecture/pen_stroke.h"

#include <gtest/gtest.h>

#include <QLineF>
#include <algorithm>

#include "tests/support/lecture_sample.h"

namespace fb::test::pen_stroke_test {

LectureBody bodyOf(View view, double weightKg, Side side = Side::Right)
{
    const Library& library = *lectureLibrary();
    const Site site = siteOf(view);
    return makeLectureBody(library, library.defaultPolicy(),
                           {patientOf({40.0, Sex::Female, 165.0, weightKg}, side),
                            library.defaultPolicy().convention(site), view, 0})
        .value();
}

QPointF at(Point point) { return {point.x, point.y}; }

PenStroke line(QPointF from, QPointF to, int points = 2)
{
    PenStroke stroke;
    for (int i = 0; i < points; ++i)
        stroke.points.append(from + (to - from) * (static_cast<double>(i) / (points - 1)));
    return stroke;
}

PenStroke bound(PenStroke stroke, const LectureBody& body)
{
    EXPECT_EQ(bindPoints(stroke, body, 10'000), stroke.points.size());
    return stroke;
}

TEST(PenStrokeTest, OnTheBodyItWasDrawnOnItLiesWhereItWasDrawn)
{
    for (const View view : kViews) {
        for (const Side side : kSides) {
            const LectureBody body = bodyOf(view, 65.0, side);
            const QPointF ideal = at(body.target->ideal);
            const PenStroke drawn = line(ideal - QPointF(40.0, 20.0), ideal + QPointF(40.0, 20.0), 200);
            const PenStroke stroke = bound(drawn, body);
            ASSERT_EQ(stroke.anchors.size(), 200U);
            EXPECT_EQ(stroke.points, drawn.points);
            const QVector<QPointF> shown = pointsOn(stroke, body);
            for (qsizetype i = 0; i < shown.size(); ++i)
                EXPECT_LT(QLineF(shown[i], drawn.points[i]).length(), 1e-3) << wordOf(view) << ' ' << i;
        }
    }
}

TEST(PenStrokeTest, WhatLiesOffTheBodyStaysAndTheRestGoesAlong)
{
    const LectureBody lean = bodyOf(View::ShoulderSide, 52.0);
    const LectureBody heavy = bodyOf(View::ShoulderSide, 110.0);
    const QPointF ideal = at(lean.target->ideal);
    PenStroke stroke;
    stroke.points = {ideal + QPointF(2.5, 0.0), {500.0, 500.0}};
    stroke = bound(stroke, lean);
    ASSERT_TRUE(stroke.anchors[0].has_value());
    EXPECT_FALSE(stroke.anchors[1].has_value());
    const QVector<QPointF> shown = pointsOn(stroke, heavy);
    EXPECT_GT(shown[0].x(), stroke.points[0].x() + 0.3) << "farther out on the heavier arm";
    EXPECT_EQ(shown[1], QPointF(500.0, 500.0));
}

TEST(PenStrokeTest, WithoutAnchorsItStaysWhereItIs)
{
    const PenStroke stroke = line({0.0, -3.0}, {2.0, -5.0});
    EXPECT_EQ(pointsOn(stroke, bodyOf(View::ShoulderSide, 110.0)), stroke.points);
    EXPECT_TRUE(pointsOn(PenStroke{}, bodyOf(View::ShoulderSide, 65.0)).isEmpty());
}

TEST(PenStrokeTest, ALeftSideShowsItMirrored)
{
    const LectureBody right = bodyOf(View::HipSide, 65.0);
    const LectureBody left = bodyOf(View::HipSide, 65.0, Side::Left);
    const QPointF ideal = at(right.target->ideal);
    const PenStroke stroke = bound(line(ideal, ideal + QPointF(1.0, 1.0), 10), right);
    const QVector<QPointF> shown = pointsOn(stroke, left);
    for (qsizetype i = 0; i < shown.size(); ++i) {
        EXPECT_NEAR(shown[i].x(), -stroke.points[i].x(), 1e-3);
        EXPECT_NEAR(shown[i].y(), stroke.points[i].y(), 1e-3);
    }
}

TEST(PenStrokeTest, ItIsBoundLittleByLittleAndEachPointOnce)
{
    const LectureBody lean = bodyOf(View::ShoulderSide, 52.0);
    const LectureBody heavy = bodyOf(View::ShoulderSide, 110.0);
    const QPointF ideal = at(lean.target->ideal);
    PenStroke stroke = line(ideal + QPointF(2.0, 0.0), ideal + QPointF(3.0, 0.0), 5);
    EXPECT_EQ(bindPoints(stroke, lean, 0), 0);
    EXPECT_EQ(bindPoints(stroke, lean, 3), 3);
    const auto first = stroke.anchors;
    const QVector<QPointF> half = pointsOn(stroke, heavy);
    EXPECT_GT(half[2].x(), stroke.points[2].x() + 0.1);
    EXPECT_EQ(half[3], stroke.points[3]) << "not bound yet";
    EXPECT_EQ(bindPoints(stroke, heavy, 3), 2);
    EXPECT_EQ(bindPoints(stroke, heavy, 3), 0);
    ASSERT_EQ(stroke.anchors.size(), 5U);
    EXPECT_TRUE(std::equal(first.begin(), first.end(), stroke.anchors.begin()));
    EXPECT_LT(QLineF(pointsOn(stroke, heavy)[4], stroke.points[4]).length(), 1e-3);
}

TEST(PenStrokeTest, AnEraserTouchesALineAlongAllItsLengthTheRimIncluded)
{
    const LectureBody body = bodyOf(View::ShoulderSide, 65.0);
    const PenStroke stroke = line({0.0, 0.0}, {10.0, 0.0});
    struct Row {
        QPointF at;
        bool touches;
    };
    for (const Row& row : {Row{{5.0, 0.0}, true}, Row{{5.0, 0.5}, true}, Row{{5.0, 0.51}, false},
                           Row{{-0.5, 0.0}, true}, Row{{-0.51, 0.0}, false}, Row{{10.5, 0.0}, true},
                           Row{{10.4, 0.4}, false}, Row{{10.29, 0.4}, true}, Row{{5.0, -0.6}, false}})
        EXPECT_EQ(isTouched(stroke, body, row.at, 0.5), row.touches) << row.at.x() << ',' << row.at.y();
}

TEST(PenStrokeTest, ADotIsTouchedAndNothingIsNot)
{
    const LectureBody body = bodyOf(View::ShoulderSide, 65.0);
    PenStroke dot;
    dot.points = {{1.0, 1.0}};
    EXPECT_TRUE(isTouched(dot, body, {1.0, 1.5}, 0.5));
    EXPECT_FALSE(isTouched(dot, body, {1.0, 1.6}, 0.5));
    dot.points = {{1.0, 1.0}, {1.0, 1.0}};
    EXPECT_TRUE(isTouched(dot, body, {1.0, 1.5}, 0.5)) << "a line without length";
    EXPECT_FALSE(isTouched(PenStroke{}, body, {0.0, 0.0}, 100.0));
}

}  // namespace fb::test::pen_stroke_test
