// Measuring hand and finger on the screen in three steps: how fine the screen is (by a bank card or a
// ruler), the hand, the finger. A step can be left out; a screen that is known already is not asked.
#pragma once

#include <QDialog>
#include <array>
#include <optional>

#include "app/profile/learner.h"
#include "app/profile/measure_board.h"

class QLabel;
class QPushButton;
class QRadioButton;

namespace fb {

class MeasureDialog : public QDialog {
    Q_OBJECT

public:
    enum class Step { Scale, Hand, Finger };

    // The learner outlives the dialog; the screen's scale is kept there.
    MeasureDialog(Learner& learner, const Scheme& scheme, QWidget* parent);

    [[nodiscard]] Step step() const { return m_step; }
    // What was taken; none where that step was left out.
    [[nodiscard]] std::optional<Cm> handLength() const { return m_hand; }
    [[nodiscard]] std::optional<Cm> fingerWidth() const { return m_finger; }

protected:
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    void layOut();
    void goTo(Step step);
    void beginOnScreen();  // where the dialog now stands
    void lay();
    void take();
    void leaveOut();
    void goOn();
    void back();
    void say();
    void tell(const QString& sentence);
    [[nodiscard]] QString instruction() const;
    [[nodiscard]] QString impossibleScale() const;

    Learner& m_learner;
    Step m_step = Step::Scale;
    QString m_screen;  // its key
    std::optional<PixelsPerMm> m_scale;
    std::optional<Cm> m_hand;
    std::optional<Cm> m_finger;
    std::optional<Fault> m_fault;  // told in the notice
    bool m_isScaleWrong = false;   // likewise

    QLabel* m_title;
    QLabel* m_place;  // which step of how many
    QLabel* m_words;
    std::array<QRadioButton*, 2> m_by{};  // card, ruler
    MeasureBoard* m_board;
    QLabel* m_notice;
    QPushButton* m_back;
    QPushButton* m_cancel;
    QPushButton* m_skip;
    QPushButton* m_take;
};

}  // namespace fb
