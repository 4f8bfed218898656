// The row over the picture: which site on which side is shown, which layers of the drawing.
#pragma once

#include <QWidget>
#include <array>

#include "app/look/palette.h"
#include "app/practice/practice_state.h"

class QComboBox;
class QToolButton;

namespace fb {

class LecturePresenter;

class SiteRow : public QWidget {
    Q_OBJECT

public:
    explicit SiteRow(LecturePresenter& presenter, QWidget* parent = nullptr);

    void showState();
    void setScheme(const Scheme& scheme);

protected:
    void changeEvent(QEvent* event) override;

private:
    void say();
    void fitIcons();

    LecturePresenter& m_presenter;
    QComboBox* m_site;
    QComboBox* m_side;
    std::array<QToolButton*, kPeels.size()> m_peels{};
};

}  // namespace fb
