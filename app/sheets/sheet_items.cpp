#include "app/sheets/sheet_items.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QLocale>
#include <QPushButton>
#include <QSignalBlocker>
#include <algorithm>
#include <utility>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/sheets/sheet_fields.h"
#include "app/words/check_off_words.h"
#include "app/words/site_words.h"
#include "core/session/sheet_defaults.h"

namespace fb {

namespace sheet_items_detail {

constexpr int kDrawnSide = -1;

// The combos hold every enumerator once; words come with the language.
template <class Values>
void offer(QComboBox* choice, const Values& values)
{
    for (const auto value : values)
        choice->addItem({}, static_cast<int>(value));
}

}  // namespace sheet_items_detail

SheetItems::SheetItems(QWidget* parent)
    : SheetPart(parent),
      m_list(new QListWidget(this)),
      m_add(parts::button(this, "addItem")),
      m_remove(parts::button(this, "removeItem")),
      m_up(parts::button(this, "itemUp")),
      m_down(parts::button(this, "itemDown")),
      m_one(fieldsOfOne())
{
    m_list->setObjectName(QStringLiteral("sheetItems"));
    m_list->setWordWrap(true);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setStyleSheet(
        QStringLiteral("QListWidget { background: transparent; border-color: palette(mid); }"
                       "QListWidget::item { padding: 7px 8px; }"));
    connect(m_list, &QListWidget::currentRowChanged, this, [this] {
        showOne();
        showButtons();
    });
    connect(m_add, &QPushButton::clicked, this, &SheetItems::add);
    connect(m_remove, &QPushButton::clicked, this, &SheetItems::remove);
    connect(m_up, &QPushButton::clicked, this, [this] { move(-1); });
    connect(m_down, &QPushButton::clicked, this, [this] { move(1); });
    layOut();
    say();
}

void SheetItems::layOut()
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::kBroad);
    auto* list = new QVBoxLayout;
    list->setSpacing(space::kNear);
    list->addWidget(m_list, 1);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(space::kNear);
    for (QPushButton* button : {m_add, m_remove, m_up, m_down})
        buttons->addWidget(button);
    buttons->addStretch(1);
    list->addLayout(buttons);
    row->addLayout(list, 3);
    row->addWidget(m_one, 2, Qt::AlignTop);
}

QWidget* SheetItems::fieldsOfOne()
{
    using namespace sheet_items_detail;
    auto* whole = new QWidget(this);
    auto* column = new QVBoxLayout(whole);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kTight);
    const auto field = [&](QLabel*& name, QComboBox*& choice, const char* id) {
        name = parts::text(whole, (QByteArray(id) + "Name").constData(), "small");
        choice = fields::choice(whole, id);
        column->addWidget(name);
        column->addWidget(choice);
        column->addSpacing(space::kTight);
    };
    field(m_siteName, m_site, "itemSite");
    field(m_sideName, m_side, "itemSide");
    field(m_viewName, m_view, "itemView");
    field(m_helpName, m_help, "itemHelp");
    m_byHand = fields::tick(whole, "itemByHand");
    column->addWidget(m_byHand);
    offer(m_site, kSites);
    m_side->addItem({}, kDrawnSide);
    offer(m_side, kSides);
    for (int help = 0; help < kHelpLevelCount; ++help)
        m_help->addItem({}, help);
    connect(m_site, &QComboBox::currentIndexChanged, this, [this] {
        if (!m_filling)
            fillViews();
        takeOne();
    });
    for (QComboBox* choice : {m_side, m_view, m_help})
        connect(choice, &QComboBox::currentIndexChanged, this, &SheetItems::takeOne);
    connect(m_byHand, &QCheckBox::toggled, this, &SheetItems::takeOne);
    return whole;
}

void SheetItems::say()
{
    m_list->setAccessibleName(tr("Items"));
    parts::say(m_add, tr("Add"));
    parts::say(m_remove, tr("Remove"));
    //: Moves an item of the list.
    parts::say(m_up, tr("Up"));
    //: Moves an item of the list.
    parts::say(m_down, tr("Down"));
    fields::say(m_siteName, m_site, tr("Site"));
    fields::say(m_sideName, m_side, tr("Side"));
    fields::say(m_viewName, m_view, tr("View"));
    fields::say(m_helpName, m_help, tr("Help"));
    fields::say(m_byHand, tr("Found by the student’s own hand"));
    for (const Site site : kSites)
        m_site->setItemText(m_site->findData(static_cast<int>(site)), parts::alone(siteName(site)));
    //: The side of the body is drawn with each patient.
    m_side->setItemText(0, tr("Either, drawn with the patient"));
    for (const Side side : kSides)
        m_side->setItemText(m_side->findData(static_cast<int>(side)), parts::alone(sideName(side)));
    for (int help = 0; help < kHelpLevelCount; ++help)
        m_help->setItemText(help, helpLevelName(static_cast<HelpLevel>(help)));
    showList(current());
}

void SheetItems::fill(const Sheet& sheet)
{
    m_items = sheet.items;
    showList(0);
}

Result<bool> SheetItems::writeTo(Sheet& sheet) const
{
    sheet.items = m_items;
    return true;
}

int SheetItems::current() const { return m_list->currentRow(); }

void SheetItems::showList(int current)
{
    {
        const QSignalBlocker quiet(m_list);
        m_list->clear();
        for (std::size_t i = 0; i < m_items.size(); ++i)
            //: One item of a sheet: its number and what is asked.
            m_list->addItem(
                tr("%1. %2").arg(QLocale().toString(static_cast<int>(i) + 1), itemName(m_items[i])));
        m_list->setCurrentRow(std::clamp(current, 0, std::max(0, m_list->count() - 1)));
    }
    showOne();
    showButtons();
}

void SheetItems::showOne()
{
    const int index = current();
    m_one->setEnabled(index >= 0);
    if (index < 0)
        return;
    const SheetItem& item = m_items[static_cast<std::size_t>(index)];
    m_filling = true;
    fields::choose(m_site, static_cast<int>(item.site));
    fields::choose(m_side, item.side ? static_cast<int>(*item.side) : sheet_items_detail::kDrawnSide);
    fillViews();
    fields::choose(m_view, static_cast<int>(item.view));
    fields::choose(m_help, static_cast<int>(item.help));
    m_byHand->setChecked(item.byHand);
    m_help->setEnabled(!item.byHand);
    m_filling = false;
}

// Only views in which the site may be marked.
void SheetItems::fillViews()
{
    const QSignalBlocker quiet(m_view);
    m_view->clear();
    for (const View view : askedViews(static_cast<Site>(fields::chosen(m_site))))
        m_view->addItem(viewName(view), static_cast<int>(view));
}

void SheetItems::takeOne()
{
    const int index = current();
    if (m_filling || index < 0)
        return;
    SheetItem& item = m_items[static_cast<std::size_t>(index)];
    item.site = static_cast<Site>(fields::chosen(m_site));
    const int side = fields::chosen(m_side);
    item.side =
        side == sheet_items_detail::kDrawnSide ? std::nullopt : std::optional(static_cast<Side>(side));
    item.view = static_cast<View>(fields::chosen(m_view));
    item.help = static_cast<HelpLevel>(fields::chosen(m_help));
    item.byHand = m_byHand->isChecked();
    showList(index);
    Q_EMIT changed();
}

void SheetItems::add()
{
    // Like the chosen one, which is mostly what is wanted next.
    const int index = current();
    const SheetItem item = index < 0 ? SheetItem{Site::Deltoid, {}, askedViews(Site::Deltoid).front()}
                                     : m_items[static_cast<std::size_t>(index)];
    m_items.insert(m_items.begin() + index + 1, item);
    showList(index + 1);
    Q_EMIT changed();
}

void SheetItems::remove()
{
    const int index = current();
    m_items.erase(m_items.begin() + index);
    showList(index);
    Q_EMIT changed();
}

void SheetItems::move(int by)
{
    const int index = current();
    std::swap(m_items[static_cast<std::size_t>(index)], m_items[static_cast<std::size_t>(index + by)]);
    showList(index + by);
    Q_EMIT changed();
}

void SheetItems::showButtons()
{
    const int index = current();
    const int count = static_cast<int>(m_items.size());
    m_add->setEnabled(count < kSheetMostItems);
    m_remove->setEnabled(index >= 0);
    m_up->setEnabled(index > 0);
    m_down->setEnabled(index >= 0 && index + 1 < count);
}

}  // namespace fb
