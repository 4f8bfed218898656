#include "app/lecture/body_worker.h"

#include <gtest/gtest.h>

#include <QSemaphore>
#include <QTest>
#include <QThread>
#include <optional>

#include "core/body/body_values.h"
#include "tests/support/lecture_sample.h"

namespace fb::test::body_worker_test {

BodyAsk askOf(double weight)
{
    BodyValues values;
    values.weightKg = weight;
    return {patientOf(values, Side::Right), Convention::DeltoidStrip, View::ShoulderSide, 0};
}

// A worker whose bodies come when the test lets them.
class BodyWorkerTest : public ::testing::Test {
protected:
    ~BodyWorkerTest() override { gate.release(1000); }

    Result<LectureBody> make(const BodyAsk& ask)
    {
        begun.release();
        gate.acquire();
        madeIn = QThread::currentThread();
        if (ask.patient.weight() > kTooHeavy)
            return fault(Problem::PlateDisordered, "edge.mid-arm.skin-front");
        LectureBody body{ask, nullptr, nullptr, nullptr, nullptr, nullptr};
        return body;
    }
    void ask(int lane, double weight, QObject* by)
    {
        worker->ask(lane, lectureLibrary(), policy, askOf(weight), by,
                    [this, lane](const Result<std::shared_ptr<const LectureBody>>& body) {
                        heardIn = QThread::currentThread();
                        lanes.push_back(lane);
                        weights.push_back(body ? (*body)->ask.patient.weight().value() : -1.0);
                    });
    }
    bool answers(std::size_t count)
    {
        return QTest::qWaitFor([&] { return weights.size() >= count; });
    }

    static constexpr Kg kTooHeavy{150.0};
    QSemaphore begun, gate;
    std::shared_ptr<const Policy> policy = std::make_shared<const Policy>(lectureLibrary()->defaultPolicy());
    std::vector<int> lanes;
    std::vector<double> weights;  // -1: a fault
    QThread* madeIn = nullptr;
    QThread* heardIn = nullptr;
    QObject asker;
    std::optional<BodyWorker> worker{
        std::in_place, [this](const Library&, const Policy&, const BodyAsk& asked) { return make(asked); }};
};

TEST_F(BodyWorkerTest, ABodyIsMadeElsewhereAndAnsweredHere)
{
    gate.release();
    ask(0, 70, &asker);
    ASSERT_TRUE(answers(1));
    EXPECT_EQ(weights, std::vector<double>{70});
    EXPECT_NE(madeIn, QThread::currentThread());
    EXPECT_EQ(heardIn, QThread::currentThread());
}

TEST_F(BodyWorkerTest, OfThoseThatWaitOnlyTheNewestOfALaneIsMade)
{
    ask(0, 60, &asker);
    begun.acquire();  // 60 is under way: it will be answered
    for (const double weight : {61.0, 62.0, 63.0})
        ask(0, weight, &asker);
    ask(1, 80, &asker);
    ask(0, 64, &asker);
    gate.release(10);
    ASSERT_TRUE(answers(3));
    QTest::qWait(20);
    EXPECT_EQ(weights, (std::vector<double>{60, 64, 80}));
    EXPECT_EQ(lanes, (std::vector<int>{0, 0, 1}));
}

TEST_F(BodyWorkerTest, ALaneThatAsksWithoutEndLeavesTheOtherItsTurn)
{
    ask(0, 60, &asker);
    begun.acquire();
    ask(1, 80, &asker);
    for (int i = 1; i <= 4; ++i) {
        ask(0, 60 + i, &asker);
        gate.release();
        begun.acquire();
    }
    gate.release(10);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !weights.empty() && weights.back() == 64; }));
    ASSERT_GE(lanes.size(), 3U);
    EXPECT_EQ(lanes[1], 1);
}

TEST_F(BodyWorkerTest, AFaultIsAnAnswerToo)
{
    gate.release(2);
    ask(0, 160, &asker);
    ASSERT_TRUE(answers(1));
    EXPECT_EQ(weights, std::vector<double>{-1});
    ask(0, 70, &asker);
    EXPECT_TRUE(answers(2)) << "and the next one is made as if nothing had been";
}

TEST_F(BodyWorkerTest, AnAskerThatIsGoneIsNotAnswered)
{
    auto gone = std::make_unique<QObject>();
    ask(0, 60, gone.get());
    begun.acquire();
    gone.reset();
    gate.release();
    ask(0, 70, &asker);
    gate.release();
    ASSERT_TRUE(answers(1));
    EXPECT_EQ(weights, std::vector<double>{70});
}

TEST_F(BodyWorkerTest, EndingWhileBusyWaitsForTheBodyUnderWayAndAnswersNothing)
{
    ask(0, 60, &asker);
    begun.acquire();
    ask(0, 61, &asker);
    ask(1, 62, &asker);
    gate.release(10);
    worker.reset();
    QTest::qWait(20);
    EXPECT_TRUE(weights.empty());
}

TEST(BodyWorkerOfTheProgramTest, MakesTheBodyThatTheProgramMakes)
{
    BodyWorker worker;
    const auto policy = std::make_shared<const Policy>(lectureLibrary()->defaultPolicy());
    std::shared_ptr<const LectureBody> made;
    QObject asker;
    worker.ask(0, lectureLibrary(), policy, askOf(70), &asker,
               [&](const Result<std::shared_ptr<const LectureBody>>& body) { made = body.value(); });
    ASSERT_TRUE(QTest::qWaitFor([&] { return made != nullptr; }));
    const auto expected = makeLectureBody(*lectureLibrary(), *policy, askOf(70)).value();
    EXPECT_EQ(made->ask, expected.ask);
    EXPECT_EQ(made->target->ideal, expected.target->ideal);
    EXPECT_EQ(made->picture->ink.shapes.size(), expected.picture->ink.shapes.size());
}

}  // namespace fb::test::body_worker_test
