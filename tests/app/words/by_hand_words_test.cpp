#include "app/words/by_hand_words.h"

#include <gtest/gtest.h>

#include <QLocale>
#include <QSet>

#include "app/words/grade_words.h"
#include "app/words/landmark_words.h"

#include "tests/support/core_atlas.h"

namespace fb::test::by_hand_words_tests {

namespace by_hand_words_test {

FlagGrade flagOf(FlagVerdict verdict, double off = 1.4, std::optional<Landmark> really = {})
{
    FlagGrade flag;
    flag.asked = Landmark::GreaterTrochanter;
    flag.verdict = verdict;
    if (verdict != FlagVerdict::Missing)
        flag.flag = Flag{verdict == FlagVerdict::Misnamed ? Landmark::LesserTrochanter : flag.asked, {}};
    flag.distance = Cm{off};
    flag.direction = Direction::High;
    flag.really = really;
    return flag;
}

bool isSentence(const QString& text)
{
    return text.size() > 1 && text.endsWith(QLatin1Char('.')) && !text.contains(QLatin1Char('%'));
}

constexpr std::array kParts{Cause::Part::Landmark, Cause::Part::Build, Cause::Part::Mark};

ByHandGrade gradeOf(int found, int flags, int right, int steps)
{
    ByHandGrade grade;
    for (int i = 0; i < flags; ++i)
        grade.flags.push_back(flagOf(i < found ? FlagVerdict::Found : FlagVerdict::Off));
    for (int i = 0; i < steps; ++i) {
        BuildStepGrade step;
        step.slip = i < right ? Slip::None : Slip::PalmOff;
        grade.steps.push_back(step);
    }
    grade.landmarksFound = found == flags;
    grade.builtRight = right == steps;
    return grade;
}

}  // namespace by_hand_words_test

using namespace by_hand_words_test;

TEST(ByHandWordsTest, EveryVerdictOfAFlagHasAWordAndASentenceOfItsOwn)
{
    QSet<QString> words;
    for (int i = 0; i < kFlagVerdictCount; ++i) {
        const auto verdict = static_cast<FlagVerdict>(i);
        EXPECT_TRUE(isSentence(flagSentence(flagOf(verdict), Site::Ventrogluteal)))
            << flagSentence(flagOf(verdict), Site::Ventrogluteal).toStdString();
        EXPECT_TRUE(flagSentence(flagOf(verdict), Site::Ventrogluteal)
                        .contains(landmarkName(Landmark::GreaterTrochanter)));
        words << flagVerdictName(verdict) << flagSentence(flagOf(verdict), Site::Ventrogluteal);
    }
    EXPECT_FALSE(words.contains(QString()));
    EXPECT_EQ(words.size(), 2 * kFlagVerdictCount);
}

TEST(ByHandWordsTest, AFlagIsToldWithItsCentimetres)
{
    EXPECT_EQ(flagSentence(flagOf(FlagVerdict::Found, 0.42), Site::Ventrogluteal),
              QStringLiteral("Greater trochanter: found, 0.4 cm away."));
    EXPECT_EQ(flagSentence(flagOf(FlagVerdict::Found, 0.0), Site::Ventrogluteal),
              QStringLiteral("Greater trochanter: found, right on it."));
    EXPECT_EQ(
        flagSentence(flagOf(FlagVerdict::Near), Site::Ventrogluteal),
        QStringLiteral("Greater trochanter: nearly found, your flag is 1.4 cm too far toward the head."));
    const QLocale before;
    QLocale::setDefault(QLocale(QLocale::German));
    EXPECT_TRUE(
        flagSentence(flagOf(FlagVerdict::Off), Site::Ventrogluteal).contains(QStringLiteral("1,4 cm")));
    QLocale::setDefault(before);
}

TEST(ByHandWordsTest, WhatAFlagReallyStandsOnAndWhatItShouldBeCalledIsTold)
{
    EXPECT_TRUE(flagSentence(flagOf(FlagVerdict::Off, 8.0, Landmark::IliacCrest), Site::Ventrogluteal)
                    .endsWith(QStringLiteral("It stands on another landmark: Iliac crest.")));
    EXPECT_EQ(flagSentence(flagOf(FlagVerdict::Misnamed), Site::Ventrogluteal),
              QStringLiteral("The place is right; its name is “Greater trochanter”, not “Lesser "
                             "trochanter”."));
}

TEST(ByHandWordsTest, TheThreePartsHaveHeadingsAndVerdicts)
{
    const ByHandGrade grade = gradeOf(2, 3, 5, 5);
    Grade mark;
    mark.verdict = Verdict::OffTarget;
    QSet<QString> headings;
    for (const Cause::Part part : kParts)
        headings << partHeading(part);
    EXPECT_FALSE(headings.contains(QString()));
    EXPECT_EQ(headings.size(), 3);
    EXPECT_EQ(partVerdict(grade, mark, Cause::Part::Landmark), QStringLiteral("2 of 3"));
    EXPECT_EQ(partVerdict(grade, mark, Cause::Part::Build), QStringLiteral("all 5"));
    EXPECT_EQ(partVerdict(grade, mark, Cause::Part::Mark), verdictName(Verdict::OffTarget));
    EXPECT_FALSE(isRight(grade, Cause::Part::Landmark));
    EXPECT_TRUE(isRight(grade, Cause::Part::Build));
    EXPECT_FALSE(isRight(grade, Cause::Part::Mark));
}

TEST(ByHandWordsTest, EveryCauseIsToldInASentenceOfItsOwn)
{
    QSet<QString> causes;
    for (int i = 1; i < kSlipCount; ++i) {
        const QString text = causeSentence({Cause::Part::Build, {}, {}, {}, static_cast<Slip>(i)});
        EXPECT_TRUE(isSentence(text)) << i << ": " << text.toStdString();
        causes << text;
    }
    for (int i = 0; i < kFlagVerdictCount; ++i) {
        const QString text =
            causeSentence({Cause::Part::Landmark, Landmark::IliacCrest, static_cast<FlagVerdict>(i), {}, {}});
        EXPECT_TRUE(isSentence(text)) << text.toStdString();
        EXPECT_TRUE(text.contains(landmarkName(Landmark::IliacCrest)));
        causes << text;
    }
    causes << causeSentence({Cause::Part::Mark, {}, {}, {}, {}});
    EXPECT_EQ(causes.size(), kSlipCount - 1 + kFlagVerdictCount + 1);
}

TEST(ByHandWordsTest, TheFirstCauseOrThatThereIsNone)
{
    ByHandGrade grade = gradeOf(3, 3, 5, 5);
    EXPECT_EQ(firstCauseSentence(grade), QStringLiteral("Found, built and marked as it is taught."));
    grade.first = Cause{Cause::Part::Mark, {}, {}, {}, {}};
    EXPECT_TRUE(
        firstCauseSentence(grade).startsWith(QStringLiteral("Landmarks and construction were right")));
    grade.builtRight = false;  // noted only
    EXPECT_EQ(firstCauseSentence(grade), causeSentence(*grade.first));
    grade.first = Cause{Cause::Part::Build, {}, {}, BuildStep::Palm, Slip::PalmOff};
    EXPECT_EQ(firstCauseSentence(grade), causeSentence(*grade.first));
}

TEST(ByHandWordsTest, ALuckyMarkIsCalledOne)
{
    ByHandGrade grade;
    EXPECT_TRUE(luckySentence(grade).isEmpty());
    grade.luckyMark = true;
    EXPECT_EQ(luckySentence(grade),
              QStringLiteral("The point is right, but your hand would not have led you there."));
}

TEST(ByHandWordsTest, AConstructionThatIsOnlyNotedIsSaidToBe)
{
    EXPECT_TRUE(notedOnlySentence(defaultPolicy().with(PolicyKey::BuildCounts, 1.0)).isEmpty());
    EXPECT_FALSE(notedOnlySentence(defaultPolicy().with(PolicyKey::BuildCounts, 0.0)).isEmpty());
}

}  // namespace fb::test::by_hand_words_tests
