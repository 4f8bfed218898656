#include "app/checkoff/seen_button.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QSignalSpy>

#include "tests/support/manikin_sample.h"

namespace seen_button_test {

namespace {

using namespace fb;
using namespace fb::test;

// On the paper of a page, as it is seen.
QImage painted(QWidget& page, SeenButton& button)
{
    button.resize(button.sizeHint());
    page.resize(button.size());
    return page.grab().toImage();
}

TEST(SeenButtonTest, EachAnswerHasAFigureOfItsOwn)
{
    EXPECT_NE(iconOf(Seen::Done), iconOf(Seen::Prompted));
    EXPECT_NE(iconOf(Seen::Done), iconOf(Seen::NotDone));
    EXPECT_NE(iconOf(Seen::Prompted), iconOf(Seen::NotDone));
}

TEST(SeenButtonTest, AChosenOneIsFilledAndSoToldApartWithoutItsColour)
{
    const Scheme scheme = dressed();
    for (int i = 0; i < kSeenCount; ++i) {
        QWidget page;
        SeenButton button(static_cast<Seen>(i), &page);
        button.setScheme(scheme);
        const int open = qGray(painted(page, button).pixel(6, 6));
        button.setChecked(true);
        EXPECT_GT(open - qGray(painted(page, button).pixel(6, 6)), 60) << i;
    }
}

TEST(SeenButtonTest, IsLargeEnoughToHitWithAndWithoutItsWord)
{
    for (const double scale : {1.0, 1.5, 2.0}) {
        const Scheme scheme = dressed(PaletteKind::Light, scale);
        SeenButton button(Seen::Prompted);
        button.setScheme(scheme);
        button.say(QStringLiteral("Prompted"), QStringLiteral("Puts on gloves: prompted"));
        EXPECT_GE(button.sizeHint().height(), 32);
        EXPECT_GE(button.sizeHint().width(), 32);
        button.showWord(true);
        EXPECT_GE(button.sizeHint().height(), 32);
        EXPECT_GT(button.sizeHint().width(),
                  button.fontMetrics().horizontalAdvance(QStringLiteral("Prompted")));
        EXPECT_EQ(button.accessibleName(), QStringLiteral("Puts on gloves: prompted"));
    }
    dressed();
}

TEST(SeenButtonTest, TheSecondPressOfADoubleClickIsNoSecondAnswer)
{
    SeenButton button(Seen::Done);
    button.show();
    QSignalSpy clicked(&button, &SeenButton::clicked);
    doubleClick(button);
    EXPECT_EQ(clicked.size(), 1);
}

}  // namespace

}  // namespace seen_button_test
