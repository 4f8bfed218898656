// What the program remembers between two starts, behind a door so that a test remembers in
// memory. Nothing identifying, no marks: only how the learner likes to work.
#pragma once

#include <QString>
#include <optional>

#include "app/look/palette.h"
#include "core/basics/enums.h"
#include "core/session/practice.h"

namespace fb {

struct Preferences {
    PaletteKind palette = PaletteKind::Light;
    int textPercent = 0;  // 100 to 200; 0: what suits the screen
    QString language;     // a locale name such as "en"; empty: the system's
    QString policyFile;   // the lab's own numbers; empty: the shipped ones
    int runLength = PracticeSetup{}.length;
    HelpLevel help = PracticeSetup{}.help;
    bool asksSide = PracticeSetup{}.asksSide;
    std::optional<Convention> convention;  // none: the policy's own

    friend bool operator==(const Preferences&, const Preferences&) = default;
};

class Settings {
public:
    Settings() = default;
    Settings(const Settings&) = delete;
    Settings& operator=(const Settings&) = delete;
    virtual ~Settings() = default;

    // A value that is missing or makes no sense reads as its default.
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
