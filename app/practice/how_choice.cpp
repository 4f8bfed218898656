#include "app/practice/how_choice.h"

#include <QEvent>
#include <QLabel>
#include <QRadioButton>
#include <QVBoxLayout>

#include "app/look/style.h"
#include "app/practice/parts.h"

namespace fb {

HowChoice::HowChoice(QWidget* parent)
    : QWidget(parent),
      m_name(parts::text(this, "runHowName")),
      m_mark(new QRadioButton(this)),
      m_hand(new QRadioButton(this)),
      m_note(parts::text(this, "runHowNote", "small"))
{
    m_mark->setObjectName(QStringLiteral("runMarksOnly"));
    m_hand->setObjectName(QStringLiteral("runByHand"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kTight);
    for (QWidget* part : std::initializer_list<QWidget*>{m_name, m_mark, m_hand, m_note})
        column->addWidget(part);
    m_mark->setChecked(true);
    connect(m_hand, &QRadioButton::toggled, this, [this] {
        say();
        Q_EMIT changed();
    });
    say();
}

void HowChoice::setByHand(bool byHand) { (byHand ? m_hand : m_mark)->setChecked(true); }

bool HowChoice::isByHand() const { return m_hand->isChecked(); }

void HowChoice::say()
{
    //: In which way the sites of a run are found.
    m_name->setText(tr("How"));
    m_mark->setText(tr("Mark the site"));
    m_hand->setText(tr("Find it by hand, then mark"));
    for (QRadioButton* way : {m_mark, m_hand})
        way->setAccessibleName(way->text());
    m_note->setText(isByHand() ? tr("Nothing is drawn: feel for the landmarks, build the site, mark it.")
                               : tr("The mark alone is graded."));
}

void HowChoice::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
}

}  // namespace fb
