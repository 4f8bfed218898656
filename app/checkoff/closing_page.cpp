#include "app/checkoff/closing_page.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QShortcut>

#include "app/checkoff/answer_table.h"
#include "app/checkoff/breach_list.h"
#include "app/checkoff/missed_list.h"
#include "app/checkoff/outcome_panel.h"
#include "app/checkoff/rating_row.h"
#include "app/checkoff/saved_panel.h"
#include "app/checkoff/sheet_out.h"
#include "app/checkoff/sign_panel.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/check_off_words.h"

namespace fb {

namespace closing_page_detail {

constexpr int kColumn = 372;
constexpr int kRemark = 84;
constexpr int kMostWords = 860;  // px at 100 percent text: longer lines are hard to read

}  // namespace closing_page_detail

ClosingPage::ClosingPage(CheckOffPresenter& presenter, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent),
      m_presenter(presenter),
      m_dialogs(dialogs),
      m_outcome(new OutcomePanel(this)),
      m_answers(new AnswerTable(this)),
      m_missed(new MissedList(this)),
      m_ordersTitle(parts::text(this, "closingOrders", "request")),
      m_orders(new BreachList(this)),
      m_unsigned(new QWidget(this)),
      m_rating(new RatingRow(this)),
      m_remarkTitle(parts::text(this, "remarkTitle", "small")),
      m_remark(new QPlainTextEdit(this)),
      m_sign(new SignPanel(this)),
      m_saved(new SavedPanel(this)),
      m_sheet(new SheetOut(presenter.records(), this))
{
    m_remark->setObjectName(QStringLiteral("remark"));
    m_remark->setTabChangesFocus(true);
    m_remark->installEventFilter(this);
    layOut();
    connectAll();
    connectSheet();
    addKeys();
    say();
    showState();
}

void ClosingPage::layOut()
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(space::kMargin, space::kApart, space::kMargin, space::kApart);
    row->setSpacing(space::kMargin);
    // Together in the middle of a wide screen.
    constexpr int kAll = 100;
    m_result = scroller(result(), "resultScroll");
    m_column = scroller(signature(), "signScroll");
    row->addStretch(1);
    row->addWidget(m_result, kAll);
    row->addWidget(m_column);
    row->addStretch(1);
}

QScrollArea* ClosingPage::scroller(QWidget* whole, const char* name)
{
    auto* scroll = new QScrollArea(this);
    scroll->setObjectName(QLatin1String(name));
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(whole);
    parts::followFocus(scroll);
    return scroll;
}

QWidget* ClosingPage::result()
{
    auto* whole = new QWidget;
    auto* rows = new QVBoxLayout(whole);
    rows->setContentsMargins(0, 0, space::kNear, 0);
    rows->setSpacing(space::kApart);
    rows->addWidget(m_outcome);
    rows->addWidget(m_answers);
    rows->addWidget(m_missed);
    auto* orders = new QVBoxLayout;
    orders->setSpacing(space::kTight);
    orders->addWidget(m_ordersTitle);
    orders->addWidget(parts::rule(whole));
    orders->addWidget(m_orders);
    rows->addLayout(orders);
    rows->addStretch(1);
    return whole;
}

QWidget* ClosingPage::signature()
{
    auto* whole = new QWidget;
    auto* rows = new QVBoxLayout(whole);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(0);
    auto* open = new QVBoxLayout(m_unsigned);
    open->setContentsMargins(0, 0, 0, 0);
    open->setSpacing(space::kNear);
    open->addWidget(m_rating);
    open->addWidget(m_remarkTitle);
    open->addWidget(m_remark);
    open->addWidget(m_sign);
    rows->addWidget(m_unsigned);
    rows->addWidget(m_saved);
    rows->addStretch(1);
    return whole;
}

void ClosingPage::connectAll()
{
    CheckOffPresenter* to = &m_presenter;
    connect(to, &CheckOffPresenter::changed, this, &ClosingPage::showState);
    connect(m_rating, &RatingRow::chosen, this, &ClosingPage::rate);
    connect(m_rating, &RatingRow::settled, m_sign, &SignPanel::focusFirst);
    connect(m_remark, &QPlainTextEdit::textChanged, this, &ClosingPage::holdRemark);
    connect(m_sign, &SignPanel::signAsked, this, &ClosingPage::sign);
    connect(m_sign, &SignPanel::enrolAsked, to, &CheckOffPresenter::enrol);
    connect(m_sign, &SignPanel::edited, this, [this, to] {
        if (to->state().notice && isSaidInClosing(to->state().notice->problem))
            to->dismissNotice();
    });
    connect(m_saved, &SavedPanel::nextPressed, to, &CheckOffPresenter::nextStudent);
    connect(m_saved, &SavedPanel::deskPressed, to, &CheckOffPresenter::backToDesk);
}

void ClosingPage::addKeys()
{
    for (const bool down : {true, false}) {
        auto* key = new QShortcut(QKeySequence(down ? Qt::Key_PageDown : Qt::Key_PageUp), this);
        key->setContext(Qt::WidgetWithChildrenShortcut);
        connect(key, &QShortcut::activated, this, [this, down] {
            m_result->verticalScrollBar()->triggerAction(down ? QAbstractSlider::SliderPageStepAdd
                                                              : QAbstractSlider::SliderPageStepSub);
        });
    }
    for (int rating = 1; rating <= kRatingCount; ++rating) {
        auto* key = new QShortcut(QKeySequence(static_cast<int>(Qt::Key_0) + rating), this);
        key->setContext(Qt::WidgetWithChildrenShortcut);
        key->setAutoRepeat(false);
        // Where a PIN is about to be typed its digits rate nothing.
        connect(key, &QShortcut::activated, this, [this, rating] {
            if (needsRating() && !m_sign->isAncestorOf(QApplication::focusWidget()))
                m_rating->choose(rating);
        });
    }
}

void ClosingPage::say()
{
    m_ordersTitle->setText(tr("Order of steps"));
    m_remarkTitle->setText(tr("Remark for the student"));
    m_remark->setAccessibleName(tr("Remark for the student"));
    m_rating->say();
    m_sign->say();
    m_saved->say();
}

bool ClosingPage::needsRating() const
{
    const Outcome outcome = m_presenter.state().result.decision.outcome;
    return !m_presenter.state().signedOff && outcome != Outcome::VoidTechnical && outcome != Outcome::NoShow;
}

void ClosingPage::startAnew()
{
    const CheckOffState& state = m_presenter.state();
    m_shown = state.open->id;
    m_wasSigned = false;
    m_rating->showRating(state.rating);
    m_remark->setPlainText(state.remark);
    m_sign->forgetPins();
    m_saved->tell({});
}

void ClosingPage::showState()
{
    const CheckOffState& state = m_presenter.state();
    if (!state.open || state.stage < CheckOffStage::Closing) {
        m_shown = 0;
        return;
    }
    if (m_shown != state.open->id)
        startAnew();
    m_column->setFixedWidth(parts::columnWidth(this, closing_page_detail::kColumn));
    m_result->setMaximumWidth(parts::scaled(this, closing_page_detail::kMostWords));
    m_remark->setFixedHeight(parts::scaled(this, closing_page_detail::kRemark));
    m_outcome->showState(state);
    m_answers->showAnswers(state.answers);
    m_missed->showState(state);
    const bool manikin = !state.observations.empty();
    m_orders->showBreaches(ordersBroken(state.result.procedure.breaches, state.observations), true);
    m_orders->setVisible(manikin);
    m_ordersTitle->setVisible(manikin);
    for (QWidget* ofRating : {static_cast<QWidget*>(m_rating), static_cast<QWidget*>(m_remarkTitle),
                              static_cast<QWidget*>(m_remark)})
        ofRating->setVisible(needsRating());
    m_unsigned->setVisible(!state.signedOff);
    m_saved->setVisible(state.signedOff.has_value());
    m_sign->showState(state);
    m_saved->showState(state);
    showNotice();
    if (state.signedOff && !m_wasSigned) {
        m_wasSigned = true;
        m_sign->forgetPins();
        m_saved->focusFirst();
    }
}

void ClosingPage::showNotice()
{
    const auto& notice = m_presenter.state().notice;
    if (notice == m_told)
        return;
    m_told = notice;
    m_sign->tell(notice && isSaidInClosing(notice->problem) ? notice : std::nullopt);
    if (notice && notice->problem == Problem::RatingMissing)
        m_rating->focusFirst();
}

void ClosingPage::rate()
{
    if (const auto rating = m_rating->rating())
        m_presenter.rate(*rating, m_remark->toPlainText());
}

void ClosingPage::sign(qint64 first, const QString& pin, qint64 second, const QString& secondPin)
{
    keepRemark();
    m_presenter.sign(first, pin, second, secondPin);
}

void ClosingPage::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    m_outcome->setScheme(scheme);
    m_answers->setScheme(scheme);
    m_missed->setScheme(scheme);
    m_orders->setScheme(scheme);
    m_sign->setScheme(scheme);
    m_saved->setScheme(scheme);
}

void ClosingPage::focusFirst()
{
    if (m_presenter.state().signedOff)
        m_saved->focusFirst();
    else if (needsRating() && !m_rating->rating())
        m_rating->focusFirst();
    else
        m_sign->focusFirst();
}

bool ClosingPage::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_remark && event->type() == QEvent::FocusOut)
        keepRemark();
    return QWidget::eventFilter(watched, event);
}

void ClosingPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    focusFirst();
}

void ClosingPage::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) {
        say();
        showState();
    } else if (event->type() == QEvent::FontChange && m_column) {
        setScheme(m_scheme);
        showState();
    }
}

}  // namespace fb
