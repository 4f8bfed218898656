// The picture of a demonstration in a window: paints the presenter's state, fetches each body's drawing from
// a worker (half-size while something moves, sharp within 200 ms of rest), and hands pointer and pen back to
// the presenter where it is the speaker's own.
//
// Keys, wherever it has the focus: Page Down, Right, Down, Space next; Page Up, Left, Up, Backspace back;
// Home, End; B or period blank; F6 asksSwap(); Escape asksClose().
#pragma once

#include <QWidget>
#include <memory>

#include "app/demonstrate/lecture_face.h"

namespace fb {

class LecturePresenter;

class LectureView : public QWidget {
    Q_OBJECT

public:
    enum class For { Audience, Speaker };  // only the speaker's takes pointer and pen
    LectureView(LecturePresenter& presenter, For whom, QWidget* parent = nullptr);
    ~LectureView() override;

    void setScheme(const Scheme& scheme);
    // As it is painted now.
    [[nodiscard]] LectureFace face() const;
    [[nodiscard]] bool isSharp() const;

Q_SIGNALS:
    void asksSwap();
    void asksClose();
    void sharpened();

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    struct Private;
    std::unique_ptr<Private> m_private;
};

}  // namespace fb
