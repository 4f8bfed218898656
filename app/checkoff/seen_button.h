// One of the three answers to a step: done, prompted, not done. A figure of its own for each, in words where
// there is room; chosen it is filled. Takes the focus by Tab only if it is told to.
#pragma once

#include <QToolButton>

#include "app/look/icons.h"
#include "core/procedure/observed.h"

namespace fb {

class SeenButton : public QToolButton {
    Q_OBJECT

public:
    explicit SeenButton(Seen seen, QWidget* parent = nullptr);

    [[nodiscard]] Seen seen() const { return m_seen; }
    // The word is painted only if it is shown; a screen reader is told `spoken` either way.
    void say(const QString& word, const QString& spoken);
    void showWord(bool shown);
    void setOutlined(bool outlined);  // where it stands alone
    void setScheme(const Scheme& scheme);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;
    // The second press of a double click is a slip of the finger, not another answer.
    void mouseDoubleClickEvent(QMouseEvent* event) override;

private:
    [[nodiscard]] int iconSize() const;
    [[nodiscard]] QColor fill() const;

    Seen m_seen;
    bool m_outlined = false;
    Scheme m_scheme;
};

[[nodiscard]] Icon iconOf(Seen seen);
// Of an answer that is chosen; each also has its figure.
[[nodiscard]] QColor colourOf(Seen seen, const Scheme& scheme);

}  // namespace fb
