#include "app/canvas/plate_voice.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>

namespace plate_voice_test {

namespace {

using namespace fb;

TEST(PlateVoiceTest, NewWordsAreSaidAtOnceAndTheSameWordsOnce)
{
    PlateVoice voice;
    QSignalSpy said(&voice, &PlateVoice::said);
    voice.hear("Soft");
    voice.hear("Soft");
    ASSERT_EQ(said.count(), 1);
    EXPECT_EQ(said[0][0].toString(), QString("Soft"));
    QTest::qWait(PlateVoice::kRestMs + 60);
    voice.hear("Soft");
    EXPECT_EQ(said.count(), 1);
}

TEST(PlateVoiceTest, ASweepDoesNotBabbleAndItsLastWordsAreSaid)
{
    PlateVoice voice;
    QSignalSpy said(&voice, &PlateVoice::said);
    for (int i = 0; i < 20; ++i)
        voice.hear(i % 2 == 0 ? "Soft" : "Firm");
    voice.hear("Hard");
    EXPECT_EQ(said.count(), 1);
    ASSERT_TRUE(said.wait(PlateVoice::kRestMs + 500));
    EXPECT_EQ(said.count(), 2);
    EXPECT_EQ(said[1][0].toString(), QString("Hard"));
}

TEST(PlateVoiceTest, ALiftedFingerSaysNothingMoreAndANewPressIsNews)
{
    PlateVoice voice;
    QSignalSpy said(&voice, &PlateVoice::said);
    voice.hear("Soft");
    voice.hear("Firm");
    voice.hear({});
    QTest::qWait(PlateVoice::kRestMs + 60);
    EXPECT_EQ(said.count(), 1);
    voice.forget();
    voice.hear("Soft");
    EXPECT_EQ(said.count(), 2);
}

}  // namespace

}  // namespace plate_voice_test
