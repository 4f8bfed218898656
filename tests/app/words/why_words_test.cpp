#include "app/words/why_words.h"

#include <gtest/gtest.h>

#include <QRegularExpression>

namespace fb::test::why_words_test {

TEST(WhyWordsTest, TitleAndTextComeTogetherOrNotAtAll)
{
    for (const View view : kViews)
        EXPECT_EQ(whyNotTitle(view).isEmpty(), whyNotText(view).isEmpty()) << wordOf(view);
}

TEST(WhyWordsTest, EveryCompanionOfHipAndThighSaysWhyNotThere)
{
    for (const Site site : {Site::VastusLateralis, Site::Ventrogluteal})
        for (const View view : askedViews(site))
            EXPECT_TRUE(whyNotText(companionOf(view)).endsWith(QLatin1Char('.'))) << wordOf(view);
}

TEST(WhyWordsTest, NamesWhatANeedleMeetsThere)
{
    for (const char* word : {"upper outer quadrant", "superior gluteal nerve", "sciatic nerve", "Fat"})
        EXPECT_TRUE(whyNotText(View::HipBehind).contains(QLatin1String(word))) << word;
    for (const char* word : {"lateral circumflex", "nerve to the vastus lateralis", "hurt more"})
        EXPECT_TRUE(whyNotText(View::ThighFront).contains(QLatin1String(word))) << word;
}

TEST(WhyWordsTest, CarriesNoNumberOfItsOwn)
{
    static const QRegularExpression kDigit(QStringLiteral("[0-9]"));
    for (const View view : kViews)
        EXPECT_FALSE(whyNotText(view).contains(kDigit)) << wordOf(view);
}

}  // namespace fb::test::why_words_test
