// Who practises here: the profile and the scales of the screens as they are remembered, held in memory
// and kept through the door. Knows no widget.
#pragma once

#include <QObject>

#include "app/doors/profile.h"
#include "app/doors/settings.h"

namespace fb {

class Learner : public QObject {
    Q_OBJECT

public:
    // The keeper outlives the learner.
    explicit Learner(ProfileKeeper& keeper, QObject* parent = nullptr);

    // Once. A hand length remembered in the settings, before there was a store, becomes the profile
    // where the store knows none.
    void load(const std::optional<Cm>& handOfSettings);
    [[nodiscard]] bool isLoaded() const { return m_isLoaded; }
    // Why nothing is remembered, or what was lost; told when loaded.
    [[nodiscard]] const std::optional<Fault>& trouble() const { return m_trouble; }

    [[nodiscard]] const Profile& profile() const { return m_profile; }
    // The profile once it is on disk; on a fault the old one goes on.
    void save(const Profile& profile, QObject* asker, ProfileKeeper::Saved then);
    // The profile from now on, and written as well; failed() where that does not work.
    void use(const Profile& profile);
    // The profile until the program ends.
    void useUnsaved(const Profile& profile);

    [[nodiscard]] std::optional<PixelsPerMm> scaleOf(const QString& screen) const;
    void useScale(const QString& screen, PixelsPerMm scale);  // as use()

    // Choices for a run with this learner's hand in them.
    [[nodiscard]] OwnChoices withHand(OwnChoices own) const;

Q_SIGNALS:
    void loaded();
    void changed();  // the profile
    void failed(const fb::Fault& fault);

private:
    void take(const Remembered& remembered, const std::optional<Cm>& handOfSettings);
    [[nodiscard]] ProfileKeeper::Saved tellingFailure();

    ProfileKeeper& m_keeper;
    Profile m_profile;
    std::map<QString, PixelsPerMm> m_scales;
    std::optional<Fault> m_trouble;
    bool m_isLoaded = false;
};

}  // namespace fb
