// Questions only the system can ask, behind a door so that a test answers them.
#pragma once

#include <QString>

class QWidget;

namespace fb {

// What is saved, and with it how its name ends.
enum class SaveKind {
    Csv,
    Json,
    Pdf,
    Svg,
    Png,
    Records  // a backup of the records
};
inline constexpr int kSaveKindCount = static_cast<int>(SaveKind::Records) + 1;

class Dialogs {
public:
    Dialogs() = default;
    Dialogs(const Dialogs&) = delete;
    Dialogs& operator=(const Dialogs&) = delete;
    virtual ~Dialogs() = default;

    // A file to read; empty when the user thinks better of it.
    [[nodiscard]] virtual QString askPolicyFile(QWidget* parent) = 0;
    [[nodiscard]] virtual QString askRosterFile(QWidget* parent) = 0;
    [[nodiscard]] virtual QString askSheetFile(QWidget* parent) = 0;
    [[nodiscard]] virtual QString askMarksFile(QWidget* parent) = 0;
    // A file to write, with the ending of its kind; the system has asked before it names one that is there.
    [[nodiscard]] virtual QString askSaveFile(QWidget* parent, const QString& suggestedName,
                                              SaveKind kind) = 0;
    // A backup to read; looked for in that folder first.
    [[nodiscard]] virtual QString askBackupFile(QWidget* parent, const QString& folder) = 0;
};

class SystemDialogs : public Dialogs {
public:
    [[nodiscard]] QString askPolicyFile(QWidget* parent) override;
    [[nodiscard]] QString askRosterFile(QWidget* parent) override;
    [[nodiscard]] QString askSheetFile(QWidget* parent) override;
    [[nodiscard]] QString askMarksFile(QWidget* parent) override;
    [[nodiscard]] QString askSaveFile(QWidget* parent, const QString& suggestedName, SaveKind kind) override;
    [[nodiscard]] QString askBackupFile(QWidget* parent, const QString& folder) override;
};

// How the name of a file of that kind ends, without the point.
[[nodiscard]] QString endingOf(SaveKind kind);

}  // namespace fb
