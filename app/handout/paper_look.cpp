#include "app/handout/paper_look.h"

#include <QPainter>
#include <algorithm>
#include <atomic>

#include "app/canvas/hand_painter.h"
#include "app/canvas/held_layer.h"
#include "app/canvas/paper_shades.h"
#include "app/canvas/plaque.h"
#include "app/canvas/press_painter.h"
#include "app/lecture/lecture_look_hand.h"
#include "app/look/type.h"
#include "app/report/item_picture.h"
#include "app/scene/scene_painter.h"

namespace fb {

namespace paper_look_detail {

constexpr double kLeastHatch = 0.3;    // units of a plate at label scale 1: finer hatches only grey the paper
constexpr double kRoomForWords = 6.0;  // likewise: between words and the plate's edge
constexpr double kFineness = 2.0;  // dots of a drawn body to one of the printer's, so that lines stay sharp
const std::atomic_bool kNeverCancelled{false};

// cm, which grow upward, to a rectangle whose units grow downward.
QTransform cmTo(const QRectF& area, const QRectF& at)
{
    QTransform transform;
    transform.translate(at.left(), at.bottom());
    transform.scale(at.width() / area.width(), -at.height() / area.height());
    transform.translate(-area.left(), -area.top());
    return transform;
}

// kept: how much of its own darkness.
QColor grey(const QColor& colour, float kept)
{
    constexpr float kFull = 255.0F;
    const float light = 1.0F - kept * (1.0F - static_cast<float>(qGray(colour.rgb())) / kFull);
    return QColor::fromRgbF(light, light, light, colour.alphaF());
}

bool isLine(const std::string& tone) { return tone.ends_with("line") || tone.ends_with("hatch"); }

// Small boxes along what is newest, so that its name does not stand on it.
QVector<QRectF> alongNewest(const Scene& scene, const QTransform& toPaper)
{
    constexpr double kStep = 7.0;
    constexpr double kBox = 3.0;
    QVector<QRectF> boxes;
    const auto add = [&boxes](QPointF a, QPointF b) {
        const int pieces = std::max(1, static_cast<int>(QLineF(a, b).length() / kStep));
        for (int i = 0; i <= pieces; ++i)
            boxes.push_back(QRectF(a + (b - a) * i / pieces - QPointF(kBox, kBox) / 2.0, QSizeF(kBox, kBox)));
    };
    for (const SceneShape& shape : scene) {
        if (shape.role != Role::Newest && shape.role != Role::Region)
            continue;
        const QPolygonF line = toPaper.map(QPolygonF(shape.points));
        for (qsizetype i = 0; i + 1 < line.size(); ++i)
            add(line[i], line[i + 1]);
        if (shape.figure == Figure::Closed && !line.isEmpty())
            add(line.back(), line.front());
    }
    return boxes;
}

// The same along hand and fingers, as broad as they are.
QVector<QRectF> alongLaid(const LectureLook& look, const QTransform& toPaper)
{
    constexpr double kPieces = 6.0;
    constexpr double kShare = 0.8;  // a name may touch the hand's edge
    QVector<QRectF> boxes;
    for (const LaidBar& bar : laidBars(look)) {
        const double half = bar.half.value() * toPaper.m11() * kShare;
        for (double t = 0.0; t <= kPieces; t += 1.0) {
            const Point at = lerp(bar.from, bar.to, t / kPieces);
            boxes.push_back(QRectF(toPaper.map(QPointF(at.x, at.y)) - QPointF(half, half),
                                   QSizeF(2.0 * half, 2.0 * half)));
        }
    }
    return boxes;
}

// A point that lies outside the picture would drag its label to the rim.
Scene within(const Scene& scene, const QRectF& area)
{
    Scene seen;
    std::ranges::copy_if(scene, std::back_inserter(seen), [&area](const SceneShape& shape) {
        return !shape.points.isEmpty() &&
               (shape.figure != Figure::Point || area.contains(shape.points.front()));
    });
    return seen;
}

// The finger fades; its words stay words.
void paintPressed(QPainter& painter, const PressLook& press, const PressPlace& place)
{
    const Scheme scheme = paperScheme();
    if (!losesFading(painter)) {
        paintPress(painter, press, place, scheme);
        return;
    }
    PressLook wordless = press;
    wordless.words.clear();
    const QRectF box = pressBox(wordless, place, {}, painter.layoutDirection());
    painter.drawImage(box, pictureOf(box, dotsPerUnit(painter),
                                     [&](QPainter& into) { paintPress(into, wordless, place, scheme); }));
    const QRectF words = pressWordsBox(press, place, {}, painter.layoutDirection());
    if (!words.isEmpty())
        paintPlaque(painter, words, press.words, fontOf(Type::Body, place.textScale), scheme);
}

// Held between low and high; in the middle of them where they leave no room.
double slid(double low, double length, double least, double most)
{
    return length >= most - least ? (least + most - length) / 2.0 : std::clamp(low, least, most - length);
}

}  // namespace paper_look_detail

PaperBody::PaperBody(const LectureBody& body, Tint tint)
    : m_picture(body.picture),
      m_ink(std::make_shared<const ReadyInk>(*body.picture)),
      m_tint(tint)
{
}

Result<PaperBody> PaperBody::make(const LectureBody& body, const Library& library, Tint tint)
{
    PaperBody made(body, tint);
    for (const View hand : {View::OpenHand, View::TwoFingers, View::ThreeFingers}) {
        if (siteOf(hand) != body.target->site)
            continue;
        const auto art = library.plate(hand);
        if (!art)
            return tl::unexpected(art.error());
        made.m_hands.emplace(hand, *art);
    }
    return made;
}

QRectF PaperBody::fittedArea(const QRectF& area, double widthToHeight) const
{
    using paper_look_detail::slid;
    const double width = std::max(area.width(), area.height() * widthToHeight);
    const double height = width / widthToHeight;
    const Bounds& paper = m_picture->ink.paper;
    return {slid(area.center().x() - width / 2.0, width, paper.low.x, paper.high.x),
            slid(area.center().y() - height / 2.0, height, paper.low.y, paper.high.y), width, height};
}

std::vector<QColor> PaperBody::tonesOf(const Plate& plate, int skinTone, bool isPale) const
{
    using namespace paper_look_detail;
    constexpr float kOfWashes = 0.5F;  // kept of a pale drawing, so that it can be drawn over
    constexpr float kOfLines = 0.8F;
    std::vector<QColor> tones = toneColours(plate, paperScheme(), m_tint == Tint::Grey ? 0 : skinTone);
    if (m_tint == Tint::Full)
        return tones;
    for (std::size_t i = 0; i < tones.size(); ++i)
        tones[i] = grey(tones[i], !isPale ? 1.0F : isLine(plate.tones[i].name) ? kOfLines : kOfWashes);
    return tones;
}

void PaperBody::paint(QPainter& painter, const QRectF& at, const LectureLook& look, double labelScale,
                      Qt::LayoutDirection direction) const
{
    painter.save();
    painter.translate(at.topLeft());
    painter.scale(labelScale, labelScale);
    painter.setLayoutDirection(direction);
    const QRectF sheet(QPointF(), at.size() / labelScale);
    const QRectF area = fittedArea(look.area, at.width() / at.height());
    painter.setClipRect(sheet);
    paintBody(painter, sheet, area);
    paintLaidThings(painter, look, paper_look_detail::cmTo(area, sheet));
    paintSigns(painter, sheet, area, look);
    painter.restore();
}

void PaperBody::paintBody(QPainter& painter, const QRectF& at, const QRectF& area) const
{
    using namespace paper_look_detail;
    const auto paintInto = [&](QPainter& into) {
        const InkManner manner{cmTo(area, at), {Layer::Skin, Layer::Cloth}, kLeastHatch, {}};
        (void)paintInk(into, *m_ink, tonesOf(*m_picture->plate, m_picture->skinTone, true), manner,
                       kNeverCancelled);
    };
    if (!losesFading(painter)) {
        paintInto(painter);
        return;
    }
    if (!m_kept || m_kept->area != area || m_kept->size != at.size()) {
        const QImage drawn = pictureOf(at, kFineness * dotsPerUnit(painter), [&](QPainter& into) {
            into.fillRect(at, Qt::white);
            paintInto(into);
        });
        m_kept = Kept{
            area, at.size(),
            drawn.convertToFormat(m_tint == Tint::Grey ? QImage::Format_Grayscale8 : QImage::Format_RGB32)};
    }
    painter.drawImage(at, m_kept->image);
}

void PaperBody::paintLaidThings(QPainter& painter, const LectureLook& look, const QTransform& toPaper) const
{
    const auto lay = [&](const std::optional<Held>& held) {
        if (!held)
            return;
        // Its ink lies about its own origin.
        const ReadyInk ink(Picture{held->art, inkOf(*held), 0}, ReadyInk::Rows::None);
        (void)paintHand(painter, ink, tonesOf(*held->art, 0, false),
                        QTransform::fromTranslate(held->at.x(), held->at.y()) * toPaper,
                        paper_look_detail::kNeverCancelled);
    };
    const auto artOf = [this](View view) {
        const auto found = m_hands.find(view);
        return found == m_hands.end() ? nullptr : found->second;
    };
    if (look.fingers)
        lay(heldOf(FingersLook{artOf(look.fingers->count > 2 ? View::ThreeFingers : View::TwoFingers),
                               *look.fingers, look.fingerCm}));
    if (look.hand)
        lay(heldOf(HandLook{artOf(View::OpenHand), *look.hand}));
}

void PaperBody::paintSigns(QPainter& painter, const QRectF& at, const QRectF& area,
                           const LectureLook& look) const
{
    using namespace paper_look_detail;
    const QTransform toPaper = cmTo(area, at);
    const QRectF forWords = at.adjusted(kRoomForWords, kRoomForWords, -kRoomForWords, -kRoomForWords);
    const Scene scene = within(look.scene, area);
    QVector<QRectF> taken = alongNewest(scene, toPaper) + alongLaid(look, toPaper);
    PressPlace place{{}, toPaper.m11(), forWords, 1.0};
    if (look.press) {
        place.at = toPaper.map(look.press->cm);
        taken.push_back(ringBox(*look.press, place));
    }
    LabelShyness shyness;
    for (const QRectF& row : m_ink->silhouette())
        shyness.body += toPaper.mapRect(row);
    paintScene(painter, scene, paperScheme(), toPaper, 1.0, forWords, taken, shyness);
    if (look.press)
        paintPressed(painter, *look.press, place);
}

}  // namespace fb
