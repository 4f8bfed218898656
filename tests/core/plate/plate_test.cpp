// The shipped drawings are under test like code.
#include "core/plate/plate.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/plate/ring.h"
#include "tests/support/core_atlas.h"

using namespace fb;

namespace plate_test {

namespace {

const std::vector<const Plate*>& plates()
{
    static const std::vector<const Plate*> all = [] {
        std::vector<const Plate*> read;
        for (const View view : kViews)
            read.push_back(&test::plateOf(view));
        return read;
    }();
    return all;
}

// Structures a nurse asks for, by the view that must show them.
std::vector<const char*> structuresOf(View view)
{
    switch (view) {
    case View::ShoulderSide:
    case View::ShoulderThreeQuarter:
        return {"scapula",
                "acromion",
                "clavicle",
                "humerus",
                "deltoid-tuberosity",
                "deltoid",
                "biceps",
                "triceps",
                "pectoralis-major",
                "axillary-nerve",
                "radial-nerve",
                "posterior-circumflex-humeral-artery",
                "subacromial-bursa"};
    case View::HipSide:
        return {"ilium",
                "sacrum",
                "femur",
                "gluteus-medius",
                "gluteus-maximus",
                "tensor-fasciae-latae",
                "iliotibial-band",
                "vastus-lateralis",
                "superior-gluteal-nerve",
                "superior-gluteal-artery",
                "sciatic-nerve"};
    case View::HipBehind:
        return {"ilium",
                "sacrum",
                "femur",
                "gluteus-medius",
                "gluteus-maximus",
                "superior-gluteal-nerve",
                "superior-gluteal-artery",
                "sciatic-nerve"};
    case View::ThighFront:
        return {"femur",
                "patella",
                "vastus-lateralis",
                "rectus-femoris",
                "tensor-fasciae-latae",
                "femoral-artery",
                "femoral-vein",
                "lateral-circumflex-femoral-artery"};
    case View::ThighSide:
        return {"femur",          "patella",         "vastus-lateralis",
                "rectus-femoris", "iliotibial-band", "tensor-fasciae-latae",
                "sciatic-nerve"};
    case View::OpenHand:
    case View::TwoFingers:
    case View::ThreeFingers: return {};
    }
    return {};
}

int shapesIn(const Plate& plate, std::initializer_list<Layer> layers)
{
    int count = 0;
    for (const Structure& s : plate.structures) {
        if (std::ranges::find(layers, s.layer) != layers.end())
            count += static_cast<int>(s.shapes.size());
    }
    return count;
}

}  // namespace

TEST(PlateTest, ExactlyTheAskedViewsAreMarked)
{
    for (const Plate* plate : plates()) {
        const auto asked = askedViews(siteOf(plate->view));
        EXPECT_EQ(plate->markable, std::ranges::count(asked, plate->view) == 1) << wordOf(plate->view);
    }
}

TEST(PlateTest, EveryPlateIsOfTheViewItsNameSays)
{
    for (const View view : kViews)
        EXPECT_EQ(test::plateOf(view).view, view);
    EXPECT_EQ(test::plateOf(View::OpenHand).view, View::OpenHand);
}

TEST(PlateTest, AllPlatesShowTheSameReferenceBody)
{
    for (const Plate* plate : plates()) {
        EXPECT_EQ(plate->reference.stature, Cm{172}) << wordOf(plate->view);
        EXPECT_EQ(plate->reference.weight, Kg{70}) << wordOf(plate->view);
        EXPECT_EQ(plate->reference.sex, Sex::Male) << wordOf(plate->view);
    }
}

TEST(PlateTest, EveryLayerHasInk)
{
    for (const Plate* plate : plates()) {
        for (const Layer layer : kLayers)
            EXPECT_GT(shapesIn(*plate, {layer}), 0) << wordOf(plate->view) << ' ' << wordOf(layer);
    }
}

TEST(PlateTest, StaysWithinThePaintBudget)
{
    for (const Plate* plate : plates()) {
        EXPECT_LE(shapesIn(*plate, {Layer::Skin, Layer::Surface, Layer::Cloth}), 600) << wordOf(plate->view);
        EXPECT_LE(shapesIn(*plate, {Layer::Bone, Layer::Vessel, Layer::Nerve, Layer::Muscle}), 600)
            << wordOf(plate->view);
    }
}

TEST(PlateTest, TheNamedStructuresAreThereWithTitles)
{
    for (const Plate* plate : plates()) {
        for (const char* name : structuresOf(plate->view)) {
            const auto it = std::ranges::find_if(plate->structures, [&](const Structure& s) {
                return s.id.find(std::string(".") + name) != std::string::npos && !s.shapes.empty();
            });
            ASSERT_NE(it, plate->structures.end()) << wordOf(plate->view) << ' ' << name;
            EXPECT_FALSE(it->title.empty()) << name;
        }
    }
}

TEST(PlateTest, TheFirstLandmarkIsTheOrigin)
{
    for (const Plate* plate : plates())
        EXPECT_LT(length(plate->points.at(std::string(firstLandmark(plate->view))).at), 1e-9)
            << wordOf(plate->view);
}

TEST(PlateTest, LandmarksLieOnTheBoneTheyName)
{
    // The corners of the acromion lie on or beside its drawn outline.
    const Plate& plate = test::sidePlate();
    const auto outline = flattened(plate.areas.at("area.bone.acromion").ring, 16);
    for (const char* name :
         {"landmark.acromion.lateral", "landmark.acromion.front", "landmark.acromion.back"}) {
        const Point p = plate.points.at(name).at;
        double nearest = 1e9;
        for (const Point q : outline)
            nearest = std::min(nearest, distance(p, q));
        EXPECT_LT(nearest, 0.6) << name;
    }
    const std::vector<Ring> humerus{plate.areas.at("area.bone.humerus").ring};
    EXPECT_TRUE(covers(humerus, {0.0, -17.0}));
    EXPECT_TRUE(covers(humerus, {0.0, -25.0}));
}

TEST(PlateTest, TheOutlineHoldsEverySkinLandmark)
{
    for (const char* name :
         {"landmark.acromion.front", "landmark.acromion.back", "landmark.deltoid-tuberosity"}) {
        const NamedPoint point = test::sidePlate().points.at(name);
        const bool covered = std::ranges::any_of(test::sidePlate().structures, [&](const Structure& s) {
            return s.layer == Layer::Skin && std::ranges::any_of(s.shapes, [&](const InkShape& shape) {
                       return !shape.penStroke && covers(shape.rings, point.at);
                   });
        });
        EXPECT_TRUE(covered) << name;
    }
}

TEST(PlateTest, GradientsHaveLimbsAndRisingStops)
{
    for (const Plate* plate : plates()) {
        for (const Gradient& gradient : plate->gradients) {
            EXPECT_GE(gradient.limb, 0);
            EXPECT_TRUE(std::ranges::is_sorted(gradient.stops, {}, &GradientStop::offset));
        }
    }
}

TEST(PlateTest, PensKeepToShortPieces)
{
    for (const Plate* plate : plates()) {
        for (const Structure& structure : plate->structures) {
            for (const InkShape& shape : structure.shapes) {
                if (!shape.penStroke)
                    continue;
                for (std::size_t i = 0; i < pieceCount(shape.rings.front()); ++i)
                    EXPECT_LE(piece(shape.rings.front(), i).span(), 1.3) << structure.id;
            }
        }
    }
}

}  // namespace plate_test
