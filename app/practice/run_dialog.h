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
class SiteChoice;

class RunDialog : public QDialog {
    Q_OBJECT

public:
    // Shows the setup of the present run with a fresh seed. The presenter outlives the dialog.
    RunDialog(PracticePresenter& presenter, QWidget* parent);

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

    PracticePresenter& m_presenter;
    QLabel* m_title;
    QLabel* m_seedName;
    QLineEdit* m_seed;
    QPushButton* m_fresh;
    QLabel* m_lengthName;
    QLineEdit* m_length;
    QLabel* m_helpName;
    std::array<QRadioButton*, kHelpLevelCount> m_help{};
    SiteChoice* m_sites;
    HandField* m_hand;
    QCheckBox* m_asksSide;
    QLabel* m_notice;
    std::optional<Fault> m_fault;  // told in the notice
    QScrollArea* m_scroll;
    QBoxLayout* m_halves = nullptr;
    QPushButton* m_start;
    QPushButton* m_cancel;
};

}  // namespace fb
