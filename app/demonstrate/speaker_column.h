// The column beside the speaker's picture: four tabs (step, patient, compare, room), and always in sight
// under them what went wrong, the clock, the audience's window.
#pragma once

#include <QWidget>
#include <array>
#include <memory>
#include <optional>

#include "app/doors/dialogs.h"
#include "app/doors/speaker_notes.h"
#include "app/look/palette.h"

class QLabel;
class QScrollArea;
class QStackedLayout;
class QToolButton;

namespace fb {

class AudiencePanel;
class AudienceWindow;
class BodyPanel;
class ComparePanel;
class HandoutMenu;
class LectureClock;
class LecturePresenter;
class Library;
class NotesPanel;
class Notice;
class RoomPanel;

class SpeakerColumn : public QWidget {
    Q_OBJECT

public:
    enum Tab { StepTab, BodyTab, CompareTab, RoomTab, TabCount };

    SpeakerColumn(LecturePresenter& presenter, Dialogs& dialogs, AudienceWindow& audience,
                  QWidget* parent = nullptr);
    void useLibrary(const std::shared_ptr<const Library>& library);  // for hand-outs

    void showState();
    void showFrame();  // of an animation: the numbers of a body that glides
    void useNotes(const Result<SpeakerNotes>& notes);
    void setScheme(const Scheme& scheme);
    void open(Tab tab);
    [[nodiscard]] AudiencePanel& audience() { return *m_audience; }

protected:
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    void layOut();
    void say();
    void fit();                          // as wide as its letters ask, and what must be read in one line
    void fitScroll(Tab tab);             // only what scrolls has to be reached by key
    void tell(const QString& sentence);  // what came of a hand-out; empty: nothing
    QScrollArea* scrolled(QWidget* panel, const char* name);

    LecturePresenter& m_presenter;
    NotesPanel* m_notes;
    BodyPanel* m_body;
    ComparePanel* m_compare;
    RoomPanel* m_room;
    Notice* m_notice;
    QLabel* m_told;
    LectureClock* m_clock;
    HandoutMenu* m_handouts;
    AudiencePanel* m_audience;
    std::array<QToolButton*, TabCount> m_tabs{};
    std::array<QScrollArea*, TabCount> m_scrolls{};
    QStackedLayout* m_stack = nullptr;
    std::optional<Site> m_fitted;  // whose names it was fitted to
};

}  // namespace fb
