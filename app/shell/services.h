// The only file that knows every concrete class: makes the doors, the presenters and the
// window, and reads what ships with the program in a worker once the window is on screen.
#pragma once

#include <QObject>
#include <memory>
#include <thread>

#include "app/checkoff/check_off_presenter.h"
#include "app/demonstrate/screens.h"
#include "app/doors/clock.h"
#include "app/doors/dialogs.h"
#include "app/doors/profile.h"
#include "app/doors/records.h"
#include "app/doors/seeds.h"
#include "app/doors/settings.h"
#include "app/lecture/body_worker.h"
#include "app/lecture/lecture_presenter.h"
#include "app/practice/practice_presenter.h"
#include "app/profile/learner.h"
#include "app/records/records_presenter.h"
#include "app/shell/language.h"

namespace fb {

class MainWindow;

class Services : public QObject {
    Q_OBJECT

public:
    // A test's own or the system's; they outlive the services.
    struct Doors {
        Settings& settings;
        Dialogs& dialogs;
        Seeds& seeds;
        Clock& clock;
        ProfileKeeper& profiles;
        RecordKeeper& records;
        Screens& screens;
    };
    explicit Services(const Doors& doors);
    ~Services() override;

    [[nodiscard]] PracticePresenter& practice() { return *m_practice; }
    [[nodiscard]] CheckOffPresenter& checkOff() { return *m_checkOff; }
    [[nodiscard]] LecturePresenter& lecture() { return *m_lecture; }
    [[nodiscard]] RecordsPresenter& records() { return *m_records; }
    [[nodiscard]] Learner& learner() { return *m_learner; }
    [[nodiscard]] MainWindow& window() { return *m_window; }

private:
    struct Shipped {
        Result<std::shared_ptr<const Library>> library;
        std::optional<LabPolicy> lab;
    };

    void load();
    void openPractice();  // once library and learner are there
    void usePolicy();     // check-offs, demonstrations and records use the one that practice uses

    Settings& m_settings;
    Language m_language;
    std::optional<Shipped> m_shipped;
    std::unique_ptr<Learner> m_learner;
    std::unique_ptr<PracticePresenter> m_practice;
    std::unique_ptr<CheckOffPresenter> m_checkOff;
    std::unique_ptr<BodyWorker> m_bodies;
    std::unique_ptr<LecturePresenter> m_lecture;
    std::unique_ptr<RecordsPresenter> m_records;
    std::optional<QString> m_policyFile;  // of the policy that check-offs use
    std::unique_ptr<MainWindow> m_window;
    std::thread m_loader;
};

// Opens the window and runs until it is closed; the process's exit code.
[[nodiscard]] int runWindow(int argc, char** argv);

}  // namespace fb
