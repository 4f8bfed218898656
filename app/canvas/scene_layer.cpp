#include "app/canvas/scene_layer.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/canvas/flag_painter.h"
#include "app/look/type.h"
#include "app/scene/scene_painter.h"

namespace fb {

namespace scene_layer_detail {

// Labels stand beside the drawn body where they can, and do not cross the plate's side edges.
LabelShyness shynessOf(const PlateFace& face)
{
    const QTransform toWidget = face.frame.cmToWidget();
    const QRectF plate = toWidget.mapRect(face.frame.picture());
    LabelShyness shyness;
    for (const double edge : {plate.left(), plate.right()})
        shyness.edges.push_back({edge - 5, plate.top(), 10, plate.height()});
    if (!face.drawn)
        return shyness;
    for (const QRectF& row : face.drawn->ready->silhouette())
        shyness.body.push_back(toWidget.mapRect(row));
    if (face.drawn->hand)
        for (const QRectF& row : face.drawn->hand->silhouette())
            shyness.figure.push_back(toWidget.mapRect(row));
    return shyness;
}

inline constexpr double kReach =
    16.0;  // of a figure's signs and strokes about its points, in the boldest look

QRectF paperOf(const PlateFace& face) { return face.frame.sheet().adjusted(8, 8, -8, -8); }

// What no label lies on.
QVector<QRectF> takenOn(const PlateFace& face)
{
    QVector<QRectF> taken;
    if (face.mark)
        taken.push_back(markBox(face.frame.toWidget(*face.mark), face.textScale));
    for (const FlagLook& flag : face.tools.flags)
        taken.push_back(flagBox(face.frame.toWidget(flag.cm), paperOf(face), face.textScale));
    return taken;
}

// Roles that are painted before those of flags, and that no label minds but a word of an area.
bool isLooseRole(Role role)
{
    return role == Role::Field || role == Role::Construction || role == Role::Yours || role == Role::Newest;
}

void paintLayer(QPainter& painter, const PlateFace& face)
{
    if (isLoose(face.scene))
        paintScene(painter, face.scene, face.scheme, face.frame.cmToWidget(), face.textScale, paperOf(face));
    painter.drawImage(face.frame.sheet().topLeft(), *face.sceneLayer);
}

bool sameShape(const SceneShape& a, const SceneShape& b)
{
    return a.role == b.role && a.figure == b.figure && a.points == b.points && a.label == b.label &&
           a.description == b.description;
}

}  // namespace scene_layer_detail

bool sameScene(const Scene& a, const Scene& b)
{
    return a.constData() == b.constData() ||
           std::equal(a.begin(), a.end(), b.begin(), b.end(), scene_layer_detail::sameShape);
}

bool isLoose(const Scene& scene)
{
    return std::ranges::all_of(scene, [](const SceneShape& shape) {
        return shape.label.isEmpty() && scene_layer_detail::isLooseRole(shape.role);
    });
}

QRectF looseBox(const Scene& scene, const QTransform& cmToWidget, double textScale)
{
    const double reach = scene_layer_detail::kReach * (0.5 + 0.5 * heldTextScale(textScale));
    QRectF box;
    for (const SceneShape& shape : scene)
        if (!shape.points.isEmpty())
            box |=
                cmToWidget.map(QPolygonF(shape.points)).boundingRect().adjusted(-reach, -reach, reach, reach);
    return box;
}

void paintFaceScene(QPainter& painter, const PlateFace& face)
{
    using namespace scene_layer_detail;
    if (face.sceneLayer)
        return paintLayer(painter, face);
    const QRectF paper = paperOf(face);
    const QVector<FlagLook>& flags = face.tools.flags;
    paintScene(painter, face.scene + flagScene(flags), face.scheme, face.frame.cmToWidget(), face.textScale,
               paper, takenOn(face), shynessOf(face));
    for (const FlagLook& flag : flags)
        paintFlag(painter, face.frame.toWidget(flag.cm), paper, face.scheme, face.textScale);
}

QVector<QRectF> labelBoxes(const PlateFace& face)
{
    using namespace scene_layer_detail;
    const Scene scene = face.scene + flagScene(face.tools.flags);
    QVector<QRectF> boxes;
    if (std::ranges::all_of(scene, [](const SceneShape& shape) { return shape.label.isEmpty(); }))
        return boxes;
    for (const PlacedLabel& placed : sceneLabels(scene, face.frame.cmToWidget(), face.textScale,
                                                 paperOf(face), takenOn(face), shynessOf(face)))
        if (!placed.box.isEmpty())
            boxes.push_back(placed.box);
    return boxes;
}

SceneLayer::Shown SceneLayer::shownOf(const PlateFace& face, double devicePixelRatio)
{
    Shown shown{face.frame, face.scheme, face.textScale, devicePixelRatio, face.mark,
                nullptr,    nullptr,     face.scene,     face.tools.flags};
    if (face.drawn) {
        shown.body = face.drawn->ready;
        shown.hand = face.drawn->hand;
    }
    return shown;
}

bool SceneLayer::shows(const Shown& wanted) const
{
    return m_shown && m_shown->frame == wanted.frame && m_shown->scheme == wanted.scheme &&
           m_shown->textScale == wanted.textScale && m_shown->pixelRatio == wanted.pixelRatio &&
           m_shown->mark == wanted.mark && m_shown->body == wanted.body && m_shown->hand == wanted.hand &&
           m_shown->flags == wanted.flags && sameScene(m_shown->scene, wanted.scene);
}

const QImage& SceneLayer::of(const PlateFace& face, double devicePixelRatio)
{
    if (!face.scene.isEmpty() && isLoose(face.scene)) {
        PlateFace fixed = face;
        fixed.scene.clear();
        return of(fixed, devicePixelRatio);
    }
    const Shown wanted = shownOf(face, devicePixelRatio);
    if (shows(wanted))
        return m_image;
    m_shown = wanted;
    m_image = QImage();
    if (!face.hasPicture || (face.scene.isEmpty() && face.tools.flags.isEmpty()))
        return m_image;
    const QRectF sheet = face.frame.sheet();
    m_image = QImage(QSize(static_cast<int>(std::ceil(sheet.width() * devicePixelRatio)),
                           static_cast<int>(std::ceil(sheet.height() * devicePixelRatio))),
                     QImage::Format_ARGB32_Premultiplied);
    m_image.setDevicePixelRatio(devicePixelRatio);
    m_image.fill(Qt::transparent);
    QPainter painter(&m_image);
    painter.translate(-sheet.topLeft());
    paintFaceScene(painter, face);
    return m_image;
}

}  // namespace fb
