// Work that takes its time, one at a time: see records_presenter.h.
#include <QPrinter>

#include "app/records/records_presenter.h"
#include "app/report/feedback_sheet.h"

namespace fb {

std::shared_ptr<LongWork> RecordsPresenter::begin(LongTaskKind kind, const QString& file)
{
    if (m_state.gate != RecordsGate::Open || m_state.task)
        return nullptr;
    m_work = std::make_shared<LongWork>();
    m_state.task = LongTask{kind, file, 0};
    m_state.done.reset();
    auto* look = new QTimer(this);
    look->setInterval(kTickMs / 2);
    // Looks how far it is until it has ended.
    connect(look, &QTimer::timeout, this, [this, look, work = m_work] {
        if (work != m_work)
            return look->deleteLater();
        m_state.task->percent = work->percent;
        Q_EMIT progressed();
    });
    look->start();
    Q_EMIT changed();
    return m_work;
}

void RecordsPresenter::end(const Result<LongTaskDone>& how)
{
    m_work.reset();
    m_state.task.reset();
    if (!how)
        return tell(how.error());
    m_state.done = *how;
    Q_EMIT changed();
}

RecordKeeper::Then<bool> RecordsPresenter::ending()
{
    return [this, task = *m_state.task](const Result<bool>& written) {
        if (!written)
            return end(tl::unexpected(written.error()));
        if (task.kind == LongTaskKind::Backup && *written)
            m_state.lastBackup = m_state.gate == RecordsGate::Open ? task.file : QString();
        end(LongTaskDone{task.kind, task.file, !*written, {}});
    };
}

void RecordsPresenter::verify()
{
    if (const auto work = begin(LongTaskKind::Verify, {})) {
        m_records.verify(work, this, [this, work](const Result<Verified>& verified) {
            // What was cut short says nothing of the log, whether it calls that a fault or not.
            if (work->cancelled)
                return end(LongTaskDone{LongTaskKind::Verify, {}, true, {}});
            if (!verified)
                return end(tl::unexpected(verified.error()));
            end(LongTaskDone{LongTaskKind::Verify, {}, false, *verified});
        });
    }
}

void RecordsPresenter::backup(const QString& file)
{
    if (const auto work = begin(LongTaskKind::Backup, file))
        m_records.backup(file, work, this, ending());
}

void RecordsPresenter::write(ExportKind kind, const QString& sheet, const QString& file)
{
    if (const auto work = begin(LongTaskKind::Export, file))
        m_records.write(kind, sheet, file, work, this, ending());
}

void RecordsPresenter::chooseBackup(const QString& file)
{
    if (m_state.gate != RecordsGate::Open || m_state.task)
        return;
    m_state.notice.reset();
    m_state.chosenBackup.reset();
    m_records.lookInto(
        file, this, here<BackupOnFile>([this](const BackupOnFile& found) { m_state.chosenBackup = found; }));
}

void RecordsPresenter::dropBackup()
{
    m_state.chosenBackup.reset();
    Q_EMIT changed();
}

void RecordsPresenter::putBack()
{
    if (!m_state.chosenBackup || !m_proof)
        return;
    const QString file = m_state.chosenBackup->file;
    const auto work = begin(LongTaskKind::PutBack, file);
    if (!work)
        return;
    m_records.putBack(file, m_proof, work, this, [this, work, file](const Result<PutBack>& done) {
        if (!done && work->cancelled)
            return end(LongTaskDone{LongTaskKind::PutBack, file, true, {}});
        m_state.chosenBackup.reset();
        if (!done)
            return end(tl::unexpected(done.error()));
        m_work.reset();
        m_state.task.reset();
        m_state.putBack = *done;
        if (m_state.gate == RecordsGate::Reading)
            Q_EMIT changed();
        else
            enter();
    });
}

void RecordsPresenter::cancel()
{
    if (m_work)
        m_work->cancelled = true;
}

void RecordsPresenter::saveSheet(const QString& file)
{
    makeSheet(LongTaskKind::SavedSheet, file,
              [file](const FeedbackSheet& sheet) { return writeSheet(sheet, file); });
}

void RecordsPresenter::printSheet(const std::shared_ptr<QPrinter>& printer)
{
    makeSheet(LongTaskKind::PrintedSheet, {}, [printer](const FeedbackSheet& sheet) -> Result<bool> {
        if (!printer->isValid() || paintSheet(sheet, *printer) == 0)
            return fault(Problem::PrinterMissing);
        return true;
    });
}

void RecordsPresenter::makeSheet(LongTaskKind kind, const QString& file,
                                 const std::function<Result<bool>(const FeedbackSheet&)>& write)
{
    if (!m_state.opened || !m_library || !begin(kind, file))
        return;
    m_pool.start([this, write, ended = ending(), opened = m_state.opened, library = m_library] {
        const auto written = feedbackSheet(opened->file, *library).and_then(write);
        QMetaObject::invokeMethod(
            this, [ended, written] { ended(written); }, Qt::QueuedConnection);
    });
}

}  // namespace fb
