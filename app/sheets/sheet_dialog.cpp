#include "app/sheets/sheet_dialog.h"

#include <QButtonGroup>
#include <QCheckBox>
#include <QEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QToolButton>

#include "app/doors/background.h"
#include "app/practice/parts.h"
#include "app/sheets/sheet_draw.h"
#include "app/sheets/sheet_file.h"
#include "app/sheets/sheet_items.h"
#include "app/sheets/sheet_rules.h"
#include "app/sheets/sheet_steps.h"
#include "app/words/check_off_words.h"
#include "app/words/fault_words.h"

namespace fb {

SheetDialog::SheetDialog(const Sheet& sheet, Dialogs& dialogs, QWidget* parent)
    : QDialog(parent),
      m_dialogs(dialogs),
      m_heading(parts::text(this, "sheetHeading", "title")),
      m_titleName(parts::text(this, "sheetTitleName")),
      m_title(new QLineEdit(this)),
      m_invented(new QCheckBox(this)),
      m_pages(new QStackedWidget(this)),
      m_parts{new SheetItems, new SheetDraw, new SheetSteps, new SheetRules},
      m_words(parts::text(this, "sheetWords", "small")),
      m_reason(parts::text(this, "sheetReason", "notice")),
      m_fileWords(parts::text(this, "sheetFileWords", "notice")),
      m_open(parts::button(this, "openSheet")),
      m_save(parts::button(this, "saveSheet")),
      m_cancel(parts::button(this, "cancelSheet")),
      m_use(parts::mainButton(this, "useSheet"))
{
    setObjectName(QStringLiteral("sheetDialog"));
    m_title->setObjectName(QStringLiteral("sheetTitle"));
    m_invented->setObjectName(QStringLiteral("sheetInvented"));
    auto* group = new QButtonGroup(this);
    for (std::size_t page = 0; page < m_tabs.size(); ++page) {
        m_tabs[page] =
            parts::toggle(this, ("sheetPage" + QByteArray::number(static_cast<int>(page))).constData());
        group->addButton(m_tabs[page], static_cast<int>(page));
        connect(m_parts[page], &SheetPart::changed, this, &SheetDialog::showState);
    }
    connect(group, &QButtonGroup::idToggled, this, [this](int page, bool on) {
        if (on)
            m_pages->setCurrentIndex(page);
    });
    connect(m_title, &QLineEdit::textChanged, this, &SheetDialog::showState);
    connect(m_invented, &QCheckBox::toggled, this, &SheetDialog::showState);
    connect(m_open, &QPushButton::clicked, this, &SheetDialog::openFile);
    connect(m_save, &QPushButton::clicked, this, &SheetDialog::saveFile);
    connect(m_cancel, &QPushButton::clicked, this, &QDialog::reject);
    connect(m_use, &QPushButton::clicked, this, &SheetDialog::finish);
    layOut();
    fill(sheet);
    say();
    showPage(Page::Items);
}

void SheetDialog::showPage(Page page) { m_tabs[static_cast<std::size_t>(page)]->setChecked(true); }

Result<Sheet> SheetDialog::sheet() const
{
    Sheet sheet = m_base;
    sheet.title = m_title->text().trimmed().toStdString();
    sheet.invented = m_invented->isChecked();
    for (const SheetPart* part : m_parts) {
        if (const auto written = part->writeTo(sheet); !written)
            return tl::unexpected(written.error());
    }
    return checkedSheet(std::move(sheet));
}

void SheetDialog::fill(const Sheet& sheet)
{
    m_filling = true;
    m_base = sheet;
    m_title->setText(QString::fromStdString(sheet.title));
    m_title->setCursorPosition(0);
    m_invented->setChecked(sheet.invented);
    for (SheetPart* part : m_parts)
        part->fill(sheet);
    m_filling = false;
    showState();
}

void SheetDialog::showState()
{
    if (m_filling)
        return;
    const auto now = sheet();
    m_words->setVisible(now.has_value());
    m_reason->setVisible(!now);
    m_use->setEnabled(now.has_value());
    m_save->setEnabled(now.has_value());
    if (now)
        m_words->setText(sheetInWords(*now).join(QStringLiteral(" · ")));
    else
        m_reason->setText(reasonOf(now.error()));
}

// In this dialog a key of the file is a field in sight.
QString SheetDialog::reasonOf(const Fault& fault) const
{
    if (fault.problem == Problem::SheetWrongValue && fault.where == "title")
        return m_title->text().trimmed().isEmpty() ? tr("The sheet has no title; give it one.")
                                                   : tr("The title is too long; shorten it.");
    return sentenceOf(fault);
}

void SheetDialog::openFile()
{
    const QString file = m_dialogs.askSheetFile(this);
    if (file.isEmpty())
        return;
    inBackground<Result<Sheet>>(
        this, [file] { return readSheet(file); },
        [this](const Result<Sheet>& read) {
            tellOfFile(read ? QString() : sentenceOf(read.error()));
            if (read)
                fill(*read);
        });
}

void SheetDialog::saveFile()
{
    const auto now = sheet();
    const QString file = m_dialogs.askSaveFile(this, sheetFileName(*now), SaveKind::Json);
    if (file.isEmpty())
        return;
    inBackground<Result<bool>>(
        this, [file, kept = *now] { return writeSheet(kept, file); },
        [this, file](const Result<bool>& written) {
            tellOfFile(written ? tr("Saved as %1.").arg(file) : sentenceOf(written.error()));
        });
}

void SheetDialog::tellOfFile(const QString& words)
{
    m_fileWords->setText(words);
    m_fileWords->setVisible(!words.isEmpty());
}

void SheetDialog::finish()
{
    Q_EMIT edited(*sheet());
    accept();
}

void SheetDialog::changeEvent(QEvent* event)
{
    QDialog::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
}

}  // namespace fb
