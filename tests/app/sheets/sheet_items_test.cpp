#include "app/sheets/sheet_items.h"

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QListWidget>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "app/words/check_off_words.h"
#include "core/session/sheet_defaults.h"
#include "tests/support/odd_sheet.h"

namespace fb::test::sheet_items_tests {

namespace sheet_items_test {

class Items {
public:
    explicit Items(const Sheet& sheet)
    {
        part.fill(sheet);
        part.show();
    }

    void press(const char* name)
    {
        QTest::mouseClick(part.findChild<QPushButton*>(QLatin1String(name)), Qt::LeftButton);
    }
    void choose(const char* name, int data)
    {
        auto* box = part.findChild<QComboBox*>(QLatin1String(name));
        box->setCurrentIndex(box->findData(data));
    }
    [[nodiscard]] bool may(const char* name)
    {
        return part.findChild<QPushButton*>(QLatin1String(name))->isEnabled();
    }
    [[nodiscard]] QListWidget& list() { return *part.findChild<QListWidget*>("sheetItems"); }
    [[nodiscard]] std::vector<SheetItem> items()
    {
        Sheet sheet;
        EXPECT_TRUE(part.writeTo(sheet));
        return sheet.items;
    }

    SheetItems part;
};

}  // namespace sheet_items_test

TEST(SheetItemsTest, TheListSaysEachItemInWords)
{
    sheet_items_test::Items items(oddSheet());
    ASSERT_EQ(items.list().count(), 3);
    for (int i = 0; i < 3; ++i)
        EXPECT_EQ(items.list().item(i)->text(),
                  QString::number(i + 1) + ". " + itemName(oddSheet().items[static_cast<std::size_t>(i)]));
}

TEST(SheetItemsTest, ItemsAreAddedRemovedAndMoved)
{
    sheet_items_test::Items items(oddSheet());
    const auto before = items.items();
    QSignalSpy changed(&items.part, &SheetPart::changed);
    items.list().setCurrentRow(1);
    items.press("itemDown");
    EXPECT_EQ(items.items(), (std::vector{before[0], before[2], before[1]}));
    EXPECT_EQ(items.list().currentRow(), 2);
    items.press("itemUp");
    EXPECT_EQ(items.items(), before);
    items.press("addItem");
    EXPECT_EQ(items.items(), (std::vector{before[0], before[1], before[1], before[2]}));
    items.press("removeItem");
    EXPECT_EQ(items.items(), before);
    EXPECT_EQ(changed.count(), 4);
    items.list().setCurrentRow(0);
    EXPECT_FALSE(items.may("itemUp"));
    items.list().setCurrentRow(2);
    EXPECT_FALSE(items.may("itemDown"));
}

TEST(SheetItemsTest, TheLastOneMayGoAndTheFirstOneCome)
{
    sheet_items_test::Items items(plainSheet());
    items.press("removeItem");
    EXPECT_TRUE(items.items().empty());
    EXPECT_FALSE(items.may("removeItem"));
    EXPECT_FALSE(items.part.findChild<QComboBox*>("itemSite")->isEnabled());
    items.press("addItem");
    EXPECT_EQ(items.items(), plainSheet().items);
}

TEST(SheetItemsTest, NoMoreThanASheetMayHold)
{
    sheet_items_test::Items items(plainSheet());
    while (items.may("addItem"))
        items.press("addItem");
    EXPECT_EQ(items.items().size(), static_cast<std::size_t>(kSheetMostItems));
}

TEST(SheetItemsTest, AnotherSiteOffersOnlyItsOwnViews)
{
    sheet_items_test::Items items(plainSheet());
    for (const Site site : kSites) {
        items.choose("itemSite", static_cast<int>(site));
        const auto views = askedViews(site);
        const auto* box = items.part.findChild<QComboBox*>("itemView");
        ASSERT_EQ(box->count(), static_cast<int>(views.size()));
        EXPECT_EQ(items.items()[0].site, site);
        EXPECT_EQ(items.items()[0].view, views.front());
    }
}

TEST(SheetItemsTest, EveryFieldOfAnItemIsTaken)
{
    sheet_items_test::Items items(plainSheet());
    items.choose("itemSide", static_cast<int>(Side::Right));
    items.choose("itemSite", static_cast<int>(Site::VastusLateralis));
    items.choose("itemView", static_cast<int>(View::ThighFront));
    items.choose("itemHelp", static_cast<int>(HelpLevel::DrawnAndNamed));
    EXPECT_EQ(items.items()[0], (SheetItem{Site::VastusLateralis, Side::Right, View::ThighFront,
                                           HelpLevel::DrawnAndNamed, false}));
    items.choose("itemSide", -1);
    EXPECT_EQ(items.items()[0].side, std::nullopt);
    items.part.findChild<QCheckBox*>("itemByHand")->click();
    EXPECT_TRUE(items.items()[0].byHand);
    // By hand nothing is drawn.
    EXPECT_FALSE(items.part.findChild<QComboBox*>("itemHelp")->isEnabled());
}

}  // namespace fb::test::sheet_items_tests
