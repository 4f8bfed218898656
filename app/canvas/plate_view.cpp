#include "app/canvas/plate_view.h"

#include <QAccessible>
#include <QEvent>
#include <QFocusEvent>
#include <QPainter>
#include <algorithm>

#include "app/canvas/plate_accessible.h"
#include "app/canvas/plate_stage.h"
#include "app/canvas/plate_voice.h"
#include "app/look/type.h"

namespace fb {

class PlateView::Private {
public:
    Private() : input(stage) {}

    PlateStage stage;
    PlateInput input;
    PlateVoice voice;
    QString ownName;  // what the view calls itself until a page names it
    QRect dirty;      // one box of all that changed since the last paint: clipped to many, painting is slow
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
    connectTools();
    connect(&m_private->stage, &PlateStage::crosshairMoved, this,
            [this] { nameChanged(SpokenKind::Crosshair); });
    m_private->stage.setDirection(layoutDirection());
    retranslate();
}

void PlateView::connectTools()
{
    const PlateStage& stage = m_private->stage;
    connect(&stage, &PlateStage::changedWithin, this, [this](const QRectF& box) {
        m_private->dirty |= box.toAlignedRect().adjusted(-2, -2, 2, 2);
        update(m_private->dirty);
    });
    connect(&stage, &PlateStage::pressed, this, &PlateView::pressed);
    connect(&stage, &PlateStage::lifted, this, [this] {
        m_private->voice.forget();
        Q_EMIT lifted();
    });
    connect(&stage, &PlateStage::handleGrabbed, this, &PlateView::handleGrabbed);
    connect(&stage, &PlateStage::handleMoved, this, &PlateView::handleMoved);
    connect(&stage, &PlateStage::handleReleased, this, &PlateView::handleReleased);
    connect(&stage, &PlateStage::handleStepped, this, &PlateView::handleStepped);
    connect(&stage, &PlateStage::undoAsked, this, &PlateView::undoAsked);
    connect(&stage, &PlateStage::redoAsked, this, &PlateView::redoAsked);
    connect(&stage, &PlateStage::cursorWished, this, [this](Qt::CursorShape shape) { setCursor(shape); });
    connect(&m_private->voice, &PlateVoice::said, this, [this](const QString& words) {
        const bool presses = m_private->stage.tool() == PlateTool::Press;
        nameChanged(presses ? SpokenKind::Press : SpokenKind::CurrentHandle);
        Q_EMIT spoke(words);
    });
}

// Tells a screen reader that the first thing of a kind is called otherwise now.
void PlateView::nameChanged(SpokenKind kind)
{
    const auto items = spokenItems();
    const auto found = std::ranges::find(items, kind, &SpokenItem::kind);
    if (found == items.end())
        return;
    QAccessibleEvent changed(this, QAccessible::NameChanged);
    changed.setChild(static_cast<int>(found - items.begin()));
    QAccessible::updateAccessibility(&changed);
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

void PlateView::setTool(PlateTool tool)
{
    if (tool == this->tool())
        return;
    m_private->stage.setTool(tool);
    setMouseTracking(tool == PlateTool::Handles);  // a handle under the pointer shows its name
    retranslate();
}

void PlateView::setPress(const std::optional<PressLook>& press)
{
    m_private->stage.setPress(press);
    if (tool() == PlateTool::Press)
        m_private->voice.hear(press ? spoken(*press) : QString());
}

void PlateView::setFlags(const QVector<FlagLook>& flags) { m_private->stage.setFlags(flags); }

void PlateView::setHandles(const QVector<HandleLook>& handles)
{
    m_private->stage.setHandles(handles);
    sayCurrentHandle();
}

void PlateView::setCurrentHandle(int id)
{
    m_private->stage.setCurrentHandle(id);
    sayCurrentHandle();
}

void PlateView::sayCurrentHandle()
{
    if (tool() != PlateTool::Handles)
        return;
    const auto items = spokenItems();
    const auto current = std::ranges::find(items, SpokenKind::CurrentHandle, &SpokenItem::kind);
    m_private->voice.hear(current == items.end() ? QString() : current->words);
}

void PlateView::setHeldHand(const std::shared_ptr<const HandLook>& hand)
{
    m_private->stage.setHeldHand(hand);
}

void PlateView::setHeldFingers(const std::optional<FingersLook>& fingers)
{
    m_private->stage.setHeldFingers(fingers);
}

PlateTool PlateView::tool() const { return m_private->stage.tool(); }

bool PlateView::isHeldSharp() const { return m_private->stage.tools().isHeldSharp(); }

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
    m_private->dirty = {};
    PlateFace face = m_private->stage.paintedFace();
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
    if (event->type() == QEvent::LayoutDirectionChange)
        m_private->stage.setDirection(layoutDirection());
    if (event->type() == QEvent::FontChange || event->type() == QEvent::ApplicationFontChange)
        m_private->stage.setTextScale(textScaleOf(font()));
}

QString PlateView::describedKeys() const
{
    switch (tool()) {
    case PlateTool::Mark: break;
    case PlateTool::Press:
        return tr("Arrows press your fingertip 5 millimetres further on, with Shift 1. Enter plants a flag "
                  "there. Plus and minus zoom, zero shows the whole plate, Control with arrows moves the "
                  "paper.");
    case PlateTool::Handles:
        return tr("Arrows move the current handle by 5 millimetres, with Shift by 1. Enter goes to the next "
                  "handle or places it, Shift with Enter goes back. Control with Z undoes. Plus and minus "
                  "zoom, zero shows the whole plate, Control with arrows moves the paper.");
    }
    return tr("Arrows move the crosshair by 5 millimetres, with Shift by 1. Enter places the mark, "
              "Enter again hands it in. Backspace withdraws the mark. Plus and minus zoom, "
              "zero shows the whole plate, Control with arrows moves the paper.");
}

void PlateView::retranslate()
{
    const bool isOwn = accessibleName() == m_private->ownName;
    //: Name of the drawing for a screen reader.
    m_private->ownName = tr("Drawing of the patient");
    if (isOwn)
        setAccessibleName(m_private->ownName);
    setAccessibleDescription(describedKeys());
    update();
}

}  // namespace fb
