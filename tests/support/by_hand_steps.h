// Steps of a request that is found by hand, by real mouse and keys through the window.
#pragma once

#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QTest>
#include <algorithm>
#include <cmath>

#include "app/canvas/plate_view.h"
#include "app/words/landmark_words.h"
#include "tests/support/page_steps.h"

namespace fb::test {

[[nodiscard]] inline Preferences byHandPreferences(Convention convention, int length = 2)
{
    Preferences preferences = plainPreferences();
    preferences.byHand = true;
    preferences.runLength = length;
    preferences.mix = {SiteSet::only(siteOf(convention)), false};
    preferences.own.choose(convention);
    return preferences;
}

// A run by hand of one convention, its first request open.
struct ByHandWindow : OpenWindow {
    explicit ByHandWindow(Convention convention, QSize size = {1280, 800}, std::uint64_t seed = 7)
        : OpenWindow(byHandPreferences(convention), size, seed)
    {
    }
    [[nodiscard]] PlateView& plate() { return *find<PlateView>("plate"); }
    [[nodiscard]] const ByHandState& now() { return *state().byHand; }
    [[nodiscard]] QPoint onScreen(Point cm) { return plate().toWidget({cm.x, cm.y}).toPoint(); }
    [[nodiscard]] Point placeOfLandmark(Landmark landmark)
    {
        const auto place = placeOf(*state().target, landmark).value();
        return place.points[place.points.size() / 2];
    }
    [[nodiscard]] Build flawless() { return flawlessBuild(*state().target, now().builder); }
    [[nodiscard]] Point flawlessAt(Handle handle)
    {
        return handleAt(flawless(), *state().target, now().builder, handle).value();
    }
    [[nodiscard]] std::optional<QPointF> at(Handle handle)
    {
        const auto found = std::ranges::find(now().handles, handle, &BuildHandle::handle);
        return found->cm;
    }
};

inline void pressOn(ByHandWindow& open, Point cm)
{
    QTest::mousePress(&open.plate(), Qt::LeftButton, {}, open.onScreen(cm));
    QTest::mouseRelease(&open.plate(), Qt::LeftButton, {}, open.onScreen(cm));
}

// Presses there, types the name, clicks "Plant flag".
inline void plantByMouse(ByHandWindow& open, const QString& name, Point cm)
{
    pressOn(open, cm);
    auto* field = open.find<QComboBox>("flagName")->lineEdit();
    field->selectAll();
    QTest::keyClicks(field, name);
    click(open, "plantFlag");
}

inline void plantAllByMouse(ByHandWindow& open)
{
    for (const Landmark landmark : askedLandmarks(open.state().convention))
        plantByMouse(open, landmarkName(landmark), open.placeOfLandmark(landmark));
}

inline void dragByMouse(ByHandWindow& open, QPointF from, Point to)
{
    PlateView* plate = &open.plate();
    const QPoint start = plate->toWidget(from).toPoint();
    const QPoint end = open.onScreen(to);
    // A way round, so that even a handle that lies where it belongs is moved.
    const QPoint round = end + QPoint(25, 18);
    QTest::mousePress(plate, Qt::LeftButton, {}, start);
    QTest::mouseMove(plate, round);
    QTest::mouseMove(plate, end);
    QTest::mouseRelease(plate, Qt::LeftButton, {}, end);
}

// A click where nothing is set yet, a drag of what lies there already.
inline void setByMouse(ByHandWindow& open, Handle handle, Point to)
{
    if (const auto lies = open.at(handle))
        dragByMouse(open, *lies, to);
    else
        QTest::mouseClick(&open.plate(), Qt::LeftButton, {}, open.onScreen(to));
}

inline void chooseByMouse(ByHandWindow& open)
{
    const Build flawless = open.flawless();
    if (flawless.hand)
        click(open, flawless.hand->hand == Side::Left ? "chooseFirst" : "chooseSecond");
    if (flawless.fingers)
        click(open, flawless.fingers->count == 2 ? "chooseFirst" : "chooseSecond");
}

inline void buildByMouse(ByHandWindow& open)
{
    chooseByMouse(open);
    for (const Handle handle : handlesOf(buildKindOf(open.state().convention)))
        setByMouse(open, handle, open.flawlessAt(handle));
    // The field of the thigh in which the site lies.
    if (open.flawless().cell)
        QTest::mouseClick(&open.plate(), Qt::LeftButton, {}, open.onScreen(open.state().target->ideal));
}

inline void markByMouse(ByHandWindow& open, Point at)
{
    QTest::mouseClick(&open.plate(), Qt::LeftButton, {}, open.onScreen(at));
    click(open, "grade");
}

inline void wholeByMouse(ByHandWindow& open)
{
    plantAllByMouse(open);
    click(open, "goOn");
    buildByMouse(open);
    click(open, "goOn");
    markByMouse(open, open.state().target->ideal);
}

// The arrow keys until what `where` tells lies there, to a millimetre.
template <class Where>
void arrowsTo(ByHandWindow& open, Point to, const Where& where)
{
    constexpr double kCoarse = 0.5;
    constexpr double kClose = 0.06;
    constexpr int kMost = 400;
    const auto step = [&](double off, Qt::Key more, Qt::Key less) {
        if (std::abs(off) < kClose)
            return false;
        const auto held = std::abs(off) >= kCoarse ? Qt::NoModifier : Qt::ShiftModifier;
        QTest::keyClick(&open.plate(), off > 0.0 ? more : less, held);
        return true;
    };
    for (int i = 0; i < kMost; ++i) {
        const QPointF at = where();
        const bool across = step(to.x - at.x(), Qt::Key_Right, Qt::Key_Left);
        const bool along = step(to.y - at.y(), Qt::Key_Up, Qt::Key_Down);
        if (!across && !along)
            return;
    }
    ADD_FAILURE() << "not reached: " << to.x << " " << to.y;
}

inline void crosshairTo(ByHandWindow& open, Point to)
{
    arrowsTo(open, to, [&] { return open.plate().crosshair(); });
}

}  // namespace fb::test
