// Holds a run of practice and speaks to core; knows no widget. Requests come in as calls,
// everything that can be seen goes out as one State and one signal.
//
// Pictures are made by a worker: a picture that is no longer wanted when it is done is
// dropped. A request that does not fit the phase, or that core refuses, changes nothing but
// the notice.
#pragma once

#include <QObject>
#include <QThreadPool>

#include "app/doors/library.h"
#include "app/doors/seeds.h"
#include "app/practice/practice_state.h"

namespace fb {

class PracticePresenter : public QObject {
    Q_OBJECT

public:
    // The seeds outlive the presenter.
    explicit PracticePresenter(Seeds& seeds, QObject* parent = nullptr);
    ~PracticePresenter() override;

    [[nodiscard]] const PracticeState& state() const { return m_state; }

    // What a run is opened with. Before the library is there it is only remembered.
    // A convention that is not given is the policy's own.
    void setUp(const PracticeSetup& setup, std::optional<Convention> convention);
    // From here on requests can be opened; the first run starts with a fresh seed unless
    // setUp named one. A lab's policy file that cannot be used is told in the notice, and
    // the shipped policy stands in.
    void useLibrary(const std::shared_ptr<const Library>& library, const QString& policyFile = {});
    void tell(const Fault& fault);  // shown as the notice
    void dismissNotice();

    // A new run; on a fault (seed, length) the present one goes on as if nothing was asked.
    [[nodiscard]] Result<bool> startRun(const QString& seed, PracticeSetup setup,
                                        std::optional<Convention> convention);
    void newRun();                         // the same setup, a fresh seed
    void repeatRun();                      // the same requests once more
    void replaySeed(const QString& seed);  // this setup, that seed; a fault is the notice
    [[nodiscard]] QString freshSeed() { return QString::number(m_seeds.fresh()); }
    // A lab's own numbers, or the shipped ones when the name is empty. Starts the run anew.
    bool usePolicyFile(const QString& file);

    void pickSide(Side side);
    void placeMark(QPointF cm);
    void withdrawMark();
    void grade();
    void next();

    // Before grading only with landmarks drawn: bone shows the answer.
    void setPeelShown(Peel peel, bool shown);
    void setCompanionShown(bool shown);
    void setOtherShown(Convention convention, bool shown);
    void retranslate();  // scene labels again, in the language of now

Q_SIGNALS:
    void changed();

private:
    struct Made;

    void open(const PracticeSetup& setup);
    void refresh();         // state from the practice, all but pictures
    void refreshRequest();  // what changes with the request only
    void refreshScenes();
    void makePicture(View view, const Request& request);
    void makeRunPicture();  // the arm of the summary
    void take(const Made& made);
    [[nodiscard]] bool isRunning(Phase phase) const { return m_practice && m_practice->phase() == phase; }

    Seeds& m_seeds;
    std::shared_ptr<const Library> m_library;
    std::optional<Policy> m_policy;          // with the lab's file, without the run's convention
    std::optional<Convention> m_convention;  // chosen for the run
    std::optional<PracticeSetup> m_wanted;
    std::optional<Practice> m_practice;
    std::shared_ptr<const Target> m_companionTarget;
    std::shared_ptr<const Target> m_runTarget;  // of the arm of the summary
    PracticeState m_state;
    int m_wantedPicture = 0;  // counts requests; an older picture is not wanted any more
    QThreadPool m_pool;
};

}  // namespace fb
