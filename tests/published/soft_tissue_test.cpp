// Fat over the deltoid against measured depths. The engine takes half the triceps skinfold; such
// models are good to 40 percent, and that is what they are held to.
#include "tests/published/outside_row.h"

namespace fb::test::soft_tissue_test {

namespace soft_tissue_detail {

double fat(Sex sex, double index, double age = 40.0)
{
    return measured(proportions(), bodyOf(sex, sex == Sex::Female ? 163.0 : 176.0, index, age))
        .armFat.value();
}

OutsideRow within40(const char* what, double engine, double published, const char* source)
{
    return {what, engine, published, 0.4 * published, source};
}

}  // namespace soft_tissue_detail

TEST(SoftTissue, DeltoidFatIsThatOfMeasuredPeople)
{
    using namespace soft_tissue_detail;
    expectAll({
        within40("deltoid fat pad mm, 126 women", fat(Sex::Female, 26.0), 11.7, "Poland 1997, JAMA 277:1709"),
        within40("deltoid fat pad mm, 94 men of the same index", fat(Sex::Male, 26.0), 8.3,
                 "Poland 1997, JAMA 277:1709"),
        within40("upper arm mm, 388 adults with diabetes",
                 (fat(Sex::Female, 31.0) + fat(Sex::Male, 31.0)) / 2.0, 10.8, "Gibney 2010, PMID 20429833"),
        within40("skin to deltoid fascia mm, 75 years and over",
                 (fat(Sex::Female, 22.5, 80) + fat(Sex::Male, 22.5, 80)) / 2.0, 7.52,
                 "Nakayama 2022, Healthcare 10:800"),
        within40("skin to muscle mm, 402 adults of New Zealand",
                 (fat(Sex::Female, 28.5) + fat(Sex::Male, 28.5)) / 2.0, 13.3, "Hills 2022, Vaccine 40:4827"),
    });
}

TEST(SoftTissue, DeltoidFatGrowsWithTheIndexAsMeasured)
{
    using namespace soft_tissue_detail;
    expectAll({
        within40("mm for ten points of the index, women", fat(Sex::Female, 35.0) - fat(Sex::Female, 25.0),
                 4.0, "Gibney 2010, PMID 20429833"),
        within40("mm for ten points of the index, men", fat(Sex::Male, 35.0) - fat(Sex::Male, 25.0), 4.0,
                 "Gibney 2010, PMID 20429833"),
    });
}

TEST(SoftTissue, TricepsSkinfoldIsThatOfTheSurvey)
{
    const auto fold = [](Sex sex, double index) {
        return meanOf(Measure::TricepsSkinfold, bodyOf(sex, 168.0, index));
    };
    // One residual SD; the survey's mean index is about 28.5.
    expectAll({
        {"triceps skinfold mm, women 20+", fold(Sex::Female, 28.5), 23.82, 5.2, "NHANES 2009-10, n = 2584"},
        {"triceps skinfold mm, men 20+", fold(Sex::Male, 28.5), 14.88, 4.7, "NHANES 2009-10, n = 2608"},
    });
}

}  // namespace fb::test::soft_tissue_test
