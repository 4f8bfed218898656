#include "app/words/slip_words.h"

#include <gtest/gtest.h>

#include <QLocale>
#include <QRegularExpression>
#include <QSet>
#include <utility>

#include "app/words/grade_words.h"
#include "core/site/locate.h"
#include "tests/support/core_atlas.h"

namespace fb::test::slip_words_tests {

namespace slip_words_test {

Target targetOf(Convention convention, Side side = Side::Right)
{
    const View view = askedViews(siteOf(convention)).front();
    return locate(atlas(), defaultPolicy(), adult(Sex::Male, 176, 74, side), convention, view).value();
}

BuildStepGrade slipOf(Slip slip, Direction direction = Direction::Low)
{
    BuildStepGrade step;
    step.slip = slip;
    step.direction = direction;
    step.amount = Cm{3.1};
    step.degrees = Degrees{22.4};
    step.share = 0.084;
    return step;
}

BuildStepGrade withEffect(BuildStepGrade step, Verdict verdict)
{
    Effect effect;
    effect.moved = Cm{2.64};
    effect.grade.verdict = verdict;
    effect.grade.reason = {Direction::Low, Cm{1.2}, Tissue::TrochanterTendons, std::nullopt, Cm{}};
    step.effect = effect;
    return step;
}

constexpr std::array kDirections{Direction::None, Direction::High, Direction::Low, Direction::Forward,
                                 Direction::Back};

class SlipLocale {
public:
    explicit SlipLocale(const QLocale& locale) { QLocale::setDefault(locale); }
    SlipLocale(const SlipLocale&) = delete;
    SlipLocale& operator=(const SlipLocale&) = delete;
    ~SlipLocale() { QLocale::setDefault(m_before); }

private:
    QLocale m_before;
};

}  // namespace slip_words_test

using namespace slip_words_test;

TEST(SlipWordsTest, EveryStepHasANameOfItsOwn)
{
    QSet<QString> names;
    for (int i = 0; i < kBuildStepCount; ++i)
        names << buildStepName(static_cast<BuildStep>(i));
    EXPECT_FALSE(names.contains(QString()));
    EXPECT_EQ(names.size(), kBuildStepCount);
}

TEST(SlipWordsTest, EverySlipIsToldInWholeSentencesOfItsOwn)
{
    static const QRegularExpression kPlaceholder(QStringLiteral("%[0-9n]"));
    for (const Convention convention : kConventions) {
        const Target target = targetOf(convention);
        for (const Direction direction : kDirections) {
            QSet<QString> told;
            for (int i = 0; i < kSlipCount; ++i) {
                const QString text = slipSentence(slipOf(static_cast<Slip>(i), direction), target);
                EXPECT_TRUE(text.endsWith(QLatin1Char('.'))) << i << ": " << text.toStdString();
                EXPECT_FALSE(text.contains(kPlaceholder)) << text.toStdString();
                told << text;
            }
            EXPECT_EQ(told.size(), kSlipCount) << wordOf(convention);
        }
    }
}

TEST(SlipWordsTest, APlaceIsToldWithItsCentimetresAndItsWay)
{
    const Target hip = targetOf(Convention::VentroglutealHand);
    EXPECT_EQ(slipSentence(slipOf(Slip::PalmOff), hip),
              QStringLiteral("Palm: 3.1 cm too far toward the foot."));
    EXPECT_EQ(slipSentence(slipOf(Slip::PalmOff, Direction::Back), hip),
              QStringLiteral("Palm: 3.1 cm too far back."));
}

// On a patient who lies down, up in the picture is no way on the body.
TEST(SlipWordsTest, AWayIsToldOnTheBodyOfEverySite)
{
    const Cm off{0.8};
    EXPECT_EQ(awayText(Site::Deltoid, {Direction::High}, off), QStringLiteral("0.8 cm too high"));
    EXPECT_EQ(awayText(Site::Deltoid, {Direction::Low}, off), QStringLiteral("0.8 cm too low"));
    EXPECT_EQ(awayText(Site::Ventrogluteal, {Direction::High}, off),
              QStringLiteral("0.8 cm too far toward the head"));
    EXPECT_EQ(awayText(Site::VastusLateralis, {Direction::High}, off),
              QStringLiteral("0.8 cm too near the hip"));
    EXPECT_EQ(awayText(Site::VastusLateralis, {Direction::Low}, off),
              QStringLiteral("0.8 cm too near the knee"));
    EXPECT_EQ(awayText(Site::Ventrogluteal, {Direction::Forward}, off),
              QStringLiteral("0.8 cm too far forward"));
    EXPECT_EQ(awayText(Site::Ventrogluteal, {Direction::None}, off), QStringLiteral("0.8 cm away"));
}

TEST(SlipWordsTest, APlaceThatIsOffAslantIsToldInBothWaysFrontOrBackFirst)
{
    BuildStepGrade step = slipOf(Slip::FingersOff, Direction::Back);
    step.second = Direction::High;
    EXPECT_EQ(slipSentence(step, targetOf(Convention::DeltoidFingers)),
              QStringLiteral("Upper edge of your fingers: 3.1 cm too far back and too high."));
    std::swap(step.direction, step.second);
    EXPECT_EQ(slipSentence(step, targetOf(Convention::DeltoidFingers)),
              QStringLiteral("Upper edge of your fingers: 3.1 cm too far back and too high."));
    QSet<QString> told;
    for (const Site site : kSites)
        for (const Direction across : {Direction::Forward, Direction::Back})
            for (const Direction along : {Direction::High, Direction::Low}) {
                const QString text = awayText(site, {along, across}, Cm{0.8});
                EXPECT_TRUE(text.startsWith(QStringLiteral("0.8 cm too far "))) << text.toStdString();
                EXPECT_TRUE(text.contains(across == Direction::Forward ? QStringLiteral("forward and to")
                                                                       : QStringLiteral("back and to")));
                told << text;
            }
    EXPECT_EQ(told.size(), static_cast<qsizetype>(4 * kSites.size()));
}

TEST(SlipWordsTest, AStepThatWasCarriedAlongIsToldByHowMuch)
{
    BuildStepGrade step = slipOf(Slip::None);
    step.step = BuildStep::IndexFinger;
    step.carried = true;
    EXPECT_EQ(
        slipSentence(step, targetOf(Convention::VentroglutealHand)),
        QStringLiteral("Index finger to the iliac spine: right in itself, but carried along, 3.1 cm too "
                       "far toward the foot."));
}

TEST(SlipWordsTest, AnglesAndSharesAreToldInWholeNumbers)
{
    const Target arm = targetOf(Convention::DeltoidStrip);
    EXPECT_TRUE(slipSentence(slipOf(Slip::FingersTurned), arm).contains(QStringLiteral("22 degrees")));
    EXPECT_EQ(slipSentence(slipOf(Slip::HalfUneven, Direction::High), arm),
              QStringLiteral("Middle of the line: too high by 8 percent of the line."));
    EXPECT_NE(slipSentence(slipOf(Slip::ThirdsUneven), targetOf(Convention::VastusThirds)),
              slipSentence(slipOf(Slip::ThirdsUneven), targetOf(Convention::VastusHandbreadths)));
}

TEST(SlipWordsTest, TheRightHandIsToldForEitherHip)
{
    EXPECT_TRUE(slipSentence(slipOf(Slip::WrongHand), targetOf(Convention::VentroglutealHand, Side::Right))
                    .endsWith(QStringLiteral("The left hand belongs here.")));
    EXPECT_TRUE(slipSentence(slipOf(Slip::WrongHand), targetOf(Convention::VentroglutealHand, Side::Left))
                    .endsWith(QStringLiteral("The right hand belongs here.")));
}

TEST(SlipWordsTest, TooFewFingersAreToldApartFromTooMany)
{
    const Target arm = targetOf(Convention::DeltoidFingers);
    EXPECT_TRUE(slipSentence(slipOf(Slip::FingerCount, Direction::High), arm)
                    .contains(QStringLiteral("lay one more")));
    EXPECT_TRUE(slipSentence(slipOf(Slip::FingerCount, Direction::Low), arm)
                    .contains(QStringLiteral("lay one fewer")));
}

TEST(SlipWordsTest, TheEffectTellsHowFarTheNeedleMovesAndTheHarm)
{
    const Target hip = targetOf(Convention::VentroglutealHand);
    const BuildStepGrade unsafe = withEffect(slipOf(Slip::PalmOff), Verdict::Unsafe);
    const QString text = effectSentence(unsafe, hip);
    EXPECT_TRUE(
        text.startsWith(QStringLiteral("That alone would have moved the needle 2.6 cm, to an unsafe place.")))
        << text.toStdString();
    EXPECT_TRUE(text.endsWith(reasonSentence(Site::Ventrogluteal, unsafe.effect->grade)));
    QSet<QString> effects;
    for (int verdict = 0; verdict < kVerdictCount; ++verdict) {
        const QString effect =
            effectSentence(withEffect(slipOf(Slip::PalmOff), static_cast<Verdict>(verdict)), hip);
        EXPECT_TRUE(effect.contains(QStringLiteral("2.6 cm"))) << effect.toStdString();
        effects << effect;
    }
    EXPECT_EQ(effects.size(), kVerdictCount);
}

TEST(SlipWordsTest, WithoutAnEffectItIsSaidInGeneralAndOfARightStepNothing)
{
    const Target hip = targetOf(Convention::VentroglutealHand);
    EXPECT_FALSE(effectSentence(slipOf(Slip::PalmOff), hip).isEmpty());
    EXPECT_TRUE(effectSentence(slipOf(Slip::None), hip).isEmpty());
}

TEST(SlipWordsTest, NumbersFollowTheLocale)
{
    const SlipLocale locale(QLocale(QLocale::German));
    const Target hip = targetOf(Convention::VentroglutealHand);
    EXPECT_EQ(slipSentence(slipOf(Slip::PalmOff), hip),
              QStringLiteral("Palm: 3,1 cm too far toward the foot."));
    EXPECT_TRUE(effectSentence(withEffect(slipOf(Slip::PalmOff), Verdict::OnTarget), hip)
                    .contains(QStringLiteral("2,6 cm")));
}

}  // namespace fb::test::slip_words_tests
