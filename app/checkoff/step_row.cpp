#include "app/checkoff/step_row.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <cmath>

#include "app/checkoff/seen_button.h"
#include "app/look/icons.h"
#include "app/look/style.h"
#include "app/look/type.h"
#include "app/practice/parts.h"
#include "app/words/check_off_words.h"

namespace fb {

namespace step_row_detail {

constexpr int kIcon = 15;
constexpr int kRing = 3;
constexpr double kMsInS = 1000.0;
constexpr int kLongestRemark = 200;

QString timeOf(const std::optional<Observation>& seen)
{
    if (!seen || seen->seen == Seen::NotDone)
        return {};
    return clockText(Ms{std::llround(seen->at * kMsInS)});
}

}  // namespace step_row_detail

StepRow::StepRow(const SheetStep& step, QWidget* parent)
    : QWidget(parent),
      m_step(step),
      m_critical(new QLabel(this)),
      m_name(parts::text(this, "stepName")),
      m_time(parts::text(this, "stepTime", "small")),
      m_remark(parts::text(this, "stepRemark", "small")),
      m_edit(new QLineEdit(this)),
      m_beside(new QWidget(this))
{
    const std::string_view word = wordOf(step.step);
    setObjectName(QStringLiteral("step.") +
                  QString::fromLatin1(word.data(), static_cast<qsizetype>(word.size())));
    m_edit->setObjectName(QStringLiteral("stepRemarkField"));
    m_edit->setMaxLength(step_row_detail::kLongestRemark);
    m_edit->installEventFilter(this);
    for (int i = 0; i < kSeenCount; ++i) {
        const auto seen = static_cast<Seen>(i);
        auto* button = new SeenButton(seen, this);
        const std::string_view seenWord = wordOf(seen);
        button->setObjectName(QStringLiteral("seen.") +
                              QString::fromLatin1(seenWord.data(), static_cast<qsizetype>(seenWord.size())));
        m_buttons[static_cast<std::size_t>(i)] = button;
        connect(button, &SeenButton::clicked, this, [this, seen] {
            showSeen(m_seen);  // a press alone changes nothing: what is kept is shown
            Q_EMIT seenPressed(seen);
        });
    }
    connect(m_edit, &QLineEdit::returnPressed, this, [this] {
        takeRemark();
        Q_EMIT remarkClosed();
    });
    layOut();
    say();
    showSeen({});
    setCurrent(false);
}

void StepRow::layOut()
{
    auto* rows = new QVBoxLayout(this);
    m_whole = rows;
    setAir(0);
    rows->setSpacing(0);
    auto* line = new QHBoxLayout;
    line->setSpacing(space::kTight);
    m_critical->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
    m_time->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
    m_time->setWordWrap(false);
    m_time->setAlignment(Qt::AlignTrailing | Qt::AlignVCenter);
    line->addWidget(m_critical);
    line->addWidget(m_name, 1);
    line->addWidget(m_time);
    auto* answers = new QHBoxLayout;
    answers->setSpacing(0);
    for (SeenButton* button : m_buttons)
        answers->addWidget(button);
    line->addLayout(answers);
    rows->addLayout(line);
    auto* below = new QHBoxLayout;  // in line with the name
    below->setSpacing(space::kTight);
    below->addWidget(m_beside);
    auto* words = new QVBoxLayout;
    words->addWidget(m_remark);
    words->addWidget(m_edit);
    below->addLayout(words, 1);
    rows->addLayout(below);
    m_remark->hide();
    m_edit->hide();
}

QString StepRow::remark() const
{
    return m_seen && !m_seen->remark.empty() ? QString::fromStdString(m_seen->remark) : m_draft;
}

void StepRow::showSeen(const std::optional<Observation>& seen)
{
    const bool lost = m_seen && !seen;
    if (lost && !m_seen->remark.empty())
        m_draft = QString::fromStdString(m_seen->remark);
    m_seen = seen;
    for (SeenButton* button : m_buttons)
        button->setChecked(seen && seen->seen == button->seen());
    m_time->setText(step_row_detail::timeOf(seen));
    paintName();
    showRemark();
    say();
}

void StepRow::say()
{
    const QString name = stepName(m_step.step);
    //: An observed step that must not be missed; %1 is its name.
    const QString called = m_step.critical ? tr("%1 (critical)").arg(name) : name;
    m_name->setText(called);
    QString told = called;
    if (!m_seen)
        //: Told to a screen reader of a step; %1 is its name.
        told = tr("%1: nothing said yet").arg(called);
    else if (m_seen->seen == Seen::NotDone)
        //: %1 is a step, %2 is "not done".
        told = tr("%1: %2").arg(called, seenName(m_seen->seen));
    else
        //: %1 is a step, %2 is "done" or "prompted", %3 a time such as 4:07.
        told = tr("%1: %2 at %3").arg(called, seenName(m_seen->seen), m_time->text());
    setAccessibleName(told);
    setAccessibleDescription(remark());
    for (SeenButton* button : m_buttons) {
        const QString word = parts::alone(seenName(button->seen()));
        button->say(word, tr("%1: %2").arg(name, seenName(button->seen())));
    }
    m_edit->setAccessibleName(tr("Remark on: %1").arg(name));
    m_edit->setPlaceholderText(tr("Remark, then Enter"));
}

void StepRow::showRemark()
{
    const QString words = remark();
    m_remark->setText(words);
    m_remark->setVisible(!words.isEmpty() && m_edit->isHidden());
}

void StepRow::setCurrent(bool current)
{
    m_current = current;
    setFocusPolicy(current ? Qt::StrongFocus : Qt::ClickFocus);
    update();
}

void StepRow::setWordy(bool wordy)
{
    if (m_wordy == wordy)
        return;
    m_wordy = wordy;
    paintName();
    for (SeenButton* button : m_buttons)
        button->showWord(wordy);
}

void StepRow::setAir(int pixels)
{
    m_whole->setContentsMargins(space::kTight, pixels, space::kTight, pixels);
}

void StepRow::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    for (SeenButton* button : m_buttons)
        button->setScheme(scheme);
    m_time->setMinimumWidth(m_time->fontMetrics().horizontalAdvance(QStringLiteral("00:00")) + space::kTight);
    paintIcon();
    paintName();
}

void StepRow::paintIcon()
{
    const int size = parts::scaled(this, step_row_detail::kIcon);
    m_critical->setFixedWidth(size);
    m_beside->setFixedWidth(size);
    if (m_step.critical)
        m_critical->setPixmap(pixmapFor(Icon::Caution, m_scheme.danger, size, devicePixelRatioF()));
}

// What has been said steps back, so that the eye finds what has not. Where columns are narrow the letters
// are a little smaller, so that most names keep to one line.
void StepRow::paintName()
{
    const QColor ink = m_seen ? m_scheme.quietInk : m_scheme.ink;
    const double scale = textScaleOf(font());
    const int small = fontOf(Type::Small, scale).pixelSize() + 1;
    if (ink.isValid())
        m_name->setStyleSheet(QStringLiteral("color: %1; font-size: %2px")
                                  .arg(ink.name())
                                  .arg(m_wordy ? fontOf(Type::Body, scale).pixelSize() : small));
}

void StepRow::editRemark()
{
    m_written = remark();
    m_edit->setText(m_written);
    m_edit->show();
    m_remark->hide();
    m_edit->setFocus();
}

bool StepRow::editsRemark() const { return !m_edit->isHidden(); }

void StepRow::takeRemark()
{
    if (m_edit->isHidden())
        return;
    const QString words = m_edit->text().simplified();
    m_edit->hide();
    if (words != m_written && m_seen)
        Q_EMIT remarkGiven(words);
    if (!m_seen || words.isEmpty())
        m_draft = words;
    showRemark();
}

bool StepRow::eventFilter(QObject* watched, QEvent* event)
{
    if (watched != m_edit)
        return QWidget::eventFilter(watched, event);
    if (event->type() == QEvent::FocusOut)
        takeRemark();  // nothing typed is lost
    if (event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        m_edit->setText(m_written);
        takeRemark();
        Q_EMIT remarkClosed();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void StepRow::mousePressEvent(QMouseEvent* event)
{
    event->accept();
    Q_EMIT chosen();
}

void StepRow::paintEvent(QPaintEvent*)
{
    using namespace step_row_detail;
    QPainter painter(this);
    if (m_current)
        painter.fillRect(rect(), m_scheme.paper);
    painter.setPen(m_scheme.line);
    painter.drawLine(0, height() - 1, width(), height() - 1);
    if (!m_current)
        return;
    painter.setPen(QPen(hasFocus() ? m_scheme.focus : m_scheme.quietInk, hasFocus() ? kRing : 1));
    const double half = hasFocus() ? kRing / 2.0 : 0.5;
    painter.drawRect(QRectF(rect()).adjusted(half, half, -half, -half));
}

}  // namespace fb
