#include "app/report/set_text.h"

#include <QPainter>
#include <algorithm>

namespace fb {

namespace set_text_detail {

// Space between lines, as a share of a line.
constexpr double kLeading = 1.12;

QTextOption optionOf(const Setting& setting)
{
    // A text layout does not mirror for itself.
    const bool isRight = (setting.direction == Qt::RightToLeft) != setting.atEnd;
    QTextOption option(isRight ? Qt::AlignRight : Qt::AlignLeft);
    option.setTextDirection(setting.direction);
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    option.setUseDesignMetrics(true);
    return option;
}

}  // namespace set_text_detail

SetText::SetText(const QString& text, double width, const Setting& setting)
    : m_layout(std::make_shared<QTextLayout>(QString(text).replace(QLatin1Char('\n'), QChar::LineSeparator),
                                             setting.font))
{
    m_layout->setTextOption(set_text_detail::optionOf(setting));
    m_layout->setCacheEnabled(true);
    m_layout->beginLayout();
    for (QTextLine line = m_layout->createLine(); line.isValid(); line = m_layout->createLine()) {
        line.setLineWidth(width);
        line.setPosition(QPointF(0.0, m_height));
        if (m_height == 0.0)
            m_baseline = line.ascent();
        m_height += line.height() * set_text_detail::kLeading;
        m_width = std::max(m_width, line.naturalTextWidth());
    }
    m_layout->endLayout();
}

void SetText::paint(QPainter& painter, QPointF topLeft) const { m_layout->draw(&painter, topLeft); }

}  // namespace fb
