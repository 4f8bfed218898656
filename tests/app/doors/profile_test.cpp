#include "app/doors/profile.h"

#include <gtest/gtest.h>

#include "tests/support/fakes.h"

namespace fb::test::profile_test {

TEST(ProfileTest, AFreshLearnerWritesWithTheRightHandAndHasNoMeasures)
{
    const Profile fresh;
    EXPECT_EQ(fresh.handedness, Side::Right);
    EXPECT_FALSE(fresh.handLength || fresh.fingerWidth || fresh.sex || fresh.stature);
    Profile other = fresh;
    other.fingerWidth = Cm{1.6};
    EXPECT_NE(other, fresh);
}

TEST(ProfileTest, AKeeperInMemoryKeepsAndRefusesAsTheRealOne)
{
    MemoryProfiles keeper;
    QObject asker;
    const Profile left{.handedness = Side::Left};
    bool isSaved = false;
    keeper.save(left, &asker, [&](const Result<bool>& saved) { isSaved = saved.has_value(); });
    EXPECT_TRUE(isSaved);
    keeper.stored.trouble = Fault{Problem::StoreNotWritable, "file", {}, 0.0, 0.0};
    keeper.save({}, &asker, [&](const Result<bool>& saved) { isSaved = saved.has_value(); });
    EXPECT_FALSE(isSaved);
    keeper.load(&asker, [&](const Remembered& remembered) {
        EXPECT_EQ(remembered.profile, std::optional(left));
        EXPECT_TRUE(remembered.trouble);
    });
}

}  // namespace fb::test::profile_test
