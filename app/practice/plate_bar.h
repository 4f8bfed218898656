// The slim row under the plate: layers to peel, or what belongs to finding by hand; zoom, the
// other view. Falls back to icons
// alone, names kept as accessible names and tool tips, where the words do not fit.
#pragma once

#include <QWidget>
#include <array>

#include "app/practice/practice_state.h"

class QToolButton;

namespace fb {

class ByHandBar;

class PlateBar : public QWidget {
    Q_OBJECT

public:
    explicit PlateBar(QWidget* parent = nullptr);

    void showState(const PracticeState& state);
    void setScheme(const Scheme& scheme);
    [[nodiscard]] ByHandBar& hand() { return *m_hand; }
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    void peelToggled(Peel peel, bool shown);
    void zoomAsked(double factor);
    void wholeAsked();
    void companionToggled(bool shown);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    enum Zoom { ZoomOutButton, ZoomInButton, ZoomWholeButton, ZoomCount };

    void say();
    void fitWords();
    int widthWith(Qt::ToolButtonStyle style);  // sets it, too, on all that may be icons alone

    ByHandBar* m_hand;
    std::array<QToolButton*, kPeels.size()> m_peels{};
    std::array<QToolButton*, ZoomCount> m_zooms{};
    QToolButton* m_companion;
    int m_iconsWidth = 0;
};

}  // namespace fb
