#include "app/demonstrate/lecture_voice.h"

#include <gtest/gtest.h>

#include "tests/support/lecture_faces.h"

namespace fb::test::lecture_voice_test {

LectureVoice voiceAt(LectureState state, int step)
{
    state.step = step;
    return voiceOf(state, plainFace(state, {640, 360}));
}

TEST(LectureVoiceTest, NamesTheStepAndTellsHeadingMannerAndCaption)
{
    const LectureState state = stateOf(Convention::VentroglutealHand);
    for (int step = 0; step < static_cast<int>(state.steps.size()); ++step) {
        const LectureVoice voice = voiceAt(state, step);
        const LectureLook look = lookOf(*state.shown, *state.policy, state.steps, step);
        EXPECT_EQ(voice.name, QStringLiteral("Step %1 of %2: %3")
                                  .arg(step + 1)
                                  .arg(state.steps.size())
                                  .arg(stepTitle(*state.shown, state.steps[static_cast<std::size_t>(step)])));
        for (const QString& part : {look.heading, look.manner, look.caption})
            EXPECT_TRUE(voice.description.contains(part)) << part.toStdString();
    }
}

TEST(LectureVoiceTest, APressSaysWhatIsFelt)
{
    LectureState state = stateOf(Convention::DeltoidStrip);
    state.step = stepOf(state, LectureStepKind::Press);
    const LectureFace face = plainFace(state, {640, 360});
    const auto& press = face.panes.front().look.press;
    ASSERT_TRUE(press && !spoken(*press).isEmpty());
    EXPECT_TRUE(voiceOf(state, face).description.contains(spoken(*press)));
}

TEST(LectureVoiceTest, ABlankPictureSaysSoAndNothingElse)
{
    LectureState state = stateOf(Convention::DeltoidStrip);
    state.blank = true;
    EXPECT_EQ(voiceAt(state, 1).description, QStringLiteral("The picture is blank."));
}

TEST(LectureVoiceTest, BeforeTheFirstBodyItSaysThatItIsNotReady)
{
    const LectureState state;
    const LectureVoice voice = voiceOf(state, plainFace(state, {640, 360}));
    EXPECT_FALSE(voice.name.isEmpty());
    EXPECT_TRUE(voice.description.isEmpty());
}

TEST(LectureVoiceTest, WhatIsComparedIsSaid)
{
    LectureState state = stateOf(Convention::DeltoidStrip);
    state.compare = Compare::SideBySide;
    state.beside = bodyFor(Convention::DeltoidStrip, View::ShoulderSide, Stoutness::Heavy);
    const LectureFace face = plainFace(state, {640, 360});
    ASSERT_EQ(face.panes.size(), 2U);
    for (const LecturePane& pane : face.panes)
        EXPECT_TRUE(voiceOf(state, face).description.contains(pane.name));
}

}  // namespace fb::test::lecture_voice_test
