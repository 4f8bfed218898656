#include "app/records/log_page.h"

#include <QComboBox>
#include <QEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPointer>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>

#include "app/look/icons.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/records/put_back_panel.h"
#include "app/records/records_look.h"

namespace fb {

LogPage::LogPage(RecordsPresenter& presenter, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent),
      m_presenter(presenter),
      m_dialogs(dialogs),
      m_logTitle(parts::text(this, "logTitle", "request")),
      m_logText(parts::text(this, "logText")),
      m_verify(parts::button(this, "verify")),
      m_backupTitle(parts::text(this, "backupTitle", "request")),
      m_backupText(parts::text(this, "backupText")),
      m_backup(parts::button(this, "backup")),
      m_choose(parts::button(this, "chooseBackup")),
      m_putBack(new PutBackPanel(this)),
      m_exportTitle(parts::text(this, "exportTitle", "request")),
      m_exportText(parts::text(this, "exportText")),
      m_sheet(new QComboBox(this)),
      m_gradebook(parts::button(this, "exportGradebook")),
      m_csv(parts::button(this, "exportCsv")),
      m_json(parts::button(this, "exportJson")),
      m_working(new QWidget(this)),
      m_doing(parts::text(m_working, "workDoing")),
      m_bar(new QProgressBar(m_working)),
      m_cancel(parts::button(m_working, "workCancel")),
      m_icon(new QLabel(this)),
      m_done(parts::text(this, "workDone"))
{
    m_sheet->setObjectName(QStringLiteral("exportSheet"));
    m_bar->setObjectName(QStringLiteral("workBar"));
    m_bar->setTextVisible(false);
    m_icon->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
    layOut();
    say();
    connect(m_verify, &QPushButton::clicked, &m_presenter, &RecordsPresenter::verify);
    connect(m_backup, &QPushButton::clicked, this, &LogPage::backup);
    connect(m_choose, &QPushButton::clicked, this, &LogPage::chooseBackup);
    connect(m_putBack, &PutBackPanel::accepted, &m_presenter, &RecordsPresenter::putBack);
    connect(m_putBack, &PutBackPanel::rejected, this, [this] {
        m_choose->setFocus();
        m_presenter.dropBackup();
    });
    connect(m_gradebook, &QPushButton::clicked, this,
            [this] { write(ExportKind::GradebookCsv, SaveKind::Csv, tr("gradebook")); });
    connect(m_csv, &QPushButton::clicked, this,
            [this] { write(ExportKind::FullCsv, SaveKind::Csv, tr("check-offs")); });
    connect(m_json, &QPushButton::clicked, this,
            [this] { write(ExportKind::FullJson, SaveKind::Json, tr("check-offs")); });
    connect(m_cancel, &QPushButton::clicked, this, [this] {
        m_presenter.cancel();
        m_cancel->setEnabled(false);
    });
}

void LogPage::layOut()
{
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(space::kApart);
    auto* scroll = new QScrollArea(this);
    scroll->setObjectName(QStringLiteral("logScroll"));
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(fields());
    parts::followFocus(scroll);
    whole->addWidget(scroll, 1);
    auto* working = new QHBoxLayout(m_working);
    working->setContentsMargins(0, 0, 0, 0);
    working->setSpacing(space::kApart);
    working->addWidget(m_doing, 1);
    working->addWidget(m_bar, 1);
    working->addWidget(m_cancel);
    whole->addWidget(m_working);
    auto* done = new QHBoxLayout;
    done->setSpacing(space::kNear);
    done->addWidget(m_icon, 0, Qt::AlignTop);
    done->addWidget(m_done, 1);
    whole->addLayout(done);
}

QWidget* LogPage::fields()
{
    constexpr int kReading = 760;  // px: lines of text are read no longer than that
    auto* whole = new QWidget;
    auto* column = new QVBoxLayout(whole);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kNear);
    const auto section = [&](QLabel* title, QLabel* text) {
        text->setMaximumWidth(parts::scaled(this, kReading));
        column->addWidget(title);
        column->addWidget(text);
    };
    const auto divide = [&] {
        column->addSpacing(space::kNear);
        column->addWidget(parts::rule(whole));
        column->addSpacing(space::kNear);
    };
    section(m_logTitle, m_logText);
    column->addWidget(m_verify, 0, Qt::AlignLeading);
    divide();
    section(m_backupTitle, m_backupText);
    auto* backups = new QHBoxLayout;
    backups->setSpacing(space::kNear);
    backups->addWidget(m_backup);
    backups->addWidget(m_choose);
    backups->addStretch(1);
    column->addLayout(backups);
    m_putBack->setMaximumWidth(parts::scaled(this, kReading));
    column->addWidget(m_putBack);
    divide();
    section(m_exportTitle, m_exportText);
    column->addWidget(m_sheet, 0, Qt::AlignLeading);
    auto* exports = new QHBoxLayout;
    exports->setSpacing(space::kNear);
    for (QPushButton* each : {m_gradebook, m_csv, m_json})
        exports->addWidget(each);
    exports->addStretch(1);
    column->addLayout(exports);
    column->addStretch(1);
    return whole;
}

void LogPage::say()
{
    m_logTitle->setText(tr("Log"));
    m_logText->setText(
        tr("Every signature, sheet and practice is written into a log whose entries hold on to each other. "
           "Verifying walks the whole log and all records, and names the first entry that does not follow."));
    parts::say(m_verify, tr("Verify"));
    m_verify->setAccessibleName(tr("Verify the log and the records"));
    m_backupTitle->setText(tr("Backup"));
    parts::say(m_backup, tr("Backup…"));
    m_backup->setAccessibleName(tr("Make a backup of all records"));
    //: Asks for the file of a backup, and then whether it is to take the place of the records.
    parts::say(m_choose, tr("Put a backup back…"));
    m_putBack->say();
    m_exportTitle->setText(tr("Exports"));
    m_exportText->setText(tr("Exports name students and their results. Whoever has the file can read them."));
    m_sheet->setAccessibleName(tr("Check-offs of which sheet are exported"));
    //: One line a student, for a table of grades.
    parts::say(m_gradebook, tr("Gradebook as CSV…"));
    //: Everything that is kept of each check-off, likewise the next.
    parts::say(m_csv, tr("Everything as CSV…"));
    parts::say(m_json, tr("Everything as JSON…"));
    parts::say(m_cancel, tr("Cancel"));
    m_cancel->setAccessibleName(tr("Cancel what is being done"));
    m_bar->setAccessibleName(tr("How far it is"));
}

void LogPage::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) {
        say();
        m_sheets.clear();
        showState(m_presenter.state());
    }
}

void LogPage::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    showState(m_presenter.state());
}

void LogPage::showState(const RecordsState& state)
{
    std::vector<QString> keys{QString()};
    for (const SheetOnFile& each : state.sheets)
        keys.push_back(each.key);
    if (keys != m_sheets) {
        m_sheets = keys;
        m_sheet->clear();
        m_sheet->addItem(tr("Every sheet"));
        for (const SheetOnFile& each : state.sheets)
            m_sheet->addItem(sheetTitle(each));
        const auto at = std::ranges::find(keys, state.sheet);
        m_sheet->setCurrentIndex(at == keys.end() ? 0 : static_cast<int>(at - keys.begin()));
    }
    m_backupText->setText(state.lastBackup.isEmpty() ? tr("No backup was made yet. Keep one on another disk.")
                                                     : tr("The last backup: %1").arg(state.lastBackup));
    m_putBack->showState(state);
    m_cancel->setEnabled(true);
    showProgress(state);
}

void LogPage::showProgress(const RecordsState& state)
{
    for (QPushButton* each : {m_verify, m_backup, m_choose, m_gradebook, m_csv, m_json})
        each->setEnabled(!state.task);
    m_working->setVisible(state.task.has_value());
    const bool ended = state.done.has_value() && !state.task;
    m_done->setVisible(ended);
    m_icon->setVisible(ended);
    if (state.task) {
        const QString far = percentText(state.task->percent);
        switch (state.task->kind) {
        case LongTaskKind::Verify: m_doing->setText(tr("The log is being verified: %1.").arg(far)); break;
        case LongTaskKind::Backup: m_doing->setText(tr("The backup is being made: %1.").arg(far)); break;
        case LongTaskKind::Export: m_doing->setText(tr("The export is being written: %1.").arg(far)); break;
        case LongTaskKind::SavedSheet:
        case LongTaskKind::PrintedSheet: m_doing->setText(tr("A sheet is being made.")); break;
        case LongTaskKind::PutBack: m_doing->setText(tr("The backup is being put back: %1.").arg(far)); break;
        }
        m_bar->setValue(state.task->percent);
        return;
    }
    if (!ended)
        return;
    constexpr int kIconSize = 20;
    const bool good = !state.done->cancelled && (!state.done->verified || state.done->verified->whole);
    m_icon->setPixmap(pixmapFor(good ? Icon::Done : Icon::Caution, good ? m_scheme.good : m_scheme.danger,
                                parts::scaled(this, kIconSize), devicePixelRatioF()));
    m_done->setText(doneText(*state.done));
}

QString LogPage::doneText(const LongTaskDone& done) const
{
    if (done.cancelled)
        return done.kind == LongTaskKind::Verify    ? tr("Cancelled; nothing was found out.")
               : done.kind == LongTaskKind::PutBack ? tr("Cancelled; nothing was changed.")
                                                    : tr("Cancelled; no file was left behind.");
    switch (done.kind) {
    case LongTaskKind::Verify: return verifiedText(*done.verified);
    case LongTaskKind::Backup: return tr("The backup was made: %1").arg(done.file);
    case LongTaskKind::Export: return tr("The export was written: %1").arg(done.file);
    case LongTaskKind::SavedSheet: return tr("The sheet was saved: %1").arg(done.file);
    case LongTaskKind::PrintedSheet: return tr("The sheet was sent to the printer.");
    case LongTaskKind::PutBack: break;  // which shuts the gate, and is told there
    }
    return {};
}

QString LogPage::verifiedText(const Verified& verified) const
{
    if (!verified.whole)
        return tr("The log follows, but the file of the records is damaged; put a backup back.");
    const QString entries = tr("%Ln entry(ies) of the log", nullptr, static_cast<int>(verified.entries));
    const QString checkOffs = tr("%Ln check-off(s)", nullptr, static_cast<int>(verified.checkOffs));
    const QString answers = tr("%Ln answer(s)", nullptr, static_cast<int>(verified.answers));
    //: %1 to %3 are counts such as "7 entries of the log"; %4 is the beginning of a hash.
    return tr("Everything follows and is whole: %1, %2, %3. The log’s head is %4.")
        .arg(entries, checkOffs, answers, shortHead(verified.head));
}

// While the system asks for a file the gate may be shut, and this page be gone.
void LogPage::backup()
{
    const QString day = m_presenter.today().toString(Qt::ISODate);
    const QPointer<LogPage> here(this);
    //: A file's name; %1 is the day.
    const QString file =
        m_dialogs.askSaveFile(window(), tr("fingerbreadth backup %1").arg(day), SaveKind::Records);
    if (here && !file.isEmpty())
        m_presenter.backup(file);
}

void LogPage::chooseBackup()
{
    const QString last = m_presenter.state().lastBackup;
    const QPointer<LogPage> here(this);
    const QString file =
        m_dialogs.askBackupFile(window(), last.isEmpty() ? QString() : QFileInfo(last).absolutePath());
    if (here && !file.isEmpty())
        m_presenter.chooseBackup(file);
}

void LogPage::write(ExportKind kind, SaveKind as, const QString& name)
{
    const QString sheet = m_sheets[static_cast<std::size_t>(std::max(0, m_sheet->currentIndex()))];
    const QString day = m_presenter.today().toString(Qt::ISODate);
    const QPointer<LogPage> here(this);
    const QString file = m_dialogs.askSaveFile(window(), name + u' ' + day, as);
    if (here && !file.isEmpty())
        m_presenter.write(kind, sheet, file);
}

void LogPage::focusFirst() { m_verify->setFocus(); }

}  // namespace fb
