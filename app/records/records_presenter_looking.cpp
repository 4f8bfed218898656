// What is looked at behind the gate: see records_presenter.h.
#include <algorithm>

#include "app/records/records_look.h"
#include "app/records/records_presenter.h"

namespace fb {

void RecordsPresenter::show(RecordsArea area)
{
    if (m_state.gate != RecordsGate::Open)
        return;
    ++m_opening;
    m_state.area = area;
    m_state.history.reset();
    m_state.opened.reset();
    m_state.item.reset();
    m_state.replay.reset();
    if (area == RecordsArea::CheckOffs && !m_state.found)
        readList();
    Q_EMIT changed();
}

void RecordsPresenter::chooseSheet(const QString& key)
{
    if (m_state.gate != RecordsGate::Open || key == m_state.sheet)
        return;
    m_state.sheet = key;
    readBoard();
}

void RecordsPresenter::find(const CheckOffFilter& filter)
{
    if (m_state.gate != RecordsGate::Open)
        return;
    m_state.filter = filter;
    readList();
}

void RecordsPresenter::readBoard()
{
    m_records.board(m_state.sheet, this, here<Board>([this, sheet = m_state.sheet](const Board& board) {
                        if (sheet != m_state.sheet)
                            return;
                        m_state.board = std::make_shared<const Board>(board);
                        if (m_state.history)
                            readHistory(m_state.history->student.id, false);
                    }));
}

void RecordsPresenter::readList()
{
    using Lines = std::vector<CheckOffLine>;
    m_records.find(m_state.filter, this, here<Lines>([this](const Lines& lines) {
                       m_state.found = std::make_shared<const Lines>(lines);
                   }));
}

void RecordsPresenter::openHistory(const QString& student)
{
    if (m_state.gate == RecordsGate::Open && m_state.board)
        readHistory(student, true);
}

void RecordsPresenter::readHistory(const QString& student, bool opens)
{
    const auto& students = m_state.board->students;
    const auto at = std::ranges::find_if(
        students, [&](const StudentStanding& each) { return each.student.id == student; });
    if (at == students.end())
        return tell({Problem::StudentUnknown, {}, student.toStdString()});
    StudentHistory begun{at->student, at->where, {}, {}};
    const auto sheet = std::ranges::find(m_state.sheets, m_state.sheet, &SheetOnFile::key);
    if (sheet != m_state.sheets.end())
        begun.sheetTitle = sheetTitle(*sheet);
    CheckOffFilter filter;
    filter.student = student;
    using Lines = std::vector<CheckOffLine>;
    const auto take = [this, begun, opens](const Lines& lines) {
        if (!opens && (!m_state.history || m_state.history->student.id != begun.student.id))
            return;
        StudentHistory whole = begun;
        whole.attempts.assign(lines.rbegin(), lines.rend());
        m_state.history = std::make_shared<const StudentHistory>(std::move(whole));
    };
    m_records.find(filter, this, opens ? opening<Lines>(take) : here<Lines>(take));
}

void RecordsPresenter::openCheckOff(qint64 id)
{
    if (m_state.gate == RecordsGate::Open)
        readCheckOff(id);
}

void RecordsPresenter::readCheckOff(qint64 id)
{
    m_records.read(id, this, opening<CheckOffOnFile>([this](const CheckOffOnFile& file) {
                       auto opened = openedCheckOff(file);
                       if (!opened)
                           return tell(opened.error());
                       m_state.opened = std::make_shared<const OpenedCheckOff>(std::move(*opened));
                   }));
}

void RecordsPresenter::replay(int item)
{
    if (!m_state.opened || item < 0 || item >= static_cast<int>(m_state.opened->run.answers().size()))
        return;
    m_state.item = item;
    m_state.replay.reset();
    makeReplay();
    Q_EMIT changed();
}

void RecordsPresenter::makeReplay()
{
    const int wanted = ++m_opening;
    if (!m_library)
        return;
    m_pool.start([this, wanted, opened = m_state.opened, item = *m_state.item, library = m_library,
                  shipped = *m_shipped] {
        const auto made = std::make_shared<const Replay>(replayOf(*opened, item, *library, shipped));
        QMetaObject::invokeMethod(
            this, [this, made, wanted] { takeReplay(made, wanted); }, Qt::QueuedConnection);
    });
}

void RecordsPresenter::takeReplay(const std::shared_ptr<const Replay>& made, int wanted)
{
    if (wanted != m_opening)
        return;
    m_state.replay = made;
    if (made->broken)
        m_state.notice = made->broken;
    Q_EMIT changed();
}

void RecordsPresenter::back()
{
    ++m_opening;
    if (m_state.item) {
        m_state.item.reset();
        m_state.replay.reset();
    } else if (m_state.opened) {
        m_state.opened.reset();
    } else {
        m_state.history.reset();
    }
    Q_EMIT changed();
}

void RecordsPresenter::signPractice(const QString& what, qint64 assessor, const QString& pin)
{
    if (!m_state.opened || m_state.asking || m_state.heldSeconds > 0)
        return;
    if (what.trimmed().isEmpty())
        return tell({Problem::ReasonMissing, {}, {}});
    m_state.asking = true;
    m_state.notice.reset();
    Q_EMIT changed();
    const qint64 id = m_state.opened->file.line.id;
    const auto kept = [this](bool) {
        Q_EMIT practiceSigned();
        reread();
    };
    const auto proved = [this, id, what, kept](const Proof& proof) {
        m_state.asking = true;
        m_records.signRemediation(id, what.trimmed(), proof, this, here<bool>(kept));
    };
    m_records.prove(assessor, pin, this, here<Proof>(proved));
}

}  // namespace fb
