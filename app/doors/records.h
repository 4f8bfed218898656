// What the program keeps of check-offs, and the door behind which it is kept, so that a test keeps in
// memory. Kept is kept: an answer comes once it is on disk.
//
// Answers come in the thread that asked, later or at once, in the order of asking, and only while the
// asker lives. Long work tells how far it is and can be cancelled.
#pragma once

#include <QDate>
#include <QDateTime>
#include <QObject>
#include <QString>
#include <atomic>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "core/session/check_off.h"

namespace fb {

struct Student {
    QString id;  // the school's own, unique
    QString family, given, section;
    int extraPercent = 0;  // accommodation: so much more time
    QString language;      // of the feedback sheet, a locale name; empty: the program's
    bool invented = false;

    friend bool operator==(const Student&, const Student&) = default;
};

struct Assessor {
    qint64 id = 0;
    QString name;

    friend bool operator==(const Assessor&, const Assessor&) = default;
};

struct SheetOnFile {
    QString key;  // SHA-256 of its text, hex: a sheet that is edited is another one
    Sheet sheet;
};

// One line of the board.
struct StudentStanding {
    Student student;
    WhereTheyStand where;
    std::optional<Outcome> lastOutcome;
    QDateTime lastAt;  // UTC; invalid without an attempt
    double lastPercent = 0.0;
};

// What is needed to open a check-off.
struct CheckOffOrder {
    QString student;  // id
    QString sheet;    // key
    std::uint64_t seed = 0;
    int extraPercent = 0;
    QString
        policyText;  // the whole policy in force, as Policy reads it over the shipped one; kept once by hash
    QString plateHashes;  // "view=sha256" of every plate asked, separated by spaces
    QString programVersion;
    double pixelsPerMm = 0.0;  // of the screen; 0 where it was never measured
};

// A check-off that was begun and not signed.
struct RunningCheckOff {
    qint64 id = 0;
    Student student;
    SheetOnFile sheet;
    CheckOffOrder order;
    int attempt = 1;
    bool needsSecondAssessor = false;
    std::vector<CheckOffEvent> events;
    Ms onScreen{0}, onManikin{0};  // counted when last kept
    QDateTime begunAt;             // UTC
};

// A backup, looked into.
struct BackupOnFile {
    QString file;
    QDateTime lastAt;    // UTC, of the log's last entry: what came after it is not in it
    qint64 entries = 0;  // of the log
    int students = 0;
    int checkOffs = 0;  // signed
};

// A backup now stands in the place of the records.
struct PutBack {
    BackupOnFile backup;
    QString aside;  // where what stood there before lies, whole; empty: nothing stood there
};

// What the desk of the check-off shows.
struct Desk {
    std::vector<SheetOnFile> sheets;
    QString currentSheet;                   // key; empty without sheets
    std::vector<StudentStanding> students;  // on the current sheet, by family name
    std::vector<Assessor> assessors;
    std::optional<RunningCheckOff> running;
    std::optional<Fault> told;  // what was lost or put aside when the records were opened
    QString lastBackup;         // file; empty: none
    // After a damage, while the fresh records hold nobody and nothing: what may be put in their place.
    std::optional<BackupOnFile> offered;
};

// A PIN was proved in this process a moment ago. Only a keeper makes one.
struct Proof {
    Assessor assessor;
};

struct SignedOff {
    qint64 id = 0;
    CheckOffResult result;
    QDateTime at;       // UTC
    QString chainHead;  // hex of the log's head after it: the first twelve stand on the printed sheet
    qint64 chainLength = 0;
    std::vector<Assessor> assessors;
};

struct CheckOffFilter {
    QString words;    // in a student's name or id
    QString student;  // id: of this one alone
    QString sheet;    // key; empty: all
    std::optional<Outcome> outcome;
    QDate from, to;  // local days; invalid: no border
    int most = 500;
};

// One signed check-off as a line in a list.
struct CheckOffLine {
    qint64 id = 0;
    Student student;
    QString sheetKey, sheetTitle;
    int attempt = 1;
    QDateTime at;  // UTC
    Outcome outcome{};
    double percent = 0.0;
    int rating = 0;  // 0: none
    QString assessor, secondAssessor;
    QString remediation;  // what was signed after it; empty: nothing yet
};

struct CheckOffOnFile {
    CheckOffLine line;
    QDateTime begunAt;  // UTC
    SheetOnFile sheet;
    CheckOffOrder order;
    std::vector<CheckOffEvent> events;
    QString chainHead;
    qint64 chainLength = 0;
};

struct CohortCount {
    int passed = 0, due = 0, notTried = 0, outOfAttempts = 0, running = 0;
};
struct Board {
    std::vector<StudentStanding> students;
    CohortCount count;
    std::vector<std::pair<Outcome, int>> outcomes;  // of all signed check-offs on the sheet
};

enum class ExportKind { GradebookCsv, FullCsv, FullJson };

struct Verified {
    qint64 entries = 0;  // of the log
    QString head;
    qint64 checkOffs = 0;
    qint64 answers = 0;
    bool whole = false;  // SQLite's own integrity check
};

// How far long work is; shared between who asked and who does it.
struct LongWork {
    std::atomic<int> percent{0};
    std::atomic<bool> cancelled{false};
};

class RecordKeeper {
public:
    template <class T>
    using Then = std::function<void(const Result<T>&)>;

    RecordKeeper() = default;
    RecordKeeper(const RecordKeeper&) = delete;
    RecordKeeper& operator=(const RecordKeeper&) = delete;
    virtual ~RecordKeeper() = default;

    // An empty key: the sheet that was used last.
    virtual void openDesk(const QString& sheet, QObject* asker, Then<Desk> then) = 0;

    // Adds who is new and changes who is known by id; nobody is taken away. How many were added.
    virtual void saveStudents(const std::vector<Student>& students, QObject* asker, Then<int> then) = 0;
    virtual void saveSheet(const Sheet& sheet, QObject* asker, Then<SheetOnFile> then) = 0;

    // NotDueYet, RemediationNotSigned, NoAttemptLeft, CheckOffRunning, StudentUnknown.
    virtual void begin(const CheckOffOrder& order, QObject* asker, Then<RunningCheckOff> then) = 0;
    virtual void keep(qint64 checkOff, const CheckOffEvent& event, QObject* asker, Then<bool> then) = 0;
    virtual void keepTime(qint64 checkOff, Ms onScreen, Ms onManikin) = 0;  // every few seconds
    // Closes it: the signing event, result and audit entry in one transaction. SecondAssessorMissing,
    // SameAssessor. A void or a no-show needs one assessor too.
    virtual void sign(qint64 checkOff, const CheckOffEvent& event, const CheckOffResult& result,
                      const Proof& first, const std::optional<Proof>& second, QObject* asker,
                      Then<SignedOff> then) = 0;
    virtual void signRemediation(qint64 checkOff, const QString& what, const Proof& by, QObject* asker,
                                 Then<bool> then) = 0;

    // NameMissing, PinTooShort, PinTooCommon. The first assessor may be enrolled by anybody, each further
    // one by one who is proved.
    virtual void enrol(const QString& name, const QString& pin, const std::optional<Proof>& by,
                       QObject* asker, Then<Proof> then) = 0;
    // PinWrong, PinHeld (low: seconds), AssessorUnknown. The delay outlives a restart.
    virtual void prove(qint64 assessor, const QString& pin, QObject* asker, Then<Proof> then) = 0;

    virtual void board(const QString& sheet, QObject* asker, Then<Board> then) = 0;
    // Newest first.
    virtual void find(const CheckOffFilter& filter, QObject* asker, Then<std::vector<CheckOffLine>> then) = 0;
    virtual void read(qint64 checkOff, QObject* asker, Then<CheckOffOnFile> then) = 0;

    // False: cancelled, and no file left behind.
    virtual void write(ExportKind kind, const QString& sheet, const QString& file,
                       const std::shared_ptr<LongWork>& work, QObject* asker, Then<bool> then) = 0;
    virtual void backup(const QString& file, const std::shared_ptr<LongWork>& work, QObject* asker,
                        Then<bool> then) = 0;
    // Puts a checked copy of the backup in the place of the records, and those aside, whole. At any moment,
    // a crash included, one of the two stands there. Once anybody is enrolled in the records it takes one who
    // is proved. Its own fault changes nothing: CheckOffRunning, FileNotReadable, NotAStore, StoreTooNew,
    // StoreBroken and ChainBroken (of the backup), NotPutBack. Cancelled in time: NotPutBack.
    virtual void putBack(const QString& file, const std::optional<Proof>& by,
                         const std::shared_ptr<LongWork>& work, QObject* asker, Then<PutBack> then) = 0;
    virtual void verify(const std::shared_ptr<LongWork>& work, QObject* asker, Then<Verified> then) = 0;
    // Looks into a backup, quickly and without touching it: FileNotReadable, NotAStore, StoreTooNew,
    // StoreBroken.
    virtual void lookInto(const QString& file, QObject* asker, Then<BackupOnFile> then) = 0;
};

}  // namespace fb
