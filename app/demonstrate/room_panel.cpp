#include "app/demonstrate/room_panel.h"

#include <QEvent>
#include <QFile>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QTableView>
#include <QToolButton>
#include <algorithm>

#include "app/doors/background.h"
#include "app/lecture/lecture_presenter.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/grade_words.h"

namespace fb {

namespace room_panel_detail {

using Marks = Result<std::vector<RoomMark>>;

// Every fault names the file.
Marks readFile(const QString& file)
{
    constexpr qint64 kLargest = 1 << 20;  // bytes: a set of marks is some hundreds
    const QString name = QFileInfo(file).fileName();
    QFile opened(file);
    if (QFileInfo(file).isDir() || !opened.open(QIODevice::ReadOnly))
        return fault(Problem::FileNotReadable, name.toStdString());
    const QByteArray bytes = opened.read(kLargest + 1);
    if (opened.error() != QFileDevice::NoError)
        return fault(Problem::FileNotReadable, name.toStdString());
    if (bytes.size() > kLargest)
        return fault(Problem::MarksTooMany, name.toStdString(), {}, 0.0, kMostRoomMarks);
    return roomMarksFromCsv(bytes, name);
}

}  // namespace room_panel_detail

RoomPanel::RoomPanel(LecturePresenter& presenter, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent),
      m_presenter(presenter),
      m_dialogs(dialogs),
      m_hint(parts::text(this, "roomHint", "small")),
      m_ask(parts::toggle(this, "askRoom")),
      m_read(parts::button(this, "readMarks")),
      m_count(parts::text(this, "roomCount", "small")),
      m_table(new QTableView(this)),
      m_drop(parts::button(this, "dropMark")),
      m_clear(parts::button(this, "clearMarks")),
      m_reveal(parts::button(this, "revealMarks"))
{
    m_table->setObjectName(QStringLiteral("roomMarks"));
    m_table->setModel(&m_model);
    m_table->installEventFilter(this);
    m_ask->setToolButtonStyle(Qt::ToolButtonTextOnly);
    layOut();
    connectAll();
    say();
}

void RoomPanel::layOut()
{
    m_table->setShowGrid(false);
    m_table->setFrameShape(QFrame::NoFrame);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setTabKeyNavigation(false);
    m_table->setWordWrap(false);
    m_table->setCornerButtonEnabled(false);
    m_table->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_table->verticalHeader()->hide();
    m_table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeading | Qt::AlignVCenter);
    m_table->horizontalHeader()->setHighlightSections(false);
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(space::kNear);
    rows->addWidget(m_hint);
    auto* first = new QHBoxLayout;
    first->setSpacing(space::kTight);
    m_ask->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    first->addWidget(m_ask, 1, Qt::AlignVCenter);
    first->addWidget(m_read, 1, Qt::AlignVCenter);
    rows->addLayout(first);
    rows->addWidget(m_count);
    rows->addWidget(m_table, 1);
    auto* second = new QHBoxLayout;
    second->setSpacing(space::kTight);
    for (QPushButton* button : {m_reveal, m_drop, m_clear})
        second->addWidget(button, 1);
    rows->addLayout(second);
    fit();
}

void RoomPanel::fit()
{
    constexpr int kRow = 34;
    constexpr int kIcon = 18;
    constexpr int kRoom = 20;  // a cell's own margins
    constexpr int kRows = 4;   // in sight at least
    const QFontMetrics metrics(font());
    const auto wide = [&](const QString& text) { return metrics.horizontalAdvance(text) + kRoom; };
    const auto head = [&](int column) { return wide(m_model.headerData(column, Qt::Horizontal).toString()); };
    const int icon = parts::scaled(this, kIcon);
    int verdict = wide(tr("Not on the body"));
    for (int i = 0; i < kVerdictCount; ++i)
        verdict = std::max(verdict, wide(parts::alone(verdictName(static_cast<Verdict>(i)))) + icon);
    QHeaderView* header = m_table->horizontalHeader();
    header->setSectionResizeMode(QHeaderView::Fixed);
    header->setSectionResizeMode(RoomModel::NameColumn, QHeaderView::Stretch);
    header->setMinimumSectionSize(1);
    m_table->setColumnWidth(RoomModel::NumberColumn, head(RoomModel::NumberColumn));
    m_table->setColumnWidth(RoomModel::VerdictColumn, verdict);
    m_table->setColumnWidth(RoomModel::DistanceColumn,
                            std::max(head(RoomModel::DistanceColumn), wide(QStringLiteral("00.0 cm"))));
    m_table->setIconSize({icon, icon});
    m_table->verticalHeader()->setDefaultSectionSize(parts::scaled(this, kRow));
    m_table->setMinimumHeight(parts::scaled(this, kRow) * (kRows + 1));
}

void RoomPanel::connectAll()
{
    connect(m_ask, &QToolButton::clicked, this,
            [this](bool asks) { m_presenter.setTool(asks ? LectureTool::Ask : LectureTool::Point); });
    connect(m_read, &QPushButton::clicked, this, &RoomPanel::readMarks);
    connect(m_clear, &QPushButton::clicked, &m_presenter, &LecturePresenter::clearRoom);
    connect(m_reveal, &QPushButton::clicked, this,
            [this] { m_presenter.reveal(!m_presenter.state().revealed); });
    connect(m_drop, &QPushButton::clicked, this,
            [this] { m_presenter.dropRoomMark(m_table->currentIndex().row()); });
    connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& now) { m_drop->setEnabled(now.isValid()); });
    connect(&m_model, &RoomModel::modelReset, this, [this] { m_drop->setEnabled(false); });
    connect(&m_model, &RoomModel::named, this,
            [this](int row, const QString& name) { m_presenter.nameRoomMark(row, name); });
}

void RoomPanel::say()
{
    m_hint->setText(
        tr("Each click on the picture is the place a volunteer has named. Reveal shows the region and grades "
           "them all."));
    parts::say(m_ask, tr("Ask the room"));
    parts::say(m_read, tr("Read a file…"));
    m_read->setAccessibleName(tr("Read marks from a file…"));
    m_read->setToolTip(tr("A table with the columns name, x_cm and y_cm"));
    m_table->setAccessibleName(tr("Marks of the room"));
    //: Takes one mark out of the list, then all of them.
    parts::say(m_drop, tr("Remove"));
    m_drop->setAccessibleName(tr("Remove the chosen mark"));
    parts::say(m_clear, tr("Clear"));
    m_clear->setAccessibleName(tr("Clear all marks"));
}

void RoomPanel::readMarks()
{
    const QString file = m_dialogs.askMarksFile(window());
    if (file.isEmpty())
        return;
    using room_panel_detail::Marks;
    m_read->setEnabled(false);
    inBackground<Marks>(
        this, [file] { return room_panel_detail::readFile(file); },
        [this](const Marks& marks) {
            m_read->setEnabled(true);
            if (marks)
                m_presenter.takeRoomMarks(*marks);
            else
                m_presenter.tell(marks.error());
        });
}

void RoomPanel::showState()
{
    const LectureState& state = m_presenter.state();
    m_ask->setChecked(state.tool == LectureTool::Ask);
    m_model.setMarks(state.room, state.revealed);
    const bool isEmpty = state.room.empty();
    m_count->setText(isEmpty ? tr("No marks yet")
                             : tr("%n mark(s)", nullptr, static_cast<int>(state.room.size())));
    //: Shows the region and every mark's verdict; the other word hides both again.
    parts::say(m_reveal, state.revealed ? tr("Hide") : tr("Reveal"));
    m_reveal->setAccessibleName(state.revealed ? tr("Hide region and verdicts")
                                               : tr("Reveal region and verdicts"));
    m_reveal->setEnabled(state.shown && (!isEmpty || state.revealed));
    m_clear->setEnabled(!isEmpty);
    m_drop->setEnabled(m_table->currentIndex().isValid());
}

void RoomPanel::setScheme(const Scheme& scheme)
{
    m_model.setScheme(scheme);
    m_table->setStyleSheet(
        QStringLiteral("QTableView { background: transparent; border: 3px solid transparent; }"
                       "QTableView:focus { border-color: %1; }"
                       "QTableView::item { border-bottom: 1px solid %2; padding: 0 4px; }"
                       "QTableView::item:selected { background: %3; color: %4; }"
                       "QTableView QLineEdit { min-height: 0; margin: 0; padding: 0 4px; }"
                       "QHeaderView { background: transparent; border: none; }"
                       "QHeaderView::section { background: %5; color: %6; border: none; "
                       "border-bottom: 1px solid %2; padding: 4px 6px; }")
            .arg(scheme.focus.name(), scheme.line.name(), scheme.accent.name(), scheme.accentInk.name(),
                 scheme.window.name(), scheme.quietInk.name()));
}

bool RoomPanel::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_table && event->type() == QEvent::KeyPress &&
        static_cast<const QKeyEvent*>(event)->key() == Qt::Key_Delete && m_table->currentIndex().isValid()) {
        m_presenter.dropRoomMark(m_table->currentIndex().row());
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void RoomPanel::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) {
        say();
        showState();
        fit();
    } else if (event->type() == QEvent::FontChange) {
        fit();
    }
}

}  // namespace fb
