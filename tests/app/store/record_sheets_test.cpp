#include "app/store/record_sheets.h"

#include <gtest/gtest.h>

#include "app/store/audit_chain.h"
#include "tests/support/record_folder.h"

namespace fb::test::record_sheets_test {

TEST(RecordSheetsTest, ASheetIsKeptOnceByTheHashOfItsText)
{
    RecordFolder folder;
    Store& store = folder.store();
    const auto saved = saveSheet(store, twoMarks(), momentAt(0));
    ASSERT_TRUE(saved);
    EXPECT_EQ(saved->key, QString::fromLatin1(sha256(QByteArray::fromStdString(textOf(twoMarks())))));
    EXPECT_EQ(saveSheet(store, twoMarks(), momentAt(1))->key, saved->key);
    EXPECT_EQ(readSheets(store)->size(), 1U);
    EXPECT_EQ(readSheet(store, saved->key)->sheet, twoMarks());
    EXPECT_EQ(folder.one(QStringLiteral("SELECT count(*) FROM audit WHERE event = 'SHEET'")), u"1");
    Sheet edited = twoMarks();
    edited.cutPercent = 90.0;
    EXPECT_NE(saveSheet(store, edited, momentAt(2))->key, saved->key) << "an edited one is another";
    EXPECT_EQ(readSheet(store, saved->key)->sheet, twoMarks()) << "and the old one stays";
}

TEST(RecordSheetsTest, TheLastUsedComesFirst)
{
    RecordFolder folder;
    Store& store = folder.store();
    std::vector<QString> keys;
    for (const char* title : {"one", "two", "three"}) {
        Sheet sheet = twoMarks();
        sheet.title = title;
        keys.push_back(saveSheet(store, sheet, momentAt(0))->key);
    }
    EXPECT_EQ(readSheets(store)->front().key, keys[2]);
    ASSERT_TRUE(store.transaction([&] { return useSheet(store, keys[0]); }));
    EXPECT_EQ(readSheets(store)->front().key, keys[0]);
    EXPECT_EQ(readSheets(store)->back().key, keys[1]);
}

TEST(RecordSheetsTest, ASheetThatIsNotThereOrCannotBeReadIsSaid)
{
    RecordFolder folder;
    EXPECT_EQ(readSheet(folder.store(), QStringLiteral("abc")).error().problem, Problem::SheetNotReadable);
    ASSERT_TRUE(
        folder.store().commit({{QStringLiteral("INSERT INTO sheet VALUES ('abc', 't', '{', 1, 'then')")}}));
    EXPECT_EQ(readSheet(folder.store(), QStringLiteral("abc")).error().problem, Problem::SheetNotReadable);
    EXPECT_FALSE(readSheets(folder.store()));
}

TEST(RecordSheetsTest, ASheetThatCouldNotBeReadBackIsNotKept)
{
    RecordFolder folder;
    Sheet nothing = twoMarks();
    nothing.items.clear();
    EXPECT_EQ(saveSheet(folder.store(), nothing, momentAt(0)).error().problem, Problem::SheetNoItems);
    EXPECT_TRUE(readSheets(folder.store())->empty());
}

TEST(RecordSheetsTest, APolicyIsKeptOnce)
{
    RecordFolder folder;
    Store& store = folder.store();
    QString first;
    QString second;
    ASSERT_TRUE(store.transaction([&]() -> Result<bool> {
        first = keepPolicy(store, QStringLiteral("{\"a\": 1}")).value();
        second = keepPolicy(store, QStringLiteral("{\"a\": 1}")).value();
        return true;
    }));
    EXPECT_EQ(first, second);
    EXPECT_EQ(first, QString::fromLatin1(sha256("{\"a\": 1}")));
    EXPECT_EQ(folder.one(QStringLiteral("SELECT count(*) FROM policy_text")), u"1");
}

}  // namespace fb::test::record_sheets_test
