#include "app/records/check_off_body.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>

#include "app/words/check_off_words.h"
#include "tests/support/sample_records.h"

namespace fb::test::check_off_body_tests {

namespace check_off_body_test {

OpenedCheckOff opened(SampleRecords& records, qint64 id)
{
    std::optional<OpenedCheckOff> made;
    records.read(id, nullptr,
                 [&](const Result<CheckOffOnFile>& file) { made = openedCheckOff(file.value()).value(); });
    return *made;
}

QStringList texts(const QWidget& widget, const char* name)
{
    QStringList all;
    for (const QLabel* label : widget.findChildren<QLabel*>(QLatin1String(name)))
        all << label->text();
    return all;
}

}  // namespace check_off_body_test

using namespace check_off_body_test;

TEST(CheckOffBodyTest, TheHeadTellsOutcomeWhyAndWhoSigned)
{
    SampleRecords records;
    const qint64 id = records.signedOne(0, {}, Seen::NotDone);
    const CheckOffHead head(opened(records, id), schemeOf(PaletteKind::Light));
    ASSERT_EQ(texts(head, "openedOutcome").size(), 1);
    EXPECT_TRUE(texts(head, "openedScore")[0].contains(QStringLiteral("80 %")));
    EXPECT_FALSE(texts(head, "openedReason").isEmpty());
    EXPECT_FALSE(texts(head, "openedPractiseLine").isEmpty());
    const QStringList facts = texts(head, "openedFact");
    EXPECT_TRUE(facts.contains(QStringLiteral("31eeae30572c"))) << facts.join('\n').toStdString();
    EXPECT_TRUE(facts.contains(QStringLiteral("Ada Brook")));
    EXPECT_TRUE(facts.contains(QStringLiteral("Calm and careful.")));
    EXPECT_TRUE(facts.contains(QStringLiteral("1 of 3")));
    EXPECT_TRUE(facts.contains(QStringLiteral("9.5 s, asked: 10 s")));
    EXPECT_TRUE(facts.filter(QStringLiteral("3: ")).size() == 1) << "the rating in words";
}

TEST(CheckOffBodyTest, APassNamesNoReasonAgainstIt)
{
    SampleRecords records;
    const CheckOffHead head(opened(records, records.signedOne(0, {})), schemeOf(PaletteKind::Light));
    EXPECT_TRUE(texts(head, "openedReason").isEmpty());
}

TEST(CheckOffBodyTest, AnswersStepsAndBrokenOrdersAreListed)
{
    SampleRecords records;
    const qint64 id = records.signedOne(0, {0.3, 0.0}, Seen::NotDone);
    const OpenedCheckOff check = opened(records, id);
    CheckOffBody body(check, schemeOf(PaletteKind::Light));
    EXPECT_EQ(texts(body, "openedItem").size(), 3);
    EXPECT_TRUE(texts(body, "openedItem")[1].contains(QStringLiteral("entrogluteal")));
    EXPECT_EQ(texts(body, "openedStep").size(), 4);
    EXPECT_EQ(texts(body, "openedStep").filter(QStringLiteral("(critical)")).size(), 1);
    EXPECT_TRUE(texts(body, "openedSeen").contains(QStringLiteral("not done")));
    EXPECT_EQ(texts(body, "openedSeen").filter(QStringLiteral("prompted, ")).size(), 1) << "with its time";
    EXPECT_EQ(texts(body, "openedStepRemark"), QStringList{QStringLiteral("asked for it")});
    QStringList orders;
    for (const Breach& breach : ordersBroken(check.result.procedure.breaches, check.run.observations()))
        orders << breachSentence(breach);
    EXPECT_EQ(texts(body, "openedBreach"), orders);
    EXPECT_LT(static_cast<std::size_t>(orders.size()), check.result.procedure.breaches.size())
        << "who was not identified is a step that was left out, and is listed once";
    QSignalSpy asked(&body, &CheckOffBody::replayAsked);
    const auto shows = body.findChildren<QPushButton*>(QStringLiteral("openedReplay"));
    ASSERT_EQ(shows.size(), 3);
    shows[2]->click();
    EXPECT_EQ(asked[0][0].toInt(), 2);
    EXPECT_NE(shows[0]->accessibleName(), shows[1]->accessibleName());
}

TEST(CheckOffBodyTest, AnItemWithoutAnAnswerIsToldAsThat)
{
    SampleRecords records;
    const qint64 id = records.signedOne(0, {});
    records.leaveUnanswered(id, 1);
    const OpenedCheckOff check = opened(records, id);
    const CheckOffBody body(check, schemeOf(PaletteKind::Light));
    EXPECT_FALSE(texts(body, "openedFinding")[1].contains(u':'));
    EXPECT_TRUE(texts(body, "openedFinding")[0].contains(u':')) << "a verdict before the finding";
}

}  // namespace fb::test::check_off_body_tests
