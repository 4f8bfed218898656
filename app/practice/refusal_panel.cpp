#include "app/practice/refusal_panel.h"

#include <QEvent>
#include <QLabel>
#include <QRadioButton>
#include <QVBoxLayout>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/finding_words.h"

namespace fb {

RefusalPanel::RefusalPanel(QWidget* parent)
    : QWidget(parent),
      m_title(parts::text(this, "refusalTitle", "request")),
      m_hint(parts::text(this, "refusalHint", "small"))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kTight);
    column->addWidget(m_title);
    column->addWidget(m_hint);
    column->addSpacing(space::kTight);
    for (int i = 0; i < kFindingCodeCount; ++i) {
        const std::string_view word = wordOf(findingAt(i));
        QRadioButton*& reason = m_reasons[static_cast<std::size_t>(i)];
        reason = new QRadioButton(this);
        reason->setObjectName(
            QStringLiteral("reason.%1").arg(QLatin1String(word.data(), static_cast<qsizetype>(word.size()))));
        column->addWidget(reason);
        connect(reason, &QRadioButton::toggled, this, [this](bool on) {
            if (on)
                Q_EMIT reasonChosen();
        });
    }
    say();
}

void RefusalPanel::say()
{
    //: Above a list of reasons: the learner says that this site must not be used.
    m_title->setText(tr("Not here, because of"));
    m_hint->setText(tr("Choose what the chart gives as the reason, then confirm."));
    for (int i = 0; i < kFindingCodeCount; ++i) {
        QRadioButton* reason = m_reasons[static_cast<std::size_t>(i)];
        reason->setText(findingName(findingAt(i)));
        reason->setAccessibleName(reason->text());
    }
}

void RefusalPanel::clear()
{
    for (QRadioButton* reason : m_reasons) {
        // Of buttons that exclude each other one stays pressed unless they are let go first.
        reason->setAutoExclusive(false);
        reason->setChecked(false);
        reason->setAutoExclusive(true);
    }
}

std::optional<FindingCode> RefusalPanel::reason() const
{
    for (int i = 0; i < kFindingCodeCount; ++i) {
        if (m_reasons[static_cast<std::size_t>(i)]->isChecked())
            return findingAt(i);
    }
    return std::nullopt;
}

void RefusalPanel::focusFirst() { m_reasons.front()->setFocus(); }

void RefusalPanel::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
}

}  // namespace fb
