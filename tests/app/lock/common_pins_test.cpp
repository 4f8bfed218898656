#include "app/lock/common_pins.h"

#include <gtest/gtest.h>

#include <QString>
#include <algorithm>
#include <set>

#include "app/lock/pin.h"

namespace fb::test::common_pins_test {

TEST(CommonPinsTest, EachIsRefusedAndStandsOnceInSmallLetters)
{
    EXPECT_GE(kCommonPins.size(), 10U);
    std::set<QString> seen;
    for (const QStringView pin : kCommonPins) {
        const QString text = pin.toString();
        EXPECT_TRUE(seen.insert(text).second) << text.toStdString();
        EXPECT_EQ(text, text.toLower());
        EXPECT_GE(text.size(), kLeastPinLength) << text.toStdString();
        ASSERT_FALSE(checkedPin(text)) << text.toStdString();
        EXPECT_EQ(checkedPin(text).error().problem, Problem::PinTooCommon);
        EXPECT_EQ(checkedPin(text.toUpper()).error().problem, Problem::PinTooCommon);
    }
}

}  // namespace fb::test::common_pins_test
