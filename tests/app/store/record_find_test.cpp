#include "app/store/record_find.h"

#include <gtest/gtest.h>

#include "tests/support/record_folder.h"

namespace fb::test::record_find_tests {

namespace record_find_test {

// Signed on days 1, 2 and 3: a pass, a fail, and another's pass on another sheet.
struct Found {
    Found()
    {
        Student named = inventedStudent(3);
        named.family = QStringLiteral("ÖZDEMİR");
        named.given = QStringLiteral("Ulaş");
        EXPECT_TRUE(saveStudents(folder.store(), {named}, momentAt(0)));
        Sheet edited = twoMarks();
        edited.title = "Other";
        other = saveSheet(folder.store(), edited, momentAt(0)).value();
        EXPECT_TRUE(
            signedCheckOff(folder.store(), QStringLiteral("s-001"), sheet, true, momentAt(1), kSecond));
        EXPECT_TRUE(signedCheckOff(folder.store(), QStringLiteral("s-002"), sheet, false, momentAt(2)));
        EXPECT_TRUE(signedCheckOff(folder.store(), QStringLiteral("s-003"), other, true, momentAt(3)));
        EXPECT_TRUE(signRemediation(folder.store(), 2, QStringLiteral("an hour"), kFirst, momentAt(3)));
        EXPECT_TRUE(beginCheckOff(folder.store(), orderOf(QStringLiteral("s-001"), other), momentAt(4)));
    }
    std::vector<qint64> ids(const CheckOffFilter& filter)
    {
        std::vector<qint64> found;
        const auto lines = findCheckOffs(folder.store(), filter);
        EXPECT_TRUE(lines);
        for (const CheckOffLine& line : *lines)
            found.push_back(line.id);
        return found;
    }

    RecordFolder folder;
    SheetOnFile sheet = folder.fill();
    SheetOnFile other;
};

using Ids = std::vector<qint64>;

}  // namespace record_find_test

using namespace record_find_test;

TEST(RecordFindTest, NewestFirstAndOnlyWhatIsSigned)
{
    Found found;
    EXPECT_EQ(found.ids({}), (Ids{3, 2, 1}));
    CheckOffFilter two;
    two.most = 2;
    EXPECT_EQ(found.ids(two), (Ids{3, 2}));
    two.most = 0;
    EXPECT_EQ(found.ids(two), Ids{});
}

TEST(RecordFindTest, EveryConditionNarrows)
{
    Found found;
    CheckOffFilter filter;
    filter.student = QStringLiteral("s-002");
    EXPECT_EQ(found.ids(filter), Ids{2});
    filter = {};
    filter.sheet = found.sheet.key;
    EXPECT_EQ(found.ids(filter), (Ids{2, 1}));
    filter.outcome = Outcome::Pass;
    EXPECT_EQ(found.ids(filter), Ids{1});
    filter = {};
    filter.from = momentAt(2).day;
    EXPECT_EQ(found.ids(filter), (Ids{3, 2}));
    filter.to = momentAt(2).day;
    EXPECT_EQ(found.ids(filter), Ids{2}) << "both borders belong to it";
}

TEST(RecordFindTest, WordsAreFoundInNamesAndIdsOfEveryAlphabet)
{
    Found found;
    const auto ids = [&](const char* words) {
        CheckOffFilter filter;
        filter.words = QString::fromUtf8(words);
        return found.ids(filter);
    };
    EXPECT_EQ(ids("family001"), Ids{1});
    EXPECT_EQ(ids("s-00"), (Ids{3, 2, 1}));
    EXPECT_EQ(ids("özdem"), Ids{3});
    EXPECT_EQ(ids("ULAŞ öz"), Ids{3}) << "each word, in any order";
    EXPECT_EQ(ids("ulaş family"), Ids{});
    EXPECT_EQ(ids("%"), Ids{}) << "no word means more than its letters";
}

TEST(RecordFindTest, ALineTellsWhatTheListShows)
{
    Found found;
    const auto lines = findCheckOffs(found.folder.store(), {}).value();
    const CheckOffLine& failed = lines[1];
    EXPECT_EQ(failed.student, inventedStudent(2));
    EXPECT_EQ(failed.sheetKey, found.sheet.key);
    EXPECT_EQ(failed.sheetTitle, u"Two marks");
    EXPECT_EQ(failed.attempt, 1);
    EXPECT_EQ(failed.at, momentAt(2).at);
    EXPECT_EQ(failed.outcome, Outcome::FailScore);
    EXPECT_EQ(failed.percent, 50.0) << "both steps, neither mark";
    EXPECT_EQ(failed.rating, 4);
    EXPECT_EQ(failed.assessor, kFirst.assessor.name);
    EXPECT_EQ(failed.remediation, u"an hour");
    EXPECT_TRUE(failed.secondAssessor.isEmpty());
    EXPECT_EQ(lines[2].secondAssessor, kSecond.assessor.name);
    EXPECT_TRUE(lines[2].remediation.isEmpty());
}

TEST(RecordFindTest, OneIsReadBackWithAllItsEvents)
{
    Found found;
    const auto read = readCheckOff(found.folder.store(), 1);
    ASSERT_TRUE(read);
    EXPECT_EQ(read->line.id, 1);
    EXPECT_EQ(read->sheet.sheet, twoMarks());
    EXPECT_EQ(read->order.policyText, orderOf({}, {}).policyText);
    EXPECT_EQ(read->chainHead.size(), 64);
    EXPECT_GT(read->chainLength, 0);
    EXPECT_EQ(read->begunAt, momentAt(1).at) << "begun and signed at one moment here";
    ASSERT_EQ(read->events.back().kind, CheckOffEventKind::Signed);
    CheckOff again({read->sheet.sheet, read->order.seed, read->order.extraPercent});
    for (const CheckOffEvent& event : read->events)
        ASSERT_TRUE(again.apply(event, std::nullopt));
    EXPECT_EQ(again.stage(), CheckOffStage::Closed);
    EXPECT_EQ(again.result().decision.outcome, Outcome::Pass);
    EXPECT_EQ(readCheckOff(found.folder.store(), 4).error().problem, Problem::CheckOffOutOfOrder) << "open";
    EXPECT_EQ(readCheckOff(found.folder.store(), 9).error().problem, Problem::CheckOffOutOfOrder) << "none";
}

}  // namespace fb::test::record_find_tests
