#include "app/profile/learner.h"

#include <gtest/gtest.h>

#include <QSignalSpy>

#include "tests/support/fakes.h"

namespace fb::test::learner_tests {

namespace learner_test {

const Fault kTrouble{Problem::StoreNotWritable, "/there/profile.db", {}, 0.0, 0.0};

}  // namespace learner_test

using learner_test::kTrouble;

TEST(LearnerTest, TheHandOfOlderSettingsIsTakenOverOnceAndKept)
{
    MemoryProfiles keeper;
    Learner first(keeper);
    EXPECT_FALSE(first.isLoaded());
    first.load(Cm{20.5});
    EXPECT_TRUE(first.isLoaded());
    EXPECT_EQ(first.profile().handLength, std::optional(Cm{20.5}));
    ASSERT_TRUE(keeper.stored.profile);
    EXPECT_EQ(keeper.stored.profile->handLength, std::optional(Cm{20.5}));
    keeper.stored.profile->handLength = Cm{19.0};
    Learner second(keeper);
    second.load(Cm{20.5});
    EXPECT_EQ(second.profile().handLength, std::optional(Cm{19.0})) << "the profile is newer";
    EXPECT_EQ(keeper.saves, 1);
}

TEST(LearnerTest, AProfileWithoutAHandIsAProfileToo)
{
    MemoryProfiles keeper;
    keeper.stored.profile = Profile{.handedness = Side::Left};
    Learner learner(keeper);
    learner.load(Cm{20.5});
    EXPECT_EQ(learner.profile(), (Profile{.handedness = Side::Left}));
}

TEST(LearnerTest, WithoutAStoreTheHandOfTheSettingsIsUsedAndTheTroubleTold)
{
    MemoryProfiles keeper;
    keeper.stored.trouble = kTrouble;
    Learner learner(keeper);
    QSignalSpy failed(&learner, &Learner::failed);
    learner.load(Cm{20.5});
    EXPECT_EQ(learner.profile().handLength, std::optional(Cm{20.5}));
    EXPECT_EQ(learner.trouble(), std::optional(kTrouble));
    EXPECT_EQ(failed.count(), 0) << "told once, not twice";
}

TEST(LearnerTest, WhatCouldNotBeSavedIsNotTheProfileUnlessItIsUsedAllTheSame)
{
    MemoryProfiles keeper;
    keeper.stored.trouble = kTrouble;
    Learner learner(keeper);
    learner.load(std::nullopt);
    QSignalSpy changed(&learner, &Learner::changed);
    const Profile wide{.fingerWidth = Cm{2.1}};
    std::optional<Result<bool>> answer;
    learner.save(wide, &learner, [&](const Result<bool>& saved) { answer = saved; });
    ASSERT_TRUE(answer && !*answer);
    EXPECT_EQ(answer->error(), kTrouble);
    EXPECT_EQ(learner.profile(), Profile{});
    EXPECT_EQ(changed.count(), 0);
    learner.useUnsaved(wide);
    EXPECT_EQ(learner.profile(), wide);
    EXPECT_EQ(changed.count(), 1);
    keeper.stored.trouble.reset();
    learner.save({}, &learner, [&](const Result<bool>& saved) { answer = saved; });
    EXPECT_TRUE(*answer);
    EXPECT_EQ(learner.profile(), Profile{});
}

TEST(LearnerTest, WhatIsUsedIsUsedAtOnceAndWrittenAndAFailureTold)
{
    MemoryProfiles keeper;
    Learner learner(keeper);
    learner.load(std::nullopt);
    QSignalSpy failed(&learner, &Learner::failed);
    const Profile left{.handedness = Side::Left};
    learner.use(left);
    EXPECT_EQ(keeper.stored.profile, std::optional(left));
    learner.use(left);
    EXPECT_EQ(keeper.saves, 1) << "nothing new";
    keeper.stored.trouble = kTrouble;
    learner.use({});
    EXPECT_EQ(learner.profile(), Profile{});
    EXPECT_EQ(failed.count(), 1);
}

TEST(LearnerTest, EachScreenHasItsScale)
{
    MemoryProfiles keeper;
    keeper.stored.scales[QStringLiteral("desk")] = PixelsPerMm{4.0};
    Learner learner(keeper);
    learner.load(std::nullopt);
    EXPECT_EQ(learner.scaleOf(QStringLiteral("desk")), std::optional(PixelsPerMm{4.0}));
    EXPECT_EQ(learner.scaleOf(QStringLiteral("wall")), std::nullopt);
    learner.useScale(QStringLiteral("wall"), PixelsPerMm{1.7});
    EXPECT_EQ(learner.scaleOf(QStringLiteral("wall")), std::optional(PixelsPerMm{1.7}));
    EXPECT_EQ(keeper.stored.scales.size(), 2U);
}

TEST(LearnerTest, ARunGetsTheHandAndKeepsItsConventions)
{
    MemoryProfiles keeper;
    keeper.stored.profile = Profile{.handLength = Cm{17.0}, .fingerWidth = Cm{1.4}, .handedness = Side::Left};
    Learner learner(keeper);
    learner.load(std::nullopt);
    OwnChoices chosen;
    chosen.choose(Convention::DeltoidHalfway);
    chosen.handLength = Cm{23.0};
    const OwnChoices own = learner.withHand(chosen);
    EXPECT_EQ(own.convention(Site::Deltoid), std::optional(Convention::DeltoidHalfway));
    EXPECT_EQ(own.handLength, std::optional(Cm{17.0}));
    EXPECT_EQ(own.fingerWidth, std::optional(Cm{1.4}));
    EXPECT_EQ(own.handedness, Side::Left);
}

}  // namespace fb::test::learner_tests
