#include "app/records/records_table.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QSortFilterProxyModel>
#include <QStandardItemModel>
#include <QTest>

#include "app/look/palette.h"

namespace fb::test::records_table_tests {

namespace records_table_test {

struct Table {
    Table()
    {
        for (const char* name : {"Young", "Abbot", "Marlow"})
            model.appendRow(
                {new QStandardItem(QString::fromLatin1(name)), new QStandardItem(QStringLiteral("x"))});
        sorted.setSourceModel(&model);
        table.setScheme(schemeOf(PaletteKind::Light));
        table.resize(600, 300);
        table.use(sorted, 0, Qt::AscendingOrder, {QStringLiteral("Featherstonehaugh of Marchbanks"), QStringLiteral("xx")});
        table.show();
        isReady = QTest::qWaitForWindowActive(&table);
    }
    QStandardItemModel model;
    QSortFilterProxyModel sorted;
    RecordsTable table{"aTable"};
    bool isReady = false;
};

}  // namespace records_table_test

using records_table_test::Table;

TEST(RecordsTableTest, EnterOrAClickOpensTheRow)
{
    Table t;
    ASSERT_TRUE(t.isReady);
    QSignalSpy opened(&t.table, &RecordsTable::opened);
    t.table.setFocus(Qt::TabFocusReason);
    EXPECT_EQ(t.table.currentIndex().row(), 0) << "one begins at the first row";
    QTest::keyClick(&t.table, Qt::Key_Down);
    EXPECT_EQ(opened.count(), 0);
    QTest::keyClick(&t.table, Qt::Key_Return);
    ASSERT_EQ(opened.count(), 1);
    EXPECT_EQ(opened[0][0].toModelIndex().row(), 1);
    QTest::mouseClick(t.table.viewport(), Qt::LeftButton, {},
                      t.table.visualRect(t.sorted.index(2, 0)).center());
    ASSERT_EQ(opened.count(), 2);
    EXPECT_EQ(opened[1][0].toModelIndex().row(), 2);
}

TEST(RecordsTableTest, ColumnsShareTheRoomAndKeepTheirLeastWidth)
{
    Table t;
    const int sample = t.table.fontMetrics().horizontalAdvance(QStringLiteral("Featherstonehaugh of Marchbanks"));
    t.table.resize(900, 300);
    const int wide = t.table.columnWidth(0);
    EXPECT_GT(wide, sample);
    EXPECT_LE(t.table.columnWidth(0) + t.table.columnWidth(1), t.table.viewport()->width());
    t.table.resize(120, 300);
    EXPECT_LT(t.table.columnWidth(0), wide);
    const int content = t.table.fontMetrics().horizontalAdvance(QStringLiteral("Marlow"));
    EXPECT_LT(t.table.columnWidth(0), sample) << "what usually stands there is not what does";
    EXPECT_GE(t.table.columnWidth(0), content) << "where there is no room the table scrolls";
    EXPECT_EQ(t.sorted.index(0, 0).data().toString(), QStringLiteral("Abbot"));
}

TEST(RecordsTableTest, ColumnsThatYieldAreCutBeforeTheTableScrolls)
{
    Table t;
    t.model.clear();
    for (const char* name : {"Young", "Abbot"})
        t.model.appendRow({new QStandardItem(QString::fromLatin1(name)),
                           new QStandardItem(QStringLiteral("a section with a long name")),
                           new QStandardItem(QStringLiteral("may try again"))});
    const QStringList samples{QStringLiteral("x"), QStringLiteral("x"), QStringLiteral("x")};
    const auto whole = [&] {
        return t.table.columnWidth(0) + t.table.columnWidth(1) + t.table.columnWidth(2);
    };
    const QFontMetrics letters = t.table.fontMetrics();
    t.table.resize(320, 300);
    t.table.use(t.sorted, 0, Qt::AscendingOrder, samples);
    EXPECT_GT(whole(), t.table.viewport()->width());
    EXPECT_GE(t.table.columnWidth(1),
              letters.horizontalAdvance(QStringLiteral("a section with a long name")));
    t.table.use(t.sorted, 0, Qt::AscendingOrder, samples, {1});
    EXPECT_LE(whole(), t.table.viewport()->width());
    EXPECT_GE(t.table.columnWidth(2), letters.horizontalAdvance(QStringLiteral("may try again")));
}

TEST(RecordsTableTest, ColumnsFitWhatIsShownAnew)
{
    Table t;
    const int before = t.table.columnWidth(1);
    QStandardItemModel other;
    other.appendRow({new QStandardItem(QStringLiteral("A")),
                     new QStandardItem(QStringLiteral("a much longer word than the sample"))});
    t.sorted.setSourceModel(&other);
    EXPECT_GT(t.table.columnWidth(1), before);
}

}  // namespace fb::test::records_table_tests
