#include "app/canvas/side_picker.h"

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QSignalSpy>
#include <QTest>

namespace side_picker_test {

namespace {

using namespace fb;

class SidePickerTest : public ::testing::Test {
protected:
    SidePickerTest()
    {
        QObject::connect(&picker, &SidePicker::picked, &picker, [this](Side side) { picks.push_back(side); });
        picker.resize(picker.sizeHint());
        picker.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&picker));
        picker.setFocus(Qt::TabFocusReason);
    }
    QAbstractButton* figure(const char* name)
    {
        return picker.findChild<QAbstractButton*>(QLatin1String(name));
    }

    SidePicker picker;
    std::vector<Side> picks;
};

TEST_F(SidePickerTest, TheArmOnTheViewersLeftIsThePatientsRight)
{
    for (const Side first : kSides) {
        picker.setFirst(first);
        for (const char* name : {"figureFirst", "figureSecond"}) {
            picks.clear();
            const bool viewersLeft = figure(name)->accessibleName().contains("left");
            QTest::mouseClick(figure(name), Qt::LeftButton);
            ASSERT_EQ(picks.size(), 1U);
            EXPECT_EQ(picks[0], viewersLeft ? Side::Right : Side::Left);
        }
    }
}

TEST_F(SidePickerTest, TheFirstFigureShowsTheSideItWasTold)
{
    for (const Side first : kSides) {
        picks.clear();
        picker.setFirst(first);
        QTest::mouseClick(figure("figureFirst"), Qt::LeftButton);
        QTest::mouseClick(figure("figureSecond"), Qt::LeftButton);
        EXPECT_EQ(picks, (std::vector<Side>{first, first == Side::Left ? Side::Right : Side::Left}));
    }
}

TEST_F(SidePickerTest, HipAndThighAreAskedOnAFigureWithHipAndThighMarked)
{
    for (const Site site : kSites) {
        picker.setSite(site);
        EXPECT_EQ(picker.site(), site);
        const bool arm = site == Site::Deltoid;
        for (const char* name : {"figureFirst", "figureSecond"}) {
            EXPECT_EQ(figure(name)->accessibleName().contains("arm"), arm);
            EXPECT_EQ(figure(name)->accessibleName().contains("thigh"), !arm);
            picks.clear();
            const bool viewersLeft = figure(name)->accessibleName().contains("left");
            QTest::mouseClick(figure(name), Qt::LeftButton);
            EXPECT_EQ(picks, std::vector<Side>{viewersLeft ? Side::Right : Side::Left});
        }
    }
}

TEST_F(SidePickerTest, EachFigureIsDrawnAndShowsTheSideThatIsMarked)
{
    for (const Site site : {Site::Deltoid, Site::Ventrogluteal}) {
        picker.setSite(site);
        const QImage first = figure("figureFirst")->grab().toImage();
        const QImage second = figure("figureSecond")->grab().toImage();
        EXPECT_NE(first, second);
    }
    picker.setSite(Site::Deltoid);
    const QImage arm = figure("figureSecond")->grab().toImage();
    picker.setSite(Site::VastusLateralis);
    EXPECT_NE(figure("figureSecond")->grab().toImage(), arm);
}

TEST_F(SidePickerTest, TheFirstFigureStandsOnTheLeftInEveryLanguage)
{
    for (const Qt::LayoutDirection direction : {Qt::LeftToRight, Qt::RightToLeft}) {
        picker.setLayoutDirection(direction);
        EXPECT_LT(figure("figureFirst")->x(), figure("figureSecond")->x());
    }
}

TEST_F(SidePickerTest, ArrowsChooseAndEnterPicks)
{
    picker.setFirst(Side::Right);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Right);
    EXPECT_TRUE(figure("figureSecond")->hasFocus());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Left);
    EXPECT_TRUE(figure("figureFirst")->hasFocus());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    EXPECT_EQ(picks, (std::vector<Side>{Side::Left, Side::Right}));
}

TEST_F(SidePickerTest, NamesSpeakOfTheViewersSideAndNeverOfThePatients)
{
    for (const char* name : {"figureFirst", "figureSecond"}) {
        EXPECT_TRUE(figure(name)->accessibleName().startsWith("Figure with the arm on your"));
        EXPECT_FALSE(figure(name)->accessibleName().contains("patient", Qt::CaseInsensitive));
        EXPECT_TRUE(figure(name)->text().isEmpty());
        EXPECT_TRUE(figure(name)->toolTip().isEmpty());
    }
    EXPECT_NE(figure("figureFirst")->accessibleName(), figure("figureSecond")->accessibleName());
}

TEST_F(SidePickerTest, TheTwoFiguresDifferInTheMarkedArmOnly)
{
    for (const PaletteKind kind : kPaletteKinds) {
        picker.setScheme(schemeOf(kind));
        for (const char* name : {"figureFirst", "figureSecond"}) {
            figure(name)->clearFocus();
            figure(name)->setAttribute(Qt::WA_UnderMouse, false);
        }
        const QImage a = figure("figureFirst")->grab().toImage();
        const QImage b = figure("figureSecond")->grab().toImage();
        ASSERT_EQ(a.size(), b.size());
        int sides = 0;
        int middle = 0;
        for (int y = 6; y < a.height() - 6; ++y)
            for (int x = 6; x < a.width() - 6; ++x)
                (x > 0.4 * a.width() && x < 0.6 * a.width() ? middle : sides) +=
                    a.pixel(x, y) != b.pixel(x, y) ? 1 : 0;
        EXPECT_GT(sides, a.width() * a.height() / 50);
        EXPECT_EQ(middle, 0);
    }
}

}  // namespace

}  // namespace side_picker_test
