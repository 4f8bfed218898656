#include "tests/support/screenshots_by_hand.h"

#include <QApplication>

#include "tests/support/hand_learner.h"
#include "tests/support/screenshots_shot.h"

namespace fb::screenshots {

namespace {

Preferences byHand(Convention convention)
{
    Preferences preferences = plain();
    preferences.byHand = true;
    preferences.mix = {SiteSet::only(siteOf(convention)), false};
    preferences.own.choose(convention);
    return preferences;
}

void shootHip(const QString& folder, const char* suffix, const Preferences& preferences, QSize size)
{
    const auto named = [&](const char* name) { return QByteArray("hand-hip-") + name + suffix; };
    Shot shot(folder, preferences, size);
    test::HandLearner learner(shot.practice());
    shot.wait();
    learner.press(Landmark::AnteriorSuperiorIliacSpine);
    shot.save(named("feeling"));
    learner.plant();
    shot.save(named("flags"));
    learner.hand().goTo(ByHandStage::Building);
    learner.build(2);
    shot.save(named("laying"));
    learner.build();
    constexpr QPointF kLow{3.6, 0.0};  // to the foot: the head lies to the viewer's left on a right hip
    learner.set(Handle::Palm, learner.state().target->side == Side::Right ? kLow : -kLow);
    learner.hand().goTo(ByHandStage::Marking);
    shot.save(named("marking"));
    learner.grade();
    shot.save(named("graded"));
}

void shootNewRunByHand(const QString& folder)
{
    Shot shot(folder, byHand(Convention::VentroglutealHand));
    QTest::mouseClick(shot.find<QWidget>("newRun"), Qt::LeftButton);
    shot.save("hand-new-run", *shot.find<QWidget>("runDialog"));
}

void shootWatching(const QString& folder)
{
    Shot shot(folder, byHand(Convention::VentroglutealHand));
    test::HandLearner learner(shot.practice());
    shot.wait();
    learner.hand().watch();
    learner.hand().showStep(4);
    shot.save("hand-watching");
}

void shootOthers(const QString& folder)
{
    {
        Shot thigh(folder, byHand(Convention::VastusThirds));
        test::HandLearner learner(thigh.practice());
        thigh.wait();
        learner.plant();
        learner.build();
        thigh.save("hand-thigh-grid");
        learner.grade();
        thigh.save("hand-thigh-graded");
    }
    {
        Shot arm(folder, byHand(Convention::DeltoidFingers));
        test::HandLearner learner(arm.practice());
        arm.wait();
        learner.plant();
        learner.build(4);
        arm.save("hand-deltoid-fingers");
        learner.build();
        learner.grade();
        arm.save("hand-deltoid-graded");
    }
    Shot medians(folder, byHand(Convention::VentroglutealMedians));
    test::HandLearner learner(medians.practice());
    medians.wait();
    learner.plant();
    learner.build();
    medians.save("hand-medians");
}

void shootRunByHand(const QString& folder)
{
    Preferences preferences = byHand(Convention::VentroglutealHand);
    preferences.runLength = 4;
    Shot shot(folder, preferences);
    for (int i = 0; i < preferences.runLength; ++i) {
        test::HandLearner learner(shot.practice());
        learner.plant(i == 0 ? 2 : 9);
        learner.build();
        if (i % 2 == 1)
            learner.set(Handle::IndexTip, {0.0, 5.0});
        learner.grade();
        shot.practice().next();
    }
    shot.save("hand-summary");
}

}  // namespace

void shootByHand(const QString& folder)
{
    shootHip(folder, "", byHand(Convention::VentroglutealHand), kDesk);
    shootNewRunByHand(folder);
    shootWatching(folder);
    shootOthers(folder);
    shootRunByHand(folder);
}

void shootByHandLooks(const QString& folder)
{
    const Preferences hip = byHand(Convention::VentroglutealHand);
    Preferences look = hip;
    look.palette = PaletteKind::Dark;
    shootHip(folder, "-dark", look, kDesk);
    look.palette = PaletteKind::Light;
    look.textPercent = 150;
    shootHip(folder, "-150", look, kDesk);
    look.textPercent = 200;
    constexpr QSize kLargeDesk{3840, 2160};
    shootHip(folder, "-2160", look, kLargeDesk);
    QApplication::setLayoutDirection(Qt::RightToLeft);
    shootHip(folder, "-rtl", hip, kDesk);
    QApplication::setLayoutDirection(Qt::LeftToRight);
}

}  // namespace fb::screenshots
