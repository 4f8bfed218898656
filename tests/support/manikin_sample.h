// A check-off on the manikin as the pages see it: every step of a usual protocol, an invented student. Its
// doings are applied to the state alone, without a presenter.
#pragma once

#include <QApplication>
#include <QMouseEvent>

#include "app/checkoff/check_off_state.h"
#include "app/look/style.h"

namespace fb::test {

[[nodiscard]] inline bool isCriticalInSample(ProcedureStep step)
{
    switch (step) {
    case ProcedureStep::LabelCheck:
    case ProcedureStep::HandHygiene:
    case ProcedureStep::Identify:
    case ProcedureStep::Allergies:
    case ProcedureStep::Landmarks:
    case ProcedureStep::CleanSkin:
    case ProcedureStep::SafetyDevice:
    case ProcedureStep::Sharps: return true;
    default: return false;
    }
}

// Every step of the protocol, in the order it is taught.
[[nodiscard]] inline std::vector<SheetStep> sampleSteps(const Protocol& protocol = {})
{
    std::vector<SheetStep> steps;
    for (int i = 0; i < kProcedureStepCount; ++i) {
        const ProcedureStep step = procedureStepAt(i);
        if (belongs(step, protocol))
            steps.push_back({step, isCriticalInSample(step)});
    }
    return steps;
}

[[nodiscard]] inline CheckOffState manikinState()
{
    CheckOffState state;
    state.ready = true;
    state.stage = CheckOffStage::OnManikin;
    RunningCheckOff open;
    open.id = 1;
    open.student = {"S-1042", "Okonkwo-Lindqvist", "Marguerite", "Section B", 0, {}, true};
    open.sheet.sheet.title = "Invented sheet";
    open.sheet.sheet.steps = sampleSteps();
    open.sheet.sheet.secondsOnManikin = 600;
    state.open = open;
    state.used = Ms{247000};
    state.manikinLeft = Ms{353000};
    return state;
}

// As the records would have it: said again, the later word counts.
inline void observe(CheckOffState& state, ProcedureStep step, Seen seen, double at,
                    const std::string& remark = {})
{
    std::erase_if(state.observations, [step](const Observation& o) { return o.step == step; });
    state.observations.push_back({step, seen, at, remark});
    const Sheet& sheet = state.open->sheet.sheet;
    state.result.procedure =
        judge(sheet.steps, sheet.protocol, state.observations, state.held, sheet.promptedShare);
}

inline void withdraw(CheckOffState& state, ProcedureStep step)
{
    std::erase_if(state.observations, [step](const Observation& o) { return o.step == step; });
}

// Press, release, press again within the system's time, release: as the system sends it.
inline void doubleClick(QWidget& widget)
{
    const QPointF at = widget.rect().center();
    for (const QEvent::Type type : {QEvent::MouseButtonPress, QEvent::MouseButtonRelease,
                                    QEvent::MouseButtonDblClick, QEvent::MouseButtonRelease}) {
        const bool up = type == QEvent::MouseButtonRelease;
        QMouseEvent event(type, at, widget.mapToGlobal(at), Qt::LeftButton,
                          up ? Qt::NoButton : Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(&widget, &event);
    }
}

// The look of the program, as a page is seen in its window.
inline Scheme dressed(PaletteKind kind = PaletteKind::Light, double textScale = 1.0)
{
    const Scheme scheme = schemeOf(kind);
    applyStyle(*static_cast<QApplication*>(QCoreApplication::instance()), scheme, textScale);
    return scheme;
}

}  // namespace fb::test
