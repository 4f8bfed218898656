// Every result can be replayed: same inputs, same bytes, in every build.
//
// golden_grades.txt is compared byte for byte, so Debug, Release and sanitizer builds agree
// with one another. After a change of core that is meant to change grades, write it anew:
//     FINGERBREADTH_WRITE_GOLDEN=1 .build/ci/tests/core_tests --gtest_filter='ReplayLaw.*'
// and read the difference before it is kept.
#include <gtest/gtest.h>

#include <cstdlib>
#include <cstring>
#include <fstream>
#include <sstream>

#include "core/grade/grade.h"
#include "tests/property/plain_lower_plates.h"
#include "tests/property/sampling.h"

namespace fb::test::replay_law_test {

namespace replay_law_detail {

constexpr const char* kGolden = "tests/property/golden_grades.txt";

std::string number(double value)
{
    std::array<char, 64> text{};
    std::snprintf(text.data(), text.size(), "%.6f", value);
    return text.data();
}

std::string written(const Grade& grade)
{
    std::ostringstream out;
    out << wordOf(grade.verdict) << ' ' << (grade.inside ? "inside" : "outside") << " border "
        << number(grade.distanceToBorder.value()) << " distal " << number(grade.offDistal.value())
        << " anterior " << number(grade.offAnterior.value()) << " ideal "
        << number(grade.distanceToIdeal.value()) << " hazard "
        << (grade.hazard ? wordOf(*grade.hazard) : "none") << " reason " << wordOf(grade.reason.direction)
        << ' ' << number(grade.reason.amount.value()) << ' ' << wordOf(grade.reason.tissue) << " note "
        << (grade.reason.note ? wordOf(*grade.reason.note) : "none") << ' '
        << number(grade.reason.clearance.value()) << " points " << number(grade.points);
    return out.str();
}

std::vector<double> numbersOf(const Grade& grade)
{
    return {grade.distanceToBorder.value(), grade.offDistal.value(),     grade.offAnterior.value(),
            grade.distanceToIdeal.value(),  grade.reason.amount.value(), grade.reason.clearance.value()};
}

// Where marks are tried about a site, in the picture of a right side.
Bounds marksAbout(Site site)
{
    switch (site) {
    case Site::Deltoid: return {{-6.0, -14.0}, {6.0, 2.0}};
    case Site::VastusLateralis: return {{-4.0, -9.0}, {44.0, 11.0}};
    case Site::Ventrogluteal: return {{-18.0, -10.0}, {5.0, 10.0}};
    }
    return {};
}

// Marks about the site of request `number`, from the same seed.
std::vector<Point> marksOf(int number, int count, Site site = Site::Deltoid)
{
    SeedStream stream(1000 + static_cast<std::uint64_t>(number));
    std::vector<Point> marks;
    for (int i = 0; i < count; ++i)
        marks.push_back(pointIn(stream, marksAbout(site)));
    return marks;
}

MarkedLimb askedLimb(Site site)
{
    if (site == Site::Deltoid)
        return MarkedLimb::Arm;
    return site == Site::VastusLateralis ? MarkedLimb::Thigh : MarkedLimb::Pelvis;
}

// The plain plates of every asked view.
class PlainAtlas {
public:
    [[nodiscard]] Atlas atlas() const
    {
        Atlas all;
        const auto put = [&](const Plate& plate) {
            all.plates[static_cast<std::size_t>(plate.view)] = &plate;
        };
        for (const Plate& plate : m_plates)
            put(plate);
        all.proportions = &proportions();
        return all;
    }

private:
    std::vector<Plate> m_plates{plainPlate(), plainHipSide(), plainThigh(View::ThighSide),
                                plainThigh(View::ThighFront)};
};

// The marks are those of a right side, mirrored on a left one of hip and thigh.
void writeGrades(std::ostream& out, const Atlas& atlas, View view, int request)
{
    const Site site = siteOf(view);
    const Patient patient = sampledPatient(59, request);
    const Convention convention = conventionInTurn(site, request);
    const Target target = locate(atlas, defaultPolicy(), patient, convention, view).value();
    for (Point mark : marksOf(request, 6, site)) {
        if (site != Site::Deltoid && patient.side() == Side::Left)
            mark = mirrored(mark);
        out << "seed 59 request " << request << ' ' << wordOf(convention);
        if (site == Site::VastusLateralis)
            out << ' ' << wordOf(view);
        out << " mark " << number(mark.x) << ',' << number(mark.y) << ": "
            << written(gradeMark(target, defaultPolicy(), mark, askedLimb(site))) << '\n';
    }
}

std::string goldenText()
{
    const PlainAtlas plain;
    std::ostringstream out;
    for (const auto& [view, requests] : {std::pair{View::ShoulderSide, 60}, std::pair{View::HipSide, 60},
                                         std::pair{View::ThighSide, 30}, std::pair{View::ThighFront, 30}}) {
        for (int request = 0; request < requests; ++request)
            writeGrades(out, plain.atlas(), view, request);
    }
    return out.str();
}

}  // namespace replay_law_detail

TEST(ReplayLaw, GoldenGradesAreTheSameBytesInEveryBuild)
{
    using namespace replay_law_detail;
    const std::string grades = goldenText();
    if (std::getenv("FINGERBREADTH_WRITE_GOLDEN") != nullptr)
        std::ofstream(std::string(FINGERBREADTH_SOURCE_DIR) + "/" + kGolden, std::ios::binary) << grades;
    std::istringstream now(grades);
    std::istringstream then(sourceFile(kGolden));
    std::string a;
    std::string b;
    for (int line = 1; std::getline(then, b); ++line) {
        std::getline(now, a);
        ASSERT_EQ(a, b) << kGolden << " line " << line;
    }
    EXPECT_EQ(grades, sourceFile(kGolden));
}

TEST(ReplayLaw, GoldenGradesHoldEveryVerdict)
{
    const std::string grades = sourceFile(replay_law_detail::kGolden);
    for (const Verdict verdict :
         {Verdict::OnTarget, Verdict::Acceptable, Verdict::OffTarget, Verdict::Unsafe})
        EXPECT_NE(grades.find(": " + std::string(wordOf(verdict)) + " "), std::string::npos)
            << wordOf(verdict);
}

TEST(ReplayLaw, SameInputsGiveTheSameBytes)
{
    using namespace replay_law_detail;
    for (int request = 0; request < rounds(500); ++request) {
        const Patient patient = sampledPatient(61, request);
        ASSERT_EQ(patient, sampledPatient(61, request));
        for (const Point mark : marksOf(request, 3)) {
            const auto once = numbersOf(gradeMark(targetOf(patient, Convention::DeltoidStrip),
                                                  defaultPolicy(), mark, MarkedLimb::Arm));
            const auto again = numbersOf(gradeMark(targetOf(patient, Convention::DeltoidStrip),
                                                   defaultPolicy(), mark, MarkedLimb::Arm));
            ASSERT_EQ(std::memcmp(once.data(), again.data(), once.size() * sizeof(double)), 0) << request;
        }
    }
}

TEST(ReplayLaw, NumbersOfAGradeAreRoundedToAMillionthOfACentimetre)
{
    using namespace replay_law_detail;
    for (int request = 0; request < rounds(500); ++request) {
        const Target target = targetOf(sampledPatient(67, request), conventionInTurn(Site::Deltoid, request));
        for (const Point mark : marksOf(request, 5)) {
            for (const double value : numbersOf(gradeMark(target, defaultPolicy(), mark, MarkedLimb::Arm))) {
                ASSERT_EQ(value, rounded6(value)) << "seed 67, request " << request;
                ASSERT_FALSE(value == 0.0 && std::signbit(value)) << "seed 67, request " << request;
            }
        }
    }
}

TEST(ReplayLaw, RoundingIsItsOwnRoundingAndWithinHalfAMillionth)
{
    SeedStream stream(71);
    for (int i = 0; i < 100'000; ++i) {
        const double value = stream.between(-300.0, 300.0);
        ASSERT_EQ(rounded6(rounded6(value)), rounded6(value));
        ASSERT_LE(std::abs(rounded6(value) - value), 0.5e-6 + 1e-12);
        ASSERT_EQ(rounded6(-value), -rounded6(value));
    }
    EXPECT_FALSE(std::signbit(rounded6(-1e-9)));
}

TEST(ReplayLaw, RequestsOfASeedStandAlone)
{
    for (int request = 0; request < 50; ++request) {
        const Request once = requestFrom(73, request);
        EXPECT_NE(requestFrom(74, request).patient, once.patient);
        const Request again = requestFrom(73, request);
        EXPECT_EQ(once.patient, again.patient);
        EXPECT_EQ(once.skinTone, again.skinTone);
        EXPECT_EQ(once.number, request);
    }
}

}  // namespace fb::test::replay_law_test
