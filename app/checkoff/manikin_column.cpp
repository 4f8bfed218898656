#include "app/checkoff/manikin_column.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QStyle>
#include <QVariant>
#include <algorithm>

#include "app/checkoff/breach_list.h"
#include "app/checkoff/step_panel.h"
#include "app/checkoff/stopwatch.h"
#include "app/look/icons.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/check_off_words.h"

namespace fb {

namespace manikin_column_detail {

constexpr int kWidth = 284;
constexpr int kManikinIcon = 16;
constexpr int kStopIcon = 18;

bool isSeen(const CheckOffState& state, ProcedureStep step)
{
    return std::ranges::find(state.observations, step, &Observation::step) != state.observations.end();
}

// A needle is used once it went in: before that is said, putting the cap on would count for nothing.
bool isUsed(const CheckOffState& state)
{
    const auto& steps = state.open->sheet.sheet.steps;
    const bool watched = std::ranges::find(steps, ProcedureStep::Insert, &SheetStep::step) != steps.end();
    return !watched || std::ranges::any_of(state.observations, [](const Observation& each) {
        return each.step == ProcedureStep::Insert && each.seen != Seen::NotDone;
    });
}

int rated(const CheckOffState& state)
{
    return static_cast<int>(std::ranges::count_if(
        state.open->sheet.sheet.steps, [&](const SheetStep& step) { return isSeen(state, step.step); }));
}

}  // namespace manikin_column_detail

ManikinColumn::ManikinColumn(QWidget* parent)
    : QWidget(parent),
      m_scroll(new QScrollArea(this)),
      m_student(parts::text(this, "manikinStudent", "request")),
      m_progress(parts::text(this, "stepsSaid", "small")),
      m_time(parts::text(this, "manikinTime")),
      m_timeIcon(new QLabel(this)),
      m_step(new StepPanel(this)),
      m_stopwatch(new Stopwatch(this)),
      m_ordersTitle(parts::text(this, "ordersTitle", "small")),
      m_orders(new BreachList(this)),
      m_recap(parts::button(this, "recapped")),
      m_pause(parts::button(this, "pauseManikin")),
      m_stop(parts::button(this, "safetyStop")),
      m_void(parts::button(this, "voidManikin")),
      m_rest(parts::button(this, "restNotDone")),
      m_finish(parts::button(this, "finish"))
{
    setObjectName(QStringLiteral("manikinColumn"));
    m_stop->setProperty("look", QLatin1String("danger"));
    // A press leaves the focus with the steps, where the keys belong; Tab still reaches every one.
    for (QPushButton* button : {m_recap, m_pause, m_stop, m_void, m_rest, m_finish})
        button->setFocusPolicy(Qt::TabFocus);
    layOut();
    connectAll();
    say();
}

void ManikinColumn::layOut()
{
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(space::kTight);
    m_scroll->setObjectName(QStringLiteral("manikinScroll"));
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->setWidget(words());
    parts::followFocus(m_scroll);
    rows->addWidget(m_scroll, 1);
    // By itself, so that it is found at once and never pressed for its neighbour.
    rows->addWidget(m_stop);
    rows->addSpacing(space::kTight);
    rows->addWidget(parts::rule(this));
    rows->addSpacing(space::kTight);
    rows->addWidget(m_recap);
    rows->addWidget(m_rest);
    auto* holds = new QHBoxLayout;
    holds->setSpacing(space::kTight);
    holds->addWidget(m_pause, 1);
    holds->addWidget(m_void, 1);
    rows->addLayout(holds);
    rows->addWidget(m_finish);
}

QWidget* ManikinColumn::words()
{
    auto* whole = new QWidget;
    auto* rows = new QVBoxLayout(whole);
    rows->setContentsMargins(0, 0, 0, space::kTight);
    rows->setSpacing(space::kTight);
    const auto divide = [&] {
        rows->addSpacing(space::kTight);
        rows->addWidget(parts::rule(whole));
        rows->addSpacing(space::kTight);
    };
    auto* time = new QHBoxLayout;
    time->setSpacing(space::kTight);
    m_timeIcon->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
    time->addWidget(m_timeIcon);
    time->addWidget(m_time, 1);
    rows->addWidget(m_student);
    rows->addWidget(m_progress);
    rows->addLayout(time);
    divide();
    rows->addWidget(m_step);
    divide();
    rows->addWidget(m_stopwatch);
    rows->addSpacing(space::kNear);
    rows->addWidget(m_ordersTitle);
    rows->addWidget(m_orders, 1);
    return whole;
}

void ManikinColumn::connectAll()
{
    connect(m_step, &StepPanel::seenPressed, this, &ManikinColumn::seenPressed);
    connect(m_step, &StepPanel::remarkPressed, this, &ManikinColumn::remarkPressed);
    connect(m_stopwatch, &Stopwatch::pressed, this, &ManikinColumn::holdingPressed);
    connect(m_recap, &QPushButton::clicked, this, [this] { Q_EMIT recapPressed(m_recapped); });
    connect(m_pause, &QPushButton::clicked, this, &ManikinColumn::pausePressed);
    connect(m_stop, &QPushButton::clicked, this, &ManikinColumn::safetyStopPressed);
    connect(m_void, &QPushButton::clicked, this, &ManikinColumn::voidPressed);
    connect(m_rest, &QPushButton::clicked, this, &ManikinColumn::restPressed);
    connect(m_finish, &QPushButton::clicked, this, &ManikinColumn::finishPressed);
}

void ManikinColumn::say()
{
    parts::say(m_rest, tr("Mark the rest not done"));
    //: Holds the clock; a reason is asked.
    parts::say(m_pause, tr("Pause…"));
    //: The check-off is given up for a technical reason and uses up no attempt.
    parts::say(m_void, tr("Void…"));
    //: The assessor ends the check-off because somebody would come to harm.
    parts::say(m_stop, tr("Safety stop…"));
    sayFinish();
    sayRecap();
    m_step->say();
}

void ManikinColumn::sayRecap()
{
    //: "Recapped": the cap was put back on a used needle, which is dangerous.
    parts::say(m_recap, m_recapped ? tr("Recapped: take it back") : tr("Used needle recapped"));
}

// The one main action of the page only once nothing is left to rate.
void ManikinColumn::sayFinish()
{
    //: Ends the phase on the manikin; %n is how many steps are not rated yet.
    parts::say(m_finish, m_left == 0 ? tr("Finish") : tr("Finish (%n left)", nullptr, m_left));
    const QString look = m_left == 0 ? QStringLiteral("main") : QString();
    if (m_finish->property("look").toString() == look)
        return;
    m_finish->setProperty("look", look);
    m_finish->style()->unpolish(m_finish);
    m_finish->style()->polish(m_finish);
}

void ManikinColumn::showState(const CheckOffState& state)
{
    using namespace manikin_column_detail;
    if (!state.open)
        return;
    const int wide = parts::columnWidth(this, kWidth);
    setFixedWidth(wide);
    m_step->fit(wide - m_scroll->verticalScrollBar()->sizeHint().width());
    const QLocale locale;
    const int steps = static_cast<int>(state.open->sheet.sheet.steps.size());
    m_student->setText(fullName(state.open->student.given, state.open->student.family));
    m_left = steps - rated(state);
    //: How many observed steps the assessor has rated: done, prompted or not done.
    m_progress->setText(
        tr("%1 of %2 steps rated").arg(locale.toString(rated(state)), locale.toString(steps)));
    m_rest->setEnabled(m_left > 0);
    sayFinish();
    m_recapped = isSeen(state, ProcedureStep::Recap);
    sayRecap();
    m_recap->setEnabled(m_recapped || isUsed(state));
    m_recap->setToolTip(
        m_recap->isEnabled()
            ? QString()
            : tr("A needle is used once it went in: rate “%1” first.").arg(stepName(ProcedureStep::Insert)));
    m_recap->setAccessibleDescription(m_recap->toolTip());
    const auto breaches = breachesSoFar(state);
    m_orders->showBreaches(breaches);
    //: What must come before what.
    m_ordersTitle->setText(
        breaches.empty()
            ? tr("Order of steps")
            //: %1 is how many orders of steps were broken.
            : tr("Order of steps: %1 broken").arg(locale.toString(static_cast<int>(breaches.size()))));
    showTimes(state);
}

void ManikinColumn::showTimes(const CheckOffState& state)
{
    using namespace manikin_column_detail;
    if (!state.open)
        return;
    const bool isUp = state.manikinLeft && state.manikinLeft->count() == 0;
    const QString used = clockText(state.used);
    if (!state.manikinLeft)
        //: A time such as 4:07.
        m_time->setText(tr("%1 used").arg(used));
    else if (isUp)
        m_time->setText(tr("%1 used; the time is up").arg(used));
    else
        m_time->setText(tr("%1 used, %2 left").arg(used, clockText(*state.manikinLeft)));
    const int size = parts::scaled(this, kManikinIcon);
    m_timeIcon->setVisible(isUp);
    if (isUp)
        m_timeIcon->setPixmap(pixmapFor(Icon::Caution, m_scheme.danger, size, devicePixelRatioF()));
    m_stopwatch->showState(state);
}

void ManikinColumn::turnPage(bool down)
{
    m_scroll->verticalScrollBar()->triggerAction(down ? QAbstractSlider::SliderPageStepAdd
                                                      : QAbstractSlider::SliderPageStepSub);
}

void ManikinColumn::showStep(const StepRow* row) { m_step->showStep(row); }

void ManikinColumn::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    m_step->setScheme(scheme);
    m_stopwatch->setScheme(scheme);
    m_orders->setScheme(scheme);
    const int size = parts::scaled(this, manikin_column_detail::kStopIcon);
    m_stop->setIcon(pixmapFor(Icon::Caution, scheme.danger, size, devicePixelRatioF()));
    m_stop->setIconSize({size, size});
}

}  // namespace fb
