// The learner's profile and screens in the store: see app/doors/profile.h.
#pragma once

#include "app/doors/profile.h"
#include "app/store/store_thread.h"

namespace fb {

// In one thread, on one store. A value that makes no sense reads as none.
[[nodiscard]] Result<Remembered> readProfile(const Store& store);
[[nodiscard]] Result<bool> writeProfile(Store& store, const Profile& profile);
[[nodiscard]] Result<bool> writeScale(Store& store, const QString& screen, PixelsPerMm scale);

class ProfileStore : public ProfileKeeper {
public:
    explicit ProfileStore(const QString& file) : m_thread(file) {}

    void load(QObject* asker, std::function<void(const Remembered&)> then) override;
    void save(const Profile& profile, QObject* asker, Saved then) override;
    void saveScale(const QString& screen, PixelsPerMm scale, QObject* asker, Saved then) override;

private:
    StoreThread m_thread;
};

}  // namespace fb
