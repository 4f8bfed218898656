// Spanish is switched on and off while the window is open: every word changes and nothing
// else does.
#include <gtest/gtest.h>

#include <QLineEdit>
#include <QLocale>
#include <QRegularExpression>
#include <QSet>

#include "app/shell/about_dialog.h"
#include "tests/support/said.h"
#include "tests/support/window_walk.h"

namespace fb::test::live_switch_tests {

namespace live_switch_test {

// Words that are the same in both languages.
bool isSameInBoth(const QString& text)
{
    static const QSet<QString> kSame{QStringLiteral("Fingerbreadth")};
    return kSame.contains(text);
}

// A little word that only English has: a text that holds one was not translated whole.
bool isEnglish(const QString& text)
{
    static const QRegularExpression kLittle(
        QStringLiteral(
            "\\b(the|and|with|your|below|above|from|at|is|not|by|on|in|to|left|right|arm|cm of)\\b"),
        QRegularExpression::CaseInsensitiveOption);
    return text.contains(kLittle);
}

// Titles of books and papers keep their own language.
bool isCitation(const SaidKey& key)
{
    return key.what.contains(QLatin1String("whySource")) || key.what.contains(QLatin1String("aboutSources"));
}

void expectSpanish(const Said& english, const Said& spanish, const char* where)
{
    EXPECT_EQ(english.keys().size(), spanish.keys().size()) << where;
    for (auto it = english.begin(); it != english.end(); ++it) {
        const QString now = spanish.value(it.key());
        const std::string told =
            where + std::string(", ") + it.key().what.toStdString() + ": " + now.toStdString();
        EXPECT_FALSE(now.isEmpty()) << told;
        if (hasWords(it.value()) && !isSameInBoth(it.value())) {
            EXPECT_NE(now, it.value()) << told;
        }
        EXPECT_TRUE(isCitation(it.key()) || !isEnglish(now)) << told;
    }
}

void expectEqual(const Said& before, const Said& after, const char* where)
{
    for (auto it = before.begin(); it != before.end(); ++it)
        EXPECT_EQ(after.value(it.key()), it.value()) << where << ", " << it.key().what.toStdString();
}

// What the learner has done, and what a switch of language must leave alone.
struct Kept {
    explicit Kept(const PracticeState& state)
        : phase(state.phase),
          request(state.request ? state.request->number : -1),
          mark(state.mark),
          verdict(state.graded ? std::optional(state.graded->grade.verdict) : std::nullopt),
          picture(state.picture.get()),
          companionShown(state.companionShown)
    {
    }
    friend bool operator==(const Kept&, const Kept&) = default;

    Phase phase;
    int request;
    std::optional<QPointF> mark;
    std::optional<Verdict> verdict;
    const Picture* picture;
    bool companionShown;
};

Preferences english(bool asksSide)
{
    Preferences preferences = plainPreferences();
    preferences.language = QStringLiteral("en");
    preferences.asksSide = asksSide;
    return preferences;
}

class LiveSwitchTest : public ::testing::Test {
protected:
    ~LiveSwitchTest() override { QLocale::setDefault(m_before); }

    // Settled: pictures that are made by a worker are there.
    static void rest(OpenWindow& open)
    {
        settle();
        EXPECT_TRUE(QTest::qWaitFor([&] {
            const PracticeState& state = open.state();
            return state.phase == Phase::Summary
                       ? state.runPicture != nullptr
                       : state.picture && (!state.companionShown || state.companion);
        }));
        settle();
    }

    static void switchThereAndBack(OpenWindow& open, const char* where)
    {
        rest(open);
        const Said before = saidBy(open.window());
        const Kept kept(open.state());
        choose(open, "viewMenu", "language.es");
        rest(open);
        EXPECT_EQ(open.settings.stored.language, QStringLiteral("es")) << where;
        expectSpanish(before, saidBy(open.window()), where);
        EXPECT_EQ(Kept(open.state()), kept) << where;
        choose(open, "viewMenu", "language.en");
        rest(open);
        expectEqual(before, saidBy(open.window()), where);
        EXPECT_EQ(Kept(open.state()), kept) << where;
    }

private:
    const QLocale m_before;
};

}  // namespace live_switch_test

using namespace live_switch_test;

TEST_F(LiveSwitchTest, EveryWordChangesInEveryStateAndBack)
{
    OpenWindow open(english(true));
    ASSERT_TRUE(open.isReady);
    throughEveryState(open, [&](const char* where) { switchThereAndBack(open, where); });
}

TEST_F(LiveSwitchTest, EveryWordOfEverySiteChangesAndBack)
{
    for (const Site site : kSites) {
        SCOPED_TRACE(wordOf(site));
        Preferences preferences = english(false);
        preferences.mix = {SiteSet::only(site), true};
        OpenWindow open(preferences);
        ASSERT_TRUE(open.isReady);
        throughARun(open, [&](const char* where) { switchThereAndBack(open, where); });
        EXPECT_EQ(open.state().phase, Phase::Summary);
    }
}

TEST_F(LiveSwitchTest, AnOpenDialogChangesToo)
{
    OpenWindow open(english(false));
    ASSERT_TRUE(open.isReady);
    AboutDialog about(open.state().policy.get(), nullptr);
    about.show();
    QTest::mouseClick(open.find("newRun"), Qt::LeftButton);
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return open.find("runDialog") && open.find("runDialog")->isVisible(); }));
    QWidget* run = open.find("runDialog");
    open.find<QLineEdit>("runLength")->setText(QStringLiteral("0"));
    QTest::mouseClick(open.find("startRun"), Qt::LeftButton);
    settle();
    const Said aboutBefore = saidBy(about);
    const Said runBefore = saidBy(*run);
    ASSERT_TRUE(open.find("runNotice")->isVisible()) << "the fault is part of what is said";
    {
        Language other;
        other.use(QStringLiteral("es"));
        settle();
        expectSpanish(aboutBefore, saidBy(about), "about");
        expectSpanish(runBefore, saidBy(*run), "new run");
        EXPECT_EQ(open.find<QLineEdit>("runLength")->text(), QStringLiteral("0")) << "what was typed stays";
    }
    QLocale::setDefault(QLocale(QStringLiteral("en")));
    settle();
    expectEqual(aboutBefore, saidBy(about), "about");
    expectEqual(runBefore, saidBy(*run), "new run");
}

TEST_F(LiveSwitchTest, TheMenusSpeakSpanishAndNoMnemonicIsThereTwice)
{
    Preferences preferences = english(false);
    preferences.language = QStringLiteral("es");
    OpenWindow open(preferences);
    ASSERT_TRUE(open.isReady);
    for (const char* button : {"viewMenu", "policyMenu", "helpMenu"}) {
        QTest::mouseClick(open.find(button), Qt::LeftButton);
        auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
        ASSERT_NE(menu, nullptr) << button;
        QSet<QString> mnemonics;
        for (const QAction* action : menu->actions()) {
            EXPECT_FALSE(isEnglish(action->text())) << action->text().toStdString();
            const QString keys = QKeySequence::mnemonic(action->text()).toString();
            EXPECT_TRUE(keys.isEmpty() || !mnemonics.contains(keys)) << button << ": " << keys.toStdString();
            mnemonics << keys;
        }
        menu->close();
        settle();
    }
}

TEST_F(LiveSwitchTest, AWindowOpenedInSpanishSaysWhatASwitchedOneSays)
{
    Preferences preferences = english(false);
    preferences.language = QStringLiteral("es");
    OpenWindow open(preferences);
    ASSERT_TRUE(open.isReady);
    rest(open);
    const Said opened = saidBy(open.window());
    choose(open, "viewMenu", "language.en");
    rest(open);
    choose(open, "viewMenu", "language.es");
    rest(open);
    expectEqual(opened, saidBy(open.window()), "opened in Spanish");
}

}  // namespace fb::test::live_switch_tests
