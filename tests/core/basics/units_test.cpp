#include "core/basics/units.h"

#include <gtest/gtest.h>

#include <limits>
#include <type_traits>

using namespace fb;

namespace units_test {

TEST(UnitsTest, UnitsDoNotMix)
{
    EXPECT_FALSE((std::is_convertible_v<double, Cm>));
    EXPECT_FALSE((std::is_convertible_v<Mm, Cm>));
    EXPECT_FALSE((std::is_convertible_v<Cm, double>));
}

TEST(UnitsTest, ArithmeticKeepsTheUnit)
{
    EXPECT_EQ((Cm{3.0} + Cm{1.5}).value(), 4.5);
    EXPECT_EQ((Cm{3.0} - Cm{1.5}).value(), 1.5);
    EXPECT_EQ((2.0 * Cm{3.0}).value(), 6.0);
    EXPECT_EQ(Cm{3.0} / Cm{1.5}, 2.0);
    EXPECT_EQ((-Cm{3.0}).value(), -3.0);
    EXPECT_LT(Cm{1.0}, Cm{2.0});
}

TEST(UnitsTest, TenMillimetresMakeACentimetre)
{
    EXPECT_EQ(toCm(Mm{10.0}), Cm{1.0});
    EXPECT_EQ(toMm(Cm{1.7}), Mm{17.0});
}

TEST(UnitsTest, RoundedToAMillionthAndNeverMinusZero)
{
    EXPECT_EQ(rounded6(1.23456749), 1.234567);
    EXPECT_EQ(rounded6(-1.2345675), -1.234568);
    EXPECT_FALSE(std::signbit(rounded6(-1e-9)));
    EXPECT_FALSE(Cm{std::numeric_limits<double>::quiet_NaN()}.isFinite());
}

}  // namespace units_test
