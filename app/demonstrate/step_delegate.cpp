#include "app/demonstrate/step_delegate.h"

#include <QLocale>
#include <QPainter>
#include <QTextLayout>

#include "app/look/style.h"
#include "app/look/type.h"

namespace fb {

namespace step_delegate_detail {

constexpr int kLines = 2;
constexpr int kSide = 4;  // px beside a thumbnail, and over it

QFont fontFor(const QStyleOptionViewItem& option, bool isShown)
{
    QFont font = fontOf(Type::Small, textScaleOf(option.font));
    font.setBold(isShown);
    return font;
}

// At most two lines, the second cut with an ellipsis; the tool tip has it whole.
void paintWords(QPainter& painter, const QString& words, const QRectF& box, Qt::LayoutDirection direction)
{
    const QFontMetricsF metrics(painter.font());
    QTextLayout layout(words, painter.font());
    QTextOption wraps(direction == Qt::RightToLeft ? Qt::AlignRight : Qt::AlignLeft);
    wraps.setTextDirection(direction);
    wraps.setWrapMode(QTextOption::WordWrap);
    layout.setTextOption(wraps);
    layout.beginLayout();
    double y = box.top();
    for (int i = 0; i < kLines; ++i) {
        QTextLine line = layout.createLine();
        if (!line.isValid())
            break;
        line.setLineWidth(box.width());
        const QRectF row(box.left(), y, box.width(), metrics.height());
        const QString rest = words.mid(line.textStart());
        const bool isLast = i + 1 == kLines;
        const QString text = isLast ? metrics.elidedText(rest, Qt::ElideRight, box.width())
                                    : words.mid(line.textStart(), line.textLength()).trimmed();
        painter.drawText(row, static_cast<int>(Qt::AlignVCenter | wraps.alignment()), text);
        y += metrics.height();
    }
    layout.endLayout();
}

}  // namespace step_delegate_detail

StepDelegate::StepDelegate(int thumbRole, QObject* parent)
    : QStyledItemDelegate(parent),
      m_thumbRole(thumbRole)
{
}

QSize StepDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const
{
    using namespace step_delegate_detail;
    const QFontMetrics metrics(fontFor(option, true));
    return {m_thumb.width() + 2 * kSide,
            m_thumb.height() + kLines * metrics.height() + 2 * kSide + space::kTight};
}

void StepDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                         const QModelIndex& index) const
{
    using namespace step_delegate_detail;
    const bool isShown = option.state & QStyle::State_Selected;
    painter->save();
    const QRectF frame(QPointF(option.rect.topLeft()) + QPointF(kSide, kSide), QSizeF(m_thumb));
    painter->fillRect(frame, m_scheme.paper);
    const QImage thumb = index.data(m_thumbRole).value<QImage>();
    if (!thumb.isNull())
        painter->drawImage(frame, thumb);
    const double width = isShown ? 3.0 : 1.0;
    const double out = isShown ? 0.5 : -0.5;
    painter->setPen(
        QPen(isShown ? m_scheme.accent : m_scheme.line, width, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    painter->drawRect(frame.adjusted(-out, -out, out, out));
    painter->setFont(fontFor(option, isShown));
    painter->setPen(isShown ? m_scheme.ink : m_scheme.quietInk);
    const QRectF words(frame.left(), frame.bottom() + space::kTight, frame.width(),
                       option.rect.bottom() - frame.bottom());
    //: A step: its number, then its name.
    const QString text = tr("%1 %2").arg(QLocale().toString(index.row() + 1), index.data().toString());
    paintWords(*painter, text, words, option.direction);
    painter->restore();
}

}  // namespace fb
