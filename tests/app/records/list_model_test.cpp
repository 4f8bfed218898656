#include "app/records/list_model.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>

#include "tests/support/sample_records.h"

namespace fb::test::list_model_test {

TEST(ListModelTest, EachCheckOffIsARowAndItsColumnsSortByMeaning)
{
    CheckOffLine early;
    early.at = QDateTime(QDate(2025, 12, 30), QTime(8, 0), Qt::UTC);
    early.student.family = QStringLiteral("Zander");
    early.student.given = QStringLiteral("Kim");
    early.percent = 100.0;
    early.outcome = Outcome::Pass;
    early.attempt = 2;
    early.rating = 4;
    early.assessor = QStringLiteral("Ada Brook");
    early.secondAssessor = QStringLiteral("Ines Castro");
    CheckOffLine late = early;
    late.at = early.at.addDays(3);
    late.student.family = QStringLiteral("Abbot");
    late.percent = 9.0;
    late.outcome = Outcome::FailTime;
    late.rating = 0;
    late.secondAssessor.clear();
    ListModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setScheme(schemeOf(PaletteKind::Dark));
    model.setLines(std::make_shared<const std::vector<CheckOffLine>>(std::vector{early, late}));
    ASSERT_EQ(model.rowCount(), 2);
    const auto text = [&](int row, int column) { return model.index(row, column).data().toString(); };
    EXPECT_EQ(text(0, ListModel::NameColumn), QStringLiteral("Zander, Kim"));
    EXPECT_EQ(text(0, ListModel::AttemptColumn), QStringLiteral("2"));
    EXPECT_EQ(text(0, ListModel::RatingColumn), QStringLiteral("4"));
    EXPECT_EQ(text(1, ListModel::RatingColumn), QString()) << "none was given";
    EXPECT_EQ(text(0, ListModel::AssessorColumn), QStringLiteral("Ada Brook and Ines Castro"));
    EXPECT_EQ(text(1, ListModel::AssessorColumn), QStringLiteral("Ada Brook"));
    EXPECT_NE(text(0, ListModel::OutcomeColumn), text(1, ListModel::OutcomeColumn));
    EXPECT_FALSE(model.index(0, ListModel::OutcomeColumn).data(Qt::DecorationRole).isNull());
    QSortFilterProxyModel sorted;
    sorted.setSourceModel(&model);
    sorted.setSortRole(ListModel::kSortRole);
    const auto first = [&](int column, Qt::SortOrder order) {
        sorted.sort(column, order);
        return sorted.mapToSource(sorted.index(0, 0)).row();
    };
    EXPECT_EQ(first(ListModel::WhenColumn, Qt::DescendingOrder), 1);
    EXPECT_EQ(first(ListModel::PercentColumn, Qt::DescendingOrder), 0) << "100 comes before 9";
    EXPECT_EQ(first(ListModel::NameColumn, Qt::AscendingOrder), 1);
}

}  // namespace fb::test::list_model_test
