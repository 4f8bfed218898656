#include "app/doors/settings.h"

#include <QSettings>
#include <QStringList>
#include <algorithm>
#include <array>
#include <memory>

#include "core/hand/hand_pose.h"

namespace fb {

namespace settings_detail {

constexpr std::array kTextPercents{100, 125, 150, 200};

std::unique_ptr<QSettings> opened(const QString& file)
{
    if (file.isEmpty())
        return std::make_unique<QSettings>(QStringLiteral("fingerbreadth"), QStringLiteral("fingerbreadth"));
    return std::make_unique<QSettings>(file, QSettings::IniFormat);
}

// An enumerator that was written as its number; anything else is the fallback.
template <class Enum>
Enum enumFrom(const QVariant& stored, int count, Enum fallback)
{
    bool isNumber = false;
    const int value = stored.toInt(&isNumber);
    return isNumber && value >= 0 && value < count ? static_cast<Enum>(value) : fallback;
}

int textPercentFrom(const QVariant& stored)
{
    const int value = stored.toInt();
    return std::ranges::find(kTextPercents, value) != kTextPercents.end() ? value : 0;
}

template <class Enum>
QString textOf(Enum value)
{
    const std::string_view word = wordOf(value);
    return QString::fromLatin1(word.data(), static_cast<qsizetype>(word.size()));
}

// A list of words; one without a single site in it is the fallback.
SiteSet sitesFrom(const QString& stored, const SiteSet& fallback)
{
    SiteSet sites{{false, false, false}};
    for (const QString& word : stored.split(QLatin1Char(' '))) {
        if (const auto site = siteFrom(word.toStdString()))
            sites.set(*site, true);
    }
    return sites.count() > 0 ? sites : fallback;
}

QString textOf(const SiteSet& sites)
{
    QStringList words;
    for (const Site site : kSites) {
        if (sites.has(site))
            words << textOf(site);
    }
    return words.join(QLatin1Char(' '));
}

QString keyOf(Site site) { return QStringLiteral("practice/convention_%1").arg(textOf(site)); }

OwnChoices choicesFrom(const QSettings& stored)
{
    OwnChoices own;
    for (const Site site : kSites) {
        const auto convention = conventionFrom(stored.value(keyOf(site)).toString().toStdString());
        if (convention && siteOf(*convention) == site)
            own.choose(*convention);
    }
    if (const auto hand = checkedHandLength(Cm{stored.value(QStringLiteral("practice/hand_cm")).toDouble()}))
        own.handLength = *hand;
    return own;
}

void write(QSettings& stored, const OwnChoices& own)
{
    for (const Site site : kSites) {
        const auto convention = own.convention(site);
        stored.setValue(keyOf(site), convention ? textOf(*convention) : QString());
    }
}

}  // namespace settings_detail

Preferences StoredSettings::load() const
{
    using namespace settings_detail;
    constexpr int kPalettes = static_cast<int>(PaletteKind::Projector) + 1;
    const auto stored = opened(m_file);
    const Preferences fallback;
    Preferences read;
    read.palette = enumFrom(stored->value(QStringLiteral("look/palette")), kPalettes, fallback.palette);
    read.textPercent = textPercentFrom(stored->value(QStringLiteral("look/text_percent")));
    read.language = stored->value(QStringLiteral("look/language")).toString();
    read.policyFile = stored->value(QStringLiteral("policy/file")).toString();
    PracticeSetup setup;
    setup.length = stored->value(QStringLiteral("practice/length"), fallback.runLength).toInt();
    read.runLength = checkedSetup(setup) ? setup.length : fallback.runLength;
    read.help = enumFrom(stored->value(QStringLiteral("practice/help")), kHelpLevelCount, fallback.help);
    read.asksSide = stored->value(QStringLiteral("practice/asks_side"), fallback.asksSide).toBool();
    read.byHand = stored->value(QStringLiteral("practice/by_hand"), fallback.byHand).toBool();
    read.mix.sites =
        sitesFrom(stored->value(QStringLiteral("practice/sites")).toString(), fallback.mix.sites);
    read.mix.findings = stored->value(QStringLiteral("practice/findings"), fallback.mix.findings).toBool();
    read.own = choicesFrom(*stored);
    return read;
}

void StoredSettings::save(const Preferences& preferences)
{
    using namespace settings_detail;
    const auto stored = opened(m_file);
    stored->setValue(QStringLiteral("look/palette"), static_cast<int>(preferences.palette));
    stored->setValue(QStringLiteral("look/text_percent"), preferences.textPercent);
    stored->setValue(QStringLiteral("look/language"), preferences.language);
    stored->setValue(QStringLiteral("policy/file"), preferences.policyFile);
    stored->setValue(QStringLiteral("practice/length"), preferences.runLength);
    stored->setValue(QStringLiteral("practice/help"), static_cast<int>(preferences.help));
    stored->setValue(QStringLiteral("practice/asks_side"), preferences.asksSide);
    stored->setValue(QStringLiteral("practice/by_hand"), preferences.byHand);
    stored->setValue(QStringLiteral("practice/sites"), textOf(preferences.mix.sites));
    stored->setValue(QStringLiteral("practice/findings"), preferences.mix.findings);
    write(*stored, preferences.own);
}

}  // namespace fb
