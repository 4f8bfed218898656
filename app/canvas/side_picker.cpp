#include "app/canvas/side_picker.h"

#include <QAbstractButton>
#include <QEvent>
#include <QFile>
#include <QKeyEvent>
#include <QPainter>
#include <QSvgRenderer>
#include <algorithm>

#include "app/look/type.h"

namespace fb {

namespace picker_detail {

inline constexpr double kAspect = 182.0 / 318.0;  // of the drawing
inline constexpr int kGap = 28;
inline constexpr int kPad = 14;
inline constexpr int kTallest = 480;  // pixels at plain text size: the figures stay small

QColor between(const QColor& a, const QColor& b, double share)
{
    const auto part = [share](int from, int to) { return static_cast<int>(from + (to - from) * share); };
    return {part(a.red(), b.red()), part(a.green(), b.green()), part(a.blue(), b.blue())};
}

// The atelier's colours (resources/atelier/side_figure.py, side_figure_legs.py) become the scheme's: a grey
// person, so that no skin is meant.
QByteArray drawing(const Scheme& scheme, Site site)
{
    QFile file(site == Site::Deltoid ? QStringLiteral(":/icons/figure.svg")
                                     : QStringLiteral(":/icons/figure-legs.svg"));
    if (!file.open(QIODevice::ReadOnly))
        return {};
    QByteArray text = file.readAll();
    const bool dark = scheme.isDark();
    const QColor line = dark ? QColor(0x10, 0x0e, 0x0c) : scheme.ink;
    const QColor wash =
        dark ? QColor(0xa8, 0x98, 0x86) : between(scheme.paper, QColor(0xd6, 0xb0, 0x86), 0.34);
    const auto set = [&](const char* from, const QColor& to) { text.replace(from, to.name().toLatin1()); };
    set("#eeddcc", wash);
    set("#ccbbaa", between(wash, line, 0.24));
    set("#dddddd", dark ? QColor(0x6f, 0x6a, 0x63) : between(scheme.paper, scheme.ink, 0.10));
    set("#aaaaaa", dark ? QColor(0x45, 0x41, 0x3c) : between(scheme.paper, scheme.ink, 0.36));
    set("#ff0000", dark ? QColor(0x0f, 0x4a, 0x56) : scheme.accent);
    set("#000000", line);
    return text;
}

QString markedPart(Site site, bool left)
{
    if (site == Site::Deltoid)
        return left ? QStringLiteral("arm-left") : QStringLiteral("arm-right");
    return left ? QStringLiteral("leg-left") : QStringLiteral("leg-right");
}

}  // namespace picker_detail

// One figure with one limb marked.
class FigureButton : public QAbstractButton {
public:
    explicit FigureButton(QWidget* parent) : QAbstractButton(parent)
    {
        setFocusPolicy(Qt::StrongFocus);
        setCursor(Qt::PointingHandCursor);
        setAttribute(Qt::WA_Hover);
    }

    void show(Site site, bool onViewersLeft, const Scheme& scheme)
    {
        m_site = site;
        m_left = onViewersLeft;
        m_scheme = scheme;
        m_drawn = QPixmap();
        update();
    }

    [[nodiscard]] bool marksViewersLeft() const { return m_left; }

protected:
    void keyPressEvent(QKeyEvent* event) override
    {
        if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
            click();
        else if (event->key() == Qt::Key_Left || event->key() == Qt::Key_Right)
            event->ignore();  // the picker's
        else
            QAbstractButton::keyPressEvent(event);
    }

    void paintEvent(QPaintEvent*) override
    {
        QPainter painter(this);
        painter.fillRect(rect(), underMouse() || isDown()
                                     ? picker_detail::between(m_scheme.paper, m_scheme.accent, 0.08)
                                     : m_scheme.paper);
        if (m_drawn.isNull() || m_drawn.size() != size() * devicePixelRatioF())
            draw();
        painter.drawPixmap(0, 0, m_drawn);
        painter.setPen(QPen(hasFocus() ? m_scheme.focus : m_scheme.line, hasFocus() ? 3.0 : 1.0,
                            Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
        const double inset = hasFocus() ? 1.5 : 0.5;
        painter.drawRect(QRectF(rect()).adjusted(inset, inset, -inset, -inset));
    }

private:
    void draw()
    {
        using picker_detail::kPad;
        m_drawn = QPixmap(size() * devicePixelRatioF());
        m_drawn.setDevicePixelRatio(devicePixelRatioF());
        m_drawn.fill(Qt::transparent);
        QSvgRenderer renderer(picker_detail::drawing(m_scheme, m_site));
        if (!renderer.isValid())
            return;
        const QRectF room = QRectF(rect()).adjusted(kPad, kPad, -kPad, -4);
        const double scale = std::min(room.width() / renderer.viewBoxF().width(),
                                      room.height() / renderer.viewBoxF().height());
        QTransform place;
        place.translate(room.center().x(), room.bottom());
        place.scale(scale, scale);
        place.translate(-renderer.viewBoxF().center().x(), -renderer.viewBoxF().bottom());
        QPainter painter(&m_drawn);
        painter.setRenderHint(QPainter::Antialiasing);
        for (const QString& part : {QStringLiteral("figure"), picker_detail::markedPart(m_site, m_left)})
            if (renderer.elementExists(part))
                renderer.render(&painter, part, place.mapRect(renderer.boundsOnElement(part)));
    }

    Site m_site = Site::Deltoid;
    bool m_left = true;
    Scheme m_scheme = schemeOf(PaletteKind::Light);
    QPixmap m_drawn;
};

SidePicker::SidePicker(QWidget* parent) : QWidget(parent)
{
    setObjectName(QStringLiteral("sidePicker"));
    for (FigureButton*& figure : m_figures) {
        figure = new FigureButton(this);
        connect(figure, &QAbstractButton::clicked, this,
                [this, figure] { Q_EMIT picked(figure->marksViewersLeft() ? Side::Right : Side::Left); });
    }
    setFocusProxy(m_figures[0]);
    m_figures[0]->setObjectName(QStringLiteral("figureFirst"));
    m_figures[1]->setObjectName(QStringLiteral("figureSecond"));
    setTabOrder(m_figures[0], m_figures[1]);
    setScheme(schemeOf(PaletteKind::Light));
}

void SidePicker::setFirst(Side side)
{
    m_first = side;
    setScheme(m_scheme);
}

void SidePicker::setSite(Site site)
{
    m_site = site;
    setScheme(m_scheme);
}

void SidePicker::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    m_figures[0]->show(m_site, m_first == Side::Right, scheme);
    m_figures[1]->show(m_site, m_first != Side::Right, scheme);
    retranslate();
}

QSize SidePicker::sizeHint() const
{
    return {2 * 220 + picker_detail::kGap, static_cast<int>(220 / picker_detail::kAspect)};
}

QSize SidePicker::minimumSizeHint() const
{
    return {2 * 110 + picker_detail::kGap, static_cast<int>(110 / picker_detail::kAspect)};
}

void SidePicker::retranslate()
{
    setAccessibleName(tr("Two figures facing you"));
    for (FigureButton* figure : m_figures) {
        const bool left = figure->marksViewersLeft();
        if (m_site == Site::Deltoid)
            figure->setAccessibleName(left ? tr("Figure with the arm on your left marked")
                                           : tr("Figure with the arm on your right marked"));
        else
            figure->setAccessibleName(left ? tr("Figure with hip and thigh on your left marked")
                                           : tr("Figure with hip and thigh on your right marked"));
    }
}

void SidePicker::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        retranslate();
}

void SidePicker::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Left)
        m_figures[0]->setFocus(Qt::TabFocusReason);
    else if (event->key() == Qt::Key_Right)
        m_figures[1]->setFocus(Qt::TabFocusReason);
    else
        QWidget::keyPressEvent(event);
}

// Side by side and never mirrored by the language: the arrows and the figures are the viewer's.
void SidePicker::resizeEvent(QResizeEvent*)
{
    const int tallest = static_cast<int>(picker_detail::kTallest * textScaleOf(font()));
    const int height =
        std::min({this->height(), tallest,
                  static_cast<int>((width() - picker_detail::kGap) / 2.0 / picker_detail::kAspect)});
    const int width = static_cast<int>(height * picker_detail::kAspect) + 2;
    const int left = (this->width() - 2 * width - picker_detail::kGap) / 2;
    const int top = (this->height() - height) / 2;
    m_figures[0]->setGeometry(left, top, width, height);
    m_figures[1]->setGeometry(left + width + picker_detail::kGap, top, width, height);
}

}  // namespace fb
