// The tones of the plates and of the hand laid over them. Skin has a ramp of its own for each skin tone,
// because a darker skin is not a dimmed light one: its shadows are warmer and its lines must stay well below
// its base. Every other tone starts from the colour the illustrator gave it.
#include <algorithm>
#include <array>
#include <cmath>

#include "app/look/palette.h"

namespace fb {

namespace tones_detail {

inline constexpr std::array kRampNames{"light", "base", "mid", "shade", "deep", "line", "hatch"};

using Ramp = std::array<QRgb, kRampNames.size()>;

inline constexpr std::array<Ramp, kSkinRampCount> kSkin{{
    {0xfbeadd, 0xf5dac6, 0xe3bda3, 0xc9967a, 0xa56e52, 0x43291f, 0x87583f},
    {0xf3d9be, 0xe6bf9c, 0xd09f79, 0xb17d58, 0x8a5a3b, 0x38231a, 0x69432d},
    {0xe2b88c, 0xce9b6e, 0xb47d51, 0x93613b, 0x6d4427, 0x2c1a11, 0x55341f},
    {0xbb8a63, 0xa16f4b, 0x855637, 0x694028, 0x4a2a19, 0x1e100a, 0x3a2013},
    {0x94694f, 0x7a5039, 0x60402f, 0x492e20, 0x321c13, 0x110805, 0x28150d},
}};

// The hand is nobody's: cool and pale as a glove, so that it stands off from every skin under it.
inline constexpr std::array kHandNames{"light", "base", "mid", "shade", "line", "nail", "warm"};
inline constexpr std::array<QRgb, kHandNames.size()> kHand{0xf2f8f7, 0xd9e7e6, 0xb4cacb, 0x7f9da1,
                                                           0x132c33, 0xf7fbfa, 0xcbdcdc};

QColor mixed(const QColor& a, const QColor& b, double share)
{
    const auto part = [share](int from, int to) {
        return static_cast<int>(std::lround(from + (to - from) * share));
    };
    return {part(a.red(), b.red()), part(a.green(), b.green()), part(a.blue(), b.blue())};
}

bool isInk(const QString& name)
{
    return name.endsWith(QLatin1String("line")) || name.endsWith(QLatin1String("hatch"));
}

// On dark paper a wash at full light would glare; lines keep their depth on the washes.
QColor onDark(const QString& name, const QColor& colour)
{
    if (isInk(name))
        return colour;
    const bool cloth = name.startsWith(QLatin1String("cloth"));
    return mixed(colour, QColor(0x22, 0x1f, 0x1b), cloth ? 0.46 : 0.12);
}

// For a washed-out beam: lines go to black, cloth to white, washes gain colour.
QColor onProjector(const QString& name, const QColor& colour)
{
    if (isInk(name))
        return mixed(colour, Qt::black, 0.6);
    if (name.startsWith(QLatin1String("cloth")))
        return mixed(colour, Qt::white, 0.5);
    float h = 0.F;
    float s = 0.F;
    float l = 0.F;
    colour.getHslF(&h, &s, &l);
    return QColor::fromHslF(std::max(h, 0.F), std::min(1.F, s * 1.15F),
                            std::min(1.F, l + 0.25F * l * (1.F - l)))
        .toRgb();
}

QColor skin(const QString& shade, const QColor& inFile, int skinTone)
{
    const auto found = std::find(kRampNames.begin(), kRampNames.end(), shade);
    if (found == kRampNames.end())
        return inFile;
    const auto place = static_cast<std::size_t>(found - kRampNames.begin());
    return QColor::fromRgb(kSkin[static_cast<std::size_t>(skinTone)][place]);
}

QColor hand(const QString& shade, const QColor& inFile)
{
    const auto found = std::find(kHandNames.begin(), kHandNames.end(), shade);
    return found == kHandNames.end()
               ? inFile
               : QColor::fromRgb(kHand[static_cast<std::size_t>(found - kHandNames.begin())]);
}

bool known(const QString& name)
{
    static constexpr std::array families{"bone", "muscle", "tendon", "artery",
                                         "vein", "nerve",  "bursa",  "cloth"};
    const QString family = name.section(QLatin1Char('-'), 0, 0);
    return std::any_of(families.begin(), families.end(),
                       [&](const char* word) { return family == QLatin1String(word); });
}

QColor toneColour(const Tone& tone, const Scheme& scheme, int skinTone)
{
    const QString name = QString::fromStdString(tone.name);
    const QColor inFile(QString::fromStdString(tone.hex));
    QColor colour = inFile;
    if (name.startsWith(QLatin1String("skin-")))
        colour = skin(name.mid(5), inFile, skinTone);
    else if (name.startsWith(QLatin1String("hand-")))
        colour = hand(name.mid(5), inFile);
    else if (!known(name))
        return inFile;
    switch (scheme.kind) {
    case PaletteKind::Light: return colour;
    case PaletteKind::Dark: return onDark(name, colour);
    case PaletteKind::Projector: return onProjector(name, colour);
    }
    return colour;
}

}  // namespace tones_detail

std::vector<QColor> toneColours(const Plate& plate, const Scheme& scheme, int skinTone)
{
    const int held = std::clamp(skinTone, 0, kSkinRampCount - 1);
    std::vector<QColor> colours;
    colours.reserve(plate.tones.size());
    for (const Tone& tone : plate.tones)
        colours.push_back(tones_detail::toneColour(tone, scheme, held));
    return colours;
}

}  // namespace fb
