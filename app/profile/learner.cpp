#include "app/profile/learner.h"

#include <utility>

namespace fb {

Learner::Learner(ProfileKeeper& keeper, QObject* parent) : QObject(parent), m_keeper(keeper) {}

void Learner::load(const std::optional<Cm>& handOfSettings)
{
    m_keeper.load(this,
                  [this, handOfSettings](const Remembered& remembered) { take(remembered, handOfSettings); });
}

void Learner::take(const Remembered& remembered, const std::optional<Cm>& handOfSettings)
{
    m_scales = remembered.scales;
    m_trouble = remembered.trouble;
    m_isLoaded = true;
    if (remembered.profile) {
        m_profile = *remembered.profile;
    } else if (handOfSettings) {
        m_profile.handLength = handOfSettings;
        // Where the store is out of reach that has been told; the settings still know the hand.
        m_keeper.save(m_profile, this, [](const Result<bool>&) {});
    }
    Q_EMIT loaded();
}

ProfileKeeper::Saved Learner::tellingFailure()
{
    return [this](const Result<bool>& saved) {
        if (!saved)
            Q_EMIT failed(saved.error());
    };
}

void Learner::save(const Profile& profile, QObject* asker, ProfileKeeper::Saved then)
{
    m_keeper.save(profile, asker, [this, profile, then = std::move(then)](const Result<bool>& saved) {
        if (saved)
            useUnsaved(profile);
        then(saved);
    });
}

void Learner::use(const Profile& profile)
{
    if (profile == m_profile)
        return;
    useUnsaved(profile);
    m_keeper.save(profile, this, tellingFailure());
}

void Learner::useUnsaved(const Profile& profile)
{
    if (profile == m_profile)
        return;
    m_profile = profile;
    Q_EMIT changed();
}

std::optional<PixelsPerMm> Learner::scaleOf(const QString& screen) const
{
    const auto known = m_scales.find(screen);
    return known == m_scales.end() ? std::nullopt : std::optional(known->second);
}

void Learner::useScale(const QString& screen, PixelsPerMm scale)
{
    m_scales[screen] = scale;
    m_keeper.saveScale(screen, scale, this, tellingFailure());
}

OwnChoices Learner::withHand(OwnChoices own) const
{
    own.handLength = m_profile.handLength;
    own.fingerWidth = m_profile.fingerWidth;
    own.handedness = m_profile.handedness;
    return own;
}

}  // namespace fb
