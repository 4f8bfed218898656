#include "app/lecture/lecture_look_area.h"

#include <gtest/gtest.h>

#include "app/scene/by_hand_scene.h"
#include "core/hand/laid_bars.h"
#include "tests/support/lecture_faces.h"

namespace fb::test::lecture_look_area_test {

std::shared_ptr<const LectureBody> bodyOf(Convention convention, View view, const BodyValues& values,
                                          Side side = Side::Right)
{
    const BodyAsk ask{patientOf(values, side), convention, view, 0};
    return std::make_shared<const LectureBody>(
        makeLectureBody(*facesLibrary(), facesLibrary()->defaultPolicy(), ask).value());
}

TEST(LectureLookAreaTest, HoldsRegionIdealAndEveryPlaceThatIsPressed)
{
    for (const Convention convention : kConventions) {
        for (const View view : viewsOf(siteOf(convention))) {
            for (const double stature : {140.0, 165.0, 195.0}) {
                for (const Stoutness stoutness : kStoutnesses) {
                    BodyValues values;
                    values.statureCm = stature;
                    const auto body = bodyOf(convention, view, withStoutness(values, stoutness));
                    const Target& target = *body->target;
                    const QRectF area = lectureArea(target);
                    const std::string about = std::string(wordOf(convention)) + " " +
                                              std::string(wordOf(view)) + " " + std::to_string(stature);
                    EXPECT_TRUE(area.contains(QPointF(target.ideal.x, target.ideal.y))) << about;
                    for (const Point corner : target.region.corners())
                        EXPECT_TRUE(area.contains(QPointF(corner.x, corner.y))) << about;
                    for (int step = 0; step < watchStepCount(target); ++step) {
                        const QPointF pressed = watchPress(target, step).value_or(area.center());
                        EXPECT_TRUE(area.contains(pressed))
                            << about << " step " << step << " at " << pressed.x() << ", " << pressed.y();
                    }
                }
            }
        }
    }
}

// The ends of every slider, and two bodies between them.
std::vector<BodyValues> bodiesOfTheLimits()
{
    std::vector<BodyValues> bodies{{}, withStoutness({}, Stoutness::Heavy)};
    for (const Sex sex : {Sex::Female, Sex::Male})
        for (const double stature : {statureRange().least, statureRange().most})
            for (const double age : {ageRange().least, ageRange().most})
                for (const double weight : {weightRange(stature).least, weightRange(stature).most})
                    bodies.push_back({age, sex, stature, weight});
    return bodies;
}

TEST(LectureLookAreaTest, NothingOfConstructionOrHandLeavesThePictureOnAnyBody)
{
    for (const Convention convention : kConventions) {
        for (const View view : viewsOf(siteOf(convention))) {
            for (const BodyValues& values : bodiesOfTheLimits()) {
                const auto body = bodyOf(convention, view, values);
                const Target& target = *body->target;
                const QRectF area = lectureArea(target);
                const std::string about = std::string(wordOf(convention)) + " " + std::string(wordOf(view)) +
                                          " " + std::to_string(values.statureCm) + " cm " +
                                          std::to_string(values.weightKg) + " kg";
                for (const Step& step : target.construction)
                    for (const Point p : step.points)
                        EXPECT_TRUE(area.contains(QPointF(p.x, p.y)))
                            << about << ": " << std::string(wordOf(step.code)) << " at " << p.x << ", "
                            << p.y;
                if (!target.hand)
                    continue;
                for (const LaidBar& bar : barsOf(*target.hand)) {
                    const QPointF half(bar.half.value(), bar.half.value());
                    for (const Point end : {bar.from, bar.to})
                        EXPECT_TRUE(
                            area.contains(QRectF(QPointF(end.x, end.y) - half, QPointF(end.x, end.y) + half)))
                            << about << ": the hand at " << end.x << ", " << end.y;
                }
            }
        }
    }
}

TEST(LectureLookAreaTest, DoesNotMoveWithWeight)
{
    for (const Convention convention : kConventions) {
        const View view = askedViews(siteOf(convention)).front();
        const QRectF lean = lectureArea(*bodyFor(convention, view, Stoutness::Lean)->target);
        const QRectF heavy = lectureArea(*bodyFor(convention, view, Stoutness::Heavy)->target);
        EXPECT_EQ(lean, heavy) << std::string(wordOf(convention));
    }
}

TEST(LectureLookAreaTest, AShortBodyLooksShort)
{
    BodyValues values;
    values.statureCm = 150.0;
    const auto small = bodyOf(Convention::VastusThirds, View::ThighSide, values);
    values.statureCm = 172.0;
    const auto middle = bodyOf(Convention::VastusThirds, View::ThighSide, values);
    values.statureCm = 210.0;
    const auto tall = bodyOf(Convention::VastusThirds, View::ThighSide, values);
    EXPECT_EQ(lectureArea(*small->target), lectureArea(*middle->target));
    EXPECT_GT(lectureArea(*tall->target).width(), lectureArea(*middle->target).width());
}

TEST(LectureLookAreaTest, LeftIsTheMirrorImageOfRight)
{
    for (const Convention convention : kConventions) {
        for (const View view : viewsOf(siteOf(convention))) {
            const QRectF right = lectureArea(*bodyFor(convention, view)->target);
            const QRectF left =
                lectureArea(*bodyFor(convention, view, Stoutness::Average, Side::Left)->target);
            EXPECT_NEAR(left.left(), -right.right(), 1e-6);
            EXPECT_NEAR(left.right(), -right.left(), 1e-6);
            EXPECT_NEAR(left.top(), right.top(), 1e-6);
        }
    }
}

}  // namespace fb::test::lecture_look_area_test
