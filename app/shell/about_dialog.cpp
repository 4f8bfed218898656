#include "app/shell/about_dialog.h"

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
        sources << QString::fromStdString(policy.source(field.key)).toHtmlEscaped();
    sources.removeDuplicates();
    return QStringLiteral("<p>%1</p><ul><li>%2</li></ul>")
        .arg(AboutDialog::tr("The numbers of the policy in use come from:").toHtmlEscaped(),
             sources.join(QStringLiteral("</li><li>")));
}

}  // namespace about_detail

AboutDialog::AboutDialog(const Policy* policy, QWidget* parent) : QDialog(parent)
{
    setObjectName(QStringLiteral("aboutDialog"));
    setWindowTitle(tr("About Fingerbreadth"));
    auto* title = parts::text(this, "aboutTitle", "title");
    auto* version = parts::text(this, "aboutVersion", "small");
    auto* purpose = parts::text(this, "aboutPurpose");
    auto* caution = parts::text(this, "aboutCaution");
    auto* licence = parts::text(this, "aboutLicence", "small");
    auto* close = parts::mainButton(this, "closeAbout");
    title->setText(tr("Fingerbreadth"));
    version->setText(tr("Version %1").arg(QStringLiteral(FINGERBREADTH_VERSION)));
    purpose->setText(
        tr("Practise finding and marking the sites of intramuscular injections on drawn bodies, graded in "
           "centimetres with the reason."));
    caution->setText(cautionSentence());
    licence->setText(
        tr("Free software under the GNU General Public License, version 3 or later; without any warranty."));
    parts::say(close, tr("Close"));
    close->setDefault(true);
    connect(close, &QPushButton::clicked, this, &QDialog::accept);

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kMargin, space::kMargin, space::kMargin, space::kMargin);
    column->setSpacing(space::kNear);
    for (QWidget* part : std::initializer_list<QWidget*>{title, version, purpose, caution})
        column->addWidget(part);
    if (policy) {
        auto* sources = new QTextBrowser(this);
        sources->setObjectName(QStringLiteral("aboutSources"));
        sources->setAccessibleName(tr("Sources"));
        sources->setHtml(about_detail::sourcesAsHtml(*policy));
        column->addWidget(sources, 1);
    }
    column->addWidget(licence);
    column->addWidget(close, 0, Qt::AlignTrailing);
    constexpr int kWidth = 620;
    constexpr int kHeight = 560;
    resize(parts::scaled(this, kWidth), parts::scaled(this, kHeight));
}

}  // namespace fb
