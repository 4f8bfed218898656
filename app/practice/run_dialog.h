// How a run is set up: seed, length, sites and their conventions, charts, hand, help, side
// question. A bad field is told in the dialog, with everything that was typed left as it is.
#pragma once

#include <QDialog>
#include <array>

#include "app/practice/practice_presenter.h"

class QBoxLayout;
class QCheckBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QRadioButton;
class QScrollArea;

namespace fb {

class HandField;
class HowChoice;
class SiteChoice;

class RunDialog : public QDialog {
    Q_OBJECT

public:
    // Shows the setup of the present run with a fresh seed. The presenter outlives the dialog.
    RunDialog(PracticePresenter& presenter, QWidget* parent);

    // The learner's hand has been looked after meanwhile; everything else stays as typed.
    void showHand(Cm length);

Q_SIGNALS:
    void handAsked();  // for the rest of the hand: finger, writing hand, measuring

protected:
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    void layOut();
    QWidget* fields();
    QWidget* runFields();
    void fitFields();
    void say();
    void fill();
    void start();
    void estimateHand();
    void tell(const Fault& fault);
    void fitHelp();  // by hand nothing is drawn

    PracticePresenter& m_presenter;
    QLabel* m_title;
    QLabel* m_seedName;
    QLineEdit* m_seed;
    QPushButton* m_fresh;
    QLabel* m_lengthName;
    QLineEdit* m_length;
    HowChoice* m_how;
    QLabel* m_helpName;
    std::array<QRadioButton*, kHelpLevelCount> m_help{};
    SiteChoice* m_sites;
    HandField* m_hand;
    QPushButton* m_moreHand;
    QCheckBox* m_asksSide;
    QLabel* m_notice;
    std::optional<Fault> m_fault;  // told in the notice
    QScrollArea* m_scroll;
    QBoxLayout* m_halves = nullptr;
    QPushButton* m_start;
    QPushButton* m_cancel;
};

}  // namespace fb
