// Whatever is called in whatever order, with bodies that come late, in another order or not at all: what is
// always true of a demonstration stays true.
#include <gtest/gtest.h>

#include <QTest>
#include <random>

#include "app/lecture/lecture_presenter.h"
#include "tests/support/lecture_sample.h"

namespace fb::test::lecture_presenter_monkey_test {

class Monkey {
public:
    explicit Monkey(unsigned seed) : m_random(seed)
    {
        // Some bodies cannot be made; it is always the same ones.
        sample.bodies.fails = [](const BodyAsk& ask) {
            return ask.patient.ageYears() > 100.0 ||
                   (ask.convention == Convention::DeltoidHalfway && ask.patient.side() == Side::Left);
        };
    }

    void act()
    {
        LecturePresenter& p = sample.presenter;
        switch (below(48)) {
        case 0: return p.openSite(kSites[static_cast<std::size_t>(below(3))]);
        case 1: return p.setConvention(convention());
        case 2: return p.setView(static_cast<View>(below(static_cast<int>(kPlateCount))));
        case 3: return p.setSide(side());
        case 4: return p.setSkinTone(below(8) - 1);
        case 5: return p.setLayerShown(kLayers[static_cast<std::size_t>(below(7))], chance());
        case 6:
        case 7:
        case 8: return p.next();
        case 9: return p.back();
        case 10: return p.goTo(below(40) - 5);
        case 11: return p.replay();
        case 12:
        case 13: return p.setBody(body());
        case 14: return p.letGo();
        case 15:
        case 16: return p.glideTo(body());
        case 17: return p.setStoutness(kStoutnesses[static_cast<std::size_t>(below(3))]);
        case 18: return p.pin();
        case 19: return below(3) == 0 ? p.unpin() : p.swapPinned();
        case 20: return p.setCompare(static_cast<Compare>(below(kCompareCount)));
        case 21: return p.compareConvention(convention());
        case 22: return p.setBlank(chance());
        case 23: return p.setTool(static_cast<LectureTool>(below(kLectureToolCount)));
        case 24: return p.setTool(chance() ? LectureTool::Pen : LectureTool::Ask);
        case 25: return p.setSpotlight(chance());
        case 26: return p.setPen(chance() ? PenInk::First : PenInk::Second, PenLine::Dashed);
        case 27: return p.setStrokesStay(chance());
        case 28: return p.point(chance() ? std::optional(place()) : std::nullopt);
        case 29:
        case 30:
        case 31: return p.press(place());
        case 32:
        case 33:
        case 34: return p.drag(place());
        case 35: return p.release();
        case 36: return p.undoStroke();
        case 37: return below(4) == 0 ? p.wipe() : p.release();
        case 38: return p.nameRoomMark(below(10) - 2, QStringLiteral("=A"));
        case 39: return p.takeRoomMarks(std::vector<RoomMark>(static_cast<std::size_t>(below(80))));
        case 40: return p.dropRoomMark(below(10) - 2);
        case 41: return below(3) == 0 ? p.clearRoom() : p.reveal(true);
        case 42: return p.reveal(chance());
        case 43: return p.setCalm(below(4) == 0);
        case 44:
            return p.useLibrary(lectureLibrary(),
                                lectureLibrary()->defaultPolicy().withConvention(convention()));
        case 45: return p.dismissNotice();
        case 46: sample.bodies.holdsBack = chance(); return;
        default: return passTime();
        }
    }
    // Late bodies come now and then, in any order.
    void answerSome()
    {
        auto& bodies = sample.bodies;
        if (!bodies.holdsBack && !bodies.waiting.empty())
            return bodies.answerNewest();
        if (bodies.waiting.empty() || below(3) != 0)
            return;
        if (chance())
            bodies.answerNewest();
        else
            bodies.answerOne(static_cast<std::size_t>(below(static_cast<int>(bodies.waiting.size()))));
    }

    LectureSample sample{std::nullopt};

private:
    int below(int end) { return static_cast<int>(m_random() % static_cast<unsigned>(end)); }
    bool chance() { return below(2) == 0; }
    double between(double least, double most)
    {
        return std::uniform_real_distribution<double>(least, most)(m_random);
    }
    Convention convention() { return kConventions[static_cast<std::size_t>(below(9))]; }
    Side side() { return chance() ? Side::Left : Side::Right; }
    // Beyond what a slider gives, too.
    BodyValues body()
    {
        return {between(10.0, 115.0), chance() ? Sex::Female : Sex::Male, between(120.0, 220.0),
                between(20.0, 260.0)};
    }
    QPointF place() { return {between(-30.0, 30.0), between(-30.0, 30.0)}; }
    void passTime()
    {
        sample.clock.now += Ms{below(1500)};
        if (!sample.presenter.isGliding() && !sample.presenter.isStepMoving())
            return;
        const int asked = sample.bodies.asked, seen = sample.moves;
        EXPECT_TRUE(QTest::qWaitFor([&] { return sample.moves > seen || sample.bodies.asked > asked; }));
    }

    std::mt19937 m_random;
};

class LecturePresenterMonkeyTest : public ::testing::TestWithParam<unsigned> {};

TEST_P(LecturePresenterMonkeyTest, NothingBreaksWhatIsAlwaysTrue)
{
    Monkey monkey(GetParam());
    for (int call = 0; call < 2500; ++call) {
        monkey.act();
        monkey.answerSome();
        expectLaws(monkey.sample);
        ASSERT_FALSE(HasFailure()) << "seed " << GetParam() << ", call " << call;
    }
    EXPECT_TRUE(monkey.sample.state().ready);
}

INSTANTIATE_TEST_SUITE_P(Seeds, LecturePresenterMonkeyTest, ::testing::Values(6U, 29112026U));

}  // namespace fb::test::lecture_presenter_monkey_test
