#include "app/demonstrate/room_model.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QIcon>
#include <QSignalSpy>

#include "app/words/grade_words.h"

namespace fb::test::room_model_test {

std::vector<RoomMark> twoMarks()
{
    Grade grade;
    grade.verdict = Verdict::Acceptable;
    grade.distanceToIdeal = Cm{1.84};
    return {{QStringLiteral("Ada"), {1.0, 2.0}, grade}, {{}, {90.0, 90.0}, std::nullopt}};
}

QString at(const RoomModel& model, int row, int column) { return model.index(row, column).data().toString(); }

TEST(RoomModelTest, BeforeTheRevealNothingTellsTheVerdict)
{
    RoomModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setScheme(schemeOf(PaletteKind::Light));
    model.setMarks(twoMarks(), false);
    ASSERT_EQ(model.rowCount(), 2);
    EXPECT_EQ(at(model, 0, RoomModel::NumberColumn), QStringLiteral("1"));
    EXPECT_EQ(at(model, 0, RoomModel::NameColumn), QStringLiteral("Ada"));
    for (int column : {int(RoomModel::VerdictColumn), int(RoomModel::DistanceColumn)}) {
        EXPECT_EQ(at(model, 0, column), QString());
        EXPECT_FALSE(model.index(0, column).data(Qt::DecorationRole).isValid());
    }
    EXPECT_EQ(model.index(0, 0).data(Qt::AccessibleTextRole).toString(), QStringLiteral("1, Ada"));
}

TEST(RoomModelTest, RevealedEachMarkHasAWordASignAndADistance)
{
    RoomModel model;
    model.setScheme(schemeOf(PaletteKind::Light));
    model.setMarks(twoMarks(), true);
    EXPECT_EQ(at(model, 0, RoomModel::VerdictColumn).toLower(), verdictName(Verdict::Acceptable).toLower());
    EXPECT_TRUE(model.index(0, RoomModel::VerdictColumn).data(Qt::DecorationRole).canConvert<QIcon>());
    EXPECT_EQ(at(model, 0, RoomModel::DistanceColumn), QStringLiteral("1.8 cm"));
    EXPECT_EQ(at(model, 1, RoomModel::VerdictColumn), QStringLiteral("Not on the body"));
    EXPECT_EQ(at(model, 1, RoomModel::DistanceColumn), QString());
}

TEST(RoomModelTest, OnlyANameCanBeEditedAndIsHandedOn)
{
    RoomModel model;
    model.setMarks(twoMarks(), false);
    QSignalSpy named(&model, &RoomModel::named);
    EXPECT_TRUE(model.setData(model.index(1, RoomModel::NameColumn), QStringLiteral("Bea"), Qt::EditRole));
    EXPECT_FALSE(model.setData(model.index(1, RoomModel::VerdictColumn), QStringLiteral("x"), Qt::EditRole));
    ASSERT_EQ(named.count(), 1);
    EXPECT_EQ(named[0][0].toInt(), 1);
    EXPECT_EQ(named[0][1].toString(), QStringLiteral("Bea"));
    EXPECT_TRUE(model.flags(model.index(0, RoomModel::NameColumn)) & Qt::ItemIsEditable);
    EXPECT_FALSE(model.flags(model.index(0, RoomModel::NumberColumn)) & Qt::ItemIsEditable);
}

TEST(RoomModelTest, MarksComeAndGo)
{
    RoomModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setMarks(twoMarks(), false);
    model.setMarks({}, false);
    EXPECT_EQ(model.rowCount(), 0);
    model.setMarks(twoMarks(), true);
    EXPECT_EQ(model.rowCount(), 2);
    for (int column = 0; column < RoomModel::ColumnCount; ++column)
        EXPECT_FALSE(model.headerData(column, Qt::Horizontal).toString().isEmpty());
}

}  // namespace fb::test::room_model_test
