#include "app/store/record_verify.h"

#include <gtest/gtest.h>

#include "app/store/audit_chain.h"
#include "tests/support/record_folder.h"

namespace fb::test::record_verify_tests {

namespace record_verify_test {

// Two signed, one of them failed and practised after, and one that runs with an answer kept.
struct Filled {
    Filled()
    {
        Store& store = folder.store();
        EXPECT_TRUE(signedCheckOff(store, QStringLiteral("s-001"), sheet, true, momentAt(1)));
        EXPECT_TRUE(signedCheckOff(store, QStringLiteral("s-002"), sheet, false, momentAt(2)));
        EXPECT_TRUE(signRemediation(store, 2, QStringLiteral("an hour"), kFirst, momentAt(2)));
        EXPECT_TRUE(beginCheckOff(store, orderOf(QStringLiteral("s-003"), sheet), momentAt(3)));
        Course course(sheet.sheet);
        course.begin();
        course.answer();
        EXPECT_TRUE(keepAll(store, 3, course.kept, momentAt(3)));
    }
    Result<Verified> verified()
    {
        LongWork work;
        return verifyRecords(folder.store(), work);
    }
    // As somebody with the file in hand may do who knows of the triggers.
    void tamper(const QString& sql)
    {
        const QString without = QStringLiteral(
            "DROP TRIGGER audit_stays; DROP TRIGGER audit_is_kept; DROP TRIGGER check_off_event_stays; "
            "DROP TRIGGER check_off_event_is_kept; DROP TRIGGER answer_stays; DROP TRIGGER answer_is_kept; "
            "DROP TRIGGER check_off_is_kept; DROP TRIGGER check_off_signed_stays; ");
        ASSERT_EQ(folder.sqlite3(without + sql).toStdString(), "");
    }
    qint64 entry(const char* event, int checkOff)
    {
        return folder
            .one(QStringLiteral("SELECT min(seq) FROM audit WHERE event = '%1' AND object = 'check-off-%2'")
                     .arg(QLatin1String(event))
                     .arg(checkOff))
            .toLongLong();
    }

    RecordFolder folder;
    SheetOnFile sheet = folder.fill();
};

}  // namespace record_verify_test

using namespace record_verify_test;

TEST(RecordVerifyTest, WhatNobodyTouchedIsWhole)
{
    Filled filled;
    LongWork work;
    const auto found = verifyRecords(filled.folder.store(), work);
    ASSERT_TRUE(found);
    EXPECT_TRUE(found->whole);
    const auto end = chainEnd(filled.folder.store());
    EXPECT_EQ(found->entries, end->length);
    EXPECT_EQ(found->head, QString::fromLatin1(end->head));
    EXPECT_EQ(found->checkOffs, 2);
    EXPECT_EQ(found->answers, 5);
    EXPECT_EQ(work.percent, 100);
}

TEST(RecordVerifyTest, AFreshStoreIsWhole)
{
    RecordFolder folder;
    LongWork work;
    const auto found = verifyRecords(folder.store(), work);
    ASSERT_TRUE(found);
    EXPECT_TRUE(found->whole);
    EXPECT_EQ(found->entries, 1);
}

TEST(RecordVerifyTest, EveryChangeBehindTheProgramsBackNamesTheEntryItBetrays)
{
    struct Row {
        const char* sql;
        const char* event;  // of the entry that is named
        int checkOff;
    };
    const Row kRows[]{
        {"UPDATE audit SET detail = replace(detail, 'fail_score', 'pass') WHERE event = 'SIGN'", "SIGN", 2},
        {"UPDATE audit SET hash = substr(hash, 2) || 'f' WHERE object = 'check-off-1' AND event = 'BEGIN'",
         "BEGIN", 1},
        {"UPDATE check_off SET outcome = 'pass' WHERE check_off_id = 2", "SIGN", 2},
        {"UPDATE check_off SET percent = 79.9 WHERE check_off_id = 1", "SIGN", 1},
        {"UPDATE check_off SET rating = 5 WHERE check_off_id = 1", "SIGN", 1},
        {"UPDATE check_off SET remark = 'Splendid.' WHERE check_off_id = 1", "SIGN", 1},
        {"UPDATE check_off SET first_assessor_id = 2 WHERE check_off_id = 1", "SIGN", 1},
        {"UPDATE check_off SET attempt = 2 WHERE check_off_id = 1", "SIGN", 1},
        {"UPDATE check_off SET student_id = 's-003' WHERE check_off_id = 1", "SIGN", 1},
        {"UPDATE check_off SET chain_head = '00' WHERE check_off_id = 1", "SIGN", 1},
        {"UPDATE check_off_event SET event_text = replace(event_text, 'Steady', 'Shaky') WHERE check_off_id "
         "= 1",
         "SIGN", 1},
        {"DELETE FROM check_off_event WHERE check_off_id = 1 AND kind = 'observed'", "SIGN", 1},
        {"UPDATE check_off_event SET event_text = replace(event_text, '1.5', '1.25') WHERE check_off_id = 3",
         "ANSWER", 3},
        {"UPDATE answer SET points = 0.5 WHERE check_off_id = 1 AND item = 0", "ANSWER", 1},
        {"UPDATE answer SET verdict = 'unsafe' WHERE check_off_id = 3", "ANSWER", 3},
        {"UPDATE answer SET mark_x_cm = NULL, mark_y_cm = NULL WHERE check_off_id = 3", "ANSWER", 3},
        {"DELETE FROM answer WHERE check_off_id = 3", "ANSWER", 3},
        {"DELETE FROM answer WHERE check_off_id = 3; DELETE FROM check_off_event WHERE check_off_id = 3",
         "BEGIN", 3},
        {"DELETE FROM answer WHERE check_off_id = 3; DELETE FROM check_off_event WHERE check_off_id = 3; "
         "DELETE FROM check_off WHERE check_off_id = 3",
         "BEGIN", 3},
    };
    for (const Row& row : kRows) {
        Filled filled;
        const qint64 named = filled.entry(row.event, row.checkOff);
        ASSERT_GT(named, 0) << row.sql;
        filled.tamper(QString::fromLatin1(row.sql));
        const auto found = filled.verified();
        ASSERT_FALSE(found) << row.sql;
        EXPECT_EQ(found.error().problem, Problem::ChainBroken) << row.sql;
        EXPECT_EQ(found.error().where, filled.folder.file().toStdString());
        EXPECT_EQ(found.error().what, std::to_string(named)) << row.sql;
    }
}

TEST(RecordVerifyTest, AnEntryThatIsGoneBreaksTheChainWhereItStood)
{
    Filled filled;
    filled.tamper(QStringLiteral("DELETE FROM audit WHERE seq = 4"));
    EXPECT_EQ(filled.verified().error().what, "4");
}

TEST(RecordVerifyTest, ACheckOffTheLogNeverToldOfIsNoRecord)
{
    Filled filled;
    filled.tamper(QStringLiteral(
        "INSERT INTO check_off SELECT 9, 's-001', sheet_key, attempt, seed, extra_percent, policy_hash, "
        "plate_hashes, program_version, pixels_per_mm, needs_second, begun_at, on_screen_ms, on_manikin_ms, "
        "closed_at, closed_on, outcome, percent, rating, remark, first_assessor_id, second_assessor_id, "
        "chain_length, chain_head FROM check_off WHERE check_off_id = 1"));
    EXPECT_EQ(filled.verified().error().problem, Problem::ChainBroken);
}

TEST(RecordVerifyTest, WhatReferencesNothingIsNotWhole)
{
    Filled filled;
    filled.tamper(QStringLiteral("DROP TRIGGER policy_text_is_kept; DELETE FROM policy_text"));
    const auto found = filled.verified();
    ASSERT_TRUE(found);
    EXPECT_FALSE(found->whole);
}

TEST(RecordVerifyTest, CancelledItSaysNothingIsWhole)
{
    Filled filled;
    LongWork work;
    work.cancelled = true;
    const auto found = verifyRecords(filled.folder.store(), work);
    ASSERT_TRUE(found);
    EXPECT_FALSE(found->whole);
    EXPECT_LT(found->entries, chainEnd(filled.folder.store())->length);
}

}  // namespace fb::test::record_verify_tests
