#include "app/words/lecture_words.h"

#include <gtest/gtest.h>

#include <QLocale>
#include <QSet>
#include <array>

#include "app/words/landmark_words.h"
#include "app/words/site_words.h"

namespace fb::test::lecture_words_test {

bool isSentence(const QString& text)
{
    return text.size() > 10 && text.at(0).isUpper() && (text.endsWith(u'.') || text.endsWith(u'?'));
}

constexpr std::array kPressed{StepCode::FeelAcromion, StepCode::FeelTuberosity, StepCode::FeelTrochanter,
                              StepCode::FeelCondyle,  StepCode::FeelSpine,      StepCode::FeelCrest,
                              StepCode::FeelTubercle, StepCode::FeelBackSpine};

TEST(LectureWordsTest, EverySiteAndSideHasAHeadingOfItsOwn)
{
    QSet<QString> headings;
    for (const Site site : kSites)
        for (const Side side : kSides)
            headings << lectureHeading(site, side);
    EXPECT_EQ(headings.size(), 6);
    EXPECT_EQ(lectureHeading(Site::Ventrogluteal, Side::Left), "Ventrogluteal site, left hip");
}

TEST(LectureWordsTest, EveryViewSaysHowThePatientLies)
{
    const Polygon square = Polygon::rectangle(0, 1, 0, 1);
    QSet<QString> captions;
    for (const View view : kViews) {
        Target target{siteOf(view), square, {0.5, 0.5}, square, {0.5, 0.5}, HipPlane{}};
        target.view = view;
        EXPECT_TRUE(isSentence(skinCaption(target))) << std::string(wordOf(view));
        captions << skinCaption(target);
    }
    EXPECT_EQ(captions.size(), static_cast<qsizetype>(kViews.size()));
}

TEST(LectureWordsTest, WhatIsPressedIsNeverNamed)
{
    for (const StepCode code : kPressed) {
        const QString caption = pressCaption(code);
        EXPECT_TRUE(isSentence(caption)) << std::string(wordOf(code));
        for (int i = 0; i < kLandmarkCount; ++i) {
            const QString name = landmarkName(landmarkAt(i));
            EXPECT_FALSE(caption.contains(name, Qt::CaseInsensitive)) << qPrintable(caption);
        }
        for (const char* word : {"acromion", "trochanter", "iliac", "crest", "condyle", "tubercle", "spine"})
            EXPECT_FALSE(caption.contains(QLatin1String(word), Qt::CaseInsensitive)) << qPrintable(caption);
    }
    EXPECT_TRUE(pressCaption(StepCode::Triangle).isEmpty());
}

TEST(LectureWordsTest, EveryHazardHasAWordAndAHarm)
{
    for (int i = 0; i < kHazardCodeCount; ++i) {
        const auto code = static_cast<HazardCode>(i);
        const QString caption = wrongPlaceCaption(code);
        EXPECT_TRUE(isSentence(caption)) << std::string(wordOf(code));
        EXPECT_LE(caption.count(u'.'), 2) << qPrintable(caption);
        EXPECT_FALSE(plateWord(code).isEmpty()) << std::string(wordOf(code));
        EXPECT_LE(plateWord(code).size(), 34) << qPrintable(plateWord(code));
    }
}

TEST(LectureWordsTest, EveryStepHasAWordForThePlate)
{
    for (int i = 0; i < kStepCodeCount; ++i) {
        const auto code = static_cast<StepCode>(i);
        EXPECT_FALSE(plateWord(code).isEmpty()) << std::string(wordOf(code));
        EXPECT_LE(plateWord(code).size(), 34) << qPrintable(plateWord(code));
    }
    EXPECT_EQ(plateWord(StepCode::FeelSpine), landmarkName("asis"));
    EXPECT_TRUE(fingerbreadths(3).startsWith(u'3'));
    EXPECT_NE(fingerbreadths(1), fingerbreadths(2));
}

TEST(LectureWordsTest, EverySiteSaysWhatLiesAround)
{
    QSet<QString> captions;
    for (const Site site : kSites) {
        EXPECT_TRUE(isSentence(hazardsCaption(site)));
        captions << hazardsCaption(site);
    }
    EXPECT_EQ(captions.size(), 3);
}

TEST(LectureWordsTest, ABodyIsToldInOneLine)
{
    BodyValues values;
    values.ageYears = 40.9;
    values.statureCm = 164.6;
    values.weightKg = 65.2;
    const QString woman = bodyText(values);
    EXPECT_TRUE(woman.contains(u"40")) << "a birthday is not rounded up: " << qPrintable(woman);
    EXPECT_TRUE(woman.contains(u"165 cm"));
    EXPECT_TRUE(woman.contains(u"65 kg"));
    values.sex = Sex::Male;
    EXPECT_NE(bodyText(values), woman);
    EXPECT_EQ(bodyMassIndexText(23.6), "Body-mass index 24");
    QSet<QString> names;
    for (const Stoutness stoutness : kStoutnesses)
        names << stoutnessName(stoutness);
    EXPECT_EQ(names.size(), 3);
}

}  // namespace fb::test::lecture_words_test
