#include "app/store/profile_store.h"

#include <gtest/gtest.h>

#include <QTest>

#include "tests/support/store_folder.h"

namespace fb::test::profile_store_tests {

namespace profile_store_test {

Profile everything()
{
    return {.handLength = Cm{18.3},
            .fingerWidth = Cm{1.57},
            .handedness = Side::Left,
            .sex = Sex::Male,
            .stature = Cm{182.5}};
}

Remembered loadedFrom(ProfileStore& store)
{
    QObject asker;
    std::optional<Remembered> answer;
    store.load(&asker, [&](const Remembered& remembered) { answer = remembered; });
    EXPECT_TRUE(QTest::qWaitFor([&] { return answer.has_value(); }));
    return answer.value_or(Remembered{});
}

template <class Ask>
Result<bool> answerTo(const Ask& ask)
{
    QObject asker;
    std::optional<Result<bool>> answer;
    ask(&asker, [&](const Result<bool>& saved) { answer = saved; });
    EXPECT_TRUE(QTest::qWaitFor([&] { return answer.has_value(); }));
    return answer.value_or(false);
}

Result<bool> saved(ProfileStore& store, const Profile& profile)
{
    return answerTo([&](QObject* asker, const auto& then) { store.save(profile, asker, then); });
}

}  // namespace profile_store_test

using namespace profile_store_test;

TEST(ProfileStoreTest, WhatIsSavedIsLoadedByTheNextStart)
{
    const StoreFolder folder;
    for (const Profile& profile : {everything(), Profile{}, Profile{.fingerWidth = Cm{2.0}}, everything()}) {
        {
            ProfileStore store(folder.file());
            ASSERT_TRUE(saved(store, profile));
        }
        ProfileStore store(folder.file());
        const Remembered remembered = loadedFrom(store);
        EXPECT_EQ(remembered.profile, std::optional(profile));
        EXPECT_FALSE(remembered.trouble);
    }
    EXPECT_EQ(folder.sqlite3(QStringLiteral("SELECT count(*) FROM profile")), QStringLiteral("1"));
}

TEST(ProfileStoreTest, AFirstStartKnowsNoProfileAndHasNoTrouble)
{
    const StoreFolder folder;
    ProfileStore store(folder.file());
    const Remembered remembered = loadedFrom(store);
    EXPECT_FALSE(remembered.profile);
    EXPECT_TRUE(remembered.scales.empty());
    EXPECT_FALSE(remembered.trouble);
}

TEST(ProfileStoreTest, EachScreenKeepsItsOwnScale)
{
    const StoreFolder folder;
    const QString odd = QStringLiteral("eDP-1|'; DROP TABLE screen; --|ü");
    const auto save = [](ProfileStore& store, const QString& screen, double scale) {
        return answerTo([&](QObject* asker, const auto& then) {
            store.saveScale(screen, PixelsPerMm{scale}, asker, then);
        });
    };
    {
        ProfileStore store(folder.file());
        ASSERT_TRUE(save(store, QStringLiteral("one"), 3.7));
        ASSERT_TRUE(save(store, odd, 11.25));
        ASSERT_TRUE(save(store, QStringLiteral("one"), 3.8));
    }
    ProfileStore store(folder.file());
    const auto scales = loadedFrom(store).scales;
    EXPECT_EQ(scales.size(), 2U);
    EXPECT_EQ(scales.at(QStringLiteral("one")), PixelsPerMm{3.8});
    EXPECT_EQ(scales.at(odd), PixelsPerMm{11.25});
}

TEST(ProfileStoreTest, AValueThatMakesNoSenseReadsAsNone)
{
    const StoreFolder folder;
    ASSERT_TRUE(Store::open(folder.file()));
    folder.sqlite3(
        QStringLiteral("INSERT INTO profile VALUES (1, 41, 'wide', 'left', 'other', 170, 'then')"));
    ProfileStore store(folder.file());
    const Remembered remembered = loadedFrom(store);
    ASSERT_TRUE(remembered.profile);
    EXPECT_EQ(*remembered.profile, (Profile{.handedness = Side::Left, .stature = Cm{170.0}}));
}

TEST(ProfileStoreTest, TroubleIsToldAndEveryWriteThatFailsSaysSo)
{
    const StoreFolder folder;
    QFile inTheWay(folder.root() + QStringLiteral("/data"));
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly));
    ProfileStore store(folder.file());
    const Remembered remembered = loadedFrom(store);
    ASSERT_TRUE(remembered.trouble);
    EXPECT_EQ(remembered.trouble->problem, Problem::StoreNotWritable);
    EXPECT_FALSE(remembered.profile);
    const auto refused = saved(store, everything());
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().problem, Problem::StoreNotWritable);
    inTheWay.remove();
    EXPECT_TRUE(saved(store, everything())) << "the way is free again";
}

TEST(ProfileStoreTest, SqlitesOwnCommandLineReadsItAndFindsItWhole)
{
    const StoreFolder folder;
    {
        ProfileStore store(folder.file());
        ASSERT_TRUE(saved(store, everything()));
        EXPECT_EQ(folder.sqlite3(QStringLiteral("SELECT hand_length_cm FROM profile")),
                  QStringLiteral("18.3"))
            << "also while it is open";
    }
    EXPECT_EQ(folder.sqlite3(QStringLiteral("PRAGMA integrity_check")), QStringLiteral("ok"));
    EXPECT_EQ(folder.sqlite3(QStringLiteral(
                  "SELECT hand_length_cm, finger_width_cm, writing_hand, sex, stature_cm FROM profile")),
              QStringLiteral("18.3|1.57|left|male|182.5"));
    const QString when = folder.sqlite3(QStringLiteral("SELECT updated_at FROM profile"));
    EXPECT_TRUE(QDateTime::fromString(when, Qt::ISODateWithMs).isValid()) << when.toStdString();
}

}  // namespace fb::test::profile_store_tests
