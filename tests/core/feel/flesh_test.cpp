#include "core/feel/flesh.h"

#include <gtest/gtest.h>

#include "core/body/fat.h"
#include "core/site/places.h"
#include "tests/support/core_atlas.h"

using namespace fb;

namespace flesh_test {

namespace {

const Patient& lean()
{
    static const Patient body = test::adult(Sex::Female, 163, test::weightOf(20, 163));
    return body;
}

struct Laid {
    explicit Laid(View view)
        : plate(test::plateOf(view)),
          map(bodyMap(test::atlas(), view, lean()).value()),
          places(plate, map),
          flesh(plate, map, test::proportions(), lean())
    {
    }
    [[nodiscard]] bool muscle(std::string_view limb, Point at) const
    {
        return flesh.isMuscle(plate.limbNamed(limb), at);
    }
    [[nodiscard]] Mm fat(std::string_view limb) const { return flesh.fat(plate.limbNamed(limb)); }

    const Plate& plate;
    BodyMap map;
    Places places;
    Flesh flesh;
};

Mm fatOf(Site site) { return fatOver(site, test::proportions(), lean()); }

}  // namespace

TEST(FleshTest, FatIsThatOfTheSiteWhoseFleshItIs)
{
    const Laid shoulder(View::ShoulderSide);
    for (const char* limb : {"trunk", "arm", "forearm"})
        EXPECT_EQ(shoulder.fat(limb), fatOf(Site::Deltoid)) << limb;
    for (const View view : {View::HipSide, View::ThighSide, View::ThighFront}) {
        const Laid laid(view);
        EXPECT_EQ(laid.fat("pelvis"), fatOf(Site::Ventrogluteal));
        EXPECT_EQ(laid.fat("thigh"), fatOf(Site::VastusLateralis));
        EXPECT_EQ(laid.fat("leg"), fatOf(Site::VastusLateralis));
    }
}

TEST(FleshTest, ArmShoulderAndLegAreMuscleAllOver)
{
    const Laid shoulder(View::ShoulderSide);
    for (const char* limb : {"trunk", "arm", "forearm"})
        EXPECT_TRUE(shoulder.muscle(limb, {3.0, -9.0})) << limb;
    const Laid hip(View::HipSide);
    EXPECT_TRUE(hip.muscle("thigh", {20.0, 12.0}));
    EXPECT_TRUE(hip.muscle("leg", {36.0, 18.0}));
}

TEST(FleshTest, TheBedOfTheVentroglutealSiteIsMuscle)
{
    const Laid hip(View::HipSide);
    const Point middle =
        (hip.places.landmark("landmark.asis") + hip.places.landmark("landmark.iliac-tubercle") +
         hip.places.landmark("landmark.greater-trochanter")) *
        (1.0 / 3.0);
    EXPECT_TRUE(hip.muscle("pelvis", middle));
    // The gluteus medius goes up to the crest, farther to the head than the spine.
    const Point underCrest = hip.places.landmark("landmark.iliac-crest") + Point{1.5, 0.0};
    EXPECT_LT(underCrest.x, hip.places.landmark("landmark.asis").x);
    EXPECT_TRUE(hip.muscle("pelvis", underCrest));
}

TEST(FleshTest, ButtockIsMuscleBellyAndFlankAreNot)
{
    for (const View view : {View::HipSide, View::ThighSide}) {
        const Laid laid(view);
        const Point spine = laid.places.landmark("landmark.asis");
        EXPECT_TRUE(laid.muscle("pelvis", spine + Point{10.0, -12.0})) << wordOf(view);
        EXPECT_FALSE(laid.muscle("pelvis", spine + Point{-3.0, 1.5})) << wordOf(view);
    }
    const Laid hip(View::HipSide);
    EXPECT_FALSE(hip.muscle("pelvis", hip.places.landmark("landmark.iliac-crest") + Point{-3.0, 0.0}));
}

TEST(FleshTest, FromTheFrontWhatLiesOutsideTheSpineIsMuscle)
{
    const Laid front(View::ThighFront);
    const Point spine = front.places.landmark("landmark.asis");
    EXPECT_TRUE(front.muscle("pelvis", spine + Point{1.0, -1.0}));
    EXPECT_FALSE(front.muscle("pelvis", spine + Point{1.0, 12.0}));
    EXPECT_FALSE(front.muscle("pelvis", spine + Point{-2.0, -1.0}));
}

}  // namespace flesh_test
