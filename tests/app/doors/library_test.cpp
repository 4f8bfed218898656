#include "app/doors/library.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>
#include <algorithm>
#include <thread>
#include <vector>

namespace fb::library_tests {

namespace library_test {

std::shared_ptr<const Library> freshLibrary()
{
    auto loaded = Library::load();
    EXPECT_TRUE(loaded.has_value());
    return loaded ? *loaded : nullptr;
}

QString policyFileWith(const QTemporaryDir& folder, const QByteArray& text)
{
    const QString path = folder.filePath(QStringLiteral("policy.json"));
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(text);
    return path;
}

}  // namespace library_test

using namespace library_test;

TEST(LibraryTest, EveryShippedPlateIsReadAndShowsItsOwnView)
{
    const auto shelf = freshLibrary();
    std::vector<View> views(kViews.begin(), kViews.end());
    views.push_back(View::OpenHand);
    for (const View view : views) {
        EXPECT_FALSE(shelf->isRead(view)) << wordOf(view);
        const auto plate = shelf->plate(view);
        ASSERT_TRUE(plate.has_value())
            << wordOf(view) << ": " << plate.error().where << " " << plate.error().what;
        EXPECT_EQ((*plate)->view, view);
        EXPECT_TRUE(shelf->isRead(view)) << wordOf(view);
    }
}

TEST(LibraryTest, APlateIsReadOnceWhoeverAsks)
{
    const auto shelf = freshLibrary();
    std::array<const Plate*, 4> seen{};
    std::vector<std::thread> readers;
    for (const Plate*& one : seen)
        readers.emplace_back([&one, &shelf] { one = shelf->plate(View::ShoulderSide).value().get(); });
    for (std::thread& reader : readers)
        reader.join();
    for (const Plate* one : seen)
        EXPECT_EQ(one, seen.front());
}

TEST(LibraryTest, APlateOutlivesWhoeverLoadedTheLibrary)
{
    auto shelf = freshLibrary();
    const auto plate = shelf->plate(View::ShoulderSide).value();
    shelf.reset();
    EXPECT_FALSE(plate->structures.empty());
}

TEST(LibraryTest, AnAtlasHoldsExactlyThePlatesThatAreNeeded)
{
    for (const View view : kViews) {
        const auto shelf = freshLibrary();
        const auto atlas = shelf->atlas(view);
        ASSERT_TRUE(atlas.has_value()) << wordOf(view);
        EXPECT_EQ(atlas->proportions, &shelf->proportions());
        const std::vector<View> needed = neededPlates(view);
        for (const View each : kViews) {
            const bool isNeeded = std::ranges::find(needed, each) != needed.end();
            EXPECT_EQ(atlas->holds(each), isNeeded) << wordOf(view) << " " << wordOf(each);
            EXPECT_EQ(shelf->isRead(each), isNeeded) << wordOf(view) << " " << wordOf(each);
        }
        EXPECT_EQ(&atlas->plate(view), shelf->plate(view).value().get());
    }
}

TEST(LibraryTest, ALabsFileChangesOnlyWhatItNames)
{
    const QTemporaryDir folder;
    const auto shelf = freshLibrary();
    const auto policy = shelf->policyWith(policyFileWith(
        folder,
        R"({"name": "Ward 7", "grading": {"acceptable_margin_cm": {"value": 0.25, "source": "lab's choice"}}})"));
    ASSERT_TRUE(policy.has_value());
    EXPECT_EQ(policy->name(), "Ward 7");
    EXPECT_EQ(policy->value(PolicyKey::AcceptableMargin), 0.25);
    EXPECT_EQ(policy->value(PolicyKey::DeltoidStripTop),
              shelf->defaultPolicy().value(PolicyKey::DeltoidStripTop));
}

TEST(LibraryTest, APolicyThatIsNoReadableFileIsNamed)
{
    const QTemporaryDir folder;
    const auto shelf = freshLibrary();
    const QString huge = policyFileWith(folder, QByteArray((1 << 20) + 1, ' '));
    for (const QString& file : {folder.filePath(QStringLiteral("absent.json")), folder.path(), huge}) {
        const auto policy = shelf->policyWith(file);
        ASSERT_FALSE(policy.has_value()) << file.toStdString();
        EXPECT_EQ(policy.error().problem, Problem::PolicyNotReadable);
        EXPECT_EQ(policy.error().where, file.toStdString());
    }
}

}  // namespace fb::library_tests
