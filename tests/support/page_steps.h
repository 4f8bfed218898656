// Single steps on the page of practice, by real mouse and keys.
#pragma once

#include <gtest/gtest.h>

#include <QApplication>

#include "tests/support/open_window.h"
#include "tests/support/sample_run.h"

namespace fb::test {

// Two requests of the hip with charts; the first one's rules the site out, or does not.
struct WithCharts : OpenWindow {
    explicit WithCharts(bool ruledOut)
        : OpenWindow(preferencesOf(), {1280, 800}, setupWithFinding(Site::Ventrogluteal, ruledOut).seed)
    {
    }
    static Preferences preferencesOf()
    {
        Preferences preferences = plainPreferences();
        preferences.mix = {SiteSet::only(Site::Ventrogluteal), true};
        return preferences;
    }
};

[[nodiscard]] inline QPoint idealOnScreen(OpenWindow& open)
{
    const Point ideal = open.state().target->ideal;
    return open.find<PlateView>("plate")->toWidget({ideal.x, ideal.y}).toPoint();
}

inline void click(OpenWindow& open, const char* name)
{
    auto* widget = open.find(name);
    ASSERT_NE(widget, nullptr) << name;
    ASSERT_TRUE(widget->isVisible()) << name;
    QTest::mouseClick(widget, Qt::LeftButton);
}

// Tab until the widget of that name has the focus; false when it is never reached.
[[nodiscard]] inline bool tabTo(OpenWindow& open, const char* name)
{
    constexpr int kMost = 60;
    for (int i = 0; i < kMost; ++i) {
        const QWidget* focus = QApplication::focusWidget();
        if (focus && focus->objectName() == QLatin1String(name))
            return true;
        QTest::keyClick(QApplication::focusWidget() ? QApplication::focusWidget() : &open.window(),
                        Qt::Key_Tab);
    }
    return false;
}

}  // namespace fb::test
