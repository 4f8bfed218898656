#include "app/checkoff/desk_empty.h"

#include <QLabel>
#include <QPushButton>
#include <QStackedLayout>

#include "app/checkoff/calm_page.h"
#include "app/checkoff/desk_offer.h"
#include "app/practice/parts.h"

namespace fb {

DeskEmpty::DeskEmpty(QWidget* parent)
    : QWidget(parent),
      m_stack(new QStackedLayout(this)),
      m_nobody(new CalmPage("noStudents", this)),
      m_title(m_nobody->addWords("noStudentsTitle", "title")),
      m_words(m_nobody->addWords("noStudentsWords", "large")),
      m_useSample(m_nobody->addMain("useSample")),
      m_import(m_nobody->addButton("importFirst")),
      m_offer(new DeskOffer(this))
{
    m_stack->addWidget(m_nobody);
    m_stack->addWidget(m_offer);
    connect(m_useSample, &QPushButton::clicked, this, &DeskEmpty::sampleAsked);
    connect(m_import, &QPushButton::clicked, this, &DeskEmpty::importAsked);
    say();
}

void DeskEmpty::say()
{
    m_title->setText(tr("No students yet"));
    m_words->setText(
        tr("Import your roster, or try everything with an invented college: fifteen students and a sheet, "
           "all of them made up and labelled so."));
    parts::say(m_useSample, tr("Use the sample"));
    parts::say(m_import, tr("Import a roster…"));
    m_offer->say();
}

void DeskEmpty::showState(const CheckOffState& state)
{
    m_useSample->setEnabled(!state.saving);
    m_import->setEnabled(!state.saving);
    m_offer->showState(state);
    m_stack->setCurrentWidget(state.offered ? static_cast<QWidget*>(m_offer) : m_nobody);
}

QWidget* DeskEmpty::first() const
{
    return m_stack->currentWidget() == m_offer ? m_offer->first() : m_useSample;
}

}  // namespace fb
