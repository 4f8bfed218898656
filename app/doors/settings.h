// What the program remembers between two starts, behind a door so that a test remembers in
// memory. Nothing identifying, no marks: only how the learner likes to work.
#pragma once

#include <QString>
#include <array>
#include <optional>

#include "app/look/palette.h"
#include "core/basics/enums.h"
#include "core/session/practice.h"

namespace fb {

// What a learner sets over the policy's own numbers.
struct OwnChoices {
    // One a site; none: the policy's own.
    std::array<std::optional<Convention>, kSites.size()> conventions;
    // Of the learner's hand, from the profile; none: the policy's. 13 to 24 cm, 1.2 to 2.5 cm.
    std::optional<Cm> handLength;
    std::optional<Cm> fingerWidth;
    Side handedness = Side::Right;  // the writing hand

    [[nodiscard]] std::optional<Convention> convention(Site site) const
    {
        return conventions[static_cast<std::size_t>(site)];
    }
    void choose(Convention convention)
    {
        conventions[static_cast<std::size_t>(siteOf(convention))] = convention;
    }

    friend bool operator==(const OwnChoices&, const OwnChoices&) = default;
};

struct Preferences {
    PaletteKind palette = PaletteKind::Light;
    int textPercent = 0;  // 100 to 200; 0: what suits the screen
    QString language;     // a locale name such as "en"; empty: the system's
    QString policyFile;   // the lab's own numbers; empty: the shipped ones
    int runLength = PracticeSetup{}.length;
    HelpLevel help = PracticeSetup{}.help;
    bool asksSide = PracticeSetup{}.asksSide;
    bool byHand = PracticeSetup{}.byHand;
    RequestMix mix{SiteSet::all(), true};  // at least one site
    OwnChoices own;

    friend bool operator==(const Preferences&, const Preferences&) = default;
};

class Settings {
public:
    Settings() = default;
    Settings(const Settings&) = delete;
    Settings& operator=(const Settings&) = delete;
    virtual ~Settings() = default;

    // A value that is missing or makes no sense reads as its default. The hand is the profile's and no
    // longer written here; a length that older programs wrote is still read, to be taken over.
    [[nodiscard]] virtual Preferences load() const = 0;
    virtual void save(const Preferences& preferences) = 0;
};

// In the user's settings, or in one file when it is named.
class StoredSettings : public Settings {
public:
    explicit StoredSettings(QString file = {}) : m_file(std::move(file)) {}

    [[nodiscard]] Preferences load() const override;
    void save(const Preferences& preferences) override;

private:
    QString m_file;
};

}  // namespace fb
