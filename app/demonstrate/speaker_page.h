// The speaker's own page in the main window: the picture with pointer and pen, this step and the next, notes,
// clock, the body's sliders, what is compared, tools, the room's marks, hand-outs, the audience's window.
#pragma once

#include <QWidget>
#include <memory>

#include "app/doors/dialogs.h"
#include "app/doors/speaker_notes.h"
#include "app/look/palette.h"

namespace fb {

class AudienceWindow;
class LecturePresenter;
class Library;
class Screens;

class SpeakerPage : public QWidget {
    Q_OBJECT

public:
    SpeakerPage(LecturePresenter& presenter, Dialogs& dialogs, Screens& screens, QWidget* parent = nullptr);
    ~SpeakerPage() override;

    void useLibrary(const std::shared_ptr<const Library>& library);  // for hand-outs
    void useNotes(const Result<SpeakerNotes>& notes);  // a fault is told beside the notes' place
    void setScheme(const Scheme& scheme);
    [[nodiscard]] AudienceWindow& audience();

protected:
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    struct Private;
    void layOut();
    void connectAll();
    void showState();

    std::unique_ptr<Private> m_private;
};

}  // namespace fb
