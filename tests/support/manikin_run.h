// A presenter that has been brought to the manikin, or to the closing, of an invented student's check-off.
#pragma once

#include <memory>

#include "app/checkoff/check_off_presenter.h"
#include "tests/support/check_off_course.h"
#include "tests/support/fakes.h"
#include "tests/support/manikin_sample.h"
#include "tests/support/memory_records.h"

namespace fb::test {

struct ManikinRun {
    static constexpr const char* kPin = "482913";

    struct Plan {
        std::vector<SheetStep> steps = sampleSteps();
        bool second = false;                          // a second assessor is needed
        QStringList people{"Vera Holm", "Tom Aske"};  // assessors, each with kPin
        std::vector<Verdict> verdicts{Verdict::OnTarget, Verdict::Acceptable, Verdict::OnTarget};
    };

    ManikinRun() : ManikinRun(Plan()) {}
    explicit ManikinRun(const Plan& plan)
    {
        records.students = {{"S-1042", "Okonkwo-Lindqvist", "Marguerite", "Section B", 0, {}, true},
                            {"S-1043", "Pallas", "Ioan", "Section B", 0, {}, true}};
        Sheet sheet = plainSheet(static_cast<int>(plan.verdicts.size()));
        sheet.title = "Invented sheet";
        sheet.steps = plan.steps;
        sheet.secondsOnManikin = 600;
        records.sheets = {{QStringLiteral("sheet"), sheet}};
        records.current = QStringLiteral("sheet");
        for (const QString& name : plan.people)
            records.people.push_back(
                {{static_cast<qint64>(records.people.size()) + 1, name}, QLatin1String(kPin)});
        Course course(sheet);
        course.begin();
        for (const Verdict verdict : plan.verdicts)
            course.answer(verdict,
                          verdict == Verdict::OnTarget || verdict == Verdict::Acceptable ? 1.0 : 0.0);
        course.keep(course.off.takeOver(course.now));
        RunningCheckOff open;
        open.id = 1;
        open.student = records.students.front();
        open.sheet = records.sheets.front();
        open.order.student = open.student.id;
        open.order.sheet = QStringLiteral("sheet");
        open.order.seed = 5;
        open.order.policyText = QStringLiteral("{}");
        open.needsSecondAssessor = plan.second;
        open.events = course.kept;
        records.kept[1] = MemoryEntry{open, {}, {}, {}};
        const auto library = Library::load().value();
        presenter.useLibrary(library, library->defaultPolicy(), QStringLiteral("{}"));
        presenter.openDesk();
        presenter.goOn();
    }

    [[nodiscard]] const CheckOffState& state() const { return presenter.state(); }
    [[nodiscard]] const Observation* seen(ProcedureStep step) const
    {
        const auto at = std::ranges::find(state().observations, step, &Observation::step);
        return at == state().observations.end() ? nullptr : &*at;
    }
    // Every step done in the order of teaching, but for what is said of some.
    void seeAll(const std::map<ProcedureStep, Seen>& but = {})
    {
        for (const SheetStep& step : state().open->sheet.sheet.steps) {
            records.clock.now += Ms{1500};
            const auto other = but.find(step.step);
            presenter.observe(step.step, other == but.end() ? Seen::Done : other->second);
        }
    }

    MemoryRecords records;
    CountingSeeds seeds;
    CheckOffPresenter presenter{records, records.clock, seeds};
};

}  // namespace fb::test
