#include "app/shell/main_window.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QPushButton>
#include <QRegularExpression>
#include <QTemporaryDir>

#include "app/practice/practice_page.h"
#include "app/words/site_words.h"
#include "tests/support/layout_audit.h"
#include "tests/support/open_window.h"
#include "tests/support/pseudo_translator.h"
#include "tests/support/window_walk.h"

namespace fb::test::main_window_tests {

namespace main_window_test {

struct Screen {
    const char* name;
    QSize size;
    int textPercent;
    bool pseudo;
    bool rightToLeft;
};

std::ostream& operator<<(std::ostream& out, const Screen& screen) { return out << screen.name; }

class EveryScreen : public ::testing::TestWithParam<Screen> {};

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
        throughEveryState(open, [&](const char* where) {
            settle();
            const QStringList faults = layoutFaults(open.window()) + namelessControls(open.window());
            EXPECT_TRUE(faults.isEmpty()) << where << ":\n" << faults.join('\n').toStdString();
            EXPECT_EQ(open.window().size(), screen.size) << where << ": the window had to grow";
        });
    }
    QApplication::removeTranslator(&pseudo);
    QApplication::setLayoutDirection(Qt::LeftToRight);
}

TEST_P(EveryScreen, EverySiteAndItsChartsHaveRoomAndTheDialogToo)
{
    const main_window_test::Screen& screen = GetParam();
    PseudoTranslator pseudo;
    if (screen.rightToLeft)
        QApplication::setLayoutDirection(Qt::RightToLeft);
    {
        Preferences preferences = plainPreferences();
        preferences.textPercent = screen.textPercent;
        preferences.runLength = 4;
        preferences.mix = {{{false, true, true}}, true};
        OpenWindow open(preferences, screen.size);
        ASSERT_TRUE(open.isReady);
        if (screen.pseudo)
            QApplication::installTranslator(&pseudo);
        const auto look = [&](const QWidget& seen, const char* where) {
            settle();
            const QStringList faults = layoutFaults(seen) + namelessControls(seen);
            EXPECT_TRUE(faults.isEmpty()) << where << ":\n" << faults.join('\n').toStdString();
            EXPECT_EQ(open.window().size(), screen.size) << where << ": the window had to grow";
        };
        QTest::mouseClick(open.find("newRun"), Qt::LeftButton);
        ASSERT_NE(open.find("runDialog"), nullptr);
        look(*open.find("runDialog"), "new run");
        EXPECT_LE(open.find("runDialog")->width(), screen.size.width());
        EXPECT_LE(open.find("runDialog")->height(), screen.size.height());
        QTest::keyClick(open.find("runDialog"), Qt::Key_Escape);
        throughARun(open, [&](const char* where) { look(open.window(), where); });
        EXPECT_EQ(open.state().bySite.size(), 2U) << "both sites were asked";
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
    throughEveryState(open, [&](const char* where) {
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
    throughEveryState(open, [&](const char* where) {
        settle();
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
    OpenWindow open;
    ASSERT_TRUE(open.isReady);
    const int before = open.find<QLabel>("hint")->fontMetrics().height();
    const int column = open.find("columnScroll")->width();
    choose(open, "viewMenu", "text150");
    EXPECT_EQ(open.settings.stored.textPercent, 150);
    EXPECT_TRUE(QTest::qWaitFor([&] { return open.find<QLabel>("hint")->fontMetrics().height() > before; }));
    EXPECT_TRUE(QTest::qWaitFor([&] { return open.find("columnScroll")->width() > column; }));
    settle();
    const QStringList faults = layoutFaults(open.window());
    EXPECT_TRUE(faults.isEmpty()) << faults.join('\n').toStdString();
    choose(open, "viewMenu", "lookDark");
    EXPECT_EQ(open.settings.stored.palette, PaletteKind::Dark);
    EXPECT_EQ(open.window().palette().color(QPalette::Window), schemeOf(PaletteKind::Dark).window);
}

TEST(MainWindowTest, APolicyFileIsChosenThroughTheDialog)
{
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
    ASSERT_TRUE(QTest::qWaitFor([&] { return open.state().policyFile == file.fileName(); }));
    EXPECT_EQ(open.state().convention, Convention::DeltoidHalfway);
    EXPECT_EQ(open.settings.stored.policyFile, file.fileName());
    EXPECT_EQ(open.settings.stored.own, OwnChoices{});
    choose(open, "policyMenu", "shippedPolicy");
    EXPECT_EQ(open.state().convention, Convention::DeltoidStrip);
    EXPECT_TRUE(open.settings.stored.policyFile.isEmpty());
}

TEST(MainWindowTest, APolicyChosenDuringARunAsksBeforeItStartsTheRunAnew)
{
    const QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("ward.json")));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(R"({"conventions": {"deltoid": "deltoid.halfway"}})");
    file.close();
    OpenWindow open;
    ASSERT_TRUE(open.isReady);
    open.dialogs.answer = file.fileName();
    open.practice().placeMark({0.0, -4.0});
    const auto askedAgain = [&] {
        choose(open, "policyMenu", "choosePolicy");
        return QTest::qWaitFor([&] { return open.find("restartDialog") != nullptr; });
    };
    ASSERT_TRUE(askedAgain());
    EXPECT_TRUE(open.find<QLabel>("restartQuestion")->text().contains(QLatin1String("ward.json")));
    const QStringList faults =
        namelessControls(*open.find("restartDialog")) + layoutFaults(*open.find("restartDialog"));
    EXPECT_TRUE(faults.isEmpty()) << faults.join('\n').toStdString();
    QTest::keyClick(open.find("restartDialog"), Qt::Key_Return);
    EXPECT_TRUE(open.state().mark.has_value()) << "a hasty Return loses nothing";
    EXPECT_EQ(open.state().convention, Convention::DeltoidStrip);
    ASSERT_TRUE(QTest::qWaitFor([&] { return open.find("restartDialog") == nullptr; }));
    ASSERT_TRUE(askedAgain());
    QTest::mouseClick(open.find("restartRun"), Qt::LeftButton);
    EXPECT_FALSE(open.state().mark.has_value());
    EXPECT_EQ(open.state().convention, Convention::DeltoidHalfway);
    EXPECT_EQ(open.settings.stored.policyFile, file.fileName());
}

TEST(MainWindowTest, ANewRunIsAskedForByKey)
{
    OpenWindow open;
    ASSERT_TRUE(open.isReady);
    QTest::keyClick(&open.window(), Qt::Key_N, Qt::ControlModifier);
    EXPECT_TRUE(
        QTest::qWaitFor([&] { return open.find("runDialog") && open.find("runDialog")->isVisible(); }));
}

TEST(MainWindowTest, TheMenuOfTheViewNamesItsGroups)
{
    OpenWindow open;
    ASSERT_TRUE(open.isReady);
    QTest::mouseClick(open.find("viewMenu"), Qt::LeftButton);
    auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
    ASSERT_NE(menu, nullptr);
    EXPECT_FALSE(menu->actions().front()->isSeparator()) << "nothing stands above it to part it from";
    QStringList headings;
    for (const QLabel* each : menu->findChildren<QLabel*>(QStringLiteral("menuHeading"))) {
        EXPECT_TRUE(each->isVisible());
        EXPECT_GE(each->width(), each->sizeHint().width()) << each->text().toStdString();
        headings << each->text();
    }
    EXPECT_EQ(headings.join(u'|').toStdString(), "Appearance|Text size|Language");
    menu->close();
}

}  // namespace fb::test::main_window_tests
