#include "app/store/store_thread.h"

#include <gtest/gtest.h>

#include <QTest>

#include "tests/support/store_folder.h"

namespace fb::test::store_thread_tests {

namespace store_thread_test {

StoreThread::Then writes(const Result<Store*>& store, const QString& words)
{
    EXPECT_TRUE(store);
    EXPECT_TRUE((*store)->commit({{QStringLiteral("CREATE TABLE IF NOT EXISTS note (words VARCHAR(80))")},
                                  {QStringLiteral("INSERT INTO note VALUES (?)"), {words}}}));
    return {};
}

}  // namespace store_thread_test

using store_thread_test::writes;

TEST(StoreThreadTest, WorkIsDoneElsewhereAndAnsweredHereInOrder)
{
    const StoreFolder folder;
    StoreThread thread(folder.file());
    QObject asker;
    std::vector<int> answers;
    for (int i = 0; i < 20; ++i) {
        thread.ask(&asker, [&, i, here = QThread::currentThread()](const Result<Store*>& store) {
            EXPECT_TRUE(store);
            EXPECT_NE(QThread::currentThread(), here);
            return [&, i, here] {
                EXPECT_EQ(QThread::currentThread(), here);
                answers.push_back(i);
            };
        });
    }
    EXPECT_TRUE(answers.empty()) << "nobody waits for the disk";
    ASSERT_TRUE(QTest::qWaitFor([&] { return answers.size() == 20; }));
    for (int i = 0; i < 20; ++i)
        EXPECT_EQ(answers[static_cast<std::size_t>(i)], i);
}

TEST(StoreThreadTest, WhatWasAskedIsOnDiskBeforeTheThreadEnds)
{
    const StoreFolder folder;
    {
        StoreThread thread(folder.file());
        QObject asker;
        for (int i = 0; i < 30; ++i)
            thread.ask(&asker, [i](const auto& store) { return writes(store, QString::number(i)); });
    }
    EXPECT_EQ(folder.sqlite3(QStringLiteral("SELECT count(*), max(words + 0) FROM note")),
              QStringLiteral("30|29"));
}

TEST(StoreThreadTest, NobodyIsAnsweredWhoIsGone)
{
    const StoreFolder folder;
    StoreThread thread(folder.file());
    QObject stays;
    auto goes = std::make_unique<QObject>();
    bool isAnswered = false;
    bool isLast = false;
    thread.ask(goes.get(), [&](const auto& store) {
        writes(store, QStringLiteral("a"));
        return [&] { isAnswered = true; };
    });
    goes.reset();
    thread.ask(&stays, [&](const auto&) { return [&] { isLast = true; }; });
    ASSERT_TRUE(QTest::qWaitFor([&] { return isLast; }));
    EXPECT_FALSE(isAnswered);
    EXPECT_EQ(folder.sqlite3(QStringLiteral("SELECT words FROM note")), QStringLiteral("a"))
        << "the work is done all the same";
}

TEST(StoreThreadTest, AStoreThatCannotBeOpenedIsTriedAgainWithTheNextWork)
{
    const StoreFolder folder;
    QFile inTheWay(folder.root() + QStringLiteral("/data"));
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly));
    StoreThread thread(folder.file());
    QObject asker;
    std::vector<bool> opened;
    const auto ask = [&] {
        thread.ask(&asker, [&](const auto& store) {
            return [&, isOpen = store.has_value()] { opened.push_back(isOpen); };
        });
    };
    ask();
    ASSERT_TRUE(QTest::qWaitFor([&] { return opened.size() == 1; }));
    inTheWay.remove();
    ask();
    ASSERT_TRUE(QTest::qWaitFor([&] { return opened.size() == 2; }));
    EXPECT_EQ(opened, (std::vector{false, true}));
}

TEST(StoreThreadTest, WhatOpeningToldIsTakenOnce)
{
    const StoreFolder folder;
    folder.write("no database at all");
    StoreThread thread(folder.file());
    QObject asker;
    std::vector<std::optional<Fault>> told;
    for (int i = 0; i < 2; ++i) {
        thread.ask(&asker,
                   [&](const auto&) { return [&, fault = thread.takeTold()] { told.push_back(fault); }; });
    }
    ASSERT_TRUE(QTest::qWaitFor([&] { return told.size() == 2; }));
    ASSERT_TRUE(told[0]);
    EXPECT_EQ(told[0]->problem, Problem::StoreBroken);
    EXPECT_FALSE(told[1]);
}

TEST(StoreThreadTest, AStoreIsTakenOutClosedAndAnotherPutIn)
{
    const StoreFolder folder;
    int opened = 0;
    StoreThread thread([&]() -> Result<Store::Opened> {
        ++opened;
        return Store::open(folder.file());
    });
    QObject asker;
    QStringList words;
    thread.ask(&asker, [&](const Result<Store*>& store) -> StoreThread::Then {
        writes(store, QStringLiteral("before"));
        thread.takeOut().reset();
        thread.putIn(std::move(Store::open(folder.file())->store));
        return {};
    });
    thread.ask(&asker, [](const Result<Store*>& store) { return writes(store, QStringLiteral("after")); });
    thread.ask(&asker, [&](const Result<Store*>&) -> StoreThread::Then {
        thread.takeOut().reset();
        return {};
    });
    bool isRead = false;
    thread.ask(&asker, [&](const Result<Store*>& store) -> StoreThread::Then {
        const auto rows = (*store)->rows({QStringLiteral("SELECT words FROM note")});
        for (const QVariantList& row : *rows)
            words << row.front().toString();
        return [&] { isRead = true; };
    });
    ASSERT_TRUE(QTest::qWaitFor([&] { return isRead; }));
    EXPECT_EQ(words, (QStringList{QStringLiteral("before"), QStringLiteral("after")}));
    EXPECT_EQ(opened, 2) << "once at first, and once where nothing was put in";
}

TEST(StoreThreadTest, WhilePausedTheStoreIsClosedAndWorkWaits)
{
    const StoreFolder folder;
    StoreThread thread(folder.file());
    QObject asker;
    thread.ask(&asker, [](const Result<Store*>& store) { return writes(store, QStringLiteral("first")); });
    auto pause = thread.pause();
    EXPECT_EQ(folder.sqlite3(QStringLiteral("SELECT words FROM note")), QStringLiteral("first"));
    EXPECT_FALSE(QFileInfo::exists(folder.file() + QStringLiteral("-wal"))) << "closed";
    bool isDone = false;
    thread.ask(&asker, [&](const Result<Store*>& store) -> StoreThread::Then {
        writes(store, QStringLiteral("second"));
        return [&] { isDone = true; };
    });
    QTest::qWait(50);
    EXPECT_FALSE(isDone);
    pause.reset();
    EXPECT_TRUE(QTest::qWaitFor([&] { return isDone; }));
}

}  // namespace fb::test::store_thread_tests
