#include "app/checkoff/desk_note.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

#include "app/look/icons.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/records/backup_words.h"

namespace fb {

DeskNote::DeskNote(QWidget* parent)
    : QWidget(parent),
      m_icon(new QLabel(this)),
      m_words(parts::text(this, "putBackNote")),
      m_close(parts::button(this, "dismissPutBack"))
{
    setObjectName(QStringLiteral("deskNote"));
    m_icon->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
    m_words->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::kNear);
    row->addWidget(m_icon, 0, Qt::AlignTop);
    row->addWidget(m_words, 1);
    row->addWidget(m_close, 0, Qt::AlignTop);
    connect(m_close, &QPushButton::clicked, this, &DeskNote::dismissed);
    say();
}

void DeskNote::say()
{
    //: Puts a note away.
    parts::say(m_close, tr("Close"));
    m_close->setAccessibleName(tr("Close the note"));
}

void DeskNote::showState(const CheckOffState& state)
{
    setVisible(state.putBack.has_value());
    if (state.putBack)
        m_words->setText(putBackText(*state.putBack));
}

void DeskNote::setScheme(const Scheme& scheme)
{
    constexpr int kIconSize = 20;
    m_icon->setPixmap(
        pixmapFor(Icon::Done, scheme.good, parts::scaled(this, kIconSize), devicePixelRatioF()));
}

}  // namespace fb
