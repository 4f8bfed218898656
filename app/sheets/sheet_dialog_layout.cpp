#include <QCheckBox>
#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QShowEvent>
#include <QStackedWidget>
#include <QToolButton>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/sheets/sheet_dialog.h"
#include "app/sheets/sheet_part.h"

namespace fb {

namespace sheet_dialog_detail {

// What is too high for the screen scrolls.
QScrollArea* scrolled(QWidget* whole, QWidget* parent)
{
    auto* area = new QScrollArea(parent);
    area->setFrameShape(QFrame::NoFrame);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    whole->setContentsMargins(0, space::kNear, space::kNear, space::kNear);
    area->setWidget(whole);
    parts::followFocus(area);
    return area;
}

}  // namespace sheet_dialog_detail

void SheetDialog::layOut()
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kMargin, space::kMargin, space::kMargin, space::kMargin);
    column->setSpacing(space::kNear);
    column->addWidget(m_heading);
    column->addWidget(parts::rule(this));
    auto* title = new QHBoxLayout;
    title->setSpacing(space::kApart);
    m_titleName->setWordWrap(false);
    title->addWidget(m_titleName);
    title->addWidget(m_title, 1);
    title->addWidget(m_invented);
    column->addLayout(title);
    auto* tabs = new QHBoxLayout;
    tabs->setSpacing(space::kApart);
    for (QToolButton* tab : m_tabs)
        tabs->addWidget(tab);
    tabs->addStretch(1);
    column->addLayout(tabs);
    for (SheetPart* part : m_parts)
        m_pages->addWidget(sheet_dialog_detail::scrolled(part, m_pages));
    column->addWidget(m_pages, 1);
    column->addWidget(parts::rule(this));
    column->addWidget(m_words);
    column->addWidget(m_reason);
    column->addWidget(m_fileWords);
    m_fileWords->hide();
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(space::kNear);
    buttons->addWidget(m_open);
    buttons->addWidget(m_save);
    buttons->addStretch(1);
    buttons->addWidget(m_cancel);
    buttons->addWidget(m_use);
    column->addLayout(buttons);
}

void SheetDialog::say()
{
    setWindowTitle(tr("Edit the sheet"));
    m_heading->setText(tr("Edit the sheet"));
    m_titleName->setText(tr("Title"));
    m_title->setAccessibleName(tr("Title of the sheet"));
    //: Of a sheet: sample data, not a lab's own.
    m_invented->setText(tr("Invented, to try out"));
    m_invented->setAccessibleName(m_invented->text());
    //: Parts of the sheet, as tabs.
    const std::array words{tr("Items on screen"), tr("Patients and time"), tr("Steps on the manikin"),
                           tr("Passing and attempts")};
    for (std::size_t page = 0; page < m_tabs.size(); ++page)
        parts::say(m_tabs[page], words[page]);
    for (SheetPart* part : m_parts)
        part->say();
    parts::say(m_open, tr("Open a file…"));
    parts::say(m_save, tr("Save as a file…"));
    parts::say(m_cancel, tr("Cancel"));
    parts::say(m_use, tr("Use this sheet"));
    showState();
}

void SheetDialog::showEvent(QShowEvent* event)
{
    constexpr QSize kUsual{1000, 680};
    constexpr double kShare = 0.92;
    const QSize most =
        (parentWidget() ? parentWidget()->window()->size() : screen()->availableSize()) * kShare;
    resize(QSize(parts::columnWidth(this, kUsual.width()), parts::columnWidth(this, kUsual.height()))
               .boundedTo(most));
    QDialog::showEvent(event);
}

}  // namespace fb
