#include "app/checkoff/desk_model.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QSignalSpy>

namespace desk_model_test {

namespace {

using namespace fb;

StudentStanding line(const char* id, const char* family, const char* given,
                     Standing standing = Standing::NotTried, const char* section = "A")
{
    StudentStanding made;
    made.student.id = QString::fromUtf8(id);
    made.student.family = QString::fromUtf8(family);
    made.student.given = QString::fromUtf8(given);
    made.student.section = QString::fromUtf8(section);
    made.where.standing = standing;
    made.where.allowed = 3;
    return made;
}

struct DeskRows {
    DeskRows()
    {
        model.setStudents({line("S-3", "Zeman", "Eva"), line("S-1", "Ärlig", "Nils", Standing::Passed),
                           line("S-2", "Okafor", "Ada", Standing::MayRetest, "B")});
        filter.sort(DeskModel::NameColumn);
    }
    [[nodiscard]] QStringList names() const
    {
        QStringList all;
        for (int row = 0; row < filter.rowCount(); ++row)
            all << filter.index(row, DeskModel::IdColumn).data().toString();
        return all;
    }
    DeskModel model;
    DeskFilter filter{model};
};

TEST(DeskModelTest, HoldsToTheRulesOfModels)
{
    DeskRows desk;
    const QAbstractItemModelTester model(&desk.model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    const QAbstractItemModelTester filter(&desk.filter,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    desk.filter.setWords(QStringLiteral("o"));
    desk.model.setStudents({line("S-9", "New", "Only")});
    desk.model.setScheme(schemeOf(PaletteKind::Dark));
    desk.filter.setWords({});
    EXPECT_EQ(desk.filter.rowCount(), 1);
}

TEST(DeskModelTest, StandingsHaveASignAndAWord)
{
    DeskRows desk;
    desk.model.setScheme(schemeOf(PaletteKind::Light));
    for (int row = 0; row < desk.model.rowCount(); ++row) {
        const QModelIndex at = desk.model.index(row, DeskModel::StandingColumn);
        EXPECT_FALSE(at.data().toString().isEmpty());
        EXPECT_FALSE(at.data(Qt::DecorationRole).value<QIcon>().isNull());
        EXPECT_FALSE(at.siblingAtColumn(DeskModel::NameColumn).data(Qt::DecorationRole).isValid());
    }
    for (int column = 0; column < DeskModel::ColumnCount; ++column)
        EXPECT_FALSE(desk.model.headerData(column, Qt::Horizontal).toString().isEmpty());
}

TEST(DeskModelTest, NamesSortAsTheLanguageDoes)
{
    DeskRows desk;
    EXPECT_EQ(desk.names(),
              (QStringList{QStringLiteral("S-1"), QStringLiteral("S-2"), QStringLiteral("S-3")}));
    desk.filter.sort(DeskModel::StandingColumn);
    EXPECT_EQ(desk.names(),
              (QStringList{QStringLiteral("S-3"), QStringLiteral("S-1"), QStringLiteral("S-2")}));
}

TEST(DeskModelTest, EveryWordOfASearchMustBeFound)
{
    DeskRows desk;
    desk.filter.setWords(QStringLiteral("ada oka"));
    EXPECT_EQ(desk.names(), QStringList{QStringLiteral("S-2")});
    desk.filter.setWords(QStringLiteral("s-3"));
    EXPECT_EQ(desk.names(), QStringList{QStringLiteral("S-3")});
    desk.filter.setWords(QStringLiteral("ada eva"));
    EXPECT_TRUE(desk.names().isEmpty());
}

TEST(DeskModelTest, TheSameStudentsAgainChangeNothing)
{
    DeskRows desk;
    QSignalSpy reset(&desk.model, &QAbstractItemModel::modelReset);
    std::vector<StudentStanding> same;
    for (int row = 0; row < desk.model.rowCount(); ++row)
        same.push_back(desk.model.at(row));
    desk.model.setStudents(same);
    EXPECT_EQ(reset.count(), 0);
    same.front().where.standing = Standing::Passed;
    desk.model.setStudents(same);
    EXPECT_EQ(reset.count(), 1);
    EXPECT_EQ(desk.model.rowOf(QStringLiteral("S-2")), 2);
    EXPECT_EQ(desk.model.rowOf(QStringLiteral("nobody")), -1);
}

}  // namespace

}  // namespace desk_model_test
