#include "app/records/record_view.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QEvent>
#include <QScrollArea>

namespace fb::test::record_view_tests {

namespace record_view_test {

struct Counting : RecordView {
    Counting() : RecordView("countingScroll") {}
    void say() override { ++said; }
    void rebuild() override { ++built; }
    [[nodiscard]] bool hasRecord() const override { return holds; }
    void speakAnother()
    {
        QEvent other(QEvent::LanguageChange);
        QCoreApplication::sendEvent(this, &other);
    }

    bool holds = false;
    int said = 0;
    int built = 0;
};

}  // namespace record_view_test

using record_view_test::Counting;

TEST(RecordViewTest, IsMadeAnewWhenLanguageOrColoursChangeButOnlyWithARecord)
{
    Counting view;
    view.setScheme({});
    view.speakAnother();
    EXPECT_EQ(view.said, 1);
    EXPECT_EQ(view.built, 0);
    view.holds = true;
    view.setScheme({});
    view.speakAnother();
    EXPECT_EQ(view.said, 2);
    EXPECT_EQ(view.built, 2);
    QEvent other(QEvent::FontChange);
    QCoreApplication::sendEvent(&view, &other);
    EXPECT_EQ(view.built, 2);
}

TEST(RecordViewTest, ItsScrollerTakesNoFocusAndScrollsDownAlone)
{
    const Counting view;
    const auto* scroll = view.findChild<QScrollArea*>("countingScroll");
    ASSERT_NE(scroll, nullptr);
    EXPECT_EQ(scroll->focusPolicy(), Qt::NoFocus);
    EXPECT_EQ(scroll->horizontalScrollBarPolicy(), Qt::ScrollBarAlwaysOff);
}

}  // namespace fb::test::record_view_tests
