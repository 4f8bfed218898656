#include "app/demonstrate/notes_panel.h"

#include <QEvent>
#include <QLabel>
#include <QLocale>
#include <QVBoxLayout>

#include "app/lecture/lecture_look.h"
#include "app/lecture/lecture_presenter.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/fault_words.h"

namespace fb {

NotesPanel::NotesPanel(LecturePresenter& presenter, QWidget* parent)
    : QWidget(parent),
      m_presenter(presenter),
      m_count(parts::text(this, "stepCount", "small")),
      m_title(parts::text(this, "stepTitle", "request")),
      m_note(parts::text(this, "stepNote", "large")),
      m_source(parts::text(this, "stepSource", "small")),
      m_nextTitle(parts::text(this, "nextStepTitle", "small")),
      m_next(parts::text(this, "nextStep")),
      m_keys(parts::text(this, "lectureKeys", "small"))
{
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(space::kTight);
    rows->addWidget(m_count);
    rows->addWidget(m_title);
    rows->addSpacing(space::kNear);
    rows->addWidget(m_note);
    rows->addSpacing(space::kTight);
    rows->addWidget(m_source);
    rows->addSpacing(space::kNear);
    rows->addWidget(parts::rule(this));
    rows->addSpacing(space::kNear);
    rows->addWidget(m_nextTitle);
    rows->addWidget(m_next);
    rows->addSpacing(space::kApart);
    rows->addStretch(1);
    rows->addWidget(m_keys);
    say();
}

void NotesPanel::say()
{
    //: Over the name of the step that comes next.
    m_nextTitle->setText(tr("Next"));
    m_keys->setText(tr("Page Down goes on, Page Up goes back, B blanks the picture, F6 swaps the screens."));
}

void NotesPanel::useNotes(const Result<SpeakerNotes>& notes)
{
    m_notes = notes;
    showState();
}

void NotesPanel::showState()
{
    const LectureState& state = m_presenter.state();
    const int count = static_cast<int>(state.steps.size());
    if (!state.shown || state.step < 0 || state.step >= count)
        return;
    const auto titleOf = [&](int step) {
        return stepTitle(*state.shown, state.steps[static_cast<std::size_t>(step)]);
    };
    const QLocale locale;
    m_count->setText(tr("Step %1 of %2").arg(locale.toString(state.step + 1), locale.toString(count)));
    m_title->setText(titleOf(state.step));
    const bool isLast = state.step + 1 == count;
    m_next->setText(isLast ? tr("This is the last step.") : titleOf(state.step + 1));
    m_nextTitle->setVisible(!isLast);
    showNote(state);
}

void NotesPanel::showNote(const LectureState& state)
{
    QString text;
    QString source;
    if (m_notes && *m_notes) {
        const QString key = QString::fromStdString(keyOf(state.steps[static_cast<std::size_t>(state.step)]));
        const SpeakerNote note = (*m_notes)->note(siteOf(state.convention), state.convention, key);
        text = note.text.isEmpty() ? tr("There is no note for this step.") : note.text;
        //: %1 is where a speaker's note comes from.
        source = note.source.isEmpty() ? QString() : tr("Source: %1").arg(note.source);
    } else if (m_notes) {
        text = sentenceOf(m_notes->error());
    }
    m_note->setText(text);
    m_source->setText(source);
    m_note->setVisible(!text.isEmpty());
    m_source->setVisible(!source.isEmpty());
}

void NotesPanel::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) {
        say();
        showState();
    }
}

}  // namespace fb
