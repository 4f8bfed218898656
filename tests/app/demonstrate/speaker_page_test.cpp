#include "app/demonstrate/speaker_page.h"

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QComboBox>
#include <QListWidget>
#include <QPushButton>
#include <QSlider>

#include "app/demonstrate/audience_window.h"
#include "app/lecture/lecture_look.h"
#include "tests/support/layout_audit.h"
#include "tests/support/pseudo_translator.h"
#include "tests/support/speaker_sample.h"

namespace fb::test::speaker_page_test {

constexpr std::array kTabs{"tabStep", "tabBody", "tabCompare", "tabRoom"};

class SpeakerPageTest : public ::testing::Test {
protected:
    ~SpeakerPageTest() override
    {
        QApplication::setLayoutDirection(Qt::LeftToRight);
        applyStyle(*qApp, schemeOf(PaletteKind::Light), 1.0);
    }
    // Layouts ask for a new layout through the event loop, more than once when words wrap.
    static void settle()
    {
        constexpr int kRounds = 5;
        for (int i = 0; i < kRounds; ++i) {
            QCoreApplication::sendPostedEvents();
            QCoreApplication::processEvents();
        }
    }
    // Every tab and every tool, looked over.
    static void audit(ShownSpeaker& speaker, const char* what)
    {
        ASSERT_TRUE(speaker.isReady);
        for (const char* tab : kTabs) {
            QTest::mouseClick(speaker.find(tab), Qt::LeftButton);
            for (int tool = 0; tool < kLectureToolCount; ++tool) {
                speaker.sample.presenter.setTool(static_cast<LectureTool>(tool));
                settle();
                EXPECT_EQ(layoutFaults(speaker.window).join('\n').toStdString(), std::string())
                    << what << ", " << tab << ", tool " << tool;
            }
        }
    }
};

TEST_F(SpeakerPageTest, NothingIsCutAtAnySizeInAnySchemeAndDirection)
{
    {
        ShownSpeaker speaker(Site::Ventrogluteal);
        audit(speaker, "1280x720");
        EXPECT_EQ(speaker.window.size(), QSize(1280, 720)) << "it needs no more room";
    }
    {
        ShownSpeaker speaker(Site::Deltoid, {1280, 720}, PaletteKind::Dark, 1.5);
        audit(speaker, "150 percent");
        EXPECT_EQ(speaker.window.size(), QSize(1280, 720));
    }
    {
        ShownSpeaker speaker(Site::VastusLateralis, {3840, 2100}, PaletteKind::Projector, 2.0);
        audit(speaker, "3840x2160");
    }
    QApplication::setLayoutDirection(Qt::RightToLeft);
    ShownSpeaker speaker(Site::Deltoid);
    audit(speaker, "right to left");
}

TEST_F(SpeakerPageTest, AWordierLanguageFindsItsRoom)
{
    PseudoTranslator wordy;
    QApplication::installTranslator(&wordy);
    {
        ShownSpeaker speaker(Site::Ventrogluteal);
        audit(speaker, "longer words");
        EXPECT_EQ(speaker.window.size(), QSize(1280, 720));
    }
    QApplication::removeTranslator(&wordy);
}

TEST_F(SpeakerPageTest, WordsOfAnotherLanguageComeAtOnce)
{
    ShownSpeaker speaker;
    PseudoTranslator wordy;
    QApplication::installTranslator(&wordy);
    settle();
    const std::map<const char*, const char*> words{
        {"tabStep", "Step"},         {"tabRoom", "Room"},
        {"lectureNext", "Next"},     {"handOut", "Hand out"},
        {"bodyHeavy", "Heavy"},      {"pinBody", "Pin"},
        {"askRoom", "Ask the room"}, {"openAudience", "Open audience window"}};
    for (const auto& [name, english] : words)
        EXPECT_EQ(speaker.find<QAbstractButton>(name)->text(), pseudo(QLatin1String(english))) << name;
    const auto* steps = speaker.find<QListWidget>("lectureSteps");
    EXPECT_EQ(steps->item(1)->text(), stepTitle(speaker.sample.shown(), speaker.state().steps.at(1)));
    EXPECT_EQ(layoutFaults(speaker.window).join('\n').toStdString(), std::string());
    QApplication::removeTranslator(&wordy);
}

TEST_F(SpeakerPageTest, ANoticeAndAComparisonLeaveNothingCut)
{
    ShownSpeaker speaker(Site::Ventrogluteal);
    speaker.sample.presenter.pin();
    speaker.sample.presenter.setStoutness(Stoutness::Heavy);
    speaker.sample.presenter.tell({Problem::NotesNotReadable, ":/notes/speaker-notes.json", {}, 0.0, 0.0});
    audit(speaker, "with a notice");
}

TEST_F(SpeakerPageTest, EveryControlHasANameAndIsReachedByTab)
{
    ShownSpeaker speaker(Site::Ventrogluteal);
    ASSERT_TRUE(speaker.isReady);
    EXPECT_EQ(namelessControls(speaker.window).join('\n').toStdString(), std::string());
    const std::map<int, std::vector<const char*>> wanted{
        {Qt::Key_1,
         {"lectureSite", "lectureSide", "lecturePeelBone", "toolPen", "lectureNext", "restartClock",
          "handOut", "openAudience", "blankAudience", "lecturePicture"}},
        {Qt::Key_2, {"bodyMale", "bodyWeightField", "bodyWeightSlider", "bodyHeavy", "lectureTone"}},
        {Qt::Key_3, {"pinBody"}},
        {Qt::Key_4, {"askRoom", "readMarks"}}};
    for (const auto& [tab, names] : wanted) {
        speaker.key(tab, Qt::AltModifier);
        for (const char* name : names)
            EXPECT_TRUE(speaker.tabTo(speaker.find(name))) << name;
    }
}

// From the first step to the last and through everything a speaker does, with no mouse.
TEST_F(SpeakerPageTest, AWholeDemonstrationByKeysAlone)
{
    ShownSpeaker speaker;
    ASSERT_TRUE(speaker.isReady);
    ASSERT_TRUE(speaker.tabTo(speaker.find("lectureSite")));
    speaker.key(Qt::Key_End);
    ASSERT_EQ(speaker.sample.presenter.site(), Site::Ventrogluteal);
    for (int step = 1; step <= speaker.sample.lastStep(); ++step) {
        speaker.key(Qt::Key_PageDown);
        ASSERT_EQ(speaker.state().step, step);
        ASSERT_EQ(speaker.find<QListWidget>("lectureSteps")->currentRow(), step);
    }
    speaker.key(Qt::Key_2, Qt::AltModifier);
    ASSERT_TRUE(speaker.tabTo(speaker.find("bodyWeightSlider")));
    const double before = speaker.state().body.weightKg;
    speaker.key(Qt::Key_Right);
    EXPECT_DOUBLE_EQ(speaker.state().body.weightKg, before + 1.0);
    speaker.key(Qt::Key_3, Qt::AltModifier);
    ASSERT_TRUE(speaker.tabTo(speaker.find("pinBody")));
    speaker.key(Qt::Key_Space);
    EXPECT_TRUE(speaker.state().pinned.has_value());
    speaker.key(Qt::Key_2, Qt::AltModifier);
    ASSERT_TRUE(speaker.tabTo(speaker.find("bodyHeavy")));
    speaker.key(Qt::Key_Space);
    EXPECT_NE(speaker.state().body, *speaker.state().pinned);
    speaker.key(Qt::Key_4, Qt::AltModifier);
    ASSERT_TRUE(speaker.tabTo(speaker.find("askRoom")));
    speaker.key(Qt::Key_Space);
    ASSERT_EQ(speaker.state().tool, LectureTool::Ask);
    ASSERT_TRUE(speaker.tabTo(speaker.find("lecturePicture")));
    speaker.key(Qt::Key_Home);
    EXPECT_EQ(speaker.state().step, 0);
    speaker.key(Qt::Key_Right, Qt::ControlModifier);
    speaker.key(Qt::Key_Return);
    ASSERT_EQ(speaker.state().room.size(), 1U);
    ASSERT_TRUE(speaker.tabTo(speaker.find("revealMarks")));
    speaker.key(Qt::Key_Space);
    EXPECT_TRUE(speaker.state().revealed);
    ASSERT_TRUE(speaker.tabTo(speaker.find("openAudience")));
    speaker.key(Qt::Key_Space);
    EXPECT_NE(speaker.page->audience().where(), AudienceWindow::Where::Closed);
    speaker.page->audience().close();
}

TEST_F(SpeakerPageTest, AClickOnAControlLeavesTheKeysWithThePicture)
{
    ShownSpeaker speaker;
    ASSERT_TRUE(speaker.isReady);
    QWidget* picture = speaker.find("lecturePicture");
    ASSERT_TRUE(picture->hasFocus());
    for (const char* name :
         {"toolPen", "toolPoint", "lectureNext", "lecturePeelBone", "tabBody", "bodyHeavy"}) {
        QTest::mouseClick(speaker.find(name), Qt::LeftButton);
        EXPECT_TRUE(picture->hasFocus()) << name;
    }
    QTest::mouseClick(speaker.find("bodyWeightSlider"), Qt::LeftButton);
    EXPECT_TRUE(picture->hasFocus());
    const int before = speaker.state().step;
    speaker.key(Qt::Key_Right);
    EXPECT_EQ(speaker.state().step, before + 1);
}

TEST_F(SpeakerPageTest, TwoScreensF6AndEscape)
{
    ShownSpeaker speaker;
    ASSERT_TRUE(speaker.isReady);
    using Where = AudienceWindow::Where;
    speaker.key(Qt::Key_F6);
    EXPECT_EQ(speaker.page->audience().where(), Where::Closed) << "nothing is open yet";
    speaker.screens.plug(twoScreens());
    QTest::mouseClick(speaker.find("openAudience"), Qt::LeftButton);
    EXPECT_EQ(speaker.page->audience().where(), Where::OtherScreen);
    speaker.key(Qt::Key_B);
    EXPECT_TRUE(speaker.state().blank);
    speaker.key(Qt::Key_B);
    speaker.key(Qt::Key_Escape);
    EXPECT_EQ(speaker.page->audience().where(), Where::Closed);
}

TEST_F(SpeakerPageTest, NotesThatAreMissingAreToldToTheSpeakerAlone)
{
    ShownSpeaker speaker;
    const auto missing = fault(Problem::NotesNotReadable, "speaker-notes.json");
    speaker.page->useNotes(missing);
    EXPECT_FALSE(speaker.state().notice.has_value());
    speaker.key(Qt::Key_PageDown);
    EXPECT_EQ(speaker.state().step, 1);
}

}  // namespace fb::test::speaker_page_test
