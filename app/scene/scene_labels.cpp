// Which labels a scene asks for, and where they find their places.
#include <QLineF>
#include <QTransform>
#include <algorithm>
#include <utility>

#include "app/look/type.h"
#include "app/scene/scene_painter.h"

namespace fb {

namespace labels_detail {

QPolygonF onDevice(const SceneShape& shape, const QTransform& cmToDevice)
{
    return cmToDevice.map(QPolygonF(shape.points));
}

LabelKind kindOf(const SceneShape& shape)
{
    if (shape.points.isEmpty())
        return LabelKind::Listed;
    if (shape.role == Role::Arrow)
        return LabelKind::Plaque;
    if (shape.figure == Figure::Closed)
        return LabelKind::Word;
    return LabelKind::Name;
}

QVector<LabelAsk> asked(const Scene& scene, const QTransform& cmToDevice, double textScale)
{
    QVector<LabelAsk> made;
    QVector<QPolygonF> struck;
    for (const SceneShape& shape : scene) {
        QPolygonF outline = onDevice(shape, cmToDevice);
        if (!shape.label.isEmpty()) {
            const Type type = shape.role == Role::Arrow    ? Type::Body  // its figures stand in one line
                              : shape.role == Role::Strike ? Type::PlateWord
                                                           : Type::PlateLabel;
            LabelAsk ask{kindOf(shape), shape.label, fontOf(type, textScale), outline, struck};
            if (ask.kind == LabelKind::Name && outline.size() > 1)
                ask.outline =
                    QPolygonF{(outline[outline.size() / 2 - 1] + outline[outline.size() / 2]) / 2.0};
            made.push_back(std::move(ask));
        }
        if (shape.role == Role::Strike)
            struck.push_back(std::move(outline));
    }
    return made;
}

bool isOfFigure(Role role)
{
    return role == Role::Construction || role == Role::Newest || role == Role::Yours;
}

// Squares along the lines of the construction that lie on the paper, as many whatever its size.
QVector<QRectF> figureOf(const Scene& scene, const QTransform& cmToDevice, const QRectF& paper)
{
    const double stride = std::max(24.0, paper.width() / 50.0);
    const double reach = stride * 0.4;
    QVector<QRectF> squares;
    for (const SceneShape& shape : scene) {
        if (!isOfFigure(shape.role) || shape.points.size() < 2)
            continue;
        QPolygonF line = onDevice(shape, cmToDevice);
        if (shape.figure == Figure::Closed)
            line.push_back(line.first());
        for (qsizetype i = 0; i + 1 < line.size(); ++i) {
            const QLineF piece(line[i], line[i + 1]);
            const int count = static_cast<int>(piece.length() / stride) + 1;
            for (int k = 0; k < count; ++k) {
                const QPointF at = piece.pointAt((k + 0.5) / count);
                if (paper.contains(at))
                    squares.push_back(QRectF(at.x() - reach, at.y() - reach, 2 * reach, 2 * reach));
            }
        }
    }
    return squares;
}

// A small target region is kept clear of words; one that fills the paper cannot be.
QVector<QRectF> keptClear(const Scene& scene, const QTransform& cmToDevice, const QRectF& paper,
                          QVector<QRectF> taken)
{
    for (const SceneShape& shape : scene) {
        if (shape.role != Role::Region)
            continue;
        const QRectF box = onDevice(shape, cmToDevice).boundingRect();
        if (box.width() < paper.width() / 3.0 && box.height() < paper.height() / 3.0)
            taken.push_back(box);
    }
    return taken;
}

}  // namespace labels_detail

QVector<PlacedLabel> sceneLabels(const Scene& scene, const QTransform& cmToDevice, double textScale,
                                 const QRectF& paper, const QVector<QRectF>& taken,
                                 const LabelShyness& shyness)
{
    LabelShyness all = shyness;
    all.figure += labels_detail::figureOf(scene, cmToDevice, paper);
    return placeLabels(labels_detail::asked(scene, cmToDevice, textScale), paper,
                       labels_detail::keptClear(scene, cmToDevice, paper, taken), all);
}

QPointF leaderStart(const PlacedLabel& placed)
{
    const QRectF& box = placed.box;
    if (placed.anchor.x() > box.left() && placed.anchor.x() < box.right())
        return {box.center().x(), placed.anchor.y() > box.center().y() ? box.bottom() - 1 : box.top() + 1};
    return {placed.anchor.x() > box.center().x() ? box.right() - 2 : box.left() + 2, box.center().y()};
}

}  // namespace fb
