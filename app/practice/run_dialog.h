// How a run is set up: seed, length, help, convention, side question. A bad field is told
// in the dialog, with everything that was typed left as it is.
#pragma once

#include <QDialog>
#include <array>

#include "app/practice/practice_presenter.h"

class QCheckBox;
class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QRadioButton;

namespace fb {

class RunDialog : public QDialog {
    Q_OBJECT

public:
    // Shows the setup of the present run with a fresh seed. The presenter outlives the dialog.
    RunDialog(PracticePresenter& presenter, QWidget* parent);

private:
    void layOut();
    void say();
    void fill();
    void start();

    PracticePresenter& m_presenter;
    QLabel* m_title;
    QLabel* m_seedName;
    QLineEdit* m_seed;
    QPushButton* m_fresh;
    QLabel* m_lengthName;
    QLineEdit* m_length;
    QLabel* m_helpName;
    std::array<QRadioButton*, kHelpLevelCount> m_help{};
    QLabel* m_conventionName;
    QComboBox* m_convention;
    QCheckBox* m_asksSide;
    QLabel* m_notice;
    QPushButton* m_start;
    QPushButton* m_cancel;
};

}  // namespace fb
