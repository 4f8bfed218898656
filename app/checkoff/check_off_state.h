// Everything the check-off's pages show, as one value. Made by the presenter, read by the pages.
#pragma once

#include <QString>
#include <optional>

#include "app/doors/records.h"

namespace fb {

// Whether a check-off may be begun for a student who stands so.
[[nodiscard]] inline bool mayStart(const WhereTheyStand& where)
{
    return where.standing == Standing::NotTried || where.standing == Standing::MayRetest;
}

struct CheckOffState {
    bool ready = false;   // the desk was read and plates can be
    bool saving = false;  // something is on its way to the disk: nothing can be pressed
    std::optional<Fault> notice;

    Desk desk;
    QString chosenStudent;  // id, on the desk

    // While one is open. Its record is begun with the confirmed identity; before that its id is 0.
    std::optional<RunningCheckOff> open;
    CheckOffStage stage{};
    int item = 0;  // shown, from 0
    int itemCount = 0;
    bool paused = false;
    QString pauseReason;
    bool timeShown = true;
    bool itemTimeUp = false;  // the item before this one ended so
    Ms used{0};               // of the stage that is timed now
    std::optional<Ms> itemLeft, screenLeft, manikinLeft;
    std::vector<Observation> observations;
    std::optional<double> held;
    std::optional<Ms> holding;  // the stopwatch runs: so long
    std::vector<Answer> answers;
    CheckOffResult result;  // so far
    std::optional<int> rating;
    QString remark, endNote;
    std::optional<SignedOff> signedOff;
    std::optional<Student> next;  // who is due after this one

    // After a damage, on the desk.
    std::optional<BackupOnFile> offered;  // until it is put back or declined
    std::optional<int> puttingBack;       // it is being put back: so many percent
    std::optional<PutBack> putBack;       // it was, until that was read
};

}  // namespace fb
