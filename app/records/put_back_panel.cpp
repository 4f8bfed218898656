#include "app/records/put_back_panel.h"

#include <QDir>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/records/backup_words.h"

namespace fb {

PutBackPanel::PutBackPanel(QWidget* parent)
    : QWidget(parent),
      m_file(parts::text(this, "putBackFile")),
      m_holds(parts::text(this, "putBackHolds")),
      m_means(parts::text(this, "putBackMeans")),
      m_accept(parts::mainButton(this, "putBackAccept")),
      m_reject(parts::button(this, "putBackReject"))
{
    setObjectName(QStringLiteral("putBackPanel"));
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, space::kNear, 0, 0);
    rows->setSpacing(space::kTight);
    for (QLabel* each : {m_file, m_holds, m_means})
        rows->addWidget(each);
    auto* buttons = new QHBoxLayout;
    buttons->setContentsMargins(0, space::kTight, 0, 0);
    buttons->setSpacing(space::kNear);
    buttons->addWidget(m_accept);
    buttons->addWidget(m_reject);
    buttons->addStretch(1);
    rows->addLayout(buttons);
    connect(m_accept, &QPushButton::clicked, this, &PutBackPanel::accepted);
    connect(m_reject, &QPushButton::clicked, this, &PutBackPanel::rejected);
    say();
    hide();
}

void PutBackPanel::say()
{
    m_means->setText(
        tr("It takes the place of the present records, whose file is kept aside whole. Assessors and "
           "PINs are then those of the backup, and the records are locked."));
    parts::say(m_accept, tr("Put it back"));
    m_accept->setAccessibleName(tr("Put this backup in the place of the records"));
    parts::say(m_reject, tr("Keep the present records"));
}

void PutBackPanel::showState(const RecordsState& state)
{
    const bool isShown = state.chosenBackup && !state.task;
    const bool appears = isShown && isHidden();
    setVisible(isShown);
    if (!isShown)
        return;
    //: %1 is a file.
    m_file->setText(tr("Chosen: %1").arg(QDir::toNativeSeparators(state.chosenBackup->file)));
    m_holds->setText(holdsText(*state.chosenBackup));
    if (appears)
        m_reject->setFocus();
}

}  // namespace fb
