// A last attempt, signed by two.
#include <gtest/gtest.h>

#include <QLineEdit>
#include <QPushButton>
#include <array>

#include "app/records/pin_field.h"
#include "app/words/fault_words.h"
#include "tests/support/closing_run.h"

namespace fb::test::closing_page_second_tests {

TEST(ClosingPageSecondTest, ALastAttemptIsSignedByTwo)
{
    ManikinRun::Plan plan;
    plan.second = true;
    Closing closing(plan);
    ASSERT_TRUE(closing.isOpen);
    closing.key(Qt::Key_2);
    closing.type(QLatin1String(ManikinRun::kPin));
    EXPECT_EQ(closing.state().rating, 2) << "digits of a PIN typed too soon rate nothing";
    closing.page.findChildren<PinField*>()[0]->choose(1);
    closing.find<QLineEdit>("firstPin")->setFocus();
    closing.type(QLatin1String(ManikinRun::kPin));
    closing.page.findChildren<PinField*>()[1]->choose(1);
    closing.key(Qt::Key_Return);
    closing.type(QLatin1String(ManikinRun::kPin));
    closing.key(Qt::Key_Return);
    EXPECT_EQ(closing.text("signFault"), sentenceOf({Problem::SameAssessor, {}, {}, 0.0, 0.0}));
    closing.page.findChildren<PinField*>()[1]->choose(2);
    QTest::mouseClick(closing.find<QPushButton>("sign"), Qt::LeftButton);
    ASSERT_TRUE(closing.state().signedOff.has_value());
    EXPECT_EQ(closing.state().signedOff->assessors.size(), 2U);
}

TEST(ClosingPageSecondTest, OfTwoWhoSignTheOneWithTheWrongPinTypesItAgain)
{
    ManikinRun::Plan plan;
    plan.second = true;
    Closing closing(plan);
    ASSERT_TRUE(closing.isOpen);
    closing.key(Qt::Key_2);
    const auto fields = closing.page.findChildren<PinField*>();
    fields[0]->choose(1);
    fields[1]->choose(2);
    const auto pin = [&](const char* which) { return closing.find<QLineEdit>(which); };
    const QString right = QLatin1String(ManikinRun::kPin);
    for (const int wrong : {1, 0}) {
        const std::array names{"firstPin", "secondPin"};
        for (int i = 0; i < 2; ++i) {
            pin(names[static_cast<std::size_t>(i)])->setFocus();
            pin(names[static_cast<std::size_t>(i)])->clear();
            closing.type(i == wrong ? QStringLiteral("000000") : right);
        }
        QTest::mouseClick(closing.find<QPushButton>("sign"), Qt::LeftButton);
        EXPECT_FALSE(closing.state().signedOff.has_value());
        const QString told = closing.text("signFault");
        EXPECT_TRUE(told.contains(fields[wrong]->assessorName())) << told.toStdString();
        EXPECT_TRUE(pin(names[static_cast<std::size_t>(wrong)])->text().isEmpty());
        EXPECT_TRUE(pin(names[static_cast<std::size_t>(wrong)])->hasFocus());
        EXPECT_EQ(pin(names[static_cast<std::size_t>(1 - wrong)])->text(), right) << "the other one stays";
    }
    closing.type(right);
    QTest::mouseClick(closing.find<QPushButton>("sign"), Qt::LeftButton);
    EXPECT_TRUE(closing.state().signedOff.has_value());
}

}  // namespace fb::test::closing_page_second_tests
