// The picture of a demonstration in a window: paints the presenter's state, fetches each body's drawing from
// a worker (coarse while something moves, sharp within 200 ms of rest), and hands pointer and pen back to
// the presenter where it is the speaker's own.
//
// A body is shown with its landmarks and target as soon as it is drawn, never one over the other's drawing.
//
// Keys, wherever it has the focus: Page Down, Right, Down, Space next; Page Up, Left, Up, Backspace back;
// Home, End; B or period blank; F6 asksSwap(); Escape asksClose(). Where it takes the pointer: Control with
// an arrow moves it by 5 mm, with Shift as well by 1 mm; Enter presses there, the pen until Enter again.
#pragma once

#include <QWidget>
#include <memory>

#include "app/demonstrate/lecture_face.h"

namespace fb {

class LecturePresenter;

class LectureView : public QWidget {
    Q_OBJECT

public:
    enum class For { Audience, Speaker };  // the speaker's takes pointer and pen and shows its focus
    LectureView(LecturePresenter& presenter, For whom, QWidget* parent = nullptr);
    ~LectureView() override;

    void setScheme(const Scheme& scheme);
    // The audience's, too, where the speaker has nothing else before them.
    void setTakesPointer(bool takes);
    // As it is painted now.
    [[nodiscard]] LectureFace face() const;
    [[nodiscard]] bool isSharp() const;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

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
    class Private;
    void speak();
    [[nodiscard]] bool takesKey(const QKeyEvent& event) const;

    std::unique_ptr<Private> m_private;
};

}  // namespace fb
