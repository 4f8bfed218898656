#include "app/shell/main_window.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QRegularExpression>
#include <QTemporaryDir>

#include "app/practice/practice_page.h"
#include "app/words/site_words.h"
#include "tests/support/layout_audit.h"
#include "tests/support/open_window.h"
#include "tests/support/pseudo_translator.h"

namespace fb::test {

namespace main_window_test {

// Walks the window through every state a learner sees, with a look at each.
template <class Look>
void throughEveryState(OpenWindow& open, const Look& look)
{
    const auto side = open.state().request->patient.side();
    if (open.state().phase == Phase::PickingSide) {
        look("side question");
        open.practice().pickSide(side == Side::Left ? Side::Right : Side::Left);
        look("wrong side");
        open.practice().pickSide(side);
    }
    look("marking");
    open.practice().placeMark({90.0, 90.0});
    look("mark outside the body");
    const Point ideal = open.state().target->ideal;
    open.practice().placeMark({ideal.x, ideal.y + 2.6});
    look("marked");
    open.practice().grade();
    look("graded");
    open.find<QAbstractButton>("why")->setChecked(true);
    open.practice().setCompanionShown(true);
    look("why");
    open.practice().next();
    if (open.state().phase == Phase::PickingSide)
        open.practice().pickSide(open.state().request->patient.side());
    open.practice().placeMark({0.0, -4.0});
    open.practice().grade();
    open.practice().next();
    look("summary");
}

// Layouts ask for a new layout through the event loop, more than once when words wrap.
void settle()
{
    constexpr int kRounds = 5;
    for (int i = 0; i < kRounds; ++i) {
        QCoreApplication::sendPostedEvents();
        QCoreApplication::processEvents();
    }
}

struct Screen {
    const char* name;
    QSize size;
    int textPercent;
    bool pseudo;
    bool rightToLeft;
};

std::ostream& operator<<(std::ostream& out, const Screen& screen) { return out << screen.name; }

class EveryScreen : public ::testing::TestWithParam<Screen> {};

// Chooses an entry of a menu as a user does: opens it, then triggers the action.
void choose(OpenWindow& open, const char* button, const char* action)
{
    QTest::mouseClick(open.find(button), Qt::LeftButton);
    auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
    ASSERT_NE(menu, nullptr) << button;
    auto* entry = menu->findChild<QAction*>(QLatin1String(action));
    ASSERT_NE(entry, nullptr) << action;
    QTest::mouseClick(menu, Qt::LeftButton, {}, menu->actionGeometry(entry).center());
}

}  // namespace main_window_test

using main_window_test::EveryScreen;

TEST_P(EveryScreen, NothingIsCutOffCrossingOrNameless)
{
    const main_window_test::Screen& screen = GetParam();
    PseudoTranslator pseudo;
    if (screen.rightToLeft)
        QApplication::setLayoutDirection(Qt::RightToLeft);
    {
        Preferences preferences = plainPreferences();
        preferences.textPercent = screen.textPercent;
        preferences.asksSide = true;
        OpenWindow open(preferences, screen.size);
        ASSERT_TRUE(open.isReady);
        if (screen.pseudo)
            QApplication::installTranslator(&pseudo);
        main_window_test::throughEveryState(open, [&](const char* where) {
            main_window_test::settle();
            const QStringList faults = layoutFaults(open.window()) + namelessControls(open.window());
            EXPECT_TRUE(faults.isEmpty()) << where << ":\n" << faults.join('\n').toStdString();
            EXPECT_EQ(open.window().size(), screen.size) << where << ": the window had to grow";
        });
    }
    QApplication::removeTranslator(&pseudo);
    QApplication::setLayoutDirection(Qt::LeftToRight);
}

INSTANTIATE_TEST_SUITE_P(
    MainWindowTest, EveryScreen,
    ::testing::Values(main_window_test::Screen{"Desk1280", {1280, 800}, 100, false, false},
                      main_window_test::Screen{"Desk1920", {1920, 1080}, 100, false, false},
                      main_window_test::Screen{"Desk3840", {3840, 2160}, 100, false, false},
                      main_window_test::Screen{"Desk3840LargeText", {3840, 2160}, 200, false, false},
                      main_window_test::Screen{"LargeText1280", {1280, 800}, 150, false, false},
                      main_window_test::Screen{"LargeText1920", {1920, 1080}, 150, false, false},
                      main_window_test::Screen{"Wordy1280", {1280, 800}, 100, true, false},
                      main_window_test::Screen{"RightToLeft1280", {1280, 800}, 100, false, true},
                      main_window_test::Screen{"WordyRightToLeft1920", {1920, 1080}, 150, true, true}),
    [](const auto& each) { return std::string(each.param.name); });

TEST(MainWindowTest, TheCautionNeverLeavesTheScreen)
{
    OpenWindow open;
    ASSERT_TRUE(open.isReady);
    main_window_test::throughEveryState(open, [&](const char* where) {
        auto* caution = open.find<QLabel>("caution");
        EXPECT_TRUE(caution->isVisible()) << where;
        EXPECT_EQ(caution->text(), cautionSentence()) << where;
        EXPECT_TRUE(open.find("seed")->isVisible()) << where;
    });
}

TEST(MainWindowTest, EveryWordComesThroughTheTranslator)
{
    OpenWindow open;
    ASSERT_TRUE(open.isReady);
    PseudoTranslator pseudo;
    QApplication::installTranslator(&pseudo);
    main_window_test::throughEveryState(open, [&](const char* where) {
        main_window_test::settle();
        for (const QLabel* label : open.window().findChildren<QLabel*>()) {
            const bool hasLetters = label->text().contains(QRegularExpression(QStringLiteral("[a-z]{4,}")));
            const bool isData = label->objectName() == QLatin1String("whySource");
            if (!label->isVisible() || !hasLetters || isData)
                continue;
            EXPECT_TRUE(label->text().contains(QRegularExpression(QStringLiteral("[áëïôüçý]"))))
                << where << ": " << label->text().toStdString();
        }
    });
    QApplication::removeTranslator(&pseudo);
}

TEST(MainWindowTest, TheLanguageChangesWhileTheWindowIsOpen)
{
    OpenWindow open;
    ASSERT_TRUE(open.isReady);
    const QString english = open.find<QPushButton>("grade")->text();
    PseudoTranslator other;
    QApplication::installTranslator(&other);
    EXPECT_TRUE(QTest::qWaitFor([&] { return open.find<QPushButton>("grade")->text() == pseudo(english); }));
    QApplication::removeTranslator(&other);
    EXPECT_TRUE(QTest::qWaitFor([&] { return open.find<QPushButton>("grade")->text() == english; }));
}

TEST(MainWindowTest, LookAndTextSizeAreChosenFromTheMenuAndRemembered)
{
    using main_window_test::choose;
    OpenWindow open;
    ASSERT_TRUE(open.isReady);
    const int before = open.find<QLabel>("hint")->fontMetrics().height();
    const int column = open.find("columnScroll")->width();
    choose(open, "viewMenu", "text150");
    EXPECT_EQ(open.settings.stored.textPercent, 150);
    EXPECT_TRUE(QTest::qWaitFor([&] { return open.find<QLabel>("hint")->fontMetrics().height() > before; }));
    EXPECT_TRUE(QTest::qWaitFor([&] { return open.find("columnScroll")->width() > column; }));
    main_window_test::settle();
    const QStringList faults = layoutFaults(open.window());
    EXPECT_TRUE(faults.isEmpty()) << faults.join('\n').toStdString();
    choose(open, "viewMenu", "lookDark");
    EXPECT_EQ(open.settings.stored.palette, PaletteKind::Dark);
    EXPECT_EQ(open.window().palette().color(QPalette::Window), schemeOf(PaletteKind::Dark).window);
}

TEST(MainWindowTest, APolicyFileIsChosenThroughTheDialog)
{
    using main_window_test::choose;
    const QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("ward.json")));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(R"({"conventions": {"deltoid": "deltoid.halfway"}})");
    file.close();
    OpenWindow open;
    ASSERT_TRUE(open.isReady);
    choose(open, "policyMenu", "choosePolicy");
    EXPECT_EQ(open.dialogs.asked, 1);
    EXPECT_EQ(open.state().convention, Convention::DeltoidStrip) << "the user thought better of it";
    open.dialogs.answer = file.fileName();
    choose(open, "policyMenu", "choosePolicy");
    EXPECT_EQ(open.state().convention, Convention::DeltoidHalfway);
    EXPECT_EQ(open.settings.stored.policyFile, file.fileName());
    EXPECT_EQ(open.settings.stored.convention, std::nullopt);
    choose(open, "policyMenu", "shippedPolicy");
    EXPECT_EQ(open.state().convention, Convention::DeltoidStrip);
    EXPECT_TRUE(open.settings.stored.policyFile.isEmpty());
}

TEST(MainWindowTest, ANewRunIsAskedForByKey)
{
    OpenWindow open;
    ASSERT_TRUE(open.isReady);
    QTest::keyClick(&open.window(), Qt::Key_N, Qt::ControlModifier);
    EXPECT_TRUE(
        QTest::qWaitFor([&] { return open.find("runDialog") && open.find("runDialog")->isVisible(); }));
}

}  // namespace fb::test
