#include "core/body/moved_ink.h"

#include <algorithm>
#include <functional>
#include <limits>

#include "core/plate/ring.h"

namespace fb {

namespace moved_detail {

constexpr double kLongestPiece = 1.0;  // cm, before moving

using Mover = std::function<Point(Point)>;

Ring movedArea(const Ring& ring, const Mover& move)
{
    Ring moved = cut(ring, kLongestPiece);
    std::ranges::transform(moved.points, moved.points.begin(), move);
    return moved;
}

// How a line turns at a point when it is moved: cosine and sine between its directions there
// before and after. A point without a direction turns by nothing.
Point turnAt(const std::vector<Point>& drawn, const std::vector<Point>& moved, std::size_t j)
{
    const std::size_t before = j > 0 ? j - 1 : j;
    const std::size_t after = std::min(j + 1, drawn.size() - 1);
    const Point u = drawn[after] - drawn[before];
    const Point v = moved[after] - moved[before];
    const double size = length(u) * length(v);
    return size > 0.0 ? Point{dot(u, v) / size, cross(u, v) / size} : Point{1.0, 0.0};
}

// Point j of the way out faces point j of the way back; their middle is moved, and they are
// set again as they were drawn about the line's new direction, so that the pen keeps its weight.
Ring movedStroke(const Ring& ring, const Mover& move)
{
    Ring moved = ring;
    const std::size_t out = (pieceCount(ring) - 1) / 2;  // pieces on one side
    const std::size_t last = 6 * out + 3;                // end of the way back
    std::vector<Point> drawnMiddle;
    std::vector<Point> movedMiddle;
    for (std::size_t j = 0; j <= 3 * out; ++j) {
        drawnMiddle.push_back(lerp(ring.points[j], ring.points[last - j], 0.5));
        movedMiddle.push_back(move(drawnMiddle.back()));
    }
    for (std::size_t j = 0; j <= 3 * out; ++j) {
        const Point half = (ring.points[j] - ring.points[last - j]) * 0.5;
        const Point turn = turnAt(drawnMiddle, movedMiddle, j);
        const Point step{half.x * turn.x - half.y * turn.y, half.x * turn.y + half.y * turn.x};
        moved.points[j] = movedMiddle[j] + step;
        moved.points[last - j] = movedMiddle[j] - step;
    }
    // The short ways across the tip and the start.
    const auto straighten = [&](std::size_t from) {
        const Cubic line = Cubic::line(moved.points[from], moved.points[from + 3]);
        moved.points[from + 1] = line.b;
        moved.points[from + 2] = line.c;
    };
    straighten(3 * out);
    if (moved.points.size() > last + 1) {
        moved.points[last + 3] = moved.points.front();
        straighten(last);
    }
    return moved;
}

// How strongly a cue shows on this body, 0 to 1. Drawing numbers, not clinical ones.
double strength(Cue cue, const Patient& patient)
{
    const auto ramp = [](double value, double from, double to) {
        return std::clamp((value - from) / (to - from), 0.0, 1.0);
    };
    const double index = patient.bodyMassIndex();
    switch (cue) {
    case Cue::Always: return 1.0;
    case Cue::Lean: return 1.0 - 0.85 * ramp(index, 23.0, 36.0);
    case Cue::Full: return ramp(index, 26.0, 38.0);
    case Cue::Older: return ramp(patient.ageYears(), 50.0, 75.0);
    }
    return 1.0;
}

Gradient movedGradient(const Gradient& gradient, const Mover& move)
{
    Gradient moved = gradient;
    moved.from = move(gradient.from);
    moved.to = move(gradient.to);
    return moved;
}

Bounds noBounds()
{
    constexpr double kFar = std::numeric_limits<double>::max();
    return {{kFar, kFar}, {-kFar, -kFar}};
}

void widen(Bounds& bounds, const Ring& ring)
{
    for (const Point p : ring.points) {
        bounds.low = {std::min(bounds.low.x, p.x), std::min(bounds.low.y, p.y)};
        bounds.high = {std::max(bounds.high.x, p.x), std::max(bounds.high.y, p.y)};
    }
}

void mirror(MovedInk& ink)
{
    for (MovedShape& shape : ink.shapes) {
        for (Ring& ring : shape.rings)
            std::ranges::transform(ring.points, ring.points.begin(), mirrored);
    }
    for (Gradient& gradient : ink.gradients) {
        gradient.from = mirrored(gradient.from);
        gradient.to = mirrored(gradient.to);
    }
    ink.paper = {{-ink.paper.high.x, ink.paper.low.y}, {-ink.paper.low.x, ink.paper.high.y}};
}

}  // namespace moved_detail

using namespace moved_detail;

MovedInk movedInk(const Plate& plate, const BodyMap& map, const Patient& patient)
{
    MovedInk ink;
    const std::vector<LimbMap> muscle = map.muscleMaps(plate);
    const auto moverOf = [&](int limb, Layer layer) -> Mover {
        // Nerves and vessels lie on the bone, as their distances are published.
        if (layer == Layer::Bone || layer == Layer::Nerve || layer == Layer::Vessel)
            return [&map, limb](Point p) { return map.boneToPatient(limb, p); };
        if (layer == Layer::Muscle) {
            const Limb& drawn = plate.limbs[static_cast<std::size_t>(limb)];
            return [&map, &muscle, limb, frame = LimbFrame::at(drawn.joint, drawn.angle)](Point p) {
                return map.limbFrame(limb).toFrame(
                    muscle[static_cast<std::size_t>(limb)].toPatient(frame.toLocal(p)));
            };
        }
        return [&map, limb](Point p) { return map.toPatient(limb, p); };
    };
    for (const Gradient& gradient : plate.gradients)
        ink.gradients.push_back(movedGradient(gradient, moverOf(gradient.limb, Layer::Skin)));

    Bounds drawn = noBounds();
    Bounds moved = noBounds();
    for (std::size_t s = 0; s < plate.structures.size(); ++s) {
        const Structure& structure = plate.structures[s];
        const Mover move = moverOf(structure.limb, structure.layer);
        for (const InkShape& shape : structure.shapes) {
            const double opacity = shape.opacity * strength(shape.cue, patient);
            MovedShape out{static_cast<int>(s), {}, shape.tone, shape.gradient, opacity, shape.penStroke};
            for (const Ring& ring : shape.rings) {
                out.rings.push_back(shape.penStroke ? movedStroke(ring, move) : movedArea(ring, move));
                widen(drawn, ring);
                widen(moved, out.rings.back());
            }
            if (opacity > 0.0)
                ink.shapes.push_back(std::move(out));
        }
    }
    // The paper keeps the margins it was drawn with.
    ink.paper = {plate.paper.low + (moved.low - drawn.low), plate.paper.high + (moved.high - drawn.high)};
    if (patient.side() == Side::Left)
        mirror(ink);
    return ink;
}

int limbAt(const Plate& plate, const BodyMap& map, Side side, Point viewer)
{
    const Point frame = side == Side::Left ? mirrored(viewer) : viewer;
    for (int limb = map.limbCount() - 1; limb >= 0; --limb) {
        const Point drawn = map.toPlate(limb, frame);
        for (const Structure& structure : plate.structures) {
            if (structure.layer != Layer::Skin || structure.limb != limb)
                continue;
            const auto covered = [&](const InkShape& shape) {
                return !shape.penStroke && covers(shape.rings, drawn);
            };
            if (std::ranges::any_of(structure.shapes, covered))
                return limb;
        }
    }
    return -1;
}

}  // namespace fb
