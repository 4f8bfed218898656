// What the shown body is compared with: a pinned body beside it or over it, or another convention on itself;
// and how far the ideal points are apart.
#pragma once

#include <QWidget>
#include <array>
#include <optional>

#include "app/lecture/lecture_state.h"

class QComboBox;
class QLabel;
class QPushButton;
class QRadioButton;

namespace fb {

class LecturePresenter;

class ComparePanel : public QWidget {
    Q_OBJECT

public:
    explicit ComparePanel(LecturePresenter& presenter, QWidget* parent = nullptr);

    void showState();

protected:
    void changeEvent(QEvent* event) override;

private:
    void layOut();
    void connectAll();
    void say();
    void fillOthers();
    void showPinned(const LectureState& state);
    void showDifference(const LectureState& state);

    LecturePresenter& m_presenter;
    QLabel* m_shownName;
    QLabel* m_shown;
    QLabel* m_pinnedName;
    QLabel* m_pinned;
    QPushButton* m_pin;
    QPushButton* m_swap;
    QPushButton* m_unpin;
    std::array<QRadioButton*, kCompareCount> m_ways{};
    QComboBox* m_other;
    QLabel* m_apart;
    QLabel* m_where;
    QLabel* m_why;
    QLabel* m_measure;
    std::optional<Convention> m_filled;  // whose others can be chosen
};

}  // namespace fb
