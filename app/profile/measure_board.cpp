#include "app/profile/measure_board.h"

#include <QEvent>
#include <QKeyEvent>
#include <QLocale>
#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "app/look/type.h"
#include "app/profile/board_painter.h"

namespace fb {

namespace measure_board_detail {

constexpr double kPaperMargin = 24.0;  // around the figure, in pixels of the desktop
constexpr double kForNames = 44.0;     // above lines, at plain text size
constexpr double kRulerHeight = 84.0;
constexpr int kLeastPixels = 24;
constexpr int kLongStep = 10;
constexpr double kNearLine = 14.0;
constexpr double kNearGrip = 24.0;

// What a figure begins with.
Mm usualSize(Laid laid)
{
    constexpr Mm kHand{182.0};
    constexpr Mm kFinger{16.0};
    switch (laid) {
    case Laid::Card: return kCardWidth;
    case Laid::Ruler: return kRulerLength;
    case Laid::Hand: return kHand;
    case Laid::Finger: return kFinger;
    }
    return kCardWidth;
}

}  // namespace measure_board_detail

using namespace measure_board_detail;

MeasureBoard::MeasureBoard(QWidget* parent) : QAbstractSlider(parent), m_scheme(schemeOf(PaletteKind::Light))
{
    setObjectName(QStringLiteral("measureBoard"));
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setSingleStep(1);
    setPageStep(kLongStep);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    say();
}

void MeasureBoard::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    update();
}

void MeasureBoard::lay(Laid laid, PixelsPerMm scale)
{
    m_laid = laid;
    m_scale = scale;
    m_held = Held::Nothing;
    fitRange();
    setValue(static_cast<int>(std::lround(usualSize(laid).value() * scale.value())));
    const QSizeF size = figure().size();
    m_corner = {(width() - size.width()) / 2.0, (height() - size.height()) / 2.0};
    keepInside();
    say();
    update();
}

QRectF MeasureBoard::figure() const
{
    const double wide = dips(value());
    const double names = kForNames * textScaleOf(font());
    switch (m_laid) {
    case Laid::Card: return {m_corner, QSizeF(wide, wide * (kCardHeight / kCardWidth))};
    case Laid::Ruler: return {m_corner, QSizeF(wide, kRulerHeight)};
    case Laid::Hand:
    case Laid::Finger: return {m_corner.x(), names, wide, height() - names - kPaperMargin};
    }
    return {};
}

void MeasureBoard::fitRange()
{
    double most = width() - 2.0 * kPaperMargin;
    if (m_laid == Laid::Card)
        most = std::min(most, (height() - 4.0 * kPaperMargin) * (kCardWidth / kCardHeight));
    setRange(kLeastPixels, std::max(kLeastPixels, static_cast<int>(most * devicePixelRatioF())));
}

void MeasureBoard::keepInside()
{
    const QSizeF size = figure().size();
    m_corner.setX(std::clamp(m_corner.x(), kPaperMargin,
                             std::max(kPaperMargin, width() - kPaperMargin - size.width())));
    m_corner.setY(std::clamp(m_corner.y(), kPaperMargin,
                             std::max(kPaperMargin, height() - 3.0 * kPaperMargin - size.height())));
}

void MeasureBoard::sliderChange(SliderChange change)
{
    QAbstractSlider::sliderChange(change);
    keepInside();
    if (change == SliderValueChange)
        say();
    update();
}

void MeasureBoard::resizeEvent(QResizeEvent*)
{
    const QSizeF size = figure().size();
    fitRange();
    m_corner = {(width() - size.width()) / 2.0, (height() - size.height()) / 2.0};
    keepInside();
}

QSize MeasureBoard::minimumSizeHint() const { return {420, 240}; }

MeasureBoard::Held MeasureBoard::heldAt(QPointF at, bool byFinger) const
{
    const QRectF f = figure();
    if (byFinger) {
        for (const QPointF& grip : gripsOf(m_laid, f)) {
            if (QLineF(grip, at).length() <= kNearGrip)
                return grip.x() < f.center().x() ? Held::Left : Held::Right;
        }
        return Held::Nothing;
    }
    // Of two sides that lie close together, the nearer one.
    const double left = std::abs(at.x() - f.left());
    const double right = std::abs(at.x() - f.right());
    const bool isLevel = at.y() >= f.top() - kNearLine && at.y() <= f.bottom() + kNearLine;
    if (isLevel && std::min(left, right) <= kNearLine)
        return left < right ? Held::Left : Held::Right;
    return f.contains(at) ? Held::Whole : Held::Nothing;
}

void MeasureBoard::mousePressEvent(QMouseEvent* event)
{
    const bool byFinger = event->device() && event->device()->type() == QInputDevice::DeviceType::TouchScreen;
    m_held = event->button() == Qt::LeftButton ? heldAt(event->position(), byFinger) : Held::Nothing;
    const QRectF f = figure();
    m_grabbed = event->position() - (m_held == Held::Right ? f.topRight() : f.topLeft());
}

void MeasureBoard::mouseMoveEvent(QMouseEvent* event)
{
    const QPointF to = event->position() - m_grabbed;
    const QRectF f = figure();
    const auto pixels = [this](double wide) {
        return static_cast<int>(std::lround(wide * devicePixelRatioF()));
    };
    switch (m_held) {
    case Held::Nothing: {
        const Held over = heldAt(event->position(), false);
        setCursor(over == Held::Nothing ? Qt::ArrowCursor
                  : over == Held::Whole ? Qt::OpenHandCursor
                                        : Qt::SizeHorCursor);
        return;
    }
    case Held::Right: return setValue(pixels(to.x() - f.left()));
    case Held::Left: {
        const double right = f.right();
        const double most = right - kPaperMargin;
        const int wide = std::clamp(pixels(std::min(right - to.x(), most)), minimum(), maximum());
        // First the corner, so that the right side stays where it is.
        m_corner.setX(right - dips(wide));
        return setValue(wide);
    }
    case Held::Whole:
        m_corner = to;
        keepInside();
        return update();
    }
}

void MeasureBoard::mouseReleaseEvent(QMouseEvent*) { m_held = Held::Nothing; }

void MeasureBoard::keyPressEvent(QKeyEvent* event)
{
    const int step = event->modifiers() & Qt::ShiftModifier ? pageStep() : singleStep();
    switch (event->key()) {
    case Qt::Key_Plus:  // on many keyboards with Shift
        return setValue(value() + singleStep());
    case Qt::Key_Equal:
    case Qt::Key_Right:
    case Qt::Key_Up: return setValue(value() + step);
    case Qt::Key_Minus:
    case Qt::Key_Left:
    case Qt::Key_Down: return setValue(value() - step);
    default: QAbstractSlider::keyPressEvent(event);
    }
}

void MeasureBoard::wheelEvent(QWheelEvent* event) { event->ignore(); }

// What a screen reader is told of the board as it stands.
void MeasureBoard::say()
{
    switch (m_laid) {
    case Laid::Card: setAccessibleName(tr("Width of the drawn card")); break;
    case Laid::Ruler: setAccessibleName(tr("Length of the drawn line")); break;
    case Laid::Hand: setAccessibleName(tr("Two lines for your hand")); break;
    case Laid::Finger: setAccessibleName(tr("Two lines for your finger")); break;
    }
    const bool isMeasured = m_laid == Laid::Hand || m_laid == Laid::Finger;
    setAccessibleDescription(isMeasured ? tr("%1 cm apart").arg(QLocale().toString(length().value(), 'f', 2))
                                        : tr("%n pixel(s)", nullptr, value()));
}

void MeasureBoard::paintEvent(QPaintEvent*)
{
    BoardLook look;
    look.laid = m_laid;
    look.figure = figure();
    look.textScale = textScaleOf(font());
    switch (m_laid) {
    case Laid::Card: look.size = tr("%1 mm").arg(QLocale().toString(kCardWidth.value(), 'f', 2)); break;
    case Laid::Ruler: look.size = tr("%1 mm").arg(QLocale().toString(kRulerLength.value(), 'f', 0)); break;
    case Laid::Hand:
        look.size = tr("%1 cm").arg(QLocale().toString(length().value(), 'f', 1));
        look.sides = {tr("wrist crease"), tr("tip of the middle finger")};
        break;
    case Laid::Finger: look.size = tr("%1 cm").arg(QLocale().toString(length().value(), 'f', 2)); break;
    }
    look.pixelsPerMm =
        m_laid == Laid::Card ? look.figure.width() / kCardWidth.value() : dips(m_scale.value());
    QPainter painter(this);
    paintBoard(painter, rect(), look, m_scheme);
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(QPen(hasFocus() ? m_scheme.focus : m_scheme.line, hasFocus() ? 3.0 : 1.0, Qt::SolidLine,
                        Qt::SquareCap, Qt::MiterJoin));
    const double inset = hasFocus() ? 1.5 : 0.5;
    painter.drawRect(QRectF(rect()).adjusted(inset, inset, -inset, -inset));
}

void MeasureBoard::changeEvent(QEvent* event)
{
    QAbstractSlider::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
}

}  // namespace fb
