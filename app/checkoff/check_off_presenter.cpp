#include "app/checkoff/check_off_presenter.h"

#include <algorithm>

#include "app/records/records_look.h"
#include "app/roster/samples.h"

namespace fb {

namespace check_off_presenter_detail {

// So that the next student is the one below in the list.
std::vector<StudentStanding> inListOrder(const std::vector<StudentStanding>& students)
{
    const QCollator order = listOrder();
    std::vector<std::pair<QCollatorSortKey, const StudentStanding*>> keyed;
    keyed.reserve(students.size());
    for (const StudentStanding& each : students)
        keyed.emplace_back(order.sortKey(listName(each.student)), &each);
    std::ranges::stable_sort(
        keyed, [](const auto& one, const auto& other) { return one.first.compare(other.first) < 0; });
    std::vector<StudentStanding> sorted;
    sorted.reserve(students.size());
    for (const auto& [key, student] : keyed)
        sorted.push_back(*student);
    return sorted;
}

}  // namespace check_off_presenter_detail

CheckOffPresenter::CheckOffPresenter(RecordKeeper& records, Clock& clock, Seeds& seeds, QObject* parent)
    : QObject(parent),
      m_records(records),
      m_clock(clock),
      m_seeds(seeds),
      m_items(std::make_unique<PracticePresenter>(seeds)),
      m_turn([this] { return m_state.saving; })
{
    m_timer.setInterval(kTickMs);
    connect(&m_timer, &QTimer::timeout, this, &CheckOffPresenter::tick);
    m_look.setInterval(kTickMs / 2);
    connect(&m_look, &QTimer::timeout, this, &CheckOffPresenter::lookHowFar);
    connect(m_items.get(), &PracticePresenter::confirmed, this, &CheckOffPresenter::confirmed);
}

void CheckOffPresenter::useLibrary(const std::shared_ptr<const Library>& library, const Policy& policy,
                                   const QString& policyText)
{
    m_library = library;
    m_labPolicy = policy;
    m_policyText = policyText;
    m_items->lendLibrary(library);
    m_state.ready = m_deskRead;
    Q_EMIT changed();
}

bool CheckOffPresenter::holdsTheWindow() const
{
    return m_state.open && m_state.stage <= CheckOffStage::OnManikin;
}

const SheetOnFile* CheckOffPresenter::sheet() const
{
    const auto at = std::ranges::find(m_state.desk.sheets, m_state.desk.currentSheet, &SheetOnFile::key);
    return at == m_state.desk.sheets.end() ? nullptr : &*at;
}

const StudentStanding* CheckOffPresenter::standing(const QString& student) const
{
    const auto at = std::ranges::find_if(
        m_state.desk.students, [&](const StudentStanding& each) { return each.student.id == student; });
    return at == m_state.desk.students.end() ? nullptr : &*at;
}

void CheckOffPresenter::openDesk() { readDesk(m_state.desk.currentSheet); }

void CheckOffPresenter::readDesk(const QString& sheet)
{
    m_records.openDesk(sheet, this, [this](const Result<Desk>& desk) {
        if (desk)
            take(*desk);
        else
            tell(desk.error());
    });
}

void CheckOffPresenter::take(const Desk& desk)
{
    const bool first = !m_deskRead;
    m_state.desk = desk;
    m_state.desk.students = check_off_presenter_detail::inListOrder(desk.students);
    m_deskRead = true;
    m_state.ready = m_library != nullptr;
    m_state.offered = m_declined ? std::nullopt : desk.offered;
    // The offer says itself what happened.
    if (first && desk.told && !desk.offered)
        m_state.notice = desk.told;
    choose();
    findNext();
    Q_EMIT changed();
}

// So that one press starts: whoever was chosen, else the first who may.
void CheckOffPresenter::choose()
{
    if (standing(m_state.chosenStudent))
        return;
    const auto first = std::ranges::find_if(m_state.desk.students,
                                            [](const StudentStanding& each) { return mayStart(each.where); });
    m_state.chosenStudent = first == m_state.desk.students.end() ? QString() : first->student.id;
}

void CheckOffPresenter::chooseSheet(const QString& key)
{
    if (!m_state.open && key != m_state.desk.currentSheet)
        readDesk(key);
}

void CheckOffPresenter::chooseStudent(const QString& id)
{
    if (m_state.chosenStudent == id || !standing(id))
        return;
    m_state.chosenStudent = id;
    Q_EMIT changed();
}

// One after the other: a sheet without students does no harm.
void CheckOffPresenter::useSample()
{
    const auto sample = sampleSheet();
    if (!sample)
        return tell(sample.error());
    if (m_state.saving)
        return;
    setSaving(true);
    m_records.saveSheet(*sample, this, [this](const Result<SheetOnFile>& saved) {
        if (!saved)
            return fail(saved.error());
        setSaving(false);
        m_state.desk.currentSheet = saved->key;
        saveStudents(sampleStudents());
    });
}

void CheckOffPresenter::saveStudents(const std::vector<Student>& students)
{
    if (m_state.saving)
        return;
    setSaving(true);
    m_records.saveStudents(students, this, [this](const Result<int>& added) {
        if (!added)
            return fail(added.error());
        setSaving(false);
        Q_EMIT kept();
        openDesk();
    });
}

void CheckOffPresenter::saveSheet(const Sheet& sheet)
{
    if (m_state.saving)
        return;
    setSaving(true);
    m_records.saveSheet(sheet, this, [this](const Result<SheetOnFile>& saved) {
        if (!saved)
            return fail(saved.error());
        setSaving(false);
        Q_EMIT kept();
        readDesk(saved->key);
    });
}

void CheckOffPresenter::setSaving(bool saving)
{
    m_state.saving = saving;
    if (!saving)
        m_state.notice.reset();
    Q_EMIT changed();
}

void CheckOffPresenter::fail(const Fault& fault)
{
    m_state.saving = false;
    m_turn.forget();
    tell(fault);
}

void CheckOffPresenter::tell(const Fault& fault)
{
    m_state.notice = fault;
    Q_EMIT changed();
}

void CheckOffPresenter::dismissNotice()
{
    m_state.notice.reset();
    Q_EMIT changed();
}

void CheckOffPresenter::retranslate()
{
    m_items->retranslate();
    Q_EMIT changed();
}

}  // namespace fb
