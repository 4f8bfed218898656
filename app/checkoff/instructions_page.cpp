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

// "1 minute 30 seconds": whole seconds, as the clock shows them.
QString timeOf(int seconds, int extraPercent)
{
    constexpr int kWhole = 100;
    constexpr int kMinute = 60;
    const int all = static_cast<int>(std::int64_t{seconds} * (kWhole + extraPercent) / kWhole);
    QStringList parts;
    if (all >= kMinute)
        parts << InstructionsPage::tr("%n minute(s)", nullptr, all / kMinute);
    if (all % kMinute > 0 || parts.isEmpty())
        parts << InstructionsPage::tr("%n second(s)", nullptr, all % kMinute);
    return parts.join(QLatin1Char(' '));
}

QString timeSentence(const Sheet& sheet, int extraPercent)
{
    const QString item = timeOf(sheet.secondsPerItem, extraPercent);
    const QString whole = timeOf(sheet.secondsOnScreen, extraPercent);
    //: Times as "1 minute 30 seconds".
    if (sheet.secondsPerItem > 0 && sheet.secondsOnScreen > 0)
        return InstructionsPage::tr("You have %1 for each site and %2 in all.").arg(item, whole);
    if (sheet.secondsPerItem > 0)
        return InstructionsPage::tr("You have %1 for each site.").arg(item);
    if (sheet.secondsOnScreen > 0)
        return InstructionsPage::tr("You have %1 in all.").arg(whole);
    return InstructionsPage::tr("Take your time: there is no limit.");
}

// What follows on the manikin, and when the student is told.
QString afterwards(const Sheet& sheet, int extraPercent)
{
    const QString told = InstructionsPage::tr("You are told how your marks were at the end.");
    if (sheet.steps.empty())
        return told;
    const QString manikin =
        sheet.secondsOnManikin == 0
            ? InstructionsPage::tr("Then you show the steps of the injection on the manikin.")
            //: %1 is a time as "6 minutes".
            : InstructionsPage::tr("Then you show the steps of the injection on the manikin, in %1.")
                  .arg(timeOf(sheet.secondsOnManikin, extraPercent));
    return manikin + u' ' + told;
}

}  // namespace instructions_page_detail

QStringList instructionsFor(const Sheet& sheet, int extraPercent)
{
    const int count = static_cast<int>(sheet.items.size());
    QStringList lines;
    lines << InstructionsPage::tr("%n site(s) to find, one after the other.", nullptr, count) + u' ' +
                 instructions_page_detail::timeSentence(sheet, extraPercent);
    if (std::ranges::any_of(sheet.items, &SheetItem::byHand))
        lines << InstructionsPage::tr("Some are found by hand: feel for the landmarks and name them, build "
                                      "the site, then mark it.");
    lines << InstructionsPage::tr("Mark the place where the needle belongs. A mark can be moved until you "
                                  "confirm it; then the next site comes.");
    if (sheet.secondsPerItem > 0 || sheet.secondsOnScreen > 0)
        lines << InstructionsPage::tr(
            "A site that is not confirmed in time is not answered. The clock can be "
            "hidden, and goes on all the same.");
    lines << instructions_page_detail::afterwards(sheet, extraPercent);
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
