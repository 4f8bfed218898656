#include "app/store/record_order.h"

#include <gtest/gtest.h>

#include "tests/support/record_folder.h"

namespace fb::test::record_order_test {

TEST(RecordOrderTest, IsReadAsItWasGivenAlsoWhenNothingWas)
{
    RecordFolder folder;
    const SheetOnFile sheet = folder.fill();
    CheckOffOrder bare;
    bare.student = QStringLiteral("s-001");
    bare.sheet = sheet.key;
    ASSERT_TRUE(beginCheckOff(folder.store(), bare, momentAt(1)));
    const auto read = readOrder(folder.store(), 1);
    ASSERT_TRUE(read);
    EXPECT_EQ(read->student, bare.student);
    EXPECT_EQ(read->seed, 0U);
    EXPECT_TRUE(read->policyText.isEmpty() && read->plateHashes.isEmpty() && read->programVersion.isEmpty());
    EXPECT_EQ(readOrder(folder.store(), 2).error().problem, Problem::CheckOffOutOfOrder);
}

}  // namespace fb::test::record_order_test
