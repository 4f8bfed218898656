// The vastus lateralis site against its texts: thirds of the thigh, hand's breadths, and what
// lies round it.
#include <array>
#include <numbers>

#include "core/grade/grade.h"
#include "core/site/vastus.h"
#include "tests/published/moved_plate.h"

namespace fb::test::thigh_distances_test {

namespace thigh_distances_detail {

constexpr const char* kMelbourne =
    "Melbourne Vaccine Education Centre, injected vaccines (infant); adult: common practice, no source";
constexpr const char* kNakajima = "Nakajima 2020, 24 cadaver thighs";

constexpr std::array kAsked{View::ThighSide, View::ThighFront};

Target thighTarget(View view, Convention convention = Convention::VastusThirds)
{
    return locate(atlas(), defaultPolicy(), referenceBodyOf(view), convention, view).value();
}

// The place on the skin at a share of the thigh and an angle from the front line; the outer
// line is at 90 degrees.
Point skinAt(const Target& target, double share, double degrees)
{
    const double y = -share * target.thighLength.value();
    const double turn = (90.0 - degrees) * std::numbers::pi / 180.0;
    return {target.surface.thigh()->limb.arcOf(turn, y), y};
}

Grade graded(const Target& target, double share, double degrees)
{
    return gradeMark(target, defaultPolicy(), target.toViewer(skinAt(target, share, degrees)),
                     MarkedLimb::Thigh);
}

}  // namespace thigh_distances_detail

TEST(ThighDistances, MiddleThirdIsGradedAsTheTextHasIt)
{
    using namespace thigh_distances_detail;
    struct Row {
        double share;
        bool inside;
        Direction direction;
    };
    for (const View view : kAsked) {
        const Target target = thighTarget(view);
        for (const Row& row : std::initializer_list<Row>{
                 {0.30, false, Direction::High},
                 {1.0 / 3.0, true, Direction::None},
                 {0.50, true, Direction::None},
                 {2.0 / 3.0, true, Direction::None},
                 {0.70, false, Direction::Low},
             }) {
            const Grade grade = graded(target, row.share, 60.0);
            EXPECT_EQ(grade.inside, row.inside) << wordOf(view) << " " << row.share << ": " << kMelbourne;
            EXPECT_EQ(wordOf(grade.reason.direction), wordOf(row.direction))
                << wordOf(view) << " " << row.share << ": " << kMelbourne;
        }
    }
}

TEST(ThighDistances, ThirdsAreThirdsOfTheThigh)
{
    using namespace thigh_distances_detail;
    for (const View view : kAsked) {
        const Target target = thighTarget(view);
        const double knee = target.landmarks.at("lateral_femoral_epicondyle").x;
        // Drawn to half a millimetre.
        expectAll({
            {"thigh as drawn and as computed", knee, target.thighLength.value(), 0.05,
             "ANSUR II 2012, trochanterion less lateral femoral epicondyle"},
            {"upper border of the region", target.region.bounds().low.x, knee / 3.0, 0.02, kMelbourne},
            {"lower border of the region", target.region.bounds().high.x, 2.0 * knee / 3.0, 0.02, kMelbourne},
            {"older point, upper border in effect", -target.regionSkin.bounds().high.y,
             target.thighLength.value() / 3.0, 1e-9,
             "Cook and Murtagh 2002: junction of upper and middle thirds is still inside"},
        });
    }
}

TEST(ThighDistances, HandsBreadthsAreMeasuredOnesFromBothEnds)
{
    using namespace thigh_distances_detail;
    const VastusBand band = vastusBand(Convention::VastusHandbreadths, defaultPolicy(), 40.9);
    expectAll({
        {"a hand's breadth below the trochanter", band.top * 40.9, 7.82, 0.38,
         "common practice, no source (from memory); breadth ANSUR II 2012, women (SD)"},
        {"a hand's breadth above the knee", (1.0 - band.bottom) * 40.9, 7.82, 0.38,
         "common practice, no source (from memory); breadth ANSUR II 2012, women (SD)"},
    });
}

TEST(ThighDistances, RectusFemorisIsNamedInFrontAndNoStrikeOutsideTheFrontLine)
{
    // Under its middle to two-thirds lie the descending vessels and the nerve to vastus lateralis.
    using namespace thigh_distances_detail;
    for (const View view : kAsked) {
        const Target target = thighTarget(view);
        for (const double share : {0.45, 0.5, 0.6}) {
            const Grade grade = graded(target, share, 10.0);
            EXPECT_EQ(wordOf(grade.reason.tissue), wordOf(Tissue::RectusFemoris)) << kNakajima;
            EXPECT_EQ(wordOf(grade.reason.direction), wordOf(Direction::Forward)) << kNakajima;
            EXPECT_EQ(wordOf(grade.verdict), "off_target") << kNakajima;
            EXPECT_FALSE(grade.hazard.has_value()) << kNakajima;
        }
    }
}

TEST(ThighDistances, InnerSideOfTheFrontLineIsTheFemoralVessels)
{
    using namespace thigh_distances_detail;
    const Target target = thighTarget(View::ThighFront);
    for (const double share : {0.2, 0.35, 0.5, 0.65}) {
        const Grade grade = graded(target, share, -10.0);
        EXPECT_EQ(wordOf(grade.verdict), "unsafe") << "common practice, no source (from memory)";
        EXPECT_EQ(wordOf(grade.reason.tissue), wordOf(Tissue::FemoralVessels)) << share;
    }
    for (const Point p : MovedPlate(View::ThighFront).line("femoral-artery")) {
        if (p.x > 5.0 && p.x < 35.0) {
            EXPECT_EQ(wordOf(gradeMark(target, defaultPolicy(), p, MarkedLimb::Thigh).verdict), "unsafe")
                << "the plate's own artery at " << p.x << "," << p.y;
        }
    }
}

TEST(ThighDistances, BehindTheOuterLineAreHamstringsThenTheSciaticSide)
{
    using namespace thigh_distances_detail;
    const Target target = thighTarget(View::ThighSide);
    const char* source = "common practice, no source (from memory)";
    const Grade near = graded(target, 0.5, 102.0);
    EXPECT_EQ(wordOf(near.verdict), "off_target") << source;
    EXPECT_EQ(wordOf(near.reason.direction), wordOf(Direction::Back)) << source;
    EXPECT_EQ(wordOf(near.reason.tissue), wordOf(Tissue::Hamstrings)) << source;
    const Grade far = graded(target, 0.5, 130.0);
    EXPECT_EQ(wordOf(far.verdict), "unsafe") << source;
    EXPECT_EQ(wordOf(far.reason.tissue), wordOf(Tissue::SciaticNerve)) << source;
}

TEST(ThighDistances, EndsOfTheThighAreTheJoints)
{
    using namespace thigh_distances_detail;
    for (const View view : kAsked) {
        const Target target = thighTarget(view);
        const Grade hip = graded(target, 0.05, 60.0);
        const Grade knee = graded(target, 0.95, 60.0);
        EXPECT_EQ(wordOf(hip.verdict), "unsafe") << "common practice, no source (from memory)";
        EXPECT_EQ(wordOf(knee.verdict), "unsafe") << "common practice, no source (from memory)";
        EXPECT_EQ(wordOf(hip.reason.tissue), wordOf(Tissue::HipRegion)) << wordOf(view);
        EXPECT_EQ(wordOf(knee.reason.tissue), wordOf(Tissue::KneeRegion)) << wordOf(view);
    }
}

TEST(ThighDistances, TwoInjectionsAnInchApartFitTheRegion)
{
    using namespace thigh_distances_detail;
    for (const View view : kAsked) {
        const Target target = thighTarget(view);
        const Bounds box = target.regionSkin.bounds();
        EXPECT_GE(box.high.y - box.low.y, 2.5) << "spacing of two injections: " << kMelbourne;
    }
}

}  // namespace fb::test::thigh_distances_test
