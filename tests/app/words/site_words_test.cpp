#include "app/words/site_words.h"

#include <gtest/gtest.h>

#include <QLocale>
#include <QSet>

#include "app/doors/library.h"

namespace fb::test {

namespace site_words_test {

template <class Words, class Codes>
void expectDistinctWords(const Codes& codes, const Words& words)
{
    QSet<QString> seen;
    for (const auto code : codes) {
        const QString text = words(code);
        EXPECT_FALSE(text.isEmpty()) << "code " << static_cast<int>(code);
        EXPECT_FALSE(seen.contains(text)) << text.toStdString();
        seen.insert(text);
    }
}

template <class Code>
std::vector<Code> firstCodes(int count)
{
    std::vector<Code> codes;
    for (int i = 0; i < count; ++i)
        codes.push_back(static_cast<Code>(i));
    return codes;
}

struct ArmBody {
    std::shared_ptr<const Library> library;
    Target target;
};

ArmBody armBody(double stature)
{
    const auto library = Library::load();
    EXPECT_TRUE(library.has_value());
    const auto patient = Patient::make(35.0, Sex::Male, Cm{stature}, Kg{70.0}, Side::Right);
    const auto target = locate(*(*library)->atlas(), (*library)->defaultPolicy(), *patient,
                               Convention::DeltoidStrip, View::ShoulderSide);
    EXPECT_TRUE(target.has_value());
    return {*library, *target};
}

}  // namespace site_words_test

using namespace site_words_test;

TEST(SiteWordsTest, EveryCodeHasWordsOfItsOwn)
{
    expectDistinctWords(kSites, siteName);
    expectDistinctWords(kSexes, sexName);
    expectDistinctWords(kSides, sideName);
    expectDistinctWords(kViews, viewName);
    expectDistinctWords(kLayers, layerName);
    expectDistinctWords(kConventions, conventionName);
    expectDistinctWords(firstCodes<HelpLevel>(kHelpLevelCount), helpLevelName);
    expectDistinctWords(firstCodes<HazardCode>(kHazardCodeCount), hazardName);
    expectDistinctWords(firstCodes<StepCode>(kStepCodeCount), stepName);
    for (const View view : kViews)
        EXPECT_FALSE(postureText(view).isEmpty());
}

TEST(SiteWordsTest, RequestNamesSiteAndSide)
{
    EXPECT_EQ(requestText(Site::Deltoid, Side::Left), QStringLiteral("Mark the deltoid site, left arm"));
    EXPECT_EQ(requestText(Site::Deltoid, Side::Right), QStringLiteral("Mark the deltoid site, right arm"));
}

TEST(SiteWordsTest, EveryLandmarkOfATargetHasAName)
{
    const ArmBody b = armBody(172.0);
    ASSERT_FALSE(b.target.landmarks.empty());
    for (const auto& [key, point] : b.target.landmarks)
        EXPECT_FALSE(landmarkName(key).isEmpty()) << key;
    EXPECT_TRUE(landmarkName("elbow_of_the_moon").isEmpty());
}

TEST(SiteWordsTest, RulesAreWholeSentencesWithTheNumbersOfThisArm)
{
    const ArmBody small = armBody(150.0);
    const ArmBody tall = armBody(195.0);
    const Policy& policy = small.library->defaultPolicy();
    for (const Convention convention : kConventions) {
        const QString rule = conventionRule(convention, policy, small.target);
        EXPECT_TRUE(rule.endsWith(QLatin1Char('.'))) << rule.toStdString();
        EXPECT_FALSE(rule.contains(QLatin1Char('%'))) << rule.toStdString();
        EXPECT_TRUE(rule.contains(QLatin1String(" cm"))) << rule.toStdString();
        EXPECT_FALSE(conventionSource(convention, policy).isEmpty());
        // A finger is as wide on any arm; every other rule grows with it.
        EXPECT_EQ(rule == conventionRule(convention, policy, tall.target),
                  convention == Convention::DeltoidFingers);
    }
}

TEST(SiteWordsTest, StripRuleSaysTheTargetsOwnNumbers)
{
    const ArmBody b = armBody(172.0);
    const Policy& policy = b.library->defaultPolicy();
    const QString rule = conventionRule(Convention::DeltoidStrip, policy, b.target);
    const double arm = b.target.armLength.value();
    for (const PolicyKey key : {PolicyKey::DeltoidStripTop, PolicyKey::DeltoidStripBottom}) {
        EXPECT_TRUE(rule.contains(cmText(policy.value(key) * arm))) << rule.toStdString();
        EXPECT_TRUE(rule.contains(QLocale().toString(policy.value(key), 'f', 3))) << rule.toStdString();
    }
}

TEST(SiteWordsTest, SourcesAreThoseOfThePolicyOnceEach)
{
    const auto library = Library::load();
    ASSERT_TRUE(library.has_value());
    const Policy& policy = (*library)->defaultPolicy();
    const QString source = conventionSource(Convention::DeltoidFingers, policy);
    EXPECT_EQ(source.count(QString::fromStdString(policy.source(PolicyKey::DeltoidFingersLow))), 1);
    EXPECT_TRUE(source.contains(QString::fromStdString(policy.source(PolicyKey::DeltoidFingerWidth))));
}

TEST(SiteWordsTest, CentimetresHaveOneDecimalOfTheLocaleAndNoNegativeZero)
{
    EXPECT_EQ(cmText(1.25), QStringLiteral("1.3 cm"));
    EXPECT_EQ(cmText(-0.04), QStringLiteral("0.0 cm"));
    const QLocale before;
    QLocale::setDefault(QLocale(QLocale::German));
    EXPECT_EQ(cmText(1.8), QStringLiteral("1,8 cm"));
    QLocale::setDefault(before);
}

}  // namespace fb::test
