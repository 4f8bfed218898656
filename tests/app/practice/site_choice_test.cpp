#include "app/practice/site_choice.h"

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QTest>

#include "app/words/site_words.h"
#include "tests/support/layout_audit.h"
#include "tests/support/sample_run.h"

namespace fb::test::site_choice_test {

TEST(SiteChoiceTest, ShowsWhatItIsFilledWithAndGivesItBack)
{
    const SampleRun run;
    OwnChoices own;
    own.choose(Convention::VastusHandbreadths);
    const RequestMix mix{{{false, true, true}}, true};
    SiteChoice choice;
    choice.fill(mix, *run.presenter.labPolicy(), own);
    EXPECT_EQ(choice.mix(), mix);
    EXPECT_EQ(choice.conventions().convention(Site::VastusLateralis),
              std::optional(Convention::VastusHandbreadths));
    for (const Site site : {Site::Deltoid, Site::Ventrogluteal})
        EXPECT_EQ(choice.conventions().convention(site),
                  std::optional(run.presenter.labPolicy()->convention(site)));
}

TEST(SiteChoiceTest, EachSiteOffersItsOwnConventionsOnly)
{
    const SampleRun run;
    SiteChoice choice;
    choice.fill({SiteSet::all(), false}, *run.presenter.labPolicy(), {});
    int offered = 0;
    for (const Site site : kSites) {
        auto* box = choice.findChild<QComboBox*>(
            QStringLiteral("runConvention.%1").arg(QString::fromStdString(std::string(wordOf(site)))));
        ASSERT_NE(box, nullptr);
        offered += box->count();
        for (int i = 0; i < box->count(); ++i) {
            const auto convention = static_cast<Convention>(box->itemData(i).toInt());
            EXPECT_EQ(siteOf(convention), site);
            EXPECT_EQ(box->itemText(i), conventionName(convention));
        }
    }
    EXPECT_EQ(offered, static_cast<int>(kConventions.size()));
}

TEST(SiteChoiceTest, ASiteThatIsNotAskedNeedsNoConvention)
{
    const SampleRun run;
    SiteChoice choice;
    choice.fill({SiteSet::all(), false}, *run.presenter.labPolicy(), {});
    choice.resize(choice.sizeHint());
    choice.show();
    auto* box = choice.findChild<QComboBox*>(QStringLiteral("runConvention.deltoid"));
    EXPECT_TRUE(box->isEnabled());
    QTest::mouseClick(choice.findChild<QCheckBox*>(QStringLiteral("runSite.deltoid")), Qt::LeftButton, {},
                      {8, 8});
    EXPECT_FALSE(box->isEnabled());
    EXPECT_FALSE(choice.mix().sites.has(Site::Deltoid));
    EXPECT_TRUE(namelessControls(choice).isEmpty()) << namelessControls(choice).join('\n').toStdString();
    EXPECT_TRUE(layoutFaults(choice).isEmpty()) << layoutFaults(choice).join('\n').toStdString();
}

}  // namespace fb::test::site_choice_test
