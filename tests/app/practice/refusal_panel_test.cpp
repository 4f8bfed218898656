#include "app/practice/refusal_panel.h"

#include <gtest/gtest.h>

#include <QRadioButton>
#include <QSignalSpy>
#include <QTest>

#include "app/words/finding_words.h"
#include "tests/support/layout_audit.h"

namespace fb::test::refusal_panel_test {

TEST(RefusalPanelTest, OffersEveryFindingAndOneIsChosenByKey)
{
    RefusalPanel panel;
    panel.show();
    EXPECT_EQ(panel.findChildren<QRadioButton*>().size(), kFindingCodeCount);
    EXPECT_EQ(panel.reason(), std::nullopt);
    QSignalSpy chosen(&panel, &RefusalPanel::reasonChosen);
    auto* first = panel.findChild<QRadioButton*>(QStringLiteral("reason.rash"));
    ASSERT_NE(first, nullptr);
    ASSERT_TRUE(QTest::qWaitForWindowActive(&panel));
    panel.focusFirst();
    QTest::keyClick(first, Qt::Key_Space);
    EXPECT_EQ(panel.reason(), std::optional(FindingCode::Rash));
    QTest::keyClick(first, Qt::Key_Down);
    EXPECT_EQ(panel.reason(), std::optional(FindingCode::Scar));
    EXPECT_EQ(chosen.count(), 2);
    for (int i = 0; i < kFindingCodeCount; ++i)
        EXPECT_EQ(panel.findChildren<QRadioButton*>()[i]->text(), findingName(findingAt(i)));
    EXPECT_TRUE(namelessControls(panel).isEmpty()) << namelessControls(panel).join('\n').toStdString();
    EXPECT_TRUE(layoutFaults(panel).isEmpty()) << layoutFaults(panel).join('\n').toStdString();
}

TEST(RefusalPanelTest, ClearedNothingIsChosenAndAnythingCanBe)
{
    RefusalPanel panel;
    panel.show();
    // On the button's own circle: how far its words reach depends on the style.
    const auto click = [&panel](const char* name) {
        auto* button = panel.findChild<QRadioButton*>(QLatin1StringView(name));
        QTest::mouseClick(button, Qt::LeftButton, {}, QPoint(8, button->height() / 2));
    };
    click("reason.cast");
    ASSERT_EQ(panel.reason(), std::optional(FindingCode::Cast));
    panel.clear();
    EXPECT_EQ(panel.reason(), std::nullopt);
    click("reason.fistula");
    EXPECT_EQ(panel.reason(), std::optional(FindingCode::Fistula));
}

}  // namespace fb::test::refusal_panel_test
