#include "app/checkoff/sheet_out.h"

#include <QCoreApplication>
#include <QPrinter>
#include <QRegularExpression>
#include <QThread>

#include "app/doors/library.h"
#include "app/report/feedback_sheet.h"

namespace fb {

SheetOut::SheetOut(RecordKeeper& records, QObject* parent) : QObject(parent), m_records(records) {}

// A sheet that is being made asks this very thread for its words, so that it must not be waited for in
// silence.
SheetOut::~SheetOut()
{
    constexpr int kLookMs = 10;
    blockSignals(true);
    while (m_atWork) {
        QCoreApplication::sendPostedEvents(QCoreApplication::instance(), QEvent::MetaCall);
        QThread::msleep(kLookMs);
    }
}

void SheetOut::writePdf(qint64 checkOff, const QString& file)
{
    start(checkOff, [file](const FeedbackSheet& sheet) { return writeSheet(sheet, file); });
}

void SheetOut::print(qint64 checkOff, const std::shared_ptr<QPrinter>& printer)
{
    start(checkOff, [printer](const FeedbackSheet& sheet) -> Result<bool> {
        printer->setDocName(sheet.words.documentTitle);
        if (paintSheet(sheet, *printer) == 0)
            return fault(Problem::PrinterMissing);
        return true;
    });
}

void SheetOut::start(qint64 checkOff, Paint paint)
{
    if (m_busy)
        return;
    m_busy = true;
    m_records.read(checkOff, this, [this, paint = std::move(paint)](const Result<CheckOffOnFile>& read) {
        if (!read)
            return end(tl::unexpected(read.error()));
        m_atWork = true;
        m_thread = std::jthread([this, onFile = *read, paint] { work(onFile, paint); });
    });
}

void SheetOut::work(const CheckOffOnFile& checkOff, const Paint& paint)
{
    // Plates are read anew: what the window has open stays its own.
    const Result<bool> result =
        Library::load()
            .and_then([&](const auto& library) { return feedbackSheet(checkOff, *library); })
            .and_then(paint);
    m_atWork = false;
    QMetaObject::invokeMethod(
        this, [this, result] { end(result); }, Qt::QueuedConnection);
}

void SheetOut::end(const Result<bool>& result)
{
    m_busy = false;
    if (result)
        Q_EMIT done();
    else
        Q_EMIT failed(result.error());
}

QString sheetFileName(const Student& student, const QDateTime& at)
{
    QString name = QStringLiteral("%1 %2 %3")
                       .arg(student.family, student.given, at.toLocalTime().date().toString(Qt::ISODate));
    static const QRegularExpression others(QStringLiteral("[^\\p{L}\\p{N}]+"));
    name.replace(others, QStringLiteral("-"));
    while (name.startsWith(QLatin1Char('-')))
        name.remove(0, 1);
    return name + QStringLiteral(".pdf");
}

}  // namespace fb
