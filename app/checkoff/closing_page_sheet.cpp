// The remark that goes along with the rating, and the sheet for the student: see closing_page.h.
#include <QFileInfo>
#include <QPlainTextEdit>

#include "app/checkoff/closing_page.h"
#include "app/checkoff/rating_row.h"
#include "app/checkoff/saved_panel.h"
#include "app/checkoff/sheet_out.h"
#include "app/report/print_choice.h"
#include "app/words/fault_words.h"

namespace fb {

// With the rating it belongs to; before there is one it waits in its field.
void ClosingPage::keepRemark()
{
    const CheckOffState& state = m_presenter.state();
    if (needsRating() && m_rating->rating() && m_remark->toPlainText().trimmed() != state.remark)
        rate();
}

void ClosingPage::holdRemark()
{
    const QString words = m_remark->toPlainText();
    if (words.size() <= kLongestRemark)
        return;
    QTextCursor cursor = m_remark->textCursor();
    const int at = cursor.position();
    m_remark->setPlainText(words.left(kLongestRemark));
    cursor.setPosition(qMin(at, kLongestRemark));
    m_remark->setTextCursor(cursor);
}

void ClosingPage::connectSheet()
{
    connect(m_saved, &SavedPanel::printPressed, this, &ClosingPage::print);
    connect(m_saved, &SavedPanel::pdfPressed, this, &ClosingPage::savePdf);
    connect(m_sheet, &SheetOut::done, this, [this] {
        m_saved->setBusy(false);
        m_saved->tell(m_file.isEmpty() ? tr("Sent to the printer.")
                                       //: %1 is a file's name.
                                       : tr("Saved as %1.").arg(QFileInfo(m_file).fileName()));
    });
    connect(m_sheet, &SheetOut::failed, this, [this](const Fault& fault) {
        m_saved->setBusy(false);
        m_saved->tell(sentenceOf(fault));
    });
}

void ClosingPage::savePdf()
{
    const CheckOffState& state = m_presenter.state();
    if (!state.signedOff || m_sheet->isBusy())
        return;
    const QString name = sheetFileName(state.open->student, state.signedOff->at);
    m_file = m_dialogs.askSaveFile(this, name, SaveKind::Pdf);
    if (m_file.isEmpty())
        return;
    m_saved->setBusy(true);
    m_saved->tell(tr("Writing the sheet…"));
    m_sheet->writePdf(state.signedOff->id, m_file);
}

void ClosingPage::print()
{
    const CheckOffState& state = m_presenter.state();
    if (!state.signedOff || m_sheet->isBusy())
        return;
    const auto chosen = [this, checkOff = state.signedOff->id](const std::shared_ptr<QPrinter>& printer) {
        m_file.clear();
        m_saved->setBusy(true);
        m_saved->tell(tr("Printing the sheet…"));
        m_sheet->print(checkOff, printer);
    };
    if (const auto asked = choosePrinter(this, chosen); !asked)
        m_saved->tell(sentenceOf(asked.error()));
}

}  // namespace fb
