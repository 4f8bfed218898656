#include "app/checkoff/pin_dialog.h"

#include <QEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/records/pin_field.h"
#include "app/words/fault_words.h"

namespace fb {

PinDialog::PinDialog(RecordKeeper& records, const std::vector<Assessor>& assessors, QWidget* parent)
    : QDialog(parent),
      m_records(records),
      m_title(parts::text(this, "pinDialogTitle", "title")),
      m_hint(parts::text(this, "pinDialogHint")),
      m_pin(new PinField(QStringLiteral("guard"), this)),
      m_told(parts::text(this, "pinDialogTold")),
      m_back(parts::button(this, "pinBack")),
      m_open(parts::mainButton(this, "pinOpen"))
{
    setObjectName(QStringLiteral("pinDialog"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kMargin, space::kMargin, space::kMargin, space::kMargin);
    column->setSpacing(space::kApart);
    for (QWidget* part : std::initializer_list<QWidget*>{m_title, m_hint, m_pin, m_told})
        column->addWidget(part);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(space::kNear);
    buttons->addStretch(1);
    buttons->addWidget(m_back);
    buttons->addWidget(m_open);
    column->addLayout(buttons);
    constexpr int kWidth = 460;
    setMinimumWidth(parts::scaled(this, kWidth));
    m_pin->showAssessors(assessors);
    m_told->hide();
    connect(m_pin, &PinField::entered, this, &PinDialog::prove);
    connect(m_open, &QPushButton::clicked, this, &PinDialog::prove);
    connect(m_back, &QPushButton::clicked, this, &QDialog::reject);
    // Enter in the field proves by itself; as the default button it would do so twice.
    m_open->setAutoDefault(false);
    m_back->setAutoDefault(false);
    say();
}

void PinDialog::say()
{
    setWindowTitle(tr("Assessors only"));
    m_title->setText(tr("Assessors only"));
    m_hint->setText(tr("Sheets and the roster are changed by assessors. Who are you?"));
    m_pin->say(tr("Assessor"));
    parts::say(m_back, tr("Back"));
    parts::say(m_open, tr("Go on"));
    if (m_fault)
        m_told->setText(sentenceOf(*m_fault));
}

void PinDialog::prove()
{
    if (m_asking)
        return;
    if (m_pin->assessor() == 0 || m_pin->pin().isEmpty())
        return m_pin->focusPin();
    m_asking = true;
    m_open->setEnabled(false);
    m_records.prove(m_pin->assessor(), m_pin->pin(), this,
                    [this](const Result<Proof>& proof) { take(proof); });
}

void PinDialog::take(const Result<Proof>& proof)
{
    m_asking = false;
    m_open->setEnabled(true);
    m_pin->clearPin();
    if (proof)
        return accept();
    m_fault = proof.error();
    m_pin->setWrong(true);
    m_told->show();
    say();
    // A window does not grow by itself for words that wrap.
    resize(width(), std::max(height(), layout()->totalHeightForWidth(width())));
    m_pin->focusPin();
}

void PinDialog::ask(RecordKeeper& records, const std::vector<Assessor>& assessors, QWidget* parent,
                    std::function<void()> then)
{
    if (assessors.empty())
        return then();
    auto* dialog = new PinDialog(records, assessors, parent);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::accepted, parent, std::move(then));
    dialog->open();
}

void PinDialog::showEvent(QShowEvent* event)
{
    QDialog::showEvent(event);
    m_pin->focusPin();
}

void PinDialog::changeEvent(QEvent* event)
{
    QDialog::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
}

}  // namespace fb
