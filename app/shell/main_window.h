// The one window: wordmark, areas, seed and menus in a slim header, the open area, and the
// caution that never leaves the screen. It opens as bare paper and is furnished once that is
// on screen, so that the window stands before fonts are looked up and widgets are made.
#pragma once

#include <QMainWindow>

#include "app/checkoff/check_off_presenter.h"
#include "app/doors/dialogs.h"
#include "app/doors/settings.h"
#include "app/lecture/lecture_presenter.h"
#include "app/practice/practice_presenter.h"
#include "app/profile/learner.h"
#include "app/records/records_presenter.h"
#include "app/shell/area_bar.h"
#include "app/shell/language.h"

class QLabel;
class QMenu;
class QPushButton;
class QStackedWidget;

namespace fb {

class CheckOffPage;
class PracticePage;
class RecordsPage;
class RunDialog;
class RunStrip;
class Screens;
class SpeakerPage;

class MainWindow : public QMainWindow {
    Q_OBJECT

public:
    // Everything handed in outlives the window.
    struct Doors {
        PracticePresenter& practice;
        Learner& learner;
        CheckOffPresenter& checkOff;
        LecturePresenter& lecture;
        RecordsPresenter& records;
        Screens& screens;
        Settings& settings;
        Dialogs& dialogs;
        Language& language;
    };
    explicit MainWindow(const Doors& doors);

    // Makes everything the window shows; once, after firstPainted.
    void furnish();
    // Opens an area, unless a check-off holds the window.
    void openArea(Area area);

Q_SIGNALS:
    void firstPainted();  // once, after the first picture of the window is on screen

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void closeEvent(QCloseEvent* event) override;

private:
    void layOut();
    void connectAll();
    QWidget* header();
    void fitHeader();  // leaves out what it can where long words or large letters need the room
    QPushButton* menuButton(const char* name, void (MainWindow::*fill)(QMenu&));
    void fillView(QMenu& menu);
    void fillPolicy(QMenu& menu);
    void fillHelp(QMenu& menu);
    // 1 to 2; a stored 0 percent is what suits the screen.
    [[nodiscard]] double textScaleFor(int percent) const;
    void say();
    void applyLook();
    void choosePolicy();
    void showAbout();
    // The learner's hand; a dialog of a run that stands open shows it afterwards.
    void showHand(RunDialog* run);
    void askRestart();  // where a policy is offered that would start the run anew
    void change(const Preferences& preferences);
    void keepSetup();  // remembers how the runs are set up
    void keepHand();   // and a hand that was typed for them
    void makeArea(Area area);
    [[nodiscard]] QWidget* pageOf(Area area) const;
    void enter(Area area);
    void followCheckOff();
    void measureScreen();  // pixels per millimetre of the screen the window is on, where it was measured

    Doors m_doors;
    Preferences m_preferences;
    Area m_area = Area::Practice;
    bool m_offeredRunning = false;  // the check-off that was found open was shown once
    AreaBar* m_areas = nullptr;
    QStackedWidget* m_stack = nullptr;
    PracticePage* m_page = nullptr;
    CheckOffPage* m_checkOff = nullptr;  // made when first opened, like the next two
    SpeakerPage* m_speaker = nullptr;
    RecordsPage* m_records = nullptr;
    RunStrip* m_run = nullptr;
    QWidget* m_header = nullptr;
    QLabel* m_wordmark = nullptr;
    QWidget* m_gap = nullptr;  // between it and the areas
    QLabel* m_caution = nullptr;
    QPushButton* m_view = nullptr;
    QPushButton* m_policy = nullptr;
    QPushButton* m_help = nullptr;
    bool m_painted = false;
};

}  // namespace fb
