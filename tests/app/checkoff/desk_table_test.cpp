#include "app/checkoff/desk_table.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QStandardItemModel>
#include <QTest>

namespace desk_table_test {

namespace {

using namespace fb;

TEST(DeskTableTest, EnterAndADoubleClickStartASingleClickOnlyChooses)
{
    QStandardItemModel model;
    for (const char* name : {"Abara", "Birch"})
        model.appendRow(new QStandardItem(QLatin1String(name)));
    DeskTable table;
    table.use(model, 0, Qt::AscendingOrder, {QStringLiteral("Abara")});
    table.resize(400, 300);
    table.show();
    QSignalSpy started(&table, &DeskTable::startAsked);
    QTest::keyClick(&table, Qt::Key_Return);
    EXPECT_EQ(started.count(), 0) << "nobody is chosen";
    const QPoint second = table.visualRect(model.index(1, 0)).center();
    QTest::mouseClick(table.viewport(), Qt::LeftButton, {}, second);
    EXPECT_EQ(started.count(), 0);
    EXPECT_EQ(table.currentIndex().row(), 1);
    QTest::keyClick(&table, Qt::Key_Enter);
    EXPECT_EQ(started.count(), 1);
    QTest::mouseDClick(table.viewport(), Qt::LeftButton, {}, second);
    EXPECT_EQ(started.count(), 2);
    QTest::mouseDClick(table.viewport(), Qt::LeftButton, {}, QPoint(20, 280));
    EXPECT_EQ(started.count(), 2) << "beside the rows";
}

}  // namespace

}  // namespace desk_table_test
