#include "app/shell/about_dialog.h"

#include <QEvent>
#include <QLabel>
#include <QPushButton>
#include <QStringList>
#include <QTextBrowser>
#include <QVBoxLayout>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/site_words.h"

namespace fb {

namespace about_detail {

QString sourcesAsHtml(const Policy& policy)
{
    QStringList sources;
    for (const PolicyField& field : policyFields())
        sources << policySource(policy, field.key).toHtmlEscaped();
    sources.removeDuplicates();
    return QStringLiteral("<p>%1</p><ul><li>%2</li></ul>")
        .arg(AboutDialog::tr("The numbers of the policy in use come from:").toHtmlEscaped(),
             sources.join(QStringLiteral("</li><li>")));
}

}  // namespace about_detail

AboutDialog::AboutDialog(const Policy* policy, QWidget* parent)
    : QDialog(parent),
      m_title(parts::text(this, "aboutTitle", "title")),
      m_version(parts::text(this, "aboutVersion", "small")),
      m_purpose(parts::text(this, "aboutPurpose")),
      m_caution(parts::text(this, "aboutCaution")),
      m_licence(parts::text(this, "aboutLicence", "small")),
      m_close(parts::mainButton(this, "closeAbout"))
{
    setObjectName(QStringLiteral("aboutDialog"));
    if (policy) {
        m_policy = *policy;
        m_sources = new QTextBrowser(this);
        m_sources->setObjectName(QStringLiteral("aboutSources"));
    }
    m_close->setDefault(true);
    connect(m_close, &QPushButton::clicked, this, &QDialog::accept);
    layOut();
    say();
}

void AboutDialog::layOut()
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kMargin, space::kMargin, space::kMargin, space::kMargin);
    column->setSpacing(space::kNear);
    for (QWidget* part : std::initializer_list<QWidget*>{m_title, m_version, m_purpose, m_caution})
        column->addWidget(part);
    if (m_sources)
        column->addWidget(m_sources, 1);
    column->addWidget(m_licence);
    column->addWidget(m_close, 0, Qt::AlignTrailing);
    constexpr int kWidth = 620;
    constexpr int kHeight = 560;
    resize(parts::scaled(this, kWidth), parts::scaled(this, kHeight));
}

void AboutDialog::say()
{
    setWindowTitle(tr("About Fingerbreadth"));
    m_title->setText(tr("Fingerbreadth"));
    m_version->setText(tr("Version %1").arg(QStringLiteral(FINGERBREADTH_VERSION)));
    m_purpose->setText(
        tr("Practise finding and marking the sites of intramuscular injections on drawn bodies, graded in "
           "centimetres with the reason."));
    m_caution->setText(cautionSentence());
    m_licence->setText(
        tr("Free software under the GNU General Public License, version 3 or later; without any warranty."));
    parts::say(m_close, tr("Close"));
    if (!m_sources)
        return;
    m_sources->setAccessibleName(tr("Sources"));
    m_sources->setHtml(about_detail::sourcesAsHtml(*m_policy));
}

void AboutDialog::changeEvent(QEvent* event)
{
    QDialog::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
}

}  // namespace fb
