#include "app/demonstrate/value_row.h"

#include <QDoubleSpinBox>
#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QLocale>
#include <QSignalBlocker>
#include <QSlider>
#include <cmath>

#include "app/look/style.h"
#include "app/practice/parts.h"

namespace fb {

namespace value_row_detail {

constexpr int kTicks = 10;    // of the slider, to one of the unit: fine enough to glide
constexpr int kRestMs = 150;  // after the last key

// @name@ is a colour or a number.
constexpr const char* kSlider = R"(
QSlider { min-height: @high@px; background: transparent; }
QSlider::groove:horizontal { height: 2px; background: @line@; border: none; margin: 0 2px; }
QSlider::sub-page:horizontal { background: @accent@; height: 2px; margin: 0 2px; }
QSlider::handle:horizontal { width: @grip@px; height: @grip@px; margin: -@over@px 0; border-radius: @round@px;
  background: @paper@; border: 2px solid @accent@; }
QSlider::handle:horizontal:hover { background: @accent@; }
QSlider:focus { border: 3px solid @focus@; border-radius: 2px; }
QSlider::handle:horizontal:disabled { border-color: @line@; }
)";

}  // namespace value_row_detail

ValueRow::ValueRow(const QString& name, int decimals, QWidget* parent)
    : QWidget(parent),
      m_title(parts::text(this, "")),
      m_field(new QDoubleSpinBox(this)),
      m_slider(new QSlider(Qt::Horizontal, this))
{
    using namespace value_row_detail;
    setObjectName(name);
    m_title->setObjectName(name + QStringLiteral("Title"));
    m_field->setObjectName(name + QStringLiteral("Field"));
    m_slider->setObjectName(name + QStringLiteral("Slider"));
    m_field->setDecimals(decimals);
    m_field->setKeyboardTracking(false);
    m_field->setCorrectionMode(QAbstractSpinBox::CorrectToNearestValue);
    m_slider->setSingleStep(kTicks);
    m_slider->setPageStep(5 * kTicks);
    for (QWidget* each : std::initializer_list<QWidget*>{m_field, m_slider})
        each->installEventFilter(this);
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(space::kNear);
    grid->setVerticalSpacing(0);
    grid->addWidget(m_title, 0, 0);
    grid->addWidget(m_field, 0, 1);
    grid->addWidget(m_slider, 1, 0, 1, 2);
    grid->setColumnStretch(0, 1);
    m_rest.setSingleShot(true);
    m_rest.setInterval(kRestMs);
    connect(&m_rest, &QTimer::timeout, this, &ValueRow::rests);
    connect(m_slider, &QSlider::valueChanged, this, [this](int ticks) {
        tell(static_cast<double>(ticks) / kTicks);
        if (!m_slider->isSliderDown())
            m_rest.start();
    });
    // Whatever a key has begun, nothing rests while a hand holds it.
    connect(m_slider, &QSlider::sliderPressed, &m_rest, &QTimer::stop);
    connect(m_slider, &QSlider::sliderReleased, this, &ValueRow::rests);
    connect(m_field, &QDoubleSpinBox::valueChanged, this, [this](double value) {
        tell(value);
        m_rest.start();
    });
}

void ValueRow::say(const QString& title, const QString& unit)
{
    m_title->setText(title);
    m_field->setAccessibleName(title);
    //: %1 is what a slider changes: age, height, weight.
    m_slider->setAccessibleName(tr("%1, slider").arg(title));
    const qsizetype at = unit.indexOf(QLatin1String("%1"));
    m_field->setPrefix(unit.left(at));
    m_field->setSuffix(unit.mid(at + 2));
}

void ValueRow::setRange(const ValueRange& range)
{
    using value_row_detail::kTicks;
    const QSignalBlocker quietField(m_field);
    const QSignalBlocker quietSlider(m_slider);
    m_field->setRange(range.least, range.most);
    m_slider->setRange(static_cast<int>(std::ceil(range.least * kTicks)),
                       static_cast<int>(std::floor(range.most * kTicks)));
}

void ValueRow::setValue(double value)
{
    m_value = value;
    showValue();
}

void ValueRow::showValue()
{
    const QSignalBlocker quietField(m_field);
    const QSignalBlocker quietSlider(m_slider);
    m_field->setValue(m_value);
    if (!m_slider->isSliderDown())
        m_slider->setValue(static_cast<int>(std::lround(m_value * value_row_detail::kTicks)));
    m_slider->setAccessibleDescription(m_field->text());
}

void ValueRow::tell(double value)
{
    m_value = value;
    showValue();
    Q_EMIT moved(value);
}

// A wheel over the column scrolls the column: a body never changes because a hand passed over it.
bool ValueRow::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::Wheel && !static_cast<QWidget*>(watched)->hasFocus()) {
        event->ignore();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void ValueRow::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    paintSlider();
}

void ValueRow::paintSlider()
{
    constexpr int kField = 136;  // so that rows of several numbers stand in line
    constexpr int kGrip = 16;
    constexpr int kHigh = 26;
    m_field->setMinimumWidth(parts::scaled(this, kField));
    const int grip = parts::scaled(this, kGrip);
    QString sheet = QLatin1String(value_row_detail::kSlider);
    const std::initializer_list<std::pair<const char*, QString>> words{
        {"@line@", m_scheme.line.name()},           {"@accent@", m_scheme.accent.name()},
        {"@paper@", m_scheme.paper.name()},         {"@focus@", m_scheme.focus.name()},
        {"@grip@", QString::number(grip)},          {"@over@", QString::number(grip / 2 + 1)},
        {"@round@", QString::number(grip / 2 + 2)}, {"@high@", QString::number(parts::scaled(this, kHigh))}};
    for (const auto& [name, value] : words)
        sheet.replace(QLatin1String(name), value);
    if (m_slider->styleSheet() != sheet)
        m_slider->setStyleSheet(sheet);
}

void ValueRow::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        paintSlider();
}

}  // namespace fb
