#include "app/words/check_off_words.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QLocale>
#include <QRegularExpression>
#include <QSet>

#include "tests/support/pseudo_translator.h"

namespace fb::test::check_off_words_tests {

namespace check_off_words_test {

// Every word there is for a code, told apart by who says it.
QStringList everyName()
{
    QStringList all;
    for (int i = 0; i < kStepGroupCount; ++i)
        all += groupName(static_cast<StepGroup>(i));
    for (int i = 0; i < kProcedureStepCount; ++i)
        all += stepName(procedureStepAt(i));
    for (int i = 0; i < kSeenCount; ++i)
        all += seenName(static_cast<Seen>(i));
    for (int i = 0; i < kOutcomeCount; ++i)
        all += outcomeSentence(static_cast<Outcome>(i));
    for (int i = 1; i <= 5; ++i)
        all += ratingName(i);
    for (int i = 0; i < kPopulationCount; ++i)
        all += populationName(static_cast<Population>(i));
    all += {seedRuleName(SeedRule::SameForAll), seedRuleName(SeedRule::OwnForEach)};
    for (int i = 0; i < kCheckOffStageCount; ++i)
        all += stageName(static_cast<CheckOffStage>(i));
    return all;
}

QStringList outcomesAndStandings()
{
    QStringList all;
    for (int i = 0; i < kOutcomeCount; ++i)
        all += outcomeName(static_cast<Outcome>(i));
    for (int i = 0; i < kStandingCount; ++i)
        if (static_cast<Standing>(i) != Standing::Passed)  // the same word as of the outcome
            all += standingName({static_cast<Standing>(i), 1, 3, {}, false});
    return all;
}

void expectAllDiffer(const QStringList& names)
{
    EXPECT_FALSE(names.contains(QString()));
    EXPECT_EQ(QSet<QString>(names.begin(), names.end()).size(), names.size())
        << names.join(QLatin1Char('\n')).toStdString();
    static const QRegularExpression kPlaceholder(QStringLiteral("%[0-9n]"));
    for (const QString& name : names)
        EXPECT_FALSE(name.contains(kPlaceholder)) << name.toStdString();
}

Breach breachOf(const Constraint& constraint)
{
    return {constraint.id,
            constraint.kind,
            constraint.severity,
            constraint.first,
            constraint.then,
            constraint.seconds,
            4.0};
}

class Pseudo {
public:
    Pseudo() { QCoreApplication::installTranslator(&m_translator); }
    Pseudo(const Pseudo&) = delete;
    Pseudo& operator=(const Pseudo&) = delete;
    ~Pseudo() { QCoreApplication::removeTranslator(&m_translator); }

private:
    PseudoTranslator m_translator;
};

}  // namespace check_off_words_test

using namespace check_off_words_test;

TEST(CheckOffWordsTest, EveryCodeHasWordsOfItsOwn)
{
    expectAllDiffer(everyName());
    expectAllDiffer(outcomesAndStandings());
}

TEST(CheckOffWordsTest, EveryWordIsTranslated)
{
    const QStringList english = everyName() + outcomesAndStandings();
    const Pseudo pseudoLanguage;
    const QStringList translated = everyName() + outcomesAndStandings();
    ASSERT_EQ(english.size(), translated.size());
    for (qsizetype i = 0; i < english.size(); ++i)
        EXPECT_EQ(translated[i], pseudo(english[i]));
}

TEST(CheckOffWordsTest, StepsStandInTheirFiveGroupsInTheOrderOfTeaching)
{
    for (int i = 1; i < kProcedureStepCount; ++i)
        EXPECT_GE(groupOf(procedureStepAt(i)), groupOf(procedureStepAt(i - 1)));
    EXPECT_EQ(groupOf(ProcedureStep::ReadOrder), StepGroup::Prepare);
    EXPECT_EQ(groupOf(ProcedureStep::ChangeNeedle), StepGroup::Prepare);
    EXPECT_EQ(groupOf(ProcedureStep::Identify), StepGroup::Identify);
    EXPECT_EQ(groupOf(ProcedureStep::SelectSite), StepGroup::FindSite);
    EXPECT_EQ(groupOf(ProcedureStep::GlovesOn), StepGroup::Give);
    EXPECT_EQ(groupOf(ProcedureStep::CleanSkin), StepGroup::Give);
    EXPECT_EQ(groupOf(ProcedureStep::ReleaseSkin), StepGroup::Give);
    EXPECT_EQ(groupOf(ProcedureStep::SafetyDevice), StepGroup::Afterwards);
    EXPECT_EQ(groupOf(ProcedureStep::Pressure), StepGroup::Afterwards);
    EXPECT_EQ(groupOf(ProcedureStep::Recap), StepGroup::Afterwards);
}

TEST(CheckOffWordsTest, EveryConstraintIsNamedInASentenceOfItsOwn)
{
    QStringList sentences;
    for (const Constraint& constraint : constraints()) {
        const QString text = breachSentence(breachOf(constraint));
        EXPECT_TRUE(text.endsWith(QLatin1Char('.'))) << text.toStdString();
        // The names of the steps themselves only stand in the sentence for a constraint not known here.
        EXPECT_FALSE(text.contains(stepName(constraint.first))) << "P" << constraint.id << text.toStdString();
        EXPECT_FALSE(text.contains(stepName(constraint.then))) << "P" << constraint.id << text.toStdString();
        sentences += text;
    }
    expectAllDiffer(sentences);
    const Pseudo pseudoLanguage;
    QStringList translated;
    for (const Constraint& constraint : constraints())
        translated += breachSentence(breachOf(constraint));
    expectAllDiffer(translated);
}

TEST(CheckOffWordsTest, WhatWasLeftOutIsNoOrderThatWasBroken)
{
    using enum ProcedureStep;
    const Breach left{1, ConstraintKind::Before, Severity::Hard, Identify, Insert};
    const Breach unsaid{5, ConstraintKind::Before, Severity::Soft, PreparedLabel, Insert};
    const Breach turned{7, ConstraintKind::Before, Severity::Soft, Landmarks, CleanSkin};
    const Breach lost{16, ConstraintKind::After, Severity::Hard, Withdraw, Sharps};
    const Breach recapped{15, ConstraintKind::Never, Severity::Hard, Insert, Recap};
    const Breach hurried{9, ConstraintKind::AtLeast, Severity::Soft, CleanSkin, Insert, 10.0, 4.0};
    const std::vector<Observation> seen{{CleanSkin, Seen::Done, 1.0},
                                        {Landmarks, Seen::Prompted, 2.0},
                                        {Insert, Seen::Done, 5.0},
                                        {Withdraw, Seen::Done, 6.0},
                                        {Identify, Seen::NotDone, 0.0}};
    EXPECT_EQ(ordersBroken({left, lost, unsaid, turned, hurried}, seen), (std::vector{turned, hurried}));
    EXPECT_EQ(ordersBroken({recapped}, {}), std::vector{recapped}) << "no list of steps names it";
}

TEST(CheckOffWordsTest, EveryUnsafeOrderNamesTheHarm)
{
    for (const Constraint& constraint : constraints()) {
        if (constraint.severity != Severity::Hard)
            continue;
        const QString text = breachSentence(breachOf(constraint));
        const qsizetype colon = text.indexOf(QStringLiteral(": "));
        EXPECT_GT(colon, 0) << text.toStdString();
        EXPECT_GT(text.size() - colon, 12) << text.toStdString();
    }
    EXPECT_EQ(breachSentence({18, ConstraintKind::Before, Severity::Hard, ProcedureStep::Inject,
                              ProcedureStep::Document, 0.0, 0.0}),
              QStringLiteral("Documented before giving: a record of something that was not given."));
    EXPECT_EQ(breachSentence({1, ConstraintKind::Before, Severity::Hard, ProcedureStep::Identify,
                              ProcedureStep::Insert, 0.0, 0.0}),
              QStringLiteral("Patient not identified before the needle went in: wrong patient."));
}

TEST(CheckOffWordsTest, ATimeCutShortTellsBothTimes)
{
    const QString text = breachSentence({13, ConstraintKind::AtLeast, Severity::Soft, ProcedureStep::Inject,
                                         ProcedureStep::Withdraw, 10.0, 4.2});
    EXPECT_TRUE(text.contains(QStringLiteral("4 s"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("10 "))) << text.toStdString();
}

TEST(CheckOffWordsTest, AConstraintNotKnownHereStillNamesItsSteps)
{
    const QString text = breachSentence({99, ConstraintKind::Before, Severity::Soft, ProcedureStep::Explain,
                                         ProcedureStep::Insert, 0.0, 0.0});
    EXPECT_TRUE(text.contains(stepName(ProcedureStep::Explain))) << text.toStdString();
    EXPECT_TRUE(text.contains(stepName(ProcedureStep::Insert))) << text.toStdString();
}

TEST(CheckOffWordsTest, AStandingTellsTheDayAndTheSecondAssessor)
{
    using namespace std::chrono;
    QLocale::setDefault(QLocale::c());
    const Day day{2026y / December / 3d};
    EXPECT_EQ(standingName({Standing::Waiting, 1, 3, day, false}),
              QStringLiteral("may try again from 3 December"));
    EXPECT_NE(standingName({Standing::MayRetest, 2, 3, {}, true}),
              standingName({Standing::MayRetest, 2, 3, {}, false}));
}

TEST(CheckOffWordsTest, ARatingOutsideOneToFiveHasNoWord)
{
    EXPECT_TRUE(ratingName(0).isEmpty());
    EXPECT_TRUE(ratingName(6).isEmpty());
}

TEST(CheckOffWordsTest, TimesAreToldInMinutesAndSeconds)
{
    using namespace std::chrono_literals;
    QLocale::setDefault(QLocale::c());
    EXPECT_EQ(clockText(0ms), QStringLiteral("0:00"));
    EXPECT_EQ(clockText(-5s), QStringLiteral("0:00"));
    EXPECT_EQ(clockText(247999ms), QStringLiteral("4:07"));
    EXPECT_EQ(clockText(3599s), QStringLiteral("59:59"));
    EXPECT_EQ(clockText(3729s), QStringLiteral("1:02:09"));
    EXPECT_EQ(clockText(90000s), QStringLiteral("25:00:00"));
}

TEST(CheckOffWordsTest, AScoreIsNeverRoundedUpToTheCut)
{
    QLocale::setDefault(QLocale::c());
    EXPECT_EQ(scoreText(79.99), QStringLiteral("79.9 %"));
    EXPECT_EQ(scoreText(80.0), QStringLiteral("80 %"));
    EXPECT_EQ(scoreText(86.45), QStringLiteral("86.4 %"));
    EXPECT_EQ(scoreText(0.0), QStringLiteral("0 %"));
    // Eight tenths summed up as points come to a hair under 80.
    EXPECT_EQ(scoreText(79.9999999999), QStringLiteral("80 %"));
}

TEST(CheckOffWordsTest, NamesStandTogetherAndAloneAndAreNeverReadAsPlaceholders)
{
    EXPECT_EQ(fullName(QStringLiteral("Ana"), QStringLiteral("Ortiz")), QStringLiteral("Ana Ortiz"));
    EXPECT_EQ(fullName({}, QStringLiteral("Ortiz")), QStringLiteral("Ortiz"));
    EXPECT_EQ(fullName(QStringLiteral("Ana"), {}), QStringLiteral("Ana"));
    EXPECT_EQ(fullName(QStringLiteral("%2"), QStringLiteral("=1+1")), QStringLiteral("%2 =1+1"));
}

TEST(CheckOffWordsTest, ATimeOfDayIsShownInTheMachinesZone)
{
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    const QDateTime utc(QDate(2026, 11, 29), QTime(10, 30), Qt::UTC);
    EXPECT_EQ(whenText(utc), QLocale().toString(utc.toLocalTime(), QLocale::ShortFormat));
    EXPECT_TRUE(whenText(utc).contains(QStringLiteral("2026"))) << whenText(utc).toStdString();
    EXPECT_TRUE(whenText({}).isEmpty());
    QLocale::setDefault(QLocale::c());
}

}  // namespace fb::test::check_off_words_tests
