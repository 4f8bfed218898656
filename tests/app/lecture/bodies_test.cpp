#include "app/lecture/bodies.h"

#include <gtest/gtest.h>

#include <QTest>
#include <QThread>
#include <array>

#include "app/lecture/body_worker.h"
#include "tests/support/lecture_sample.h"

namespace fb::test::bodies_test {

BodyAsk askOf(double weightKg)
{
    return {patientOf({40.0, Sex::Female, 165.0, weightKg}, Side::Left), Convention::DeltoidStrip,
            View::ShoulderSide, 2};
}

// Through the door a test's bodies and those of the window are the same.
void expectOneTruth(Bodies& bodies)
{
    const auto library = lectureLibrary();
    const auto policy = std::make_shared<const Policy>(library->defaultPolicy());
    QObject asker;
    std::array<std::shared_ptr<const LectureBody>, 2> got;
    bool isHere = true;
    for (const int lane : {0, 1})
        bodies.ask(lane, library, policy, askOf(60.0 + 30.0 * lane), &asker,
                   [&, lane](const Result<std::shared_ptr<const LectureBody>>& body) {
                       isHere = isHere && QThread::currentThread() == asker.thread();
                       got[static_cast<std::size_t>(lane)] = body.value_or(nullptr);
                   });
    ASSERT_TRUE(QTest::qWaitFor([&] { return got[0] && got[1]; })) << "no lane takes the other's place";
    EXPECT_TRUE(isHere);
    for (const int lane : {0, 1}) {
        const auto& body = *got[static_cast<std::size_t>(lane)];
        const BodyAsk ask = askOf(60.0 + 30.0 * lane);
        EXPECT_EQ(body.ask, ask);
        const LectureBody direct = makeLectureBody(*library, *policy, ask).value();
        EXPECT_EQ(body.target->ideal, direct.target->ideal);
        EXPECT_EQ(body.target->landmarks, direct.target->landmarks);
    }
}

TEST(BodiesTest, WhatIsAnsweredIsTheBodyThatWasAskedFor)
{
    FakeBodies fake;
    expectOneTruth(fake);
    BodyWorker worker;
    expectOneTruth(worker);
}

// The presenter with the thread it has in the window: the end is the same as with bodies made at once.
TEST(BodiesTest, ADemonstrationEndsTheSameWhoeverMakesItsBodies)
{
    BodyWorker worker;
    TestClock clock;
    LecturePresenter presenter(worker, clock);
    presenter.useLibrary(lectureLibrary(), lectureLibrary()->defaultPolicy());
    presenter.openSite(Site::Ventrogluteal);
    presenter.next();
    presenter.next();
    for (int kg = 50; kg <= 120; ++kg)
        presenter.setBody({40.0, Sex::Female, 165.0, static_cast<double>(kg)});
    presenter.letGo();
    presenter.setSide(Side::Left);
    presenter.compareConvention(Convention::VentroglutealMedians);
    ASSERT_TRUE(QTest::qWaitFor([&] {
        const LectureState& state = presenter.state();
        return state.difference && !state.moving && state.shown->ask.patient.weight() == Kg{120.0} &&
               state.shown->ask.patient.side() == Side::Left &&
               state.beside->ask.patient == state.shown->ask.patient;
    }));

    LectureSample sample(Site::Ventrogluteal);
    sample.presenter.setSide(Side::Left);
    sample.presenter.setBody({40.0, Sex::Female, 165.0, 120.0});
    sample.presenter.letGo();
    sample.presenter.goTo(2);
    sample.presenter.compareConvention(Convention::VentroglutealMedians);
    EXPECT_EQ(presenter.state().step, sample.state().step);
    EXPECT_EQ(presenter.state().steps, sample.state().steps);
    EXPECT_EQ(presenter.state().shown->target->ideal, sample.shown().target->ideal);
    EXPECT_EQ(presenter.state().difference->apart, sample.state().difference->apart);
}

}  // namespace fb::test::bodies_test
