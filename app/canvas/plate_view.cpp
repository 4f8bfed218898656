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
};

PlateView::PlateView(QWidget* parent) : QWidget(parent), d(std::make_unique<Private>())
{
    installPlateAccessibility();
    setObjectName(QStringLiteral("plateView"));
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setAttribute(Qt::WA_AcceptTouchEvents);
    setCursor(Qt::CrossCursor);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    connect(&d->stage, &PlateStage::changed, this, qOverload<>(&QWidget::update));
    connect(&d->stage, &PlateStage::marked, this, &PlateView::marked);
    connect(&d->stage, &PlateStage::withdrawAsked, this, &PlateView::withdrawAsked);
    connect(&d->stage, &PlateStage::gradeAsked, this, &PlateView::gradeAsked);
    connect(&d->stage, &PlateStage::sharpened, this, &PlateView::sharpened);
    connect(&d->stage, &PlateStage::crosshairMoved, this, [this] {
        QAccessibleEvent moved(this, QAccessible::NameChanged);
        moved.setChild(0);  // the crosshair is the first thing spoken of
        QAccessible::updateAccessibility(&moved);
    });
    retranslate();
}

PlateView::~PlateView() = default;

void PlateView::setPicture(std::shared_ptr<const Picture> picture)
{
    d->stage.setPicture(std::move(picture));
}

void PlateView::setScene(const Scene& scene) { d->stage.setScene(scene); }

void PlateView::setMark(std::optional<QPointF> cm) { d->stage.setMark(cm); }

void PlateView::setLayers(const QSet<Layer>& layers) { d->stage.setLayers(layers); }

void PlateView::setMarkable(bool markable)
{
    setCursor(markable ? Qt::CrossCursor : Qt::OpenHandCursor);
    d->stage.setMarkable(markable);
}

void PlateView::setScheme(const Scheme& scheme) { d->stage.setScheme(scheme); }

QPointF PlateView::toCm(QPointF widget) const { return d->stage.frame().toCm(widget); }

QPointF PlateView::toWidget(QPointF cm) const { return d->stage.frame().toWidget(cm); }

double PlateView::pixelsPerCm() const { return d->stage.frame().pixelsPerCm(); }

QPointF PlateView::crosshair() const { return d->stage.crosshair(); }

bool PlateView::isSharp() const { return d->stage.isSharp(); }

QVector<SpokenItem> PlateView::spokenItems() const { return fb::spokenItems(d->stage.face()); }

void PlateView::showWhole() { d->stage.whole(); }

void PlateView::zoomBy(double factor) { d->stage.zoom(factor); }

void PlateView::showAround(const QRectF& cm) { d->stage.around(cm); }

QSize PlateView::sizeHint() const { return {720, 720}; }

QSize PlateView::minimumSizeHint() const { return {240, 240}; }

bool PlateView::event(QEvent* event)
{
    if (event->type() == QEvent::FocusIn) {
        const Qt::FocusReason reason = static_cast<QFocusEvent*>(event)->reason();
        if (reason == Qt::TabFocusReason || reason == Qt::BacktabFocusReason ||
            reason == Qt::ShortcutFocusReason)
            d->stage.setByKeyboard(true);
        d->stage.setFocus(true);
    }
    if (event->type() == QEvent::FocusOut)
        d->stage.setFocus(false);
    if (event->type() == QEvent::Polish)
        d->stage.setTextScale(textScaleOf(font()));
    if (d->input.handle(event)) {
        event->accept();
        return true;
    }
    return QWidget::event(event);
}

void PlateView::paintEvent(QPaintEvent*)
{
    PlateFace face = d->stage.face();
    face.placeholder = tr("The plate will lie here.");
    QPainter painter(this);
    paintFace(painter, face);
}

void PlateView::resizeEvent(QResizeEvent*) { d->stage.setWidget(rect(), devicePixelRatioF()); }

void PlateView::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        retranslate();
    if (event->type() == QEvent::FontChange || event->type() == QEvent::ApplicationFontChange)
        d->stage.setTextScale(textScaleOf(font()));
}

void PlateView::retranslate()
{
    //: Name of the drawing for a screen reader.
    setAccessibleName(tr("Drawing of the patient"));
    setAccessibleDescription(
        tr("Arrows move the crosshair by 5 millimetres, with Shift by 1. Enter places the mark, "
           "Enter again asks for the grade. Backspace withdraws the mark. Plus and minus zoom, "
           "zero shows the whole plate, Control with arrows moves the paper."));
    update();
}

}  // namespace fb
