#include "app/records/list_view.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QDateEdit>
#include <QLabel>
#include <QTableView>

#include "tests/support/sample_records.h"

namespace fb::test::list_view_tests {

namespace list_view_test {

struct Listed {
    Listed()
    {
        records.clock.day = records.clock.day.addDays(-40);
        old = records.signedOne(0, {}, Seen::NotDone);
        records.clock.day = records.clock.day.addDays(40);
        fresh = records.signedOne(1, {});
        open = std::make_unique<RecordsWindow>(records);
        open->unlock();
        open->click("areaCheckOffs");
    }
    [[nodiscard]] int rows() { return open->find<QTableView>("listTable")->model()->rowCount(); }
    [[nodiscard]] QString name(int row)
    {
        return open->find<QTableView>("listTable")
            ->model()
            ->index(row, ListModel::NameColumn)
            .data()
            .toString();
    }
    void choose(const char* box, int down)
    {
        auto* combo = open->find<QComboBox>(box);
        combo->setFocus();
        QTest::keyClick(combo, Qt::Key_Home);
        for (int i = 0; i < down; ++i)
            QTest::keyClick(combo, Qt::Key_Down);
        open->rest();
    }

    SampleRecords records;
    qint64 old = 0, fresh = 0;
    std::unique_ptr<RecordsWindow> open;
};

}  // namespace list_view_test

using list_view_test::Listed;

TEST(ListViewTest, NewestFirstAndEnterOpensOne)
{
    Listed listed;
    ASSERT_EQ(listed.rows(), 2);
    EXPECT_EQ(listed.name(0), QStringLiteral("Abbot, Theo"));
    EXPECT_TRUE(listed.open->find<QLabel>("listRows")->text().startsWith(QStringLiteral("2 check-off")));
    ASSERT_TRUE(listed.open->tabTo("listTable"));
    QTest::keyClick(listed.open->find("listTable"), Qt::Key_Down);
    QTest::keyClick(listed.open->find("listTable"), Qt::Key_Return);
    ASSERT_NE(listed.open->state().opened, nullptr);
    EXPECT_EQ(listed.open->state().opened->file.line.id, listed.old);
}

TEST(ListViewTest, WordsAreSearchedWhenTypingRests)
{
    Listed listed;
    listed.open->type("listWords", "marl");
    ASSERT_TRUE(QTest::qWaitFor([&] { return listed.rows() == 1; }, 3000));
    EXPECT_EQ(listed.name(0), QStringLiteral("Marlow, Rosa"));
    EXPECT_EQ(listed.open->state().filter.words, QStringLiteral("marl"));
}

TEST(ListViewTest, SheetOutcomeAndDaysNarrowIt)
{
    Listed listed;
    listed.choose("listOutcome", 1 + static_cast<int>(Outcome::FailCritical));
    ASSERT_EQ(listed.rows(), 1);
    EXPECT_EQ(listed.name(0), QStringLiteral("Marlow, Rosa"));
    listed.choose("listOutcome", 0);
    listed.choose("listSpan", 3);
    ASSERT_EQ(listed.rows(), 1) << "in the last 30 days";
    EXPECT_EQ(listed.name(0), QStringLiteral("Abbot, Theo"));
    EXPECT_FALSE(listed.open->find("listFrom")->isVisible());
    listed.choose("listSpan", 4);
    ASSERT_TRUE(listed.open->find("listFrom")->isVisible());
    const QDate day = listed.records.kept.at(listed.old).at.toLocalTime().date();
    listed.open->find<QDateEdit>("listTo")->setDate(day);
    listed.open->find<QDateEdit>("listFrom")->setDate(day.addDays(1));
    EXPECT_TRUE(QTest::qWaitFor(
        [&] { return listed.rows() == 1 && listed.name(0) == QStringLiteral("Marlow, Rosa"); }, 3000))
        << "days the wrong way round are turned";
    listed.choose("listSpan", 0);
    listed.choose("listSheet", 1);
    EXPECT_EQ(listed.rows(), 2);
    EXPECT_EQ(listed.open->state().filter.sheet, listed.records.current);
}

}  // namespace fb::test::list_view_tests
