// One picture of a demonstration as the audience sees it, from one value to pixels: heading, plate or two
// plates side by side, what is laid and drawn on them, caption, caution. Never a notice, never a note.
//
// Every letter is legible from the back of a room: capitals are at least 3.5 percent of the picture's height
// (kLeastLetter), on grounds of at least 7:1.
#pragma once

#include <QImage>
#include <QRectF>
#include <QVector>
#include <memory>
#include <optional>

#include "app/canvas/ink_worker.h"
#include "app/lecture/lecture_look.h"
#include "app/lecture/lecture_state.h"

class QPainter;

namespace fb {

inline constexpr double kLeastLetter = 0.035;  // height of a capital over the picture's height
inline constexpr double kLeastContrast = 7.0;  // WCAG 2 ratio

// Where everything lies; a share of the picture, the same for every step.
struct LectureLayout {
    QRectF heading, caption, caution;
    QVector<QRectF> panes;   // one plate or two, the shown one first; in the reading direction
    double textScale = 1.0;  // of paintScene() and fontOf(): letters as large as kLeastLetter asks
};
[[nodiscard]] LectureLayout lectureLayout(QSizeF picture, int panes, Qt::LayoutDirection direction);

struct LecturePane {
    std::shared_ptr<const LectureBody> body;
    LectureLook look;
    Scene extra;                     // what is compared, what the room said
    QString name;                    // under the pane: "Body-mass index 24", "Pinned: 38"; empty: none
    std::optional<InkResult> drawn;  // the newest picture that came, of any frame; nullopt: paper
};

struct LectureFace {
    QSizeF size;  // of the picture, device-independent pixels
    Scheme scheme;
    Qt::LayoutDirection direction = Qt::LeftToRight;
    std::vector<LecturePane> panes;  // 1 or 2; strokes, pointer and room are the first one's
    QVector<PenStroke> strokes;
    std::optional<PenStroke> drawing;
    LectureTool tool{};
    std::optional<QPointF> pointer;  // cm
    bool spotlight = false;
    double magnification = 2.5;
    bool blank = false;
    bool isReady = true;
};

// Without pictures: what of a face a state asks for.
[[nodiscard]] LectureFace faceOf(const LectureState& state, QSizeF size, const Scheme& scheme,
                                 Qt::LayoutDirection direction);
// The frame a pane is seen in: its look's area in its rectangle.
[[nodiscard]] ViewFrame frameOf(const LectureFace& face, int pane);

void paintLecture(QPainter& painter, const LectureFace& face);
// Makes the words of a face ready, so that the first paint of it need not; from any thread.
void warmWords(const LectureFace& face, double devicePixelRatio);

// For tests: every text that paintLecture() paints, where, how large and in which colours.
struct PaintedText {
    QString text;
    QRectF box;
    double capHeight = 0.0;  // pixels
    QColor ink, ground;
};
[[nodiscard]] QVector<PaintedText> textsOf(const LectureFace& face);

}  // namespace fb
