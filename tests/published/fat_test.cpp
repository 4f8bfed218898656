// Fat over the three sites against measured depths. Such models are good to 40 percent, and that is
// what single means are held to; shares of people under an assumed spread to a few points.
#include <cmath>
#include <numbers>

#include "core/body/fat.h"
#include "tests/published/outside_row.h"

namespace fb::test::fat_test {

namespace fat_detail {

double fat(Site site, Sex sex, double index)
{
    return fatOver(site, proportions(), bodyOf(sex, sex == Sex::Female ? 163.0 : 176.0, index)).value();
}

double bothSexes(Site site, double index)
{
    return (fat(site, Sex::Female, index) + fat(site, Sex::Male, index)) / 2.0;
}

OutsideRow within40Percent(const char* what, double engine, double published, const char* source)
{
    return {what, engine, published, 0.4 * published, source};
}

// Percent of people thicker than this over the hip, their index being normal about a mean.
double percentOver(double mm, Sex sex, double mean, double sd)
{
    double low = 13.1;
    double high = 69.9;
    while (high - low > 1e-6) {
        const double middle = (low + high) / 2.0;
        (fat(Site::Ventrogluteal, sex, middle) < mm ? low : high) = middle;
    }
    return 50.0 * std::erfc((low - mean) / sd / std::numbers::sqrt2);
}

// The spread the facts sheet assumes for the people of the MRI study.
double womenOver(double mm) { return percentOver(mm, Sex::Female, 27.0, 6.5); }
double menOver(double mm) { return percentOver(mm, Sex::Male, 27.5, 4.5); }

constexpr const char* kMri = "Am J Ther 2019;26:e72, PMID 27574934; index assumed: 27 SD 6.5, 27.5 SD 4.5";
constexpr const char* kNisbet = "Nisbet 2006, BMJ 332:637, 100 adults by CT; index assumed as above";
constexpr const char* kGibney = "Gibney 2010, PMID 20429833: fat and skin, index about 30 (from memory)";
constexpr const char* kSheet = "facts sheet of the project, section 5: from NHANES 2009-10";

}  // namespace fat_detail

TEST(Fat, DeltoidIsThatOfMeasuredPeople)
{
    using namespace fat_detail;
    expectAll({
        within40Percent("deltoid mm, 126 women", fat(Site::Deltoid, Sex::Female, 26.0), 11.7,
                        "Poland 1997, JAMA 277:1709"),
        within40Percent("deltoid mm, 94 men of the same index", fat(Site::Deltoid, Sex::Male, 26.0), 8.3,
                        "Poland 1997, JAMA 277:1709"),
        // Half the survey's mean fold; its mean index is about 28.5.
        {"deltoid mm, women of the survey", fat(Site::Deltoid, Sex::Female, 28.5), 11.9, 0.3, kSheet},
        {"deltoid mm, men of the survey", fat(Site::Deltoid, Sex::Male, 28.5), 7.4, 0.3, kSheet},
        {"deltoid mm, women of index 22", fat(Site::Deltoid, Sex::Female, 22.0), 9.3, 0.05, kSheet},
        {"deltoid mm, women of index 40", fat(Site::Deltoid, Sex::Female, 40.0), 16.2, 0.05, kSheet},
        {"deltoid mm, men of index 22", fat(Site::Deltoid, Sex::Male, 22.0), 4.4, 0.05, kSheet},
        {"deltoid mm, men of index 40", fat(Site::Deltoid, Sex::Male, 40.0), 12.5, 0.05, kSheet},
    });
}

TEST(Fat, ThighIsThatOfMeasuredPeople)
{
    using namespace fat_detail;
    constexpr const char* kCt = "J Allergy Clin Immunol 2004;113(2S):S241, CT of 42 adults (abstract)";
    expectAll({
        within40Percent("front and outer thigh mm, 20 women", fat(Site::VastusLateralis, Sex::Female, 27.0),
                        17.4, kCt),
        within40Percent("front and outer thigh mm, 22 men", fat(Site::VastusLateralis, Sex::Male, 27.0), 7.4,
                        kCt),
        within40Percent("thigh mm, 388 adults with diabetes", bothSexes(Site::VastusLateralis, 30.0), 12.6,
                        kGibney),
        within40Percent("thigh mm for ten points of the index, both sexes",
                        bothSexes(Site::VastusLateralis, 35.0) - bothSexes(Site::VastusLateralis, 25.0), 4.0,
                        kGibney),
    });
}

TEST(Fat, HipSplitsPeopleAsMriDid)
{
    using namespace fat_detail;
    expectAll({
        {"percent over 20 mm, 224 women", womenOver(20.0), 47.0, 3.0, kMri},
        {"percent over 20 mm, 126 men", menOver(20.0), 32.0, 3.0, kMri},
        {"percent over 33 mm, women", womenOver(33.0), 22.0, 3.0, kMri},
        {"percent over 33 mm, men", menOver(33.0), 3.0, 3.0, kMri},
    });
}

TEST(Fat, HipSplitsPeopleAsCtDid)
{
    using namespace fat_detail;
    expectAll({
        {"percent over 25 mm, half of them women", (womenOver(25.0) + menOver(25.0)) / 2.0, 26.0, 4.0,
         kNisbet},
        {"percent over 35 mm, half of them women", (womenOver(35.0) + menOver(35.0)) / 2.0, 12.0, 4.0,
         kNisbet},
    });
}

TEST(Fat, HipIsThatOfTheWorkedExamples)
{
    using namespace fat_detail;
    constexpr const char* kExamples = "facts sheet of the project, section 5: its own rounded examples";
    expectAll({
        {"hip mm, women of index 22", fat(Site::Ventrogluteal, Sex::Female, 22.0), 11.0, 0.5, kExamples},
        {"hip mm, women of index 30", fat(Site::Ventrogluteal, Sex::Female, 30.0), 27.0, 0.5, kExamples},
        {"hip mm, women of index 40", fat(Site::Ventrogluteal, Sex::Female, 40.0), 57.0, 0.5, kExamples},
        {"hip mm, men of index 22", fat(Site::Ventrogluteal, Sex::Male, 22.0), 10.0, 0.5, kExamples},
        {"hip mm, men of index 30", fat(Site::Ventrogluteal, Sex::Male, 30.0), 21.0, 0.5, kExamples},
        {"hip mm, men of index 35", fat(Site::Ventrogluteal, Sex::Male, 35.0), 33.0, 0.5, kExamples},
    });
}

}  // namespace fb::test::fat_test
