// A demonstration of a site on screen: presenter, bodies made at once, and a view of it.
#pragma once

#include <QTest>

#include "app/demonstrate/lecture_view.h"
#include "tests/support/lecture_sample.h"

namespace fb::test {

struct ShownLecture : LectureSample {
    explicit ShownLecture(Site site = Site::Ventrogluteal, LectureView::For whom = LectureView::For::Speaker)
        : LectureSample(site),
          view(presenter, whom)
    {
        presenter.setCalm(true);
        view.resize(800, 450);
        view.show();
    }
    [[nodiscard]] bool sharpens()
    {
        return QTest::qWaitFor([this] { return view.isSharp(); }, 20000);
    }
    // By way of a place beside it: a mouse that is there already does not move.
    void move(QPoint to)
    {
        QTest::mouseMove(view.windowHandle(), to + QPoint(1, 1));
        QTest::mouseMove(view.windowHandle(), to);
        QCoreApplication::processEvents();
    }
    // Where a place of the first pane is on the view.
    [[nodiscard]] QPoint at(QPointF cm) const { return frameOf(view.face(), 0).toWidget(cm).toPoint(); }
    [[nodiscard]] QPointF cm(QPoint place) const { return frameOf(view.face(), 0).toCm(place); }

    LectureView view;
};

[[nodiscard]] inline double apart(QPointF a, QPointF b) { return std::hypot(a.x() - b.x(), a.y() - b.y()); }

}  // namespace fb::test
