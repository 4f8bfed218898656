#include "app/records/check_off_view.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPointer>
#include <QPrinter>
#include <QPushButton>
#include <QScrollArea>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/records/check_off_body.h"
#include "app/records/remediation_panel.h"
#include "app/report/print_choice.h"
#include "app/words/check_off_words.h"

namespace fb {

CheckOffView::CheckOffView(RecordsPresenter& presenter, Dialogs& dialogs, QWidget* parent)
    : RecordView("openedScroll", parent),
      m_presenter(presenter),
      m_dialogs(dialogs),
      m_back(parts::button(this, "openedBack")),
      m_name(parts::text(this, "openedName", "title")),
      m_print(parts::button(this, "openedPrint")),
      m_save(parts::button(this, "openedSave")),
      m_working(parts::text(this, "openedWorking", "small")),
      m_practice(new RemediationPanel(presenter, this))
{
    layOut();
    say();
    connect(m_back, &QPushButton::clicked, &m_presenter, &RecordsPresenter::back);
    connect(m_print, &QPushButton::clicked, this, &CheckOffView::print);
    connect(m_save, &QPushButton::clicked, this, &CheckOffView::save);
}

void CheckOffView::layOut()
{
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(space::kNear);
    auto* top = new QHBoxLayout;
    top->setSpacing(space::kNear);
    top->addWidget(m_back);
    top->addSpacing(space::kNear);
    top->addWidget(m_name, 1);
    top->addWidget(m_print);
    top->addWidget(m_save);
    rows->addLayout(top);
    rows->addWidget(m_working);
    rows->addWidget(parts::rule(this));
    auto* whole = new QWidget;
    m_columns = new QHBoxLayout(whole);
    m_columns->setContentsMargins(0, space::kNear, space::kNear, 0);
    m_columns->setSpacing(space::kBroad);
    m_leading = new QVBoxLayout;
    m_leading->setSpacing(space::kApart);
    m_leading->addWidget(m_practice);
    m_leading->addStretch(1);
    m_columns->addLayout(m_leading, 1);
    scroller()->setWidget(whole);
    rows->addWidget(scroller(), 1);
}

void CheckOffView::say()
{
    parts::say(m_back, tr("Back"));
    parts::say(m_print, tr("Print…"));
    m_print->setAccessibleName(tr("Print the feedback sheet again"));
    parts::say(m_save, tr("Save as PDF…"));
    m_save->setAccessibleName(tr("Save the feedback sheet as PDF again"));
}

void CheckOffView::showState(const RecordsState& state)
{
    if (!state.opened)
        return;
    m_practice->showState(state);
    showProgress(state);
    if (state.opened == m_shown)
        return;
    m_shown = state.opened;
    rebuild();
}

void CheckOffView::showProgress(const RecordsState& state)
{
    const bool free = !state.task;
    m_print->setEnabled(free);
    m_save->setEnabled(free);
    const auto isSheet = [](LongTaskKind kind) {
        return kind == LongTaskKind::SavedSheet || kind == LongTaskKind::PrintedSheet;
    };
    QString words;
    if (state.task && isSheet(state.task->kind))
        words = tr("The sheet is being made.");
    else if (state.done && state.done->kind == LongTaskKind::SavedSheet)
        words = tr("Saved: %1").arg(state.done->file);
    else if (state.done && state.done->kind == LongTaskKind::PrintedSheet)
        words = tr("Sent to the printer.");
    m_working->setText(words);
    m_working->setVisible(!words.isEmpty());
}

void CheckOffView::rebuild()
{
    const Student& student = m_shown->file.line.student;
    m_name->setText(fullName(student.given, student.family));
    delete m_head;
    delete m_body;
    m_head = new CheckOffHead(*m_shown, scheme());
    m_body = new CheckOffBody(*m_shown, scheme());
    m_leading->insertWidget(0, m_head);
    m_columns->addWidget(m_body, 1);
    connect(m_body, &CheckOffBody::replayAsked, &m_presenter, &RecordsPresenter::replay);
    // Answers are reached before the practice that follows from them.
    if (auto* first = m_body->findChild<QPushButton*>())
        setTabOrder(m_save, first);
}

void CheckOffView::print()
{
    const auto chosen = choosePrinter(
        this, [this](const std::shared_ptr<QPrinter>& printer) { m_presenter.printSheet(printer); });
    if (!chosen)
        m_presenter.tell(chosen.error());
}

void CheckOffView::save()
{
    const CheckOffLine& line = m_shown->file.line;
    // While the system asks for a file the gate may be shut, and this view be gone.
    const QPointer<CheckOffView> here(this);
    //: A file's name: %1 family name, %2 number of the attempt.
    const QString name = tr("%1 attempt %2").arg(line.student.family, QString::number(line.attempt));
    const QString file = m_dialogs.askSaveFile(window(), name, SaveKind::Pdf);
    if (here && !file.isEmpty())
        m_presenter.saveSheet(file);
}

void CheckOffView::focusFirst()
{
    auto* first = m_body ? m_body->findChild<QPushButton*>() : nullptr;
    (first ? first : m_back)->setFocus();
}

}  // namespace fb
