// "Your hand": length, finger, writing hand, typed or measured on the screen. A bad field is told in the
// dialog with everything typed left as it is; so is a profile that could not be kept.
#pragma once

#include <QDialog>
#include <array>
#include <functional>
#include <optional>

#include "app/look/palette.h"
#include "app/profile/learner.h"

class QButtonGroup;
class QLabel;
class QLineEdit;
class QPushButton;
class QRadioButton;
class QScrollArea;

namespace fb {

class HandField;
class MeasureDialog;

class ProfileDialog : public QDialog {
    Q_OBJECT

public:
    struct Doors {
        Learner& learner;                             // outlives the dialog
        std::function<Result<Cm>(Sex, Cm)> estimate;  // of a hand, from sex and stature
        Cm usualHand;                                 // what is used where nothing is typed
        Cm usualFinger;
        Scheme scheme;
    };
    ProfileDialog(Doors doors, QWidget* parent);

protected:
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    void layOut();
    QWidget* fields();
    void fitFields();
    void fill();
    void say();
    void estimate();
    void measure();
    void takeMeasured(const MeasureDialog& measured);
    [[nodiscard]] Result<Profile> typed() const;
    void save();
    void takeAnswer(const Result<bool>& saved);
    void useUnsaved();  // what could not be kept
    void tell(const std::optional<Fault>& fault);

    Doors m_doors;
    std::optional<Fault> m_fault;  // told in the notice
    bool m_isSaving = false;
    QLabel* m_title;
    HandField* m_hand;
    QLabel* m_fingerName;
    QLineEdit* m_finger;
    QLabel* m_fingerUnit;
    QLabel* m_fingerHint;
    QPushButton* m_measure;
    QLabel* m_writingName;
    std::array<QRadioButton*, kSides.size()> m_writing{};
    QLabel* m_writingHint;
    QLabel* m_notice;
    QScrollArea* m_scroll;
    QPushButton* m_cancel;
    QPushButton* m_unsavedButton;
    QPushButton* m_save;
};

}  // namespace fb
