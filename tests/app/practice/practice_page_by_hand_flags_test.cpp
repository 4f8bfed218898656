#include <gtest/gtest.h>

#include <QLabel>

#include "tests/support/by_hand_steps.h"

namespace practice_page_by_hand_flags_test {

namespace {

using namespace fb;
using namespace fb::test;

TEST(PracticePageByHandFlagsTest, FlagsBesideTheBodyAndUnknownNamesAreToldAndNothingIsLost)
{
    ByHandWindow open(Convention::VentroglutealHand);
    ASSERT_TRUE(open.isReady);
    const Landmark first = askedLandmarks(open.state().convention).front();
    const Point place = open.placeOfLandmark(first);
    auto* name = open.find<QComboBox>("flagName");
    QTest::keyClicks(name->lineEdit(), landmarkName(first));
    click(open, "plantFlag");
    EXPECT_EQ(open.state().notice->problem, Problem::NothingFelt);
    plantByMouse(open, landmarkName(first), place);
    ASSERT_EQ(open.now().flags.size(), 1U);
    const auto kept = open.now().flags;
    const QPointF corner = open.plate().toCm({12.0, 12.0});
    plantByMouse(open, landmarkName(Landmark::IliacTubercle), {corner.x(), corner.y()});
    EXPECT_EQ(open.state().notice->problem, Problem::MarkOutsideBody);
    EXPECT_EQ(open.now().flags, kept);
    plantByMouse(open, QStringLiteral("zygomatic arch"), place);
    EXPECT_EQ(open.state().notice->problem, Problem::NameUnknown);
    EXPECT_EQ(name->currentText(), QStringLiteral("zygomatic arch")) << "what was typed can be mended";
    EXPECT_EQ(open.now().flags, kept);
}

TEST(PracticePageByHandFlagsTest, ASmallSlipOfSpellingIsForgivenAndToldRight)
{
    ByHandWindow open(Convention::VentroglutealHand);
    ASSERT_TRUE(open.isReady);
    const Point place = open.placeOfLandmark(Landmark::GreaterTrochanter);
    plantByMouse(open, QStringLiteral("greater trocanter"), place);
    ASSERT_EQ(open.now().flags.size(), 1U);
    EXPECT_EQ(open.now().flags.front().name, Landmark::GreaterTrochanter);
    EXPECT_TRUE(open.find<QLabel>("planted")->text().contains(landmarkName(Landmark::GreaterTrochanter)));
    EXPECT_FALSE(open.state().notice);
}

TEST(PracticePageByHandFlagsTest, AFlagIsMovedByItsNameAndRemovedByItsButton)
{
    ByHandWindow open(Convention::VentroglutealHand);
    ASSERT_TRUE(open.isReady);
    const Point place = open.placeOfLandmark(Landmark::GreaterTrochanter);
    plantByMouse(open, landmarkName(Landmark::GreaterTrochanter), place);
    plantByMouse(open, landmarkName(Landmark::GreaterTrochanter), {place.x + 2.0, place.y});
    ASSERT_EQ(open.now().flags.size(), 1U);
    EXPECT_NEAR(open.now().flags.front().cm.x(), place.x + 2.0, 0.1);
    const QByteArray remove = "removeFlag." + QByteArray(wordOf(Landmark::GreaterTrochanter).data());
    ASSERT_TRUE(QTest::qWaitFor([&] { return open.find(remove.constData())->isVisible(); }));
    click(open, remove.constData());
    EXPECT_TRUE(open.now().flags.empty());
}

}  // namespace

}  // namespace practice_page_by_hand_flags_test
