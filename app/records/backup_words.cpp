#include "app/records/backup_words.h"

#include <QCoreApplication>
#include <QDir>
#include <QLocale>

namespace fb {

struct BackupWords {
    Q_DECLARE_TR_FUNCTIONS(fb::BackupWords)
};

namespace backup_words_detail {

QString endText(const BackupOnFile& backup)
{
    const QLocale locale;
    const QDateTime end = backup.lastAt.toLocalTime();
    //: A moment: %1 is a day such as "Sunday, November 29, 2026", %2 a time of day.
    return BackupWords::tr("%1 at %2")
        .arg(locale.toString(end.date(), QLocale::LongFormat),
             locale.toString(end.time(), QLocale::ShortFormat));
}

}  // namespace backup_words_detail

using namespace backup_words_detail;

QString holdsText(const BackupOnFile& backup)
{
    const QString students = BackupWords::tr("%Ln student(s)", nullptr, backup.students);
    const QString checkOffs = BackupWords::tr("%Ln signed check-off(s)", nullptr, backup.checkOffs);
    //: %1 is a moment, %2 and %3 are counts such as "15 students" and "9 signed check-offs".
    return BackupWords::tr(
               "Its last entry was made on %1. It holds %2 and %3. What came after that is not in it.")
        .arg(endText(backup), students, checkOffs);
}

QString putBackText(const PutBack& done)
{
    //: %1 is a moment, %2 a file.
    return BackupWords::tr(
               "The backup was put back, up to its last entry on %1. The file that stood here before "
               "is kept whole: %2")
        .arg(endText(done.backup), QDir::toNativeSeparators(done.aside));
}

}  // namespace fb
