#include "app/canvas/plate_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QPolygonF>
#include <cmath>

#include "app/canvas/flag_painter.h"
#include "app/canvas/handle_painter.h"
#include "app/canvas/tool_painter.h"

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

QString handleAt(bool left, bool below)
{
    //: The handle that keys move: %3 its name; %1 and %2 as of the crosshair.
    if (left && below)
        return Words::tr("%3, current handle, %1 cm left of and %2 cm below the middle of the picture");
    if (below)
        return Words::tr("%3, current handle, %1 cm right of and %2 cm below the middle of the picture");
    if (left)
        return Words::tr("%3, current handle, %1 cm left of and %2 cm above the middle of the picture");
    return Words::tr("%3, current handle, %1 cm right of and %2 cm above the middle of the picture");
}

QString inCm(double length) { return QLocale().toString(std::round(std::abs(length) * 10.0) / 10.0, 'f', 1); }

SpokenItem spot(const PlateFace& face, QPointF cm, QString (*words)(bool, bool), SpokenKind kind)
{
    const QPointF off = cm - face.frame.picture().center();
    return {words(off.x() < 0.0, off.y() < 0.0).arg(inCm(off.x()), inCm(off.y())),
            markBox(face.frame.toWidget(cm), face.textScale).toAlignedRect(), kind};
}

QRect onSheet(const PlateFace& face, const QRectF& box)
{
    return box.intersected(face.frame.sheet()).toAlignedRect();
}

void sayHandles(const PlateFace& face, QVector<SpokenItem>& items)
{
    for (const HandleLook& handle : face.tools.handles) {
        const QRect box = onSheet(face, handleBox(face.frame.toWidget(handle.cm), face.textScale));
        const QPointF off = handle.cm - face.frame.picture().center();
        if (handle.id == face.tools.current)
            items.push_back(
                {handleAt(off.x() < 0.0, off.y() < 0.0).arg(inCm(off.x()), inCm(off.y()), handle.name), box,
                 SpokenKind::CurrentHandle});
        else if (!handle.name.isEmpty())
            items.push_back({handle.name, box, SpokenKind::Handle});
    }
}

void sayFlags(const PlateFace& face, QVector<SpokenItem>& items)
{
    for (const FlagLook& flag : face.tools.flags)
        items.push_back(
            {flag.description.isEmpty() ? flag.name : flag.description,
             onSheet(face, flagBox(face.frame.toWidget(flag.cm), face.frame.sheet(), face.textScale)),
             SpokenKind::Flag});
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
        items.push_back(spot(face, *face.crosshair, crosshairAt, SpokenKind::Crosshair));
    if (face.mark)
        items.push_back(spot(face, *face.mark, markAt, SpokenKind::Mark));
    if (face.tools.press && !spoken(*face.tools.press).isEmpty())
        items.push_back({spoken(*face.tools.press), onSheet(face, pressedBox(face)), SpokenKind::Press});
    sayHandles(face, items);
    sayFlags(face, items);
    for (const SceneShape& shape : face.scene)
        if (!spoken(shape).isEmpty())
            items.push_back({spoken(shape), boxOf(face, shape)});
    return items;
}

}  // namespace fb
