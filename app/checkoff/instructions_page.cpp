#include "app/checkoff/instructions_page.h"

#include <QEvent>
#include <QLabel>
#include <QPushButton>
#include <algorithm>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/check_off_words.h"

namespace fb {

namespace instructions_page_detail {

QString timeOf(int seconds, int extraPercent)
{
    constexpr int kMsPerPercent = 10;  // of a second
    return clockText(Ms{std::int64_t{seconds} * kMsPerPercent * (100 + extraPercent)});
}

QString timeSentence(const Sheet& sheet, int extraPercent)
{
    const QString item = timeOf(sheet.secondsPerItem, extraPercent);
    const QString whole = timeOf(sheet.secondsOnScreen, extraPercent);
    //: Times as 1:30, minutes and seconds.
    if (sheet.secondsPerItem > 0 && sheet.secondsOnScreen > 0)
        return InstructionsPage::tr("You have %1 for each item and %2 in all.").arg(item, whole);
    if (sheet.secondsPerItem > 0)
        return InstructionsPage::tr("You have %1 for each item.").arg(item);
    if (sheet.secondsOnScreen > 0)
        return InstructionsPage::tr("You have %1 in all.").arg(whole);
    return InstructionsPage::tr("Take your time: none is set.");
}

}  // namespace instructions_page_detail

QStringList instructionsFor(const Sheet& sheet, int extraPercent)
{
    const int count = static_cast<int>(sheet.items.size());
    QStringList lines;
    lines << InstructionsPage::tr("%n item(s), one after the other.", nullptr, count) + u' ' +
                 instructions_page_detail::timeSentence(sheet, extraPercent);
    if (std::ranges::any_of(sheet.items, &SheetItem::byHand))
        lines << InstructionsPage::tr("Some are found by hand: feel for the landmarks and name them, build "
                                      "the site, then mark it.");
    lines << InstructionsPage::tr("Mark the place where the needle belongs. A mark can be moved until you "
                                  "confirm it; then the next item comes.");
    lines << InstructionsPage::tr("Nothing is told of your marks before the end.");
    if (sheet.secondsPerItem > 0 || sheet.secondsOnScreen > 0)
        lines << InstructionsPage::tr("The clock can be hidden, and goes on all the same.");
    return lines;
}

InstructionsPage::InstructionsPage(CheckOffPresenter& presenter, QWidget* parent)
    : CalmPage("instructionsPage", parent),
      m_presenter(presenter),
      m_title(addWords("instructionsTitle", "title")),
      m_words(addWords("instructions", "large")),
      m_begin(addMain("beginItems"))
{
    connect(&presenter, &CheckOffPresenter::changed, this, &InstructionsPage::showState);
    connect(m_begin, &QPushButton::clicked, &presenter, &CheckOffPresenter::startItems);
    showState();
}

void InstructionsPage::showState()
{
    const CheckOffState& state = m_presenter.state();
    m_title->setText(tr("Before you begin"));
    parts::say(m_begin, tr("Begin"));
    m_begin->setEnabled(!state.saving);
    if (!state.open || state.stage != CheckOffStage::Instructions)
        return;
    const QStringList lines = instructionsFor(state.open->sheet.sheet, state.open->order.extraPercent);
    m_words->setText(lines.join(QStringLiteral("\n\n")));
}

void InstructionsPage::focusFirst() { m_begin->setFocus(); }

void InstructionsPage::changeEvent(QEvent* event)
{
    CalmPage::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        showState();
}

}  // namespace fb
