#include "app/sheets/sheet_fields.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QSpinBox>
#include <algorithm>

#include "app/look/style.h"
#include "app/practice/parts.h"

namespace fb::fields {

namespace fields_detail {

constexpr int kMinute = 60;

class WheelPasses : public QObject {
public:
    using QObject::QObject;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override
    {
        if (event->type() != QEvent::Wheel || static_cast<QWidget*>(watched)->hasFocus())
            return false;
        event->ignore();
        return true;
    }
};

// Shows no digit more than the number has, and loses none.
class NumberBox : public QDoubleSpinBox {
public:
    explicit NumberBox(QWidget* parent) : QDoubleSpinBox(parent)
    {
        constexpr int kDigits = 6;
        setDecimals(kDigits);
    }

    [[nodiscard]] QString textFromValue(double value) const override { return parts::numberText(value); }
    // Its borders are shorter than what lies between them.
    [[nodiscard]] QSize sizeHint() const override
    {
        return QDoubleSpinBox::sizeHint() +
               QSize(fontMetrics().horizontalAdvance(QLatin1String("00.000")), 0);
    }
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }
};

template <class Field>
Field* furnished(Field* field, const char* name)
{
    field->setObjectName(QLatin1String(name));
    field->setFocusPolicy(Qt::StrongFocus);
    field->installEventFilter(new WheelPasses(field));
    return field;
}

}  // namespace fields_detail

QSpinBox* whole(QWidget* parent, const char* name, int low, int high)
{
    QSpinBox* field = fields_detail::furnished(new QSpinBox(parent), name);
    field->setRange(low, high);
    return field;
}

QDoubleSpinBox* number(QWidget* parent, const char* name, double low, double high)
{
    QDoubleSpinBox* field = fields_detail::furnished(new fields_detail::NumberBox(parent), name);
    field->setRange(low, high);
    return field;
}

QComboBox* choice(QWidget* parent, const char* name)
{
    return fields_detail::furnished(new QComboBox(parent), name);
}

QCheckBox* tick(QWidget* parent, const char* name)
{
    auto* box = new QCheckBox(parent);
    box->setObjectName(QLatin1String(name));
    return box;
}

int chosen(const QComboBox* choice) { return choice->currentData().toInt(); }

void choose(QComboBox* choice, int data)
{
    const int index = choice->findData(data);
    if (index >= 0)
        choice->setCurrentIndex(index);
}

TimeField::TimeField(const char* name, int mostSeconds, QWidget* parent)
    : QWidget(parent),
      m_most(mostSeconds),
      m_minutes(
          whole(this, (QByteArray(name) + "Minutes").constData(), 0, mostSeconds / fields_detail::kMinute)),
      m_seconds(whole(this, (QByteArray(name) + "Seconds").constData(), 0, fields_detail::kMinute - 1)),
      m_limit(parts::text(this, (QByteArray(name) + "Limit").constData(), "small"))
{
    constexpr int kStep = 5;
    m_seconds->setSingleStep(kStep);
    m_limit->setWordWrap(false);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::kNear);
    row->addWidget(m_minutes);
    row->addWidget(m_seconds);
    row->addWidget(m_limit);
    row->addStretch(1);
    for (QSpinBox* box : {m_minutes, m_seconds}) {
        connect(box, &QSpinBox::valueChanged, this, [this] {
            showLimit();
            Q_EMIT changed();
        });
    }
}

int TimeField::seconds() const
{
    return std::min(m_most, m_minutes->value() * fields_detail::kMinute + m_seconds->value());
}

void TimeField::setSeconds(int seconds)
{
    const QSignalBlocker quiet(this);
    m_minutes->setValue(seconds / fields_detail::kMinute);
    m_seconds->setValue(seconds % fields_detail::kMinute);
    showLimit();
}

void TimeField::say(const QString& what)
{
    //: After a number of minutes.
    m_minutes->setSuffix(tr(" min"));
    //: After a number of seconds.
    m_seconds->setSuffix(tr(" s"));
    //: %1 is what is timed: "Time for each item".
    m_minutes->setAccessibleName(tr("%1, minutes").arg(what));
    m_seconds->setAccessibleName(tr("%1, seconds").arg(what));
    m_limit->setText(tr("no limit"));
    showLimit();
}

void TimeField::showLimit() { m_limit->setVisible(seconds() == 0); }

Lines::Lines(QWidget* whole) : m_whole(whole), m_grid(new QGridLayout(whole))
{
    constexpr int kNames = 280;
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(space::kBroad);
    m_grid->setVerticalSpacing(space::kNear);
    m_grid->setColumnStretch(1, 1);
    m_grid->setColumnMinimumWidth(0, parts::columnWidth(whole, kNames));
}

void Lines::add(QWidget* name, QWidget* field)
{
    m_grid->addWidget(name, m_row, 0);
    m_grid->addWidget(field, m_row++, 1, Qt::AlignLeading);
}

void Lines::across(QWidget* part) { m_grid->addWidget(part, m_row++, 0, 1, 2); }

void Lines::rule() { across(parts::rule(m_whole)); }

void Lines::end() { m_grid->setRowStretch(m_row, 1); }

void say(QLabel* name, QWidget* field, const QString& words)
{
    name->setText(words);
    field->setAccessibleName(words);
}

void say(QLabel* name, TimeField* field, const QString& words)
{
    name->setText(words);
    field->say(words);
}

void say(QCheckBox* box, const QString& words)
{
    box->setText(words);
    box->setAccessibleName(words);
}

}  // namespace fb::fields
