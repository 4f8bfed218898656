// The requests of a sheet: sheet.h, requestsOf.
#include <gtest/gtest.h>

#include <set>

#include "core/basics/seed_stream.h"
#include "tests/support/check_off_course.h"
#include "tests/support/random_sheet.h"

using namespace fb;

namespace sheet_requests_test {

namespace {

std::string shown(const SetRequest& set)
{
    const Patient& p = set.request.patient;
    return std::to_string(set.request.number) + " " + std::string(wordOf(set.request.view)) + " " +
           std::string(wordOf(p.side())) + " " + std::string(wordOf(p.sex())) + " " +
           std::to_string(static_cast<int>(p.ageYears())) + " y " +
           std::to_string(static_cast<int>(p.stature().value())) + " cm " +
           std::to_string(static_cast<int>(p.weight().value())) + " kg tone " +
           std::to_string(set.request.skinTone);
}

bool isSame(const SetRequest& a, const SetRequest& b)
{
    return a.request.number == b.request.number && a.request.site == b.request.site &&
           a.request.view == b.request.view && a.request.patient == b.request.patient &&
           a.request.skinTone == b.request.skinTone && a.help == b.help && a.byHand == b.byHand;
}

}  // namespace

TEST(SheetRequestsTest, EachItemIsAskedAsItSays)
{
    for (std::uint64_t seed = 1; seed <= 400; ++seed) {
        SeedStream stream(seed);
        const Sheet sheet = test::randomSheet(stream);
        const auto requests = requestsOf(sheet, seed);
        ASSERT_EQ(requests.size(), sheet.items.size());
        for (std::size_t i = 0; i < requests.size(); ++i) {
            const SheetItem& item = sheet.items[i];
            const Request& request = requests[i].request;
            EXPECT_EQ(request.number, static_cast<int>(i));
            EXPECT_EQ(request.site, item.site);
            EXPECT_EQ(request.view, item.view);
            EXPECT_FALSE(request.finding);
            EXPECT_EQ(requests[i].help, item.help);
            EXPECT_EQ(requests[i].byHand, item.byHand);
            if (item.side) {
                EXPECT_EQ(request.patient.side(), *item.side);
            }
        }
    }
}

TEST(SheetRequestsTest, WhoIsDrawnIsOfThePopulation)
{
    Sheet sheet = test::plainSheet(20);
    for (std::uint64_t seed = 1; seed <= 50; ++seed) {
        sheet.population = Population::Lean;
        for (const SetRequest& set : requestsOf(sheet, seed))
            EXPECT_LT(set.request.patient.bodyMassIndex(), 22.0);
        sheet.population = Population::Average;
        for (const SetRequest& set : requestsOf(sheet, seed)) {
            EXPECT_GE(set.request.patient.bodyMassIndex(), 22.0);
            EXPECT_LT(set.request.patient.bodyMassIndex(), 30.0);
        }
        sheet.population = Population::Heavy;
        for (const SetRequest& set : requestsOf(sheet, seed))
            EXPECT_GE(set.request.patient.bodyMassIndex(), 30.0);
    }
}

// Whoever fits is asked whatever the population; only who does not is drawn anew.
TEST(SheetRequestsTest, APopulationChangesOnlyWhoDoesNotFit)
{
    Sheet sheet = test::plainSheet(20);
    const auto any = requestsOf(sheet, 3);
    sheet.population = Population::Average;
    const auto average = requestsOf(sheet, 3);
    int kept = 0;
    for (std::size_t i = 0; i < any.size(); ++i) {
        const double index = any[i].request.patient.bodyMassIndex();
        EXPECT_EQ(isSame(any[i], average[i]), index >= 22.0 && index < 30.0) << i;
        kept += isSame(any[i], average[i]) ? 1 : 0;
    }
    EXPECT_GT(kept, 3);
    EXPECT_LT(kept, 20);
}

TEST(SheetRequestsTest, TheFirstDrawIsThatOfPractice)
{
    Sheet sheet = test::plainSheet(5);
    for (SheetItem& item : sheet.items)
        item.side.reset();
    const auto requests = requestsOf(sheet, 77);
    for (int i = 0; i < 5; ++i) {
        const Request drawn = requestFrom(77, i);
        EXPECT_EQ(requests[static_cast<std::size_t>(i)].request.patient, drawn.patient);
        EXPECT_EQ(requests[static_cast<std::size_t>(i)].request.skinTone, drawn.skinTone);
    }
}

TEST(SheetRequestsTest, NobodyIsAskedTwiceOnOneSheet)
{
    Sheet sheet = test::plainSheet(20);
    sheet.population = Population::Lean;
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        std::set<double> arms;
        for (const SetRequest& set : requestsOf(sheet, seed))
            arms.insert(set.request.patient.individual().armLength);
        EXPECT_EQ(arms.size(), 20U) << "seed " << seed;
    }
}

TEST(SheetRequestsTest, TheSeedRuleSaysWhoseSeedCounts)
{
    Sheet sheet = test::plainSheet(3);
    sheet.seed = 12;
    EXPECT_FALSE(isSame(requestsOf(sheet, 1)[0], requestsOf(sheet, 2)[0]));
    sheet.seedRule = SeedRule::SameForAll;
    EXPECT_TRUE(isSame(requestsOf(sheet, 1)[0], requestsOf(sheet, 2)[0]));
    EXPECT_EQ(requestsOf(sheet, 1)[0].request.patient.individual(), requestFrom(12, 0).patient.individual());
}

// A record of today names the same patients in ten years.
TEST(SheetRequestsTest, TheSameForEver)
{
    Sheet sheet = test::plainSheet(2);
    sheet.items.push_back({Site::VastusLateralis, std::nullopt, View::ThighFront});
    sheet.items.push_back({Site::Ventrogluteal, std::nullopt, View::HipSide});
    std::string all;
    for (const Population population : {Population::Any, Population::Lean, Population::Heavy}) {
        sheet.population = population;
        for (const SetRequest& set : requestsOf(sheet, 2026))
            all += shown(set) + "\n";
    }
    EXPECT_EQ(all, R"(0 shoulder-side left male 27 y 165 cm 101 kg tone 3
1 shoulder-side left male 88 y 167 cm 68 kg tone 2
2 thigh-front left female 45 y 157 cm 56 kg tone 1
3 hip-side left female 30 y 166 cm 112 kg tone 2
0 shoulder-side left female 49 y 159 cm 55 kg tone 0
1 shoulder-side left female 88 y 167 cm 61 kg tone 2
2 thigh-front right male 62 y 180 cm 67 kg tone 3
3 hip-side left male 52 y 170 cm 57 kg tone 1
0 shoulder-side left male 27 y 165 cm 101 kg tone 3
1 shoulder-side left male 64 y 188 cm 129 kg tone 1
2 thigh-front left male 54 y 171 cm 89 kg tone 1
3 hip-side left female 30 y 166 cm 112 kg tone 2
)");
}

}  // namespace sheet_requests_test
