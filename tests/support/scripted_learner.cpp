#include "tests/support/scripted_learner.h"

#include <algorithm>
#include <array>
#include <initializer_list>
#include <numbers>
#include <string_view>

#include "tests/support/core_atlas.h"
#include "tests/support/scripted_hand.h"

namespace fb::test {

namespace scripted_detail {

constexpr int kTries = 40;
constexpr double kMarkStep = 0.1;  // cm
constexpr double kFarthestMark = 15.0;
constexpr std::array kWays{Direction::High, Direction::Low, Direction::Forward, Direction::Back};

bool isAsked(Convention convention, Landmark landmark)
{
    const auto asked = askedLandmarks(convention);
    return std::ranges::find(asked, landmark) != asked.end();
}

// Where on a landmark a learner presses: a point, or anywhere along the line.
Point placeOn(const LandmarkPlace& place, SeedStream& stream)
{
    if (place.points.size() < 2)
        return place.points.front();
    const auto i = static_cast<std::size_t>(stream.below(static_cast<int>(place.points.size()) - 1));
    return lerp(place.points[i], place.points[i + 1], stream.unit());
}

bool isFlagOf(const PlantedError* error, PlantedError::Kind kind, Landmark landmark)
{
    return error && error->kind == kind && error->landmark == landmark;
}

}  // namespace scripted_detail

using namespace scripted_detail;

std::string shown(const PlantedError& error)
{
    using enum PlantedError::Kind;
    const auto joined = [](std::initializer_list<std::string_view> words) {
        std::string text;
        for (const std::string_view word : words) {
            if (!text.empty() && !word.empty())
                text += ' ';
            text += word;
        }
        return text;
    };
    const std::string_view way = error.way == Direction::None ? "" : wordOf(error.way);
    const std::string_view where = error.at ? wordOf(*error.at) : "";
    const std::string_view row = error.cell ? wordOf(error.cell->row) : "";
    const std::string_view column = error.cell ? wordOf(error.cell->column) : "";
    switch (error.kind) {
    case FlagMissing: return joined({wordOf(error.landmark), "missing"});
    case FlagOff: return joined({wordOf(error.landmark), "off", way});
    case FlagMisnamed: return joined({wordOf(error.landmark), "called", wordOf(error.called)});
    case Slip: return joined({wordOf(error.slip), where, row, column, way});
    case Mark: return joined({"mark", error.way == Direction::None ? "on a danger" : way});
    }
    return {};
}

Cause causeOf(const PlantedError& error)
{
    using enum PlantedError::Kind;
    using enum BuildStep;
    const auto flag = [&](FlagVerdict verdict) {
        return Cause{Cause::Part::Landmark, error.landmark, verdict, {}, {}};
    };
    const auto step = [&](BuildStep of) { return Cause{Cause::Part::Build, {}, {}, of, error.slip}; };
    switch (error.kind) {
    case FlagMissing: return flag(FlagVerdict::Missing);
    case FlagOff: return flag(FlagVerdict::Off);
    case FlagMisnamed: return flag(FlagVerdict::Misnamed);
    case Mark: return {Cause::Part::Mark, {}, {}, {}, {}};
    case Slip: break;
    }
    switch (error.slip) {
    case fb::Slip::FingersOff: return step(FingersLaid);
    case fb::Slip::FingersTurned: return step(FingersLevel);
    case fb::Slip::FingerCount: return step(BuildStep::FingerCount);
    case fb::Slip::BaseOff: return step(Base);
    case fb::Slip::ApexOff: return step(Apex);
    case fb::Slip::TopOff:
    case fb::Slip::BottomOff:
        return step(error.at == Handle::LineTop || error.at == Handle::LineBottom ? LineEnds : ThighEnds);
    case fb::Slip::HalfUneven: return step(LineHalved);
    case fb::Slip::ThirdsUneven: return step(Thirds);
    case fb::Slip::FrontLineOff: return step(FrontLine);
    case fb::Slip::OuterLineOff: return step(OuterLine);
    case fb::Slip::WrongCell: return step(Cell);
    case fb::Slip::WrongHand: return step(WhichHand);
    case fb::Slip::PalmOff: return step(Palm);
    case fb::Slip::IndexOff:
    case fb::Slip::IndexOnCrest: return step(IndexFinger);
    case fb::Slip::FingersClosed: return step(MiddleFinger);
    case fb::Slip::CornerTrochanterOff:
    case fb::Slip::CornerTubercleOff:
    case fb::Slip::CornerSpineOff: return step(Corners);
    case fb::Slip::MedianUneven: return step(Medians);
    case fb::Slip::None: break;
    }
    return {};
}

ScriptedLearner::ScriptedLearner(const Patient& patient, Convention convention, View view,
                                 const Policy& policy)
    : m_policy(policy),
      m_target(locate(atlas(), policy, patient, convention, view).value()),
      m_builder(Builder::from(policy)),
      m_plate(plateOf(view)),
      m_map(bodyMap(atlas(), view, patient).value())
{
}

std::vector<PlantedError> ScriptedLearner::everyError() const
{
    using enum PlantedError::Kind;
    std::vector<PlantedError> all;
    const auto flag = [&](PlantedError::Kind kind, Landmark landmark, Landmark called, Direction way) {
        all.push_back({kind, landmark, called, {}, {}, {}, way});
    };
    for (const Landmark landmark : askedLandmarks(m_target.convention)) {
        flag(FlagMissing, landmark, {}, Direction::None);
        for (const Direction way : kWays)
            flag(FlagOff, landmark, {}, way);
        for (const Landmark called : offeredLandmarks(m_target.site))
            if (!isAsked(m_target.convention, called))
                flag(FlagMisnamed, landmark, called, Direction::None);
    }
    for (const PlantedError& slip : everySlip(m_target, m_builder))
        all.push_back(slip);
    for (const Direction way : kWays)
        flag(Mark, {}, {}, way);
    flag(Mark, {}, {}, Direction::None);
    return all;
}

Attempted ScriptedLearner::flawless(SeedStream& stream) const
{
    return {*flags(nullptr, stream), *builtByHand(*this, nullptr, {}, stream), steadyMark(stream)};
}

std::optional<Attempted> ScriptedLearner::planted(const PlantedError& error, SeedStream& stream) const
{
    const auto planted = flags(&error, stream);
    if (!planted)
        return std::nullopt;
    std::optional<Misled> misled;
    if (error.kind == PlantedError::Kind::FlagOff) {
        const auto flag = std::ranges::find(*planted, error.landmark, &Flag::name);
        misled = Misled{error.landmark, flag->at - placeOf(m_target, error.landmark)->nearest(flag->at)};
    }
    const auto build = builtByHand(*this, &error, misled, stream);
    if (!build)
        return std::nullopt;
    if (error.kind == PlantedError::Kind::Mark) {
        const auto mark = wrongMark(error.way, stream);
        return mark ? std::optional(Attempted{*planted, *build, *mark}) : std::nullopt;
    }
    const Point led = *siteBy(*build, m_target, m_builder);
    const bool follows = error.kind == PlantedError::Kind::Slip || misled;
    return Attempted{*planted, *build, follows && isOnBody(led) ? led : steadyMark(stream)};
}

std::optional<Point> ScriptedLearner::flagAt(Landmark landmark, const PlantedError* error,
                                             SeedStream& stream) const
{
    const LandmarkPlace place = *placeOf(m_target, landmark);
    if (!isFlagOf(error, PlantedError::Kind::FlagOff, landmark))
        return scattered(placeOn(place, stream), m_policy.value(PolicyKey::FlagFound), stream);
    const double near = m_policy.value(PolicyKey::FlagNear);
    for (int i = 0; i < kTries; ++i) {
        const auto off = slippedFrom(m_target, placeOn(place, stream), error->way, near, stream);
        if (off && isOnBody(*off) && distance(place.nearest(*off), *off) >= near * kLeastSlip)
            return off;
    }
    return std::nullopt;
}

std::optional<std::vector<Flag>> ScriptedLearner::flags(const PlantedError* error, SeedStream& stream) const
{
    std::vector<Flag> flags;
    for (const Landmark landmark : askedLandmarks(m_target.convention)) {
        if (isFlagOf(error, PlantedError::Kind::FlagMissing, landmark))
            continue;
        const auto at = flagAt(landmark, error, stream);
        if (!at)
            return std::nullopt;
        const bool misnamed = isFlagOf(error, PlantedError::Kind::FlagMisnamed, landmark);
        // A name that fits the place as well is no error.
        if (misnamed)
            if (const auto own = placeOf(m_target, error->called);
                own && distance(own->nearest(*at), *at) <= m_policy.value(PolicyKey::FlagNear))
                return std::nullopt;
        flags.push_back({misnamed ? error->called : landmark, *at});
    }
    return flags;
}

Point ScriptedLearner::steadyMark(SeedStream& stream) const
{
    const double room = -m_target.regionSkin.signedDistance(m_target.idealSkin);
    return m_target.toViewer(scattered(m_target.idealSkin, room, stream));
}

std::optional<Point> ScriptedLearner::wrongMark(Direction way, SeedStream& stream) const
{
    const double turn = stream.between(0.0, 2.0 * std::numbers::pi);
    const auto skinWay = [&]() -> Point {
        switch (way) {
        case Direction::High: return {0.0, 1.0};
        case Direction::Low: return {0.0, -1.0};
        case Direction::Forward: return {1.0, 0.0};
        case Direction::Back: return {-1.0, 0.0};
        case Direction::None: break;
        }
        return {std::cos(turn), std::sin(turn)};
    };
    const auto at = [&](double far) { return m_target.toViewer(m_target.idealSkin + skinWay() * far); };
    const auto isWrong = [&](Point mark) {
        if (!isOnBody(mark))
            return false;
        const Verdict verdict = gradedMark(mark).verdict;
        return way == Direction::None ? verdict == Verdict::Unsafe
                                      : verdict == Verdict::OffTarget || verdict == Verdict::Unsafe;
    };
    for (double far = kMarkStep; far < kFarthestMark; far += kMarkStep) {
        if (!isWrong(at(far)))
            continue;
        const Point farther = at(far + stream.between(0.0, 2.0));
        return isWrong(farther) ? farther : at(far);
    }
    return std::nullopt;
}

ByHandGrade ScriptedLearner::graded(const Attempted& attempted) const
{
    return gradeByHand(m_target, m_policy, attempted.flags, attempted.build, gradedMark(attempted.mark));
}

Grade ScriptedLearner::gradedMark(Point mark) const
{
    const auto limb = markedLimb(m_plate, m_map, m_target.side, mark);
    return gradeMark(m_target, m_policy, mark, limb.value());
}

bool ScriptedLearner::isOnBody(Point viewer) const
{
    return markedLimb(m_plate, m_map, m_target.side, viewer).has_value();
}

}  // namespace fb::test
