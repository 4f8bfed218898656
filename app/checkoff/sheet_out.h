// A signed check-off's feedback sheet on its way to paper or into a PDF: read from the records, regraded and
// painted away from the window's thread. One at a time; a second wish meanwhile is left out.
#pragma once

#include <QObject>
#include <atomic>
#include <functional>
#include <memory>
#include <thread>

#include "app/doors/records.h"

class QPrinter;

namespace fb {

struct FeedbackSheet;

class SheetOut : public QObject {
    Q_OBJECT

public:
    // The records outlive it.
    explicit SheetOut(RecordKeeper& records, QObject* parent = nullptr);
    ~SheetOut() override;  // waits for the one that is being made

    [[nodiscard]] bool isBusy() const { return m_busy; }
    void writePdf(qint64 checkOff, const QString& file);
    void print(qint64 checkOff, const std::shared_ptr<QPrinter>& printer);

Q_SIGNALS:
    void done();
    void failed(const fb::Fault& fault);

private:
    using Paint = std::function<Result<bool>(const FeedbackSheet& sheet)>;
    void start(qint64 checkOff, Paint paint);
    void work(const CheckOffOnFile& checkOff, const Paint& paint);
    void end(const Result<bool>& result);

    RecordKeeper& m_records;
    bool m_busy = false;
    std::atomic_bool m_atWork = false;
    std::jthread m_thread;
};

// "Marsh-Ada-2026-12-01.pdf": of a person's name, what a file's name may have.
[[nodiscard]] QString sheetFileName(const Student& student, const QDateTime& at);

}  // namespace fb
