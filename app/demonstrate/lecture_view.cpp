#include "app/demonstrate/lecture_view.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include "app/demonstrate/lecture_stage.h"
#include "app/demonstrate/lecture_voice.h"
#include "app/demonstrate/pointer_keys.h"
#include "app/demonstrate/presenting_keys.h"
#include "app/lecture/lecture_presenter.h"

namespace fb {

class LectureView::Private {
public:
    Private(LecturePresenter& from, For whom)
        : presenter(from),
          stage(from),
          keys(from),
          isSpeakers(whom == For::Speaker)
    {
    }

    LecturePresenter& presenter;
    LectureStage stage;
    PointerKeys keys;
    bool isSpeakers = false;
    bool takesPointer = false;
    bool isPressed = false;
};

LectureView::LectureView(LecturePresenter& presenter, For whom, QWidget* parent)
    : QWidget(parent),
      m_private(std::make_unique<Private>(presenter, whom))
{
    const bool isSpeakers = whom == For::Speaker;
    setObjectName(isSpeakers ? QStringLiteral("speakersPicture") : QStringLiteral("audiencesPicture"));
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setTakesPointer(isSpeakers);
    LectureStage& stage = m_private->stage;
    connect(&stage, &LectureStage::changed, this, qOverload<const QRegion&>(&QWidget::update));
    connect(&stage, &LectureStage::sharpened, this, &LectureView::sharpened);
    connect(&stage, &LectureStage::wasRead, this, &LectureView::speak);
    stage.setDirection(layoutDirection());
    speak();
}

LectureView::~LectureView() = default;

void LectureView::setScheme(const Scheme& scheme) { m_private->stage.setScheme(scheme); }

void LectureView::setTakesPointer(bool takes)
{
    m_private->takesPointer = takes;
    setMouseTracking(takes);
    setCursor(takes ? Qt::CrossCursor : Qt::BlankCursor);
}

LectureFace LectureView::face() const { return m_private->stage.face(); }

bool LectureView::isSharp() const { return m_private->stage.isSharp(); }

QSize LectureView::sizeHint() const { return {960, 540}; }

QSize LectureView::minimumSizeHint() const { return {320, 180}; }

// A body that is moving says nothing: it would say it thirty times a second.
void LectureView::speak()
{
    const LectureState& state = m_private->presenter.state();
    if (state.moving || state.progress < 1.0)
        return;
    const LectureVoice voice = voiceOf(state, m_private->stage.wanted());
    if (voice.name != accessibleName())
        setAccessibleName(voice.name);
    if (voice.description != accessibleDescription())
        setAccessibleDescription(voice.description);
}

bool LectureView::event(QEvent* event)
{
    switch (event->type()) {
    case QEvent::Show: m_private->stage.setShown(true); break;
    case QEvent::Hide: m_private->stage.setShown(false); break;
    case QEvent::FocusIn: update(); break;
    case QEvent::FocusOut:
        m_private->keys.lift();
        update();
        break;
    case QEvent::ShortcutOverride:
        // A menu's own letter must not take a presenter's key.
        if (takesKey(*static_cast<QKeyEvent*>(event)))
            event->accept();
        break;
    default: break;
    }
    return QWidget::event(event);
}

void LectureView::resizeEvent(QResizeEvent* event)
{
    m_private->stage.setSize(size(), devicePixelRatioF());
    QWidget::resizeEvent(event);
}

void LectureView::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange)
        m_private->stage.readAgain();
    if (event->type() == QEvent::LayoutDirectionChange)
        m_private->stage.setDirection(layoutDirection());
    QWidget::changeEvent(event);
}

void LectureView::paintEvent(QPaintEvent* event)
{
    // Another screen may have finer pixels.
    m_private->stage.setSize(size(), devicePixelRatioF());
    QPainter painter(this);
    painter.setClipRegion(event->region());
    m_private->stage.paint(painter);
    if (!m_private->isSpeakers || !hasFocus())
        return;
    constexpr double kRing = 3.0;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(m_private->stage.scheme().focus, kRing, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    painter.drawRect(QRectF(rect()).adjusted(kRing / 2, kRing / 2, -kRing / 2, -kRing / 2));
}

void LectureView::mousePressEvent(QMouseEvent* event)
{
    const auto cm = m_private->stage.placeAt(event->position());
    if (!m_private->takesPointer || event->button() != Qt::LeftButton || !cm)
        return QWidget::mousePressEvent(event);
    m_private->keys.lift();
    m_private->isPressed = true;
    m_private->presenter.point(cm);
    m_private->presenter.press(*cm);
}

void LectureView::mouseMoveEvent(QMouseEvent* event)
{
    if (!m_private->takesPointer)
        return QWidget::mouseMoveEvent(event);
    const auto cm = m_private->stage.placeAt(event->position());
    m_private->presenter.point(cm);
    if (m_private->isPressed && cm)
        m_private->presenter.drag(*cm);
}

void LectureView::mouseReleaseEvent(QMouseEvent* event)
{
    if (!m_private->isPressed || event->button() != Qt::LeftButton)
        return QWidget::mouseReleaseEvent(event);
    m_private->isPressed = false;
    if (const auto cm = m_private->stage.placeAt(event->position()))
        m_private->presenter.drag(*cm);
    m_private->presenter.release();
}

void LectureView::leaveEvent(QEvent* event)
{
    if (m_private->takesPointer)
        m_private->presenter.point(std::nullopt);
    QWidget::leaveEvent(event);
}

bool LectureView::takesKey(const QKeyEvent& event) const
{
    if (m_private->takesPointer && m_private->keys.isOf(event))
        return true;
    const bool isPlain = !(event.modifiers() & ~(Qt::KeypadModifier | Qt::ShiftModifier));
    return isPlain &&
           (isPresentingKey(event.key()) || event.key() == Qt::Key_F6 || event.key() == Qt::Key_Escape);
}

void LectureView::keyPressEvent(QKeyEvent* event)
{
    if (!takesKey(*event))
        return QWidget::keyPressEvent(event);
    if (m_private->takesPointer && m_private->keys.take(*event, m_private->stage.seen()))
        return;
    // A key that is held down must not run through a lecture.
    if (event->isAutoRepeat())
        return;
    if (event->key() == Qt::Key_F6)
        Q_EMIT asksSwap();
    else if (event->key() == Qt::Key_Escape)
        Q_EMIT asksClose();
    else
        presentBy(m_private->presenter, event->key());
}

}  // namespace fb
