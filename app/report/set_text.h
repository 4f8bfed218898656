// A piece of text broken into lines of a given width, measured and painted by the same lines whatever the
// device. Lengths are in the painter's own units.
#pragma once

#include <QFont>
#include <QPointF>
#include <QString>
#include <QTextLayout>
#include <memory>

class QPainter;

namespace fb {

// Which way a language runs, and what stands at the end of a line.
struct Setting {
    QFont font;
    Qt::LayoutDirection direction = Qt::LeftToRight;
    bool atEnd = false;  // of the line: right where the language runs to the right
};

class SetText {
public:
    // A word that is wider than the line is broken inside. Line breaks in the text are kept.
    SetText(const QString& text, double width, const Setting& setting);

    [[nodiscard]] double height() const { return m_height; }
    [[nodiscard]] double width() const { return m_width; }  // of its longest line
    [[nodiscard]] int lines() const { return m_layout->lineCount(); }
    // Its first line stands on this height below the top.
    [[nodiscard]] double baseline() const { return m_baseline; }
    // In the painter's pen.
    void paint(QPainter& painter, QPointF topLeft) const;

private:
    std::shared_ptr<QTextLayout> m_layout;
    double m_height = 0.0;
    double m_width = 0.0;
    double m_baseline = 0.0;
};

}  // namespace fb
