// Plates of the hip and the thigh made of numbers alone (see plain_plate.h): levels, edges and
// landmarks of the reference body, no ink.
#pragma once

#include <vector>

#include "tests/property/plain_plate.h"

namespace fb::test {

[[nodiscard]] inline Level plainLevel(const char* name, double along, std::array<double, 4> edges)
{
    return {name, Cm{along}, Cm{edges[0]}, Cm{edges[1]}, Cm{edges[2]}, Cm{edges[3]}};
}

// A chain of straight pieces.
[[nodiscard]] inline Ring plainLine(const std::vector<Point>& points)
{
    Ring ring{{points.front()}, false};
    for (std::size_t i = 1; i < points.size(); ++i) {
        const Point from = points[i - 1];
        const Point to = points[i];
        ring.points.insert(ring.points.end(), {lerp(from, to, 1.0 / 3.0), lerp(from, to, 2.0 / 3.0), to});
    }
    return ring;
}

[[nodiscard]] inline Plate plainLowerPlate(View view, double azimuth, std::vector<Limb> limbs)
{
    Plate plate;
    plate.view = view;
    plate.markable = true;
    plate.azimuth = Degrees{azimuth};
    plate.reference = {Sex::Male, 35.0, Cm{172.0}, Kg{70.0}};
    plate.paper = {{-30.0, -22.0}, {58.0, 28.0}};
    plate.limbs = std::move(limbs);
    return plate;
}

inline constexpr int kPlainPelvis = 0;
inline constexpr int kPlainThigh = 1;

[[nodiscard]] inline Plate plainHipSide()
{
    const Point joint{-1.75, 1.39};
    Plate plate = plainLowerPlate(View::HipSide, 90.0,
                                  {{"pelvis",
                                    -1,
                                    joint,
                                    Degrees{90.0},
                                    {plainLevel("waist", -21.0, {-12.0, -6.0, 3.0, 9.0}),
                                     plainLevel("crest", -14.8, {-12.5, -9.0, 3.0, 9.5}),
                                     plainLevel("asis", -8.6, {-13.0, -10.5, 5.2, 10.0}),
                                     plainLevel("hip", 0.0, {-12.0, -6.0, 3.0, 10.5}),
                                     plainLevel("fold", 5.5, {-10.0, -5.0, 3.0, 11.0})}},
                                   {"thigh",
                                    kPlainPelvis,
                                    joint,
                                    Degrees{115.0},
                                    {plainLevel("trochanter", 1.0, {-10.0, -4.2, 2.0, 10.0}),
                                     plainLevel("thigh-upper", 6.5, {-9.5, -3.0, 1.0, 9.5}),
                                     plainLevel("mid-thigh", 21.0, {-8.5, -1.4, 1.4, 8.5}),
                                     plainLevel("lower-thigh", 35.5, {-6.5, -1.6, 1.6, 6.5}),
                                     plainLevel("epicondyle", 40.9, {-6.0, -3.2, 3.2, 6.0})}}});
    plate.points = {{"landmark.greater-trochanter", {kPlainThigh, {0.0, 0.0}}},
                    {"landmark.lateral-femoral-epicondyle", {kPlainThigh, {35.1, 17.9}}},
                    {"landmark.asis", {kPlainPelvis, {-10.36, 6.61}}},
                    {"landmark.iliac-tubercle", {kPlainPelvis, {-13.36, 2.1}}},
                    {"landmark.iliac-crest", {kPlainPelvis, {-16.5, -1.4}}},
                    {"landmark.psis", {kPlainPelvis, {-12.1, -9.9}}},
                    {"landmark.ischial-tuberosity", {kPlainPelvis, {3.75, -3.6}}}};
    plate.lines = {{"line.iliac-crest",
                    {kPlainPelvis, plainLine({{-10.36, 6.61}, {-13.36, 2.1}, {-16.5, -1.4}, {-12.1, -9.9}})}},
                   {"line.superior-gluteal-nerve",
                    {kPlainPelvis, plainLine({{-4.0, -7.0}, {-7.0, -3.0}, {-7.5, 3.0}})}}};
    plate.areas = {{"area.bone.greater-trochanter", {kPlainThigh, plainBox(-2.5, 1.5, -2.2, 2.2)}}};
    return plate;
}

// Both views of a plain thigh: the hip's joint beside the trochanter, the picture's lower edge
// behind (from the side) or outside (from the front).
[[nodiscard]] inline Plate plainThigh(View view)
{
    const bool side = view == View::ThighSide;
    const double low = side ? 1.0 : 1.1;
    const Point joint{-1.0, side ? 2.0 : 2.3};
    Plate plate = plainLowerPlate(view, side ? 90.0 : 0.0,
                                  {{"pelvis",
                                    -1,
                                    joint,
                                    Degrees{90.0},
                                    {plainLevel("crest", -14.8, {-12.0 * low, -9.0, 3.0, 9.5}),
                                     plainLevel("asis", -8.6, {-12.0 * low, -9.0, 5.0, 10.0}),
                                     plainLevel("hip", 0.0, {-11.0, -4.5, 3.0, 10.5}),
                                     plainLevel("fold", 5.5, {-10.0, -4.0, 3.0, 10.0})}},
                                   {"thigh",
                                    kPlainPelvis,
                                    joint,
                                    Degrees{90.0},
                                    {plainLevel("trochanter", 1.0, {-10.0 * low, -4.2, 2.0, 10.0}),
                                     plainLevel("thigh-upper", 6.5, {-9.0 * low, -3.0, 1.0, 9.0}),
                                     plainLevel("mid-thigh", 21.0, {-8.0 * low, -1.4, 1.4, 8.0}),
                                     plainLevel("lower-thigh", 35.5, {-6.0 * low, -1.6, 1.6, 6.0}),
                                     plainLevel("epicondyle", 40.9, {-5.8 * low, -3.2, 3.2, 5.8})}}});
    plate.points = {{"landmark.greater-trochanter", {kPlainThigh, {0.0, 0.0}}},
                    {"landmark.lateral-femoral-epicondyle", {kPlainThigh, {39.9, side ? 2.0 : -2.2}}},
                    {"landmark.patella", {kPlainThigh, {40.3, side ? 7.0 : 2.3}}},
                    {"landmark.asis", {kPlainPelvis, {-9.6, side ? 7.2 : 1.8}}}};
    plate.areas = {{"area.bone.greater-trochanter", {kPlainThigh, plainBox(-2.5, 1.5, -2.0, 2.0)}},
                   {"area.bone.patella",
                    {kPlainThigh, side ? plainBox(38.0, 42.0, 6.0, 8.0) : plainBox(38.0, 42.5, 0.0, 4.6)}}};
    return plate;
}

}  // namespace fb::test
