// The speaker's tools in one row under the picture: point, pen, eraser, magnifier, ask the room; beside them
// what belongs to the one in use. Falls back to pictures alone, words kept as names and tool tips, where the
// words do not fit.
#pragma once

#include <QWidget>
#include <array>

#include "app/lecture/lecture_state.h"
#include "app/look/palette.h"

class QToolButton;

namespace fb {

class LecturePresenter;

class ToolBar : public QWidget {
    Q_OBJECT

public:
    explicit ToolBar(LecturePresenter& presenter, QWidget* parent = nullptr);

    void showState();
    void setScheme(const Scheme& scheme);
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    QToolButton* add(const char* name, bool stays);
    void connectAll();
    void say();
    void fitWords();
    // Sets them, too: of the tools, and of what says that strokes stay.
    int widthWith(Qt::ToolButtonStyle tools, Qt::ToolButtonStyle stay);

    LecturePresenter& m_presenter;
    std::array<QToolButton*, kLectureToolCount> m_tools{};
    QToolButton* m_spotlight = nullptr;
    std::array<QToolButton*, 2> m_inks{};
    QToolButton* m_dashed = nullptr;
    QToolButton* m_undo = nullptr;
    QToolButton* m_wipe = nullptr;
    QToolButton* m_stay = nullptr;
    std::optional<LectureTool> m_shownTool;  // that the row was fitted for
    int m_iconsWidth = 0;
};

}  // namespace fb
