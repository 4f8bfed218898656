#include "app/checkoff/desk_note.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "tests/support/memory_backups.h"

namespace fb::test::desk_note_tests {

TEST(DeskNoteTest, SaysWhereTheOtherFileLiesUntilItIsPutAway)
{
    DeskNote note;
    CheckOffState state;
    note.showState(state);
    EXPECT_TRUE(note.isHidden());
    state.putBack = PutBack{backupSample(), QStringLiteral("/lab/records-before-x.db")};
    note.showState(state);
    EXPECT_FALSE(note.isHidden());
    const QString words = note.findChild<QLabel*>(QStringLiteral("putBackNote"))->text();
    EXPECT_TRUE(words.contains(QStringLiteral("/lab/records-before-x.db"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("November 28, 2026"))) << words.toStdString();
    QSignalSpy dismissed(&note, &DeskNote::dismissed);
    note.findChild<QPushButton*>(QStringLiteral("dismissPutBack"))->click();
    EXPECT_EQ(dismissed.count(), 1);
}

}  // namespace fb::test::desk_note_tests
