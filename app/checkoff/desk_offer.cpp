#include "app/checkoff/desk_offer.h"

#include <QDir>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/checkoff/calm_page.h"
#include "app/practice/parts.h"
#include "app/records/backup_words.h"
#include "app/records/records_look.h"

namespace fb {

DeskOffer::DeskOffer(QWidget* parent)
    : QWidget(parent),
      m_page(new CalmPage("backupOffer", this)),
      m_title(m_page->addWords("offerTitle", "title")),
      m_happened(m_page->addWords("offerHappened", "large")),
      m_holds(m_page->addWords("offerHolds", "large")),
      m_kept(m_page->addWords("offerKept", "")),
      m_file(m_page->addWords("offerFile", "small")),
      m_doing(m_page->addWords("offerDoing", "")),
      m_bar(new QProgressBar),
      m_putBack(m_page->addMain("putBack")),
      m_decline(m_page->addButton("beginEmpty")),
      m_cancel(m_page->addButton("cancelPutBack"))
{
    m_bar->setObjectName(QStringLiteral("offerBar"));
    m_bar->setTextVisible(false);
    m_page->addPart(m_bar);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(m_page);
    connect(m_putBack, &QPushButton::clicked, this, &DeskOffer::putBackAsked);
    connect(m_decline, &QPushButton::clicked, this, &DeskOffer::declined);
    connect(m_cancel, &QPushButton::clicked, this, [this] {
        m_isCancelled = true;
        m_doing->setText(tr("It is being cancelled."));
        Q_EMIT cancelAsked();
    });
    say();
}

void DeskOffer::say()
{
    m_title->setText(tr("The records were damaged"));
    m_happened->setText(
        tr("Their file could not be read. It was put aside, and empty records were begun. The last "
           "backup can be put back in their place."));
    m_kept->setText(tr("The present file is kept aside whole, beside the damaged one; nothing is deleted."));
    parts::say(m_putBack, tr("Put the backup back"));
    parts::say(m_decline, tr("Begin with empty records"));
    parts::say(m_cancel, tr("Cancel"));
    m_cancel->setAccessibleName(tr("Cancel putting the backup back"));
    m_bar->setAccessibleName(tr("How far it is"));
}

void DeskOffer::showState(const CheckOffState& state)
{
    const bool works = state.puttingBack.has_value();
    if (state.offered) {
        m_holds->setText(holdsText(*state.offered));
        //: %1 is a file.
        m_file->setText(tr("The backup: %1").arg(QDir::toNativeSeparators(state.offered->file)));
    }
    // Whoever pressed the one button by key has the other under it.
    const bool hadKeys = m_putBack->hasFocus() || m_cancel->hasFocus();
    const bool changes = m_cancel->isHidden() == works;
    for (QWidget* each : std::initializer_list<QWidget*>{m_putBack, m_decline})
        each->setVisible(!works);
    for (QWidget* each : std::initializer_list<QWidget*>{m_doing, m_bar, m_cancel})
        each->setVisible(works);
    m_putBack->setEnabled(!state.saving);
    m_decline->setEnabled(!state.saving);
    if (changes) {
        m_isCancelled = false;
        if (hadKeys)
            first()->setFocus();
    }
    if (works) {
        if (!m_isCancelled)
            m_doing->setText(tr("The backup is being put back: %1.").arg(percentText(*state.puttingBack)));
        m_bar->setValue(*state.puttingBack);
    }
}

QWidget* DeskOffer::first() const { return m_cancel->isHidden() ? m_putBack : m_cancel; }

}  // namespace fb
