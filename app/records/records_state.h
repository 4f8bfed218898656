// Everything the records' pages show, as one value. Made by the presenter, read by the pages. While the gate
// is not open there is nothing of anybody's records in it.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "app/records/opened_check_off.h"
#include "app/records/replay.h"

namespace fb {

enum class RecordsGate {
    Reading,  // who may open them
    NobodyEnrolled,
    Locked,
    Open
};

enum class RecordsArea { Board, CheckOffs, Log, Assessors };
inline constexpr int kRecordsAreaCount = static_cast<int>(RecordsArea::Assessors) + 1;

struct StudentHistory {
    Student student;
    std::optional<WhereTheyStand> where;  // on the sheet of the board
    QString sheetTitle;                   // of that
    std::vector<CheckOffLine> attempts;   // oldest first, on any sheet
};

enum class LongTaskKind { Verify, Backup, Export, SavedSheet, PrintedSheet, PutBack };

struct LongTask {
    LongTaskKind kind{};
    QString file;  // empty: none is written
    int percent = 0;
};

// What became of the last one that ended without a fault.
struct LongTaskDone {
    LongTaskKind kind{};
    QString file;
    bool cancelled = false;
    std::optional<Verified> verified;
};

struct RecordsState {
    RecordsGate gate = RecordsGate::Reading;
    bool asking = false;          // an answer about a PIN is on its way
    std::optional<Fault> notice;  // what went wrong last; everything else stayed as it was
    std::vector<Assessor> assessors;
    int heldSeconds = 0;  // until the next PIN may be tried

    // Behind the gate.
    std::optional<Assessor> who;
    RecordsArea area = RecordsArea::Board;
    std::vector<SheetOnFile> sheets;
    QString sheet;  // key, of the board
    QString lastBackup;
    std::shared_ptr<const Board> board;  // null until read
    CheckOffFilter filter;
    std::shared_ptr<const std::vector<CheckOffLine>> found;
    std::shared_ptr<const StudentHistory> history;  // over the area, where one is open;
    std::shared_ptr<const OpenedCheckOff> opened;   // over that, likewise;
    std::optional<int> item;                        // over that: the answer that is replayed,
    std::shared_ptr<const Replay> replay;           // null until it is made

    // The long work goes on when the gate is shut: it says nothing of anybody.
    std::optional<LongTask> task;
    std::optional<LongTaskDone> done;

    bool isOffered = false;                    // after a damage the desk of the check-off offers a backup
    std::optional<BackupOnFile> chosenBackup;  // behind the gate: looked into, and waits for a word
    std::optional<PutBack> putBack;            // that was put back, which shut the gate
};

}  // namespace fb
