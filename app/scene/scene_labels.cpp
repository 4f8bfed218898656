// Which labels a scene asks for, and where they find their places.
#include <QTransform>

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
    for (const SceneShape& shape : scene) {
        if (shape.label.isEmpty())
            continue;
        const Type type = shape.role == Role::Arrow    ? Type::Body  // its figures stand in one line
                          : shape.role == Role::Strike ? Type::PlateWord
                                                       : Type::PlateLabel;
        const QFont font = fontOf(type, textScale);
        QPolygonF outline = onDevice(shape, cmToDevice);
        if (kindOf(shape) == LabelKind::Name && outline.size() > 1)
            outline = QPolygonF{(outline[outline.size() / 2 - 1] + outline[outline.size() / 2]) / 2.0};
        made.push_back({kindOf(shape), shape.label, font, outline});
    }
    return made;
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
    return placeLabels(labels_detail::asked(scene, cmToDevice, textScale), paper,
                       labels_detail::keptClear(scene, cmToDevice, paper, taken), shyness);
}

}  // namespace fb
