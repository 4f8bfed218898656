#include "app/words/reason_words.h"

#include <gtest/gtest.h>

#include <QRegularExpression>
#include <QSet>
#include <vector>

namespace fb::test::reason_words_tests {

namespace reason_words_test {

using SiteReason = QString (*)(Verdict, const Reason&);

// What core can report off the region, way by way, at a site.
struct Row {
    SiteReason site;
    Direction direction;
    std::vector<Tissue> tissues;
};

const std::vector<Row>& rows()
{
    static const std::vector<Row> all{
        {thighReason,
         Direction::High,
         {Tissue::TrochanterBone, Tissue::HipRegion, Tissue::FemoralVessels, Tissue::SciaticNerve,
          Tissue::RectusFemoris, Tissue::ThinMuscle}},
        {thighReason,
         Direction::Low,
         {Tissue::PatellaBone, Tissue::KneeRegion, Tissue::FemoralVessels, Tissue::SciaticNerve,
          Tissue::RectusFemoris, Tissue::ThinMuscle}},
        {thighReason,
         Direction::Forward,
         {Tissue::PatellaBone, Tissue::HipRegion, Tissue::KneeRegion, Tissue::FemoralVessels,
          Tissue::RectusFemoris, Tissue::ThinMuscle}},
        {thighReason,
         Direction::Back,
         {Tissue::TrochanterBone, Tissue::HipRegion, Tissue::KneeRegion, Tissue::SciaticNerve,
          Tissue::Hamstrings, Tissue::ThinMuscle}},
        {hipReason,
         Direction::High,
         {Tissue::CrestBone, Tissue::AbdominalWall, Tissue::SuperiorGluteal, Tissue::FrontOfHip,
          Tissue::HipMuscle}},
        {hipReason,
         Direction::Low,
         {Tissue::TrochanterBone, Tissue::TrochanterTendons, Tissue::SciaticNerve, Tissue::SuperiorGluteal,
          Tissue::FrontOfHip, Tissue::HipMuscle}},
        {hipReason,
         Direction::Forward,
         {Tissue::TrochanterBone, Tissue::TrochanterTendons, Tissue::CrestBone, Tissue::AbdominalWall,
          Tissue::FrontOfHip, Tissue::HipMuscle}},
        {hipReason,
         Direction::Back,
         {Tissue::TrochanterBone, Tissue::TrochanterTendons, Tissue::CrestBone, Tissue::AbdominalWall,
          Tissue::SciaticNerve, Tissue::SuperiorGluteal, Tissue::HipMuscle}}};
    return all;
}

Reason off(Direction direction, Tissue tissue) { return {direction, Cm{1.8}, tissue, std::nullopt, Cm{}}; }

QString way(Direction direction)
{
    static const QString words[]{{}, "too high", "too low", "too far forward", "too far back"};
    return words[static_cast<int>(direction)];
}

}  // namespace reason_words_test

using namespace reason_words_test;

TEST(ReasonWordsTest, EveryMissTellsDistanceWayAndPlaceInWordsOfItsOwn)
{
    for (const Row& row : rows()) {
        QSet<QString> seen;
        for (const Tissue tissue : row.tissues) {
            const QString sentence = row.site(Verdict::OffTarget, off(row.direction, tissue));
            EXPECT_TRUE(sentence.startsWith(QStringLiteral("1.8 cm ") + way(row.direction)))
                << sentence.toStdString();
            EXPECT_TRUE(sentence.endsWith(QLatin1Char('.'))) << sentence.toStdString();
            seen.insert(sentence);
        }
        EXPECT_EQ(seen.size(), static_cast<int>(row.tissues.size()));
    }
}

TEST(ReasonWordsTest, NothingAtAnySiteIsEmptyOrLeavesAPlaceholder)
{
    static const QRegularExpression kPlaceholder(QStringLiteral("%\\d"));
    for (const SiteReason site : {deltoidReason, thighReason, hipReason}) {
        for (int verdict = 0; verdict < kVerdictCount; ++verdict) {
            for (int direction = 0; direction < kDirectionCount; ++direction) {
                for (int tissue = 0; tissue < kTissueCount; ++tissue) {
                    const QString sentence =
                        site(static_cast<Verdict>(verdict),
                             off(static_cast<Direction>(direction), static_cast<Tissue>(tissue)));
                    ASSERT_TRUE(sentence.endsWith(QLatin1Char('.')))
                        << verdict << ' ' << direction << ' ' << tissue << ": " << sentence.toStdString();
                    ASSERT_FALSE(sentence.contains(kPlaceholder)) << sentence.toStdString();
                }
            }
        }
    }
}

TEST(ReasonWordsTest, TheHipsFlagsNameTheHarmOfEachMiss)
{
    const auto says = [](Direction direction, Tissue tissue, const char* words) {
        const QString sentence = hipReason(Verdict::Unsafe, off(direction, tissue));
        EXPECT_TRUE(sentence.contains(QLatin1String(words))) << sentence.toStdString();
    };
    says(Direction::Low, Tissue::TrochanterTendons, "tendon and bone");
    says(Direction::High, Tissue::AbdominalWall, "abdominal wall");
    says(Direction::Forward, Tissue::FrontOfHip, "in front of the line from spine to trochanter");
    says(Direction::Back, Tissue::SciaticNerve, "sciatic nerve");
    says(Direction::Back, Tissue::SuperiorGluteal, "superior gluteal nerve and artery");
}

TEST(ReasonWordsTest, TheVentroglutealRegionIsNeverCalledFreeOfNerves)
{
    for (const std::optional<HazardCode> note :
         {std::optional<HazardCode>{}, std::optional(HazardCode::SuperiorGluteal)}) {
        for (const double away : {0.0, 0.7}) {
            const QString sentence = hipReason(
                Verdict::OnTarget, Reason{Direction::None, Cm{}, Tissue::ThickMuscle, note, Cm{away}});
            EXPECT_TRUE(sentence.contains(QStringLiteral("branches of the superior gluteal nerve")))
                << sentence.toStdString();
            EXPECT_FALSE(sentence.contains(QStringLiteral("free of"))) << sentence.toStdString();
        }
    }
}

TEST(ReasonWordsTest, AMarkOnAnotherPartOfTheBodyIsToldWhereTheSiteLies)
{
    const auto saysSite = [](SiteReason site, Tissue tissue, const char* words) {
        const QString sentence = site(Verdict::Unsafe, off(Direction::Low, tissue));
        EXPECT_TRUE(sentence.contains(QLatin1String(words))) << sentence.toStdString();
        EXPECT_FALSE(sentence.contains(QStringLiteral("1.8 cm"))) << sentence.toStdString();
    };
    saysSite(deltoidReason, Tissue::Trunk, "the deltoid site lies");
    saysSite(thighReason, Tissue::Pelvis, "the vastus lateralis site lies lower");
    saysSite(thighReason, Tissue::Leg, "the vastus lateralis site lies higher");
    saysSite(hipReason, Tissue::ThighBelowHip, "the ventrogluteal site lies higher");
    saysSite(hipReason, Tissue::Leg, "the ventrogluteal site lies");
}

TEST(ReasonWordsTest, TheRectusFemorisIsToldOfOnTargetJustOutsideAndBeyond)
{
    Reason reason{Direction::None, Cm{}, Tissue::ThickMuscle, HazardCode::RectusFemoris, Cm{0.4}};
    EXPECT_EQ(thighReason(Verdict::OnTarget, reason),
              QStringLiteral("On target. The rectus femoris, with vessels and a nerve under it, begins 0.4 "
                             "cm in front of your mark."));
    reason = off(Direction::Forward, Tissue::RectusFemoris);
    for (const Verdict verdict : {Verdict::Acceptable, Verdict::OffTarget})
        EXPECT_TRUE(thighReason(verdict, reason).contains(QStringLiteral("vessels and a nerve under it")));
}

TEST(ReasonWordsTest, WithinTheMarginTheWayIsTold)
{
    EXPECT_EQ(withinMargin(Direction::Low, Cm{0.3}),
              QStringLiteral("0.3 cm too low, within the margin your lab accepts."));
    EXPECT_FALSE(withinMargin(Direction::None, Cm{}).contains(QStringLiteral(" cm")));
}

}  // namespace fb::test::reason_words_tests
