#include "app/practice/plate_bar.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>
#include <QToolButton>

#include "tests/support/layout_audit.h"

namespace fb::test::plate_bar_test {

TEST(PlateBarTest, ButtonsShowTheLayersAndAskForThem)
{
    PlateBar bar;
    bar.setScheme(schemeOf(PaletteKind::Light));
    PracticeState state;
    state.canPeel = true;
    state.layers.remove(Layer::Muscle);
    bar.showState(state);
    bar.show();
    auto* muscle = bar.findChild<QToolButton*>(QStringLiteral("peelMuscle"));
    EXPECT_FALSE(muscle->isChecked());
    EXPECT_TRUE(bar.findChild<QToolButton*>(QStringLiteral("peelSkin"))->isChecked());
    QSignalSpy asked(&bar, &PlateBar::peelToggled);
    QTest::keyClick(muscle, Qt::Key_Space);
    ASSERT_EQ(asked.count(), 1);
    EXPECT_EQ(asked[0][0].value<Peel>(), Peel::Muscle);
    EXPECT_TRUE(asked[0][1].toBool());
    EXPECT_TRUE(namelessControls(bar).isEmpty()) << namelessControls(bar).join('\n').toStdString();
}

TEST(PlateBarTest, WhatIsFoundByHandHasItsOwnButtonsInPlaceOfTheLayers)
{
    PlateBar bar;
    bar.setScheme(schemeOf(PaletteKind::Light));
    PracticeState state;
    bar.showState(state);
    bar.show();
    const auto shown = [&](const char* name) { return bar.findChild<QToolButton*>(name)->isVisible(); };
    EXPECT_TRUE(shown("peelBone"));
    EXPECT_FALSE(shown("undo"));
    state.byHand.emplace();
    bar.showState(state);
    EXPECT_FALSE(shown("peelBone"));
    EXPECT_TRUE(shown("undo"));
    bar.resize(bar.minimumSizeHint());
    EXPECT_EQ(bar.findChild<QToolButton*>("undo")->toolButtonStyle(), Qt::ToolButtonIconOnly)
        << "where words do not fit";
}

TEST(PlateBarTest, ShutLayersCannotBePressed)
{
    PlateBar bar;
    PracticeState state;
    state.canPeel = false;
    bar.showState(state);
    for (const char* name : {"peelSkin", "peelMuscle", "peelNerves", "peelBone"})
        EXPECT_FALSE(bar.findChild<QToolButton*>(QLatin1String(name))->isEnabled());
    EXPECT_TRUE(bar.findChild<QToolButton*>(QStringLiteral("zoomIn"))->isEnabled());
}

TEST(PlateBarTest, WordsGiveWayToIconsWhereTheyDoNotFit)
{
    PlateBar bar;
    bar.setScheme(schemeOf(PaletteKind::Light));
    bar.show();
    auto* skin = bar.findChild<QToolButton*>(QStringLiteral("peelSkin"));
    bar.resize(1400, bar.height());
    EXPECT_EQ(skin->toolButtonStyle(), Qt::ToolButtonTextBesideIcon);
    bar.resize(bar.minimumSizeHint().width(), bar.height());
    QCoreApplication::processEvents();
    EXPECT_EQ(skin->toolButtonStyle(), Qt::ToolButtonIconOnly);
    EXPECT_EQ(skin->accessibleName(), QStringLiteral("Skin"));
    EXPECT_EQ(skin->toolTip(), QStringLiteral("Skin"));
    EXPECT_TRUE(layoutFaults(bar).isEmpty()) << layoutFaults(bar).join('\n').toStdString();
}

}  // namespace fb::test::plate_bar_test
