#include "app/records/replay_view.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QToolButton>

#include "app/canvas/plate_view.h"
#include "tests/support/sample_records.h"

namespace fb::test::replay_view_tests {

namespace replay_view_test {

struct Shown {
    Shown() : id(records.signedOne(0, {0.4, 2.2})) {}
    void show(int item)
    {
        open = std::make_unique<RecordsWindow>(records);
        open->unlock();
        open->presenter.openCheckOff(id);
        open->presenter.replay(item);
        ASSERT_TRUE(open->replayed());
    }
    [[nodiscard]] QString text(const char* name) { return open->find<QLabel>(name)->text(); }

    SampleRecords records;
    qint64 id;
    std::unique_ptr<RecordsWindow> open;
};

}  // namespace replay_view_test

using replay_view_test::Shown;

TEST(ReplayViewTest, ShowsThePlateTheMarkAndWhatWasRecorded)
{
    Shown shown;
    shown.show(0);
    auto* plate = shown.open->find<PlateView>("replayPlate");
    EXPECT_TRUE(plate->isVisible());
    bool hasMark = false;
    for (const SpokenItem& item : plate->spokenItems())
        hasMark = hasMark || item.kind == SpokenKind::Mark;
    EXPECT_TRUE(hasMark);
    EXPECT_EQ(shown.text("replayCounter"), QStringLiteral("Item 1 of 3"));
    EXPECT_EQ(shown.text("replayNote"),
              QStringLiteral("Graded again on the same drawing it comes to the same."));
    EXPECT_TRUE(shown.text("replayRecorded").contains(QStringLiteral(" cm")))
        << shown.text("replayRecorded").toStdString();
    EXPECT_TRUE(shown.open->find("verdict")->isVisible());
}

TEST(ReplayViewTest, GoesOnToTheNextAnswerAndPeelsByMouse)
{
    Shown shown;
    shown.show(1);
    shown.open->click("replayNext");
    ASSERT_TRUE(shown.open->replayed());
    EXPECT_EQ(shown.open->state().replay->item, 2);
    EXPECT_FALSE(shown.open->find("replayNext")->isEnabled());
    shown.open->click("peelSkin");
    EXPECT_FALSE(shown.open->find<QToolButton>("peelSkin")->isChecked());
    shown.open->click("replayBefore");
    ASSERT_TRUE(shown.open->replayed());
    EXPECT_TRUE(shown.open->find<QToolButton>("peelSkin")->isChecked()) << "another answer is shown whole";
}

TEST(ReplayViewTest, SaysPlainlyWhereDrawingOrGradeDiffer)
{
    Shown shown;
    shown.records.kept.at(shown.id).open.order.plateHashes = QStringLiteral("shoulder-side=00");
    shown.show(0);
    EXPECT_TRUE(shown.text("replayNote").startsWith(QStringLiteral("This program’s drawing differs")));
    EXPECT_TRUE(shown.open->find("verdict")->isVisible());
    shown.records.answerOfItem(shown.id, 0).distanceToIdeal = Cm{7.7};
    shown.show(0);
    EXPECT_TRUE(shown.text("replayNote").contains(QStringLiteral("what was recorded stands")));
    EXPECT_TRUE(shown.text("replayRecorded").contains(QStringLiteral("7.7 cm"))) << "the recorded number";
    EXPECT_FALSE(shown.open->find("verdict")->isVisible()) << "no grade that was not recorded";
}

TEST(ReplayViewTest, AnAnswerThatCannotBeDrawnStillTellsWhatWasRecorded)
{
    Shown shown;
    shown.records.kept.at(shown.id).open.order.policyText = QStringLiteral("{ cut");
    shown.show(0);
    EXPECT_FALSE(shown.open->find("replayPlate")->isVisible());
    EXPECT_TRUE(shown.open->find("notice")->isVisible());
    EXPECT_TRUE(shown.text("replayRecorded").contains(QStringLiteral(" cm")));
}

}  // namespace fb::test::replay_view_tests
