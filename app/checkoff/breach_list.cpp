#include "app/checkoff/breach_list.h"

#include <QHBoxLayout>
#include <QLabel>
#include <algorithm>

#include "app/look/icons.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/check_off_words.h"

namespace fb {

namespace breach_list_detail {

constexpr int kIcon = 16;

}  // namespace breach_list_detail

std::vector<Breach> breachesSoFar(const CheckOffState& state)
{
    std::vector<Breach> breaches = state.result.procedure.breaches;
    std::erase_if(breaches, [&state](const Breach& breach) {
        return breach.kind == ConstraintKind::After &&
               std::ranges::find(state.observations, breach.then, &Observation::step) ==
                   state.observations.end();
    });
    return breaches;
}

BreachList::BreachList(QWidget* parent)
    : QWidget(parent),
      m_lines(new QVBoxLayout),
      m_none(parts::text(this, "noBreach", "small"))
{
    setObjectName(QStringLiteral("breaches"));
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(space::kTight);
    m_lines->setSpacing(space::kTight);
    rows->addWidget(m_none);
    rows->addLayout(m_lines);
    rows->addStretch(1);
    showBreaches({});
}

void BreachList::showBreaches(const std::vector<Breach>& breaches, bool isOver)
{
    //: No order of steps was broken.
    m_none->setText(isOver ? tr("The order was kept.") : tr("Order kept so far."));
    m_none->setVisible(breaches.empty());
    while (QLayoutItem* item = m_lines->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    m_icons.clear();
    m_breaches = breaches;
    for (const Breach& breach : breaches) {
        auto* line = new QWidget(this);
        auto* row = new QHBoxLayout(line);
        row->setContentsMargins(0, 0, 0, 0);
        row->setSpacing(space::kNear);
        auto* icon = new QLabel(line);
        icon->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
        auto* words = parts::text(line, "breach");
        const QString sentence = breachSentence(breach);
        //: An order of steps whose breach endangers somebody; %1 is the sentence.
        words->setText(breach.severity == Severity::Hard ? tr("Unsafe: %1").arg(sentence) : sentence);
        row->addWidget(icon, 0, Qt::AlignTop);
        row->addWidget(words, 1);
        m_icons.push_back(icon);
        m_lines->addWidget(line);
    }
    paint();
}

void BreachList::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    paint();
}

void BreachList::paint()
{
    const int size = parts::scaled(this, breach_list_detail::kIcon);
    for (std::size_t i = 0; i < m_icons.size(); ++i) {
        const bool hard = m_breaches[i].severity == Severity::Hard;
        m_icons[i]->setPixmap(pixmapFor(hard ? Icon::Unsafe : Icon::Caution,
                                        hard ? m_scheme.danger : m_scheme.ink, size, devicePixelRatioF()));
        m_icons[i]->setMargin(2);
    }
}

}  // namespace fb
