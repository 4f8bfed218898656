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

}  // namespace fb::test::store_thread_tests
