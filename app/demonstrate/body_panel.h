// The patient's body under the speaker's hands: age, stature, weight, sex, three builds; and how it is shown:
// by which convention, in which view, in which skin tone.
#pragma once

#include <QWidget>
#include <array>

#include "app/look/palette.h"
#include "core/body/body_values.h"

class QComboBox;
class QLabel;
class QPushButton;
class QToolButton;

namespace fb {

class LecturePresenter;
class ValueRow;

class BodyPanel : public QWidget {
    Q_OBJECT

public:
    explicit BodyPanel(LecturePresenter& presenter, QWidget* parent = nullptr);

    void showState();
    void showBody();  // the numbers alone: a body glides
    void setScheme(const Scheme& scheme);

protected:
    void changeEvent(QEvent* event) override;

private:
    void layOut();
    void connectAll();
    void say();
    void fillChoices();
    void change(double BodyValues::*which, double value);

    LecturePresenter& m_presenter;
    ValueRow* m_age;
    ValueRow* m_stature;
    ValueRow* m_weight;
    std::array<QToolButton*, kSexes.size()> m_sexes{};
    std::array<QPushButton*, kStoutnesses.size()> m_builds{};
    QLabel* m_index;
    std::array<QLabel*, 3> m_names{};  // of the three choices
    QComboBox* m_convention;
    QComboBox* m_view;
    QComboBox* m_tone;
    std::optional<Site> m_filled;  // whose conventions and views can be chosen
};

}  // namespace fb
