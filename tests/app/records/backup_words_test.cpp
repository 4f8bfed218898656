#include "app/records/backup_words.h"

#include <gtest/gtest.h>

#include <QLocale>

#include "tests/support/memory_backups.h"

namespace fb::test::backup_words_tests {

TEST(BackupWordsTest, TellsWhenItEndsAndWhatItHoldsInTheFormOfTheLanguage)
{
    BackupOnFile backup = backupSample();
    backup.students = 1200;
    const QString english = holdsText(backup);
    for (const char* word : {"Saturday, November 28, 2026", "1,200 student", "9 signed check-off"})
        EXPECT_TRUE(english.contains(QLatin1String(word))) << word << ": " << english.toStdString();
    EXPECT_TRUE(english.endsWith(u'.'));
    QLocale::setDefault(QLocale(QLocale::German));
    const QString other = holdsText(backup);
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
    EXPECT_TRUE(other.contains(QStringLiteral("28. November 2026"))) << other.toStdString();
}

TEST(BackupWordsTest, TellsWhereTheFileFromBeforeLies)
{
    const QString words = putBackText({backupSample(), QStringLiteral("/lab/records-before-x.db")});
    EXPECT_TRUE(words.contains(QStringLiteral("was put back"))) << words.toStdString();
    EXPECT_TRUE(words.endsWith(QStringLiteral("/lab/records-before-x.db"))) << words.toStdString();
}

}  // namespace fb::test::backup_words_tests
