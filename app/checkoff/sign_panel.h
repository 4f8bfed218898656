// The end of a check-off: the assessor and, on a last attempt, a second one prove their PINs and sign; where
// nobody is enrolled yet, the first one is. What is wrong or missing is said beside the fields in one
// sentence, to a screen reader too, and what it speaks of has the focus.
#pragma once

#include <QWidget>
#include <optional>
#include <vector>

#include "app/checkoff/check_off_state.h"
#include "app/look/palette.h"

class QLabel;
class QPushButton;

namespace fb {

class AssessorForm;
class PinField;

class SignPanel : public QWidget {
    Q_OBJECT

public:
    explicit SignPanel(QWidget* parent = nullptr);

    void showState(const CheckOffState& state);
    void tell(const std::optional<Fault>& fault);
    void setScheme(const Scheme& scheme);
    void say();
    void focusFirst();  // where the next letter belongs
    void forgetPins();

Q_SIGNALS:
    // second 0: none is needed.
    void signAsked(qint64 first, const QString& pin, qint64 second, const QString& secondPin);
    void enrolAsked(const QString& name, const QString& pin);
    void edited();                     // what was told is out of date
    void spoke(const QString& words);  // to a screen reader

private:
    void sign();
    void enrol(const QString& name, const QString& pin, const QString& again);
    void askForPin(PinField* field);
    void sayWhatIsWrong();
    void chooseOther();

    std::vector<Assessor> m_assessors;
    qint64 m_besideOf = 0;  // the first one, when the second was chosen for them
    bool m_needsSecond = false;
    bool m_enrols = false;
    std::optional<Fault> m_fault;
    PinField* m_untyped = nullptr;  // its PIN is asked for
    QString m_enrolledPin;          // typed a moment ago
    Scheme m_scheme;
    QLabel* m_formTitle;
    AssessorForm* m_form;
    QLabel* m_formNote;
    PinField* m_first;
    PinField* m_second;
    QLabel* m_icon;
    QLabel* m_sentence;
    QPushButton* m_sign;
};

// Faults that the closing page says beside its fields, so that no other notice needs to.
[[nodiscard]] bool isSaidInClosing(Problem problem);

}  // namespace fb
