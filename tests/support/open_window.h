// The real window with doors of a test's own, opened and settled.
#pragma once

#include <QTest>

#include "app/shell/main_window.h"
#include "app/shell/services.h"
#include "tests/support/fakes.h"
#include "tests/support/memory_records.h"

namespace fb::test {

// 100 percent text, two requests of the deltoid, landmarks drawn, no side question, no charts.
[[nodiscard]] inline Preferences plainPreferences()
{
    Preferences preferences;
    preferences.textPercent = 100;
    preferences.runLength = 2;
    preferences.asksSide = false;
    preferences.mix = {};
    return preferences;
}

class OpenWindow {
public:
    explicit OpenWindow(const Preferences& preferences = plainPreferences(), QSize size = {1280, 800},
                        std::uint64_t seed = 7, const Remembered& remembered = {})
        : seeds(seed),
          services({stored(preferences), dialogs, seeds, records.clock, stored(remembered), records, screens})
    {
        window().resize(size);
        window().show();
        isReady = QTest::qWaitForWindowActive(&window()) &&
                  QTest::qWaitFor([this] { return state().picture != nullptr; }, kLongest);
    }

    [[nodiscard]] MainWindow& window() { return services.window(); }
    [[nodiscard]] PracticePresenter& practice() { return services.practice(); }
    [[nodiscard]] const PracticeState& state() { return practice().state(); }

    // By object name; a missing one is null and fails the test that asked.
    template <class Widget = QWidget>
    [[nodiscard]] Widget* find(const char* name)
    {
        return window().findChild<Widget*>(QLatin1String(name));
    }

    MemorySettings settings;
    MemoryProfiles profiles;
    AnsweringDialogs dialogs;
    CountingSeeds seeds;
    MemoryRecords records;
    SystemScreens screens;
    Services services;
    bool isReady = false;  // the first picture is there

private:
    static constexpr int kLongest = 20000;  // ms; a Debug build reads a plate slowly

    Settings& stored(const Preferences& preferences)
    {
        settings.stored = preferences;
        return settings;
    }
    ProfileKeeper& stored(const Remembered& remembered)
    {
        profiles.stored = remembered;
        return profiles;
    }
};

}  // namespace fb::test
