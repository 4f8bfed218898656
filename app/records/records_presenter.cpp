#include "app/records/records_presenter.h"

#include <QCoreApplication>
#include <QEvent>
#include <algorithm>
#include <cmath>
#include <utility>

namespace fb {

RecordsPresenter::RecordsPresenter(RecordKeeper& records, Clock& clock, QObject* parent)
    : QObject(parent),
      m_records(records),
      m_clock(clock)
{
    m_tick.setInterval(kTickMs);
    connect(&m_tick, &QTimer::timeout, this, &RecordsPresenter::tick);
}

// The keeper may still be at work: what is left of it is not wanted. A sheet that is being made asks this
// very thread for its words, so that it must not be waited for in silence.
RecordsPresenter::~RecordsPresenter()
{
    constexpr int kLookMs = 10;
    cancel();
    while (!m_pool.waitForDone(kLookMs))
        QCoreApplication::sendPostedEvents(QCoreApplication::instance(), QEvent::MetaCall);
}

void RecordsPresenter::useLibrary(const std::shared_ptr<const Library>& library, const Policy& shipped)
{
    m_library = library;
    m_shipped = shipped;
    if (m_state.item && !m_state.replay)
        makeReplay();
}

void RecordsPresenter::enter()
{
    shut(RecordsGate::Reading);
    m_records.openDesk({}, this, here<Desk>([this](const Desk& desk) {
                           m_state.gate =
                               desk.assessors.empty() ? RecordsGate::NobodyEnrolled : RecordsGate::Locked;
                           m_state.assessors = desk.assessors;
                           m_state.isOffered = desk.offered.has_value();
                           if (desk.told)
                               m_state.notice = desk.told;
                       }));
    Q_EMIT changed();
}

void RecordsPresenter::leave()
{
    shut(RecordsGate::Reading);
    Q_EMIT changed();
}

void RecordsPresenter::lock()
{
    if (m_state.gate != RecordsGate::Open)
        return;
    shut(RecordsGate::Locked);
    Q_EMIT changed();
}

// Nothing of what lies behind the gate stays; the long work and how long to wait do.
void RecordsPresenter::shut(RecordsGate gate)
{
    ++m_visit;
    ++m_opening;
    m_proof.reset();
    RecordsState fresh;
    fresh.gate = gate;
    fresh.assessors = std::exchange(m_state.assessors, {});
    fresh.heldSeconds = m_state.heldSeconds;
    fresh.task = m_state.task;
    fresh.done = m_state.done;
    fresh.putBack = m_state.putBack;
    m_state = std::move(fresh);
    if (!m_heldUntil)
        m_tick.stop();
}

bool RecordsPresenter::isIdle() const
{
    return m_clock.steady() - m_usedAt >= kIdle ||
           m_usedAtWall.msecsTo(m_clock.wall()) >= static_cast<qint64>(kIdle.count());
}

bool RecordsPresenter::used()
{
    if (m_state.gate != RecordsGate::Open)
        return true;
    if (isIdle()) {
        lock();
        return false;
    }
    m_usedAt = m_clock.steady();
    m_usedAtWall = m_clock.wall();
    return true;
}

void RecordsPresenter::tick()
{
    if (m_heldUntil) {
        constexpr double kSecond = 1000.0;
        const double left = static_cast<double>((*m_heldUntil - m_clock.steady()).count()) / kSecond;
        m_state.heldSeconds = std::max(0, static_cast<int>(std::ceil(left)));
        const bool holds = m_state.notice && m_state.notice->problem == Problem::PinHeld;
        if (m_state.heldSeconds == 0) {
            m_heldUntil.reset();
            if (holds)
                m_state.notice.reset();
            Q_EMIT changed();
        } else if (holds) {
            m_state.notice->low = m_state.heldSeconds;
        }
        Q_EMIT counted();
    }
    if (m_state.gate == RecordsGate::Open && isIdle())
        lock();
    if (!m_heldUntil && m_state.gate != RecordsGate::Open)
        m_tick.stop();
}

void RecordsPresenter::hold(double seconds)
{
    constexpr double kSecond = 1000.0;
    m_heldUntil = m_clock.steady() + Ms{std::llround(seconds * kSecond)};
    m_state.heldSeconds = static_cast<int>(std::ceil(seconds));
    m_tick.start();
}

void RecordsPresenter::open(qint64 assessor, const QString& pin)
{
    if (m_state.gate != RecordsGate::Locked || m_state.asking || m_state.heldSeconds > 0)
        return;
    m_state.asking = true;
    m_state.notice.reset();
    Q_EMIT changed();
    m_records.prove(assessor, pin, this, here<Proof>([this](const Proof& proof) { letIn(proof); }));
}

void RecordsPresenter::enrol(const QString& name, const QString& pin, const QString& again)
{
    const bool first = m_state.gate == RecordsGate::NobodyEnrolled;
    if (m_state.asking || (!first && m_state.gate != RecordsGate::Open))
        return;
    if (name.trimmed().isEmpty())
        return tell({Problem::NameMissing, {}, {}});
    if (pin != again)
        return tell({Problem::PinsDiffer, {}, {}});
    m_state.asking = true;
    m_state.notice.reset();
    Q_EMIT changed();
    m_records.enrol(name.trimmed(), pin, m_proof, this, here<Proof>([this, first](const Proof& made) {
                        m_state.assessors.push_back(made.assessor);
                        if (first)
                            return letIn(made);
                        Q_EMIT enrolled();
                    }));
}

void RecordsPresenter::letIn(const Proof& proof)
{
    ++m_visit;
    m_proof = proof;
    m_state.gate = RecordsGate::Open;
    m_state.who = proof.assessor;
    m_state.putBack.reset();
    m_usedAt = m_clock.steady();
    m_usedAtWall = m_clock.wall();
    m_tick.start();
    reread();
}

// What is shown, read again; what is open stays open.
void RecordsPresenter::reread()
{
    if (m_state.gate != RecordsGate::Open)
        return;
    m_records.openDesk({}, this, here<Desk>([this](const Desk& desk) { takeDesk(desk); }));
    if (m_state.opened)
        readCheckOff(m_state.opened->file.line.id);
}

void RecordsPresenter::takeDesk(const Desk& desk)
{
    m_state.sheets = desk.sheets;
    m_state.assessors = desk.assessors;
    m_state.lastBackup = desk.lastBackup;
    if (desk.told)
        m_state.notice = desk.told;
    const bool known = std::ranges::find(desk.sheets, m_state.sheet, &SheetOnFile::key) != desk.sheets.end();
    if (!known)
        m_state.sheet = desk.currentSheet;
    readBoard();
    if (m_state.found || m_state.area == RecordsArea::CheckOffs)
        readList();
}

void RecordsPresenter::tell(const Fault& fault)
{
    m_state.notice = fault;
    if (fault.problem == Problem::PinHeld)
        hold(fault.low);
    Q_EMIT changed();
}

void RecordsPresenter::dismissNotice()
{
    m_state.notice.reset();
    Q_EMIT changed();
}

void RecordsPresenter::retranslate()
{
    if (m_state.replay) {
        auto again = std::make_shared<Replay>(*m_state.replay);
        fb::retranslate(*again);
        m_state.replay = again;
    }
    Q_EMIT changed();
}

}  // namespace fb
