// A plate made of numbers alone, so that golden grades do not change when a drawing is improved.
// Levels, edges and landmarks are those of a plain arm; there is no ink but one skin area a limb.
#pragma once

#include "core/plate/plate.h"

namespace fb::test {

[[nodiscard]] inline Level plainLevel(const char* name, double along, double skin, double bone)
{
    return {name, Cm{along}, Cm{-skin}, Cm{-bone}, Cm{bone}, Cm{skin}};
}

[[nodiscard]] inline Ring plainBox(double left, double right, double bottom, double top)
{
    Ring ring{{{left, bottom}}, true};
    for (const Point to : {Point{right, bottom}, Point{right, top}, Point{left, top}, Point{left, bottom}}) {
        const Point from = ring.points.back();
        ring.points.insert(ring.points.end(), {lerp(from, to, 1.0 / 3.0), lerp(from, to, 2.0 / 3.0), to});
    }
    return ring;
}

[[nodiscard]] inline Plate plainPlate()
{
    Plate plate;
    plate.view = View::ShoulderSide;
    plate.markable = true;
    plate.azimuth = Degrees{90.0};
    plate.reference = {Sex::Male, 35.0, Cm{172.0}, Kg{70.0}};
    plate.paper = {{-20.0, -42.0}, {28.0, 12.0}};
    plate.tones = {{"skin", "#e9c5a5"}};
    plate.limbs = {{"trunk",
                    -1,
                    {},
                    {},
                    {plainLevel("neck", -7.5, 6.0, 2.0), plainLevel("shoulder", 0.5, 8.0, 6.0),
                     plainLevel("chest", 16.5, 11.4, 8.0), plainLevel("waist", 36.5, 10.2, 6.5)}},
                   {"forearm",
                    2,
                    {0.0, -32.0},
                    Degrees{78.0},
                    {plainLevel("elbow", 0.0, 4.0, 1.5), plainLevel("forearm", 6.0, 4.4, 1.3),
                     plainLevel("wrist", 26.2, 3.0, 1.3)}},
                   {"arm",
                    0,
                    {},
                    {},
                    {plainLevel("shoulder-top", -2.2, 3.3, 1.7), plainLevel("acromion", 0.0, 5.5, 2.3),
                     plainLevel("axilla", 10.35, 5.4, 1.3), plainLevel("mid-arm", 16.35, 4.9, 1.2),
                     plainLevel("radiale", 32.7, 4.5, 1.1), plainLevel("elbow-tip", 35.0, 3.5, 1.2)}}};
    plate.points = {
        {"landmark.acromion.lateral", {2, {0.0, 0.0}}}, {"landmark.acromion.front", {2, {2.3, 0.2}}},
        {"landmark.acromion.back", {2, {-2.2, -0.4}}},  {"landmark.deltoid-tuberosity", {2, {0.0, -17.3}}},
        {"landmark.axilla.front", {2, {5.4, -10.3}}},   {"landmark.axilla.back", {2, {-5.4, -10.3}}}};
    plate.areas = {{"area.bone.acromion", {2, plainBox(-2.2, 2.3, 0.0, 1.1)}}};
    const auto skin = [&plate](int limb, Ring ring) {
        plate.structures.push_back({Layer::Skin, limb, {}, {}, {InkShape{{std::move(ring)}, 0}}});
    };
    skin(0, plainBox(-10.0, 11.0, -40.0, 10.0));
    skin(1, plainBox(0.0, 26.0, -38.0, -30.0));
    skin(2, plainBox(-5.4, 5.4, -35.0, 2.2));
    return plate;
}

}  // namespace fb::test
