// A step's look on white paper: the body, what is laid on it, its signs and their names. Signs and names are
// lines on every device; so is the body, but in a PDF (see paper_shades.h). May be painted in any thread, by
// one at a time.
#pragma once

#include <QImage>
#include <QRectF>
#include <QVector>
#include <map>
#include <memory>
#include <optional>

#include "app/lecture/lecture_look.h"

class QPainter;

namespace fb {

enum class Tint {
    Grey,  // for a printer: pale enough to be drawn over, every skin as light as the paper
    Full   // for a screen: in the drawing's own colours
};

// Made once of a body, painted once for each of its steps.
class PaperBody {
public:
    // The fault of a hand's art that cannot be read.
    [[nodiscard]] static Result<PaperBody> make(const LectureBody& body, const Library& library, Tint tint);

    // Into that rectangle of the painter's units; the area comes out of these proportions (see fittedArea).
    // labelScale: how large its letters and lines are drawn, 1 being the size of the program's own.
    void paint(QPainter& painter, const QRectF& at, const LectureLook& look, double labelScale,
               Qt::LayoutDirection direction) const;

    // The area widened to these proportions about its middle, moved so that it stays on the drawing where
    // that is large enough. cm, low corner first.
    [[nodiscard]] QRectF fittedArea(const QRectF& area, double widthToHeight) const;

private:
    PaperBody(const LectureBody& body, Tint tint);
    void paintBody(QPainter& painter, const QRectF& at, const QRectF& area) const;
    void paintLaidThings(QPainter& painter, const LectureLook& look, const QTransform& toPaper) const;
    void paintSigns(QPainter& painter, const QRectF& at, const QRectF& area, const LectureLook& look) const;
    [[nodiscard]] std::vector<QColor> tonesOf(const Plate& plate, int skinTone, bool isPale) const;

    std::shared_ptr<const Picture> m_picture;
    std::shared_ptr<const ReadyInk> m_ink;
    Tint m_tint;
    std::map<View, std::shared_ptr<const Plate>> m_hands;

    // The body as a picture is the same for all plates of one size: made once, written once.
    struct Kept {
        QRectF area;
        QSizeF size;
        QImage image;
    };
    mutable std::optional<Kept> m_kept;
};

}  // namespace fb
