// A desk with invented students and a short sheet, kept in memory, and the steps of a check-off on it.
#pragma once

#include <QTest>

#include "app/checkoff/check_off_presenter.h"
#include "tests/support/fakes.h"
#include "tests/support/memory_records.h"

namespace fb::test {

// Every plate read, so that nothing has to be waited for.
[[nodiscard]] inline std::shared_ptr<const Library> wholeLibrary()
{
    static const std::shared_ptr<const Library> library = Library::load().value();
    for (const View view : {View::ShoulderSide, View::ThighFront, View::ThighSide, View::HipSide})
        (void)library->atlas(view).value();
    return library;
}

// Two deltoids and a hip, two steps, a minute for each item.
[[nodiscard]] inline Sheet shortSheet()
{
    Sheet sheet;
    sheet.title = "Invented sheet";
    sheet.items = {{Site::Deltoid, Side::Left, View::ShoulderSide},
                   {Site::Deltoid, Side::Right, View::ShoulderSide, HelpLevel::DrawnAndNamed},
                   {Site::Ventrogluteal, Side::Left, View::HipSide}};
    sheet.secondsPerItem = 60;
    sheet.secondsOnManikin = 300;
    sheet.steps = {{ProcedureStep::Identify, true}, {ProcedureStep::Document, false}};
    return sheet;
}

struct CheckOffRun {
    static constexpr const char* kPin = "482913";

    CheckOffRun() : CheckOffRun(shortSheet()) {}
    explicit CheckOffRun(const Sheet& sheet)
    {
        records.students = {{"S-1", "Abara", "Nkechi", "Section A", 0, {}, true},
                            {"S-2", "Birch", "Tom", "Section A", 50, {}, true},
                            {"S-3", "Castellanos", "Ana", "Section B", 0, {}, true},
                            {"S-4", "Dubois", "Léa", "Section B", 0, {}, true}};
        records.sheets = {{QStringLiteral("sheet"), sheet}};
        records.current = QStringLiteral("sheet");
        records.people = {{{1, QStringLiteral("Vera Holm")}, QLatin1String(kPin)},
                          {{2, QStringLiteral("Tom Aske")}, QLatin1String(kPin)}};
        open(*presenter);
    }

    void open(CheckOffPresenter& which)
    {
        which.useLibrary(wholeLibrary(), wholeLibrary()->defaultPolicy(), QStringLiteral("{}"));
        which.openDesk();
    }
    // As after a crash: a new program on what was kept.
    void restart()
    {
        presenter = std::make_unique<CheckOffPresenter>(records, records.clock, seeds);
        open(*presenter);
    }

    [[nodiscard]] const CheckOffState& state() const { return presenter->state(); }
    [[nodiscard]] PracticePresenter& items() { return presenter->items(); }
    [[nodiscard]] const std::vector<CheckOffEvent>& events() const { return records.kept.at(1).open.events; }

    void toItems()
    {
        presenter->begin(QStringLiteral("S-1"));
        presenter->confirmIdentity();
        presenter->startItems();
    }
    void mark(QPointF off = {})
    {
        const Point ideal = items().state().target->ideal;
        items().placeMark(QPointF(ideal.x, ideal.y) + off);
    }
    void confirm(QPointF off = {})
    {
        mark(off);
        items().grade();
    }
    void toHandover()
    {
        toItems();
        while (state().stage == CheckOffStage::OnScreen)
            confirm();
    }
    void toClosing()
    {
        toHandover();
        presenter->takeOver();
        for (const SheetStep& step : state().open->sheet.sheet.steps) {
            records.clock.now += Ms{1000};
            presenter->observe(step.step, Seen::Done);
        }
        presenter->finish();
    }
    void sign()
    {
        presenter->rate(4, QStringLiteral("calm and careful"));
        presenter->sign(1, QLatin1String(kPin), 0, {});
    }
    // So long, looked at by the presenter's own timer, which is hurried on.
    [[nodiscard]] bool wait(Ms time)
    {
        presenter->findChild<QTimer*>()->setInterval(1);
        constexpr Ms kLook{1900};
        for (Ms left = time; left > Ms{0}; left -= kLook) {
            records.clock.now += std::min(left, kLook);
            bool ticked = false;
            const auto heard =
                QObject::connect(presenter.get(), &CheckOffPresenter::ticked, [&ticked] { ticked = true; });
            const bool came = QTest::qWaitFor([&] { return ticked; });
            QObject::disconnect(heard);
            if (!came)
                return false;
        }
        return true;
    }

    MemoryRecords records;
    CountingSeeds seeds;
    std::unique_ptr<CheckOffPresenter> presenter =
        std::make_unique<CheckOffPresenter>(records, records.clock, seeds);
};

}  // namespace fb::test
