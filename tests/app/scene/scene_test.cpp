#include "app/scene/scene.h"

#include <gtest/gtest.h>

namespace scene_test {

namespace {

using namespace fb;

TEST(SceneTest, AScreenReaderHearsTheDescriptionElseTheLabel)
{
    EXPECT_EQ(spoken({Role::Region, Figure::Closed, {}, "label", "description"}), QString("description"));
    EXPECT_EQ(spoken({Role::Region, Figure::Closed, {}, "label", {}}), QString("label"));
    EXPECT_TRUE(spoken({Role::Region, Figure::Closed, {}, {}, {}}).isEmpty());
}

}  // namespace

}  // namespace scene_test
