#include "app/records/opened_check_off.h"

#include <gtest/gtest.h>

#include "tests/support/sample_records.h"

namespace fb::test::opened_check_off_test {

namespace opened_test {

CheckOffOnFile fileOf(SampleRecords& records, qint64 id)
{
    std::optional<CheckOffOnFile> file;
    records.read(id, nullptr, [&](const Result<CheckOffOnFile>& answer) { file = answer.value(); });
    return *file;
}

}  // namespace opened_test

using opened_test::fileOf;

TEST(OpenedCheckOffTest, EventsAppliedAgainComeToWhatWasSigned)
{
    SampleRecords records;
    const qint64 id = records.signedOne(0, {0.2, 0.1}, Seen::NotDone);
    const auto opened = openedCheckOff(fileOf(records, id));
    ASSERT_TRUE(opened.has_value());
    EXPECT_EQ(opened->run.stage(), CheckOffStage::Closed);
    EXPECT_EQ(opened->result.decision.outcome, Outcome::FailCritical);
    EXPECT_EQ(opened->result.decision.outcome, records.kept.at(id).signedOff->result.decision.outcome);
    EXPECT_EQ(opened->run.answers().size(), 3U);
    EXPECT_EQ(opened->run.remark(), "Calm and careful.");
}

TEST(OpenedCheckOffTest, EventsThatDoNotFollowAreAFault)
{
    SampleRecords records;
    const qint64 id = records.signedOne(0, {});
    auto& events = records.kept.at(id).open.events;
    events.erase(events.begin());
    const auto opened = openedCheckOff(fileOf(records, id));
    ASSERT_FALSE(opened.has_value());
    EXPECT_EQ(opened.error().problem, Problem::CheckOffOutOfOrder);
}

TEST(OpenedCheckOffTest, PracticeIsAskedForAfterAFailUnlessTheSheetDoesWithout)
{
    RetestRule rule;
    for (const Outcome failed :
         {Outcome::FailCritical, Outcome::FailScore, Outcome::FailTime, Outcome::StoppedSafety})
        EXPECT_TRUE(asksForPractice(failed, rule));
    EXPECT_FALSE(asksForPractice(Outcome::Pass, rule));
    EXPECT_FALSE(asksForPractice(Outcome::VoidTechnical, rule));
    EXPECT_FALSE(asksForPractice(Outcome::NoShow, rule));
    rule.noShowCounts = true;
    EXPECT_TRUE(asksForPractice(Outcome::NoShow, rule));
    rule.remediationFirst = false;
    EXPECT_FALSE(asksForPractice(Outcome::FailScore, rule));
    SampleRecords records;
    const qint64 id = records.signedOne(0, {}, Seen::NotDone);
    EXPECT_TRUE(asksForPractice(fileOf(records, id)));
    records.kept.at(id).remediation = QStringLiteral("two rights");
    EXPECT_FALSE(asksForPractice(fileOf(records, id)));
}

}  // namespace fb::test::opened_check_off_test
