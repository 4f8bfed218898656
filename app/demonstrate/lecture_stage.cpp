#include "app/demonstrate/lecture_stage.h"

#include <QThreadPool>

#include "app/demonstrate/lecture_stage_area.h"
#include "app/lecture/lecture_presenter.h"

namespace fb {

LectureStage::LectureStage(LecturePresenter& presenter)
    : m_presenter(presenter),
      m_scheme(schemeOf(PaletteKind::Light))
{
    m_soon.setSingleShot(true);
    m_soon.setInterval(0);
    connect(&m_soon, &QTimer::timeout, this, [this] { static_cast<void>(wanted()); });
    connect(&presenter, &LecturePresenter::changed, this, &LectureStage::follow);
    connect(&presenter, &LecturePresenter::pointerMoved, this, &LectureStage::readPointer);
    for (std::size_t i = 0; i < m_ink.size(); ++i)
        connect(&m_ink[i], &PaneInk::painted, this, [this, i](const PaneDrawn& drawn) { take(i, drawn); });
}

LectureStage::~LectureStage()
{
    if (m_warming)
        *m_warming = true;
}

void LectureStage::setSize(QSizeF size, double devicePixelRatio)
{
    if (size == m_size && devicePixelRatio == m_pixelRatio)
        return;
    m_size = size;
    m_pixelRatio = devicePixelRatio;
    readLater();
}

// What was drawn in other colours is of no use.
void LectureStage::setScheme(const Scheme& scheme)
{
    if (scheme == m_scheme)
        return;
    m_scheme = scheme;
    m_drawn = {};
    m_page.reset();
    readLater();
}

void LectureStage::setDirection(Qt::LayoutDirection direction)
{
    if (direction == m_direction)
        return;
    m_direction = direction;
    readLater();
}

void LectureStage::setShown(bool shown)
{
    if (shown == m_isShown)
        return;
    m_isShown = shown;
    if (shown)
        return readLater();
    for (PaneInk& ink : m_ink)
        ink.forget();
    m_asked = {};
    m_drawn = {};
    m_page.reset();
    m_sheet = {};
}

void LectureStage::readAgain()
{
    m_warmed.reset();
    readLater();
}

// Whether nothing but the body has changed since it was read, in the middle of a motion.
bool LectureStage::isOnlyMoving() const
{
    const LectureState& state = m_presenter.state();
    return !m_isStale && state.moving && m_read.moving && state.step == m_read.step &&
           state.progress == m_read.progress && state.blank == m_read.blank && state.tool == m_read.tool &&
           state.spotlight == m_read.spotlight && state.layers == m_read.layers &&
           state.strokes.size() == m_read.strokes.size() && state.revealed == m_read.revealed &&
           state.compare == m_read.compare;
}

// A slider tells of every value. Measured: to repaint for each took as long as all else, and nothing is to be
// seen before the next body is drawn.
void LectureStage::follow()
{
    if (!isOnlyMoving())
        return readLater();
    const LectureState& state = m_presenter.state();
    if (state.shown == m_read.shown && state.beside == m_read.beside)
        return;
    m_isStale = true;
    if (m_isShown)
        m_soon.start();
}

void LectureStage::readLater()
{
    m_isStale = true;
    repaintAll();
    if (m_isShown)
        m_soon.start();
}

void LectureStage::repaint(const QRegion& where)
{
    m_stale += where;
    if (m_isShown)
        Q_EMIT changed(where);
}

void LectureStage::repaintAll() { repaint(QRectF(QPointF(), m_size).toAlignedRect()); }

// A pointer moves many times between two steps: nothing else is read for it.
void LectureStage::readPointer()
{
    const LectureState& state = m_presenter.state();
    if (m_isStale || state.shown != m_read.shown || state.progress != m_read.progress)
        return readLater();
    const LectureFace before = face();
    m_wanted.pointer = state.pointer;
    m_wanted.drawing = state.drawing;
    repaint(pointedArea(before, face(), page()));
}

const LectureFace& LectureStage::wanted()
{
    if (m_isStale)
        read();
    return m_wanted;
}

void LectureStage::read()
{
    const LectureState& state = m_presenter.state();
    m_isStale = false;
    m_read = state;
    m_wanted = faceOf(state, m_size, m_scheme, m_direction);
    m_page.reset();
    if (m_isShown)
        ask();
    Q_EMIT wasRead();
}

PaneJob LectureStage::jobOf(std::size_t pane) const
{
    const LectureState& state = m_presenter.state();
    return {m_wanted.panes[pane],
            frameOf(m_wanted, static_cast<int>(pane)),
            m_pixelRatio,
            m_scheme,
            state.layers,
            m_presenter.library(),
            state.moving || state.progress < 1.0};
}

void LectureStage::ask()
{
    for (std::size_t i = 0; i < m_ink.size(); ++i) {
        if (i >= m_wanted.panes.size()) {
            m_asked[i].reset();
            m_drawn[i].reset();
            continue;
        }
        PaneJob job = jobOf(i);
        if (job.frame.sheet().isEmpty() || (m_asked[i] && sameDrawing(*m_asked[i], job)))
            continue;
        m_ink[i].request(job);
        m_asked[i] = std::move(job);
    }
}

void LectureStage::take(std::size_t pane, const PaneDrawn& drawn)
{
    if (!m_isShown || drawn.job.scheme != m_scheme || pane >= wanted().panes.size())
        return;
    m_drawn[pane] = drawn;
    m_page.reset();
    repaintAll();
    if (!isSharp())
        return;
    warm();
    Q_EMIT sharpened();
}

// Measured: on a tall screen a step with many words took 125 ms to be painted for the first time, 25 once
// they were ready.
void LectureStage::warm()
{
    const LectureState& state = m_presenter.state();
    const Warmed now{state.convention, state.view, state.side, m_size, m_pixelRatio, m_scheme, m_direction};
    if (now == m_warmed)
        return;
    m_warmed = now;
    if (m_warming)
        *m_warming = true;
    m_warming = std::make_shared<std::atomic_bool>(false);
    const auto work = [state = LectureState(state), now, stop = m_warming]() mutable {
        const int count = static_cast<int>(state.steps.size());
        const int first = state.step;
        for (int i = 1; i < count && !*stop; ++i) {
            state.step = (first + i) % count;
            warmWords(faceOf(state, now.size, now.scheme, now.direction), now.pixelRatio);
        }
    };
    constexpr int kAfterAllElse = -1;
    QThreadPool::globalInstance()->start(work, kAfterAllElse);
}

LectureFace LectureStage::face()
{
    LectureFace face = wanted();
    for (std::size_t i = 0; i < face.panes.size(); ++i) {
        LecturePane& pane = face.panes[i];
        if (!m_drawn[i]) {
            // Nothing lies on bare paper.
            pane.look.scene.clear();
            pane.look.press.reset();
            pane.extra.clear();
            continue;
        }
        if (m_drawn[i]->job.pane.body != pane.body)
            pane = m_drawn[i]->job.pane;
        pane.drawn = m_drawn[i]->result;
    }
    return face;
}

const LecturePage& LectureStage::page()
{
    const LectureFace now = face();
    if (!m_page)
        m_page = pageOf(now);
    return *m_page;
}

bool LectureStage::isSharp()
{
    if (!wanted().isReady)
        return false;
    for (std::size_t i = 0; i < m_wanted.panes.size(); ++i) {
        const PaneJob job = jobOf(i);
        if (job.moving || !m_drawn[i] || m_drawn[i]->result.job.preview || !sameDrawing(m_drawn[i]->job, job))
            return false;
    }
    return true;
}

// A blank picture hides its plate and composes none.
std::optional<ViewFrame> LectureStage::frame()
{
    if (const auto& panes = page().panes; !panes.empty())
        return panes.front().frame;
    const LectureFace now = face();
    return now.panes.empty() ? std::nullopt : std::optional(frameOf(now, 0));
}

std::optional<QPointF> LectureStage::placeAt(QPointF widget)
{
    const auto now = frame();
    return now && now->sheet().contains(widget) ? std::optional(now->toCm(widget)) : std::nullopt;
}

QRectF LectureStage::seen()
{
    const auto now = frame();
    return now ? QRectF(now->toCm(now->sheet().bottomLeft()), now->toCm(now->sheet().topRight())) : QRectF();
}

}  // namespace fb
