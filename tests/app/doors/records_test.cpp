// What is kept in memory for the tests and what is kept on disk obey the same rules.
#include "app/doors/records.h"

#include <gtest/gtest.h>

#include <QTest>

#include "app/store/record_store.h"
#include "tests/support/memory_records.h"
#include "tests/support/store_folder.h"

namespace fb::test::records_test {

enum class Where { Memory, Disk };

Sheet smallSheet()
{
    Sheet sheet;
    sheet.title = "Small sheet (invented)";
    sheet.invented = true;
    sheet.items = {{Site::Deltoid, Side::Left, View::ShoulderSide, HelpLevel::Nothing, false}};
    sheet.retest.attempts = 2;
    return sheet;
}

Student student(const char* id, const char* family)
{
    Student one;
    one.id = QLatin1String(id);
    one.family = QLatin1String(family);
    one.given = QStringLiteral("Ada");
    return one;
}

class RecordsDoor : public ::testing::TestWithParam<Where> {
protected:
    RecordKeeper& keeper() { return GetParam() == Where::Memory ? static_cast<RecordKeeper&>(memory) : disk; }
    TestClock& clock() { return memory.clock; }

    // The answer to one question.
    template <class T, class Ask>
    Result<T> answer(Ask ask)
    {
        std::optional<Result<T>> given;
        ask([&](const Result<T>& value) { given = value; });
        EXPECT_TRUE(QTest::qWaitFor([&] { return given.has_value(); }, 10000));
        return given.value_or(fault(Problem::StoreBroken));
    }
    Result<Desk> desk()
    {
        return answer<Desk>([&](auto then) { keeper().openDesk({}, &asker, then); });
    }
    void setUpClass()
    {
        const std::vector<Student> students{student("s-2", "Zenk"), student("s-1", "Abara")};
        ASSERT_TRUE(answer<int>([&](auto then) { keeper().saveStudents(students, &asker, then); }));
        const auto sheet =
            answer<SheetOnFile>([&](auto then) { keeper().saveSheet(smallSheet(), &asker, then); });
        ASSERT_TRUE(sheet);
        order.sheet = sheet->key;
        order.student = "s-1";
        order.policyText = "{}";
        const auto proof = answer<Proof>(
            [&](auto then) { keeper().enrol("Ines Okafor", "493857", std::nullopt, &asker, then); });
        ASSERT_TRUE(proof);
        first = *proof;
    }
    Result<RunningCheckOff> begin()
    {
        return answer<RunningCheckOff>([&](auto then) { keeper().begin(order, &asker, then); });
    }
    // Signed with that outcome.
    Result<SignedOff> sign(qint64 id, Outcome outcome, const std::optional<Proof>& second = std::nullopt)
    {
        CheckOffResult result;
        result.decision.outcome = outcome;
        const CheckOffEvent event{.kind = CheckOffEventKind::Signed};
        return answer<SignedOff>(
            [&](auto then) { keeper().sign(id, event, result, first, second, &asker, then); });
    }
    Standing standingOf(const QString& id)
    {
        const auto now = desk();
        for (const StudentStanding& each : now->students) {
            if (each.student.id == id)
                return each.where.standing;
        }
        ADD_FAILURE() << "no such student";
        return {};
    }
    static Problem problemOf(const auto& answer)
    {
        return answer ? Problem::AgeNotANumber : answer.error().problem;
    }

    QObject asker;
    StoreFolder folder;
    MemoryRecords memory;
    RecordStore disk{folder.folder() + QStringLiteral("/records.db"), memory.clock};
    CheckOffOrder order;
    Proof first;
};

TEST_P(RecordsDoor, TheDeskListsStudentsByFamilyNameAndTheSheetSavedLast)
{
    setUpClass();
    const auto now = desk();
    ASSERT_TRUE(now);
    ASSERT_EQ(now->students.size(), 2U);
    EXPECT_EQ(now->students.front().student.family, "Abara");
    EXPECT_EQ(now->students.front().where.standing, Standing::NotTried);
    EXPECT_EQ(now->currentSheet, order.sheet);
    ASSERT_EQ(now->assessors.size(), 1U);
    EXPECT_FALSE(now->running);
}

TEST_P(RecordsDoor, OneIsOpenAtATimeWithItsEventsAndItsTime)
{
    setUpClass();
    const auto open = begin();
    ASSERT_TRUE(open);
    EXPECT_EQ(open->attempt, 1);
    EXPECT_EQ(problemOf(begin()), Problem::CheckOffRunning);
    const CheckOffEvent confirmed{.kind = CheckOffEventKind::Confirmed};
    ASSERT_TRUE(answer<bool>([&](auto then) { keeper().keep(open->id, confirmed, &asker, then); }));
    keeper().keepTime(open->id, Ms{4000}, Ms{0});
    const auto now = desk();
    ASSERT_TRUE(now->running);
    EXPECT_EQ(now->running->id, open->id);
    ASSERT_EQ(now->running->events.size(), 1U);
    EXPECT_EQ(now->running->events.front().kind, CheckOffEventKind::Confirmed);
    EXPECT_EQ(now->running->onScreen, Ms{4000});
    EXPECT_EQ(standingOf("s-1"), Standing::Running);
}

TEST_P(RecordsDoor, AFailWantsItsPracticeSignedAndItsDayWaitedFor)
{
    setUpClass();
    const auto open = begin();
    ASSERT_TRUE(open);
    ASSERT_TRUE(sign(open->id, Outcome::FailScore));
    EXPECT_EQ(standingOf("s-1"), Standing::RemediationDue);
    EXPECT_EQ(problemOf(begin()), Problem::RemediationNotSigned);
    ASSERT_TRUE(answer<bool>(
        [&](auto then) { keeper().signRemediation(open->id, "An hour in the lab", first, &asker, then); }));
    EXPECT_EQ(problemOf(begin()), Problem::NotDueYet);
    clock().day = clock().day.addDays(1);
    EXPECT_EQ(standingOf("s-1"), Standing::MayRetest);
    const auto again = begin();
    ASSERT_TRUE(again);
    EXPECT_EQ(again->attempt, 2);
    EXPECT_TRUE(again->needsSecondAssessor) << "the last one";
    EXPECT_EQ(problemOf(sign(again->id, Outcome::Pass)), Problem::SecondAssessorMissing);
    EXPECT_EQ(problemOf(sign(again->id, Outcome::Pass, first)), Problem::SameAssessor);
    const auto second =
        answer<Proof>([&](auto then) { keeper().enrol("Tomas Reyes", "860415", first, &asker, then); });
    ASSERT_TRUE(second);
    ASSERT_TRUE(sign(again->id, Outcome::Pass, *second));
    EXPECT_EQ(standingOf("s-1"), Standing::Passed);
    EXPECT_EQ(problemOf(begin()), Problem::NoAttemptLeft);
}

TEST_P(RecordsDoor, AVoidUsesUpNothing)
{
    setUpClass();
    const auto open = begin();
    ASSERT_TRUE(open);
    ASSERT_TRUE(sign(open->id, Outcome::VoidTechnical));
    EXPECT_EQ(standingOf("s-1"), Standing::NotTried);
    EXPECT_EQ(begin()->attempt, 1);
}

TEST_P(RecordsDoor, APinIsProvedAndWrongOnesAreHeld)
{
    setUpClass();
    const auto prove = [&](const char* pin) {
        return answer<Proof>(
            [&](auto then) { keeper().prove(first.assessor.id, QLatin1String(pin), &asker, then); });
    };
    EXPECT_EQ(prove("493857")->assessor, first.assessor);
    EXPECT_EQ(problemOf(prove("000001")), Problem::PinWrong);
    EXPECT_EQ(prove("493857")->assessor, first.assessor);
    Problem last{};
    for (int i = 0; i < 6; ++i)
        last = problemOf(prove("000001"));
    EXPECT_EQ(last, Problem::PinHeld);
}

TEST_P(RecordsDoor, WhatWasSignedIsFoundAndRead)
{
    setUpClass();
    const auto open = begin();
    ASSERT_TRUE(open);
    ASSERT_TRUE(sign(open->id, Outcome::FailTime));
    CheckOffFilter filter;
    filter.words = "abara";
    const auto find = [&] {
        return answer<std::vector<CheckOffLine>>([&](auto then) { keeper().find(filter, &asker, then); });
    };
    ASSERT_EQ(find()->size(), 1U);
    EXPECT_EQ(find()->front().outcome, Outcome::FailTime);
    EXPECT_EQ(find()->front().assessor, "Ines Okafor");
    filter.outcome = Outcome::Pass;
    EXPECT_TRUE(find()->empty());
    const auto read = answer<CheckOffOnFile>([&](auto then) { keeper().read(open->id, &asker, then); });
    ASSERT_TRUE(read);
    EXPECT_EQ(read->sheet.sheet, smallSheet());
    EXPECT_EQ(read->order.policyText, "{}");
    const auto board = answer<Board>([&](auto then) { keeper().board(order.sheet, &asker, then); });
    ASSERT_TRUE(board);
    EXPECT_EQ(board->count.due, 1);
    EXPECT_EQ(board->count.notTried, 1);
}

INSTANTIATE_TEST_SUITE_P(Kept, RecordsDoor, ::testing::Values(Where::Memory, Where::Disk),
                         [](const auto& each) {
                             return each.param == Where::Memory ? "InMemory" : "OnDisk";
                         });

}  // namespace fb::test::records_test
