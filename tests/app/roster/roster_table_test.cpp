#include "app/roster/roster_table.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QIcon>
#include <QSet>

namespace fb::test::roster_table_tests {

namespace roster_table_test {

using Kind = RosterRow::Kind;

RosterRow row(int line, Kind kind, const char* id = "7")
{
    RosterRow made;
    made.student.id = id;
    made.student.family = "Ruiz";
    made.line = line;
    made.kind = kind;
    return made;
}

QString shown(const RosterTable& table, int row, RosterTableColumn column)
{
    return table.index(row, static_cast<int>(column)).data().toString();
}

}  // namespace roster_table_test

TEST(RosterTableTest, EveryKindIsSaidInItsOwnWords)
{
    using namespace roster_table_test;
    QSet<QString> said;
    for (const Kind kind : {Kind::New, Kind::Changed, Kind::Same, Kind::Doubled, Kind::NoId, Kind::Nameless})
        said.insert(whatItDoes(row(1, kind)));
    EXPECT_EQ(said.size(), 6);
    EXPECT_FALSE(said.contains(QString()));
    RosterRow doubled = row(9, Kind::Doubled);
    doubled.firstLine = 3;
    EXPECT_EQ(whatItDoes(doubled), "Left out: same id as line 3");
    EXPECT_EQ(whatItDoes(row(1, Kind::NoId, "")), "Left out: no id");
    RosterRow unclear = row(1, Kind::New);
    unclear.unclearExtra = "half";
    EXPECT_EQ(whatItDoes(unclear), "New; extra time unclear: half");
}

TEST(RosterTableTest, WhoIsLeftOutStandsFirstHoweverLongTheList)
{
    using namespace roster_table_test;
    std::vector<RosterRow> rows;
    for (int line = 2; line < 1002; ++line)
        rows.push_back(row(line, line == 900 ? Kind::Doubled : Kind::New));
    rows[500].unclearExtra = "?";
    RosterTable table;
    const QAbstractItemModelTester tester(&table, QAbstractItemModelTester::FailureReportingMode::Fatal);
    table.show(std::make_shared<const std::vector<RosterRow>>(rows));
    ASSERT_EQ(table.rowCount(), kShownRosterRows);
    EXPECT_EQ(shown(table, 0, RosterTableColumn::Line), "502");
    EXPECT_EQ(shown(table, 1, RosterTableColumn::Line), "900");
    EXPECT_EQ(shown(table, 2, RosterTableColumn::Line), "2");
    // A sign beside the words, and none where all is well.
    const auto sign = [&](int at) {
        return table.index(at, static_cast<int>(RosterTableColumn::Does)).data(Qt::DecorationRole);
    };
    EXPECT_FALSE(sign(1).isNull());
    EXPECT_TRUE(sign(2).isNull());
    table.show(nullptr);
    EXPECT_EQ(table.rowCount(), 0);
}

TEST(RosterTableTest, TheColumnsShowWhatWillBeSaved)
{
    using namespace roster_table_test;
    RosterRow one = row(2, Kind::New);
    one.student.given = "Ana";
    one.student.section = "A";
    one.student.extraPercent = 25;
    one.student.language = "es";
    RosterTable table;
    table.setScheme(schemeOf(PaletteKind::Dark));
    table.show(std::make_shared<const std::vector<RosterRow>>(std::vector{one}));
    QStringList texts, heads;
    for (int column = 0; column < table.columnCount(); ++column) {
        texts.append(table.index(0, column).data().toString());
        heads.append(table.headerData(column, Qt::Horizontal, Qt::DisplayRole).toString());
    }
    EXPECT_EQ(texts, (QStringList{"2", "New", "7", "Ruiz", "Ana", "A", "25 %", "es"}));
    EXPECT_FALSE(heads.contains(QString()));
    EXPECT_EQ(QSet<QString>(heads.begin(), heads.end()).size(), heads.size());
}

TEST(RosterTableTest, TheCountsNameWhoIsLeftOut)
{
    using namespace roster_table_test;
    std::vector<RosterRow> rows{row(2, Kind::New),     row(3, Kind::New),  row(4, Kind::Changed),
                                row(5, Kind::Doubled), row(6, Kind::NoId), row(7, Kind::Nameless),
                                row(8, Kind::Same)};
    rows[0].unclearExtra = "half";
    EXPECT_EQ(
        rosterCounts(rows, 3),
        "2 new, 1 changed, 1 the same as before, 1 doubled and left out, 1 without a usable id and left "
        "out, 1 without a name and left out, 1 with an extra time that is unclear, 3 of another "
        "role or to be deleted, passed over");
    EXPECT_EQ(rosterCounts({}, 0), "No students");
}

TEST(RosterTableTest, EveryColumnOfARosterHasAName)
{
    QSet<QString> names;
    for (int column = 0; column < kRosterColumnCount; ++column)
        names.insert(rosterColumnName(static_cast<RosterColumn>(column)));
    EXPECT_EQ(names.size(), kRosterColumnCount);
    EXPECT_FALSE(names.contains(QString()));
}

}  // namespace fb::test::roster_table_tests
