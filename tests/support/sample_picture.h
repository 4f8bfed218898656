// A small artificial picture: an oblong body of ten by sixteen centimetres on paper of twenty
// by twenty, with one shape in each layer, a contour and a hatch.
#pragma once

#include <memory>
#include <utility>
#include <vector>

#include "app/canvas/ink_painter.h"
#include "core/geometry/cubic.h"

namespace fb::test {

[[nodiscard]] inline Ring ringThrough(const std::vector<Point>& corners)
{
    Ring ring;
    ring.points.push_back(corners.front());
    for (std::size_t i = 1; i <= corners.size(); ++i) {
        const Cubic line = Cubic::line(corners[i - 1], corners[i % corners.size()]);
        ring.points.insert(ring.points.end(), {line.b, line.c, line.d});
    }
    return ring;
}

[[nodiscard]] inline Ring oblong(double left, double right, double low, double high)
{
    return ringThrough({{left, low}, {right, low}, {right, high}, {left, high}});
}

// A thin lens from (left, y) to (right, y), `width` thick in its middle.
[[nodiscard]] inline Ring lens(double left, double right, double y, double width)
{
    return ringThrough(
        {{left, y}, {(left + right) / 2, y - width / 2}, {right, y}, {(left + right) / 2, y + width / 2}});
}

[[nodiscard]] inline Plate samplePlate()
{
    Plate plate;
    plate.view = View::ShoulderSide;
    plate.markable = true;
    plate.tones = {{"skin-base", "#ebccb0"}, {"skin-line", "#3d2a22"},   {"skin-hatch", "#6e4836"},
                   {"bone-base", "#e9dcbf"}, {"muscle-base", "#b9705f"}, {"cloth-base", "#dfe0dc"}};
    for (const Layer layer : kLayers) {
        Structure structure;
        structure.layer = layer;
        plate.structures.push_back(structure);
    }
    return plate;
}

// Structure i is the i-th layer; see samplePlate().
[[nodiscard]] inline MovedShape sampleShape(Layer layer, int tone, Ring ring, bool penStroke = false)
{
    MovedShape shape;
    shape.structure = static_cast<int>(layer);
    shape.tone = tone;
    shape.penStroke = penStroke;
    shape.rings.push_back(std::move(ring));
    return shape;
}

[[nodiscard]] inline std::shared_ptr<const Picture> samplePicture()
{
    auto picture = std::make_shared<Picture>();
    picture->plate = std::make_shared<const Plate>(samplePlate());
    picture->skinTone = 1;
    picture->ink.paper = {{-10, -10}, {10, 10}};
    picture->ink.shapes = {
        sampleShape(Layer::Bone, 3, oblong(-1, 1, -6, 6)),
        sampleShape(Layer::Muscle, 4, oblong(2, 4, -6, 6)),
        sampleShape(Layer::Skin, 0, oblong(-5, 5, -8, 8)),
        sampleShape(Layer::Skin, 1, lens(-5, 5, 7.5, 0.3), true),
        sampleShape(Layer::Skin, 2, lens(-4, -2, 3, 0.05), true),
        sampleShape(Layer::Cloth, 5, oblong(-5, 5, -10, -8)),
    };
    return picture;
}

}  // namespace fb::test
