// Holds the desk and the running check-off and speaks to core and to the records; knows no widget. Requests
// come in as calls, everything that can be seen goes out as one State and one signal.
//
// The screen advances only after the record is on disk: every event is asked of CheckOff, kept, and then
// applied. What cannot be kept is told in the notice and may be tried again; nothing is lost.
#pragma once

#include <QObject>
#include <QTimer>
#include <functional>
#include <memory>
#include <optional>

#include "app/checkoff/check_off_state.h"
#include "app/checkoff/in_turn.h"
#include "app/doors/clock.h"
#include "app/doors/library.h"
#include "app/doors/seeds.h"
#include "app/practice/practice_presenter.h"

namespace fb {

class CheckOffPresenter : public QObject {
    Q_OBJECT

public:
    static constexpr int kTickMs = 250;
    static constexpr int kKeepTimeMs = 2000;  // counted time is kept so often

    // All outlive the presenter. It has a practice of its own for the items.
    CheckOffPresenter(RecordKeeper& records, Clock& clock, Seeds& seeds, QObject* parent = nullptr);

    [[nodiscard]] const CheckOffState& state() const { return m_state; }
    [[nodiscard]] PracticePresenter& items() { return *m_items; }  // shown by a PracticePage in exam manner
    [[nodiscard]] RecordKeeper& records() { return m_records; }

    // The policy in force for the lab; check-offs begun later are graded by it.
    void useLibrary(const std::shared_ptr<const Library>& library, const Policy& policy,
                    const QString& policyText);
    void setPixelsPerMm(double pixelsPerMm) { m_pixelsPerMm = pixelsPerMm; }
    // While a clock runs, at the screen or on the manikin, no other area may be opened.
    [[nodiscard]] bool holdsTheWindow() const;

    // The desk.
    void openDesk();  // reads it (again)
    void chooseSheet(const QString& key);
    void chooseStudent(const QString& id);
    void useSample();  // sheet and roster of the invented college
    void saveStudents(const std::vector<Student>& students);
    void saveSheet(const Sheet& sheet);  // and chooses it
    void begin(const QString& student);  // the Identity page opens; only there is the record begun
    void goOn();                         // with the one that is open
    void backToDesk();                   // from Identity (a record that is begun is voided) or once signed
    void nextStudent();

    // The desk after a damage.
    void putBack();         // the backup that is offered; then the desk is read anew
    void cancelPutBack();   // as long as nothing was changed
    void declineBackup();   // for as long as the program runs
    void dismissPutBack();  // it was read that it was put back

    // Screen.
    void confirmIdentity();
    void startItems();
    void setTimeShown(bool shown);
    void pause(const QString& reason);
    void resume();
    // Confirm is items().grade(); it is kept and the next item opened from here.

    // Manikin.
    void takeOver();
    void observe(ProcedureStep step, Seen seen, const QString& remark = {});  // remark: as it is to stand
    void withdraw(ProcedureStep step);
    void restNotDone();
    void toggleHolding();  // the stopwatch
    void finish();

    void stopForSafety(const QString& why);
    void voidTechnical(const QString& why);  // the open one; on the desk, the one that can be gone on with
    void noShow();                           // on the desk, of the chosen student

    // Closing.
    void rate(int rating, const QString& remark);
    void enrol(const QString& name, const QString& pin);  // the first assessor; then proved as first
    // Proves each PIN and signs. second: 0 where none is needed.
    void sign(qint64 first, const QString& pin, qint64 second, const QString& secondPin);

    void dismissNotice();
    void tell(const Fault& fault);
    void retranslate();

Q_SIGNALS:
    void changed();
    void ticked();  // only times changed, or how far long work is
    void kept();    // something is on disk that was not before: records changed

private:
    using Then = std::function<void()>;

    // The desk.
    void readDesk(const QString& sheet);
    void take(const Desk& desk);
    void choose();  // somebody who may start, if nobody is chosen
    void setSaving(bool saving);
    void fail(const Fault& fault);  // told; nothing else changed
    void notPutBack(const Fault& why);
    void endPutBack();
    void lookHowFar();
    [[nodiscard]] const SheetOnFile* sheet() const;
    [[nodiscard]] const StudentStanding* standing(const QString& student) const;
    [[nodiscard]] CheckOffOrder orderFor(const Student& student, const SheetOnFile& sheet);

    // One check-off.
    void open(const RunningCheckOff& running, const Policy& policy);
    void leave();
    void withRecord(const Then& then);  // begins it where it is not yet
    void showItem();

    // Asked, kept, applied.
    void ask(const Result<CheckOffEvent>& event);
    void keep(const CheckOffEvent& event);
    void keepAgain();
    void applied(const CheckOffEvent& event);
    void notKept(const CheckOffEvent& event, const Fault& fault);
    void confirmed();  // an answer, by the student
    void tick();
    void timeUp();
    void refresh();
    void showTimes();
    void findNext();
    [[nodiscard]] bool isFree() const { return m_checkOff && !m_state.saving; }
    [[nodiscard]] Ms now() const { return m_clock.steady(); }

    void signWith(const CheckOffEvent& event, const Proof& first, const std::optional<Proof>& second);

    RecordKeeper& m_records;
    Clock& m_clock;
    Seeds& m_seeds;
    std::unique_ptr<PracticePresenter> m_items;
    CheckOffState m_state;
    double m_pixelsPerMm = 0.0;
    std::shared_ptr<const Library> m_library;
    std::optional<Policy> m_labPolicy, m_policy;  // in force; of the check-off that is open
    QString m_policyText;
    bool m_deskRead = false;
    std::optional<CheckOff> m_checkOff;
    std::optional<CheckOffEvent> m_unkept;  // an answer that could not be kept: time stands still
    CountedTime m_stopwatch;
    std::optional<double> m_stopped;  // seconds on it that are not kept yet
    InTurn m_turn;
    QTimer m_timer{this};
    Ms m_timeKept{0}, m_lastTry{0};
    std::shared_ptr<LongWork> m_work;
    QTimer m_look{this};  // how far it is
    bool m_declined = false;
};

}  // namespace fb
