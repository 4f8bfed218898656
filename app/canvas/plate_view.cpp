#include "app/canvas/plate_view.h"

#include <QAccessible>
#include <QEvent>
#include <QFocusEvent>
#include <QPainter>

#include "app/canvas/plate_accessible.h"
#include "app/canvas/plate_stage.h"
#include "app/look/type.h"

namespace fb {

class PlateView::Private {
public:
    Private() : input(stage) {}

    PlateStage stage;
    PlateInput input;
    QString ownName;  // what the view calls itself until a page names it
};

PlateView::PlateView(QWidget* parent) : QWidget(parent), m_private(std::make_unique<Private>())
{
    installPlateAccessibility();
    setObjectName(QStringLiteral("plateView"));
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setAttribute(Qt::WA_AcceptTouchEvents);
    setCursor(Qt::CrossCursor);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    connect(&m_private->stage, &PlateStage::changed, this, qOverload<>(&QWidget::update));
    connect(&m_private->stage, &PlateStage::marked, this, &PlateView::marked);
    connect(&m_private->stage, &PlateStage::withdrawAsked, this, &PlateView::withdrawAsked);
    connect(&m_private->stage, &PlateStage::gradeAsked, this, &PlateView::gradeAsked);
    connect(&m_private->stage, &PlateStage::sharpened, this, &PlateView::sharpened);
    connect(&m_private->stage, &PlateStage::crosshairMoved, this, [this] {
        QAccessibleEvent moved(this, QAccessible::NameChanged);
        moved.setChild(0);  // the crosshair is the first thing spoken of
        QAccessible::updateAccessibility(&moved);
    });
    retranslate();
}

PlateView::~PlateView() = default;

void PlateView::setPicture(std::shared_ptr<const Picture> picture)
{
    m_private->stage.setPicture(std::move(picture));
}

void PlateView::setScene(const Scene& scene) { m_private->stage.setScene(scene); }

void PlateView::setMark(std::optional<QPointF> cm) { m_private->stage.setMark(cm); }

void PlateView::setHand(std::shared_ptr<const Picture> hand) { m_private->stage.setHand(std::move(hand)); }

void PlateView::setHandShown(bool shown) { m_private->stage.setHandShown(shown); }

bool PlateView::isHandShown() const { return m_private->stage.isHandShown(); }

void PlateView::setLayers(const QSet<Layer>& layers) { m_private->stage.setLayers(layers); }

void PlateView::setMarkable(bool markable)
{
    setCursor(markable ? Qt::CrossCursor : Qt::OpenHandCursor);
    m_private->stage.setMarkable(markable);
}

void PlateView::setScheme(const Scheme& scheme) { m_private->stage.setScheme(scheme); }

QPointF PlateView::toCm(QPointF widget) const { return m_private->stage.frame().toCm(widget); }

QPointF PlateView::toWidget(QPointF cm) const { return m_private->stage.frame().toWidget(cm); }

double PlateView::pixelsPerCm() const { return m_private->stage.frame().pixelsPerCm(); }

QPointF PlateView::crosshair() const { return m_private->stage.crosshair(); }

bool PlateView::isSharp() const { return m_private->stage.isSharp(); }

QVector<SpokenItem> PlateView::spokenItems() const { return fb::spokenItems(m_private->stage.face()); }

void PlateView::showWhole() { m_private->stage.whole(); }

void PlateView::zoomBy(double factor) { m_private->stage.zoom(factor); }

void PlateView::showAround(const QRectF& cm) { m_private->stage.around(cm); }

QSize PlateView::sizeHint() const { return {720, 720}; }

QSize PlateView::minimumSizeHint() const { return {240, 240}; }

bool PlateView::event(QEvent* event)
{
    if (event->type() == QEvent::FocusIn) {
        const Qt::FocusReason reason = static_cast<QFocusEvent*>(event)->reason();
        if (reason == Qt::TabFocusReason || reason == Qt::BacktabFocusReason ||
            reason == Qt::ShortcutFocusReason)
            m_private->stage.setByKeyboard(true);
        m_private->stage.setFocus(true);
    }
    if (event->type() == QEvent::FocusOut)
        m_private->stage.setFocus(false);
    if (event->type() == QEvent::Polish)
        m_private->stage.setTextScale(textScaleOf(font()));
    if (m_private->input.handle(event)) {
        event->accept();
        return true;
    }
    return QWidget::event(event);
}

void PlateView::paintEvent(QPaintEvent*)
{
    PlateFace face = m_private->stage.face();
    face.placeholder = tr("The plate will lie here.");
    QPainter painter(this);
    paintFace(painter, face);
}

void PlateView::resizeEvent(QResizeEvent*) { m_private->stage.setWidget(rect(), devicePixelRatioF()); }

void PlateView::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        retranslate();
    if (event->type() == QEvent::FontChange || event->type() == QEvent::ApplicationFontChange)
        m_private->stage.setTextScale(textScaleOf(font()));
}

void PlateView::retranslate()
{
    const bool isOwn = accessibleName() == m_private->ownName;
    //: Name of the drawing for a screen reader.
    m_private->ownName = tr("Drawing of the patient");
    if (isOwn)
        setAccessibleName(m_private->ownName);
    setAccessibleDescription(
        tr("Arrows move the crosshair by 5 millimetres, with Shift by 1. Enter places the mark, "
           "Enter again asks for the grade. Backspace withdraws the mark. Plus and minus zoom, "
           "zero shows the whole plate, Control with arrows moves the paper."));
    update();
}

}  // namespace fb
