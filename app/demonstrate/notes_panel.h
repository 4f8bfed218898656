// What the speaker reads: the step that is shown, what may be said at it and where that comes from, the step
// that comes next.
#pragma once

#include <QWidget>
#include <optional>

#include "app/doors/speaker_notes.h"

class QLabel;

namespace fb {

class LecturePresenter;
struct LectureState;

class NotesPanel : public QWidget {
    Q_OBJECT

public:
    explicit NotesPanel(LecturePresenter& presenter, QWidget* parent = nullptr);

    void useNotes(const Result<SpeakerNotes>& notes);  // a fault is told where the notes would stand
    void showState();

protected:
    void changeEvent(QEvent* event) override;

private:
    void say();
    void showNote(const LectureState& state);

    LecturePresenter& m_presenter;
    std::optional<Result<SpeakerNotes>> m_notes;
    QLabel* m_count;
    QLabel* m_title;
    QLabel* m_note;
    QLabel* m_source;
    QLabel* m_nextTitle;
    QLabel* m_next;
    QLabel* m_keys;
};

}  // namespace fb
