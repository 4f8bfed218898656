#include "app/demonstrate/compare_panel.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QRadioButton>
#include <QTest>

#include "app/demonstrate/difference_text.h"
#include "app/words/lecture_words.h"
#include "tests/support/layout_audit.h"
#include "tests/support/lecture_sample.h"

namespace fb::test::compare_panel_test {

struct Panel {
    Panel()
    {
        sample.presenter.setCalm(true);
        QObject::connect(&sample.presenter, &LecturePresenter::changed, &panel, &ComparePanel::showState);
        panel.showState();
        panel.resize(360, 600);
        panel.show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&panel));
    }
    template <class Widget = QAbstractButton>
    [[nodiscard]] Widget* find(const char* name)
    {
        return panel.findChild<Widget*>(QLatin1String(name));
    }
    void click(const char* name)
    {
        auto* button = find(name);
        QTest::mouseClick(button, Qt::LeftButton, {}, QPoint(12, button->height() / 2));
    }
    [[nodiscard]] QString text(const char* name) { return find<QLabel>(name)->text(); }
    [[nodiscard]] const LectureState& state() const { return sample.state(); }

    LectureSample sample;
    ComparePanel panel{sample.presenter};
};

TEST(ComparePanelTest, PinnedBodiesAreComparedOnlyOnceOneIsPinned)
{
    Panel shown;
    EXPECT_FALSE(shown.find("compareBeside")->isEnabled());
    EXPECT_FALSE(shown.find("compareOverlay")->isEnabled());
    EXPECT_FALSE(shown.find("swapPinned")->isEnabled());
    shown.click("pinBody");
    EXPECT_EQ(shown.state().compare, Compare::SideBySide);
    EXPECT_TRUE(shown.find("compareBeside")->isEnabled());
    EXPECT_TRUE(static_cast<QRadioButton*>(shown.find("compareBeside"))->isChecked());
    EXPECT_EQ(shown.text("pinnedBody"), bodyText(*shown.state().pinned));
    shown.click("compareOverlay");
    EXPECT_EQ(shown.state().compare, Compare::Overlay);
    shown.click("unpinBody");
    EXPECT_FALSE(shown.state().pinned.has_value());
    EXPECT_TRUE(static_cast<QRadioButton*>(shown.find("compareNothing"))->isChecked());
}

TEST(ComparePanelTest, SwapExchangesTheTwoBodies)
{
    Panel shown;
    const BodyValues first = shown.state().body;
    shown.click("pinBody");
    shown.sample.presenter.setStoutness(Stoutness::Heavy);
    const BodyValues second = shown.state().body;
    shown.click("swapPinned");
    EXPECT_EQ(shown.state().body, first);
    EXPECT_EQ(shown.state().pinned, second);
    EXPECT_EQ(shown.text("shownBody"), bodyText(first));
    EXPECT_EQ(shown.text("pinnedBody"), bodyText(second));
}

TEST(ComparePanelTest, AnotherConventionIsChosenFromTheOthers)
{
    Panel shown;
    auto* other = shown.find<QComboBox>("otherConvention");
    EXPECT_EQ(other->count(), static_cast<int>(conventionsOf(Site::Deltoid).size()) - 1);
    EXPECT_EQ(other->findData(static_cast<int>(shown.state().convention)), -1);
    shown.click("compareConvention");
    EXPECT_EQ(shown.state().compare, Compare::OtherConvention);
    QTest::keyClick(other, Qt::Key_End);
    ASSERT_NE(shown.state().beside, nullptr);
    EXPECT_EQ(shown.state().beside->ask.convention, Convention::DeltoidHalfway);
    EXPECT_EQ(other->currentData().toInt(), static_cast<int>(Convention::DeltoidHalfway));
}

TEST(ComparePanelTest, TellsHowFarTheIdealPointsAreApart)
{
    Panel shown;
    EXPECT_TRUE(shown.find<QLabel>("idealsApart")->isHidden());
    shown.click("compareConvention");
    ASSERT_TRUE(shown.state().difference.has_value());
    EXPECT_FALSE(shown.find<QLabel>("idealsApart")->isHidden());
    EXPECT_EQ(shown.text("idealsApart"), apartText(*shown.state().difference));
    EXPECT_EQ(shown.text("idealsWhere"), whereText(*shown.state().difference, Compare::OtherConvention));
    EXPECT_FALSE(shown.text("idealsWhere").isEmpty());
    shown.click("compareNothing");
    EXPECT_TRUE(shown.find<QLabel>("idealsApart")->isHidden());
}

TEST(ComparePanelTest, EveryControlHasAName)
{
    Panel shown;
    EXPECT_EQ(namelessControls(shown.panel).join('\n').toStdString(), std::string());
}

}  // namespace fb::test::compare_panel_test
