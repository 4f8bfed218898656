#include "app/words/finding_words.h"

#include <gtest/gtest.h>

#include <QSet>

namespace fb::test::finding_words_tests {

namespace finding_words_test {

constexpr std::array kParts{BodyPart::UpperArm, BodyPart::Thigh, BodyPart::Hip, BodyPart::WholeSide};

bool isSentence(const QString& text)
{
    return text.size() > 1 && text[0].isUpper() && text.endsWith(QLatin1Char('.')) &&
           !text.contains(QLatin1Char('%'));
}

}  // namespace finding_words_test

using namespace finding_words_test;

TEST(FindingWordsTest, EveryFindingIsANoteOfTheChartThatNamesItsSide)
{
    for (int code = 0; code < kFindingCodeCount; ++code) {
        for (const BodyPart part : kParts) {
            for (const Side side : kSides) {
                const QString text = findingText({findingAt(code), part, side});
                EXPECT_TRUE(isSentence(text)) << text.toStdString();
                EXPECT_TRUE(text.startsWith(QStringLiteral("Chart: "))) << text.toStdString();
                EXPECT_TRUE(
                    text.contains(side == Side::Left ? QStringLiteral(" left ") : QStringLiteral(" right ")))
                    << text.toStdString();
            }
        }
    }
    EXPECT_EQ(findingText({FindingCode::Rash, BodyPart::Thigh, Side::Left}),
              QStringLiteral("Chart: a rash over the left thigh."));
}

TEST(FindingWordsTest, ALocalFindingNamesItsPart)
{
    QSet<QString> notes;
    for (const FindingCode code : {FindingCode::Rash, FindingCode::Scar, FindingCode::Bruise,
                                   FindingCode::Cast, FindingCode::LastInjection})
        for (const BodyPart part : kParts)
            notes.insert(findingText({code, part, Side::Right}));
    EXPECT_EQ(notes.size(), 5 * static_cast<int>(kParts.size()));
}

TEST(FindingWordsTest, EveryReasonHasANameOfItsOwn)
{
    QSet<QString> names;
    for (int code = 0; code < kFindingCodeCount; ++code)
        names.insert(findingName(findingAt(code)));
    EXPECT_FALSE(names.contains(QString()));
    EXPECT_EQ(names.size(), kFindingCodeCount);
}

TEST(FindingWordsTest, EveryRefusalIsAnsweredWithASentence)
{
    for (int code = 0; code < kFindingCodeCount; ++code) {
        const Finding finding{findingAt(code), BodyPart::Thigh, Side::Left};
        QSet<QString> answers;
        for (int outcome = 0; outcome < kRefusalOutcomeCount; ++outcome) {
            const QString text =
                refusalSentence(static_cast<RefusalOutcome>(outcome), finding, FindingCode::Scar);
            EXPECT_TRUE(isSentence(text)) << text.toStdString();
            answers.insert(text);
        }
        EXPECT_EQ(answers.size(), kRefusalOutcomeCount);
        EXPECT_TRUE(isSentence(missedFindingSentence(finding)));
    }
    EXPECT_TRUE(
        isSentence(refusalSentence(RefusalOutcome::NothingRulesOut, std::nullopt, FindingCode::Scar)));
}

TEST(FindingWordsTest, ARightReasonIsPraisedWithItsGroundAndAWrongOneCorrected)
{
    const Finding rash{FindingCode::Rash, BodyPart::Hip, Side::Right};
    EXPECT_TRUE(refusalSentence(RefusalOutcome::RightReason, rash, FindingCode::Rash)
                    .startsWith(QStringLiteral("Right:")));
    EXPECT_TRUE(refusalSentence(RefusalOutcome::WrongReason, rash, FindingCode::Scar)
                    .contains(QStringLiteral("the chart tells of a rash")));
}

TEST(FindingWordsTest, AFindingOfAnotherPlaceIsToldApartFromOneThatIsNotThere)
{
    const Finding elsewhere{FindingCode::Rash, BodyPart::Hip, Side::Left};
    const QString named = refusalSentence(RefusalOutcome::NothingRulesOut, elsewhere, FindingCode::Rash);
    const QString invented = refusalSentence(RefusalOutcome::NothingRulesOut, elsewhere, FindingCode::Scar);
    EXPECT_TRUE(named.contains(QStringLiteral("another side or another part")));
    EXPECT_EQ(invented, refusalSentence(RefusalOutcome::NothingRulesOut, std::nullopt, FindingCode::Scar));
    EXPECT_NE(named, invented);
}

}  // namespace fb::test::finding_words_tests
