#include "app/demonstrate/step_rail.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QListWidget>
#include <QPushButton>
#include <QScrollBar>

#include "app/demonstrate/step_delegate.h"
#include "app/doors/background.h"
#include "app/lecture/lecture_presenter.h"
#include "app/look/icons.h"
#include "app/look/style.h"
#include "app/practice/parts.h"

namespace fb {

namespace step_rail_detail {

constexpr int kThumbWidth = 112;  // px at 100 percent text
constexpr int kThumbHeight = 63;
constexpr int kRestMs = 250;  // after the last change: the large picture is made sharp first

// Its keys are the page's; a click or a screen reader chooses.
class StepList : public QListWidget {
public:
    using QListWidget::QListWidget;

protected:
    void keyPressEvent(QKeyEvent* event) override { event->ignore(); }
    void focusInEvent(QFocusEvent* event) override
    {
        QListWidget::focusInEvent(event);
        viewport()->update();
    }
};

}  // namespace step_rail_detail

StepRail::StepRail(LecturePresenter& presenter, QWidget* parent)
    : QWidget(parent),
      m_presenter(presenter),
      m_list(new step_rail_detail::StepList(this)),
      m_back(parts::button(this, "lectureBack")),
      m_next(parts::mainButton(this, "lectureNext"))
{
    m_list->setObjectName(QStringLiteral("lectureSteps"));
    layOut();
    say();
    m_rest.setSingleShot(true);
    m_rest.setInterval(step_rail_detail::kRestMs);
    connect(&m_rest, &QTimer::timeout, this, &StepRail::askThumbs);
    connect(m_back, &QPushButton::clicked, &m_presenter, &LecturePresenter::back);
    connect(m_next, &QPushButton::clicked, &m_presenter, &LecturePresenter::next);
    connect(m_list, &QListWidget::currentRowChanged, this, [this](int row) {
        if (row >= 0 && row != m_presenter.state().step)
            m_presenter.goTo(row);
    });
}

StepRail::~StepRail()
{
    if (m_cancelled)
        *m_cancelled = true;
}

void StepRail::layOut()
{
    m_list->setFlow(QListView::LeftToRight);
    m_list->setWrapping(false);
    m_list->setUniformItemSizes(true);
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setSelectionMode(QAbstractItemView::SingleSelection);
    m_list->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_list->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setItemDelegate(new StepDelegate(kThumbRole, m_list));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::kNear);
    row->addWidget(m_back, 0, Qt::AlignVCenter);
    row->addWidget(m_list, 1);
    row->addWidget(m_next, 0, Qt::AlignVCenter);
    fit();
}

void StepRail::fit()
{
    using namespace step_rail_detail;
    auto* delegate = static_cast<StepDelegate*>(m_list->itemDelegate());
    delegate->setThumb({parts::columnWidth(this, kThumbWidth), parts::columnWidth(this, kThumbHeight)});
    QStyleOptionViewItem option;
    option.font = font();
    constexpr int kFrame = 8;  // of the list with the focus
    m_list->setFixedHeight(delegate->sizeHint(option, {}).height() + kFrame);
    m_list->doItemsLayout();
}

void StepRail::say()
{
    //: To the step before, to the next one.
    parts::say(m_back, tr("Back"));
    parts::say(m_next, tr("Next"));
    m_back->setToolTip(tr("Back (Page Up)"));
    m_next->setToolTip(tr("Next (Page Down)"));
    m_list->setAccessibleName(tr("Steps"));
}

void StepRail::useLibrary(const std::shared_ptr<const Library>& library)
{
    m_library = library;
    m_rest.start();
}

void StepRail::fill(const LectureState& state)
{
    m_steps = state.steps;
    m_convention = state.convention;
    m_list->clear();
    for (const LectureStep& step : m_steps) {
        auto* item = new QListWidgetItem(stepTitle(*state.shown, step), m_list);
        item->setToolTip(item->text());
    }
}

void StepRail::showState()
{
    const LectureState& state = m_presenter.state();
    const QSignalBlocker quiet(m_list);
    if (!state.shown)
        return;
    if (state.steps != m_steps || state.convention != m_convention)
        fill(state);
    if (m_list->currentRow() != state.step) {
        m_list->setCurrentRow(state.step);
        if (const QListWidgetItem* item = m_list->currentItem())
            m_list->scrollToItem(item, QAbstractItemView::PositionAtCenter);
    }
    m_back->setEnabled(state.step > 0 || state.progress < 1.0);
    m_next->setEnabled(state.step + 1 < static_cast<int>(state.steps.size()) || state.progress < 1.0);
    if (!state.moving && !sameThumbs(m_asked, thumbAsk()))
        m_rest.start();
}

ThumbAsk StepRail::thumbAsk() const
{
    const LectureState& state = m_presenter.state();
    const auto* delegate = static_cast<const StepDelegate*>(m_list->itemDelegate());
    return {state.shown,  state.policy, m_library,         state.steps,
            state.layers, m_scheme,     delegate->thumb(), devicePixelRatioF()};
}

void StepRail::askThumbs()
{
    const ThumbAsk ask = thumbAsk();
    if (m_presenter.state().moving || !ask.body || sameThumbs(m_asked, ask))
        return;
    if (m_cancelled)
        *m_cancelled = true;
    m_cancelled = std::make_shared<std::atomic_bool>(false);
    m_asked = ask;
    inBackground<std::vector<QImage>>(
        this, [ask, cancelled = m_cancelled] { return paintThumbs(ask, *cancelled); },
        [this, cancelled = m_cancelled](const std::vector<QImage>& thumbs) {
            if (!*cancelled)
                showThumbs(thumbs);
        });
}

void StepRail::showThumbs(const std::vector<QImage>& thumbs)
{
    const QSignalBlocker quiet(m_list);
    for (int i = 0; i < m_list->count() && i < static_cast<int>(thumbs.size()); ++i)
        m_list->item(i)->setData(kThumbRole, thumbs[static_cast<std::size_t>(i)]);
    m_list->viewport()->update();
    Q_EMIT thumbsPainted();
}

void StepRail::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    static_cast<StepDelegate*>(m_list->itemDelegate())->setScheme(scheme);
    // On the window's own ground: a row of cards, no box.
    m_list->setStyleSheet(
        QStringLiteral("QListWidget { background: transparent; border: none; padding: 1px; }"
                       "QListWidget:focus { border: 3px solid %1; padding: 0; }")
            .arg(scheme.focus.name()));
    m_list->viewport()->update();
    showState();
}

void StepRail::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) {
        say();
        m_steps.clear();
        m_asked = {};
        showState();
    } else if (event->type() == QEvent::FontChange) {
        fit();
        showState();
    }
}

}  // namespace fb
