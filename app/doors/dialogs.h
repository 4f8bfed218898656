// Questions only the system can ask, behind a door so that a test answers them.
#pragma once

#include <QString>

class QWidget;

namespace fb {

class Dialogs {
public:
    Dialogs() = default;
    Dialogs(const Dialogs&) = delete;
    Dialogs& operator=(const Dialogs&) = delete;
    virtual ~Dialogs() = default;

    // A policy file to read; empty when the user thinks better of it.
    [[nodiscard]] virtual QString askPolicyFile(QWidget* parent) = 0;
};

class SystemDialogs : public Dialogs {
public:
    [[nodiscard]] QString askPolicyFile(QWidget* parent) override;
};

}  // namespace fb
