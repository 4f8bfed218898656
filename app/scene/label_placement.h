// Finds a place for every label of a scene, as an engraver would: words of an area inside it,
// a length beside its arrow, names of points in two columns beside the figure, each in the nearer one, tied
// to their points by hairlines that do not cross; names without a place in a list at the top.
//
// Laws: no two boxes overlap; no box leaves the paper as long as the paper has room for it;
// one answer for each label asked, in order; a shape that is off the paper gets an empty box, and so does a
// name for which the paper has no free place at all.
#pragma once

#include <QFont>
#include <QPolygonF>
#include <QRectF>
#include <QString>
#include <QVector>

namespace fb {

enum class LabelKind {
    Word,    // inside its area, else in a column
    Plaque,  // beside the middle of its line
    Name,    // in a column, with a leader to its anchor
    Listed   // in the list at the top: gives no place away
};

struct LabelAsk {
    LabelKind kind{};
    QString text;
    QFont font;
    QPolygonF outline;  // device; Word: the area, Plaque: the line, Name: its one point, Listed: nothing
    QVector<QPolygonF> over = {};  // Word: areas that lie over this one, where its word would mislead
};

struct PlacedLabel {
    LabelAsk ask;
    QRectF box;  // device, padding included; empty: not shown
    bool hasLeader = false;
    bool onBody = false;
    QPointF anchor;  // where the leader ends on the shape
    Qt::Alignment alignment = Qt::AlignCenter;
};

// What the columns stand clear of where the paper has room: the drawn body, row by row, and
// after it single lines that a word should not cross; and what the words of areas stand clear of
// where their area has room: the figure and the hand that are laid over the body.
struct LabelShyness {
    QVector<QRectF> body;
    QVector<QRectF> edges;
    QVector<QRectF> figure = {};
};

// `taken` are rectangles no label may cover (the mark, say).
[[nodiscard]] QVector<PlacedLabel> placeLabels(const QVector<LabelAsk>& asks, const QRectF& paper,
                                               const QVector<QRectF>& taken = {},
                                               const LabelShyness& shyness = {});

}  // namespace fb
