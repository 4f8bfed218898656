#include "app/demonstrate/speaker_column.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QTest>
#include <QToolButton>

#include "app/words/fault_words.h"
#include "tests/support/speaker_sample.h"

namespace fb::test::speaker_column_test {

constexpr std::array kTabs{"tabStep", "tabBody", "tabCompare", "tabRoom"};
constexpr std::array kScrolls{"stepScroll", "bodyScroll", "compareScroll", "roomScroll"};

TEST(SpeakerColumnTest, ATabShowsItsPanelByClickAndByKey)
{
    ShownSpeaker speaker;
    ASSERT_TRUE(speaker.isReady);
    for (std::size_t i = 0; i < kTabs.size(); ++i) {
        QTest::mouseClick(speaker.find(kTabs[i]), Qt::LeftButton);
        for (std::size_t j = 0; j < kTabs.size(); ++j) {
            EXPECT_EQ(speaker.find(kScrolls[j])->isVisible(), i == j);
            EXPECT_EQ(speaker.find<QToolButton>(kTabs[j])->isChecked(), i == j);
        }
    }
    for (std::size_t i = 0; i < kTabs.size(); ++i) {
        speaker.key(static_cast<int>(Qt::Key_1) + static_cast<int>(i), Qt::AltModifier);
        EXPECT_TRUE(speaker.find(kScrolls[i])->isVisible());
    }
}

TEST(SpeakerColumnTest, ANoticeStandsThereUntilItIsPutAway)
{
    ShownSpeaker speaker;
    const Fault fault{Problem::ScreenLost, {}, {}, 0.0, 0.0};
    speaker.sample.presenter.tell(fault);
    auto* sentence = speaker.find<QLabel>("noticeText");
    EXPECT_TRUE(sentence->isVisible());
    EXPECT_EQ(sentence->text(), sentenceOf(fault));
    QTest::mouseClick(speaker.find("dismissNotice"), Qt::LeftButton);
    EXPECT_FALSE(speaker.state().notice.has_value());
    EXPECT_FALSE(sentence->isVisible());
}

TEST(SpeakerColumnTest, WhatCameOfAHandOutIsSaid)
{
    ShownSpeaker speaker;
    auto* told = speaker.find<QLabel>("lectureTold");
    EXPECT_FALSE(told->isVisible());
    auto* menu = speaker.find<QPushButton>("handOut");
    ASSERT_TRUE(QMetaObject::invokeMethod(menu, "said", Q_ARG(QString, QStringLiteral("Writing…"))));
    EXPECT_TRUE(told->isVisible());
    EXPECT_EQ(told->text(), QStringLiteral("Writing…"));
    ASSERT_TRUE(QMetaObject::invokeMethod(menu, "said", Q_ARG(QString, QString())));
    EXPECT_FALSE(told->isVisible());
}

TEST(SpeakerColumnTest, BeforeABodyIsThereNothingInTheTabsCanBePressed)
{
    LectureSample none(std::nullopt);
    AnsweringDialogs dialogs;
    PluggedScreens screens;
    SpeakerPage page(none.presenter, dialogs, screens);
    EXPECT_FALSE(page.findChild<QWidget*>(QStringLiteral("pinBody"))->isEnabled());
    EXPECT_FALSE(page.findChild<QWidget*>(QStringLiteral("bodyWeightSlider"))->isEnabled());
    EXPECT_FALSE(page.findChild<QWidget*>(QStringLiteral("lectureNext"))->isEnabled());
}

}  // namespace fb::test::speaker_column_test
