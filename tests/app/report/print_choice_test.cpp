#include "app/report/print_choice.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QDialog>
#include <QWidget>
#include <QtPrintSupport/QPrinterInfo>

namespace fb::test::print_choice_test {

// Machines that test have no printer as a rule; where one is, the system's dialog must open instead.
TEST(PrintChoiceTest, WithoutAPrinterItIsSaidAndWithOneTheSystemAsks)
{
    QWidget window;
    bool chosen = false;
    const auto asked = choosePrinter(&window, [&](const std::shared_ptr<QPrinter>&) { chosen = true; });
    if (QPrinterInfo::availablePrinterNames().isEmpty()) {
        ASSERT_FALSE(asked.has_value());
        EXPECT_EQ(asked.error().problem, Problem::PrinterMissing);
        EXPECT_TRUE(window.findChildren<QDialog*>().isEmpty());
    } else {
        ASSERT_TRUE(asked.has_value());
        ASSERT_EQ(window.findChildren<QDialog*>().size(), 1);
        window.findChild<QDialog*>()->reject();
    }
    EXPECT_FALSE(chosen);
}

}  // namespace fb::test::print_choice_test
