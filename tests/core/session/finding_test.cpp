#include "core/session/finding.h"

#include <gtest/gtest.h>

#include <set>

using namespace fb;

namespace finding_test {

TEST(FindingTest, WhatIsOnTheSkinRulesOutItsOwnPartAndSide)
{
    for (const FindingCode code : {FindingCode::Rash, FindingCode::Scar, FindingCode::Bruise,
                                   FindingCode::Cast, FindingCode::LastInjection}) {
        const Finding thigh{code, BodyPart::Thigh, Side::Left};
        EXPECT_TRUE(rulesOut(thigh, Site::VastusLateralis, Side::Left));
        EXPECT_FALSE(rulesOut(thigh, Site::VastusLateralis, Side::Right));
        EXPECT_FALSE(rulesOut(thigh, Site::Ventrogluteal, Side::Left));
        EXPECT_FALSE(rulesOut(thigh, Site::Deltoid, Side::Left));
    }
}

TEST(FindingTest, FistulaAndMastectomySpareTheLowerBody)
{
    for (const FindingCode code : {FindingCode::Fistula, FindingCode::Mastectomy}) {
        const Finding finding{code, BodyPart::WholeSide, Side::Right};
        EXPECT_TRUE(rulesOut(finding, Site::Deltoid, Side::Right));
        EXPECT_FALSE(rulesOut(finding, Site::Deltoid, Side::Left));
        EXPECT_FALSE(rulesOut(finding, Site::Ventrogluteal, Side::Right));
        EXPECT_FALSE(rulesOut(finding, Site::VastusLateralis, Side::Right));
    }
}

TEST(FindingTest, APalsyRulesOutEverySiteOfItsSide)
{
    const Finding palsy{FindingCode::Paralysis, BodyPart::WholeSide, Side::Left};
    for (const Site site : kSites) {
        EXPECT_TRUE(rulesOut(palsy, site, Side::Left));
        EXPECT_FALSE(rulesOut(palsy, site, Side::Right));
    }
}

TEST(FindingTest, ARefusalIsHeldAgainstTheChart)
{
    const Finding rash{FindingCode::Rash, BodyPart::Hip, Side::Left};
    EXPECT_EQ(refused(rash, Site::Ventrogluteal, Side::Left, FindingCode::Rash), RefusalOutcome::RightReason);
    EXPECT_EQ(refused(rash, Site::Ventrogluteal, Side::Left, FindingCode::Scar), RefusalOutcome::WrongReason);
    EXPECT_EQ(refused(rash, Site::Ventrogluteal, Side::Right, FindingCode::Rash),
              RefusalOutcome::NothingRulesOut);
    EXPECT_EQ(refused(std::nullopt, Site::Deltoid, Side::Left, FindingCode::Rash),
              RefusalOutcome::NothingRulesOut);
}

TEST(FindingTest, EveryWordIsItsOwn)
{
    std::set<std::string_view> words;
    for (int i = 0; i < kFindingCodeCount; ++i)
        words.insert(wordOf(findingAt(i)));
    EXPECT_EQ(words.size(), static_cast<std::size_t>(kFindingCodeCount));
    for (const BodyPart part : {BodyPart::UpperArm, BodyPart::Thigh, BodyPart::Hip, BodyPart::WholeSide})
        words.insert(wordOf(part));
    for (int i = 0; i < kRefusalOutcomeCount; ++i)
        words.insert(wordOf(static_cast<RefusalOutcome>(i)));
    EXPECT_EQ(words.size(), static_cast<std::size_t>(kFindingCodeCount + 4 + kRefusalOutcomeCount));
    EXPECT_FALSE(words.contains(""));
}

TEST(FindingTest, EverySiteIsPartOfTheBody)
{
    EXPECT_EQ(partOf(Site::Deltoid), BodyPart::UpperArm);
    EXPECT_EQ(partOf(Site::VastusLateralis), BodyPart::Thigh);
    EXPECT_EQ(partOf(Site::Ventrogluteal), BodyPart::Hip);
}

}  // namespace finding_test
