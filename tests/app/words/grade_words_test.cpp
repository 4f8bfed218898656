#include "app/words/grade_words.h"

#include <gtest/gtest.h>

#include <QRegularExpression>
#include <QSet>
#include <vector>

namespace fb::test::grade_words_tests {

namespace grade_words_test {

std::vector<Reason> everyReason()
{
    std::vector<Reason> reasons;
    for (int direction = 0; direction < kDirectionCount; ++direction) {
        for (int tissue = 0; tissue < kTissueCount; ++tissue) {
            Reason reason{static_cast<Direction>(direction), Cm{1.8}, static_cast<Tissue>(tissue),
                          std::nullopt, Cm{}};
            reasons.push_back(reason);
            for (int note = 0; note < kHazardCodeCount; ++note) {
                reason.note = static_cast<HazardCode>(note);
                reason.clearance = Cm{0.4};
                reasons.push_back(reason);
                reason.clearance = Cm{};
                reasons.push_back(reason);
            }
        }
    }
    return reasons;
}

QString said(Verdict verdict, Direction direction, double amount, Tissue tissue)
{
    return reasonSentence(Site::Deltoid, verdict, Reason{direction, Cm{amount}, tissue, std::nullopt, Cm{}});
}

}  // namespace grade_words_test

using namespace grade_words_test;

TEST(GradeWordsTest, EveryCombinationIsOneWholeSentence)
{
    for (int round = 0; round < kVerdictCount * static_cast<int>(kSites.size()); ++round) {
        const int verdict = round % kVerdictCount;
        const Site site = kSites[static_cast<std::size_t>(round / kVerdictCount)];
        for (const Reason& reason : everyReason()) {
            const QString sentence = reasonSentence(site, static_cast<Verdict>(verdict), reason);
            const auto what = [&] {
                return QStringLiteral("site %1 verdict %2 direction %3 tissue %4 note %5: %6")
                    .arg(static_cast<int>(site))
                    .arg(verdict)
                    .arg(static_cast<int>(reason.direction))
                    .arg(static_cast<int>(reason.tissue))
                    .arg(reason.note ? static_cast<int>(*reason.note) : -1)
                    .arg(sentence)
                    .toStdString();
            };
            ASSERT_FALSE(sentence.isEmpty()) << what();
            ASSERT_TRUE(sentence.endsWith(QLatin1Char('.'))) << what();
            ASSERT_FALSE(sentence.contains(QRegularExpression(QStringLiteral("%\\d")))) << what();
        }
    }
}

TEST(GradeWordsTest, EveryEnumeratorHasAWordOfItsOwn)
{
    QSet<QString> words;
    for (int i = 0; i < kVerdictCount; ++i) {
        words.insert(verdictName(static_cast<Verdict>(i)));
        words.insert(verdictSentence(static_cast<Verdict>(i)));
    }
    for (int i = 0; i < kDirectionCount; ++i)
        words.insert(directionName(static_cast<Direction>(i)));
    for (int i = 0; i < kTissueCount; ++i)
        words.insert(tissueName(static_cast<Tissue>(i)));
    EXPECT_FALSE(words.contains(QString()));
    EXPECT_EQ(words.size(), 2 * kVerdictCount + kDirectionCount + kTissueCount);
}

TEST(GradeWordsTest, ReasonSaysDistanceDirectionTissueAndHarm)
{
    EXPECT_EQ(said(Verdict::Unsafe, Direction::High, 1.8, Tissue::SubacromialBursa),
              QStringLiteral(
                  "1.8 cm too high: over the subacromial bursa, where a needle can injure the shoulder."));
    EXPECT_EQ(
        said(Verdict::Unsafe, Direction::Low, 2.0, Tissue::RadialNerve),
        QStringLiteral("2.0 cm too low: below armpit level, where a needle can injure the radial nerve."));
    EXPECT_EQ(said(Verdict::Acceptable, Direction::Back, 0.3, Tissue::ThinMuscle),
              QStringLiteral("0.3 cm too far back, within the margin your lab accepts."));
}

TEST(GradeWordsTest, EachWayOutAndTissueReadsDifferently)
{
    QSet<QString> sentences;
    int combinations = 0;
    for (const Direction direction : {Direction::High, Direction::Low, Direction::Forward, Direction::Back}) {
        for (const Tissue tissue : {Tissue::ThickMuscle, Tissue::AcromionBone, Tissue::SubacromialBursa,
                                    Tissue::AxillaryNerve, Tissue::RadialNerve, Tissue::ThinMuscle}) {
            sentences.insert(said(Verdict::OffTarget, direction, 1.0, tissue));
            ++combinations;
        }
    }
    EXPECT_EQ(sentences.size(), combinations);
}

TEST(GradeWordsTest, InsideTheRegionTheClearanceIsTold)
{
    Reason reason{Direction::None, Cm{}, Tissue::ThickMuscle, HazardCode::BursaEdge, Cm{0.4}};
    EXPECT_EQ(reasonSentence(Site::Deltoid, Verdict::OnTarget, reason),
              QStringLiteral("On target. The lower edge of the bursa lies 0.4 cm above your mark."));
    reason.clearance = Cm{};
    EXPECT_FALSE(reasonSentence(Site::Deltoid, Verdict::OnTarget, reason).contains(QLatin1String(" cm")));
}

TEST(GradeWordsTest, OffsetsAreToldInAnatomicalDirectionsAtEverySite)
{
    for (const Site site : kSites) {
        Grade grade;
        grade.offDistal = Cm{-1.1};
        grade.offAnterior = Cm{-0.6};
        EXPECT_EQ(offsetsText(site, grade), QStringLiteral("0.6 cm too far back, 1.1 cm too high"));
        grade.offDistal = Cm{1.1};
        grade.offAnterior = Cm{0.6};
        EXPECT_EQ(offsetsText(site, grade), QStringLiteral("0.6 cm too far forward, 1.1 cm too low"));
        grade.offAnterior = Cm{0.04};
        EXPECT_EQ(offsetsText(site, grade), QStringLiteral("1.1 cm too low"));
        grade.offDistal = Cm{-0.04};
        EXPECT_EQ(offsetsText(site, grade), QStringLiteral("on the ideal point"));
        EXPECT_EQ(alongText(grade.offDistal), QStringLiteral("right height"));
    }
    EXPECT_EQ(acrossText(Site::Deltoid, Cm{}), QStringLiteral("on the mid-lateral line"));
    EXPECT_EQ(acrossText(Site::Ventrogluteal, Cm{}), QStringLiteral("right from front to back"));
}

TEST(GradeWordsTest, EachSiteNamesItsTwoWaysByItsOwnBody)
{
    QSet<QString> names;
    for (const Site site : kSites)
        names += {alongName(site), acrossName(site)};
    EXPECT_FALSE(names.contains(QString()));
    EXPECT_EQ(names.size(), 2 * static_cast<int>(kSites.size()));
}

TEST(GradeWordsTest, TheBorderItselfIsNeitherInsideNorOutside)
{
    EXPECT_EQ(borderText(Cm{0.0}), QStringLiteral("on the border"));
    EXPECT_EQ(borderText(Cm{-0.4}), QStringLiteral("0.4 cm inside"));
    EXPECT_EQ(borderText(Cm{1.8}), QStringLiteral("1.8 cm outside"));
}

TEST(GradeWordsTest, TheLeanOfARunIsToldTheWayItGoes)
{
    const Point lean{0.7, -0.6};
    EXPECT_EQ(leanSentence(Direction::High, lean),
              QStringLiteral("On average your marks lie 0.6 cm too high."));
    EXPECT_EQ(leanSentence(Direction::Forward, lean),
              QStringLiteral("On average your marks lie 0.7 cm too far forward."));
    EXPECT_EQ(leanSentence(Direction::Low, Point{0.0, 0.5}),
              QStringLiteral("On average your marks lie 0.5 cm too low."));
    EXPECT_EQ(leanSentence(Direction::Back, Point{-0.5, 0.0}),
              QStringLiteral("On average your marks lie 0.5 cm too far back."));
    EXPECT_EQ(leanSentence(Direction::None, lean), QStringLiteral("Your marks lean no particular way."));
}

}  // namespace fb::test::grade_words_tests
