#include "app/profile/measure_dialog.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QPushButton>
#include <QRadioButton>
#include <QScreen>
#include <QTest>

#include "app/words/fault_words.h"
#include "core/hand/free_hand.h"
#include "core/hand/hand_pose.h"
#include "tests/support/fakes.h"
#include "tests/support/layout_audit.h"

namespace fb::test::measure_dialog_tests {

namespace measure_dialog_test {

using Step = MeasureDialog::Step;

struct Shown {
    explicit Shown(const std::optional<PixelsPerMm>& scale = std::nullopt)
    {
        learner.load(std::nullopt);
        if (scale)
            learner.useScale(key(), *scale);
        dialog = std::make_unique<MeasureDialog>(learner, schemeOf(PaletteKind::Light), nullptr);
        dialog->show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(dialog.get()));
    }

    static QString key() { return screenKey(*QGuiApplication::primaryScreen()); }

    template <class Widget = QPushButton>
    [[nodiscard]] Widget* find(const char* name) const
    {
        return dialog->findChild<Widget*>(QLatin1String(name));
    }
    [[nodiscard]] MeasureBoard& board() const { return *find<MeasureBoard>("measureBoard"); }
    void click(const char* name) const { QTest::mouseClick(find(name), Qt::LeftButton); }
    // By keys, as far as need be; ten at a time, then one.
    void setByKeys(int pixels) const
    {
        for (int i = 0; i < 2000 && board().value() != pixels; ++i) {
            const int off = pixels - board().value();
            QTest::keyClick(&board(), off > 0 ? Qt::Key_Right : Qt::Key_Left,
                            std::abs(off) >= 10 ? Qt::ShiftModifier : Qt::NoModifier);
        }
        EXPECT_EQ(board().value(), pixels);
    }

    MemoryProfiles keeper;
    Learner learner{keeper};
    std::unique_ptr<MeasureDialog> dialog;
};

}  // namespace measure_dialog_test

using namespace measure_dialog_test;

TEST(MeasureDialogTest, CardHandAndFingerAreMeasuredByKeysAlone)
{
    Shown shown;
    EXPECT_EQ(shown.dialog->step(), Step::Scale);
    EXPECT_EQ(shown.board().laid(), Laid::Card);
    EXPECT_TRUE(shown.board().hasFocus());
    shown.setByKeys(257);
    QTest::keyClick(&shown.board(), Qt::Key_Return);
    ASSERT_EQ(shown.dialog->step(), Step::Hand);
    EXPECT_DOUBLE_EQ(shown.keeper.stored.scales.at(Shown::key()).value(), 257 / 85.60);
    shown.setByKeys(561);
    QTest::keyClick(&shown.board(), Qt::Key_Return);
    ASSERT_EQ(shown.dialog->step(), Step::Finger);
    shown.setByKeys(47);
    QTest::keyClick(&shown.board(), Qt::Key_Return);
    EXPECT_EQ(shown.dialog->result(), QDialog::Accepted);
    EXPECT_EQ(shown.dialog->handLength(), std::optional(Cm{18.7}));
    EXPECT_EQ(shown.dialog->fingerWidth(), std::optional(Cm{1.57}));
}

TEST(MeasureDialogTest, ARulerServesAsWell)
{
    Shown shown;
    QTest::mouseClick(shown.find<QRadioButton>("byRuler"), Qt::LeftButton);
    EXPECT_EQ(shown.board().laid(), Laid::Ruler);
    shown.setByKeys(410);
    shown.click("measureTake");
    EXPECT_EQ(shown.learner.scaleOf(Shown::key()), std::optional(PixelsPerMm{4.1}));
    EXPECT_FALSE(shown.find<QRadioButton>("byRuler")->isVisible());
}

TEST(MeasureDialogTest, ADensityNoScreenHasIsRefusedInOneSentence)
{
    Shown shown;
    auto* notice = shown.find<QLabel>("measureNotice");
    EXPECT_FALSE(notice->isVisible());
    for (const char* by : {"byCard", "byRuler"}) {
        QTest::mouseClick(shown.find<QRadioButton>(by), Qt::LeftButton);
        shown.setByKeys(100);
        shown.click("measureTake");
        EXPECT_TRUE(notice->isVisible()) << by;
        EXPECT_EQ(notice->text().count(QLatin1Char('.')), 1) << notice->text().toStdString();
        EXPECT_EQ(shown.dialog->step(), Step::Scale) << by;
        EXPECT_TRUE(shown.keeper.stored.scales.empty()) << by;
        EXPECT_EQ(shown.board().value(), 100) << "it stays as it was set";
    }
    shown.setByKeys(400);
    shown.click("measureTake");
    EXPECT_FALSE(notice->isVisible());
    EXPECT_EQ(shown.dialog->step(), Step::Hand);
}

TEST(MeasureDialogTest, AScreenThatIsKnownIsNotAskedAgainUnlessWanted)
{
    Shown shown(PixelsPerMm{3.0});
    EXPECT_EQ(shown.dialog->step(), Step::Hand);
    EXPECT_NEAR(shown.board().length().value(), 18.2, 0.04);
    shown.click("measureBack");
    EXPECT_EQ(shown.dialog->step(), Step::Scale);
    EXPECT_NEAR(shown.board().value(), 257, 1) << "as it was found last";
    shown.setByKeys(300);
    shown.click("measureTake");
    EXPECT_DOUBLE_EQ(shown.learner.scaleOf(Shown::key())->value(), 300 / 85.60);
}

TEST(MeasureDialogTest, AHandOrFingerOutsideItsRangeIsToldAndNotTaken)
{
    Shown shown(PixelsPerMm{3.0});
    auto* notice = shown.find<QLabel>("measureNotice");
    shown.setByKeys(3 * 120);
    shown.click("measureTake");
    EXPECT_EQ(shown.dialog->step(), Step::Hand);
    EXPECT_TRUE(notice->isVisible());
    EXPECT_EQ(notice->text(), sentenceOf(checkedHandLength(Cm{12.0}).error()));
    shown.setByKeys(3 * 130);
    shown.click("measureTake");
    EXPECT_EQ(shown.dialog->step(), Step::Finger);
    EXPECT_FALSE(notice->isVisible());
    shown.setByKeys(3 * 26);
    shown.click("measureTake");
    EXPECT_EQ(shown.dialog->step(), Step::Finger);
    EXPECT_TRUE(notice->isVisible());
    EXPECT_EQ(notice->text(), sentenceOf(checkedFingerWidth(Cm{2.6}).error()));
}

TEST(MeasureDialogTest, AStepCanBeLeftOutAndGoneBackTo)
{
    Shown shown(PixelsPerMm{3.0});
    shown.click("measureTake");
    EXPECT_TRUE(shown.dialog->handLength());
    shown.click("measureBack");
    EXPECT_EQ(shown.dialog->step(), Step::Hand);
    shown.click("measureSkip");
    EXPECT_FALSE(shown.dialog->handLength());
    shown.click("measureTake");
    EXPECT_EQ(shown.dialog->result(), QDialog::Accepted);
    EXPECT_TRUE(shown.dialog->fingerWidth());
}

TEST(MeasureDialogTest, EscapeMeasuresNothing)
{
    Shown shown(PixelsPerMm{3.0});
    QTest::keyClick(&shown.board(), Qt::Key_Escape);
    EXPECT_EQ(shown.dialog->result(), QDialog::Rejected);
    EXPECT_FALSE(shown.dialog->isVisible());
}

TEST(MeasureDialogTest, NothingIsCutOffOrNamelessInAnyStep)
{
    for (const bool rightToLeft : {false, true}) {
        QApplication::setLayoutDirection(rightToLeft ? Qt::RightToLeft : Qt::LeftToRight);
        Shown shown;
        shown.setByKeys(60);
        shown.click("measureTake");
        for (const Step step : {Step::Scale, Step::Hand, Step::Finger}) {
            EXPECT_EQ(shown.dialog->step(), step);
            QTest::qWait(20);
            const QStringList faults = layoutFaults(*shown.dialog) + namelessControls(*shown.dialog);
            EXPECT_TRUE(faults.isEmpty()) << faults.join('\n').toStdString();
            EXPECT_GE(shown.board().height(), 240);
            if (step == Step::Scale)
                shown.setByKeys(150);
            shown.click("measureTake");
        }
    }
    QApplication::setLayoutDirection(Qt::LeftToRight);
}

}  // namespace fb::test::measure_dialog_tests
