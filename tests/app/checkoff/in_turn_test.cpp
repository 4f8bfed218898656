#include "app/checkoff/in_turn.h"

#include <gtest/gtest.h>

#include <string>

namespace in_turn_test {

namespace {

using namespace fb;

struct Told {
    bool busy = false;
    std::string made;
    InTurn turn{[this] { return busy; }};

    void ask(char letter)
    {
        turn.ask([this, letter] {
            made += letter;
            busy = true;  // every wish is on its way to the disk for a while
        });
    }
};

TEST(InTurnTest, AWishIsMadeAtOnceWhileNothingIsOnItsWay)
{
    Told told;
    told.ask('a');
    EXPECT_EQ(told.made, "a");
}

TEST(InTurnTest, WishesOfAQuickHandAreMadeInTheirOrderAndNoneTwice)
{
    Told told;
    for (const char letter : {'a', 'b', 'c'})
        told.ask(letter);
    EXPECT_EQ(told.made, "a");
    told.busy = false;
    EXPECT_FALSE(told.turn.goOn());
    EXPECT_EQ(told.made, "ab");
    told.busy = false;
    EXPECT_TRUE(told.turn.goOn());
    EXPECT_EQ(told.made, "abc");
    told.busy = false;
    EXPECT_TRUE(told.turn.goOn());
    EXPECT_EQ(told.made, "abc");
}

TEST(InTurnTest, WhatIsForgottenIsNeverMade)
{
    Told told;
    told.ask('a');
    told.ask('b');
    told.turn.forget();
    told.busy = false;
    EXPECT_TRUE(told.turn.goOn());
    EXPECT_EQ(told.made, "a");
}

}  // namespace

}  // namespace in_turn_test
