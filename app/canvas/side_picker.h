// Two small unlabelled figures facing the viewer, one with the arm on the viewer's left marked,
// one with the arm on the viewer's right; for hip and thigh, one with hip and thigh. The learner picks the
// one that shows the asked side of the patient: the patient's left is on the viewer's right.
//
// Nothing here says which is which: names speak of the viewer's left and right only.
// Keys: left and right arrows move between the figures, Enter or Space picks.
#pragma once

#include <QWidget>
#include <array>

#include "app/look/palette.h"
#include "core/basics/enums.h"

namespace fb {

class FigureButton;

class SidePicker : public QWidget {
    Q_OBJECT

public:
    explicit SidePicker(QWidget* parent = nullptr);

    // The patient's side that the first figure (the one on the left) shows; the other shows the
    // other. From the seed, so that no place becomes a habit.
    void setFirst(Side side);
    void setSite(Site site);  // what is marked: the arm, or hip and thigh
    void setScheme(const Scheme& scheme);

    [[nodiscard]] Side first() const { return m_first; }
    [[nodiscard]] Site site() const { return m_site; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    void picked(fb::Side side);  // the patient's side

protected:
    void changeEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void retranslate();

    Side m_first = Side::Right;
    Site m_site = Site::Deltoid;
    Scheme m_scheme;
    std::array<FigureButton*, 2> m_figures{};
};

}  // namespace fb
