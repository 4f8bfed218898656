// What a body is compared with: see lecture_presenter.h.
#include <gtest/gtest.h>

#include <QTest>

#include "app/lecture/lecture_presenter.h"
#include "tests/support/lecture_sample.h"

namespace fb::test::lecture_presenter_compare_test {

constexpr BodyValues kHeavy{40.0, Sex::Female, 165.0, 110.0};
constexpr BodyValues kTall{60.0, Sex::Male, 190.0, 80.0};

// Turns the clock and waits for the frame that sees it.
void pass(LectureSample& sample, int ms)
{
    sample.clock.now += Ms{ms};
    const int seen = sample.changes + sample.moves;
    EXPECT_TRUE(QTest::qWaitFor([&] { return sample.changes + sample.moves > seen; }));
}

TEST(LecturePresenterCompareTest, APinnedBodyIsComparedSideBySide)
{
    LectureSample sample;
    sample.presenter.setCompare(Compare::SideBySide);
    sample.presenter.setCompare(Compare::Overlay);
    EXPECT_EQ(sample.state().compare, Compare::Nothing) << "nothing is pinned";
    sample.presenter.setCalm(true);
    const BodyValues first = sample.state().body;
    sample.presenter.pin();
    EXPECT_EQ(sample.state().compare, Compare::SideBySide);
    EXPECT_EQ(sample.state().difference->apart, Cm{0.0});
    sample.presenter.glideTo(kTall);
    expectLaws(sample);
    EXPECT_EQ(sample.state().pinned, first);
    EXPECT_EQ(sample.state().beside->ask.patient, patientOf(first, Side::Right));
    EXPECT_GT(sample.state().difference->apart, Cm{0.3});
    EXPECT_LT(sample.state().difference->lower, Cm{0.0}) << "the shorter arm's lies higher";

    sample.presenter.setCompare(Compare::Overlay);
    EXPECT_NE(sample.state().beside, nullptr);
    sample.presenter.pin();
    EXPECT_EQ(sample.state().compare, Compare::Overlay) << "only the body is another";
    EXPECT_EQ(sample.state().difference->apart, Cm{0.0});
    expectLaws(sample);
    sample.presenter.unpin();
    EXPECT_EQ(sample.state().compare, Compare::Nothing);
    EXPECT_EQ(sample.state().beside, nullptr);
    EXPECT_FALSE(sample.state().difference.has_value());
    expectLaws(sample);
}

TEST(LecturePresenterCompareTest, APinnedBodyIsMadeOnceWhileTheOtherGlides)
{
    LectureSample sample;
    sample.presenter.pin();
    const int asked = sample.bodies.asked;
    sample.presenter.setBody(kHeavy);
    sample.presenter.setBody(kTall);
    EXPECT_EQ(sample.bodies.asked, asked + 2);
    sample.presenter.setCompare(Compare::Overlay);
    EXPECT_EQ(sample.bodies.asked, asked + 2) << "it is there already";
    sample.presenter.setSide(Side::Left);
    EXPECT_EQ(sample.bodies.asked, asked + 4) << "both are of the other side now";
    expectLaws(sample);
}

TEST(LecturePresenterCompareTest, SwappingGlidesToThePinnedBodyAndPinsTheOther)
{
    LectureSample sample;
    sample.presenter.swapPinned();
    EXPECT_FALSE(sample.presenter.isGliding()) << "nothing is pinned";
    const BodyValues first = sample.state().body;
    sample.presenter.pin();
    sample.presenter.setBody(kHeavy);
    sample.presenter.letGo();
    const Cm lower = sample.state().difference->lower;
    sample.presenter.swapPinned();
    EXPECT_TRUE(sample.presenter.isGliding());
    EXPECT_EQ(sample.state().pinned, kHeavy);
    pass(sample, LecturePresenter::kGlideMs);
    EXPECT_EQ(sample.state().body, first);
    EXPECT_NEAR(sample.state().difference->lower.value(), -lower.value(), 1e-6);
    expectLaws(sample);
    sample.presenter.swapPinned();
    pass(sample, LecturePresenter::kGlideMs / 2);
    sample.presenter.swapPinned();
    EXPECT_EQ(sample.state().pinned, kHeavy) << "twice is as it was, even on the way";
    pass(sample, LecturePresenter::kGlideMs);
    EXPECT_EQ(sample.state().body, first);
    expectLaws(sample);
}

TEST(LecturePresenterCompareTest, AnotherConventionIsComparedOnTheSameBody)
{
    LectureSample sample(Site::Ventrogluteal);
    sample.presenter.setCompare(Compare::OtherConvention);
    EXPECT_EQ(sample.presenter.otherConvention(), Convention::VentroglutealMedians);
    EXPECT_EQ(sample.state().beside->ask.convention, Convention::VentroglutealMedians);
    EXPECT_GT(sample.state().difference->apart, Cm{0.0});
    sample.presenter.setBody(kHeavy);
    EXPECT_EQ(sample.state().beside->ask.patient, sample.shown().ask.patient);
    sample.presenter.letGo();
    sample.presenter.glideTo(kTall);
    pass(sample, LecturePresenter::kGlideMs / 2);
    EXPECT_EQ(sample.state().beside->ask.patient, sample.shown().ask.patient);
    expectLaws(sample);
}

TEST(LecturePresenterCompareTest, AConventionIsNeverComparedWithItself)
{
    LectureSample sample;
    sample.presenter.compareConvention(Convention::DeltoidStrip);
    EXPECT_EQ(sample.state().compare, Compare::Nothing) << "it is the one that is shown";
    sample.presenter.compareConvention(Convention::VastusThirds);
    EXPECT_EQ(sample.state().compare, Compare::Nothing);
    sample.presenter.compareConvention(Convention::DeltoidTwoInches);
    EXPECT_EQ(sample.state().compare, Compare::OtherConvention);
    const Cm apart = sample.state().difference->apart;
    const Cm lower = sample.state().difference->lower;
    sample.presenter.setConvention(Convention::DeltoidTwoInches);
    EXPECT_EQ(sample.presenter.otherConvention(), Convention::DeltoidStrip) << "the other way round";
    EXPECT_EQ(sample.state().difference->apart, apart);
    EXPECT_EQ(sample.state().difference->lower, -lower);
    expectLaws(sample);
    sample.presenter.setCompare(Compare::Nothing);
    sample.presenter.setCompare(Compare::OtherConvention);
    EXPECT_EQ(sample.presenter.otherConvention(), Convention::DeltoidStrip) << "the one chosen last";
    sample.presenter.openSite(Site::VastusLateralis);
    EXPECT_EQ(sample.state().compare, Compare::Nothing);
    expectLaws(sample);
}

TEST(LecturePresenterCompareTest, AConventionIsNeverTakenForAPinnedBody)
{
    LectureSample sample;
    sample.presenter.pin();
    sample.bodies.holdsBack = true;
    sample.presenter.setCompare(Compare::OtherConvention);
    EXPECT_EQ(sample.state().beside, nullptr);
    EXPECT_FALSE(sample.state().difference.has_value());
    sample.presenter.setCompare(Compare::Overlay);
    sample.bodies.answerOne(0);
    EXPECT_EQ(sample.state().beside, nullptr) << "it is not wanted any more";
    sample.bodies.answerAll();
    EXPECT_EQ(sample.state().beside->ask.convention, Convention::DeltoidStrip);
    expectLaws(sample);
}

TEST(LecturePresenterCompareTest, NothingIsComparedAcrossViewsAndSides)
{
    LectureSample sample(Site::VastusLateralis);
    sample.presenter.pin();
    sample.bodies.holdsBack = true;
    sample.presenter.setView(View::ThighFront);
    sample.presenter.setSide(Side::Left);
    ASSERT_EQ(sample.bodies.waiting.size(), 4U);
    sample.bodies.answerOne(2);
    EXPECT_EQ(sample.shown().ask.view, View::ThighFront);
    EXPECT_EQ(sample.state().beside, nullptr);
    EXPECT_FALSE(sample.state().difference.has_value());
    sample.bodies.answerAll();
    expectLaws(sample);
    EXPECT_EQ(sample.state().difference->apart, Cm{0.0});
}

TEST(LecturePresenterCompareTest, ABodyBesideThatCannotBeMadeIsTold)
{
    LectureSample sample;
    sample.bodies.fails = [](const BodyAsk& ask) { return ask.convention == Convention::DeltoidTwoInches; };
    sample.presenter.compareConvention(Convention::DeltoidTwoInches);
    EXPECT_TRUE(sample.state().notice.has_value());
    EXPECT_EQ(sample.state().compare, Compare::Nothing);
    EXPECT_EQ(sample.state().beside, nullptr);
    EXPECT_FALSE(sample.state().difference.has_value());
    sample.presenter.compareConvention(Convention::DeltoidHalfway);
    EXPECT_EQ(sample.state().beside->ask.convention, Convention::DeltoidHalfway);
    expectLaws(sample);
    sample.presenter.setConvention(Convention::DeltoidTwoInches);
    EXPECT_EQ(sample.state().convention, Convention::DeltoidStrip);
    expectLaws(sample);
}

}  // namespace fb::test::lecture_presenter_compare_test
