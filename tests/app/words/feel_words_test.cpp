#include "app/words/feel_words.h"

#include <gtest/gtest.h>

#include <QLocale>
#include <QRegularExpression>
#include <QSet>

#include "app/words/landmark_words.h"
#include "core/site/locate.h"
#include "tests/support/core_atlas.h"

namespace fb::test::feel_words_tests {

namespace feel_words_test {

Feel feelOf(Firmness firmness, BoneShape shape, Clearness clearness = Clearness::Plain, double fat = 6.0)
{
    Feel feel;
    feel.firmness = firmness;
    feel.shape = shape;
    feel.clearness = clearness;
    feel.fat = Mm{fat};
    return feel;
}

Target hip(Side side)
{
    return locate(atlas(), defaultPolicy(), adult(Sex::Female, 165, 70, side), Convention::VentroglutealHand,
                  View::HipSide)
        .value();
}

std::vector<Feel> everyFeel()
{
    std::vector<Feel> feels;
    for (int firmness = 0; firmness < kFirmnessCount; ++firmness)
        for (int shape = 0; shape < kBoneShapeCount; ++shape)
            for (int clearness = 0; clearness < kClearnessCount; ++clearness)
                for (const std::optional<Point>& toward :
                     {std::optional<Point>{}, std::optional<Point>{{1, 0}}, std::optional<Point>{{-1, 0}},
                      std::optional<Point>{{0, 1}}, std::optional<Point>{{0, -1}}}) {
                    Feel feel = feelOf(static_cast<Firmness>(firmness), static_cast<BoneShape>(shape),
                                       static_cast<Clearness>(clearness), 22.4);
                    feel.toward = toward;
                    feel.along = toward;
                    feels.push_back(feel);
                }
    return feels;
}

class FeelLocale {
public:
    explicit FeelLocale(const QLocale& locale) { QLocale::setDefault(locale); }
    FeelLocale(const FeelLocale&) = delete;
    FeelLocale& operator=(const FeelLocale&) = delete;
    ~FeelLocale() { QLocale::setDefault(m_before); }

private:
    QLocale m_before;
};

}  // namespace feel_words_test

using namespace feel_words_test;

TEST(FeelWordsTest, EveryFeelHasWordsWithoutAPlaceholder)
{
    static const QRegularExpression kPlaceholder(QStringLiteral("%[0-9n]"));
    const Target target = hip(Side::Left);
    for (const Feel& feel : everyFeel()) {
        for (const QString& text :
             {feelName(feel), clearnessText(feel), feelPlaque(feel, target, target.ideal, Cm{4.2}),
              feelSentence(feel, target, target.ideal, Cm{4.2})}) {
            EXPECT_FALSE(text.isEmpty());
            EXPECT_FALSE(text.contains(kPlaceholder)) << text.toStdString();
        }
        EXPECT_LE(feelName(feel).size(), 22) << "too long to stand beside a finger";
    }
}

TEST(FeelWordsTest, EachFeelReadsDifferently)
{
    const QSet<QString> names{feelName(feelOf(Firmness::Soft, BoneShape::None)),
                              feelName(feelOf(Firmness::Firm, BoneShape::None)),
                              feelName(feelOf(Firmness::Hard, BoneShape::None)),
                              feelName(feelOf(Firmness::Hard, BoneShape::Point)),
                              feelName(feelOf(Firmness::Hard, BoneShape::Edge)),
                              feelName(feelOf(Firmness::Hard, BoneShape::Broad))};
    EXPECT_EQ(names.size(), 6);
    QSet<QString> firm;
    for (int i = 0; i < kFirmnessCount; ++i)
        firm << firmnessName(static_cast<Firmness>(i));
    EXPECT_EQ(firm.size(), kFirmnessCount);
}

TEST(FeelWordsTest, NoBoneIsNamed)
{
    const Target target = hip(Side::Right);
    for (const Feel& feel : everyFeel()) {
        const QString text = feelSentence(feel, target, target.ideal, Cm{3.0});
        for (int i = 0; i < kLandmarkCount; ++i)
            EXPECT_FALSE(text.contains(landmarkName(landmarkAt(i)), Qt::CaseInsensitive))
                << text.toStdString();
    }
}

TEST(FeelWordsTest, WhatIsNotPlainSaysThroughHowMuchFat)
{
    EXPECT_EQ(clearnessText(feelOf(Firmness::Hard, BoneShape::Edge, Clearness::Dull, 21.6)),
              QStringLiteral("Dull, through 22 mm of fat"));
    EXPECT_EQ(clearnessText(feelOf(Firmness::Hard, BoneShape::Edge, Clearness::Faint, 48.0)),
              QStringLiteral("Faint, through 48 mm of fat"));
    EXPECT_EQ(clearnessText(feelOf(Firmness::Soft, BoneShape::None, Clearness::Dull, 21.6)),
              QStringLiteral("Through 22 mm of fat"))
        << "what is not there is not felt dully";
    const Target target = hip(Side::Right);
    const QString plaque = feelPlaque(feelOf(Firmness::Hard, BoneShape::Point), target, target.ideal);
    EXPECT_EQ(plaque, QStringLiteral("Hard, a bony point"));
    // Of muscle and fat nothing is felt through.
    EXPECT_EQ(feelPlaque(feelOf(Firmness::Firm, BoneShape::None, Clearness::Dull), target, target.ideal),
              QStringLiteral("Firm, muscle"));
}

TEST(FeelWordsTest, BoneBesideTheFingerLiesTheWayTheBodyLies)
{
    // The head lies to the viewer's left of a right hip and to the right of a left one.
    Feel feel = feelOf(Firmness::Firm, BoneShape::None);
    for (const Side side : kSides) {
        const Target target = hip(side);
        const double head = side == Side::Right ? -1.0 : 1.0;
        feel.toward = Point{head, 0.0};
        EXPECT_EQ(besideText(feel, target, target.ideal),
                  QStringLiteral("Bone beside your finger, toward the head"));
        feel.toward = Point{-head, 0.0};
        EXPECT_EQ(besideText(feel, target, target.ideal),
                  QStringLiteral("Bone beside your finger, toward the foot"));
    }
    feel.toward.reset();
    EXPECT_TRUE(besideText(feel, hip(Side::Left), {0, 0}).isEmpty());
}

TEST(FeelWordsTest, AnEdgeIsFollowedForSoFarAndSaidToRunOn)
{
    const Target target = hip(Side::Right);
    Feel feel = feelOf(Firmness::Hard, BoneShape::Edge, Clearness::Dull, 22.0);
    feel.along = Point{1.0, 0.0};
    EXPECT_EQ(followedText(Cm{4.2}), QStringLiteral("An edge, followed for 4.2 cm"));
    EXPECT_TRUE(followedText(Cm{0.4}).isEmpty());
    EXPECT_EQ(feelSentence(feel, target, target.ideal, Cm{4.2}),
              QStringLiteral("Hard, an edge. It runs on toward head and foot. Dull, through 22 mm of fat. An "
                             "edge, followed for 4.2 cm"));
    feel.along = Point{0.0, 1.0};
    EXPECT_TRUE(feelSentence(feel, target, target.ideal)
                    .contains(QStringLiteral("It runs on toward front and back")));
}

TEST(FeelWordsTest, NumbersFollowTheLocale)
{
    const FeelLocale locale(QLocale(QLocale::German));
    EXPECT_EQ(followedText(Cm{4.2}), QStringLiteral("An edge, followed for 4,2 cm"));
}

}  // namespace fb::test::feel_words_tests
