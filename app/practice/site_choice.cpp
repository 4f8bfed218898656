#include "app/practice/site_choice.h"

#include <QCheckBox>
#include <QComboBox>
#include <QEvent>
#include <QLabel>
#include <QVBoxLayout>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/site_words.h"

namespace fb {

namespace site_choice_detail {

QString idOf(const char* what, Site site)
{
    const std::string_view word = wordOf(site);
    return QStringLiteral("%1.%2").arg(QLatin1String(what),
                                       QLatin1String(word.data(), static_cast<qsizetype>(word.size())));
}

Convention conventionAt(const QComboBox& box, int index)
{
    return static_cast<Convention>(box.itemData(index).toInt());
}

}  // namespace site_choice_detail

SiteChoice::SiteChoice(QWidget* parent) : QWidget(parent), m_title(parts::text(this, "sitesTitle"))
{
    using namespace site_choice_detail;
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kTight);
    column->addWidget(m_title);
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        Row& row = m_rows[i];
        row = {kSites[i], new QCheckBox(this), new QComboBox(this)};
        row.asked->setObjectName(idOf("runSite", row.site));
        row.convention->setObjectName(idOf("runConvention", row.site));
        // Long names are shown whole in the list; the box keeps to its room.
        row.convention->setSizeAdjustPolicy(QComboBox::AdjustToContents);
        for (const Convention convention : kConventions) {
            if (siteOf(convention) == row.site)
                row.convention->addItem({}, static_cast<int>(convention));
        }
        auto* under = new QHBoxLayout;
        under->addSpacing(space::kMargin);
        under->addWidget(row.convention, 1);
        column->addWidget(row.asked);
        column->addLayout(under);
        column->addSpacing(space::kTight);
        connect(row.asked, &QCheckBox::toggled, row.convention, &QWidget::setEnabled);
    }
    m_findings = new QCheckBox(this);
    m_findings->setObjectName(QStringLiteral("runFindings"));
    column->addWidget(m_findings);
    say();
}

void SiteChoice::say()
{
    m_title->setText(tr("Sites, and the convention of each"));
    for (const Row& row : m_rows) {
        row.asked->setText(parts::alone(siteName(row.site)));
        row.asked->setAccessibleName(row.asked->text());
        row.convention->setAccessibleName(tr("Convention of the %1").arg(siteName(row.site)));
        for (int i = 0; i < row.convention->count(); ++i)
            row.convention->setItemText(i,
                                        conventionName(site_choice_detail::conventionAt(*row.convention, i)));
    }
    //: Some patients have a note that makes the site unusable; the learner may answer "not here".
    m_findings->setText(tr("Some charts rule the site out"));
    m_findings->setAccessibleName(m_findings->text());
}

void SiteChoice::fill(const RequestMix& mix, const Policy& policy, const OwnChoices& own)
{
    for (const Row& row : m_rows) {
        const Convention convention = own.convention(row.site).value_or(policy.convention(row.site));
        row.asked->setChecked(mix.sites.has(row.site));
        row.convention->setCurrentIndex(row.convention->findData(static_cast<int>(convention)));
        row.convention->setEnabled(mix.sites.has(row.site));
    }
    m_findings->setChecked(mix.findings);
}

RequestMix SiteChoice::mix() const
{
    RequestMix mix;
    for (const Row& row : m_rows)
        mix.sites.set(row.site, row.asked->isChecked());
    mix.findings = m_findings->isChecked();
    return mix;
}

OwnChoices SiteChoice::conventions() const
{
    OwnChoices own;
    for (const Row& row : m_rows)
        own.choose(site_choice_detail::conventionAt(*row.convention, row.convention->currentIndex()));
    return own;
}

void SiteChoice::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
}

}  // namespace fb
