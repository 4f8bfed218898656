// The only file that knows every concrete class: makes the doors, the presenters and the
// window, and reads what ships with the program in a worker once the window is on screen.
#pragma once

#include <QObject>
#include <memory>
#include <thread>

#include "app/doors/dialogs.h"
#include "app/doors/profile.h"
#include "app/doors/seeds.h"
#include "app/doors/settings.h"
#include "app/practice/practice_presenter.h"
#include "app/profile/learner.h"
#include "app/shell/language.h"

namespace fb {

class MainWindow;

class Services : public QObject {
    Q_OBJECT

public:
    // With doors of a test's own; they outlive the services.
    Services(Settings& settings, Dialogs& dialogs, Seeds& seeds, ProfileKeeper& profiles);
    ~Services() override;

    [[nodiscard]] PracticePresenter& practice() { return *m_practice; }
    [[nodiscard]] Learner& learner() { return *m_learner; }
    [[nodiscard]] MainWindow& window() { return *m_window; }

private:
    struct Shipped {
        Result<std::shared_ptr<const Library>> library;
        std::optional<LabPolicy> lab;
    };

    void load();
    void openPractice();  // once library and learner are there

    Settings& m_settings;
    Language m_language;
    std::optional<Shipped> m_shipped;
    std::unique_ptr<Learner> m_learner;
    std::unique_ptr<PracticePresenter> m_practice;
    std::unique_ptr<MainWindow> m_window;
    std::thread m_loader;
};

// Opens the window and runs until it is closed; the process's exit code.
[[nodiscard]] int runWindow(int argc, char** argv);

}  // namespace fb
