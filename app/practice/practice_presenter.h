// Holds a run of practice and speaks to core; knows no widget. Requests come in as calls,
// everything that can be seen goes out as one State and one signal.
//
// Files are read and pictures made by a worker: a picture that is no longer wanted when it is
// done is dropped, and a request whose plates are still being read is opened when they are
// there. A call that does not fit the phase, or that core refuses, changes nothing but the
// notice.
//
// In exam manner (examine) nothing is ever told of how an answer was; see PracticeState::exam.
#pragma once

#include <QObject>
#include <QThreadPool>
#include <functional>

#include "app/doors/library.h"
#include "app/doors/seeds.h"
#include "app/practice/by_hand_presenter.h"
#include "app/practice/practice_state.h"

namespace fb {

// A lab's own file as it was read.
struct LabPolicy {
    QString file;
    Result<Policy> policy;
};

class PracticePresenter : public QObject {
    Q_OBJECT

public:
    // The seeds outlive the presenter.
    explicit PracticePresenter(Seeds& seeds, QObject* parent = nullptr);
    ~PracticePresenter() override;

    [[nodiscard]] const PracticeState& state() const { return m_state; }

    // What a run is opened with. Before the library is there it is only remembered.
    void setUp(const PracticeSetup& setup, const OwnChoices& own);
    // From here on requests can be opened; the first run starts with a fresh seed unless
    // setUp named one. A lab's policy that cannot be used is told in the notice, and the
    // shipped policy stands in.
    void useLibrary(const std::shared_ptr<const Library>& library,
                    const std::optional<LabPolicy>& lab = std::nullopt);
    // Only for examine(): no run can be opened.
    void lendLibrary(const std::shared_ptr<const Library>& library);
    void tell(const Fault& fault);  // shown as the notice
    void dismissNotice();

    // A new run; on a fault (seed, length, sites, hand) the present one goes on as if nothing
    // was asked.
    [[nodiscard]] Result<bool> startRun(const QString& seed, PracticeSetup setup, const OwnChoices& own);
    // The learner's hand as it is now: the run starts with it anew while nothing of the learner's is in it,
    // else the next one does.
    void setHand(const OwnChoices& own);
    void newRun();                         // the same setup, a fresh seed
    void repeatRun();                      // the same requests once more
    void replaySeed(const QString& seed);  // this setup, that seed; a fault is the notice
    [[nodiscard]] QString freshSeed() { return QString::number(m_seeds.fresh()); }
    // The policy without the learner's own choices; null before the library is there.
    [[nodiscard]] const Policy* labPolicy() const { return m_policy ? &*m_policy : nullptr; }
    // The mean hand of adults of that sex and stature.
    [[nodiscard]] Result<Cm> estimatedHand(Sex sex, Cm stature) const;

    // A lab's own numbers, or the shipped ones when the name is empty; the file is read first.
    // Starts the run anew: where something would be lost it is only offered, and waits for
    // the learner's word.
    void usePolicyFile(const QString& file);
    void answerOffer(bool starts);

    // A check-off, from that item of the set on, by exactly this policy. Called again for every item: the
    // one that is shown stays as it was answered until then.
    void examine(std::vector<SetRequest> set, int from, const Policy& policy);
    // In an exam: how the answer was graded, once it is confirmed; null before. Not for the student's eyes.
    [[nodiscard]] const Attempt* confirmedAnswer() const;
    // Saving shuts the item, whether or not an answer was given; Failed lets Confirm try again.
    void setKeeping(Keeping keeping);

    // What is done by hand, in a run that asks for it.
    [[nodiscard]] ByHandPresenter& byHand() { return m_byHand; }

    void pickSide(Side side);
    void placeMark(QPointF cm);
    void withdrawMark();
    void grade();                      // in an exam: confirm
    void chooseReason(bool choosing);  // opens and closes the choice of reasons for "not here"
    void refuse(FindingCode reason);
    void next();

    // Before grading only with landmarks drawn: bone shows the answer.
    void setPeelShown(Peel peel, bool shown);
    void setCompanionShown(bool shown);
    void setOtherShown(Convention convention, bool shown);
    void setHandShown(bool shown);
    void setRunSite(Site site);  // in the summary: whose marks are drawn
    void retranslate();          // scene labels again, in the language of now

Q_SIGNALS:
    void changed();
    void confirmed();  // in an exam: the answer is to be kept, now or once more

private:
    struct Made;

    void open(const PracticeSetup& setup);
    void begin(const PracticeSetup& setup);
    void beginExam(const std::vector<SetRequest>& set, int from, const Policy& policy);
    void confirm();
    // At once where the plates a target in this view needs are there; else when they are read.
    // Only the last one waits.
    void withPlates(View view, const std::function<void()>& then);
    void readPlates(View view, int priority);
    void readAhead(const SiteSet& sites);
    void takePlates(const std::optional<Fault>& broken, View view);
    [[nodiscard]] bool holds(View view);
    void takePolicy(const LabPolicy& lab);
    void changePolicy(const LabPolicy& lab);
    [[nodiscard]] bool wouldLose() const;  // something of the learner's, if the run started anew

    void refresh();  // state from the practice, all but pictures
    void refreshByHand();
    void refreshRequest();  // what changes with the request only
    void refreshSummary();
    void refreshScenes();
    void makePicture(View view, const Request& request);
    [[nodiscard]] static Result<bool> readHands(const Library& library, const Target& target, bool byHand,
                                                Made& made);
    void makeRunPicture();  // the body of the summary
    void take(const Made& made);
    [[nodiscard]] bool isRunning(Phase phase) const { return m_practice && m_practice->phase() == phase; }

    Seeds& m_seeds;
    std::shared_ptr<const Library> m_library;
    Atlas m_atlas;                   // every plate that is read
    std::optional<Policy> m_policy;  // with the lab's file, without the learner's own choices
    std::optional<LabPolicy> m_offered;
    OwnChoices m_own;  // chosen for the run
    std::optional<PracticeSetup> m_wanted;
    std::optional<Practice> m_practice;
    std::shared_ptr<const Target> m_companionTarget;
    std::shared_ptr<const Target> m_runTarget;  // of the body of the summary
    PracticeState m_state;
    View m_awaited{};                  // its plates are being read,
    std::function<void()> m_whenRead;  // and this is then to be done
    ByHandPresenter m_byHand{m_practice, m_state};
    int m_wantedPicture = 0;  // counts requests; an older picture is not wanted any more
    int m_wantedPolicy = 0;   // the same for files
    QThreadPool m_pool;
};

}  // namespace fb
