#include "app/scene/label_placement.h"

#include <gtest/gtest.h>

#include <QLineF>
#include <algorithm>

#include "app/look/type.h"
#include "core/basics/seed_stream.h"

namespace label_placement_test {

namespace {

using namespace fb;

const QRectF kPaper(0, 0, 900, 700);

LabelAsk name(const QString& text, QPointF at)
{
    return {LabelKind::Name, text, fontOf(Type::PlateLabel, 1.0), QPolygonF{at}};
}

LabelAsk word(const QString& text, const QRectF& area)
{
    return {LabelKind::Word, text, fontOf(Type::PlateWord, 1.0),
            QPolygonF{area.topLeft(), area.topRight(), area.bottomRight(), area.bottomLeft()}};
}

void expectApartOnPaper(const QVector<PlacedLabel>& placed, const QRectF& paper)
{
    for (qsizetype i = 0; i < placed.size(); ++i) {
        if (placed[i].box.isEmpty())
            continue;
        EXPECT_TRUE(paper.contains(placed[i].box)) << i;
        for (qsizetype k = 0; k < i; ++k)
            EXPECT_FALSE(placed[i].box.intersects(placed[k].box)) << i << " " << k;
    }
}

TEST(LabelPlacementTest, CrowdedLabelsNeitherOverlapNorLeaveThePaper)
{
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        SeedStream draw(seed);
        QVector<LabelAsk> asks;
        for (int i = 0; i < 12; ++i)
            asks.push_back(
                name(QString("Landmark number %1").arg(i), {draw.between(300, 600), draw.between(60, 640)}));
        asks.push_back(word("A word in an area", QRectF(320, 200, 260, 120)));
        asks.push_back({LabelKind::Plaque, "3.5 cm", fontOf(Type::Body, 1.0),
                        QPolygonF{QPointF(400, 300), QPointF(450, 360)}});
        const auto placed = placeLabels(asks, kPaper);
        ASSERT_EQ(placed.size(), asks.size());
        for (const PlacedLabel& label : placed)
            EXPECT_FALSE(label.box.isEmpty()) << seed;
        expectApartOnPaper(placed, kPaper);
    }
}

TEST(LabelPlacementTest, DoubleTextStillFits)
{
    QVector<LabelAsk> asks;
    for (int i = 0; i < 9; ++i) {
        asks.push_back(name("Acromion, front corner", {440.0 + i, 100.0 + 55 * i}));
        asks.back().font = fontOf(Type::PlateLabel, 2.0);
    }
    expectApartOnPaper(placeLabels(asks, kPaper), kPaper);
}

TEST(LabelPlacementTest, NothingCoversWhatIsTaken)
{
    const QRectF mark(420, 280, 60, 60);
    const auto placed = placeLabels(
        {word("Shoulder joint", QRectF(300, 200, 300, 220)), name("Acromion", {450, 310})}, kPaper, {mark});
    for (const PlacedLabel& label : placed)
        EXPECT_FALSE(label.box.intersects(mark));
}

TEST(LabelPlacementTest, AWordStandsInsideItsAreaWhenItFits)
{
    const QRectF area(200, 150, 400, 200);
    const auto placed = placeLabels({word("Radial nerve", area)}, kPaper);
    EXPECT_TRUE(area.contains(placed[0].box));
    EXPECT_FALSE(placed[0].hasLeader);
}

TEST(LabelPlacementTest, AWordTooWideForItsAreaIsTiedToItByALeader)
{
    const QRectF area(440, 300, 20, 40);
    const auto placed = placeLabels({word("Below armpit level: radial nerve", area)}, kPaper);
    EXPECT_TRUE(placed[0].hasLeader);
    EXPECT_TRUE(area.contains(placed[0].anchor));
    EXPECT_FALSE(area.intersects(placed[0].box));
}

TEST(LabelPlacementTest, NamesKeepTheOrderOfTheirHeights)
{
    QVector<LabelAsk> asks;
    for (int i = 0; i < 8; ++i)
        asks.push_back(name("Name", {i % 2 == 0 ? 440.0 : 460.0, 300.0 + 4 * i}));
    const auto placed = placeLabels(asks, kPaper);
    for (int i = 2; i < 8; i += 2)
        EXPECT_GT(placed[i].box.top(), placed[i - 2].box.top());
    for (int i = 3; i < 8; i += 2)
        EXPECT_GT(placed[i].box.top(), placed[i - 2].box.top());
}

TEST(LabelPlacementTest, NamesStandBesideTheBody)
{
    LabelShyness shyness;
    shyness.body = {QRectF(330, 0, 260, 700)};
    const auto placed = placeLabels({name("Acromion", {400, 200}), name("Armpit, front fold", {500, 330})},
                                    kPaper, {}, shyness);
    for (const PlacedLabel& label : placed) {
        EXPECT_FALSE(label.box.intersects(shyness.body[0]));
        EXPECT_FALSE(label.onBody);
    }
}

TEST(LabelPlacementTest, WhereTheBodyFillsThePaperNamesSayThatTheyStandOnIt)
{
    LabelShyness shyness;
    shyness.body = {kPaper};
    EXPECT_TRUE(placeLabels({name("Acromion", {400, 200})}, kPaper, {}, shyness)[0].onBody);
}

TEST(LabelPlacementTest, WhatLiesOffThePaperHasNoLabel)
{
    const auto placed = placeLabels(
        {name("Far", {-50, 200}), word("Far", QRectF(1000, 100, 200, 200)), name("Near", {200, 200})},
        kPaper);
    EXPECT_TRUE(placed[0].box.isEmpty());
    EXPECT_TRUE(placed[1].box.isEmpty());
    EXPECT_FALSE(placed[2].box.isEmpty());
}

TEST(LabelPlacementTest, ALevelOrUprightArrowHasItsLengthBesideIt)
{
    for (const QLineF& line : {QLineF(400, 300, 470, 300), QLineF(400, 300, 400, 370)}) {
        const QPolygonF ends{line.p1(), line.p2()};
        const auto placed =
            placeLabels({{LabelKind::Plaque, "2.4 cm", fontOf(Type::Body, 1.0), ends}}, kPaper);
        ASSERT_EQ(placed.size(), 1);
        EXPECT_FALSE(placed[0].box.isEmpty());
    }
}

TEST(LabelPlacementTest, ListedNamesStandUnderOneAnotherWithoutLeaders)
{
    QVector<LabelAsk> asks;
    for (int i = 0; i < 9; ++i)
        asks.push_back({LabelKind::Listed, QString("Name %1").arg(i), fontOf(Type::PlateLabel, 1.0), {}});
    const auto placed = placeLabels(asks, kPaper);
    for (qsizetype i = 0; i < placed.size(); ++i) {
        EXPECT_FALSE(placed[i].hasLeader);
        EXPECT_GT(placed[i].box.top(), i > 0 ? placed[i - 1].box.top() : 0.0);
    }
    expectApartOnPaper(placed, kPaper);
}

TEST(LabelPlacementTest, WithoutRoomForAllOfThemNoneLiesOverAnother)
{
    const QRectF small(0, 0, 260, 150);
    QVector<LabelAsk> asks;
    for (int i = 0; i < 14; ++i) {
        asks.push_back(name(QString("Landmark number %1").arg(i), {100.0 + i, 20.0 + 8 * i}));
        asks.push_back({LabelKind::Listed, QString("Name %1").arg(i), fontOf(Type::PlateLabel, 1.0), {}});
    }
    const auto placed = placeLabels(asks, small);
    ASSERT_EQ(placed.size(), asks.size());
    expectApartOnPaper(placed, small);
    EXPECT_TRUE(std::ranges::any_of(placed, [](const PlacedLabel& label) { return !label.box.isEmpty(); }));
}

TEST(LabelPlacementTest, TheOneFreePlaceIsFoundWhereverItIs)
{
    const QSizeF size = placeLabels({name("Acromion", {450, 350})}, kPaper)[0].box.size();
    const QRectF hole(QPointF(701.3, 37.7), size + QSizeF(9, 3));
    const QVector<QRectF> taken{QRectF(0, 0, 900, hole.top()), QRectF(0, hole.bottom(), 900, 700),
                                QRectF(0, 0, hole.left(), 700),
                                QRectF(QPointF(hole.right(), 0), QPointF(900, 700))};
    EXPECT_TRUE(hole.contains(placeLabels({name("Acromion", {450, 350})}, kPaper, taken)[0].box));
}

TEST(LabelPlacementTest, ANameStandsInTheNearerColumn)
{
    LabelShyness shyness;
    shyness.body = {QRectF(330, 0, 260, 700)};
    QVector<LabelAsk> asks;
    for (int i = 0; i < 4; ++i)
        asks.push_back(name("Lateral femoral condyle", {520.0 + 15 * i, 100.0 + 120 * i}));
    for (const PlacedLabel& label : placeLabels(asks, kPaper, {}, shyness))
        EXPECT_GT(label.box.left(), 590);
}

TEST(LabelPlacementTest, AColumnThatIsFullLeavesTheRestToTheOther)
{
    QVector<LabelAsk> asks{name("Far left", {200, 350})};
    for (int i = 0; i < 40; ++i)
        asks.push_back(name(QString("Name %1").arg(i), {500.0 + i, 300.0 + i}));
    const auto placed = placeLabels(asks, kPaper);
    for (const PlacedLabel& label : placed)
        EXPECT_FALSE(label.box.isEmpty());
    expectApartOnPaper(placed, kPaper);
    EXPECT_TRUE(std::any_of(placed.begin() + 1, placed.end(),
                            [](const PlacedLabel& label) { return label.box.right() < 300; }));
}

TEST(LabelPlacementTest, SameAskSamePlace)
{
    const QVector<LabelAsk> asks{name("Acromion", {400, 200}), word("Nerve", QRectF(300, 300, 200, 100))};
    const auto first = placeLabels(asks, kPaper);
    const auto second = placeLabels(asks, kPaper);
    for (qsizetype i = 0; i < asks.size(); ++i)
        EXPECT_EQ(first[i].box, second[i].box);
}

}  // namespace

}  // namespace label_placement_test
