#include "app/store/record_check_off.h"

#include <gtest/gtest.h>

#include "app/store/record_answers.h"
#include "tests/support/record_folder.h"

namespace fb::test::record_check_off_tests {

namespace record_check_off_test {

const QString kStudent = QStringLiteral("s-001");

Problem refusalOf(const Result<RunningCheckOff>& begun)
{
    EXPECT_FALSE(begun);
    return begun ? Problem{} : begun.error().problem;
}

// A student whose first attempt failed, on that day.
SheetOnFile failedOnce(RecordFolder& folder, const Sheet& sheet = twoMarks())
{
    const SheetOnFile saved = folder.fill(3, sheet);
    EXPECT_TRUE(signedCheckOff(folder.store(), kStudent, saved, false, momentAt(1)));
    return saved;
}

}  // namespace record_check_off_test

using namespace record_check_off_test;

TEST(RecordCheckOffTest, BeginsWithAllThatItsGradesAreReplayedFrom)
{
    RecordFolder folder;
    const SheetOnFile sheet = folder.fill();
    CheckOffOrder order = orderOf(kStudent, sheet, kLargestSeed);
    order.extraPercent = 25;
    const auto begun = beginCheckOff(folder.store(), order, momentAt(1));
    ASSERT_TRUE(begun);
    EXPECT_EQ(begun->attempt, 1);
    EXPECT_FALSE(begun->needsSecondAssessor);
    EXPECT_EQ(begun->student, inventedStudent(1));
    const auto running = readRunning(folder.store());
    ASSERT_TRUE(running && *running);
    const CheckOffOrder& kept = (*running)->order;
    EXPECT_EQ(kept.student, order.student);
    EXPECT_EQ(kept.sheet, order.sheet);
    EXPECT_EQ(kept.seed, kLargestSeed);
    EXPECT_EQ(kept.extraPercent, 25);
    EXPECT_EQ(kept.policyText, order.policyText);
    EXPECT_EQ(kept.plateHashes, order.plateHashes);
    EXPECT_EQ(kept.programVersion, order.programVersion);
    EXPECT_EQ(kept.pixelsPerMm, order.pixelsPerMm);
    EXPECT_EQ((*running)->id, begun->id);
    EXPECT_EQ((*running)->sheet.sheet, sheet.sheet);
    EXPECT_EQ((*running)->begunAt, momentAt(1).at);
    EXPECT_TRUE((*running)->events.empty());
    EXPECT_TRUE(folder.one(QStringLiteral("SELECT detail FROM audit WHERE event = 'BEGIN'"))
                    .contains(QStringLiteral("student=s-001 sheet=%1 attempt=1").arg(sheet.key)));
}

TEST(RecordCheckOffTest, WhoMayNotBeginIsToldWhy)
{
    RecordFolder folder;
    const SheetOnFile sheet = failedOnce(folder);
    Store& store = folder.store();
    const auto begin = [&](int day, const QString& student = kStudent) {
        return beginCheckOff(store, orderOf(student, sheet), momentAt(day));
    };
    EXPECT_EQ(refusalOf(begin(5)), Problem::RemediationNotSigned);
    ASSERT_TRUE(signRemediation(store, 1, QStringLiteral("practice"), kFirst, momentAt(1, 60)));
    const auto early = begin(1);
    EXPECT_EQ(refusalOf(early), Problem::NotDueYet);
    EXPECT_EQ(early.error().what, "2026-11-03");
    EXPECT_EQ(refusalOf(begin(2, QStringLiteral("s-9"))), Problem::StudentUnknown);
    EXPECT_EQ(refusalOf(beginCheckOff(store, orderOf(kStudent, {QStringLiteral("none"), {}}), momentAt(2))),
              Problem::SheetNotReadable);
    const auto second = begin(2);
    ASSERT_TRUE(second);
    EXPECT_EQ(second->attempt, 2);
    const auto meanwhile = begin(2, QStringLiteral("s-002"));
    EXPECT_EQ(refusalOf(meanwhile), Problem::CheckOffRunning);
    EXPECT_EQ(meanwhile.error().what, "Given Family001");
    EXPECT_EQ(folder.one(QStringLiteral("SELECT count(*) FROM check_off")), u"2") << "refused is not begun";
}

TEST(RecordCheckOffTest, TheLastAttemptNeedsASecondAssessorAndAfterItNoneIsLeft)
{
    RecordFolder folder;
    Sheet strict = twoMarks();
    strict.retest = {2, 0, false, true, false};
    const SheetOnFile sheet = failedOnce(folder, strict);
    const auto last = beginCheckOff(folder.store(), orderOf(kStudent, sheet), momentAt(1));
    ASSERT_TRUE(last);
    EXPECT_TRUE(last->needsSecondAssessor);
    Course course = wholeCourse(strict, Verdict::OffTarget);
    ASSERT_TRUE(keepAll(folder.store(), last->id, course.kept, momentAt(1)));
    ASSERT_TRUE(signCheckOff(folder.store(), last->id, *course.off.sign(course.now), course.off.result(),
                             kFirst, kSecond, momentAt(1)));
    EXPECT_EQ(refusalOf(beginCheckOff(folder.store(), orderOf(kStudent, sheet), momentAt(9))),
              Problem::NoAttemptLeft);
}

TEST(RecordCheckOffTest, WhoHasPassedDoesNotBeginAgain)
{
    RecordFolder folder;
    const SheetOnFile sheet = folder.fill();
    ASSERT_TRUE(signedCheckOff(folder.store(), kStudent, sheet, true, momentAt(1)));
    EXPECT_EQ(refusalOf(beginCheckOff(folder.store(), orderOf(kStudent, sheet), momentAt(5))),
              Problem::NoAttemptLeft);
}

TEST(RecordCheckOffTest, EveryEventIsReadBackAndResumesAtTheSameItem)
{
    RecordFolder folder;
    const SheetOnFile sheet = folder.fill();
    const auto begun = beginCheckOff(folder.store(), orderOf(kStudent, sheet), momentAt(1));
    Course course(sheet.sheet);
    course.begin();
    course.wait(Ms{4321});
    course.answer(Verdict::Acceptable, 0.5);
    course.keep(course.off.pause("fire drill", course.now));
    course.keep(course.off.resume(course.now));
    ASSERT_TRUE(keepAll(folder.store(), begun->id, course.kept, momentAt(1)));
    ASSERT_TRUE(keepCountedTime(folder.store(), begun->id, Ms{5000}, Ms{0}));
    folder.close();
    const auto running = readRunning(folder.store());
    ASSERT_TRUE(running && *running);
    EXPECT_EQ((*running)->onScreen, Ms{5000});
    CheckOff again({(*running)->sheet.sheet, (*running)->order.seed, (*running)->order.extraPercent});
    for (const CheckOffEvent& event : (*running)->events)
        ASSERT_TRUE(again.apply(event, std::nullopt));
    EXPECT_EQ(stateOf(again), stateOf(course.off));
    EXPECT_EQ(again.item(), 1);
    EXPECT_EQ(again.onScreen(), Ms{4321});
}

TEST(RecordCheckOffTest, AnEventAskedForAgainIsNotDoubled)
{
    RecordFolder folder;
    const SheetOnFile sheet = folder.fill();
    const auto begun = beginCheckOff(folder.store(), orderOf(kStudent, sheet), momentAt(1));
    Course course(sheet.sheet);
    course.begin();
    course.answer();
    for (int times = 0; times < 3; ++times) {
        for (const CheckOffEvent& event : course.kept) {
            const bool isLast = &event == &course.kept.back();
            const auto kept = times == 0 || isLast ? keepEvent(folder.store(), begun->id, event, momentAt(1))
                                                   : Result<bool>(true);
            ASSERT_TRUE(kept) << times;
        }
    }
    EXPECT_EQ(folder.one(QStringLiteral("SELECT group_concat(seq || kind) FROM check_off_event")),
              u"1confirmed,2started,3answered");
    EXPECT_EQ(folder.one(QStringLiteral("SELECT count(*) FROM answer")), u"1");
    EXPECT_EQ(folder.one(QStringLiteral("SELECT count(*) FROM audit WHERE event = 'ANSWER'")), u"1");
}

TEST(RecordCheckOffTest, AnItemIsAnsweredOnceAndInItsTurn)
{
    RecordFolder folder;
    const SheetOnFile sheet = folder.fill();
    const auto begun = beginCheckOff(folder.store(), orderOf(kStudent, sheet), momentAt(1));
    Course course(sheet.sheet);
    course.begin();
    course.answer();
    ASSERT_TRUE(keepAll(folder.store(), begun->id, course.kept, momentAt(1)));
    CheckOffEvent other = course.kept.back();
    other.answer->points = 0.0;
    CheckOffEvent later = course.kept.back();
    later.answer->item = 2;
    CheckOffEvent empty = course.kept.back();
    empty.answer.reset();
    CheckOffEvent signature;
    signature.kind = CheckOffEventKind::Signed;
    for (const CheckOffEvent& event : {other, later, empty, signature})
        EXPECT_EQ(keepEvent(folder.store(), begun->id, event, momentAt(1)).error().problem,
                  Problem::CheckOffOutOfOrder);
    EXPECT_EQ(keepEvent(folder.store(), 77, course.kept.front(), momentAt(1)).error().problem,
              Problem::CheckOffOutOfOrder)
        << "never begun";
    EXPECT_EQ(folder.one(QStringLiteral("SELECT count(*) FROM check_off_event")), u"3");
}

TEST(RecordCheckOffTest, AnObservationIsKeptAsTheLastWordWas)
{
    RecordFolder folder;
    const SheetOnFile sheet = folder.fill();
    const auto begun = beginCheckOff(folder.store(), orderOf(kStudent, sheet), momentAt(1));
    Course course(sheet.sheet);
    course.goToManikin();
    course.observe(ProcedureStep::Insert, Seen::Done);
    course.observe(ProcedureStep::Insert, Seen::Prompted, "twice; asked");
    course.observe(ProcedureStep::HandHygiene, Seen::Done);
    course.keep(course.off.withdraw(ProcedureStep::HandHygiene, course.now));
    ASSERT_TRUE(keepAll(folder.store(), begun->id, course.kept, momentAt(1)));
    EXPECT_EQ(folder.one(QStringLiteral("SELECT group_concat(step || ' ' || seen || ' ' || remark) FROM "
                                        "observation")),
              u"insert prompted twice; asked");
    EXPECT_EQ(readEvents(folder.store(), begun->id)->size(), course.kept.size());
}

TEST(RecordCheckOffTest, CountedTimeNeverGoesBack)
{
    RecordFolder folder;
    const SheetOnFile sheet = folder.fill();
    const auto begun = beginCheckOff(folder.store(), orderOf(kStudent, sheet), momentAt(1));
    for (const auto& [screen, manikin] : {std::pair{9000, 100}, {8000, 300}, {8500, 200}})
        ASSERT_TRUE(keepCountedTime(folder.store(), begun->id, Ms{screen}, Ms{manikin}));
    const auto running = readRunning(folder.store());
    EXPECT_EQ((*running)->onScreen, Ms{9000});
    EXPECT_EQ((*running)->onManikin, Ms{300});
}

TEST(RecordCheckOffTest, WhatEndsItIsInTheLog)
{
    RecordFolder folder;
    const SheetOnFile sheet = folder.fill();
    const auto begun = beginCheckOff(folder.store(), orderOf(kStudent, sheet), momentAt(1));
    Course course(sheet.sheet);
    course.begin();
    course.answer();
    course.keep(course.off.stopForSafety("uncapped | needle", course.now));
    ASSERT_TRUE(keepAll(folder.store(), begun->id, course.kept, momentAt(1)));
    EXPECT_EQ(folder.one(QStringLiteral("SELECT detail FROM audit WHERE event = 'SAFETY_STOP'")),
              u"uncapped | needle");
    const QString text =
        folder.one(QStringLiteral("SELECT event_text FROM check_off_event WHERE kind = 'answered'"));
    EXPECT_EQ(text, textOfUtf8(textOf(course.kept[2])));
    EXPECT_EQ(folder.one(QStringLiteral("SELECT detail FROM audit WHERE event = 'ANSWER'")),
              answerDetail(0, answerColumns(*course.kept[2].answer), text.toUtf8()));
}

TEST(RecordCheckOffTest, AnEventThatCannotBeReadIsSaid)
{
    RecordFolder folder;
    const SheetOnFile sheet = folder.fill();
    ASSERT_TRUE(beginCheckOff(folder.store(), orderOf(kStudent, sheet), momentAt(1)));
    ASSERT_TRUE(folder.store().commit(
        {{QStringLiteral("INSERT INTO check_off_event VALUES (1, 1, 'confirmed', 'then', '{')")}}));
    EXPECT_EQ(readEvents(folder.store(), 1).error().problem, Problem::EventNotReadable);
    EXPECT_FALSE(readRunning(folder.store()));
}

}  // namespace fb::test::record_check_off_tests
