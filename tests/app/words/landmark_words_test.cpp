#include "app/words/landmark_words.h"

#include <gtest/gtest.h>

#include <QSet>
#include <map>

namespace fb::test::landmark_words_tests {

namespace landmark_words_test {

struct Row {
    const char* typed;
    Site site;
    TermFit fit;
    Landmark meant;  // of Exact and Slip
};

constexpr Row kRows[]{
    {"Greater trochanter", Site::Ventrogluteal, TermFit::Exact, Landmark::GreaterTrochanter},
    {"  GREATER   trochanter ", Site::VastusLateralis, TermFit::Exact, Landmark::GreaterTrochanter},
    {"trochanter major", Site::Ventrogluteal, TermFit::Exact, Landmark::GreaterTrochanter},
    {"greater trocanter", Site::Ventrogluteal, TermFit::Slip, Landmark::GreaterTrochanter},
    {"asis", Site::Ventrogluteal, TermFit::Exact, Landmark::AnteriorSuperiorIliacSpine},
    {"A.S.I.S.", Site::Ventrogluteal, TermFit::Exact, Landmark::AnteriorSuperiorIliacSpine},
    {"psis", Site::Ventrogluteal, TermFit::Exact, Landmark::PosteriorSuperiorIliacSpine},
    {"anterior superior illiac spine", Site::Ventrogluteal, TermFit::Slip,
     Landmark::AnteriorSuperiorIliacSpine},
    {"kneecap", Site::VastusLateralis, TermFit::Exact, Landmark::Patella},
    {"patela", Site::VastusLateralis, TermFit::Slip, Landmark::Patella},
    {"lateral femoral epicondyle", Site::VastusLateralis, TermFit::Exact, Landmark::LateralFemoralCondyle},
    {"lateral epicondyle", Site::Deltoid, TermFit::Exact, Landmark::ElbowEpicondyle},
    {"acromion process", Site::Deltoid, TermFit::Exact, Landmark::Acromion},
    {"acromian", Site::Deltoid, TermFit::Slip, Landmark::Acromion},
    {"bony tip of the shoulder", Site::Deltoid, TermFit::Exact, Landmark::Acromion},
    {"axilla", Site::Deltoid, TermFit::Exact, Landmark::ArmpitLevel},
};

}  // namespace landmark_words_test

using namespace landmark_words_test;

TEST(LandmarkWordsTest, EveryLandmarkHasANameOfItsOwn)
{
    QSet<QString> names;
    for (int i = 0; i < kLandmarkCount; ++i)
        names << landmarkName(landmarkAt(i));
    EXPECT_FALSE(names.contains(QString()));
    EXPECT_EQ(names.size(), kLandmarkCount);
}

TEST(LandmarkWordsTest, ATypedNameIsTakenInAnyFormItIsUsedIn)
{
    for (const Row& row : kRows) {
        const TermMatch match = named(QString::fromLatin1(row.typed), row.site);
        EXPECT_EQ(match.fit, row.fit) << row.typed;
        EXPECT_EQ(match.id, static_cast<int>(row.meant)) << row.typed;
    }
}

TEST(LandmarkWordsTest, AShortFormIsTakenAsItIsOrNotAtAll)
{
    for (const char* typed : {"ASI", "AXIS", "ASIA", "GD", "TG"}) {
        const TermMatch match = named(QString::fromLatin1(typed), Site::Ventrogluteal);
        EXPECT_EQ(match.fit, TermFit::Unknown) << typed;
        EXPECT_EQ(match.id, -1) << typed;
    }
}

TEST(LandmarkWordsTest, TheWrongBoneIsNeverForgiven)
{
    EXPECT_EQ(named(QStringLiteral("lesser trochanter"), Site::Ventrogluteal).id,
              static_cast<int>(Landmark::LesserTrochanter));
    EXPECT_EQ(named(QStringLiteral("anterior inferior iliac spine"), Site::Ventrogluteal).id,
              static_cast<int>(Landmark::AnteriorInferiorIliacSpine));
    EXPECT_EQ(named(QStringLiteral("patella"), Site::Deltoid).fit, TermFit::Unknown);
    EXPECT_EQ(named(QString(), Site::Deltoid).fit, TermFit::Unknown);
}

TEST(LandmarkWordsTest, NoTermOfASiteBelongsToTwoLandmarks)
{
    for (const Site site : kSites) {
        std::map<std::u32string, int> owner;
        for (const AcceptedTerm& term : acceptedTerms(site)) {
            const QString text = QString::fromStdU32String(term.text);
            EXPECT_FALSE(text.isEmpty());
            const auto [at, isNew] = owner.emplace(term.text, term.id);
            EXPECT_EQ(at->second, term.id) << text.toStdString();
        }
        for (const Landmark landmark : offeredLandmarks(site)) {
            const auto name = owner.find(folded(landmarkName(landmark)));
            ASSERT_NE(name, owner.end()) << wordOf(landmark);
            EXPECT_EQ(name->second, static_cast<int>(landmark));
        }
    }
}

TEST(LandmarkWordsTest, FoldingLeavesLettersAndSingleSpaces)
{
    EXPECT_EQ(folded(QStringLiteral("  Espina  ILÍACA\tantero-superior. ")),
              std::u32string(U"espina iliaca antero superior"));
    EXPECT_EQ(folded(QStringLiteral("A.S.I.S.")), std::u32string(U"asis"));
    EXPECT_EQ(folded(QStringLiteral(" -- ")), std::u32string());
}

}  // namespace fb::test::landmark_words_tests
