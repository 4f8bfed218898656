// The body that changes: see lecture_presenter.h.
#include <gtest/gtest.h>

#include <QTest>

#include "app/lecture/lecture_presenter.h"
#include "tests/support/lecture_sample.h"

namespace fb::test::lecture_presenter_body_test {

constexpr BodyValues kHeavy{40.0, Sex::Female, 165.0, 110.0};
constexpr BodyValues kTall{60.0, Sex::Male, 190.0, 80.0};

// Turns the clock and waits for the frame that sees it.
void pass(LectureSample& sample, int ms)
{
    sample.clock.now += Ms{ms};
    const int seen = sample.changes + sample.moves;
    EXPECT_TRUE(QTest::qWaitFor([&] { return sample.changes + sample.moves > seen; }));
}

TEST(LecturePresenterBodyTest, WhileASliderIsHeldValuesAreShownAsTheyComeAndSharpOnceItIsLetGo)
{
    LectureSample sample;
    for (const double kg : {70.0, 80.0, 95.0}) {
        sample.presenter.setBody({40.0, Sex::Female, 165.0, kg});
        EXPECT_TRUE(sample.state().moving);
        EXPECT_EQ(sample.shown().ask.patient.weight(), Kg{kg});
        expectLaws(sample);
    }
    sample.presenter.letGo();
    EXPECT_FALSE(sample.state().moving);
    expectLaws(sample);
    const int changes = sample.changes;
    sample.presenter.letGo();
    EXPECT_EQ(sample.changes, changes) << "nothing was held";
}

TEST(LecturePresenterBodyTest, ItMovesUntilTheLastBodyIsThere)
{
    LectureSample sample;
    sample.bodies.holdsBack = true;
    sample.presenter.setBody({40.0, Sex::Female, 165.0, 80.0});
    sample.presenter.setBody(kHeavy);
    sample.presenter.letGo();
    EXPECT_TRUE(sample.state().moving);
    sample.bodies.answerOne(0);
    EXPECT_EQ(sample.shown().ask.patient.weight(), Kg{80.0}) << "a frame on the way";
    EXPECT_TRUE(sample.state().moving);
    sample.bodies.answerOne(0);
    EXPECT_FALSE(sample.state().moving);
    expectLaws(sample);
}

TEST(LecturePresenterBodyTest, ValuesThatAreNoBodyAreHeld)
{
    LectureSample sample;
    sample.presenter.setBody({1000.0, Sex::Male, 50.0, 900.0});
    sample.presenter.letGo();
    expectLaws(sample);
    EXPECT_EQ(sample.state().body, held({1000.0, Sex::Male, 50.0, 900.0}));
}

TEST(LecturePresenterBodyTest, AGlideComesByEveryBodyBetweenAndEndsExactly)
{
    LectureSample sample;
    const BodyValues from = sample.state().body;
    sample.presenter.glideTo(kTall);
    EXPECT_TRUE(sample.presenter.isGliding());
    EXPECT_TRUE(sample.state().moving);
    EXPECT_EQ(sample.state().body, from);
    double last = from.statureCm;
    for (int frame = 1; frame < 7; ++frame) {
        pass(sample, LecturePresenter::kGlideMs / 7);
        EXPECT_GT(sample.state().body.statureCm, last);
        EXPECT_LT(sample.state().body.statureCm, kTall.statureCm);
        EXPECT_EQ(sample.state().body.sex, Sex::Male);
        last = sample.state().body.statureCm;
        expectLaws(sample);
    }
    pass(sample, LecturePresenter::kGlideMs);
    EXPECT_EQ(sample.state().body, kTall);
    EXPECT_FALSE(sample.presenter.isGliding());
    EXPECT_FALSE(sample.state().moving);
    expectLaws(sample);
}

TEST(LecturePresenterBodyTest, AGlideSetsOutAndArrivesAtRest)
{
    LectureSample sample;
    sample.presenter.glideTo(kHeavy);
    const double way = kHeavy.weightKg - sample.state().body.weightKg;
    pass(sample, LecturePresenter::kGlideMs / 10);
    EXPECT_GT(sample.state().body.weightKg, kHeavy.weightKg - way);
    EXPECT_LT(sample.state().body.weightKg, kHeavy.weightKg - way * 0.95) << "slower than evenly";
    pass(sample, LecturePresenter::kGlideMs * 4 / 10);
    EXPECT_NEAR(sample.state().body.weightKg, kHeavy.weightKg - way / 2.0, 0.01);
    pass(sample, LecturePresenter::kGlideMs * 4 / 10);
    EXPECT_GT(sample.state().body.weightKg, kHeavy.weightKg - way * 0.05);
}

TEST(LecturePresenterBodyTest, BonesStandStillWhileWeightAloneGlides)
{
    LectureSample sample(Site::Ventrogluteal);
    const auto bones = sample.shown().target->landmarks;
    sample.presenter.glideTo(kHeavy);
    for (int frame = 0; frame < 3; ++frame) {
        pass(sample, LecturePresenter::kGlideMs / 3 + 1);
        for (const char* name : {"greater_trochanter", "asis", "iliac_tubercle"}) {
            EXPECT_NEAR(sample.shown().target->landmarks.at(name).x, bones.at(name).x, 1e-6) << name;
            EXPECT_NEAR(sample.shown().target->landmarks.at(name).y, bones.at(name).y, 1e-6) << name;
        }
    }
    EXPECT_EQ(sample.shown().ask.patient.weight(), Kg{kHeavy.weightKg});
}

TEST(LecturePresenterBodyTest, ASliderTakesOverFromAGlide)
{
    LectureSample sample;
    sample.presenter.glideTo(kTall);
    sample.presenter.setBody(kHeavy);
    EXPECT_FALSE(sample.presenter.isGliding());
    sample.presenter.letGo();
    EXPECT_EQ(sample.state().body, kHeavy);
    EXPECT_FALSE(sample.state().moving);
    sample.presenter.setBody(kTall);
    sample.presenter.glideTo(kHeavy);
    EXPECT_TRUE(sample.presenter.isGliding());
    sample.presenter.letGo();
    EXPECT_TRUE(sample.presenter.isGliding()) << "nothing is held any more";
    pass(sample, LecturePresenter::kGlideMs);
    EXPECT_EQ(sample.state().body, kHeavy);
    expectLaws(sample);
}

TEST(LecturePresenterBodyTest, AnotherSiteIsOpenedWithTheBodyAGlideWasOnItsWayTo)
{
    LectureSample sample;
    sample.presenter.glideTo(kTall);
    sample.presenter.openSite(Site::VastusLateralis);
    EXPECT_EQ(sample.state().body, kTall);
    EXPECT_FALSE(sample.state().moving);
    expectLaws(sample);
}

TEST(LecturePresenterBodyTest, WithoutMotionEverythingArrivesAtOnce)
{
    LectureSample sample;
    sample.presenter.setCalm(true);
    sample.presenter.glideTo(kTall);
    EXPECT_FALSE(sample.presenter.isGliding());
    EXPECT_FALSE(sample.state().moving);
    EXPECT_EQ(sample.shown().ask.patient, patientOf(kTall, Side::Right));
    sample.presenter.setCalm(false);
    sample.presenter.glideTo(kHeavy);
    ASSERT_TRUE(sample.presenter.isGliding());
    sample.presenter.setCalm(true);
    EXPECT_FALSE(sample.presenter.isGliding());
    EXPECT_EQ(sample.shown().ask.patient, patientOf(kHeavy, Side::Right));
    expectLaws(sample);
}

TEST(LecturePresenterBodyTest, StoutnessKeepsEverythingButTheWeight)
{
    LectureSample sample;
    sample.presenter.setStoutness(Stoutness::Heavy);
    ASSERT_TRUE(sample.presenter.isGliding());
    sample.presenter.setStoutness(Stoutness::Lean);
    pass(sample, LecturePresenter::kGlideMs);
    const BodyValues lean = sample.state().body;
    EXPECT_EQ(lean, withStoutness(BodyValues{}, Stoutness::Lean));
    EXPECT_NEAR(sample.shown().ask.patient.bodyMassIndex(), 19.0, 1e-6);
}

TEST(LecturePresenterBodyTest, ABodyThatCannotBeMadeLeavesTheOldOne)
{
    LectureSample sample;
    const BodyValues before = sample.state().body;
    sample.bodies.fails = [](const BodyAsk& ask) { return ask.patient.weight() > Kg{70.0}; };
    sample.presenter.setBody({40.0, Sex::Female, 165.0, 80.0});
    ASSERT_TRUE(sample.state().notice.has_value());
    EXPECT_EQ(sample.state().body, before);
    sample.presenter.letGo();
    EXPECT_FALSE(sample.state().moving);
    expectLaws(sample);
    sample.presenter.dismissNotice();
    sample.presenter.glideTo(kHeavy);
    for (int frame = 0; frame < 40 && sample.presenter.isGliding(); ++frame)
        pass(sample, 50);
    EXPECT_FALSE(sample.presenter.isGliding());
    EXPECT_TRUE(sample.state().notice.has_value());
    EXPECT_LE(sample.state().body.weightKg, 70.0);
    EXPECT_FALSE(sample.state().moving);
    expectLaws(sample);
}

}  // namespace fb::test::lecture_presenter_body_test
