#include <gtest/gtest.h>

#include "core/policy/policy.h"
#include "tests/support/core_atlas.h"

using namespace fb;

namespace policy_text_test {

TEST(PolicyTextTest, WhatIsWrittenReadsAsTheSamePolicy)
{
    const Policy& shipped = test::defaultPolicy();
    const auto read = Policy::parse(textOf(shipped));
    ASSERT_TRUE(read);
    EXPECT_EQ(*read, shipped);
    EXPECT_EQ(textOf(*read), textOf(shipped));
}

TEST(PolicyTextTest, EveryNumberAndConventionOfALabIsInIt)
{
    for (const PolicyField& field : policyFields()) {
        const double other = (field.low + field.high) / 2.0 + 1e-9;
        const Policy lab = test::defaultPolicy().with(field.key, other);
        // Not every number alone makes a policy whose numbers stand in order; the text tells it all the same.
        const auto read = Policy::parse(textOf(lab));
        EXPECT_TRUE(!read || read->value(field.key) == other) << field.name;
        EXPECT_NE(textOf(lab), textOf(test::defaultPolicy())) << field.name;
    }
    for (const Convention convention : kConventions) {
        const auto read = Policy::parse(textOf(test::defaultPolicy().withConvention(convention)));
        ASSERT_TRUE(read);
        EXPECT_EQ(read->convention(siteOf(convention)), convention);
    }
}

TEST(PolicyTextTest, ANameThatIsNoTextIsStillWritten)
{
    const auto lab = Policy::parseOver(R"({"name": "Lab \"A\" \u00e9"})", test::defaultPolicy());
    ASSERT_TRUE(lab);
    EXPECT_EQ(Policy::parse(textOf(*lab))->name(), "Lab \"A\" \u00e9");
}

}  // namespace policy_text_test
