#include "app/practice/spread_figure.h"

#include <gtest/gtest.h>

#include "tests/support/sample_run.h"

namespace fb::test {

TEST(SpreadFigureTest, FrontIsRightElbowIsDownAndEveryMarkIsInside)
{
    SampleRun run(2);
    run.gradeAt({0.0, -9.0});
    run.presenter.next();
    run.gradeAt({0.5, 1.0});
    run.presenter.next();
    ASSERT_TRUE(run.state().summary.has_value());
    SpreadFigure figure;
    figure.setScheme(schemeOf(PaletteKind::Light));
    figure.resize(400, 300);
    figure.showRun(*run.state().summary, *run.state().target);
    EXPECT_EQ(figure.place({}), QPointF(200.0, 150.0));
    EXPECT_GT(figure.place({1.0, 0.0}).x(), 200.0);
    EXPECT_GT(figure.place({0.0, 1.0}).y(), 150.0);
    const double acromion = run.state().target->idealSkin.y / run.state().target->scale;
    EXPECT_LT(acromion, 0.0) << "the arm begins above the ideal point";
    EXPECT_TRUE(figure.rect().contains(figure.place({0.0, acromion}).toPoint()));
    for (const Point mark : run.state().summary->marks)
        EXPECT_TRUE(figure.rect().contains(figure.place(mark).toPoint())) << mark.x << ", " << mark.y;
}

TEST(SpreadFigureTest, MarksAreDrawnWhereTheyLie)
{
    SampleRun run(1);
    run.gradeAt({0.0, 2.6});
    run.presenter.next();
    SpreadFigure figure;
    figure.setScheme(schemeOf(PaletteKind::Light));
    figure.resize(400, 400);
    figure.showRun(*run.state().summary, *run.state().target);
    const QImage with = figure.grab().toImage();
    Summary empty = *run.state().summary;
    const QPoint at = figure.place(empty.marks.front()).toPoint();
    empty.marks.clear();
    empty.verdicts.clear();
    figure.showRun(empty, *run.state().target);
    const QImage without = figure.grab().toImage();
    EXPECT_NE(with.copy(QRect(at - QPoint(10, 10), QSize(20, 20))),
              without.copy(QRect(at - QPoint(10, 10), QSize(20, 20))));
}

}  // namespace fb::test
