#include "app/report/sheet_words.h"

#include <gtest/gtest.h>

#include <QCoreApplication>

#include "app/words/check_off_words.h"
#include "tests/support/pseudo_translator.h"
#include "tests/support/report_sample.h"

namespace fb::test::sheet_words_tests {

namespace sheet_words_test {

SheetWords usualWords(const std::function<void(SignedSample&)>& change = {})
{
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    SignedSample sample = usualSample();
    if (change)
        change(sample);
    return sheetOf(sample).words;
}

QString fact(const std::vector<SheetFact>& facts, const char* name)
{
    for (const SheetFact& each : facts)
        if (each.first == QString::fromUtf8(name))
            return each.second;
    return {};
}

const SheetStepWords* step(const SheetWords& words, ProcedureStep of)
{
    for (const SheetStepWords& each : words.steps)
        if (each.name == stepName(of))
            return &each;
    return nullptr;
}

}  // namespace sheet_words_test

using namespace sheet_words_test;

TEST(SheetWordsTest, WhoAndWhichSheetAndAttemptAreTold)
{
    const SheetWords words = usualWords([](SignedSample& s) { s.student.extraPercent = 25; });
    EXPECT_EQ(words.student, QStringLiteral("Marguerite Okonkwo-Lindqvist"));
    EXPECT_EQ(words.about, QStringLiteral("Student id S-1042, section B"));
    EXPECT_EQ(fact(words.facts, "Sheet"), QStringLiteral("Intramuscular injection, second year"));
    EXPECT_EQ(fact(words.facts, "Attempt"), QStringLiteral("2 of 3"));
    const QLocale locale;
    const auto told = [&](QTime utc) {
        const QDateTime local = QDateTime(QDate(2026, 11, 29), utc, Qt::UTC).toLocalTime();
        return locale.toString(local.date(), QLocale::LongFormat) + QStringLiteral(", ") +
               locale.toString(local.time(), QLocale::ShortFormat);
    };
    EXPECT_EQ(fact(words.facts, "Begun"), told({13, 41}));
    EXPECT_EQ(fact(words.facts, "Signed"), told({14, 5}));
    EXPECT_EQ(fact(words.facts, "Extra time agreed"), QStringLiteral("25 %"));
    EXPECT_TRUE(fact(words.facts, "Time on the manikin").endsWith(QStringLiteral("of 12:30")))
        << fact(words.facts, "Time on the manikin").toStdString();
    EXPECT_TRUE(words.documentTitle.contains(words.student));
    EXPECT_TRUE(usualWords([](SignedSample& s) {
                    s.student.section.clear();
                }).about.endsWith(QStringLiteral("S-1042")));
}

TEST(SheetWordsTest, InventedPeopleAndSheetsAreSaidToBeSo)
{
    EXPECT_FALSE(usualWords().invented.isEmpty());
    EXPECT_FALSE(usualWords([](SignedSample& s) { s.sheet.invented = false; }).invented.isEmpty());
    EXPECT_FALSE(usualWords([](SignedSample& s) { s.student.invented = false; }).invented.isEmpty());
    EXPECT_TRUE(usualWords([](SignedSample& s) {
                    s.student.invented = s.sheet.invented = false;
                }).invented.isEmpty());
}

TEST(SheetWordsTest, StepsStandUnderTheirGroupsWithWhatWasSeen)
{
    const SheetWords words = usualWords();
    const SheetStepWords* landmarks = step(words, ProcedureStep::Landmarks);
    ASSERT_NE(landmarks, nullptr);
    EXPECT_EQ(landmarks->mark, Seen::Prompted);
    EXPECT_TRUE(landmarks->critical);
    EXPECT_EQ(landmarks->at, QStringLiteral("2:56"));
    EXPECT_EQ(landmarks->remark, QStringLiteral("felt for the crest only when asked where it was"));
    const SheetStepWords* allergies = step(words, ProcedureStep::Allergies);
    ASSERT_NE(allergies, nullptr);
    EXPECT_EQ(allergies->mark, Seen::NotDone);
    EXPECT_TRUE(allergies->at.isEmpty());
    EXPECT_EQ(std::ranges::count_if(words.steps, [](const SheetStepWords& each) { return !each.mark; }),
              kStepGroupCount);
    EXPECT_EQ(step(words, ProcedureStep::Aspirate), nullptr) << "no step of another protocol";
    EXPECT_EQ(step(words, ProcedureStep::Recap), nullptr);
}

TEST(SheetWordsTest, ARecapThatWasSeenStandsAmongTheStepsAndTheOrders)
{
    const SheetWords words = usualWords([](SignedSample& s) {
        s.seen.push_back({ProcedureStep::Recap, Seen::Done, s.seen.back().at + 5.0, {}});
    });
    ASSERT_NE(step(words, ProcedureStep::Recap), nullptr);
    EXPECT_TRUE(words.orders.join(QLatin1Char(' ')).contains(QStringLiteral("Used needle recapped")));
}

TEST(SheetWordsTest, AFlawlessCheckOffIsToldSo)
{
    const SheetWords words = usualWords([](SignedSample& s) {
        s.off = {{0.0, 0.0}};
        s.seen = doneInOrder(ofProtocol(everyStep(), s.sheet.protocol));
        s.held = 12.0;
    });
    EXPECT_EQ(words.outcome, QStringLiteral("Passed"));
    EXPECT_EQ(words.score, QStringLiteral("100 %"));
    EXPECT_TRUE(words.reasons.isEmpty());
    EXPECT_EQ(words.orders, QStringList{QStringLiteral("No order was broken.")});
    ASSERT_EQ(words.practice.size(), 1);
    for (const SheetItemWords& item : words.items)
        EXPECT_EQ(item.finding, QStringLiteral("on the ideal point"));
}

TEST(SheetWordsTest, ARefusalAndAnItemWithoutAnAnswerHaveWordsAndAPictureOfTheTarget)
{
    const FeedbackSheet sheet = sheetOf([] {
        SignedSample sample = usualSample();
        sample.refused = 0;
        sample.late = 1;
        return sample;
    }());
    const auto& items = sheet.words.items;
    EXPECT_EQ(items[0].verdict, QStringLiteral("Refused without need"));
    EXPECT_EQ(items[0].finding, QStringLiteral("not here, because of: Rash"));
    EXPECT_FALSE(items[0].reason.isEmpty());
    EXPECT_EQ(items[1].verdict, QStringLiteral("No answer"));
    for (std::size_t i = 0; i < 2; ++i) {
        const auto has = [&](Role role) {
            return std::ranges::any_of(items[i].scene, [&](const SceneShape& s) { return s.role == role; });
        };
        EXPECT_TRUE(has(Role::Region));
        EXPECT_TRUE(has(Role::Ideal));
        EXPECT_FALSE(has(Role::Arrow));
        EXPECT_FALSE(sheet.findings.items[i].answer.mark);
    }
}

TEST(SheetWordsTest, TheSideDrawnWithThePatientIsTold)
{
    for (const SheetItemWords& item : usualWords().items)
        EXPECT_FALSE(item.name.contains(QStringLiteral("either"))) << item.name.toStdString();
}

TEST(SheetWordsTest, OnlyWhatWasStruckIsDrawnOfTheHazards)
{
    const FeedbackSheet sheet = sheetOf([] {
        SignedSample sample = usualSample();
        sample.off = {{0.0, -4.5}};
        return sample;
    }());
    const SheetItemFound& item = sheet.findings.items.front();
    ASSERT_TRUE(item.attempt.grade.hazard);
    const auto strikes = std::ranges::count_if(
        sheet.words.items.front().scene, [](const SceneShape& shape) { return shape.role == Role::Strike; });
    EXPECT_EQ(strikes, 1);
    EXPECT_EQ(sheet.words.items.front().verdict, QStringLiteral("Unsafe"));
}

TEST(SheetWordsTest, TheRecordNamesWhoSignedAndTheHeadOfTheLog)
{
    const SheetWords one = usualWords();
    EXPECT_EQ(fact(one.record, "Signed by"), QStringLiteral("Ines Valdemar"));
    EXPECT_EQ(fact(one.record, "Log"), QStringLiteral("5f0c1db2a97e, entry 1,234"));
    EXPECT_EQ(fact(one.record, "Program"), QStringLiteral("Fingerbreadth 0.1.0"));
    EXPECT_EQ(fact(one.record, "Lab's numbers"),
              QString::fromStdString(shippedLibrary().defaultPolicy().name()));
    const SheetWords two = usualWords([](SignedSample& s) { s.second = QStringLiteral("Tomas Brandt"); });
    EXPECT_EQ(fact(two.record, "Signed by"), QStringLiteral("Ines Valdemar and Tomas Brandt"));
}

TEST(SheetWordsTest, EveryHeadingIsTranslated)
{
    const SheetWords english = usualWords();
    PseudoTranslator wordy;
    QCoreApplication::installTranslator(&wordy);
    const SheetWords other = usualWords();
    QCoreApplication::removeTranslator(&wordy);
    EXPECT_EQ(other.title, pseudo(english.title));
    EXPECT_EQ(other.invented, pseudo(english.invented));
    EXPECT_EQ(other.practiceHeading, pseudo(english.practiceHeading));
    EXPECT_EQ(other.itemsHeading, pseudo(english.itemsHeading));
    EXPECT_EQ(other.stepsHeading, pseudo(english.stepsHeading));
    EXPECT_EQ(other.ordersHeading, pseudo(english.ordersHeading));
    EXPECT_EQ(other.recordHeading, pseudo(english.recordHeading));
    EXPECT_EQ(other.caution, pseudo(english.caution));
    ASSERT_EQ(other.facts.size(), english.facts.size());
    for (std::size_t i = 0; i < english.facts.size(); ++i)
        EXPECT_EQ(other.facts[i].first, pseudo(english.facts[i].first));
    for (std::size_t i = 0; i < english.record.size(); ++i)
        EXPECT_EQ(other.record[i].first, pseudo(english.record[i].first));
    EXPECT_TRUE(other.student.contains(QStringLiteral("Okonkwo-Lindqvist"))) << "names are not translated";
}

}  // namespace fb::test::sheet_words_tests
