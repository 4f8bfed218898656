#include "app/store/migrations.h"

#include <gtest/gtest.h>

#include <QRegularExpression>

#include "app/store/store.h"
#include "tests/support/store_folder.h"

namespace fb::test::migrations_test {

TEST(MigrationsTest, AnEmptyFileGetsEveryTable)
{
    const StoreFolder folder;
    ASSERT_TRUE(Store::open(folder.file()));
    EXPECT_EQ(folder.sqlite3(QStringLiteral("PRAGMA user_version")), QString::number(migrations().size()));
    EXPECT_EQ(
        folder.sqlite3(QStringLiteral("SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY 1")),
        QStringLiteral("profile\nscreen"));
}

TEST(MigrationsTest, RowsOfAFileOfVersionZeroSurvive)
{
    const StoreFolder folder;
    folder.write({});
    folder.sqlite3(
        QStringLiteral("CREATE TABLE note (words TEXT); INSERT INTO note VALUES ('kept'), ('too')"));
    ASSERT_EQ(folder.sqlite3(QStringLiteral("PRAGMA user_version")), QStringLiteral("0"));
    auto opened = Store::open(folder.file());
    ASSERT_TRUE(opened);
    EXPECT_FALSE(opened->told) << "nothing was put aside";
    EXPECT_EQ(opened->store->rows({QStringLiteral("SELECT words FROM note ORDER BY 1")})->size(), 2U);
    EXPECT_TRUE(opened->store->rows({QStringLiteral("SELECT * FROM profile")}));
}

TEST(MigrationsTest, EachStepFindsTheRowsOfTheOnesBeforeIt)
{
    const StoreFolder folder;
    const std::vector<Migration> first{{{QStringLiteral("CREATE TABLE note (words TEXT)")}}};
    {
        auto opened = Store::open(folder.file(), {first});
        ASSERT_TRUE(opened);
        ASSERT_TRUE(opened->store->commit({{QStringLiteral("INSERT INTO note VALUES ('old')")}}));
    }
    std::vector<Migration> both = first;
    both.push_back({{QStringLiteral("ALTER TABLE note ADD COLUMN lines INTEGER"),
                     QStringLiteral("UPDATE note SET lines = 1")}});
    auto opened = Store::open(folder.file(), {both});
    ASSERT_TRUE(opened);
    EXPECT_FALSE(opened->told);
    const auto rows = opened->store->rows({QStringLiteral("SELECT words, lines FROM note")});
    ASSERT_EQ(rows->size(), 1U);
    EXPECT_EQ(rows->front(), (QVariantList{QStringLiteral("old"), 1}));
}

TEST(MigrationsTest, AStepIsTakenWholeOrNotAtAll)
{
    const StoreFolder folder;
    const std::vector<Migration> good{{{QStringLiteral("CREATE TABLE note (words TEXT)")}}};
    ASSERT_TRUE(Store::open(folder.file(), {good}));
    std::vector<Migration> half = good;
    half.push_back({{QStringLiteral("CREATE TABLE other (words TEXT)"), QStringLiteral("CREATE nonsense")}});
    EXPECT_FALSE(Store::open(folder.file(), {half})) << "a fresh file cannot take the step either";
    ASSERT_EQ(folder.namesAside().size(), 1);
    const QString aside = folder.folder() + QLatin1Char('/') + folder.namesAside().front();
    ASSERT_TRUE(QFile::remove(folder.file()));
    ASSERT_TRUE(QFile::rename(aside, folder.file()));
    EXPECT_EQ(folder.sqlite3(QStringLiteral("SELECT name FROM sqlite_master")), QStringLiteral("note"));
    EXPECT_EQ(folder.sqlite3(QStringLiteral("PRAGMA user_version")), QStringLiteral("1"));
}

TEST(MigrationsTest, TheSchemaSpeaksNothingThatOnlySqliteUnderstands)
{
    const QRegularExpression own(
        QStringLiteral("AUTOINCREMENT|WITHOUT ROWID|STRICT|\\bBLOB\\b|\\bDATETIME\\b|\\bREAL\\b|`|\\[|\\]"),
        QRegularExpression::CaseInsensitiveOption);
    for (const Migration& step : migrations()) {
        for (const QString& sql : step.statements) {
            EXPECT_FALSE(sql.contains(own)) << sql.toStdString();
            EXPECT_EQ(sql.contains(QLatin1String("CREATE TABLE")), sql.contains(QLatin1String("PRIMARY KEY")))
                << sql.toStdString();
        }
    }
}

}  // namespace fb::test::migrations_test
