#include "app/practice/notice.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

#include "app/look/icons.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/fault_words.h"

namespace fb {

Notice::Notice(QWidget* parent)
    : QWidget(parent),
      m_icon(new QLabel(this)),
      m_sentence(parts::text(this, "noticeText")),
      m_close(parts::button(this, "dismissNotice"))
{
    setObjectName(QStringLiteral("notice"));
    m_icon->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
    m_icon->setAlignment(Qt::AlignTop);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::kNear);
    row->addWidget(m_icon, 0, Qt::AlignTop);
    row->addWidget(m_sentence, 1);
    row->addWidget(m_close, 0, Qt::AlignTop);
    connect(m_close, &QPushButton::clicked, this, &Notice::dismissed);
    hide();
}

void Notice::showFault(const std::optional<Fault>& fault)
{
    //: Puts a notice away.
    parts::say(m_close, tr("Close"));
    m_close->setAccessibleName(tr("Close the notice"));
    setVisible(fault.has_value());
    const QString words = fault ? sentenceOf(*fault) : QString();
    if (words == m_sentence->text())
        return;
    m_sentence->setText(words);
    if (words.isEmpty())
        return;
    QAccessibleEvent event(m_sentence, QAccessible::Alert);
    QAccessible::updateAccessibility(&event);
    Q_EMIT spoke(words);
}

void Notice::setScheme(const Scheme& scheme)
{
    constexpr int kIconSize = 20;
    m_icon->setPixmap(
        pixmapFor(Icon::Caution, scheme.danger, parts::scaled(this, kIconSize), devicePixelRatioF()));
}

}  // namespace fb
