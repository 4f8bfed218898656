#include "core/body/fat.h"

#include <gtest/gtest.h>

#include <cmath>
#include <nlohmann/json.hpp>

#include "tests/support/core_atlas.h"

using namespace fb;
using nlohmann::json;

namespace fat_test {

namespace {

Patient ofIndex(Sex sex, double index) { return test::adult(sex, 165.0, test::weightOf(index, 165.0)); }

double fat(Site site, Sex sex, double index)
{
    return fatOver(site, test::proportions(), ofIndex(sex, index)).value();
}

}  // namespace

TEST(FatTest, OverTheDeltoidItIsTheArmsOwn)
{
    for (const double index : {14.0, 22.0, 40.0, 65.0}) {
        EXPECT_EQ(fatOver(Site::Deltoid, test::proportions(), ofIndex(Sex::Male, index)),
                  measured(test::proportions(), ofIndex(Sex::Male, index)).armFat);
    }
}

TEST(FatTest, OverTheThighItIsStraightInTheIndexDownToItsFloor)
{
    EXPECT_NEAR(fat(Site::VastusLateralis, Sex::Female, 25.0), 13.0, 1e-9);
    EXPECT_NEAR(fat(Site::VastusLateralis, Sex::Female, 45.0), 22.0, 1e-9);
    EXPECT_NEAR(fat(Site::VastusLateralis, Sex::Male, 25.0), 7.0, 1e-9);
    EXPECT_NEAR(fat(Site::VastusLateralis, Sex::Male, 45.0), 14.0, 1e-9);
    EXPECT_EQ(fat(Site::VastusLateralis, Sex::Male, 13.5), 3.0);
}

TEST(FatTest, OverTheHipItRisesByAShareAndGoesStraightWithoutAStep)
{
    EXPECT_NEAR(fat(Site::Ventrogluteal, Sex::Female, 27.4), 20.0, 1e-9);
    EXPECT_NEAR(fat(Site::Ventrogluteal, Sex::Male, 29.6), 20.0, 1e-9);
    for (const Sex sex : kSexes) {
        const double low = fat(Site::Ventrogluteal, sex, 21.0) / fat(Site::Ventrogluteal, sex, 20.0);
        const double high = fat(Site::Ventrogluteal, sex, 26.0) / fat(Site::Ventrogluteal, sex, 25.0);
        EXPECT_NEAR(low, high, 1e-9);
        EXPECT_NEAR(fat(Site::Ventrogluteal, sex, 51.0) - fat(Site::Ventrogluteal, sex, 50.0), 3.0, 1e-9);
        // Where it turns straight the two meet.
        const double growth = test::proportions().hipFat(sex).growth;
        const double turn = test::proportions().hipFat(sex).atIndex + std::log(33.0 / 20.0) / growth;
        EXPECT_NEAR(fat(Site::Ventrogluteal, sex, turn - 1e-6), 33.0, 1e-4);
        EXPECT_NEAR(fat(Site::Ventrogluteal, sex, turn + 1e-6), 33.0, 1e-4);
    }
}

TEST(FatTest, ItNeverFallsWithTheIndexAndIsNeverNothing)
{
    for (const Site site : kSites) {
        for (const Sex sex : kSexes) {
            double before = 0.0;
            for (double index = 13.1; index < 70.0; index += 0.1) {
                const double now = fat(site, sex, index);
                EXPECT_GE(now, before) << wordOf(site) << ' ' << index;
                EXPECT_GT(now, 0.5);
                EXPECT_LT(now, 160.0);
                before = now;
            }
        }
    }
}

TEST(FatTest, WomenCarryMoreThanMenOfTheSameIndex)
{
    for (const Site site : kSites) {
        for (double index = 18.0; index < 60.0; index += 1.0)
            EXPECT_GT(fat(site, Sex::Female, index), fat(site, Sex::Male, index)) << wordOf(site);
    }
}

TEST(FatTest, TheNumbersAreThoseOfTheFile)
{
    json other = json::parse(test::sourceFile("resources/proportions/adult.json"));
    other["thigh_fat"]["least_mm"] = 9.0;
    other["hip_fat"]["male"]["mm"] = 10.0;
    const Proportions table = Proportions::parse(other.dump()).value();
    EXPECT_EQ(fatOver(Site::VastusLateralis, table, ofIndex(Sex::Male, 18.0)), Mm{9.0});
    EXPECT_NEAR(fatOver(Site::Ventrogluteal, table, ofIndex(Sex::Male, 29.6)).value(), 10.0, 1e-9);
}

}  // namespace fat_test
