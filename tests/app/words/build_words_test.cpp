#include "app/words/build_words.h"

#include <gtest/gtest.h>

#include <QRegularExpression>
#include <QSet>

#include "core/site/landmark.h"
#include "core/site/locate.h"
#include "tests/support/core_atlas.h"

namespace fb::test::build_words_tests {

namespace build_words_test {

bool isSentence(const QString& text)
{
    static const QRegularExpression kPlaceholder(QStringLiteral("%[0-9n]"));
    return text.size() > 1 && text[0].isUpper() && text.endsWith(QLatin1Char('.')) &&
           !text.contains(kPlaceholder);
}

Target targetOf(Convention convention, View view, Side side = Side::Right)
{
    return locate(atlas(), defaultPolicy(), adult(Sex::Male, 176, 74, side), convention, view).value();
}

QString asText(std::string_view word)
{
    return QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size()));
}

constexpr std::array kChoices{BuildChoice::WhichHand, BuildChoice::HowManyFingers, BuildChoice::WhichCell};

}  // namespace build_words_test

using namespace build_words_test;

TEST(BuildWordsTest, EveryHandleHasANameOfItsOwnShortEnoughForAPlate)
{
    QSet<QString> names;
    for (int i = 0; i < kHandleCount; ++i) {
        names << handleName(static_cast<Handle>(i));
        EXPECT_LE(handleName(static_cast<Handle>(i)).size(), 26);
    }
    EXPECT_FALSE(names.contains(QString()));
    EXPECT_EQ(names.size(), kHandleCount);
}

TEST(BuildWordsTest, EveryHandleOfEveryConventionIsTaughtInASentenceOfItsOwn)
{
    for (const Convention convention : kConventions) {
        QSet<QString> taught;
        const auto handles = handlesOf(buildKindOf(convention));
        for (const Handle handle : handles) {
            const QString text = handleInstruction(handle, convention);
            EXPECT_TRUE(isSentence(text)) << text.toStdString();
            taught << text;
        }
        EXPECT_EQ(taught.size(), static_cast<int>(handles.size())) << wordOf(convention);
    }
    EXPECT_EQ(handleInstruction(Handle::Palm, Convention::VentroglutealHand),
              QStringLiteral("Lay your palm over the greater trochanter, the thumb toward the groin."));
    EXPECT_NE(handleInstruction(Handle::UpperLine, Convention::VastusThirds),
              handleInstruction(Handle::UpperLine, Convention::VastusHandbreadths));
}

TEST(BuildWordsTest, EveryStageIsNamedAndExplained)
{
    QSet<QString> names;
    for (int stage = 0; stage < kByHandStageCount; ++stage) {
        names << stageName(static_cast<ByHandStage>(stage));
        for (const Convention convention : kConventions) {
            const QString text = stageInstruction(static_cast<ByHandStage>(stage), convention);
            EXPECT_TRUE(text.endsWith(QLatin1Char('.'))) << text.toStdString();
            EXPECT_FALSE(text.contains(QLatin1Char('%'))) << text.toStdString();
        }
    }
    EXPECT_FALSE(names.contains(QString()));
    EXPECT_EQ(names.size(), kByHandStageCount);
}

TEST(BuildWordsTest, FeelingSaysHowManyLandmarksAndNotWhich)
{
    for (const Convention convention : kConventions) {
        const QString text = stageInstruction(ByHandStage::Feeling, convention);
        EXPECT_TRUE(text.contains(QString::number(askedLandmarks(convention).size()))) << text.toStdString();
        EXPECT_FALSE(text.contains(QStringLiteral("trochanter")) || text.contains(QStringLiteral("acromion")))
            << text.toStdString();
    }
}

TEST(BuildWordsTest, BuildingIsExplainedForEachWayOfBuilding)
{
    QSet<QString> texts;
    for (const Convention convention : kConventions)
        texts << stageInstruction(ByHandStage::Building, convention);
    EXPECT_EQ(texts.size(), 6);  // five kinds, and handbreadths instead of thirds
}

TEST(BuildWordsTest, EveryChoiceIsNamedAskedAndAnswered)
{
    QSet<QString> texts;
    for (const BuildChoice choice : kChoices) {
        texts << choiceName(choice) << choiceInstruction(choice);
        EXPECT_TRUE(choiceInstruction(choice).endsWith(QLatin1Char('?')));
    }
    for (const Side side : kSides)
        texts << handName(side);
    for (const int count : {2, 3})
        texts << fingerCountName(count);
    for (const ThighRow row : {ThighRow::Upper, ThighRow::Middle, ThighRow::Lower})
        for (const ThighColumn column : {ThighColumn::Inside, ThighColumn::Between, ThighColumn::Behind})
            texts << cellName({row, column});
    EXPECT_FALSE(texts.contains(QString()));
    EXPECT_EQ(texts.size(), 6 + 2 + 2 + 9);
    EXPECT_EQ(cellName({ThighRow::Middle, ThighColumn::Between}),
              QStringLiteral("Middle field, between front line and outer line"));
}

TEST(BuildWordsTest, APartIsNamedByTheWordCoreHasForIt)
{
    for (int i = 0; i < kHandleCount; ++i)
        EXPECT_EQ(partName(asText(wordOf(static_cast<Handle>(i)))), handleName(static_cast<Handle>(i)));
    for (const BuildChoice choice : kChoices)
        EXPECT_EQ(partName(asText(wordOf(choice))), choiceName(choice));
    EXPECT_TRUE(partName(QStringLiteral("elbow")).isEmpty());
    EXPECT_TRUE(partName(QString()).isEmpty());
}

TEST(BuildWordsTest, EveryStepThatIsShownIsToldInASentence)
{
    QSet<QString> told;
    const Target target = targetOf(Convention::VentroglutealHand, View::HipSide);
    for (int code = 0; code < kStepCodeCount; ++code) {
        const QString text = watchCaption(target, Step{static_cast<StepCode>(code), {}, {}});
        EXPECT_TRUE(isSentence(text)) << code << ": " << text.toStdString();
        told << text;
    }
    EXPECT_EQ(told.size(), kStepCodeCount);
}

TEST(BuildWordsTest, TheHandThatIsShownBelongsToTheHip)
{
    const Step palm{StepCode::LayPalm, {}, {}};
    const Target right = targetOf(Convention::VentroglutealHand, View::HipSide, Side::Right);
    const Target left = targetOf(Convention::VentroglutealHand, View::HipSide, Side::Left);
    EXPECT_TRUE(watchCaption(right, palm).startsWith(QStringLiteral("The left hand")));
    EXPECT_TRUE(watchCaption(left, palm).startsWith(QStringLiteral("The right hand")));
    Target short_ = right;
    short_.hand->pin = Pin::Palm;
    const Step index{StepCode::IndexOnSpine, {}, {}};
    EXPECT_NE(watchCaption(short_, index), watchCaption(right, index));
}

}  // namespace fb::test::build_words_tests
