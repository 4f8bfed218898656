#include "app/records/sorted_rows.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QStandardItemModel>

#include "app/checkoff/desk_model.h"
#include "app/records/board_model.h"

namespace fb::test::sorted_rows_test {

namespace sorted_rows_detail {

std::vector<StudentStanding> people()
{
    std::vector<StudentStanding> all;
    for (const char* family :
         {"Yıldıztepe", "van Aldersloot", "Ó Súilleabháin", "Pallas", "Nagy", "Åström"}) {
        StudentStanding one;
        one.student.family = QString::fromUtf8(family);
        one.student.id = QString::number(all.size());
        all.push_back(one);
    }
    return all;
}

QStringList column(const QAbstractItemModel& model)
{
    QStringList all;
    for (int row = 0; row < model.rowCount(); ++row)
        all << model.index(row, 0).data().toString();
    return all;
}

}  // namespace sorted_rows_detail

using namespace sorted_rows_detail;

TEST(SortedRowsTest, NumbersAreSortedByTheirValueAndWordsAsPeopleAre)
{
    QStandardItemModel model;
    for (const int number : {10, 9, 2}) {
        auto* row = new QStandardItem;
        row->setData(number, Qt::DisplayRole);
        model.appendRow(row);
    }
    SortedRows rows;
    const QAbstractItemModelTester tester(&rows, QAbstractItemModelTester::FailureReportingMode::Fatal);
    rows.setSourceModel(&model);
    rows.sort(0);
    EXPECT_EQ(column(rows), (QStringList{QStringLiteral("2"), QStringLiteral("9"), QStringLiteral("10")}));
    model.clear();
    for (const char* word : {"p", "Ó", "n", "O"})
        model.appendRow(new QStandardItem(QString::fromUtf8(word)));
    rows.sort(0);
    EXPECT_EQ(column(rows), (QStringList{QStringLiteral("n"), QStringLiteral("O"), QStringLiteral("Ó"),
                                         QStringLiteral("p")}));
}

TEST(SortedRowsTest, DeskAndBoardListTheSamePeopleInTheSameOrder)
{
    DeskModel desk;
    DeskFilter onDesk(desk);
    desk.setStudents(people());
    onDesk.sort(DeskModel::NameColumn);
    Board of;
    of.students = people();
    BoardModel board;
    BoardFilter onBoard;
    onBoard.setSourceModel(&board);
    board.setBoard(std::make_shared<const Board>(of));
    onBoard.sort(BoardModel::NameColumn);
    EXPECT_EQ(column(onDesk), column(onBoard));
    EXPECT_EQ(column(onDesk).first(), QStringLiteral("Åström"));
    EXPECT_EQ(desk.headerData(DeskModel::IdColumn, Qt::Horizontal),
              board.headerData(BoardModel::IdColumn, Qt::Horizontal));
}

TEST(SortedRowsTest, AnotherLanguageSortsItsOwnWay)
{
    const QLocale before;
    QStandardItemModel model;
    for (const char* word : {"Zeman", "Åström"})
        model.appendRow(new QStandardItem(QString::fromUtf8(word)));
    SortedRows rows;
    rows.setSourceModel(&model);
    rows.sort(0);
    EXPECT_EQ(column(rows).first(), QStringLiteral("Åström"));
    QLocale::setDefault(QLocale(QLocale::Swedish));
    rows.retranslate();
    EXPECT_EQ(column(rows).first(), QStringLiteral("Zeman")) << "Å follows Z";
    QLocale::setDefault(before);
}

}  // namespace fb::test::sorted_rows_test
