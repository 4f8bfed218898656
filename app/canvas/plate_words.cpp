#include "app/canvas/plate_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QPolygonF>
#include <cmath>

namespace fb {

namespace plate_words_detail {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(fb::PlateWords)
};

QString crosshairAt(bool left, bool below)
{
    //: Distances from the middle of the picture; left and right are the viewer's.
    if (left && below)
        return Words::tr("Crosshair, %1 cm left of and %2 cm below the middle of the picture");
    if (below)
        return Words::tr("Crosshair, %1 cm right of and %2 cm below the middle of the picture");
    if (left)
        return Words::tr("Crosshair, %1 cm left of and %2 cm above the middle of the picture");
    return Words::tr("Crosshair, %1 cm right of and %2 cm above the middle of the picture");
}

QString markAt(bool left, bool below)
{
    //: The learner's mark; distances from the middle of the picture, left and right are the viewer's.
    if (left && below)
        return Words::tr("Your mark, %1 cm left of and %2 cm below the middle of the picture");
    if (below)
        return Words::tr("Your mark, %1 cm right of and %2 cm below the middle of the picture");
    if (left)
        return Words::tr("Your mark, %1 cm left of and %2 cm above the middle of the picture");
    return Words::tr("Your mark, %1 cm right of and %2 cm above the middle of the picture");
}

QString inCm(double length) { return QLocale().toString(std::round(std::abs(length) * 10.0) / 10.0, 'f', 1); }

SpokenItem spot(const PlateFace& face, QPointF cm, QString (*words)(bool, bool))
{
    const QPointF off = cm - face.frame.picture().center();
    return {words(off.x() < 0.0, off.y() < 0.0).arg(inCm(off.x()), inCm(off.y())),
            markBox(face.frame.toWidget(cm), face.textScale).toAlignedRect()};
}

// A name without a place has the whole sheet.
QRect boxOf(const PlateFace& face, const SceneShape& shape)
{
    const QRectF sheet = face.frame.sheet();
    if (shape.points.isEmpty())
        return sheet.toAlignedRect();
    const QRectF box =
        face.frame.cmToWidget().map(QPolygonF(shape.points)).boundingRect().adjusted(-5, -5, 5, 5);
    return box.intersected(sheet).toAlignedRect();
}

}  // namespace plate_words_detail

QVector<SpokenItem> spokenItems(const PlateFace& face)
{
    using namespace plate_words_detail;
    QVector<SpokenItem> items;
    if (!face.hasPicture)
        return items;
    if (face.crosshair)
        items.push_back(spot(face, *face.crosshair, crosshairAt));
    if (face.mark)
        items.push_back(spot(face, *face.mark, markAt));
    for (const SceneShape& shape : face.scene)
        if (!spoken(shape).isEmpty())
            items.push_back({spoken(shape), boxOf(face, shape)});
    return items;
}

}  // namespace fb
