#include "app/practice/build_panel.h"

#include <QComboBox>
#include <QEvent>
#include <QLabel>
#include <QListWidget>
#include <QSignalBlocker>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/look/icons.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/build_words.h"

namespace fb {

namespace build_panel_detail {

constexpr int kIcon = 16;
constexpr int kTwo = 2;
constexpr int kThree = 3;

QString rowName(ThighRow row)
{
    switch (row) {
    //: Of the thigh between the lines across it.
    case ThighRow::Upper: return BuildPanel::tr("Upper row");
    case ThighRow::Middle: return BuildPanel::tr("Middle row");
    case ThighRow::Lower: return BuildPanel::tr("Lower row");
    }
    return {};
}

QString columnName(ThighColumn column)
{
    switch (column) {
    //: Of the thigh beside and between the front line and the outer line.
    case ThighColumn::Inside: return BuildPanel::tr("Inside the front line");
    case ThighColumn::Between: return BuildPanel::tr("Between the two lines");
    case ThighColumn::Behind: return BuildPanel::tr("Behind the outer line");
    }
    return {};
}

}  // namespace build_panel_detail

using namespace build_panel_detail;

BuildPanel::BuildPanel(QWidget* parent)
    : QWidget(parent),
      m_due(parts::text(this, "buildDue", "request")),
      m_either{parts::toggle(this, "chooseFirst"), parts::toggle(this, "chooseSecond")},
      m_cellName(parts::text(this, "cellName", "small")),
      m_row(new QComboBox(this)),
      m_column(new QComboBox(this)),
      m_list(new QListWidget(this))
{
    m_row->setObjectName(QStringLiteral("cellRow"));
    m_column->setObjectName(QStringLiteral("cellColumn"));
    m_list->setObjectName(QStringLiteral("handles"));
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setFrameShape(QFrame::NoFrame);
    for (QToolButton* either : m_either) {
        // In the bordered look of a choice.
        either->setProperty("look", QString());
        either->setToolButtonStyle(Qt::ToolButtonTextOnly);
        either->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    }
    layOut();
    connectAll();
    say();
}

void BuildPanel::layOut()
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kNear);
    column->addWidget(m_due);
    column->addLayout(choices());
    column->addWidget(m_list);
    column->addWidget(m_cellName);
    for (QComboBox* box : {m_row, m_column}) {
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        column->addWidget(box);
    }
}

QLayout* BuildPanel::choices()
{
    auto* row = new QHBoxLayout;
    row->setSpacing(space::kNear);
    for (QToolButton* either : m_either)
        row->addWidget(either, 1);
    return row;
}

void BuildPanel::connectAll()
{
    connect(m_either[0], &QToolButton::clicked, this, [this] { choose(false); });
    connect(m_either[1], &QToolButton::clicked, this, [this] { choose(true); });
    connect(m_row, &QComboBox::activated, this, &BuildPanel::chooseCell);
    connect(m_column, &QComboBox::activated, this, &BuildPanel::chooseCell);
    connect(m_list, &QListWidget::currentRowChanged, this, &BuildPanel::chooseHandle);
}

void BuildPanel::say()
{
    m_cellName->setText(choiceName(BuildChoice::WhichCell));
    const QSignalBlocker rowQuiet(m_row);
    const QSignalBlocker columnQuiet(m_column);
    m_row->clear();
    m_column->clear();
    for (int i = 0; i < kRows; ++i)
        m_row->addItem(rowName(static_cast<ThighRow>(i)));
    for (int i = 0; i < kColumns; ++i)
        m_column->addItem(columnName(static_cast<ThighColumn>(i)));
    m_row->setPlaceholderText(tr("Row"));
    m_column->setPlaceholderText(tr("Column"));
    m_row->setCurrentIndex(-1);
    m_column->setCurrentIndex(-1);
    // Until a request says which choice they are.
    for (std::size_t i = 0; i < m_either.size(); ++i)
        parts::say(m_either[i], handName(i > 0 ? Side::Right : Side::Left));
    m_row->setAccessibleName(tr("Row of the field"));
    m_column->setAccessibleName(tr("Column of the field"));
    m_list->setAccessibleName(tr("Parts of the construction"));
    m_handles.clear();
}

void BuildPanel::choose(bool second)
{
    if (m_choice == BuildChoice::WhichHand)
        Q_EMIT handChosen(second ? Side::Right : Side::Left);
    else
        Q_EMIT fingersChosen(second ? kThree : kTwo);
}

void BuildPanel::chooseCell()
{
    if (m_row->currentIndex() >= 0 && m_column->currentIndex() >= 0)
        Q_EMIT cellChosen({static_cast<ThighRow>(m_row->currentIndex()),
                           static_cast<ThighColumn>(m_column->currentIndex())});
}

void BuildPanel::chooseHandle(int row)
{
    if (row >= 0 && row < static_cast<int>(m_handles.size()))
        Q_EMIT handleChosen(m_handles[static_cast<std::size_t>(row)]);
}

QString BuildPanel::dueText(const PracticeState& state) const
{
    const ByHandState& byHand = *state.byHand;
    if (byHand.asksChoice)
        return choiceInstruction(*byHand.choice);
    if (byHand.next)
        return handleInstruction(*byHand.next, state.convention);
    return tr("Everything is set. Move what is not right yet, or go on to mark.");
}

void BuildPanel::showState(const PracticeState& state)
{
    if (!state.byHand)
        return;
    m_due->setText(dueText(state));
    showChoice(*state.byHand);
    showHandles(*state.byHand);
}

void BuildPanel::showChoice(const ByHandState& byHand)
{
    m_choice = byHand.choice;
    const bool hands = m_choice == BuildChoice::WhichHand;
    const bool fingers = m_choice == BuildChoice::HowManyFingers;
    for (std::size_t i = 0; i < m_either.size(); ++i) {
        const bool second = i > 0;
        m_either[i]->setVisible(hands || fingers);
        parts::say(m_either[i], hands ? handName(second ? Side::Right : Side::Left)
                                      : fingerCountName(second ? kThree : kTwo));
        const bool byHandChosen = byHand.build.hand && (byHand.build.hand->hand == Side::Right) == second;
        const bool byCount = byHand.build.fingers && (byHand.build.fingers->count == kThree) == second;
        m_either[i]->setChecked(hands ? byHandChosen : byCount);
    }
    const bool grid = m_choice == BuildChoice::WhichCell;
    const bool laid =
        std::ranges::all_of(byHand.handles, [](const BuildHandle& each) { return each.isDone; });
    for (QWidget* part : std::initializer_list<QWidget*>{m_cellName, m_row, m_column}) {
        part->setVisible(grid);
        part->setEnabled(laid);
    }
    if (byHand.build.cell) {
        m_row->setCurrentIndex(static_cast<int>(byHand.build.cell->row));
        m_column->setCurrentIndex(static_cast<int>(byHand.build.cell->column));
    } else if (!laid || (m_row->currentIndex() >= 0 && m_column->currentIndex() >= 0)) {
        m_row->setCurrentIndex(-1);
        m_column->setCurrentIndex(-1);
    }
}

void BuildPanel::showHandles(const ByHandState& byHand)
{
    const QSignalBlocker quiet(m_list);
    if (!std::ranges::equal(m_handles, byHand.handles, {}, {}, &BuildHandle::handle)) {
        m_list->clear();
        m_handles.clear();
        for (const BuildHandle& each : byHand.handles) {
            m_list->addItem(new QListWidgetItem);
            m_handles.push_back(each.handle);
        }
    }
    fitList();
    sayHandles(byHand);
}

void BuildPanel::sayHandles(const ByHandState& byHand)
{
    const QIcon done = doneIcon();
    QPixmap none(m_list->iconSize());
    none.fill(Qt::transparent);
    int current = -1;
    for (std::size_t i = 0; i < byHand.handles.size(); ++i) {
        const BuildHandle& each = byHand.handles[i];
        QListWidgetItem* item = m_list->item(static_cast<int>(i));
        const QString name = handleName(each.handle);
        item->setText(name);
        item->setIcon(each.isDone ? done : QIcon(none));
        //: Told to a screen reader of a part of the construction.
        item->setData(Qt::AccessibleTextRole,
                      each.isDone ? tr("%1, set").arg(name) : tr("%1, not set").arg(name));
        const bool ready = isReady(byHand.build, each.handle);
        item->setForeground(ready ? m_scheme.ink : m_scheme.quietInk);
        item->setFlags(ready ? Qt::ItemIsEnabled | Qt::ItemIsSelectable : Qt::NoItemFlags);
        if (byHand.current == each.handle)
            current = static_cast<int>(i);
    }
    m_list->setCurrentRow(current);
}

// Seen on a chosen line as well.
QIcon BuildPanel::doneIcon() const
{
    const int size = parts::scaled(this, kIcon);
    QIcon icon(pixmapFor(Icon::Done, m_scheme.ink, size, devicePixelRatioF()));
    icon.addPixmap(pixmapFor(Icon::Done, m_scheme.accentInk, size, devicePixelRatioF()), QIcon::Selected);
    return icon;
}

void BuildPanel::fitList()
{
    const int icon = parts::scaled(this, kIcon);
    m_list->setIconSize({icon, icon});
    int height = 2 * m_list->frameWidth() + space::kTight;
    for (int row = 0; row < m_list->count(); ++row)
        height += m_list->sizeHintForRow(row);
    m_list->setFixedHeight(height);
}

void BuildPanel::setScheme(const Scheme& scheme) { m_scheme = scheme; }

void BuildPanel::focusChoice()
{
    if (m_choice == BuildChoice::WhichCell)
        m_row->setFocus();
    else
        m_either[0]->setFocus();
}

void BuildPanel::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
}

}  // namespace fb
