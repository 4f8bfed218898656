// Labels as they are painted: see lecture_painter_labels.h.
#include <QPainter>

#include "app/demonstrate/lecture_painter_labels.h"
#include "app/demonstrate/lecture_painter_words.h"
#include "app/scene/scene_painter.h"

namespace fb {

namespace lecture_labels_paint_detail {

// A hairline from a label to its shape; on an area it ends in a dot.
void paintLeader(QPainter& painter, const LectureLabel& label, const Scheme& scheme)
{
    const PlacedLabel& placed = label.placed;
    QLineF line(leaderStart(placed), placed.anchor);
    constexpr double kShortest = 12.0;
    if (!placed.hasLeader || line.length() < kShortest)
        return;
    const bool onArea = placed.ask.kind != LabelKind::Name;
    if (!onArea)
        line.setLength(line.length() - 8.0);
    painter.setPen(QPen(scheme.paper, 5.0, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(line);
    painter.setPen(QPen(label.ink, 1.8, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(line);
    if (!onArea)
        return;
    painter.setPen(QPen(scheme.paper, 2.0));
    painter.setBrush(label.ink);
    painter.drawEllipse(placed.anchor, 4.5, 4.5);
}

}  // namespace lecture_labels_paint_detail

void paintLabels(QPainter& painter, const QVector<LectureLabel>& labels, const Scheme& scheme,
                 Qt::LayoutDirection direction)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setLayoutDirection(direction);
    // Leaders first, so that none runs through a word.
    for (const LectureLabel& label : labels)
        lecture_labels_paint_detail::paintLeader(painter, label, scheme);
    for (const LectureLabel& label : labels) {
        const PlacedLabel& placed = label.placed;
        painter.setPen(Qt::NoPen);
        painter.setBrush(scheme.paper);
        painter.drawRoundedRect(placed.box, 4.0, 4.0);
        painter.setPen(label.ink);
        paintWords(painter, placed.box.adjusted(3, 2, -3, -2),
                   static_cast<int>(Qt::AlignCenter) | Qt::TextWordWrap, placed.ask.text, placed.ask.font);
    }
    painter.restore();
}

}  // namespace fb
