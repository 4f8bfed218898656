#include "app/checkoff/calm_page.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>

#include "app/look/style.h"

namespace calm_page_test {

namespace {

using namespace fb;

TEST(CalmPageTest, WordsStandUnderOneAnotherAndButtonsAreHighEnoughForAFinger)
{
    CalmPage page("calm");
    QLabel* first = page.addWords("first", "display");
    QLabel* second = page.addWords("second", "large");
    QPushButton* main = page.addMain("main");
    QPushButton* other = page.addButton("other");
    for (QLabel* label : {first, second})
        label->setText(QStringLiteral("Words"));
    page.resize(1280, 700);
    page.show();
    const auto top = [&](QWidget* part) { return part->mapTo(&page, QPoint()).y(); };
    EXPECT_LT(top(first), top(second));
    EXPECT_LT(top(second), top(main));
    EXPECT_EQ(top(main), top(other));
    EXPECT_GE(main->height(), leastControlHeight(Reach::Comfortable));
    EXPECT_EQ(main->property("look").toString(), QStringLiteral("main"));
    EXPECT_LT(first->parentWidget()->width(), page.width()) << "lines stay short on a wide screen";
}

}  // namespace

}  // namespace calm_page_test
