#include "tests/support/scripted_hand.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "core/build/arm_build.h"
#include "core/build/hip_build.h"
#include "core/build/thigh_build.h"

namespace fb::test {

namespace scripted_hand_detail {

constexpr int kTries = 40;
constexpr double kAskew = 10.0 * std::numbers::pi / 180.0;  // a slip is hardly ever quite straight

Point turned(Point way, double by)
{
    return {way.x * std::cos(by) - way.y * std::sin(by), way.x * std::sin(by) + way.y * std::cos(by)};
}

// One build, handle by handle.
class Hand {
public:
    Hand(const ScriptedLearner& learner, const PlantedError* error, const std::optional<Misled>& misled,
         SeedStream& stream)
        : m_learner(learner),
          m_target(learner.target()),
          m_error(error && error->kind == PlantedError::Kind::Slip ? error : nullptr),
          m_misled(misled),
          m_stream(stream),
          m_build(flawlessBuild(m_target, learner.builder())),
          m_right(m_build)
    {
    }

    [[nodiscard]] std::optional<Build> built()
    {
        switch (buildKindOf(m_target.convention)) {
        case BuildKind::FingersAndTriangle: onShoulder(); break;
        case BuildKind::HalvedLine: halved(); break;
        case BuildKind::ThighGrid: onThigh(); break;
        case BuildKind::HandOnHip: onHip(); break;
        case BuildKind::TriangleAndMedians: medians(); break;
        }
        return m_possible ? std::optional(m_build) : std::nullopt;
    }

private:
    [[nodiscard]] double limit(PolicyKey key) const { return m_learner.policy().value(key); }
    [[nodiscard]] bool slips(Slip slip) const { return m_error && m_error->slip == slip; }
    [[nodiscard]] bool slipsAt(Handle handle) const { return m_error && m_error->at == handle; }
    [[nodiscard]] Point misledBy(Landmark landmark) const
    {
        return m_misled && m_misled->landmark == landmark ? m_misled->by : Point{};
    }
    double shake(double tolerance) { return m_stream.between(-kScatter, kScatter) * tolerance; }
    double slipSize(double tolerance) { return m_stream.between(kLeastSlip, kMostSlip) * tolerance; }
    double slipEitherWay(double tolerance)
    {
        return slipSize(tolerance) * (m_stream.below(2) == 0 ? 1.0 : -1.0);
    }

    // Where she puts a handle that belongs there.
    Point put(Handle handle, Point where, Landmark by)
    {
        const double place = limit(PolicyKey::BuildPlace);
        if (!slipsAt(handle))
            return scattered(where, place, m_stream) + misledBy(by);
        for (int i = 0; i < kTries; ++i) {
            const auto off = slippedFrom(m_target, where, m_error->way, place, m_stream);
            if (off && m_learner.isOnBody(*off))
                return *off;
        }
        m_possible = false;
        return where;
    }
    void putOwn(Handle handle, Landmark by)
    {
        m_build.point(handle) = put(handle, *m_right.point(handle), by);
    }
    // How far along her own line: low is farther along.
    double share(Handle handle, double right)
    {
        const double even = limit(PolicyKey::BuildShare);
        if (!slipsAt(handle))
            return right + shake(even);
        const double off = m_error->way == Direction::None ? slipEitherWay(even) : slipSize(even);
        return m_error->way == Direction::High ? right - off : right + off;
    }

    void onShoulder()
    {
        LaidFingers& fingers = *m_build.fingers;
        const double askew = limit(PolicyKey::BuildFingerTurn);
        fingers.hand = m_stream.below(2) == 0 ? Side::Left : Side::Right;
        fingers.top = put(Handle::Fingers, fingers.top, Landmark::Acromion);
        fingers.turn = Degrees{slips(Slip::FingersTurned) ? slipEitherWay(askew) : shake(askew)};
        if (slips(Slip::FingerCount)) {
            fingers.count = fingers.count == 2 ? 3 : 2;
            m_possible = !countFits(m_target, m_learner.builder(), fingers.count);
        }
        putOwn(Handle::BaseFront, Landmark::Acromion);
        putOwn(Handle::BaseBack, Landmark::Acromion);
        putOwn(Handle::Apex, Landmark::ArmpitLevel);
    }

    void halved()
    {
        putOwn(Handle::LineTop, Landmark::Acromion);
        putOwn(Handle::LineBottom, Landmark::DeltoidTuberosity);
        m_build.point(Handle::LineMiddle) =
            lerp(*m_build.point(Handle::LineTop), *m_build.point(Handle::LineBottom),
                 share(Handle::LineMiddle, middleShare(m_right)));
    }

    void onThigh()
    {
        putOwn(Handle::ThighTop, Landmark::GreaterTrochanter);
        putOwn(Handle::ThighBottom, Landmark::LateralFemoralCondyle);
        for (const Handle line : {Handle::UpperLine, Handle::LowerLine})
            m_build.point(line) = lerp(*m_build.point(Handle::ThighTop), *m_build.point(Handle::ThighBottom),
                                       share(line, lineShare(m_right, m_target, line)));
        putOwn(Handle::FrontLine, Landmark::Patella);
        putOwn(Handle::OuterLine, Landmark::LateralFemoralCondyle);
        if (slips(Slip::WrongCell))
            m_build.cell = m_error->cell;
    }

    void medians()
    {
        putOwn(Handle::CornerTrochanter, Landmark::GreaterTrochanter);
        putOwn(Handle::CornerTubercle, Landmark::IliacTubercle);
        putOwn(Handle::CornerSpine, Landmark::AnteriorSuperiorIliacSpine);
        for (const Handle foot : {Handle::FootTrochanter, Handle::FootTubercle, Handle::FootSpine}) {
            const MedianOf median = medianOf(foot);
            m_build.point(foot) =
                lerp(*m_build.point(median.sideFrom), *m_build.point(median.sideTo), share(foot, 0.5));
        }
    }

    // The hand that has the place belonging over the trochanter at `spot` and is turned by so many radians
    // from the right way.
    [[nodiscard]] FreeHand handAt(Point spot, double by) const
    {
        const FreeHand right = *m_right.hand;
        FreeHand hand = right;
        hand.palm = spot + turned(right.palm - rightSpot(), by);
        hand.turn = right.turn + fromRadians(by);
        return hand;
    }
    [[nodiscard]] Point rightSpot() const
    {
        const HandPose pose = poseOf(*m_right.hand, m_learner.builder().hand);
        const Point axis = (pose.indexTip - pose.wrist) * (1.0 / distance(pose.indexTip, pose.wrist));
        const Point trochanter = placeOf(m_target, Landmark::GreaterTrochanter)->points.front();
        return pose.wrist + axis * dot(trochanter - pose.wrist, axis);
    }

    void onHip()
    {
        const HandPose right = poseOf(*m_right.hand, m_learner.builder().hand);
        const Point spot = rightSpot();
        const double reach = distance(spot, right.indexTip);
        const double palm = limit(PolicyKey::BuildPalm);
        const double index = limit(PolicyKey::BuildIndex);
        const Point towardSpine = right.indexTip + misledBy(Landmark::AnteriorSuperiorIliacSpine) - spot;
        const Point was = right.indexTip - spot;
        const double misturned = std::atan2(cross(was, towardSpine), dot(was, towardSpine));
        Point laid = scattered(spot, palm, m_stream) + misledBy(Landmark::GreaterTrochanter);
        if (slips(Slip::PalmOff)) {
            const auto off = slippedFrom(m_target, spot, m_error->way, palm, m_stream);
            m_possible = off.has_value();
            laid = off.value_or(spot);
        }
        const Side rightHand = m_right.hand->hand;
        const double open = m_right.hand->opening.value();
        const double least = limit(PolicyKey::BuildLeastOpening);
        m_build.hand = handAt(laid, misturned + shake(index) / reach);
        // A palm that is right over the trochanter is no slip, wherever the finger ends.
        const Point trochanter = placeOf(m_target, Landmark::GreaterTrochanter)->points.front();
        if (slips(Slip::PalmOff) && distance(m_build.hand->palm, trochanter) <= palm * kLeastSlip)
            m_possible = false;
        if (slips(Slip::IndexOff) || slips(Slip::IndexOnCrest))
            m_possible = indexAside(spot, right.indexTip, reach);
        m_build.hand->hand = slips(Slip::WrongHand) ? opposite(rightHand) : rightHand;
        m_build.hand->opening =
            Degrees{slips(Slip::FingersClosed)
                        ? m_stream.between(kClosedOpening, least * (2.0 - kLeastSlip))
                        : std::clamp(open + shake(open - least), kClosedOpening, kMostOpening)};
    }

    // The palm where it belongs, the index fingertip on the crest, or on neither crest nor spine. The hand
    // turns about the place over the trochanter, or as the program turns it, about its palm.
    bool indexAside(Point spot, Point spine, double reach)
    {
        const LandmarkPlace crest = *placeOf(m_target, Landmark::IliacCrest);
        const double palm = limit(PolicyKey::BuildPalm);
        const double onCrest = limit(PolicyKey::BuildCrest);
        const double least = kLeastSlip * limit(PolicyKey::BuildIndex);
        const auto tipOf = [&](const FreeHand& hand) {
            return poseOf(hand, m_learner.builder().hand).indexTip;
        };
        for (int i = 0; i < kTries; ++i) {
            const double by = 2.0 * std::asin(slipEitherWay(limit(PolicyKey::BuildIndex)) / reach / 2.0);
            FreeHand hand = m_stream.below(2) == 0 ? handAt(spot, by) : *m_right.hand;
            hand.turn = m_right.hand->turn + fromRadians(by);
            Point slide = scattered({}, palm, m_stream);
            if (slips(Slip::IndexOnCrest)) {
                // As near the crest as the palm can slide for it.
                const Point way = crest.nearest(tipOf(hand)) - tipOf(hand);
                const double far = length(way);
                slide = far > 0.0 ? way * (std::min(far, kScatter * palm) / far) : Point{};
            }
            const Point turnedTip = tipOf(hand);
            const Point tip = turnedTip + slide;
            const double away = distance(crest.nearest(tip), tip);
            const bool meant =
                slips(Slip::IndexOnCrest) ? away <= kScatter * onCrest : away >= kLeastSlip * onCrest;
            if (meant && distance(tip, spine) >= least && distance(turnedTip, spine) >= least) {
                m_build.hand = slid(hand, hand.palm + slide);
                return true;
            }
        }
        return false;
    }

    const ScriptedLearner& m_learner;
    const Target& m_target;
    const PlantedError* m_error;
    std::optional<Misled> m_misled;
    SeedStream& m_stream;
    Build m_build;
    const Build m_right;
    bool m_possible = true;
};

}  // namespace scripted_hand_detail

using namespace scripted_hand_detail;

Point wayAt(const Target& target, Point viewer, Direction way)
{
    const Point skinWay = way == Direction::High      ? Point{0.0, 1.0}
                          : way == Direction::Low     ? Point{0.0, -1.0}
                          : way == Direction::Forward ? Point{1.0, 0.0}
                                                      : Point{-1.0, 0.0};
    const Point skin = target.toSkin(viewer);
    const Point moved = target.toViewer(skin + skinWay * 0.5) - target.toViewer(skin - skinWay * 0.5);
    const double size = length(moved);
    return size > 1e-9 ? moved * (1.0 / size) : Point{};
}

Point scattered(Point viewer, double tolerance, SeedStream& stream)
{
    const double turn = stream.between(0.0, 2.0 * std::numbers::pi);
    return viewer + turned({kScatter * tolerance * std::sqrt(stream.unit()), 0.0}, turn);
}

std::optional<Point> slippedFrom(const Target& target, Point viewer, Direction way, double tolerance,
                                 SeedStream& stream)
{
    for (int i = 0; i < kTries; ++i) {
        const Point off = viewer + turned(wayAt(target, viewer, way), stream.between(-kAskew, kAskew)) *
                                       (tolerance * stream.between(kLeastSlip, kMostSlip));
        if (directionOn(target, viewer, off) == way && distance(viewer, off) >= tolerance * kLeastSlip)
            return off;
    }
    return std::nullopt;
}

std::optional<Build> builtByHand(const ScriptedLearner& learner, const PlantedError* error,
                                 const std::optional<Misled>& misled, SeedStream& stream)
{
    return Hand(learner, error, misled, stream).built();
}

}  // namespace fb::test
