#include "app/practice/run_by_site.h"

#include <QGridLayout>
#include <QLabel>
#include <QLocale>
#include <QRadioButton>
#include <QStringList>
#include <algorithm>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/site_words.h"

namespace fb {

RunBySite::RunBySite(QWidget* parent)
    : QWidget(parent),
      m_title(parts::text(this, "bySiteTitle", "small")),
      m_grid(new QGridLayout(this))
{
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setSpacing(0);
    m_grid->setColumnStretch(1, 1);
    m_grid->addWidget(m_title, 0, 0, 1, 2);
}

void RunBySite::makeRows(const std::vector<SiteSummary>& sites)
{
    for (const Row& row : m_rows) {
        delete row.name;
        delete row.numbers;
    }
    m_rows.clear();
    for (const SiteSummary& each : sites) {
        const std::string_view word = wordOf(each.site);
        const QString id = QString::fromLatin1(word.data(), static_cast<qsizetype>(word.size()));
        const Row row{each.site, new QRadioButton(this), parts::text(this, "", "small")};
        row.name->setObjectName(QStringLiteral("runSite.%1").arg(id));
        row.numbers->setObjectName(QStringLiteral("runSiteNumbers.%1").arg(id));
        // The numbers stand under the name, in line with its first letter, from either side.
        m_grid->setColumnMinimumWidth(0, parts::scaled(this, space::kMargin));
        const int line = 1 + 2 * static_cast<int>(m_rows.size());
        m_grid->addWidget(row.name, line, 0, 1, 2);
        m_grid->addWidget(row.numbers, line + 1, 1);
        connect(row.name, &QRadioButton::toggled, this, [this, site = each.site](bool on) {
            if (on)
                Q_EMIT siteAsked(site);
        });
        m_rows.push_back(row);
    }
}

void RunBySite::showState(const PracticeState& state)
{
    constexpr std::size_t kFew = 2;
    setVisible(state.bySite.size() >= kFew);
    if (m_rows.size() != state.bySite.size() ||
        !std::equal(m_rows.begin(), m_rows.end(), state.bySite.begin(),
                    [](const Row& row, const SiteSummary& each) { return row.site == each.site; }))
        makeRows(state.bySite);
    m_title->setText(tr("Site by site: choose whose marks are drawn"));
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        const SiteSummary& each = state.bySite[i];
        m_rows[i].name->setText(parts::alone(siteName(each.site)));
        m_rows[i].numbers->setText(siteNumbers(each.summary));
        //: Told to a screen reader: a site, then what its marks came to.
        m_rows[i].name->setAccessibleName(
            tr("Draw the marks of the %1. %2").arg(siteName(each.site), siteNumbers(each.summary)));
        if (each.site == state.runSite)
            m_rows[i].name->setChecked(true);
    }
}

QString siteNumbers(const Summary& summary)
{
    if (summary.marked == 0)
        return RunBySite::tr("No place was marked here.");
    const QLocale locale;
    return RunBySite::tr("%1 of %2 in the target region, %3 from the ideal point on average.")
        .arg(locale.toString(summary.hits), locale.toString(summary.marked),
             cmText(summary.meanDistance.value()));
}

QString refusalNumbers(const Summary& summary)
{
    const QLocale locale;
    QStringList sentences;
    if (summary.ruledOut > 0) {
        sentences
            << RunBySite::tr("Charts that ruled the site out: %1.").arg(locale.toString(summary.ruledOut));
        if (summary.refusedRight > 0)
            sentences << RunBySite::tr("Refused for the right reason: %1.")
                             .arg(locale.toString(summary.refusedRight));
        if (summary.refusedOther > 0)
            sentences << RunBySite::tr("Refused for another reason: %1.")
                             .arg(locale.toString(summary.refusedOther));
        const int missed = summary.ruledOut - summary.refusedRight - summary.refusedOther;
        if (missed > 0)
            sentences
                << RunBySite::tr("Marked all the same, which is unsafe: %1.").arg(locale.toString(missed));
    }
    if (summary.refusedNeedless > 0)
        sentences << RunBySite::tr("Refused although nothing ruled it out: %1.")
                         .arg(locale.toString(summary.refusedNeedless));
    return sentences.join(QLatin1Char('\n'));
}

}  // namespace fb
