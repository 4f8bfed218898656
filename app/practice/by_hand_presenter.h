// The half of the practice that finds a site by hand: takes what the learner's hands do, asks
// core, and keeps the state's part of it. Knows no widget.
//
// A press and a moved handle come many times a second: they change little and are told by signals
// of their own, so that nothing else is made anew.
#pragma once

#include <QObject>
#include <optional>
#include <set>

#include "app/practice/practice_state.h"

namespace fb {

class ByHandPresenter : public QObject {
    Q_OBJECT

public:
    // Both outlive the presenter.
    ByHandPresenter(std::optional<Practice>& practice, PracticeState& state, QObject* parent = nullptr);

    void open();     // a request was opened: nothing is felt or built
    void refresh();  // the state's part, from the practice; none where nothing is found by hand

    // A finger presses or slides there, cm; beside the body nothing is felt.
    void feel(QPointF cm);
    void lift();
    // Where the finger pressed last, under a name of the site as it is chosen or typed; on a fault
    // nothing is planted.
    void plant(const QString& name);
    void pullOut(Landmark name);

    void grab(Handle handle);
    void move(Handle handle, QPointF cm);
    void letGo();
    // A click beside every handle: sets the one that is due, or chooses a field of the thigh.
    void place(QPointF cm);
    void stepHandle(int delta);  // to the one after or before
    void hold(Handle handle);    // chosen in the list
    void chooseHand(Side hand);
    void chooseFingers(int count);  // 2 or 3; laid with the hand that does not write
    void chooseCell(ThighCell cell);

    void undo();
    void redo();
    void clearStage();
    void goTo(ByHandStage stage);

    void watch();  // once a request
    void showStep(int delta);
    void endWatching();

Q_SIGNALS:
    void changed();  // more than the next two tell
    void planted();  // a flag, just now
    void felt();     // the finger and what it feels
    void handled();  // a handle moved, and what hangs on it

private:
    [[nodiscard]] ByHand* hand();  // null: nothing to do by hand now
    [[nodiscard]] ByHandState& state() { return *m_state.byHand; }
    void refreshBuild(const ByHand& byHand);
    void refreshDue();
    void offerNames();
    void setHandle(Handle handle, QPointF cm);
    void toStep(int step);
    void tell(const Fault& fault);
    void done();  // something was changed: an older notice is stale

    std::optional<Practice>& m_practice;
    PracticeState& m_state;
    Sweep m_sweep;
    std::set<Handle> m_done;  // set by the learner in this request
};

}  // namespace fb
