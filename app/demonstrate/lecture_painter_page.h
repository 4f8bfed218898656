// Where every word of a demonstration's picture stands. All lengths are units of which a picture is
// always about as many high, so that letters, lines and gaps keep their shares on every screen; a unit is so
// many pixels that the smallest letter is as large as kLeastLetter asks.
#pragma once

#include <vector>

#include "app/canvas/press_painter.h"
#include "app/demonstrate/lecture_face.h"
#include "app/demonstrate/lecture_painter_labels.h"
#include "app/demonstrate/lecture_painter_lines.h"

namespace fb {

// The places that are the same for every step.
struct LecturePlan {
    double unit = 1.0;  // pixels
    QSizeF size;
    QRectF heading, caption, caution;
    QVector<QRectF> panes, names;  // a name stands under its pane; names: none of a single pane

    [[nodiscard]] LectureLayout scaled() const;  // in pixels
};
[[nodiscard]] LecturePlan lecturePlan(QSizeF picture, int panes, Qt::LayoutDirection direction);

struct LecturePage {
    struct Words {
        SetLines set;
        QColor ink;
        QRectF backing = {};  // paper under words that reach over a plate; empty: they do not
    };
    struct Pane {
        QRectF place;
        ViewFrame frame;  // pixels
        QTransform cmToUnits;
        QVector<LectureLabel> labels;
        PressPlace press;
        QString pressText;
        QRectF pressWords;  // empty: nothing is pressed, or nothing said
    };
    LecturePlan plan;
    QVector<Words> words;
    std::vector<Pane> panes;
};
[[nodiscard]] LecturePage pageOf(const LectureFace& face);

// page: of that face, or of one that differs in what is pointed at and drawn alone.
void paintLecture(QPainter& painter, const LectureFace& face, const LecturePage& page);

[[nodiscard]] QFont pressFont();

}  // namespace fb
