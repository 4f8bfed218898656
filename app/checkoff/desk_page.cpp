#include "app/checkoff/desk_page.h"

#include <QApplication>
#include <QEvent>
#include <QItemSelectionModel>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStackedLayout>

#include "app/checkoff/desk_column.h"
#include "app/checkoff/desk_empty.h"
#include "app/checkoff/desk_model.h"
#include "app/checkoff/desk_note.h"
#include "app/checkoff/desk_offer.h"
#include "app/checkoff/desk_table.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/check_off_words.h"

namespace fb {

DeskPage::DeskPage(CheckOffPresenter& presenter, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent),
      m_presenter(presenter),
      m_dialogs(dialogs),
      m_model(new DeskModel(this)),
      m_filter(new DeskFilter(*m_model, this)),
      m_desk(new QWidget(this)),
      m_empty(new DeskEmpty(this)),
      m_note(new DeskNote(m_desk)),
      m_search(new QLineEdit(m_desk)),
      m_count(parts::text(m_desk, "studentCount", "small")),
      m_table(new DeskTable(m_desk)),
      m_chosen(parts::text(m_desk, "chosenName", "request")),
      m_standing(parts::text(m_desk, "chosenStanding")),
      m_student(parts::button(m_desk, "editStudent")),
      m_noShow(parts::button(m_desk, "noShow")),
      m_start(parts::mainButton(m_desk, "start")),
      m_column(new DeskColumn(m_desk))
{
    setObjectName(QStringLiteral("deskPage"));
    m_search->setObjectName(QStringLiteral("searchStudents"));
    m_search->setClearButtonEnabled(true);
    layOut();
    connectAll();
    say();
    showState();
}

void DeskPage::layOut()
{
    auto* rows = new QVBoxLayout(m_desk);
    rows->setContentsMargins(space::kMargin, space::kApart, space::kMargin, space::kApart);
    rows->setSpacing(space::kApart);
    rows->addWidget(m_note);
    auto* row = new QHBoxLayout;
    row->setSpacing(space::kMargin);
    row->addWidget(list(), 1);
    row->addWidget(m_column);
    rows->addLayout(row, 1);
    m_stack = new QStackedLayout(this);
    m_stack->addWidget(m_desk);
    m_stack->addWidget(m_empty);
}

QWidget* DeskPage::list()
{
    auto* whole = new QWidget(m_desk);
    auto* rows = new QVBoxLayout(whole);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(space::kNear);
    auto* searching = new QHBoxLayout;
    searching->setSpacing(space::kApart);
    searching->addWidget(m_search, 1);
    searching->addWidget(m_count);
    rows->addLayout(searching);
    rows->addWidget(m_table, 1);
    auto* about = new QVBoxLayout;
    about->setSpacing(0);
    about->addWidget(m_chosen);
    about->addWidget(m_standing);
    auto* chosen = new QHBoxLayout;
    chosen->setSpacing(space::kNear);
    chosen->addLayout(about, 1);
    chosen->addWidget(m_student, 0, Qt::AlignBottom);
    chosen->addWidget(m_noShow, 0, Qt::AlignBottom);
    chosen->addWidget(m_start, 0, Qt::AlignBottom);
    rows->addLayout(chosen);
    m_count->setWordWrap(false);
    return whole;
}

void DeskPage::connectAll()
{
    CheckOffPresenter* to = &m_presenter;
    connect(to, &CheckOffPresenter::changed, this, &DeskPage::showState);
    connect(to, &CheckOffPresenter::ticked, this, [this, to] { m_empty->showState(to->state()); });
    connect(m_empty, &DeskEmpty::sampleAsked, to, &CheckOffPresenter::useSample);
    connect(m_empty, &DeskEmpty::importAsked, this, [this] { guarded(&DeskPage::importRoster); });
    connect(&m_empty->offer(), &DeskOffer::putBackAsked, to, &CheckOffPresenter::putBack);
    connect(&m_empty->offer(), &DeskOffer::cancelAsked, to, &CheckOffPresenter::cancelPutBack);
    connect(&m_empty->offer(), &DeskOffer::declined, to, &CheckOffPresenter::declineBackup);
    connect(m_note, &DeskNote::dismissed, to, &CheckOffPresenter::dismissPutBack);
    connect(m_search, &QLineEdit::textChanged, this, &DeskPage::search);
    connect(m_search, &QLineEdit::returnPressed, this, &DeskPage::start);
    connect(m_table, &DeskTable::startAsked, this, &DeskPage::start);
    connect(m_start, &QPushButton::clicked, this, &DeskPage::start);
    connect(m_student, &QPushButton::clicked, this, [this] { guarded(&DeskPage::editStudent); });
    connect(m_noShow, &QPushButton::clicked, this, &DeskPage::noShow);
    connect(m_column, &DeskColumn::goOnAsked, to, &CheckOffPresenter::goOn);
    connect(m_column, &DeskColumn::voidAsked, this, &DeskPage::voidRunning);
    connect(m_column, &DeskColumn::sheetChosen, to, &CheckOffPresenter::chooseSheet);
    connect(m_column, &DeskColumn::editSheetAsked, this, [this] { guarded(&DeskPage::editSheet); });
    connect(m_column, &DeskColumn::importAsked, this, [this] { guarded(&DeskPage::importRoster); });
    // Each column at least as wide as what usually stands in it.
    m_table->use(*m_filter, DeskModel::NameColumn, Qt::AscendingOrder,
                 {QStringLiteral("Featherstonehaugh, Annabel"), QStringLiteral("S-123456"),
                  QStringLiteral("Section AB"), QStringLiteral("May try again from 30 September")},
                 {DeskModel::SectionColumn, DeskModel::NameColumn});
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &DeskPage::choose);
}

void DeskPage::say()
{
    m_empty->say();
    m_note->say();
    m_search->setPlaceholderText(tr("Search by name, number or section"));
    m_search->setAccessibleName(tr("Search by name, number or section"));
    m_table->setAccessibleName(tr("Students"));
    //: What is agreed with the student that is chosen: more time, another language.
    parts::say(m_student, tr("Student…"));
    m_student->setAccessibleName(tr("What is agreed with this student"));
    //: The student did not come; asks before it is recorded.
    parts::say(m_noShow, tr("No-show…"));
    parts::say(m_start, tr("Start"));
}

void DeskPage::showState()
{
    const CheckOffState& state = m_presenter.state();
    if (state.open)
        return;
    const bool isEmpty = state.ready && state.desk.students.empty();
    QWidget* shown = isEmpty ? static_cast<QWidget*>(m_empty) : m_desk;
    // Who had the keys keeps them, though what was pressed is disabled or makes room for the list.
    const bool goes = shown != m_stack->currentWidget() || state.saving;
    m_wantsKeys = m_wantsKeys || (goes && m_empty->isAncestorOf(QApplication::focusWidget()));
    m_stack->setCurrentWidget(shown);
    setEnabled(state.ready);
    m_empty->showState(state);
    m_note->showState(state);
    m_showing = true;
    m_model->setStudents(state.desk.students);
    m_showing = false;
    showChosenRow();
    m_column->showState(state);
    showChosen();
    if (m_wantsKeys && isVisible())
        focusFirst();
}

// The row of whoever is chosen; where the search hides it, the first that is left.
void DeskPage::showChosenRow()
{
    const int source = m_model->rowOf(m_presenter.state().chosenStudent);
    const QModelIndex row = m_filter->mapFromSource(m_model->index(source, DeskModel::NameColumn));
    const QModelIndex now = row.isValid() ? row : m_filter->index(0, DeskModel::NameColumn);
    if (now.row() != m_table->currentIndex().row() || !m_table->currentIndex().isValid())
        m_table->setCurrentIndex(now);
    choose(now);
    m_count->setText(m_presenter.state().ready ? tr("%Ln student(s)", nullptr, m_filter->rowCount())
                                               : QString());
}

void DeskPage::showChosen()
{
    const CheckOffState& state = m_presenter.state();
    const int row = m_model->rowOf(state.chosenStudent);
    const bool chosen = row >= 0 && m_filter->rowCount() > 0;
    const QString why = whyNot();
    m_chosen->setText(chosen ? listName(m_model->at(row).student) : QString());
    m_standing->setText(why.isEmpty() && chosen ? parts::alone(standingName(m_model->at(row).where)) : why);
    m_student->setEnabled(chosen && !state.saving);
    m_start->setEnabled(chosen && why.isEmpty() && !state.saving);
    m_noShow->setEnabled(m_start->isEnabled());
}

QString DeskPage::whyNot() const
{
    const CheckOffState& state = m_presenter.state();
    const int row = m_model->rowOf(state.chosenStudent);
    if (!state.ready)
        return {};  // nothing is known yet, or nothing could be read
    if (m_filter->rowCount() == 0)
        return tr("Nobody is found by these words.");
    if (row < 0)
        return tr("Choose a student.");
    if (state.desk.currentSheet.isEmpty())
        return tr("There is no sheet yet to check by.");
    if (state.desk.running)
        return tr("First go on with the check-off that is still open, or void it.");
    const WhereTheyStand& where = m_model->at(row).where;
    return mayStart(where) ? QString() : parts::alone(standingName(where)) + u'.';
}

void DeskPage::search(const QString& words)
{
    m_showing = true;
    m_filter->setWords(words);
    m_showing = false;
    showChosenRow();
    showChosen();
}

void DeskPage::choose(const QModelIndex& row)
{
    if (m_showing || !row.isValid())
        return;
    m_presenter.chooseStudent(m_model->at(m_filter->mapToSource(row).row()).student.id);
}

void DeskPage::start()
{
    if (m_start->isEnabled())
        m_presenter.begin(QString(m_presenter.state().chosenStudent));
}

void DeskPage::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    m_model->setScheme(scheme);
    m_table->setScheme(scheme);
    m_note->setScheme(scheme);
}

// What stands open comes before the list. While nothing is read yet, or something is being kept, it waits
// until there is something to do by them.
void DeskPage::focusFirst()
{
    QWidget* first = m_table;
    if (m_stack->currentWidget() == m_empty)
        first = m_empty->first();
    else if (m_presenter.state().desk.running)
        first = m_column->first();
    m_wantsKeys = !first->isEnabled();
    if (!m_wantsKeys)
        first->setFocus();
}

void DeskPage::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) {
        say();
        m_column->say();
        m_filter->retranslate();
        m_model->retranslate();
        showState();
    } else if (event->type() == QEvent::FontChange && m_stack) {
        m_table->fitColumns();
    }
}

}  // namespace fb
