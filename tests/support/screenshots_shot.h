// One window in one look for a picture of the README.
#pragma once

#include <QDir>
#include <QTest>
#include <QTextStream>
#include <functional>

#include "app/shell/main_window.h"
#include "app/shell/services.h"
#include "tests/support/fakes.h"
#include "tests/support/memory_records.h"

namespace fb::screenshots {

inline constexpr std::uint64_t kSeed = 48213;
inline constexpr QSize kDesk{1280, 800};

// One window in one look, walked to one place, and its picture.
class Shot {
public:
    Shot(const QString& folder, const Preferences& preferences, QSize size = kDesk)
        : m_folder(folder),
          m_seeds(kSeed),
          m_services({stored(preferences), m_dialogs, m_seeds, m_records.clock, m_profiles, m_records, m_screens})
    {
        m_services.window().resize(size);
        m_services.window().show();
        settle([this] { return practice().state().ready; });
    }

    [[nodiscard]] PracticePresenter& practice() { return m_services.practice(); }

    [[nodiscard]] Services& services() { return m_services; }
    [[nodiscard]] test::MemoryRecords& records() { return m_records; }

    template <class Widget>
    [[nodiscard]] Widget* find(const char* name)
    {
        return m_services.window().findChild<Widget*>(QLatin1String(name));
    }

    void gradeAt(QPointF offIdeal)
    {
        const Point ideal = practice().state().target->ideal;
        practice().placeMark(QPointF(ideal.x, ideal.y) + offIdeal);
        practice().grade();
    }

    void wait()
    {
        settle([this] { return allSharp(); });
    }

    void save(const char* name)
    {
        wait();
        save(name, m_services.window());
    }

    void save(const char* name, QWidget& widget)
    {
        settle([] { return true; });
        const QString file = QDir(m_folder).filePath(QLatin1String(name) + QStringLiteral(".png"));
        QTextStream(stdout) << (widget.grab().save(file) ? "written " : "NOT written ") << file << Qt::endl;
    }

private:
    Settings& stored(const Preferences& preferences)
    {
        m_settings.stored = preferences;
        return m_settings;
    }

    bool allSharp()
    {
        for (const PlateView* plate : m_services.window().findChildren<PlateView*>()) {
            if (plate->isVisible() && !plate->isSharp())
                return false;
        }
        const PracticeState& state = practice().state();
        return (state.summary ? state.runPicture : state.picture) != nullptr;
    }

    static void settle(const std::function<bool()>& done)
    {
        constexpr int kLongest = 20000;
        constexpr int kRest = 60;
        if (!QTest::qWaitFor(done, kLongest))
            QTextStream(stderr) << "a picture was not ready in time" << Qt::endl;
        QTest::qWait(kRest);
    }

    QString m_folder;
    test::MemorySettings m_settings;
    test::AnsweringDialogs m_dialogs;
    test::CountingSeeds m_seeds;
    test::MemoryProfiles m_profiles;
    test::MemoryRecords m_records;
    SystemScreens m_screens;
    Services m_services;
};

inline Preferences plain()
{
    Preferences preferences;
    preferences.textPercent = 100;
    preferences.asksSide = false;
    preferences.runLength = 10;
    preferences.mix = {};
    return preferences;
}

}  // namespace fb::screenshots
