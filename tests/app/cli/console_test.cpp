#include "app/cli/console.h"

#include <gtest/gtest.h>

namespace fb::console_test {

TEST(ConsoleTest, OutputTakesEveryByte)
{
    testing::internal::CaptureStdout();
    EXPECT_TRUE(toOutput("first line\nsecond \xc3\xbc line\n"));
    EXPECT_TRUE(toOutput(""));
    EXPECT_EQ(testing::internal::GetCapturedStdout(), "first line\nsecond \xc3\xbc line\n");
}

TEST(ConsoleTest, ErrorsAreOneLineOfUtf8)
{
    testing::internal::CaptureStderr();
    toErrors(QStringLiteral("The side “up” is not known."));
    EXPECT_EQ(testing::internal::GetCapturedStderr(), "The side “up” is not known.\n");
}

}  // namespace fb::console_test
