#include "app/shell/about_dialog.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QTextBrowser>

#include "app/doors/library.h"
#include "app/words/site_words.h"
#include "tests/support/layout_audit.h"

namespace fb::test::about_dialog_test {

TEST(AboutDialogTest, SaysCautionLicenceAndEverySourceOfThePolicy)
{
    const auto library = Library::load();
    ASSERT_TRUE(library.has_value());
    const Policy& policy = (*library)->defaultPolicy();
    AboutDialog about(&policy, nullptr);
    about.show();
    EXPECT_EQ(about.findChild<QLabel*>(QStringLiteral("aboutCaution"))->text(), cautionSentence());
    EXPECT_TRUE(about.findChild<QLabel*>(QStringLiteral("aboutLicence"))
                    ->text()
                    .contains(QLatin1String("version 3")));
    const QString sources = about.findChild<QTextBrowser*>(QStringLiteral("aboutSources"))->toPlainText();
    for (const PolicyField& field : policyFields())
        EXPECT_TRUE(sources.contains(QString::fromStdString(policy.source(field.key)))) << field.name;
    EXPECT_TRUE(layoutFaults(about).isEmpty()) << layoutFaults(about).join('\n').toStdString();
    EXPECT_TRUE(namelessControls(about).isEmpty()) << namelessControls(about).join('\n').toStdString();
}

TEST(AboutDialogTest, OpensBeforeAPolicyIsRead)
{
    AboutDialog about(nullptr, nullptr);
    EXPECT_EQ(about.findChild<QTextBrowser*>(), nullptr);
}

}  // namespace fb::test::about_dialog_test
