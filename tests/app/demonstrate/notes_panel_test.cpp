#include "app/demonstrate/notes_panel.h"

#include <gtest/gtest.h>

#include <QLabel>

#include "app/lecture/lecture_look.h"
#include "app/words/fault_words.h"
#include "tests/support/lecture_sample.h"

namespace fb::test::notes_panel_test {

struct Panel {
    Panel()
    {
        QObject::connect(&sample.presenter, &LecturePresenter::changed, &panel, &NotesPanel::showState);
        sample.presenter.setCalm(true);
        panel.showState();
    }
    [[nodiscard]] QLabel* label(const char* name) { return panel.findChild<QLabel*>(QLatin1String(name)); }
    [[nodiscard]] QString text(const char* name) { return label(name)->text(); }
    [[nodiscard]] QString titleOf(int step) const
    {
        return stepTitle(sample.shown(), sample.state().steps.at(static_cast<std::size_t>(step)));
    }

    LectureSample sample;
    NotesPanel panel{sample.presenter};
};

Result<SpeakerNotes> notes(const char* json) { return SpeakerNotes::parse(json); }

TEST(NotesPanelTest, ThisStepAndTheNext)
{
    Panel shown;
    shown.sample.presenter.goTo(2);
    EXPECT_EQ(shown.text("stepTitle"), shown.titleOf(2));
    EXPECT_EQ(shown.text("nextStep"), shown.titleOf(3));
    EXPECT_TRUE(shown.text("stepCount").contains(QStringLiteral("3")));
    shown.sample.presenter.goTo(shown.sample.lastStep());
    EXPECT_EQ(shown.text("stepTitle"), shown.titleOf(shown.sample.lastStep()));
    EXPECT_EQ(shown.text("nextStep"), QStringLiteral("This is the last step."));
}

TEST(NotesPanelTest, TheShippedNotesOfEveryStepStandThereWithTheirSource)
{
    Panel shown;
    const Result<SpeakerNotes> shipped = SpeakerNotes::shipped();
    ASSERT_TRUE(shipped.has_value());
    shown.panel.useNotes(shipped);
    for (int step = 0; step <= shown.sample.lastStep(); ++step) {
        shown.sample.presenter.goTo(step);
        const SpeakerNote note = shipped->note(Site::Deltoid, shown.sample.state().convention,
                                               QString::fromStdString(keyOf(shown.sample.step())));
        EXPECT_EQ(shown.text("stepNote"), note.text) << step;
        EXPECT_TRUE(shown.text("stepSource").endsWith(note.source)) << step;
    }
}

TEST(NotesPanelTest, NotesThatCannotBeReadAreToldInTheirPlace)
{
    Panel shown;
    const Result<SpeakerNotes> broken = notes("{ broken");
    ASSERT_FALSE(broken.has_value());
    shown.panel.useNotes(broken);
    EXPECT_EQ(shown.text("stepNote"), sentenceOf(broken.error()));
    EXPECT_TRUE(shown.label("stepSource")->isHidden());
    shown.sample.presenter.next();
    EXPECT_EQ(shown.text("stepTitle"), shown.titleOf(1)) << "the demonstration goes on";
}

TEST(NotesPanelTest, TheKeysAreToldWhereTheSpeakerLooks)
{
    Panel shown;
    for (const char* key : {"Page Down", "Page Up", "B ", "F6"})
        EXPECT_TRUE(shown.text("lectureKeys").contains(QLatin1String(key))) << key;
}

TEST(NotesPanelTest, BeforeNotesAreReadTheirPlaceIsEmpty)
{
    Panel shown;
    EXPECT_TRUE(shown.label("stepNote")->isHidden());
    EXPECT_TRUE(shown.label("stepSource")->isHidden());
}

}  // namespace fb::test::notes_panel_test
