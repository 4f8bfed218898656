#include "app/words/fault_words.h"

#include <gtest/gtest.h>

#include <QLocale>
#include <QRegularExpression>
#include <QSet>

#include "core/basics/enums.h"

namespace fb::fault_words_tests {

namespace fault_words_test {

// As it might come out of core: with and without its texts, with a range where one is told.
std::vector<Fault> everyFault()
{
    std::vector<Fault> faults;
    for (int i = 0; i < kProblemCount; ++i) {
        const auto problem = static_cast<Problem>(i);
        faults.push_back({problem, {}, {}, 0.0, 0.0});
        faults.push_back({problem, "deltoid.strip_top", "20", 130.0, 215.0});
        faults.push_back({problem, "--age", "x%1\n%2. Y?\x01 %n", 0.5, 1e6});
        faults.push_back({problem, "f", std::string(5000, 'w'), 0.0, 0.0});
    }
    return faults;
}

bool isOneSentence(const QString& text)
{
    static const QRegularExpression kInnerEnd(QStringLiteral("[.!?] +[A-Z]"));
    return text.endsWith(QLatin1Char('.')) && !text.endsWith(QLatin1String("..")) &&
           !text.contains(kInnerEnd) && !text.contains(QLatin1Char('\n'));
}

class FaultLocale {
public:
    explicit FaultLocale(const QLocale& locale) { QLocale::setDefault(locale); }
    FaultLocale(const FaultLocale&) = delete;
    FaultLocale& operator=(const FaultLocale&) = delete;
    ~FaultLocale() { QLocale::setDefault(m_before); }

private:
    QLocale m_before;
};

}  // namespace fault_words_test

using namespace fault_words_test;

TEST(FaultWordsTest, EveryProblemHasExactlyOneSentence)
{
    for (const Fault& fault : everyFault()) {
        // Somebody else's full stop and capital are theirs, so that text is left out of the count.
        QString text = sentenceOf(fault);
        EXPECT_FALSE(text.isEmpty()) << "problem " << static_cast<int>(fault.problem);
        if (!fault.what.empty())
            text.replace(QString::fromStdString(fault.what).simplified(), QStringLiteral("text"));
        EXPECT_TRUE(isOneSentence(text)) << text.toStdString();
    }
}

TEST(FaultWordsTest, NoTwoProblemsShareASentence)
{
    QSet<QString> seen;
    for (int i = 0; i < kProblemCount; ++i)
        seen += sentenceOf(Fault{static_cast<Problem>(i), "where", "what", 1.0, 2.0});
    EXPECT_EQ(seen.size(), kProblemCount);
}

TEST(FaultWordsTest, NoPlaceholderIsLeftOver)
{
    static const QRegularExpression kPlaceholder(QStringLiteral("%[0-9n]"));
    for (int i = 0; i < kProblemCount; ++i) {
        const QString text = sentenceOf(Fault{static_cast<Problem>(i), "where", "what", 1.0, 2.0});
        EXPECT_FALSE(text.contains(kPlaceholder)) << text.toStdString();
    }
}

TEST(FaultWordsTest, ForeignTextIsShownInOneShortLine)
{
    for (const Fault& fault : everyFault())
        EXPECT_LE(sentenceOf(fault).size(), 400) << static_cast<int>(fault.problem);
}

TEST(FaultWordsTest, SaysWhatIsWrongAndHowToMendIt)
{
    const FaultLocale locale(QLocale::c());
    EXPECT_EQ(sentenceOf({Problem::StatureOutOfRange, {}, "20", 130.0, 215.0}).toStdString(),
              "The stature 20 cm is outside 130 to 215 cm; give it in centimetres, for example 163.");
    EXPECT_EQ(sentenceOf({Problem::ArgumentMissing, "--weight", {}, 0.0, 0.0}).toStdString(),
              "The option --weight is missing; add it with its value.");
}

TEST(FaultWordsTest, AConventionOfAnotherSiteIsToldWithThoseOfItsOwn)
{
    const FaultLocale locale(QLocale::c());
    const QString text =
        sentenceOf({Problem::ConventionOfAnotherSite, "ventrogluteal", "deltoid.strip", 0.0, 0.0});
    EXPECT_TRUE(text.contains(QStringLiteral("“deltoid.strip” does not belong to the site “ventrogluteal”")))
        << text.toStdString();
    for (const Convention convention : kConventions) {
        const QString word = QString::fromStdString(std::string(wordOf(convention)));
        EXPECT_EQ(text.contains(word),
                  siteOf(convention) == Site::Ventrogluteal || convention == Convention::DeltoidStrip)
            << text.toStdString();
    }
}

TEST(FaultWordsTest, AShowOnlyViewNamesTheViewsOfItsSiteThatTakeAMark)
{
    const FaultLocale locale(QLocale::c());
    const QString text = sentenceOf({Problem::ViewShowOnly, {}, "hip-behind", 0.0, 0.0});
    EXPECT_TRUE(text.contains(QStringLiteral("hip-side"))) << text.toStdString();
    EXPECT_FALSE(text.contains(QStringLiteral("shoulder-side"))) << text.toStdString();
}

TEST(FaultWordsTest, AHandIsToldItsLengthsWithAndWithoutItsOwn)
{
    const FaultLocale locale(QLocale::c());
    EXPECT_EQ(sentenceOf({Problem::HandLengthOutOfRange, {}, "30", 13.0, 24.0}).toStdString(),
              "The hand length 30 cm is outside 13 to 24 cm; measure from the wrist crease to the tip of "
              "the middle finger.");
    EXPECT_TRUE(sentenceOf({Problem::HandLengthOutOfRange, {}, {}, 13.0, 24.0})
                    .contains(QStringLiteral("13 to 24 cm")));
}

TEST(FaultWordsTest, WhatIsMissingOfAConstructionIsNamed)
{
    EXPECT_EQ(sentenceOf({Problem::BuildNotWhole, {}, "index_tip", 0.0, 0.0}).toStdString(),
              "The construction is not whole; set “Index fingertip”, then go on.");
    EXPECT_EQ(sentenceOf({Problem::BuildNotWhole, {}, "which_cell", 0.0, 0.0}).toStdString(),
              "The construction is not whole; set “Field”, then go on.");
    EXPECT_FALSE(sentenceOf({Problem::BuildNotWhole, {}, {}, 0.0, 0.0}).contains(QStringLiteral("“")));
}

TEST(FaultWordsTest, AFingerIsToldItsWidthsWithAndWithoutItsOwn)
{
    const FaultLocale locale(QLocale(QLocale::German));
    EXPECT_EQ(sentenceOf({Problem::FingerWidthOutOfRange, {}, "3.5", 1.2, 2.5}).toStdString(),
              "The finger width 3,5 cm is outside 1,2 to 2,5 cm; measure straight across the middle joint "
              "of the index finger.");
    EXPECT_TRUE(sentenceOf({Problem::FingerWidthOutOfRange, {}, {}, 1.2, 2.5})
                    .contains(QStringLiteral("1,2 to 2,5 cm")));
}

TEST(FaultWordsTest, ChoicesAreListed)
{
    const QString text = sentenceOf({Problem::ConventionUnknown, {}, "deltoid.guess", 0.0, 0.0});
    for (const Convention convention : kConventions)
        EXPECT_TRUE(
            text.contains(QLatin1StringView(wordOf(convention).data(), qsizetype(wordOf(convention).size()))))
            << text.toStdString();
}

TEST(FaultWordsTest, NumbersFollowTheLocale)
{
    const FaultLocale locale(QLocale(QLocale::German));
    const QString text = sentenceOf({Problem::BodyImplausible, {}, "12.25", 13.0, 70.0});
    EXPECT_TRUE(text.contains(QStringLiteral("12,25"))) << text.toStdString();
}

TEST(FaultWordsTest, APercentSignInForeignTextIsNotReplaced)
{
    const QString text = sentenceOf({Problem::AgeNotANumber, {}, "%1 %2", 0.0, 0.0});
    EXPECT_TRUE(text.contains(QStringLiteral("“%1 %2”"))) << text.toStdString();
}

}  // namespace fb::fault_words_tests
