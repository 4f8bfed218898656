#include "app/checkoff/reason_dialog.h"

#include <QButtonGroup>
#include <QEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QStringList>
#include <QVBoxLayout>

#include "app/look/style.h"
#include "app/practice/parts.h"

namespace fb {

namespace reason_dialog_detail {

QString titleOf(ReasonFor what)
{
    switch (what) {
    case ReasonFor::Pause: return ReasonDialog::tr("Pause the check-off?");
    case ReasonFor::SafetyStop: return ReasonDialog::tr("Stop for safety?");
    case ReasonFor::Void: return ReasonDialog::tr("Void this check-off?");
    case ReasonFor::NoShow: return ReasonDialog::tr("Did the student not come?");
    }
    return {};
}

QString hintOf(ReasonFor what)
{
    switch (what) {
    case ReasonFor::Pause: return ReasonDialog::tr("The clock stands still until you go on.");
    case ReasonFor::SafetyStop:
        return ReasonDialog::tr("The check-off ends here and is not passed. It uses up an attempt.");
    case ReasonFor::Void:
        return ReasonDialog::tr("The check-off ends here and does not count. It uses up no attempt.");
    case ReasonFor::NoShow:
        return ReasonDialog::tr(
            "It is recorded that the student did not come, and you sign it. The sheet says "
            "whether it uses up an attempt.");
    }
    return {};
}

QString acceptOf(ReasonFor what)
{
    switch (what) {
    case ReasonFor::Pause: return ReasonDialog::tr("Pause");
    case ReasonFor::SafetyStop: return ReasonDialog::tr("Stop now");
    case ReasonFor::Void: return ReasonDialog::tr("Void");
    case ReasonFor::NoShow: return ReasonDialog::tr("Record it");
    }
    return {};
}

QStringList usualOf(ReasonFor what)
{
    switch (what) {
    case ReasonFor::Pause:
        return {ReasonDialog::tr("The student needs a break"), ReasonDialog::tr("Interruption in the room"),
                ReasonDialog::tr("Trouble with the equipment")};
    case ReasonFor::SafetyStop:
        return {ReasonDialog::tr("A person could have been hurt"),
                ReasonDialog::tr("Uncapped or used needle handled unsafely"),
                ReasonDialog::tr("The student is not well enough to go on")};
    case ReasonFor::Void:
        return {ReasonDialog::tr("Computer or equipment failed"), ReasonDialog::tr("Wrong student chosen"),
                ReasonDialog::tr("Wrong sheet chosen")};
    case ReasonFor::NoShow: break;  // is a reason itself
    }
    return {};
}

}  // namespace reason_dialog_detail

using namespace reason_dialog_detail;

ReasonDialog::ReasonDialog(ReasonFor what, QWidget* parent)
    : QDialog(parent),
      m_what(what),
      m_title(parts::text(this, "reasonTitle", "title")),
      m_hint(parts::text(this, "reasonHint")),
      m_group(new QButtonGroup(this)),
      m_ownName(parts::text(this, "ownReasonName", "small")),
      m_own(new QLineEdit(this)),
      m_back(parts::button(this, "reasonBack")),
      m_accept(parts::mainButton(this, "reasonAccept"))
{
    setObjectName(QStringLiteral("reasonDialog"));
    m_own->setObjectName(QStringLiteral("ownReason"));
    m_own->setMaxLength(kLongestReason);
    const auto count = usualOf(what).size();
    for (qsizetype i = 0; i < count; ++i) {
        auto* usual = new QRadioButton(this);
        usual->setObjectName(QStringLiteral("reason%1").arg(i));
        m_group->addButton(usual);
        m_usual.push_back(usual);
    }
    m_ownName->setVisible(!m_usual.empty());
    m_own->setVisible(!m_usual.empty());
    layOut();
    connect(m_group, &QButtonGroup::buttonClicked, this, [this] {
        m_own->clear();
        showState();
    });
    connect(m_own, &QLineEdit::textEdited, this, &ReasonDialog::showState);
    connect(m_back, &QPushButton::clicked, this, &QDialog::reject);
    connect(m_accept, &QPushButton::clicked, this, &QDialog::accept);
    m_accept->setDefault(true);
    say();
    showState();
}

void ReasonDialog::layOut()
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kMargin, space::kMargin, space::kMargin, space::kMargin);
    column->setSpacing(space::kNear);
    column->addWidget(m_title);
    column->addWidget(m_hint);
    column->addSpacing(space::kNear);
    for (QRadioButton* usual : m_usual)
        column->addWidget(usual);
    column->addWidget(m_ownName);
    column->addWidget(m_own);
    column->addSpacing(space::kApart);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(space::kNear);
    buttons->addStretch(1);
    buttons->addWidget(m_back);
    buttons->addWidget(m_accept);
    column->addLayout(buttons);
    constexpr int kWidth = 480;
    setMinimumWidth(parts::scaled(this, kWidth));
}

void ReasonDialog::say()
{
    setWindowTitle(titleOf(m_what));
    m_title->setText(titleOf(m_what));
    m_hint->setText(hintOf(m_what));
    const QStringList words = usualOf(m_what);
    for (std::size_t i = 0; i < m_usual.size(); ++i) {
        m_usual[i]->setText(words[static_cast<qsizetype>(i)]);
        m_usual[i]->setAccessibleName(m_usual[i]->text());
    }
    m_ownName->setText(tr("Or in your own words"));
    m_own->setAccessibleName(tr("Reason in your own words"));
    parts::say(m_back, tr("Back"));
    parts::say(m_accept, acceptOf(m_what));
}

QString ReasonDialog::reason() const
{
    const QString own = m_own->text().trimmed();
    const auto* chosen = m_group->checkedButton();
    return own.isEmpty() && chosen ? chosen->text() : own;
}

// What is typed takes the place of what was chosen.
void ReasonDialog::showState()
{
    if (!m_own->text().isEmpty() && m_group->checkedButton()) {
        m_group->setExclusive(false);
        m_group->checkedButton()->setChecked(false);
        m_group->setExclusive(true);
    }
    m_accept->setEnabled(m_usual.empty() || !reason().isEmpty());
}

void ReasonDialog::ask(ReasonFor what, QWidget* parent, std::function<void(const QString&)> then)
{
    auto* dialog = new ReasonDialog(what, parent);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::accepted, parent, [dialog, then = std::move(then)] { then(dialog->reason()); });
    dialog->open();
}

void ReasonDialog::changeEvent(QEvent* event)
{
    QDialog::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
}

}  // namespace fb
