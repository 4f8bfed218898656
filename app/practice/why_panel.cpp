#include "app/practice/why_panel.h"

#include <QCheckBox>
#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <algorithm>
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
      m_hand(parts::text(this, "whyHand")),
      m_handShown(new QCheckBox(this)),
      m_othersTitle(parts::text(this, "whyOthersTitle")),
      m_grid(new QGridLayout)
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kNear);
    column->addWidget(m_name);
    column->addWidget(m_rule);
    column->addWidget(m_source);
    column->addWidget(m_hand);
    column->addWidget(m_handShown);
    column->addSpacing(space::kNear);
    column->addWidget(m_othersTitle);
    m_grid->setHorizontalSpacing(space::kNear);
    m_grid->setVerticalSpacing(0);
    m_grid->setColumnStretch(1, 1);
    column->addLayout(m_grid);
    m_handShown->setObjectName(QStringLiteral("handShown"));
    connect(m_handShown, &QCheckBox::clicked, this, &WhyPanel::handToggled);
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
    const auto& hand = state.target->hand;
    m_hand->setVisible(hand.has_value());
    m_handShown->setVisible(hand.has_value());
    if (hand)
        m_hand->setText(handText(*hand));
    //: The hand drawn over the plate as a nurse would lay it.
    m_handShown->setText(tr("Show the hand"));
    m_handShown->setAccessibleName(m_handShown->text());
    m_handShown->setChecked(state.handShown);
    m_othersTitle->setText(tr("Other conventions on this body"));
    m_othersTitle->setVisible(!state.others.empty());
    if (!std::ranges::equal(m_rows, state.others, {}, &OtherRow::convention, &OtherPoint::convention))
        makeRows(state.others);
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        const OtherPoint& other = state.others[i];
        const QString name = conventionName(other.convention);
        m_rows[i].name->setText(name);
        m_rows[i].box->setChecked(other.shown);
        m_rows[i].place->setText(otherPlaceText(state.target->site, other));
        //: Told to a screen reader: convention, then where its point lies.
        m_rows[i].box->setAccessibleName(
            tr("Show %1, %2").arg(name, otherPlaceText(state.target->site, other)));
    }
}

namespace why_panel_detail {

QString alongLimb(Site site, Cm lower)
{
    const QString far = cmText(std::abs(lower.value()));
    const bool isLower = lower.value() > 0.0;
    if (site == Site::Deltoid)
        return isLower ? WhyPanel::tr("%1 lower on the arm").arg(far)
                       : WhyPanel::tr("%1 higher on the arm").arg(far);
    return isLower ? WhyPanel::tr("%1 lower on the thigh").arg(far)
                   : WhyPanel::tr("%1 higher on the thigh").arg(far);
}

// On the hip two points part in any way.
QString onHip(Cm lower, Cm forward)
{
    const QString far = cmText(std::hypot(lower.value(), forward.value()));
    if (std::abs(lower.value()) >= std::abs(forward.value()))
        return lower.value() > 0.0 ? WhyPanel::tr("%1 away, mostly toward the foot").arg(far)
                                   : WhyPanel::tr("%1 away, mostly toward the head").arg(far);
    return forward.value() > 0.0 ? WhyPanel::tr("%1 away, mostly toward the front").arg(far)
                                 : WhyPanel::tr("%1 away, mostly toward the back").arg(far);
}

}  // namespace why_panel_detail

QString otherPlaceText(Site site, const OtherPoint& other)
{
    constexpr double kNothing = 0.05;
    const bool nowhereElse = std::abs(other.lower.value()) < kNothing;
    if (site != Site::Ventrogluteal)
        return nowhereElse ? WhyPanel::tr("at the same height")
                           : why_panel_detail::alongLimb(site, other.lower);
    if (nowhereElse && std::abs(other.forward.value()) < kNothing)
        return WhyPanel::tr("at the same place");
    return why_panel_detail::onHip(other.lower, other.forward);
}

QString handText(const HandPose& pose)
{
    const QString length = cmText(pose.length.value());
    const bool left = pose.hand == Side::Left;
    if (pose.pin == Pin::Spine)
        //: The nurse's hand on the patient's hip; %1 is its length. Spine: anterior superior iliac spine.
        return left
                   ? WhyPanel::tr("Your left hand is laid, %1 long: the tip of the index finger lies on the "
                                  "spine and holds the hand in place.")
                         .arg(length)
                   : WhyPanel::tr("Your right hand is laid, %1 long: the tip of the index finger lies on the "
                                  "spine and holds the hand in place.")
                         .arg(length);
    return left
               ? WhyPanel::tr("Your left hand is laid, %1 long: it is too short for both, so the heel of the "
                              "palm stays on the trochanter and the index finger points at the spine.")
                     .arg(length)
               : WhyPanel::tr(
                     "Your right hand is laid, %1 long: it is too short for both, so the heel of the "
                     "palm stays on the trochanter and the index finger points at the spine.")
                     .arg(length);
}

}  // namespace fb
