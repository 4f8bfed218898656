#include "app/checkoff/desk_column.h"

#include <QComboBox>
#include <QEvent>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/records/records_look.h"
#include "app/words/check_off_words.h"

namespace fb {

QString howFar(const RunningCheckOff& running)
{
    CheckOff checkOff({running.sheet.sheet, running.order.seed, running.order.extraPercent});
    for (const CheckOffEvent& event : running.events) {
        if (!checkOff.apply(event, std::nullopt))
            break;
    }
    const QLocale locale;
    const auto used = [](Ms applied, Ms kept) { return clockText(std::max(applied, kept)); };
    if (checkOff.stage() == CheckOffStage::OnScreen)
        //: %1 of %2 items; %3 is a time as 2:14.
        return DeskColumn::tr("Item %1 of %2, %3 used.")
            .arg(locale.toString(checkOff.item() + 1), locale.toString(checkOff.requests().size()),
                 used(checkOff.onScreen(), running.onScreen));
    if (checkOff.stage() == CheckOffStage::OnManikin)
        return DeskColumn::tr("On the manikin, %1 used.").arg(used(checkOff.onManikin(), running.onManikin));
    return parts::alone(stageName(checkOff.stage())) + u'.';
}

DeskColumn::DeskColumn(QWidget* parent)
    : QWidget(parent),
      m_open(new QWidget(this)),
      m_openTitle(parts::text(m_open, "openTitle", "request")),
      m_openWords(parts::text(m_open, "openWords")),
      m_goOn(parts::mainButton(m_open, "goOnOpen")),
      m_void(parts::button(m_open, "voidOpen")),
      m_sheetName(parts::text(this, "sheetName", "small")),
      m_sheets(new QComboBox(this)),
      m_sheetTitle(parts::text(this, "sheetTitle", "request")),
      m_scroll(new QScrollArea(this)),
      m_sheetWords(parts::text(nullptr, "sheetWords")),
      m_edit(parts::button(this, "editSheet")),
      m_import(parts::button(this, "importRoster"))
{
    m_sheets->setObjectName(QStringLiteral("sheets"));
    m_sheets->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    constexpr int kLetters = 10;
    m_sheets->setMinimumContentsLength(kLetters);
    layOutWords();
    layOut();
    connectAll();
    say();
}

void DeskColumn::layOut()
{
    auto* open = new QVBoxLayout(m_open);
    open->setContentsMargins(0, 0, 0, 0);
    open->setSpacing(space::kNear);
    open->addWidget(m_openTitle);
    open->addWidget(m_openWords);
    auto* openButtons = new QHBoxLayout;
    openButtons->setSpacing(space::kNear);
    openButtons->addWidget(m_goOn, 1);
    openButtons->addWidget(m_void, 1);
    open->addLayout(openButtons);
    open->addSpacing(space::kNear);
    open->addWidget(parts::rule(m_open));

    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(space::kNear);
    rows->addWidget(m_open);
    rows->addWidget(m_sheetName);
    rows->addWidget(m_sheets);
    rows->addWidget(m_sheetTitle);
    rows->addWidget(m_scroll, 1);
    rows->addWidget(m_edit);
    rows->addWidget(m_import);
    fit();
}

// With large letters the words scroll; only then they are to be reached by key.
void DeskColumn::layOutWords()
{
    m_sheetWords->setAlignment(Qt::AlignTop | Qt::AlignLeading);
    m_scroll->setObjectName(QStringLiteral("sheetScroll"));
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->setWidget(m_sheetWords);
    connect(m_scroll->verticalScrollBar(), &QScrollBar::rangeChanged, this,
            [this](int, int most) { m_scroll->setFocusPolicy(most > 0 ? Qt::StrongFocus : Qt::NoFocus); });
}

void DeskColumn::connectAll()
{
    connect(m_goOn, &QPushButton::clicked, this, &DeskColumn::goOnAsked);
    connect(m_void, &QPushButton::clicked, this, &DeskColumn::voidAsked);
    connect(m_edit, &QPushButton::clicked, this, &DeskColumn::editSheetAsked);
    connect(m_import, &QPushButton::clicked, this, &DeskColumn::importAsked);
    connect(m_sheets, &QComboBox::activated, this,
            [this](int index) { Q_EMIT sheetChosen(m_sheets->itemData(index).toString()); });
}

void DeskColumn::say()
{
    m_sheetName->setText(tr("Sheet"));
    m_sheets->setAccessibleName(tr("Sheet"));
    m_scroll->setAccessibleName(tr("The sheet in words"));
    parts::say(m_goOn, tr("Go on"));
    //: Ends the check-off that stands open without a result; asks for the reason.
    parts::say(m_void, tr("Void…"));
    parts::say(m_edit, tr("Edit sheet…"));
    parts::say(m_import, tr("Import roster…"));
}

void DeskColumn::showState(const CheckOffState& state)
{
    showRunning(state);
    showSheets(state);
    for (QPushButton* button : {m_goOn, m_void, m_edit, m_import})
        button->setEnabled(!state.saving);
}

void DeskColumn::showRunning(const CheckOffState& state)
{
    const auto& running = state.desk.running;
    m_open->setVisible(running.has_value());
    if (!running)
        return;
    m_openTitle->setText(tr("The check-off of %1 is still open")
                             .arg(fullName(running->student.given, running->student.family)));
    m_openWords->setText(howFar(*running));
}

void DeskColumn::showSheets(const CheckOffState& state)
{
    const QSignalBlocker blocked(m_sheets);
    m_sheets->clear();
    m_sheetWords->clear();
    m_sheetTitle->clear();
    for (const SheetOnFile& each : state.desk.sheets) {
        m_sheets->addItem(sheetTitle(each), each.key);
        if (each.key != state.desk.currentSheet)
            continue;
        m_sheets->setCurrentIndex(m_sheets->count() - 1);
        m_sheetTitle->setText(QString::fromStdString(each.sheet.title));
        QStringList words = sheetInWords(each.sheet);
        if (each.sheet.invented)
            words.prepend(tr("Invented, to try things out."));
        m_sheetWords->setText(words.join(QLatin1Char('\n')));
    }
    // One alone is no choice.
    m_sheets->setVisible(m_sheets->count() > 1);
    if (state.ready && m_sheets->count() == 0)
        m_sheetWords->setText(tr("There is no sheet yet. A sheet says what is asked and when it is passed."));
}

QWidget* DeskColumn::first() const { return m_goOn; }

void DeskColumn::fit()
{
    constexpr int kWidth = 340;
    setFixedWidth(parts::columnWidth(this, kWidth));
}

void DeskColumn::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        fit();
}

}  // namespace fb
