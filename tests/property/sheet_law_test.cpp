// Laws of a sheet's text: what is written is read again to the bit, and whatever else is read is refused in
// words and never crashes.
#include <gtest/gtest.h>

#include "tests/property/sampling.h"
#include "tests/support/random_sheet.h"

namespace fb::test::sheet_law_test {

TEST(SheetLaw, WhatIsWrittenIsReadAgain)
{
    for (std::uint64_t seed = 1; seed <= static_cast<std::uint64_t>(rounds(3000)); ++seed) {
        SeedStream stream(seed);
        const Sheet sheet = randomSheet(stream);
        ASSERT_TRUE(checkedSheet(sheet)) << "seed " << seed;
        const std::string text = textOf(sheet);
        const auto read = sheetFrom(text);
        ASSERT_TRUE(read) << "seed " << seed << ": " << read.error().where << "\n" << text;
        ASSERT_EQ(*read, sheet) << "seed " << seed;
        ASSERT_EQ(textOf(*read), text) << "seed " << seed;
    }
}

TEST(SheetLaw, ATextCutShortIsRefusedAtEveryByte)
{
    SeedStream stream(3);
    const std::string text = textOf(randomSheet(stream));
    // The last line break alone may be missing.
    for (std::size_t end = 0; end + 1 < text.size(); ++end) {
        const auto read = sheetFrom(std::string_view(text).substr(0, end));
        ASSERT_FALSE(read) << end;
        ASSERT_EQ(read.error().problem, Problem::SheetNotReadable) << end;
    }
}

TEST(SheetLaw, ADamagedTextIsRefusedOrStillASheet)
{
    for (std::uint64_t seed = 1; seed <= static_cast<std::uint64_t>(rounds(3000)); ++seed) {
        SeedStream stream(seed);
        std::string text = textOf(randomSheet(stream));
        for (int i = 1 + stream.below(3); i > 0; --i)
            text[static_cast<std::size_t>(stream.below(static_cast<int>(text.size())))] =
                static_cast<char>(stream.below(256));
        if (const auto read = sheetFrom(text)) {
            ASSERT_TRUE(checkedSheet(*read)) << "seed " << seed;
        }
    }
}

TEST(SheetLaw, HostileTextsAreRefused)
{
    const std::string depth(200'000, '[');
    std::string objects;
    for (int i = 0; i < 50'000; ++i)
        objects += "{\"items\":";
    const std::string closed = depth + std::string(depth.size(), ']');
    for (const std::string& text :
         {depth, closed, objects, std::string("null"), std::string("\xef\xbb\xbf{}"), std::string(1, '\0'),
          std::string("{\"title\":") + std::string(5000, '9') + "}", std::string("{\"seed\":1e99999}"),
          "{\"items\":" + closed + "}", std::string("{\"title\":\"\\ud800\"}")}) {
        const auto read = sheetFrom(text);
        ASSERT_FALSE(read) << text.substr(0, 40);
    }
}

}  // namespace fb::test::sheet_law_test
