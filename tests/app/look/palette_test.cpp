#include "app/look/palette.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "core/session/request.h"

namespace palette_test {

namespace {

using namespace fb;

static_assert(kSkinRampCount == kSkinToneCount);

double luminance(const QColor& colour)
{
    const auto part = [](float c) { return c <= 0.04045F ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4); };
    return 0.2126 * part(colour.redF()) + 0.7152 * part(colour.greenF()) + 0.0722 * part(colour.blueF());
}

// The contrast ratio of the Web Content Accessibility Guidelines 2.2.
double contrast(const QColor& a, const QColor& b)
{
    const auto [low, high] = std::minmax({luminance(a), luminance(b)});
    return (high + 0.05) / (low + 0.05);
}

Plate skinPlate()
{
    Plate plate;
    for (const char* name :
         {"skin-light", "skin-base", "skin-mid", "skin-shade", "skin-deep", "skin-line", "skin-hatch"})
        plate.tones.push_back({name, "#808080"});
    return plate;
}

Plate handPlate()
{
    Plate plate;
    for (const char* name : {"hand-light", "hand-base", "hand-mid", "hand-shade", "hand-line", "hand-nail"})
        plate.tones.push_back({name, "#ff00ff"});
    return plate;
}

// How far a colour leans to red against blue.
double warmth(const QColor& colour) { return colour.redF() - colour.blueF(); }

TEST(PaletteTest, TheHandHasToneAfterToneFromLightToLineInEveryPalette)
{
    for (const PaletteKind kind : kPaletteKinds) {
        const auto tones = toneColours(handPlate(), schemeOf(kind), 0);
        for (std::size_t i = 0; i + 1 < 5; ++i)
            EXPECT_GT(luminance(tones[i]), luminance(tones[i + 1])) << i;
        EXPECT_GT(luminance(tones[5]), luminance(tones[1]));
        EXPECT_GE(contrast(tones[1], tones[4]), 7.0);
    }
}

TEST(PaletteTest, TheHandStandsOffFromEverySkinByItsCoolnessAndItsLine)
{
    for (const PaletteKind kind : kPaletteKinds) {
        const auto hand = toneColours(handPlate(), schemeOf(kind), 0);
        for (int tone = 0; tone < kSkinRampCount; ++tone) {
            const auto skin = toneColours(skinPlate(), schemeOf(kind), tone);
            EXPECT_GT(warmth(skin[1]) - warmth(hand[1]), 0.12) << tone;
        }
    }
}

TEST(PaletteTest, TheHandIsNobodysSkin)
{
    for (int tone = 1; tone < kSkinRampCount; ++tone)
        EXPECT_EQ(toneColours(handPlate(), schemeOf(PaletteKind::Light), tone),
                  toneColours(handPlate(), schemeOf(PaletteKind::Light), 0));
}

TEST(PaletteTest, TwoFillsAtOnceAreTheTwoOneAfterTheOther)
{
    const QColor under(250, 240, 220, 60);
    const QColor over(140, 20, 40, 30);
    QImage twice(1, 1, QImage::Format_RGB32);
    twice.fill(QColor(120, 90, 70));
    QImage once = twice;
    {
        QPainter painter(&twice);
        painter.fillRect(0, 0, 1, 1, under);
        painter.fillRect(0, 0, 1, 1, over);
    }
    {
        QPainter painter(&once);
        painter.fillRect(0, 0, 1, 1, layered(under, over));
    }
    const QColor a = twice.pixelColor(0, 0);
    const QColor b = once.pixelColor(0, 0);
    EXPECT_NEAR(a.red(), b.red(), 2);
    EXPECT_NEAR(a.green(), b.green(), 2);
    EXPECT_NEAR(a.blue(), b.blue(), 2);
    EXPECT_EQ(layered(Qt::transparent, over), over);
}

TEST(PaletteTest, ContrastOfBlackOnWhiteIsTwentyOne)
{
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21.0, 1e-6);
}

TEST(PaletteTest, TextCanBeReadOnEveryGround)
{
    for (const PaletteKind kind : kPaletteKinds) {
        const Scheme s = schemeOf(kind);
        for (const QColor& ground : {s.window, s.paper, s.panel})
            for (const QColor& text : {s.ink, s.quietInk, s.accent, s.good, s.fair, s.bad, s.danger})
                EXPECT_GE(contrast(text, ground), 4.5)
                    << text.name().toStdString() << " on " << ground.name().toStdString();
        EXPECT_GE(contrast(s.accentInk, s.accent), 4.5);
    }
}

TEST(PaletteTest, TheFocusRingStandsOffFromEveryGround)
{
    for (const PaletteKind kind : kPaletteKinds) {
        const Scheme s = schemeOf(kind);
        for (const QColor& ground : {s.window, s.paper, s.panel})
            EXPECT_GE(contrast(s.focus, ground), 3.0);
    }
}

TEST(PaletteTest, EveryRoleShowsOnPaper)
{
    for (const PaletteKind kind : kPaletteKinds) {
        const Scheme s = schemeOf(kind);
        for (int role = 0; role < kRoleCount; ++role)
            EXPECT_GE(contrast(s.of(static_cast<Role>(role)), s.paper), 4.5) << role;
    }
}

TEST(PaletteTest, TheProjectorHasTheMostContrast)
{
    const auto strength = [](PaletteKind kind) { return contrast(schemeOf(kind).ink, schemeOf(kind).paper); };
    EXPECT_GT(strength(PaletteKind::Projector), strength(PaletteKind::Light));
    EXPECT_GT(strength(PaletteKind::Projector), strength(PaletteKind::Dark));
}

TEST(PaletteTest, ContourAndHatchingStayLegibleOnEverySkin)
{
    const Plate plate = skinPlate();
    for (const PaletteKind kind : kPaletteKinds) {
        for (int skin = 0; skin < kSkinRampCount; ++skin) {
            const auto tones = toneColours(plate, schemeOf(kind), skin);
            EXPECT_GE(contrast(tones[5], tones[1]), 2.0)
                << "line, skin " << skin << ", palette " << static_cast<int>(kind);
            EXPECT_GE(contrast(tones[6], tones[1]), 1.6)
                << "hatch, skin " << skin << ", palette " << static_cast<int>(kind);
            EXPECT_GE(contrast(tones[6], tones[2]), 1.4) << "hatch on mid, skin " << skin;
        }
    }
}

TEST(PaletteTest, SkinRunsFromLightToDark)
{
    const Plate plate = skinPlate();
    for (const PaletteKind kind : kPaletteKinds) {
        for (int skin = 0; skin < kSkinRampCount; ++skin) {
            const auto tones = toneColours(plate, schemeOf(kind), skin);
            for (std::size_t i = 1; i < 5; ++i)
                EXPECT_LT(luminance(tones[i]), luminance(tones[i - 1])) << skin << " " << i;
            if (skin == 0)
                continue;
            EXPECT_LT(luminance(tones[1]), luminance(toneColours(plate, schemeOf(kind), skin - 1)[1]))
                << skin;
        }
    }
}

TEST(PaletteTest, AnUnknownToneKeepsTheColourInTheFile)
{
    Plate plate;
    plate.tones = {{"feather-blue", "#123456"}, {"skin-freckle", "#654321"}};
    for (const PaletteKind kind : {PaletteKind::Light, PaletteKind::Dark, PaletteKind::Projector})
        EXPECT_EQ(toneColours(plate, schemeOf(kind), 2)[0], QColor("#123456"));
    EXPECT_EQ(toneColours(plate, schemeOf(PaletteKind::Light), 2)[1], QColor("#654321"));
}

TEST(PaletteTest, ASkinToneOutOfRangeIsHeldToIt)
{
    const Plate plate = skinPlate();
    const Scheme light = schemeOf(PaletteKind::Light);
    EXPECT_EQ(toneColours(plate, light, -3), toneColours(plate, light, 0));
    EXPECT_EQ(toneColours(plate, light, 99), toneColours(plate, light, kSkinRampCount - 1));
}

TEST(PaletteTest, BonesAreTheSameInEverySkin)
{
    Plate plate;
    plate.tones = {{"bone-base", "#e9dcbf"}};
    EXPECT_EQ(toneColours(plate, schemeOf(PaletteKind::Dark), 0),
              toneColours(plate, schemeOf(PaletteKind::Dark), 4));
}

}  // namespace

}  // namespace palette_test
