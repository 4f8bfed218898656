#include "app/demonstrate/site_row.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QTest>
#include <QToolButton>

#include "tests/support/layout_audit.h"
#include "tests/support/lecture_sample.h"

namespace fb::test::site_row_test {

struct Row {
    Row()
    {
        row.setScheme(schemeOf(PaletteKind::Light));
        QObject::connect(&sample.presenter, &LecturePresenter::changed, &row, &SiteRow::showState);
        row.showState();
        row.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&row));
    }
    [[nodiscard]] QComboBox* box(const char* name) { return row.findChild<QComboBox*>(QLatin1String(name)); }

    LectureSample sample;
    SiteRow row{sample.presenter};
};

TEST(SiteRowTest, ASiteIsChosenByKey)
{
    Row shown;
    QComboBox* site = shown.box("lectureSite");
    EXPECT_EQ(site->currentIndex(), 0);
    QTest::keyClick(site, Qt::Key_Down);
    EXPECT_EQ(shown.sample.presenter.site(), Site::VastusLateralis);
    QTest::keyClick(site, Qt::Key_End);
    EXPECT_EQ(shown.sample.presenter.site(), Site::Ventrogluteal);
    EXPECT_EQ(site->count(), static_cast<int>(kSites.size()));
}

TEST(SiteRowTest, ASideIsChosenAndShown)
{
    Row shown;
    QComboBox* side = shown.box("lectureSide");
    QTest::keyClick(side, Qt::Key_Down);
    EXPECT_EQ(shown.sample.state().side, Side::Left);
    shown.sample.presenter.setSide(Side::Right);
    EXPECT_EQ(side->currentIndex(), 0);
}

TEST(SiteRowTest, ALayerIsTakenOffWithAllThatBelongsToIt)
{
    Row shown;
    auto* skin = shown.row.findChild<QToolButton*>(QStringLiteral("lecturePeelSkin"));
    ASSERT_TRUE(skin->isChecked());
    QTest::mouseClick(skin, Qt::LeftButton);
    for (const Layer layer : layersOf(Peel::Skin))
        EXPECT_FALSE(shown.sample.state().layers.contains(layer));
    EXPECT_TRUE(shown.sample.state().layers.contains(Layer::Muscle));
    EXPECT_FALSE(skin->isChecked());
    QTest::keyClick(skin, Qt::Key_Space);
    EXPECT_TRUE(shown.sample.state().layers.contains(Layer::Skin));
}

TEST(SiteRowTest, EveryControlHasAName)
{
    Row shown;
    EXPECT_EQ(namelessControls(shown.row).join('\n').toStdString(), std::string());
}

}  // namespace fb::test::site_row_test
