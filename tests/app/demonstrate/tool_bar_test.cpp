#include "app/demonstrate/tool_bar.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QTest>
#include <QToolButton>

#include "app/look/style.h"
#include "tests/support/layout_audit.h"
#include "tests/support/lecture_sample.h"

namespace fb::test::tool_bar_test {

struct Bar {
    Bar()
    {
        applyStyle(*qApp, schemeOf(PaletteKind::Light), 1.0);
        bar.setScheme(schemeOf(PaletteKind::Light));
        QObject::connect(&sample.presenter, &LecturePresenter::changed, &bar, &ToolBar::showState);
        bar.showState();
        bar.resize(1200, bar.minimumSizeHint().height());
        bar.show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&bar));
    }
    [[nodiscard]] QToolButton* button(const char* name)
    {
        return bar.findChild<QToolButton*>(QLatin1String(name));
    }
    void click(const char* name) { QTest::mouseClick(button(name), Qt::LeftButton); }
    [[nodiscard]] const LectureState& state() const { return sample.state(); }

    LectureSample sample;
    ToolBar bar{sample.presenter};
};

TEST(ToolBarTest, EachToolIsTakenByAClickAndStaysPressed)
{
    Bar shown;
    constexpr std::array kNames{"toolPoint", "toolPen", "toolEraser", "toolMagnifier", "toolAsk"};
    for (int i = 0; i < kLectureToolCount; ++i) {
        const char* name = kNames[static_cast<std::size_t>(i)];
        shown.click(name);
        EXPECT_EQ(shown.state().tool, static_cast<LectureTool>(i));
        shown.click(name);
        EXPECT_TRUE(shown.button(name)->isChecked()) << name;
        int pressed = 0;
        for (const char* each : kNames)
            pressed += shown.button(each)->isChecked() ? 1 : 0;
        EXPECT_EQ(pressed, 1);
    }
}

TEST(ToolBarTest, WhatBelongsToAToolIsThereWithIt)
{
    Bar shown;
    EXPECT_TRUE(shown.button("toolSpotlight")->isVisible());
    EXPECT_FALSE(shown.button("penFirst")->isVisible());
    shown.click("toolPen");
    EXPECT_FALSE(shown.button("toolSpotlight")->isVisible());
    EXPECT_TRUE(shown.button("penFirst")->isVisible());
    EXPECT_TRUE(shown.button("strokesStay")->isVisible());
    shown.click("toolEraser");
    EXPECT_FALSE(shown.button("penDashed")->isVisible());
    EXPECT_TRUE(shown.button("wipeStrokes")->isVisible());
}

TEST(ToolBarTest, TwoInksWithTwoLines)
{
    Bar shown;
    shown.click("toolPen");
    shown.click("penSecond");
    EXPECT_EQ(shown.state().ink, PenInk::Second);
    EXPECT_EQ(shown.state().line, PenLine::Plain);
    shown.click("penDashed");
    EXPECT_EQ(shown.state().ink, PenInk::Second);
    EXPECT_EQ(shown.state().line, PenLine::Dashed);
    shown.click("penFirst");
    EXPECT_EQ(shown.state().ink, PenInk::First);
    EXPECT_EQ(shown.state().line, PenLine::Dashed) << "the line stays";
}

TEST(ToolBarTest, StrokesAreTakenBackWipedAndLetGo)
{
    Bar shown;
    shown.click("toolPen");
    EXPECT_FALSE(shown.button("undoStroke")->isEnabled());
    const QPointF at = shown.sample.ideal();
    for (int i = 0; i < 3; ++i)
        shown.sample.drawLine(at + QPointF(0, i), at + QPointF(2, i));
    ASSERT_EQ(shown.state().strokes.size(), 3);
    shown.click("undoStroke");
    EXPECT_EQ(shown.state().strokes.size(), 2);
    EXPECT_TRUE(shown.state().strokesStay);
    shown.click("strokesStay");
    EXPECT_FALSE(shown.state().strokesStay);
    EXPECT_FALSE(shown.button("strokesStay")->isChecked());
    shown.click("wipeStrokes");
    EXPECT_TRUE(shown.state().strokes.isEmpty());
    EXPECT_FALSE(shown.button("wipeStrokes")->isEnabled());
}

TEST(ToolBarTest, TheSpotlightGoesOnAndOff)
{
    Bar shown;
    shown.click("toolSpotlight");
    EXPECT_TRUE(shown.state().spotlight);
    QTest::keyClick(shown.button("toolSpotlight"), Qt::Key_Space);
    EXPECT_FALSE(shown.state().spotlight);
}

TEST(ToolBarTest, PicturesAloneWhereWordsDoNotFit)
{
    Bar shown;
    shown.click("toolPen");
    EXPECT_EQ(shown.button("toolPen")->toolButtonStyle(), Qt::ToolButtonTextBesideIcon);
    shown.bar.resize(shown.bar.minimumSizeHint());
    EXPECT_EQ(shown.button("toolPen")->toolButtonStyle(), Qt::ToolButtonIconOnly);
    EXPECT_EQ(shown.button("toolPen")->accessibleName(), QStringLiteral("Pen"));
    EXPECT_EQ(layoutFaults(shown.bar).join('\n').toStdString(), std::string());
    EXPECT_EQ(namelessControls(shown.bar).join('\n').toStdString(), std::string());
}

}  // namespace fb::test::tool_bar_test
