#include "app/practice/why_panel.h"

#include <QCheckBox>
#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <cmath>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/site_words.h"

namespace fb {

WhyPanel::WhyPanel(QWidget* parent)
    : QWidget(parent),
      m_name(parts::text(this, "whyName", "request")),
      m_rule(parts::text(this, "whyRule")),
      m_source(parts::text(this, "whySource", "small")),
      m_othersTitle(parts::text(this, "whyOthersTitle")),
      m_grid(new QGridLayout)
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kNear);
    column->addWidget(m_name);
    column->addWidget(m_rule);
    column->addWidget(m_source);
    column->addSpacing(space::kNear);
    column->addWidget(m_othersTitle);
    m_grid->setHorizontalSpacing(space::kNear);
    m_grid->setVerticalSpacing(0);
    m_grid->setColumnStretch(1, 1);
    column->addLayout(m_grid);
}

void WhyPanel::makeRows(const std::vector<OtherPoint>& others)
{
    for (const OtherRow& row : m_rows) {
        delete row.box;
        delete row.name;
        delete row.place;
    }
    m_rows.clear();
    for (const OtherPoint& other : others) {
        const std::string_view word = wordOf(other.convention);
        const QString id = QString::fromLatin1(word.data(), static_cast<qsizetype>(word.size()));
        OtherRow row{other.convention, new QCheckBox(this), parts::text(this, ""),
                     parts::text(this, "", "small")};
        row.box->setObjectName(QStringLiteral("other.%1").arg(id));
        row.name->setObjectName(QStringLiteral("name.%1").arg(id));
        row.place->setObjectName(QStringLiteral("place.%1").arg(id));
        row.name->installEventFilter(this);
        // Two lines a convention: box and name, then its place under the name.
        const int line = 2 * static_cast<int>(m_rows.size());
        m_grid->addWidget(row.box, line, 0);
        m_grid->addWidget(row.name, line, 1);
        m_grid->addWidget(row.place, line + 1, 1);
        connect(row.box, &QCheckBox::toggled, this, [this, convention = other.convention](bool shown) {
            Q_EMIT otherToggled(convention, shown);
        });
        m_rows.push_back(row);
    }
}

bool WhyPanel::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::MouseButtonPress) {
        for (const OtherRow& row : m_rows) {
            if (watched == row.name)
                row.box->click();
        }
    }
    return QWidget::eventFilter(watched, event);
}

void WhyPanel::showState(const PracticeState& state)
{
    if (!state.target || !state.policy)
        return;
    m_name->setText(conventionName(state.convention));
    m_rule->setText(conventionRule(state.convention, *state.policy, *state.target));
    //: %1 is where the numbers were published, or the words of the lab.
    m_source->setText(tr("Source: %1").arg(conventionSource(state.convention, *state.policy)));
    m_othersTitle->setText(tr("Other conventions on this body"));
    if (m_rows.size() != state.others.size())
        makeRows(state.others);
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        const OtherPoint& other = state.others[i];
        const QString name = conventionName(other.convention);
        m_rows[i].name->setText(name);
        m_rows[i].box->setChecked(other.shown);
        m_rows[i].place->setText(otherPlaceText(other.lower));
        //: Told to a screen reader: convention, then where its point lies.
        m_rows[i].box->setAccessibleName(tr("Show %1, %2").arg(name, otherPlaceText(other.lower)));
    }
}

QString otherPlaceText(Cm lower)
{
    constexpr double kNothing = 0.05;
    if (std::abs(lower.value()) < kNothing)
        return WhyPanel::tr("at the same height");
    return lower.value() > 0.0 ? WhyPanel::tr("%1 lower on the arm").arg(cmText(lower.value()))
                               : WhyPanel::tr("%1 higher on the arm").arg(cmText(-lower.value()));
}

}  // namespace fb
