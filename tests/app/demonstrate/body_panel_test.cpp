#include "app/demonstrate/body_panel.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QPushButton>
#include <QSlider>
#include <QTest>
#include <QToolButton>

#include "tests/support/layout_audit.h"
#include "tests/support/lecture_sample.h"

namespace fb::test::body_panel_test {

struct Panel {
    explicit Panel(Site site = Site::Deltoid) : sample(site)
    {
        sample.presenter.setCalm(true);
        panel.setScheme(schemeOf(PaletteKind::Light));
        QObject::connect(&sample.presenter, &LecturePresenter::changed, &panel, &BodyPanel::showState);
        panel.showState();
        panel.resize(360, panel.sizeHint().height());
        panel.show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&panel));
    }
    template <class Widget>
    [[nodiscard]] Widget* find(const char* name)
    {
        return panel.findChild<Widget*>(QLatin1String(name));
    }
    [[nodiscard]] const LectureState& state() const { return sample.state(); }

    LectureSample sample;
    BodyPanel panel{sample.presenter};
};

TEST(BodyPanelTest, AHeldSliderMovesTheBodyAndLetsItRest)
{
    Panel shown;
    auto* weight = shown.find<QSlider>("bodyWeightSlider");
    const double before = shown.state().body.weightKg;
    weight->setSliderDown(true);
    weight->setSliderPosition(weight->value() + 100);
    EXPECT_DOUBLE_EQ(shown.state().body.weightKg, before + 10.0);
    EXPECT_TRUE(shown.state().moving);
    EXPECT_EQ(shown.state().shown->ask.patient, patientOf(shown.state().body, shown.state().side))
        << "every value has its own body";
    weight->setSliderPosition(weight->value() + 50);
    EXPECT_TRUE(shown.state().moving);
    weight->setSliderDown(false);
    EXPECT_FALSE(shown.state().moving);
    EXPECT_DOUBLE_EQ(shown.state().body.weightKg, before + 15.0);
}

TEST(BodyPanelTest, AKeyOnASliderMovesTheBodyAndItRests)
{
    Panel shown;
    const double before = shown.state().body.ageYears;
    QTest::keyClick(shown.find<QSlider>("bodyAgeSlider"), Qt::Key_Right);
    EXPECT_DOUBLE_EQ(shown.state().body.ageYears, before + 1.0);
    EXPECT_TRUE(shown.state().moving);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !shown.state().moving; }, 3000));
}

TEST(BodyPanelTest, TheWeightsEndsFollowTheStature)
{
    Panel shown;
    auto* weight = shown.find<QDoubleSpinBox>("bodyWeightField");
    auto* stature = shown.find<QDoubleSpinBox>("bodyStatureField");
    for (const double cm : {statureRange().least, 150.0, 180.0, statureRange().most}) {
        stature->setValue(cm);
        EXPECT_DOUBLE_EQ(shown.state().body.statureCm, cm);
        EXPECT_NEAR(weight->minimum(), weightRange(cm).least, 0.51);
        EXPECT_NEAR(weight->maximum(), weightRange(cm).most, 0.51);
        EXPECT_EQ(shown.state().body, held(shown.state().body));
    }
}

TEST(BodyPanelTest, ThreeBuildsAndTwoSexes)
{
    Panel shown;
    constexpr std::array kNames{"bodyLean", "bodyAverage", "bodyHeavy"};
    for (const Stoutness stoutness : kStoutnesses) {
        const BodyValues wanted = withStoutness(shown.state().body, stoutness);
        QTest::mouseClick(shown.find<QPushButton>(kNames[static_cast<std::size_t>(stoutness)]),
                          Qt::LeftButton);
        EXPECT_EQ(shown.state().body, wanted);
    }
    QTest::mouseClick(shown.find<QToolButton>("bodyMale"), Qt::LeftButton);
    EXPECT_EQ(shown.state().body.sex, Sex::Male);
    EXPECT_TRUE(shown.find<QToolButton>("bodyMale")->isChecked());
    EXPECT_FALSE(shown.find<QToolButton>("bodyFemale")->isChecked());
    QTest::mouseClick(shown.find<QToolButton>("bodyMale"), Qt::LeftButton);
    EXPECT_TRUE(shown.find<QToolButton>("bodyMale")->isChecked()) << "one of them always is";
}

TEST(BodyPanelTest, ConventionViewAndSkinTone)
{
    Panel shown(Site::Ventrogluteal);
    auto* convention = shown.find<QComboBox>("lectureConvention");
    EXPECT_EQ(convention->count(), static_cast<int>(conventionsOf(Site::Ventrogluteal).size()));
    QTest::keyClick(convention, Qt::Key_End);
    EXPECT_EQ(shown.state().convention, conventionsOf(Site::Ventrogluteal).back());
    auto* view = shown.find<QComboBox>("lectureView");
    EXPECT_EQ(view->count(), 2) << "one to look at only as well";
    QTest::keyClick(view, Qt::Key_End);
    EXPECT_EQ(shown.state().view, View::HipBehind);
    auto* tone = shown.find<QComboBox>("lectureTone");
    QTest::keyClick(tone, Qt::Key_End);
    EXPECT_EQ(shown.state().skinTone, kSkinRampCount - 1);
    shown.sample.presenter.openSite(Site::VastusLateralis);
    EXPECT_EQ(convention->count(), static_cast<int>(conventionsOf(Site::VastusLateralis).size()));
    EXPECT_EQ(convention->currentData().toInt(), static_cast<int>(shown.state().convention));
}

TEST(BodyPanelTest, ControlsFollowABodyThatGlides)
{
    Panel shown;
    shown.sample.presenter.setCalm(false);
    auto* weight = shown.find<QSlider>("bodyWeightSlider");
    const int before = weight->value();
    shown.sample.presenter.setStoutness(Stoutness::Heavy);
    shown.sample.clock.now += Ms(LecturePresenter::kGlideMs / 2);
    EXPECT_TRUE(QTest::qWaitFor([&] { return weight->value() > before; }, 3000));
    EXPECT_TRUE(shown.state().moving);
    shown.sample.clock.now += Ms(LecturePresenter::kGlideMs);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !shown.state().moving; }, 3000));
    EXPECT_NEAR(weight->value(), shown.state().body.weightKg * 10.0, 1.0);
}

TEST(BodyPanelTest, EveryControlHasAName)
{
    Panel shown;
    EXPECT_EQ(namelessControls(shown.panel).join('\n').toStdString(), std::string());
}

}  // namespace fb::test::body_panel_test
