#include "app/roster/roster_dialog.h"

#include <QComboBox>
#include <QEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QProgressBar>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTableView>
#include <utility>

#include "app/doors/background.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/roster/roster_table.h"
#include "app/words/fault_words.h"

namespace fb {

RosterDialog::RosterDialog(std::vector<Student> known, Dialogs& dialogs, const Scheme& scheme,
                           QWidget* parent)
    : QDialog(parent),
      m_known(std::make_shared<const std::vector<Student>>(std::move(known))),
      m_dialogs(dialogs),
      m_title(parts::text(this, "rosterTitle", "title")),
      m_hint(parts::text(this, "rosterHint", "small")),
      m_fileName(parts::text(this, "rosterFile")),
      m_choose(parts::button(this, "chooseRoster")),
      m_progress(new QProgressBar(this)),
      m_mapping(mapping()),
      m_model(new RosterTable(this)),
      m_table(new QTableView(this)),
      m_counts(parts::text(this, "rosterCounts")),
      m_shown(parts::text(this, "rosterShown", "small")),
      m_notice(parts::text(this, "rosterNotice", "notice")),
      m_cancel(parts::button(this, "cancelRoster")),
      m_import(parts::mainButton(this, "importRoster"))
{
    setObjectName(QStringLiteral("rosterDialog"));
    m_progress->setObjectName(QStringLiteral("rosterProgress"));
    m_progress->setRange(0, 0);
    m_progress->setTextVisible(false);
    m_model->setScheme(scheme);
    furnishTable();
    connect(m_choose, &QPushButton::clicked, this, &RosterDialog::choose);
    connect(m_cancel, &QPushButton::clicked, this, &QDialog::reject);
    connect(m_import, &QPushButton::clicked, this, &RosterDialog::import);
    layOut();
    say();
}

RosterDialog::~RosterDialog() = default;

void RosterDialog::readFile(const QString& file)
{
    using ReadFile = Result<std::shared_ptr<const RosterFile>>;
    m_fileName->setText(QFileInfo(file).fileName());
    m_file.reset();
    m_rows.reset();
    m_fault.reset();
    m_busy = true;
    showState();
    inBackground<ReadFile>(
        this,
        [file]() -> ReadFile {
            return readRoster(file).map(
                [](RosterFile read) { return std::make_shared<const RosterFile>(std::move(read)); });
        },
        [this, asked = ++m_asked](const ReadFile& answer) {
            if (asked == m_asked)
                take(answer);
        });
}

void RosterDialog::take(const Result<std::shared_ptr<const RosterFile>>& file)
{
    if (file) {
        m_file = *file;
        fillChoices();
        return judge();
    }
    m_fault = file.error();
    m_busy = false;
    showState();
}

void RosterDialog::fillChoices()
{
    for (int column = 0; column < kRosterColumnCount; ++column) {
        QComboBox* choice = m_choices[static_cast<std::size_t>(column)];
        const QSignalBlocker quiet(choice);
        choice->clear();
        //: Of a roster: no column of the file stands for this.
        choice->addItem(tr("(none)"), -1);
        for (int index = 0; index < m_file->header.size(); ++index)
            choice->addItem(columnOfFile(index), index);
        choice->setCurrentIndex(choice->findData(m_file->guessed[static_cast<std::size_t>(column)]));
    }
}

QString RosterDialog::columnOfFile(int index) const
{
    const QString& name = m_file->header[index];
    const QString number = QLocale().toString(index + 1);
    const QStringList& first = m_file->rows.front();
    if (!name.isEmpty())
        return name;
    //: A column without a name; %2 is what stands first in it.
    return index < first.size() ? tr("Column %1: %2").arg(number, first[index].left(24))
                                : tr("Column %1").arg(number);
}

RosterMapping RosterDialog::chosen() const
{
    RosterMapping mapping{};
    for (std::size_t column = 0; column < mapping.size(); ++column)
        mapping[column] = m_choices[column]->currentData().toInt();
    return mapping;
}

void RosterDialog::judge()
{
    using Judged = Result<std::shared_ptr<const Rows>>;
    m_busy = true;
    showState();
    inBackground<Judged>(
        this,
        [file = m_file, mapping = chosen(), known = m_known]() -> Judged {
            return rosterRows(*file, mapping, *known).map([](Rows rows) {
                return std::make_shared<const Rows>(std::move(rows));
            });
        },
        [this, asked = ++m_asked](const Judged& answer) {
            if (asked == m_asked)
                showRows(answer);
        });
}

void RosterDialog::showRows(const Result<std::shared_ptr<const Rows>>& rows)
{
    m_busy = false;
    m_rows = rows.value_or(nullptr);
    m_fault = rows ? std::nullopt : std::optional(rows.error());
    m_model->show(m_rows);
    fitTable();
    showState();
}

void RosterDialog::showState()
{
    m_progress->setVisible(m_busy);
    m_mapping->setVisible(m_file != nullptr);
    m_table->setVisible(m_file != nullptr);
    m_hint->setVisible(m_file == nullptr);
    m_counts->setVisible(m_rows != nullptr);
    m_notice->setVisible(m_fault.has_value());
    if (m_fault)
        m_notice->setText(noticeText());
    const auto students = m_rows ? studentsToSave(*m_rows) : std::vector<Student>();
    const int count = static_cast<int>(students.size());
    if (m_rows) {
        const int passedOver = static_cast<int>(m_file->rows.size() - m_rows->size());
        m_counts->setText(rosterCounts(*m_rows, passedOver));
        const int all = static_cast<int>(m_rows->size());
        //: %1 and %2 are numbers of rows.
        m_shown->setText(tr("Shown: %1 of %2 rows, those that want a second look first.")
                             .arg(QLocale().toString(m_model->rowCount()), QLocale().toString(all)));
    }
    m_shown->setVisible(m_rows && m_rows->size() > static_cast<std::size_t>(kShownRosterRows));
    m_import->setEnabled(!m_busy && count > 0);
    parts::say(m_import, count > 0 ? tr("Import %Ln student(s)", nullptr, count) : tr("Import"));
    for (QWidget* choice : m_choices)
        choice->setEnabled(m_file != nullptr);
}

// A column is pointed out here and not in the file.
QString RosterDialog::noticeText() const
{
    if (m_fault->problem != Problem::RosterNoColumn)
        return sentenceOf(*m_fault);
    const bool hasId = m_choices[static_cast<std::size_t>(RosterColumn::Id)]->currentData().toInt() >= 0;
    return hasId ? tr("Point out above which column holds the students’ names.")
                 : tr("Point out above which column holds the students’ ids.");
}

void RosterDialog::choose()
{
    const QString file = m_dialogs.askRosterFile(this);
    if (!file.isEmpty())
        readFile(file);
}

void RosterDialog::import()
{
    Q_EMIT imported(studentsToSave(*m_rows));
    accept();
}

void RosterDialog::changeEvent(QEvent* event)
{
    QDialog::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
}

}  // namespace fb
