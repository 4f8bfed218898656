#include <QComboBox>
#include <QGridLayout>
#include <QHeaderView>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QScreen>
#include <QShowEvent>
#include <QTableView>
#include <algorithm>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/roster/roster_dialog.h"
#include "app/roster/roster_table.h"

namespace fb {

void RosterDialog::layOut()
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kMargin, space::kMargin, space::kMargin, space::kMargin);
    column->setSpacing(space::kNear);
    column->addWidget(m_title);
    column->addWidget(parts::rule(this));
    auto* file = new QHBoxLayout;
    file->setSpacing(space::kApart);
    file->addWidget(m_fileName, 1);
    file->addWidget(m_choose);
    column->addLayout(file);
    column->addWidget(m_progress);
    column->addWidget(m_hint);
    column->addWidget(m_mapping);
    column->addWidget(m_table, 1);
    column->addWidget(m_shown);
    column->addWidget(m_counts);
    column->addWidget(m_notice);
    column->addStretch(0);
    column->addWidget(parts::rule(this));
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(space::kNear);
    buttons->addStretch(1);
    buttons->addWidget(m_cancel);
    buttons->addWidget(m_import);
    column->addLayout(buttons);
}

// Names over choices, in two rows: they hold on a small screen with large letters.
QWidget* RosterDialog::mapping()
{
    constexpr int kAcross = 4;
    constexpr int kLetters = 10;
    auto* whole = new QWidget(this);
    auto* grid = new QGridLayout(whole);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(space::kApart);
    grid->setVerticalSpacing(space::kTight);
    for (int column = 0; column < kRosterColumnCount; ++column) {
        const auto index = static_cast<std::size_t>(column);
        const QByteArray name = "rosterChoice" + QByteArray::number(column);
        m_choiceNames[index] = parts::text(whole, name + "Name", "small");
        m_choices[index] = new QComboBox(whole);
        m_choices[index]->setObjectName(QLatin1String(name));
        m_choices[index]->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        m_choices[index]->setMinimumContentsLength(kLetters);
        connect(m_choices[index], &QComboBox::currentIndexChanged, this, &RosterDialog::judge);
        grid->addWidget(m_choiceNames[index], 2 * (column / kAcross), column % kAcross);
        grid->addWidget(m_choices[index], 2 * (column / kAcross) + 1, column % kAcross);
    }
    for (int column = 0; column < kAcross; ++column)
        grid->setColumnStretch(column, 1);
    return whole;
}

void RosterDialog::furnishTable()
{
    m_table->setObjectName(QStringLiteral("rosterTable"));
    m_table->setModel(m_model);
    m_table->setShowGrid(false);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setTabKeyNavigation(false);
    m_table->setWordWrap(false);
    m_table->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_table->verticalHeader()->hide();
    m_table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeading | Qt::AlignVCenter);
    m_table->horizontalHeader()->setHighlightSections(false);
    // The palette follows the scheme by itself.
    m_table->setStyleSheet(QStringLiteral(
        "QTableView { background: transparent; border: 1px solid palette(mid); }"
        "QTableView::item { padding: 0 6px; }"
        "QHeaderView { background: transparent; border: none; }"
        "QAbstractScrollArea::corner { background: transparent; border: none; }"
        "QHeaderView::section { background: transparent; color: palette(placeholder-text); border: none;"
        " border-bottom: 1px solid palette(mid); padding: 4px 3px; }"));
}

void RosterDialog::fitTable()
{
    constexpr int kRowHeight = 32;
    constexpr int kIcon = 18;
    constexpr int kWidest = 310;
    m_table->setIconSize({parts::scaled(this, kIcon), parts::scaled(this, kIcon)});
    m_table->verticalHeader()->setDefaultSectionSize(parts::scaled(this, kRowHeight));
    m_table->resizeColumnsToContents();
    for (int column = 0; column < kRosterTableColumnCount; ++column) {
        const int width = m_table->columnWidth(column) + space::kNear;
        m_table->setColumnWidth(column, std::min(width, parts::scaled(this, kWidest)));
    }
    m_table->horizontalHeader()->setStretchLastSection(true);
}

void RosterDialog::say()
{
    setWindowTitle(tr("Import a roster"));
    m_title->setText(tr("Import a roster"));
    m_hint->setText(
        tr("A CSV file in UTF-8: the first line names the columns, each further line is a student with an id "
           "and a name. A OneRoster users.csv is understood as it is. Passwords are never read, and nothing "
           "is saved before you have seen it here."));
    if (!m_file && !m_busy)
        m_fileName->setText(tr("No file is chosen yet."));
    parts::say(m_choose, tr("Choose a file…"));
    m_progress->setAccessibleName(tr("Reading the file"));
    for (int column = 0; column < kRosterColumnCount; ++column) {
        const auto index = static_cast<std::size_t>(column);
        const QString name = rosterColumnName(static_cast<RosterColumn>(column));
        m_choiceNames[index]->setText(name);
        //: %1 is what is meant, as "Family name".
        m_choices[index]->setAccessibleName(tr("Column of the file for: %1").arg(name));
        if (m_choices[index]->count() > 0)
            m_choices[index]->setItemText(0, tr("(none)"));
    }
    m_table->setAccessibleName(tr("What each row of the file will do"));
    m_model->sayAnew();
    parts::say(m_cancel, tr("Cancel"));
    showState();
}

void RosterDialog::showEvent(QShowEvent* event)
{
    constexpr QSize kUsual{1140, 640};
    constexpr double kShare = 0.92;
    const QSize most =
        (parentWidget() ? parentWidget()->window()->size() : screen()->availableSize()) * kShare;
    resize(QSize(parts::columnWidth(this, kUsual.width()), parts::columnWidth(this, kUsual.height()))
               .boundedTo(most));
    fitTable();
    QDialog::showEvent(event);
}

}  // namespace fb
