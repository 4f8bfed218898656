// What is known of the learner's own body and screens, and the door behind which it is kept, so that
// a test remembers in memory.
//
// Answers come in the thread that asked, later or at once, in the order of asking, and only while the
// asker lives.
#pragma once

#include <QObject>
#include <QString>
#include <functional>
#include <map>
#include <optional>

#include "core/basics/enums.h"
#include "core/basics/problem.h"
#include "core/basics/units.h"

namespace fb {

// One learner: whoever uses this account.
struct Profile {
    std::optional<Cm> handLength{};   // wrist crease to middle fingertip, 13 to 24 cm
    std::optional<Cm> fingerWidth{};  // of the index finger at its middle joint, 1.2 to 2.5 cm
    Side handedness = Side::Right;    // the writing hand: it holds the syringe, the other one feels
    std::optional<Sex> sex{};         // sex and stature: of the estimate of the hand, if one was made
    std::optional<Cm> stature{};

    friend bool operator==(const Profile&, const Profile&) = default;
};

// How fine a screen is: its own pixels, not the scaled ones of the desktop.
using PixelsPerMm = Quantity<struct PixelsPerMmTag>;

struct Remembered {
    std::optional<Profile> profile;         // none: never saved
    std::map<QString, PixelsPerMm> scales;  // by the screen's key
    // Why nothing could be read, or what was lost: StoreNotWritable, StoreTooNew, StoreBroken.
    std::optional<Fault> trouble;
};

class ProfileKeeper {
public:
    using Saved = std::function<void(const Result<bool>&)>;

    ProfileKeeper() = default;
    ProfileKeeper(const ProfileKeeper&) = delete;
    ProfileKeeper& operator=(const ProfileKeeper&) = delete;
    virtual ~ProfileKeeper() = default;

    virtual void load(QObject* asker, std::function<void(const Remembered&)> then) = 0;
    // Saved is saved: the answer comes once it is on disk.
    virtual void save(const Profile& profile, QObject* asker, Saved then) = 0;
    virtual void saveScale(const QString& screen, PixelsPerMm scale, QObject* asker, Saved then) = 0;
};

}  // namespace fb
