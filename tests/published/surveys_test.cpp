// The engine's mean bodies against surveys of the living.
//
// ANSUR II: the 2012 public data of 1,986 women and 4,082 men of the US Army, 17 to 58 years
// (Gordon et al. 2014, NATICK/TR-15/007); a fit army, leaner in the waist and bigger in the
// arm than civilians of the same index. A regression passes through the mean of its own survey,
// so these rows guard the coefficients and are held to a tenth of the residual spread.
// NHANES 2009-10: civilians of 12 to 80 years and over, unweighted means of a teaching extract.
#include "tests/published/outside_row.h"

namespace fb::test::surveys_test {

namespace surveys_detail {

constexpr const char* kAnsurWomen = "ANSUR II 2012 public data, women, mean (Gordon et al. 2014)";
constexpr const char* kAnsurMen = "ANSUR II 2012 public data, men, mean (Gordon et al. 2014)";
constexpr const char* kNhanes = "NHANES 2009-10, unweighted mean of a public teaching extract";

// Mean stature, index and age of the two halves of the survey.
Patient armyWoman() { return bodyOf(Sex::Female, 162.85, 25.50, 28.9); }
Patient armyMan() { return bodyOf(Sex::Male, 175.62, 27.69, 30.2); }

double armLength(const Patient& patient) { return measured(proportions(), patient).armLength.value(); }

}  // namespace surveys_detail

TEST(Surveys, MeanSoldiersHaveTheMeansOfTheSurvey)
{
    using namespace surveys_detail;
    const Patient f = armyWoman();
    const Patient m = armyMan();
    expectAll({
        {"acromial height, women", meanOf(Measure::AcromialHeight, f), 133.51, 0.14, kAnsurWomen},
        {"acromial height, men", meanOf(Measure::AcromialHeight, m), 144.07, 0.16, kAnsurMen},
        {"acromion-radiale, women", armLength(f), 31.12, 0.10, kAnsurWomen},
        {"acromion-radiale, men", armLength(m), 33.52, 0.11, kAnsurMen},
        {"acromion to axilla, women", meanOf(Measure::AcromionToAxilla, f), 9.61, 0.10, kAnsurWomen},
        {"acromion to axilla, men", meanOf(Measure::AcromionToAxilla, m), 11.16, 0.10, kAnsurMen},
        {"biacromial breadth, women", meanOf(Measure::BiacromialBreadth, f), 36.53, 0.15, kAnsurWomen},
        {"biacromial breadth, men", meanOf(Measure::BiacromialBreadth, m), 41.57, 0.14, kAnsurMen},
        {"bideltoid breadth, women", meanOf(Measure::BideltoidBreadth, f), 45.03, 0.14, kAnsurWomen},
        {"bideltoid breadth, men", meanOf(Measure::BideltoidBreadth, m), 51.04, 0.15, kAnsurMen},
        {"biceps girth flexed, women", meanOf(Measure::BicepsGirthFlexed, f), 30.56, 0.14, kAnsurWomen},
        {"biceps girth flexed, men", meanOf(Measure::BicepsGirthFlexed, m), 35.81, 0.19, kAnsurMen},
        {"forearm girth flexed, women", meanOf(Measure::ForearmGirthFlexed, f), 26.41, 0.11, kAnsurWomen},
        {"forearm girth flexed, men", meanOf(Measure::ForearmGirthFlexed, m), 31.01, 0.13, kAnsurMen},
        {"neck girth, women", meanOf(Measure::NeckGirth, f), 32.98, 0.12, kAnsurWomen},
        {"neck girth, men", meanOf(Measure::NeckGirth, m), 39.77, 0.15, kAnsurMen},
        {"chest depth, women", meanOf(Measure::ChestDepth, f), 24.74, 0.15, kAnsurWomen},
        {"chest depth, men", meanOf(Measure::ChestDepth, m), 25.39, 0.12, kAnsurMen},
        {"waist depth, women", meanOf(Measure::WaistDepth, f), 21.30, 0.17, kAnsurWomen},
        {"waist depth, men", meanOf(Measure::WaistDepth, m), 23.78, 0.17, kAnsurMen},
        {"hand breadth, women", meanOf(Measure::HandBreadth, f), 7.82, 0.04, kAnsurWomen},
        {"hand breadth, men", meanOf(Measure::HandBreadth, m), 8.83, 0.04, kAnsurMen},
    });
}

TEST(Surveys, AxillaBelowAcromionFollowsStatureAndIndex)
{
    // Least squares on the individual records: women 1.00 + 0.0350 H + 0.1141 B (residual SD 1.01),
    // men -2.15 + 0.0511 H + 0.1565 B (0.97), worked out by hand at each body.
    using namespace surveys_detail;
    const auto gap = [](Sex sex, double stature, double index) {
        return measured(proportions(), bodyOf(sex, stature, index)).axillaDepth.value();
    };
    const char* women = "ANSUR II 2012 public data, acromion less axilla height, women, least squares";
    const char* men = "ANSUR II 2012 public data, acromion less axilla height, men, least squares";
    expectAll({
        {"woman 152 cm, index 20", gap(Sex::Female, 152, 20), 8.60, 0.05, women},
        {"woman 152 cm, index 32", gap(Sex::Female, 152, 32), 9.97, 0.05, women},
        {"woman 174 cm, index 20", gap(Sex::Female, 174, 20), 9.37, 0.05, women},
        {"woman 174 cm, index 32", gap(Sex::Female, 174, 32), 10.74, 0.05, women},
        {"man 165 cm, index 21", gap(Sex::Male, 165, 21), 9.57, 0.05, men},
        {"man 165 cm, index 35", gap(Sex::Male, 165, 35), 11.76, 0.05, men},
        {"man 187 cm, index 21", gap(Sex::Male, 187, 21), 10.69, 0.05, men},
        {"man 187 cm, index 35", gap(Sex::Male, 187, 35), 12.88, 0.05, men},
    });
}

TEST(Surveys, AxillaLiesAThirdDownTheArm)
{
    using namespace surveys_detail;
    const auto share = [](const Patient& p) {
        const BodyMeasures body = measured(proportions(), p);
        return body.axillaDepth / body.armLength;
    };
    expectAll({
        {"women", share(armyWoman()), 0.309, 0.036,
         "ANSUR II 2012 public data, mean of individual shares (SD)"},
        {"men", share(armyMan()), 0.333, 0.035, "ANSUR II 2012 public data, mean of individual shares (SD)"},
    });
}

TEST(Surveys, ProportionsMatchTheHandbook)
{
    // Independent of ANSUR: an older handbook, one figure for both sexes, good to 0.015 H.
    using namespace surveys_detail;
    const char* source =
        "Drillis and Contini 1966, as drawn in Winter, Biomechanics and Motor Control, fig. 4.1";
    const auto share = [](double value, const Patient& p) { return value / p.stature().value(); };
    for (const Patient& p : {bodyOf(Sex::Female, 163, 24), bodyOf(Sex::Male, 176, 24)}) {
        expectAll({
            {"acromion height over stature", share(meanOf(Measure::AcromialHeight, p), p), 0.818, 0.015,
             source},
            {"upper arm over stature", share(armLength(p), p), 0.186, 0.015, source},
            {"forearm over stature", share(meanOf(Measure::ForearmLength, p), p), 0.146, 0.015, source},
        });
    }
}

TEST(Surveys, YoungAdultsMatchTheRecordsOfYouths)
{
    // Two surveys that share no person with ANSUR. Statures of the Berkeley eighteen-year-olds are
    // taken as 179 and 166 cm (from memory).
    using namespace surveys_detail;
    const Patient boy = bodyOf(Sex::Male, 179.0, 21.5, 18.0);
    const Patient girl = bodyOf(Sex::Female, 166.0, 21.0, 18.0);
    expectAll({
        {"biacromial diameter, boys of 18", meanOf(Measure::BiacromialBreadth, boy), 40.88, 1.73,
         "Berkeley Child Guidance Study, Tuddenham and Snyder 1954, n = 66"},
        {"biacromial diameter, girls of 18", meanOf(Measure::BiacromialBreadth, girl), 36.54, 1.59,
         "Berkeley Child Guidance Study, Tuddenham and Snyder 1954, n = 70"},
        {"acromion-radiale over stature, 17.5 to 20 years", armLength(boy) / 179.0, 0.187, 0.006,
         "Snyder et al. 1977, UM-HSRI-77-17, individual records, sexes together"},
        {"acromion-radiale over stature, 17.5 to 20 years", armLength(girl) / 166.0, 0.187, 0.006,
         "Snyder et al. 1977, UM-HSRI-77-17, individual records, sexes together"},
    });
}

TEST(Surveys, ArmIsTwoToFourCentimetresShorterThanToTheOlecranon)
{
    // ANSUR's shoulder-elbow length ends at the olecranon of the bent elbow; NHANES starts at the
    // acromion's posterior edge, ends there too, and its tape follows the skin: one residual SD
    // (1.45 and 1.52 cm) is given on top of the two to four.
    using namespace surveys_detail;
    expectAll({
        {"shoulder-elbow length, women", armLength(armyWoman()) + 3.0, 33.43, 1.0, kAnsurWomen},
        {"shoulder-elbow length, men", armLength(armyMan()) + 3.0, 36.37, 1.0, kAnsurMen},
        {"upper arm length, women 20-64", armLength(bodyOf(Sex::Female, 162.1, 28.9)) + 3.0, 35.49, 2.45,
         kNhanes},
        {"upper arm length, men 20-64", armLength(bodyOf(Sex::Male, 175.6, 28.6)) + 3.0, 38.71, 2.52,
         kNhanes},
        {"upper arm length, women 65+", armLength(bodyOf(Sex::Female, 158.0, 28.5, 74)) + 3.0, 35.53, 2.45,
         kNhanes},
        {"upper arm length, men 65+", armLength(bodyOf(Sex::Male, 172.6, 28.4, 74)) + 3.0, 38.67, 2.52,
         kNhanes},
    });
}

TEST(Surveys, ArmsOfTheOldAreAsLongAsThoseOfTheYoung)
{
    // Stature falls with age, the arm does not: 35.3 to 35.1 cm in women, 38.4 to 38.5 in men
    // from the twenties to past eighty.
    using namespace surveys_detail;
    const auto change = [](Sex sex, double young, double old) {
        return armLength(bodyOf(sex, old, 26.0, 84.0)) - armLength(bodyOf(sex, young, 26.0, 25.0));
    };
    expectAll({
        {"women, 20s to 80+", change(Sex::Female, 162.1, 155.4), -0.2, 0.5, kNhanes},
        {"men, 20s to 80+", change(Sex::Male, 175.6, 170.2), 0.1, 0.5, kNhanes},
    });
}

TEST(Surveys, MidArmGirthFollowsTheIndexOfCivilians)
{
    // Class means; tolerance one SD of the class where it was given, else 1.9.
    using namespace surveys_detail;
    const auto girth = [](Sex sex, double index, double age = 48.0) {
        return meanOf(Measure::MidArmGirth, bodyOf(sex, sex == Sex::Female ? 161.0 : 174.8, index, age));
    };
    expectAll({
        {"women, index 18.5-22 (mean 20.6)", girth(Sex::Female, 20.6), 25.9, 1.7, kNhanes},
        {"women, index 22-25", girth(Sex::Female, 23.5), 28.4, 1.9, kNhanes},
        {"women, index 25-30", girth(Sex::Female, 27.4), 31.2, 1.9, kNhanes},
        {"women, index 30-35", girth(Sex::Female, 32.3), 34.6, 1.9, kNhanes},
        {"women, index 35-40", girth(Sex::Female, 37.2), 38.0, 1.9, kNhanes},
        {"women, index 40-50 (mean 43.5)", girth(Sex::Female, 43.5), 41.5, 3.6, kNhanes},
        {"women, index 50+", girth(Sex::Female, 55.0), 48.5, 5.7, kNhanes},
        {"men, index 18.5-22", girth(Sex::Male, 20.6), 27.8, 1.9, kNhanes},
        {"men, index 22-25", girth(Sex::Male, 23.6), 30.5, 1.9, kNhanes},
        {"men, index 25-30", girth(Sex::Male, 27.4), 33.3, 1.9, kNhanes},
        {"men, index 30-35", girth(Sex::Male, 32.2), 36.5, 1.9, kNhanes},
        {"men, index 35-40", girth(Sex::Male, 37.1), 39.2, 1.9, kNhanes},
        {"men, index 40-50 (mean 43.2)", girth(Sex::Male, 43.2), 43.1, 2.7, kNhanes},
        {"men, index 50+", girth(Sex::Male, 55.0), 49.2, 4.3, kNhanes},
        {"women 20+, all", girth(Sex::Female, 28.9), 32.39, 1.0, kNhanes},
        {"men 20+, all", girth(Sex::Male, 28.6), 34.01, 1.0, kNhanes},
        {"women 80+", meanOf(Measure::MidArmGirth, bodyOf(Sex::Female, 155.4, 26.3, 83)), 29.04, 2.0,
         kNhanes},
    });
}

}  // namespace fb::test::surveys_test
