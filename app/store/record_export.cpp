#include "app/store/record_export.h"

#include <algorithm>
#include <future>

#include "app/store/record_migrations.h"

namespace fb {

namespace record_export_detail {

Result<bool> exported(const Store& store, ExportKind kind, const QString& sheet, const Moment& now,
                      ExportFile& out, LongWork& work)
{
    switch (kind) {
    case ExportKind::GradebookCsv: return exportGradebook(store, sheet, now, out);
    case ExportKind::FullCsv: return exportFullCsv(store, sheet, out, work);
    case ExportKind::FullJson: return exportFullJson(store, sheet, now, out, work);
    }
    return true;
}

}  // namespace record_export_detail

Result<bool> exportRecords(const Store& store, ExportKind kind, const QString& sheet, const QString& file,
                           const Moment& now, LongWork& work)
{
    ExportFile out(file);
    const auto done = out.open().and_then([&](bool) {
        return store.snapshot(
            [&] { return record_export_detail::exported(store, kind, sheet, now, out, work); });
    });
    if (!done || work.cancelled) {
        out.drop();
        return done ? Result<bool>(false) : done;
    }
    const auto kept = out.commit();
    work.percent = 100;
    return kept;
}

Result<bool> writeRanges(const Store& store, ExportFile& out, LongWork& work, const QByteArray& between,
                         const MakeRange& make)
{
    constexpr int kAtATime = 2000;
    const auto last = store.rows({QStringLiteral("SELECT coalesce(max(check_off_id), 0) FROM check_off")});
    if (!last)
        return tl::unexpected(last.error());
    const qint64 most = last->front().front().toLongLong();
    const QString file = store.file();
    const auto beside = [&](const CheckOffRange& range) -> Result<QByteArray> {
        const auto own = Store::openToRead(file, recordStoreKind());
        return own ? make(**own, range) : tl::unexpected(own.error());
    };
    bool isFirst = true;
    for (qint64 from = 1; from <= most && !work.cancelled; from += 2 * kAtATime) {
        const qint64 middle = from + kAtATime;
        auto later = std::async(std::launch::async, beside, CheckOffRange{middle, middle + kAtATime - 1});
        const auto now = make(store, {from, middle - 1});
        const auto then = later.get();
        if (!now || !then)
            return tl::unexpected(now ? then.error() : now.error());
        for (const QByteArray* text : {&*now, &*then}) {
            if (text->isEmpty())
                continue;
            out.write(isFirst ? QByteArray() : between);
            out.write(*text);
            isFirst = false;
        }
        if (const auto written = out.flushed(); !written)
            return written;
        work.percent = static_cast<int>(std::min<qint64>(99, 100 * (middle + kAtATime) / most));
    }
    return true;
}

}  // namespace fb
