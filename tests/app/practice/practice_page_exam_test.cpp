// The page in exam manner: whatever key is pressed, nothing is told of how an answer was.
#include <gtest/gtest.h>

#include <QApplication>
#include <QDialog>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QTest>
#include <QToolButton>

#include "app/look/style.h"
#include "app/practice/practice_page.h"
#include "tests/support/exam_run.h"
#include "tests/support/hand_learner.h"
#include "tests/support/no_feedback.h"
#include "tests/support/pseudo_translator.h"

namespace practice_page_exam_test {

namespace {

using namespace fb;
using namespace fb::test;

struct ExamPage : ExamRun {
    explicit ExamPage(const std::vector<Site>& sites, HelpLevel help = HelpLevel::Nothing,
                      bool byHand = false)
        : ExamRun(sites, help, byHand),
          page(presenter)
    {
        page.setScheme(schemeOf(PaletteKind::Light));
        page.resize(1280, 700);
        page.show();
        isReady = QTest::qWaitForWindowActive(&page) && sharp();
    }
    [[nodiscard]] bool sharp()
    {
        return QTest::qWaitFor([this] { return state().picture && plate().isSharp(); });
    }
    [[nodiscard]] PlateView& plate() { return *page.findChild<PlateView*>(QStringLiteral("plate")); }
    template <class Widget = QPushButton>
    [[nodiscard]] Widget* find(const char* name)
    {
        return page.findChild<Widget*>(QLatin1String(name));
    }

    PracticePage page;
    bool isReady = false;
};

const QPointF kPlace{0.5, -4.5};

TEST(PracticePageExamTest, ConfirmTakesThePlaceOfGrade)
{
    ExamPage exam({Site::Deltoid, Site::Deltoid});
    ASSERT_TRUE(exam.isReady);
    EXPECT_EQ(exam.find("grade")->text(), QStringLiteral("Confirm"));
    EXPECT_FALSE(exam.find("grade")->isEnabled());
    EXPECT_FALSE(exam.find<QLabel>("counter")->isVisible()) << "the strip above counts the items";
    QTest::mouseClick(&exam.plate(), Qt::LeftButton, {}, exam.plate().toWidget(kPlace).toPoint());
    EXPECT_TRUE(exam.find<QLabel>("hint")->text().contains(QStringLiteral("Confirm it")));
    QTest::mouseClick(exam.find("grade"), Qt::LeftButton);
    EXPECT_EQ(exam.state().keeping, Keeping::Saving);
    EXPECT_EQ(exam.find<QLabel>("hint")->text(), QStringLiteral("Saving…"));
    EXPECT_FALSE(exam.find("grade")->isEnabled());
    EXPECT_FALSE(exam.find("withdraw")->isEnabled());
    EXPECT_EQ(feedbackIn(exam.page), QStringList());
    exam.presenter.setKeeping(Keeping::Failed);
    EXPECT_TRUE(exam.find("grade")->isEnabled());
    EXPECT_EQ(QApplication::focusWidget(), exam.find("grade"));
    EXPECT_TRUE(exam.find<QLabel>("hint")->text().contains(QStringLiteral("not saved yet")));
    QTest::keyClick(exam.find("grade"), Qt::Key_Return);
    EXPECT_EQ(exam.state().keeping, Keeping::Saving);
}

TEST(PracticePageExamTest, NoKeyShowsAnything)
{
    for (const bool byHand : {false, true}) {
        ExamPage exam({Site::Ventrogluteal, Site::Deltoid}, HelpLevel::Nothing, byHand);
        ASSERT_TRUE(exam.isReady);
        if (byHand) {
            HandLearner learner(exam.presenter);
            learner.plant();
            learner.build();
            learner.grade();
        } else {
            QTest::keyClick(&exam.plate(), Qt::Key_Return);
            QTest::keyClick(&exam.plate(), Qt::Key_Return);
        }
        ASSERT_EQ(exam.state().keeping, Keeping::Saving);
        const auto spoken = exam.plate().spokenItems();
        const QSize whole = exam.plate().size();
        const double scale = exam.plate().pixelsPerCm();
        const auto mark = exam.state().mark;
        for (int key = Qt::Key_Space; key <= Qt::Key_AsciiTilde; ++key) {
            for (const auto held :
                 {Qt::NoModifier, Qt::ShiftModifier, Qt::ControlModifier, Qt::AltModifier}) {
                // These move the paper, which tells nothing.
                if (key == Qt::Key_Plus || key == Qt::Key_Minus || key == Qt::Key_Equal || key == Qt::Key_0)
                    continue;
                for (const auto type : {QEvent::KeyPress, QEvent::KeyRelease}) {
                    QKeyEvent event(type, key, held);
                    QCoreApplication::sendEvent(&exam.plate(), &event);
                }
            }
        }
        for (const Qt::Key key : {Qt::Key_Return, Qt::Key_Enter, Qt::Key_Return, Qt::Key_Escape,
                                  Qt::Key_Backspace, Qt::Key_Delete, Qt::Key_F1, Qt::Key_F5, Qt::Key_Menu})
            QTest::keyClick(&exam.plate(), key);
        for (QShortcut* shortcut : exam.page.findChildren<QShortcut*>())
            Q_EMIT shortcut->activated();
        // What the student has built by hand is the student's own.
        EXPECT_EQ(feedbackIn(exam.page, byHand), QStringList()) << byHand;
        EXPECT_EQ(exam.plate().spokenItems(), spoken);
        EXPECT_EQ(exam.state().mark, mark);
        EXPECT_EQ(exam.state().request->number, 0);
        EXPECT_EQ(exam.plate().size(), whole);
        EXPECT_DOUBLE_EQ(exam.plate().pixelsPerCm(), scale) << "no close-up";
    }
}

TEST(PracticePageExamTest, NoControlShowsAnything)
{
    for (const HelpLevel help : {HelpLevel::Nothing, HelpLevel::DrawnAndNamed}) {
        ExamPage exam({Site::Ventrogluteal, Site::Deltoid}, help);
        ASSERT_TRUE(exam.isReady);
        const bool named = help == HelpLevel::DrawnAndNamed;
        const auto shapes = exam.plate().spokenItems().size();
        exam.presenter.placeMark({0.0, 6.0});
        exam.presenter.grade();
        for (QAbstractButton* button : exam.page.findChildren<QAbstractButton*>()) {
            if (!button->isVisible() || !button->isEnabled())
                continue;
            button->click();
            EXPECT_EQ(feedbackIn(exam.page, named), QStringList()) << button->objectName().toStdString();
        }
        ASSERT_TRUE(exam.state().companionShown);
        ASSERT_TRUE(QTest::qWaitFor([&] { return exam.state().companion != nullptr; }));
        EXPECT_EQ(feedbackIn(exam.page, named), QStringList());
        EXPECT_FALSE(exam.find<QLabel>("whyNot")->isVisible()) << "where not to look would tell as well";
        // The crosshair has gone, the mark has come: nothing else is new.
        EXPECT_LE(exam.plate().spokenItems().size(), shapes + 1);
    }
}

TEST(PracticePageExamTest, LayersAreOfferedOnlyWhereTheHelpGrantsThem)
{
    ExamPage nothing({Site::Deltoid}, HelpLevel::Nothing);
    EXPECT_FALSE(nothing.find<QToolButton>("peelBone")->isVisible());
    ExamPage drawn({Site::Deltoid}, HelpLevel::DrawnAndNamed);
    EXPECT_TRUE(drawn.find<QToolButton>("peelBone")->isVisible());
    drawn.presenter.placeMark(kPlace);
    drawn.presenter.grade();
    EXPECT_FALSE(drawn.find<QToolButton>("peelBone")->isEnabled());
}

TEST(PracticePageExamTest, NeitherLanguageNorTextSizeShowsAnything)
{
    ExamPage exam({Site::Deltoid, Site::Deltoid});
    ASSERT_TRUE(exam.isReady);
    exam.presenter.placeMark(kPlace);
    exam.presenter.grade();
    PseudoTranslator translator;
    QApplication::installTranslator(&translator);
    QCoreApplication::sendPostedEvents();
    EXPECT_EQ(feedbackIn(exam.page), QStringList());
    QApplication::removeTranslator(&translator);
    applyStyle(*qApp, schemeOf(PaletteKind::Dark), 1.5);
    exam.page.setScheme(schemeOf(PaletteKind::Dark));
    EXPECT_EQ(feedbackIn(exam.page), QStringList());
    applyStyle(*qApp, schemeOf(PaletteKind::Light), 1.0);
    EXPECT_EQ(exam.state().keeping, Keeping::Saving);
    exam.page.askNewRun();
    EXPECT_EQ(exam.page.findChildren<QDialog*>().size(), 0) << "no run is opened from here";
}

TEST(PracticePageExamTest, TheNextItemHasTheKeysAtOnce)
{
    ExamPage exam({Site::Deltoid, Site::Deltoid});
    ASSERT_TRUE(exam.isReady);
    exam.presenter.placeMark(kPlace);
    exam.find("grade")->setFocus();
    QTest::keyClick(exam.find("grade"), Qt::Key_Return);
    exam.examine(1);
    EXPECT_EQ(QApplication::focusWidget(), &exam.plate());
    EXPECT_FALSE(exam.find("grade")->isEnabled());
    QWidget other(&exam.page);
    other.setFocusPolicy(Qt::StrongFocus);
    other.setFocus();
    exam.page.takeKeys();
    EXPECT_EQ(QApplication::focusWidget(), &exam.plate());
}

TEST(PracticePageExamTest, ByHandEverythingIsShutWhenTimeIsUp)
{
    ExamPage exam({Site::Ventrogluteal}, HelpLevel::Nothing, true);
    ASSERT_TRUE(exam.isReady);
    EXPECT_FALSE(exam.find<QToolButton>("watchOnce")->isVisible());
    EXPECT_TRUE(exam.find("goOn")->isVisible());
    exam.presenter.setKeeping(Keeping::Saving);
    EXPECT_FALSE(exam.find("goOn")->isVisible());
    EXPECT_FALSE(exam.find<QToolButton>("stageBuild")->isEnabled());
    EXPECT_FALSE(exam.find("plantFlag")->isEnabled());
    EXPECT_EQ(feedbackIn(exam.page), QStringList());
}

}  // namespace

}  // namespace practice_page_exam_test
