#include "app/demonstrate/lecture_painter_labels.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>
#include <optional>

#include "app/demonstrate/lecture_face.h"
#include "app/demonstrate/lecture_label_place.h"
#include "app/look/type.h"
#include "app/scene/scene_painter.h"

namespace fb {

namespace lecture_labels_detail {

LabelKind kindOf(const SceneShape& shape)
{
    switch (shape.figure) {
    case Figure::Closed: return LabelKind::Word;
    case Figure::Line: return shape.points.size() > 1 ? LabelKind::Plaque : LabelKind::Name;
    case Figure::Point: break;
    }
    return LabelKind::Name;
}

// What lies around has its word inside it; everything else a name beside it.
bool hasWordInside(const SceneShape& shape)
{
    return shape.figure == Figure::Closed && (shape.role == Role::Strike || shape.role == Role::Near);
}

// The part of a line its name stands beside.
QPolygonF middleOf(const QPolygonF& line)
{
    const qsizetype middle = line.size() / 2;
    return line.size() > 2 ? QPolygonF{line[middle - 1], line[middle]} : line;
}

// Figures of the display face stand above and below the line; a number from afar is better plain.
QFont fontFor(const SceneShape& shape)
{
    const bool hasFigures =
        std::any_of(shape.label.begin(), shape.label.end(), [](QChar c) { return c.isDigit(); });
    return hasFigures ? plainFont() : labelFont(shape.role != Role::Strike && shape.role != Role::Near);
}

// A number alone stands right beside its point, without a leader, or not at all: of many points the
// leaders would be all one saw.
bool isBareNumber(const SceneShape& shape)
{
    return shape.figure == Figure::Point && !shape.label.isEmpty() && !shape.points.isEmpty() &&
           std::all_of(shape.label.begin(), shape.label.end(), [](QChar c) { return c.isDigit(); });
}

struct Asked {
    QVector<LabelAsk> asks;
    QVector<const SceneShape*> shapes;
};

LabelAsk askFor(const SceneShape& shape, const QPolygonF& outline, const QVector<QPolygonF>& over)
{
    LabelAsk ask{kindOf(shape), shape.label, fontFor(shape), outline, over};
    if (ask.kind == LabelKind::Plaque)
        ask.outline = middleOf(outline);
    return ask;
}

// The words that stand inside their areas.
Asked askedInside(const Scene& scene, const QTransform& cmToDevice)
{
    Asked made;
    QVector<QPolygonF> struck;
    for (const SceneShape& shape : scene) {
        QPolygonF outline = cmToDevice.map(QPolygonF(shape.points));
        if (hasWordInside(shape) && !shape.label.isEmpty() && !outline.isEmpty()) {
            made.asks.push_back(askFor(shape, outline, struck));
            made.shapes.push_back(&shape);
        }
        if (shape.role == Role::Strike)
            struck.push_back(std::move(outline));
    }
    return made;
}

// What names keep clear of, but for what is taken.
NameGround groundOf(const Scene& scene, const QTransform& cmToDevice, const QRectF& paper,
                    const std::vector<LaidBar>& laid)
{
    NameGround ground{paper, {}, {}, {}, {}};
    const double unitsPerCm = std::hypot(cmToDevice.m11(), cmToDevice.m12());
    for (const LaidBar& bar : laid)
        ground.laid.push_back({cmToDevice.map(QPointF(bar.from.x, bar.from.y)),
                               cmToDevice.map(QPointF(bar.to.x, bar.to.y)), bar.half.value() * unitsPerCm});
    for (const SceneShape& shape : scene) {
        const QPolygonF outline = cmToDevice.map(QPolygonF(shape.points));
        if (shape.figure == Figure::Line)
            ground.lines.push_back(outline);
        else if (shape.figure == Figure::Closed && !hasWordInside(shape))
            ground.areas.push_back(outline);
    }
    return ground;
}

// Round the ideal point, landmarks, and where volunteers pointed.
QVector<QRectF> signBoxes(const Scene& scene, const QTransform& cmToDevice)
{
    constexpr double kSign = 14.0;
    QVector<QRectF> boxes;
    for (const SceneShape& shape : scene)
        if (shape.figure == Figure::Point && !shape.points.isEmpty())
            boxes.push_back(QRectF(cmToDevice.map(shape.points.front()) - QPointF(kSign, kSign),
                                   QSizeF(2.0 * kSign, 2.0 * kSign)));
    return boxes;
}

// A small target region is kept clear of words, and so are signs.
QVector<QRectF> keptClear(const Scene& scene, const QTransform& cmToDevice, const QRectF& paper)
{
    QVector<QRectF> boxes = signBoxes(scene, cmToDevice);
    for (const SceneShape& shape : scene) {
        const QRectF box = cmToDevice.map(QPolygonF(shape.points)).boundingRect();
        if (shape.role == Role::Region && box.width() < paper.width() / 3.0 &&
            box.height() < paper.height() / 3.0)
            boxes.push_back(box);
    }
    return boxes;
}

// Structures that are only near go first, the older before the newer.
int weightOf(const SceneShape& shape) { return shape.role == Role::Near ? 0 : 1; }

bool isWellPlaced(const QVector<PlacedLabel>& placed, qsizetype i, const QRectF& paper,
                  const QVector<QRectF>& taken)
{
    const QRectF& box = placed[i].box;
    if (box.isEmpty())
        return true;
    if (!paper.adjusted(-0.5, -0.5, 0.5, 0.5).contains(box))
        return false;
    for (qsizetype k = 0; k < placed.size(); ++k)
        if (k != i && placed[k].box.intersects(box))
            return false;
    return std::none_of(taken.begin(), taken.end(),
                        [&](const QRectF& other) { return other.intersects(box); });
}

qsizetype leastOf(const Asked& all)
{
    qsizetype least = 0;
    for (qsizetype i = 1; i < all.shapes.size(); ++i)
        if (weightOf(*all.shapes[i]) < weightOf(*all.shapes[least]))
            least = i;
    return least;
}

// The first free spot round a point.
std::optional<PlacedLabel> besidePoint(const SceneShape& shape, const QTransform& cmToDevice,
                                       const QRectF& paper, const QVector<QRectF>& taken)
{
    constexpr double kAway = 17.0;
    const QPointF at = cmToDevice.map(shape.points.front());
    const QFont font = fontFor(shape);
    const QFontMetricsF metrics(font);
    const QSizeF size(metrics.horizontalAdvance(shape.label) + 8.0, capitalOf(font) + 12.0);
    for (const QPointF way :
         {QPointF(1, 0), QPointF(-1, 0), QPointF(0, -1), QPointF(0, 1), QPointF(0.75, -0.75),
          QPointF(-0.75, -0.75), QPointF(0.75, 0.75), QPointF(-0.75, 0.75)}) {
        QRectF box(QPointF(), size);
        box.moveCenter(at +
                       QPointF(way.x() * (kAway + size.width() / 2), way.y() * (kAway + size.height() / 2)));
        const auto meets = [&](const QRectF& other) { return other.intersects(box); };
        if (paper.contains(box) && std::none_of(taken.begin(), taken.end(), meets))
            return PlacedLabel{
                {LabelKind::Name, shape.label, font, {at}}, box, false, true, at, Qt::AlignCenter};
    }
    return std::nullopt;
}

double linear(double channel)
{
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double lightOf(const QColor& colour)
{
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

}  // namespace lecture_labels_detail

QFont labelFont(bool isName)
{
    QFont font = fontOf(isName ? Type::PlateLabel : Type::PlateWord, 2.0);
    font.setPixelSize(isName ? kNamePixels : kUprightPixels);
    return font;
}

QFont plainFont()
{
    QFont font = fontOf(Type::Body, 2.0);
    font.setPixelSize(kPlainPixels);
    return font;
}

double capitalOf(const QFont& font)
{
    constexpr int kLarge = 512;  // pixels: no hinting counts
    QFont large = font;
    large.setPixelSize(kLarge);
    return QFontMetricsF(large).tightBoundingRect(QStringLiteral("H")).height() * font.pixelSize() / kLarge;
}

double contrastOf(const QColor& a, const QColor& b)
{
    using lecture_labels_detail::lightOf;
    const double one = lightOf(a) + 0.05;
    const double other = lightOf(b) + 0.05;
    return std::max(one, other) / std::min(one, other);
}

QColor legible(const QColor& wished, const Scheme& scheme)
{
    return contrastOf(wished, scheme.paper) >= kLeastContrast ? wished : scheme.ink;
}

QVector<LectureLabel> lectureLabels(const Scene& scene, const Scheme& scheme, const QTransform& cmToDevice,
                                    const QRectF& paper, const QVector<QRectF>& taken,
                                    const std::vector<LaidBar>& laid)
{
    using namespace lecture_labels_detail;
    Asked all = askedInside(scene, cmToDevice);
    const QVector<QRectF> clear = keptClear(scene, cmToDevice, paper);
    QVector<PlacedLabel> placed;
    while (!all.asks.isEmpty()) {
        placed = placeLabels(all.asks, paper, taken + clear);
        bool isWell = true;
        for (qsizetype i = 0; i < placed.size(); ++i)
            isWell = isWell && isWellPlaced(placed, i, paper, taken);
        if (isWell)
            break;
        const qsizetype least = leastOf(all);
        all.asks.remove(least);
        all.shapes.remove(least);
        placed.clear();
    }
    QVector<LectureLabel> labels;
    QVector<QRectF> full = taken;
    const auto add = [&](const PlacedLabel& label, const SceneShape& shape) {
        labels.push_back({label, legible(scheme.of(shape.role), scheme)});
        full.push_back(label.box);
    };
    for (qsizetype i = 0; i < placed.size(); ++i)
        if (!placed[i].box.isEmpty())
            add(placed[i], *all.shapes[i]);
    NameGround ground = groundOf(scene, cmToDevice, paper, laid);
    const QVector<QRectF> signs = signBoxes(scene, cmToDevice);
    for (const SceneShape& shape : scene) {
        if (shape.label.isEmpty() || shape.points.isEmpty() || hasWordInside(shape) || isBareNumber(shape))
            continue;
        const LabelAsk ask = askFor(shape, cmToDevice.map(QPolygonF(shape.points)), {});
        ground.taken = full + clear;
        auto name = placeName(ask, ground);
        if (!name) {
            ground.taken = full + signs;
            name = placeName(ask, ground);
        }
        if (name)
            add(*name, shape);
    }
    full += clear;
    for (const SceneShape& shape : scene) {
        const auto number = isBareNumber(shape) ? besidePoint(shape, cmToDevice, paper, full) : std::nullopt;
        if (number)
            add(*number, shape);
    }
    return labels;
}

}  // namespace fb
