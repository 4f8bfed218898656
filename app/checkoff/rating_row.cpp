#include "app/checkoff/rating_row.h"

#include <QEvent>
#include <QKeyEvent>
#include <QLabel>
#include <QLocale>
#include <QRadioButton>
#include <QVBoxLayout>

#include "app/practice/parts.h"
#include "app/words/check_off_words.h"

namespace fb {

RatingRow::RatingRow(QWidget* parent) : QWidget(parent), m_title(parts::text(this, "ratingTitle", "small"))
{
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(0);
    rows->addWidget(m_title);
    for (int i = 0; i < kRatingCount; ++i) {
        auto* button = new QRadioButton(this);
        button->setObjectName(QStringLiteral("rating%1").arg(i + 1));
        button->installEventFilter(this);
        rows->addWidget(button);
        m_buttons[static_cast<std::size_t>(i)] = button;
        connect(button, &QRadioButton::clicked, this, [this, i] { Q_EMIT chosen(i + 1); });
    }
    say();
}

std::optional<int> RatingRow::rating() const
{
    for (int i = 0; i < kRatingCount; ++i) {
        if (m_buttons[static_cast<std::size_t>(i)]->isChecked())
            return i + 1;
    }
    return {};
}

void RatingRow::showRating(std::optional<int> rating)
{
    for (int i = 0; i < kRatingCount; ++i) {
        QRadioButton* button = m_buttons[static_cast<std::size_t>(i)];
        button->setAutoExclusive(false);
        button->setChecked(rating == i + 1);
        button->setAutoExclusive(true);
    }
}

void RatingRow::choose(int rating)
{
    showRating(rating);
    Q_EMIT chosen(rating);
    Q_EMIT settled();
}

void RatingRow::say()
{
    const QLocale locale;
    //: The assessor's own judgement of the whole.
    m_title->setText(tr("Overall rating (keys 1 to 5)"));
    for (int i = 0; i < kRatingCount; ++i) {
        QRadioButton* button = m_buttons[static_cast<std::size_t>(i)];
        //: A rating: its number, then what it means.
        button->setText(tr("%1  %2").arg(locale.toString(i + 1), ratingName(i + 1)));
        button->setAccessibleName(tr("Overall rating %1: %2").arg(locale.toString(i + 1), ratingName(i + 1)));
    }
}

void RatingRow::focusFirst() { m_buttons[static_cast<std::size_t>(rating().value_or(1) - 1)]->setFocus(); }

bool RatingRow::eventFilter(QObject* watched, QEvent* event)
{
    const bool released = event->type() == QEvent::MouseButtonRelease;
    const bool entered =
        event->type() == QEvent::KeyPress && (static_cast<QKeyEvent*>(event)->key() == Qt::Key_Return ||
                                              static_cast<QKeyEvent*>(event)->key() == Qt::Key_Enter);
    // After the button itself has taken the press.
    if (released || (entered && rating()))
        QMetaObject::invokeMethod(
            this,
            [this] {
                if (rating())
                    Q_EMIT settled();
            },
            Qt::QueuedConnection);
    return QWidget::eventFilter(watched, event);
}

}  // namespace fb
