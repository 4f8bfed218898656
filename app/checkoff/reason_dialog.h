// Asks why a check-off is paused, stopped or not to count: one of the usual reasons, or the assessor's own
// words. Nothing is done without a reason; that a student did not come is one, and is only asked once more.
#pragma once

#include <QDialog>
#include <functional>
#include <vector>

class QButtonGroup;
class QLabel;
class QLineEdit;
class QPushButton;
class QRadioButton;

namespace fb {

enum class ReasonFor { Pause, SafetyStop, Void, NoShow };

class ReasonDialog : public QDialog {
    Q_OBJECT

public:
    static constexpr int kLongestReason = 200;  // letters

    ReasonDialog(ReasonFor what, QWidget* parent);

    // Opens one over the parent's window; `then` is called with the reason unless it is put away.
    static void ask(ReasonFor what, QWidget* parent, std::function<void(const QString& reason)> then);

    [[nodiscard]] QString reason() const;  // empty: none yet

protected:
    void changeEvent(QEvent* event) override;

private:
    void layOut();
    void say();
    void showState();

    ReasonFor m_what;
    QLabel* m_title;
    QLabel* m_hint;
    QButtonGroup* m_group;
    std::vector<QRadioButton*> m_usual;
    QLabel* m_ownName;
    QLineEdit* m_own;
    QPushButton* m_back;
    QPushButton* m_accept;
};

}  // namespace fb
