// verify: whether the records are what was kept.
#include <QCoreApplication>
#include <QDir>
#include <QLocale>

#include "app/cli/record_commands.h"
#include "app/store/record_migrations.h"
#include "app/store/record_verify.h"

namespace fb {

struct VerifyWords {
    Q_DECLARE_TR_FUNCTIONS(fb::VerifyCommand)
};

Result<std::string> verifyAnswer(const QString& records)
{
    LongWork work;
    const auto found = Store::openToRead(records, recordStoreKind()).and_then([&](const auto& store) {
        return verifyRecords(*store, work);
    });
    if (!found)
        return tl::unexpected(found.error());
    if (!found->whole)
        return fault(Problem::StoreBroken, records.toStdString());
    const QLocale locale;
    return VerifyWords::tr("%1\n"
                           "Whole, and the log follows from its first entry to its last.\n"
                           "Log entries          %2\n"
                           "Head of the log      %3\n"
                           "Signed check-offs    %4\n"
                           "Answers              %5\n")
        .arg(QDir::toNativeSeparators(records), locale.toString(found->entries), found->head,
             locale.toString(found->checkOffs), locale.toString(found->answers))
        .toStdString();
}

}  // namespace fb
