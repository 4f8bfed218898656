#include "app/store/put_back.h"

#include <gtest/gtest.h>

#include "app/store/put_back_copy.h"
#include "app/store/record_migrations.h"
#include "app/store/record_verify.h"
#include "app/store/store_file.h"
#include "tests/support/damaged_records.h"

namespace fb::test::put_back_tests {

namespace put_back_test {

// Records with one student, before which a whole class is to be put.
struct Places {
    Places()
    {
        EXPECT_TRUE(lab.damage());
        EXPECT_TRUE(saveStudents(lab.folder.store(), {inventedStudent(7)}, momentAt(8)));
        lab.folder.close();
        records = std::move(openRecords(file(), momentAt(9).at)->store);
        EXPECT_TRUE(makePutBackPart(lab.backups().last(), file(), {.event = QStringLiteral("PUT_BACK")},
                                    momentAt(9).at, work));
    }
    [[nodiscard]] QString file() const { return lab.folder.file(); }
    Replaced replace(const OpenAgain& again)
    {
        return replaceRecords(std::move(records), putBackPart(file()), aside, work, again);
    }
    Replaced replace()
    {
        return replace([&](const auto& alone) { return openRecords(file(), momentAt(9).at, alone); });
    }
    // Nothing changed: the one student, and nothing aside.
    void expectAsBefore(const Replaced& how)
    {
        ASSERT_FALSE(how.aside);
        EXPECT_EQ(how.aside.error().problem, Problem::NotPutBack);
        ASSERT_NE(how.store, nullptr);
        EXPECT_EQ(readStudents(*how.store)->size(), 1U);
        EXPECT_FALSE(QFileInfo::exists(aside));
        EXPECT_TRUE(saveStudents(*how.store, {inventedStudent(8)}, momentAt(9))) << "and it goes on";
    }

    DamagedRecords lab;
    LongWork work;
    QString aside = nameBefore(lab.folder.file(), momentAt(9).at);
    std::unique_ptr<Store> records;
};

}  // namespace put_back_test

using put_back_test::Places;

TEST(PutBackTest, TheOneTakesThePlaceAndTheOtherIsKeptWhole)
{
    Places places;
    const Replaced how = places.replace();
    ASSERT_TRUE(how.aside);
    EXPECT_EQ(*how.aside, places.aside);
    ASSERT_NE(how.store, nullptr);
    EXPECT_EQ(readStudents(*how.store)->size(), 40U);
    EXPECT_EQ(readAssessors(*how.store)->size(), 2U);
    const auto before = Store::openToRead(places.aside, recordStoreKind());
    ASSERT_TRUE(before);
    EXPECT_EQ(readStudents(**before)->size(), 1U);
    LongWork look;
    EXPECT_TRUE(verifyRecords(**before, look)->whole);
    EXPECT_EQ(modeOf(places.aside), 0600U);
    EXPECT_TRUE(places.aside.endsWith(QStringLiteral("/records-before-2026-11-10-100000.db")))
        << "an ending to choose it by";
}

TEST(PutBackTest, NoOtherProgramGetsInBetween)
{
    Places places;
    bool wasAsked = false;
    const Replaced how = places.replace([&](const std::shared_ptr<FileLock>& alone) {
        wasAsked = true;
        EXPECT_EQ(openRecords(places.file(), momentAt(9).at).error().problem, Problem::StoreBusy);
        return openRecords(places.file(), momentAt(9).at, alone);
    });
    EXPECT_TRUE(how.aside);
    EXPECT_TRUE(wasAsked);
}

TEST(PutBackTest, WhatCannotBeOpenedMakesRoomForTheOneFromBefore)
{
    Places places;
    int times = 0;
    places.expectAsBefore(places.replace([&](const auto& alone) -> Result<Store::Opened> {
        if (++times == 1)
            return fault(Problem::StoreFull);
        return openRecords(places.file(), momentAt(9).at, alone);
    }));
}

TEST(PutBackTest, WhatIsFoundDamagedWhenItIsOpenedMakesRoomAsWell)
{
    Places places;
    writeBytes(putBackPart(places.file()), "no database at all");
    places.expectAsBefore(places.replace());
}

TEST(PutBackTest, CancelledInTimeOrWithoutACopyNothingChanges)
{
    Places cancelled;
    cancelled.work.cancelled = true;
    cancelled.expectAsBefore(cancelled.replace());
    Places none;
    removePutBackPart(none.file());
    none.expectAsBefore(none.replace());
    Places nowhere;
    nowhere.aside = QStringLiteral("/proc/none/aside.db");
    nowhere.expectAsBefore(nowhere.replace());
}

TEST(PutBackTest, AnotherProgramThatReadsTheFileHindersIt)
{
    Places places;
    QProcess other;
    other.start(QStringLiteral("sqlite3"), {places.file()});
    other.write("BEGIN; SELECT count(*) FROM student;\n");
    ASSERT_TRUE(other.waitForReadyRead());
    places.expectAsBefore(places.replace());
    other.closeWriteChannel();
    EXPECT_TRUE(other.waitForFinished());
}

TEST(PutBackTest, WhatAnEndInTheMiddleLeftIsTidiedAndNothingElse)
{
    Places places;
    // Ended after the second name was made, before the change of places.
    ASSERT_EQ(
        ::link(QFile::encodeName(places.file()).constData(), QFile::encodeName(places.aside).constData()), 0);
    const QString older = places.lab.folder.folder() + QStringLiteral("/records-before-2025-01-01-000000.db");
    ASSERT_TRUE(QFile::copy(places.lab.backups().last(), older));
    writeBytes(places.aside + QStringLiteral(".part"), "half");
    places.records.reset();
    places.lab.folder.open();
    EXPECT_FALSE(QFileInfo::exists(places.aside)) << "else it would change with the records";
    EXPECT_FALSE(QFileInfo::exists(places.aside + QStringLiteral(".part")));
    EXPECT_FALSE(QFileInfo::exists(putBackPart(places.file())));
    EXPECT_TRUE(QFileInfo::exists(older));
    EXPECT_EQ(readStudents(places.lab.folder.store())->size(), 1U);
}

TEST(PutBackTest, OnlyWhoIsProvedMayOnceSomebodyIsEnrolledAndNeverWhileOneRuns)
{
    RecordFolder folder;
    EXPECT_TRUE(mayPutBack(folder.store(), std::nullopt)) << "nobody is enrolled";
    const SheetOnFile sheet = folder.fill();
    EXPECT_EQ(mayPutBack(folder.store(), std::nullopt).error().problem, Problem::AssessorUnknown);
    EXPECT_EQ(mayPutBack(folder.store(), Proof{{77, QStringLiteral("Nobody")}}).error().problem,
              Problem::AssessorUnknown);
    EXPECT_TRUE(mayPutBack(folder.store(), kFirst));
    ASSERT_TRUE(beginCheckOff(folder.store(), orderOf(QStringLiteral("s-001"), sheet), momentAt(1)));
    EXPECT_EQ(mayPutBack(folder.store(), kFirst).error(),
              (Fault{Problem::CheckOffRunning, {}, "Given Family001"}));
}

}  // namespace fb::test::put_back_tests
