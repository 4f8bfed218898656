// What is asked before something is changed from the desk: see desk_page.h.
#include <algorithm>

#include "app/checkoff/desk_model.h"
#include "app/checkoff/desk_page.h"
#include "app/checkoff/pin_dialog.h"
#include "app/checkoff/reason_dialog.h"
#include "app/checkoff/student_dialog.h"
#include "app/roster/roster_dialog.h"
#include "app/sheets/sheet_dialog.h"

namespace fb {

void DeskPage::noShow()
{
    // Of whom it was asked, whoever is chosen meanwhile.
    ReasonDialog::ask(ReasonFor::NoShow, this,
                      [this, id = m_presenter.state().chosenStudent](const QString&) {
                          m_presenter.chooseStudent(id);
                          m_presenter.noShow();
                      });
}

// Once there are assessors, only they change what is asked of whom.
void DeskPage::guarded(void (DeskPage::*then)())
{
    PinDialog::ask(m_presenter.records(), m_presenter.state().desk.assessors, this,
                   [this, then] { (this->*then)(); });
}

void DeskPage::importRoster()
{
    std::vector<Student> known;
    for (const StudentStanding& each : m_presenter.state().desk.students)
        known.push_back(each.student);
    auto* dialog = new RosterDialog(std::move(known), m_dialogs, m_scheme, this);
    connect(dialog, &RosterDialog::imported, &m_presenter, &CheckOffPresenter::saveStudents);
    showDialog(dialog);
}

void DeskPage::editSheet()
{
    const Desk& desk = m_presenter.state().desk;
    const auto current = std::ranges::find(desk.sheets, desk.currentSheet, &SheetOnFile::key);
    const Sheet sheet = current == desk.sheets.end() ? Sheet() : current->sheet;
    auto* dialog = new SheetDialog(sheet, m_dialogs, this);
    connect(dialog, &SheetDialog::edited, &m_presenter, &CheckOffPresenter::saveSheet);
    showDialog(dialog);
}

void DeskPage::editStudent()
{
    const int row = m_model->rowOf(m_presenter.state().chosenStudent);
    if (row < 0)
        return;
    auto* dialog = new StudentDialog(m_model->at(row).student, this);
    connect(dialog, &StudentDialog::edited, &m_presenter,
            [this](const Student& student) { m_presenter.saveStudents({student}); });
    showDialog(dialog);
}

// What was pressed to open it may be disabled by now, for something is being kept.
void DeskPage::showDialog(QDialog* dialog)
{
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::accepted, this, &DeskPage::focusFirst);
    dialog->open();
}

void DeskPage::voidRunning()
{
    ReasonDialog::ask(ReasonFor::Void, this, [this](const QString& why) { m_presenter.voidTechnical(why); });
}

}  // namespace fb
