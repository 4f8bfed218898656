#include "app/store/record_signing.h"

#include <gtest/gtest.h>

#include "app/store/audit_chain.h"
#include "tests/support/record_folder.h"

namespace fb::test::record_signing_tests {

namespace record_signing_test {

const QString kStudent = QStringLiteral("s-001");

// Gone through up to the rating, on its only attempt where two have to sign.
struct Unsigned {
    explicit Unsigned(RecordFolder& folder, bool onlyAttempt = false)
        : sheet(folder.fill(2, sheetOf(onlyAttempt)))
    {
        id = beginCheckOff(folder.store(), orderOf(kStudent, sheet), momentAt(1)).value().id;
        EXPECT_TRUE(keepAll(folder.store(), id, course.kept, momentAt(1)));
        event = course.off.sign(course.now).value();
    }
    static Sheet sheetOf(bool onlyAttempt)
    {
        Sheet sheet = twoMarks();
        sheet.retest.attempts = onlyAttempt ? 1 : 3;
        return sheet;
    }
    Result<SignedOff> signedBy(Store& store, const Proof& first, const std::optional<Proof>& second = {})
    {
        return signCheckOff(store, id, event, course.off.result(), first, second, momentAt(1, 60));
    }

    SheetOnFile sheet;
    Course course = wholeCourse(twoMarks(), Verdict::OnTarget);
    qint64 id = 0;
    CheckOffEvent event;
};

}  // namespace record_signing_test

using namespace record_signing_test;

TEST(RecordSigningTest, ClosesItWithItsResultAndTheHeadOfTheLog)
{
    RecordFolder folder;
    Unsigned open(folder);
    const auto off = open.signedBy(folder.store(), kFirst);
    ASSERT_TRUE(off);
    EXPECT_EQ(off->id, open.id);
    EXPECT_EQ(off->at, momentAt(1, 60).at);
    EXPECT_EQ(off->result.decision.outcome, Outcome::Pass);
    EXPECT_EQ(off->assessors, std::vector{kFirst.assessor});
    const auto end = chainEnd(folder.store());
    EXPECT_EQ(off->chainHead, QString::fromLatin1(end->head));
    EXPECT_EQ(off->chainLength, end->length);
    EXPECT_EQ(
        folder.one(QStringLiteral("SELECT outcome || ' ' || percent || ' ' || rating || ' ' || remark || ' ' "
                                  "|| closed_on || ' ' || first_assessor_id || chain_head FROM check_off")),
        QStringLiteral("pass 100.0 4 Steady hands. 2026-11-02 1") + off->chainHead);
    EXPECT_FALSE(*readRunning(folder.store()));
    const QString detail = folder.one(QStringLiteral("SELECT detail FROM audit ORDER BY seq DESC LIMIT 1"));
    EXPECT_TRUE(
        detail.startsWith(QLatin1String("outcome=pass percent=100 rating=4 attempt=1 first=1 second=0 "
                                        "events=")))
        << detail.toStdString();
}

TEST(RecordSigningTest, AskedForAgainItIsAnsweredAgainAndNotDoubled)
{
    RecordFolder folder;
    Unsigned open(folder);
    const auto first = open.signedBy(folder.store(), kFirst);
    const auto again = open.signedBy(folder.store(), kFirst);
    ASSERT_TRUE(first && again);
    EXPECT_EQ(again->chainHead, first->chainHead);
    EXPECT_EQ(again->chainLength, first->chainLength);
    EXPECT_EQ(again->at, first->at);
    EXPECT_EQ(folder.one(QStringLiteral("SELECT count(*) FROM audit WHERE event = 'SIGN'")), u"1");
    CheckOffEvent other = open.event;
    other.onScreen += Ms{1};
    EXPECT_EQ(signCheckOff(folder.store(), open.id, other, open.course.off.result(), kFirst, {}, momentAt(2))
                  .error()
                  .problem,
              Problem::CheckOffOutOfOrder)
        << "what is signed stays";
    EXPECT_EQ(keepEvent(folder.store(), open.id, open.course.kept.back(), momentAt(2)).error().problem,
              Problem::CheckOffOutOfOrder);
}

TEST(RecordSigningTest, TheLastAttemptIsSignedByTwoWhoAreNotTheSame)
{
    RecordFolder folder;
    Unsigned open(folder, true);
    EXPECT_EQ(open.signedBy(folder.store(), kFirst).error().problem, Problem::SecondAssessorMissing);
    EXPECT_EQ(open.signedBy(folder.store(), kFirst, kFirst).error().problem, Problem::SameAssessor);
    const Proof stranger{{9, QStringLiteral("nobody")}};
    EXPECT_EQ(open.signedBy(folder.store(), kFirst, stranger).error().problem, Problem::AssessorUnknown);
    EXPECT_EQ(folder.one(QStringLiteral("SELECT count(*) FROM audit WHERE event = 'SIGN'")), u"0");
    const auto off = open.signedBy(folder.store(), kFirst, kSecond);
    ASSERT_TRUE(off);
    EXPECT_EQ(off->assessors, (std::vector{kFirst.assessor, kSecond.assessor}));
    EXPECT_EQ(folder.one(QStringLiteral("SELECT second_assessor_id FROM check_off")), u"2");
}

TEST(RecordSigningTest, AVoidOnTheLastAttemptNeedsOneAssessorAndUsesUpNothing)
{
    RecordFolder folder;
    Unsigned open(folder, true);
    Course course(open.sheet.sheet);
    course.begin();
    course.keep(course.off.voidTechnical("screen went dark", course.now));
    const auto off = signCheckOff(folder.store(), open.id, *course.off.sign(course.now), course.off.result(),
                                  kFirst, {}, momentAt(1));
    ASSERT_TRUE(off);
    EXPECT_EQ(off->result.decision.outcome, Outcome::VoidTechnical);
    const auto again = beginCheckOff(folder.store(), orderOf(kStudent, open.sheet), momentAt(1));
    ASSERT_TRUE(again);
    EXPECT_EQ(again->attempt, 1);
}

TEST(RecordSigningTest, RemediationIsSignedOnceAfterAFail)
{
    RecordFolder folder;
    const SheetOnFile sheet = folder.fill();
    Store& store = folder.store();
    const auto signing = [&](qint64 id, const char* what) {
        return signRemediation(store, id, QString::fromLatin1(what), kSecond, momentAt(1, 60));
    };
    ASSERT_TRUE(signedCheckOff(store, kStudent, sheet, false, momentAt(1)));
    ASSERT_TRUE(signedCheckOff(store, QStringLiteral("s-002"), sheet, true, momentAt(1)));
    ASSERT_TRUE(beginCheckOff(store, orderOf(QStringLiteral("s-003"), sheet), momentAt(1)));
    EXPECT_EQ(signing(1, " \n ").error().problem, Problem::ReasonMissing);
    EXPECT_EQ(signing(2, "x").error().problem, Problem::CheckOffOutOfOrder) << "passed";
    EXPECT_EQ(signing(3, "x").error().problem, Problem::CheckOffOutOfOrder) << "not signed";
    EXPECT_EQ(signing(4, "x").error().problem, Problem::CheckOffOutOfOrder) << "never begun";
    EXPECT_TRUE(signing(1, " ten marks on the hip "));
    EXPECT_TRUE(signing(1, "ten marks on the hip")) << "asked for again";
    EXPECT_EQ(signing(1, "other").error().problem, Problem::CheckOffOutOfOrder);
    EXPECT_EQ(folder.one(QStringLiteral("SELECT count(*) || actor || detail FROM audit WHERE event = "
                                        "'REMEDIATION'")),
              u"1assessor-2ten marks on the hip");
}

TEST(RecordSigningTest, ARemarkIsTheLastThatWasWritten)
{
    Remarked so;
    CheckOffEvent event;
    event.kind = CheckOffEventKind::SafetyStop;
    event.note = "fainted";
    remark(so, event);
    EXPECT_EQ(so.remark, u"fainted");
    event.kind = CheckOffEventKind::Paused;
    event.note = "fire drill";
    remark(so, event);
    EXPECT_EQ(so.remark, u"fainted") << "why it was paused is no remark on the student";
    event.kind = CheckOffEventKind::Rated;
    event.note = "Ü";
    event.rating = 2;
    remark(so, event);
    EXPECT_EQ(so.remark, QStringLiteral("Ü"));
    EXPECT_EQ(so.rating, 2);
}

TEST(RecordSigningTest, TheLogTellsEveryValueOfTheLine)
{
    const SignedLine line{QStringLiteral("s-1"),
                          QStringLiteral("key"),
                          2,
                          QStringLiteral("pass"),
                          91.25,
                          3,
                          QStringLiteral("a|b %1"),
                          1,
                          2};
    const QString told = signedDetail(line, "abc");
    EXPECT_EQ(told,
              QStringLiteral("outcome=pass percent=91.25 rating=3 attempt=2 first=1 second=2 events=abc "
                             "sheet=key student=s-1 remark=a|b %1"));
    SignedLine odd = line;
    odd.student = QStringLiteral("%1%2");
    EXPECT_TRUE(signedDetail(odd, "abc").contains(QLatin1String("student=%1%2 remark")));
}

}  // namespace fb::test::record_signing_tests
