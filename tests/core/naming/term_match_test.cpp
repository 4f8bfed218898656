#include "core/naming/term_match.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <vector>

#include "core/basics/seed_stream.h"
#include "tests/support/bone_terms.h"

using namespace fb;
using namespace fb::test;

namespace term_match_test {

namespace {

std::vector<AcceptedTerm> only(std::vector<AcceptedTerm> terms, int id)
{
    std::erase_if(terms, [id](const AcceptedTerm& term) { return term.id != id; });
    return terms;
}

struct Typed {
    std::u32string text;
    int bone = 0;
};

std::string shown(const std::u32string& text)
{
    std::string bytes;
    for (const char32_t c : text)
        bytes += c < 128 ? static_cast<char>(c) : '?';
    return bytes;
}

constexpr TermMatch kUnknown{TermFit::Unknown, -1};
constexpr TermMatch kUnclear{TermFit::Unclear, -1};
TermMatch slip(int id) { return {TermFit::Slip, id}; }
TermMatch exact(int id) { return {TermFit::Exact, id}; }

void expectSlips(const std::vector<Typed>& slips, const std::vector<AcceptedTerm>& terms)
{
    for (const Typed& typed : slips)
        EXPECT_EQ(matchedTerm(typed.text, terms), slip(typed.bone)) << shown(typed.text);
}

// Neither among all terms nor when the bone's own are the only ones.
void expectNeverTakenFor(const std::vector<Typed>& wrong, const std::vector<AcceptedTerm>& terms)
{
    for (const Typed& typed : wrong) {
        EXPECT_NE(matchedTerm(typed.text, terms).id, typed.bone) << shown(typed.text);
        EXPECT_EQ(matchedTerm(typed.text, only(terms, typed.bone)), kUnknown) << shown(typed.text);
    }
}

}  // namespace

TEST(TermMatchTest, EditDistanceCountsEachKindOfSlipOnce)
{
    EXPECT_EQ(editDistance(U"", U""), 0);
    EXPECT_EQ(editDistance(U"", U"abc"), 3);
    EXPECT_EQ(editDistance(U"abc", U""), 3);
    EXPECT_EQ(editDistance(U"crest", U"crest"), 0);
    EXPECT_EQ(editDistance(U"crest", U"crests"), 1);
    EXPECT_EQ(editDistance(U"crest", U"cret"), 1);
    EXPECT_EQ(editDistance(U"crest", U"crast"), 1);
    EXPECT_EQ(editDistance(U"crest", U"cerst"), 1);
    EXPECT_EQ(editDistance(U"kitten", U"sitting"), 3);
    EXPECT_EQ(editDistance(U"anterior", U"posterior"), 3);
    // A swapped pair is not opened again.
    EXPECT_EQ(editDistance(U"ca", U"abc"), 3);
}

TEST(TermMatchTest, EditDistanceIsTheSameBothWaysAndNoMoreThanTheLonger)
{
    SeedStream stream(7);
    const auto word = [&] {
        std::u32string text;
        for (int left = static_cast<int>(stream.between(0.0, 9.0)); left > 0; --left)
            text += U"abc"[static_cast<std::size_t>(stream.between(0.0, 2.999))];
        return text;
    };
    for (int round = 0; round < 5000; ++round) {
        const std::u32string a = word();
        const std::u32string b = word();
        const int away = editDistance(a, b);
        EXPECT_EQ(away, editDistance(b, a));
        EXPECT_LE(away, static_cast<int>(std::max(a.size(), b.size())));
        EXPECT_GE(away, std::abs(static_cast<int>(a.size()) - static_cast<int>(b.size())));
        EXPECT_EQ(away == 0, a == b);
    }
}

TEST(TermMatchTest, EveryTermIsItselfExactly)
{
    for (const auto* terms : {&englishTerms(), &spanishTerms()}) {
        for (const AcceptedTerm& term : *terms)
            EXPECT_EQ(matchedTerm(term.text, *terms), exact(term.id)) << shown(term.text);
    }
}

TEST(TermMatchTest, SmallSlipsAreForgiven)
{
    expectSlips({{U"acromium", Acromion},
                 {U"acromian", Acromion},
                 {U"clavical", Clavicle},
                 {U"acromoin", Acromion},
                 {U"achromion", Acromion},
                 {U"acromion proces", Acromion},
                 {U"axila", Armpit},
                 {U"arm pit level", Armpit},
                 {U"deltoid tuberocity", Tuberosity},
                 {U"deltiod tuberosity", Tuberosity},
                 {U"greater trocanter", Trochanter},
                 {U"greater trocantor", Trochanter},
                 {U"grater trochanter", Trochanter},
                 {U"greater trochantor", Trochanter},
                 {U"illiac crest", Crest},
                 {U"iliac creast", Crest},
                 {U"iliaccrest", Crest},
                 {U"iliac tubercule", Tubercle},
                 {U"anterior superior illiac spine", FrontSpine},
                 {U"anterior superor iliac spine", FrontSpine},
                 {U"antirior superier illiac spine", FrontSpine},
                 {U"anteriorsuperior iliac spine", FrontSpine},
                 {U"lateral femoral condile", Condyle},
                 {U"latral femoral condyle", Condyle},
                 {U"lateral femural epicondyl", Condyle},
                 {U"patela", Patella},
                 {U"pattella", Patella},
                 {U"knee cap", Patella}},
                englishTerms());
}

TEST(TermMatchTest, SmallSlipsAreForgivenInSpanish)
{
    expectSlips({{U"acromio", Acromion},
                 {U"trocanter maior", Trochanter},
                 {U"trocantar mayor", Trochanter},
                 {U"espina iliaca antero superior", FrontSpine},
                 {U"espina ilica anterosuperior", FrontSpine},
                 {U"espina iliaca anterosuperor", FrontSpine},
                 {U"cresta illiaca", Crest},
                 {U"tuberculo iliac", Tubercle},
                 {U"condilo femoral latral", Condyle},
                 {U"rotulla", Patella},
                 {U"tuberosidad deltoide", Tuberosity}},
                spanishTerms());
}

TEST(TermMatchTest, SpacesDoNotCount)
{
    EXPECT_EQ(matchedTerm(U"  iliac   crest ", englishTerms()), exact(Crest));
    EXPECT_EQ(matchedTerm(U" patella", englishTerms()), exact(Patella));
}

TEST(TermMatchTest, NothingTypedIsUnknown)
{
    EXPECT_EQ(matchedTerm(U"", englishTerms()), kUnknown);
    EXPECT_EQ(matchedTerm(U"   ", englishTerms()), kUnknown);
    EXPECT_EQ(matchedTerm(U"patella", {}), kUnknown);
    EXPECT_EQ(matchedTerm(U"", std::vector<AcceptedTerm>{{3, U""}}), kUnknown);
}

TEST(TermMatchTest, AnotherBoneIsNotASlipWhetherItIsListedOrNot)
{
    expectNeverTakenFor({{U"lesser trochanter", Trochanter},
                         {U"leser trochanter", Trochanter},
                         {U"greater trochanter", LesserTrochanter},
                         {U"posterior superior iliac spine", FrontSpine},
                         {U"postirior superior iliac spine", FrontSpine},
                         {U"anterior inferior iliac spine", FrontSpine},
                         {U"anterior superior iliac spine", LowerSpine},
                         {U"anterior superior iliac spine", BackSpine},
                         {U"medial femoral condyle", Condyle},
                         {U"lateral femoral condyle", MedialCondyle},
                         {U"iliac crest", Tubercle},
                         {U"ischial tuberosity", Tuberosity},
                         {U"coracoid process", Acromion},
                         {U"psis", FrontSpine},
                         {U"asis", BackSpine}},
                        englishTerms());
}

TEST(TermMatchTest, AnotherBoneIsNotASlipInSpanish)
{
    expectNeverTakenFor({{U"trocanter menor", Trochanter},
                         {U"trocanter mayor", LesserTrochanter},
                         {U"espina iliaca posterosuperior", FrontSpine},
                         {U"espina iliaca anteroinferior", FrontSpine},
                         {U"espina iliaca anterosuperior", BackSpine},
                         {U"condilo femoral medial", Condyle},
                         {U"condilo femoral interno", Condyle},
                         {U"condilo femoral externo", MedialCondyle},
                         {U"eips", FrontSpine},
                         {U"tuberosidad isquiatica", Tuberosity}},
                        spanishTerms());
}

TEST(TermMatchTest, OppositesThatTwoLettersDecideAreKeptApart)
{
    const std::vector<AcceptedTerm> terms{{1, U"external femoral condyle"},
                                          {2, U"upper border"},
                                          {3, U"malleolus major"},
                                          {4, U"anterior border"}};
    for (const std::u32string text :
         {U"internal femoral condyle", U"lower border", U"malleolus minor", U"inferior border"})
        EXPECT_EQ(matchedTerm(text, terms), kUnknown) << shown(text);
}

TEST(TermMatchTest, AMisspeltNearMissIsTheNearMiss)
{
    expectSlips({{U"leser trochanter", LesserTrochanter},
                 {U"posterior superior illiac spine", BackSpine},
                 {U"anterior inferrior iliac spine", LowerSpine},
                 {U"medial femoral condile", MedialCondyle}},
                englishTerms());
}

TEST(TermMatchTest, HalfWayBetweenTwoBonesIsUnclear)
{
    const std::vector<AcceptedTerm> terms{{1, U"condyle inner"}, {2, U"condyle innes"}, {3, U"patella"}};
    EXPECT_EQ(matchedTerm(U"condyle innet", terms), kUnclear);
    EXPECT_EQ(matchedTerm(U"condyle inner", terms), exact(1));
    // Two spellings of one bone do not quarrel.
    const std::vector<AcceptedTerm> same{{1, U"condyle inner"}, {1, U"condyle innes"}};
    EXPECT_EQ(matchedTerm(U"condyle innet", same), slip(1));
    // One term of two bones.
    const std::vector<AcceptedTerm> shared{{1, U"trochanter"}, {2, U"trochanter"}};
    EXPECT_EQ(matchedTerm(U"trochanter", shared), kUnclear);
}

TEST(TermMatchTest, ATermOfAnotherBoneThatIsNearerMakesItUnclear)
{
    // One letter from a word too short to forgive, two from one that would.
    const std::vector<AcceptedTerm> terms{{1, U"acromion left"}, {2, U"acromion laft"}};
    EXPECT_EQ(matchedTerm(U"acromien laft", terms), slip(2));
    EXPECT_EQ(matchedTerm(U"acromion loft", terms), kUnknown);
    const std::vector<AcceptedTerm> near{{1, U"crestal border"}, {2, U"rest border"}};
    EXPECT_EQ(matchedTerm(U"crest border", near), kUnknown);
    const std::vector<AcceptedTerm> nearer{{1, U"crests borders"}, {2, U"rest border"}};
    EXPECT_EQ(matchedTerm(U"crest border", nearer), kUnclear);
}

TEST(TermMatchTest, ShortAndStrangeWordsAreNotGuessedAt)
{
    for (const std::u32string text :
         {U"asiz", U"psi", U"a", U"knee", U"trochanter", U"bone", U"iliac", U"spine", U"crest", U"tibia",
          U"anterior iliac spine", U"crest iliac", U"patella patella", U"zzzzzzzzzzzz"})
        EXPECT_EQ(matchedTerm(text, englishTerms()), kUnknown) << shown(text);
}

TEST(TermMatchTest, MoreThanSmallSlipsAreNotForgiven)
{
    for (const std::u32string text :
         {U"akrmiun", U"petlela x", U"ilak krest", U"grtr trchntr", U"antrir superir ilic spin"})
        EXPECT_EQ(matchedTerm(text, englishTerms()), kUnknown) << shown(text);
}

TEST(TermMatchTest, OneLetterAmissIsNeverTakenForAnotherBone)
{
    for (const AcceptedTerm& term : englishTerms()) {
        for (std::size_t i = 0; i < term.text.size(); ++i) {
            std::u32string typed = term.text;
            typed[i] = U'q';
            const TermMatch match = matchedTerm(typed, englishTerms());
            EXPECT_TRUE(match.id == term.id || match.id == -1) << shown(typed);
            if (term.text.find(U' ') == std::u32string::npos && term.text.size() >= 5) {
                EXPECT_EQ(match, slip(term.id)) << shown(typed);
            }
        }
    }
}

TEST(TermMatchTest, TheOrderOfTheTermsDoesNotMatter)
{
    std::vector<AcceptedTerm> turned = englishTerms();
    std::ranges::reverse(turned);
    for (const std::u32string text :
         {U"illiac crest", U"anterior superior illiac spine", U"patela", U"psas", U"deltoid tuberocity"})
        EXPECT_EQ(matchedTerm(text, englishTerms()), matchedTerm(text, turned)) << shown(text);
}

}  // namespace term_match_test
