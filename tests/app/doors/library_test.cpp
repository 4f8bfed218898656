#include "app/doors/library.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>
#include <thread>

namespace fb {

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
    for (const View view : kViews) {
        const auto plate = shelf->plate(view);
        ASSERT_TRUE(plate.has_value())
            << wordOf(view) << ": " << plate.error().where << " " << plate.error().what;
        EXPECT_EQ((*plate)->view, view);
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

TEST(LibraryTest, AnAtlasHoldsTheViewItWasAskedForAndTheSideAlways)
{
    const auto shelf = freshLibrary();
    const auto side = shelf->atlas();
    ASSERT_TRUE(side.has_value());
    EXPECT_NE(side->side, nullptr);
    EXPECT_EQ(side->threeQuarter, nullptr);
    EXPECT_EQ(side->proportions, &shelf->proportions());
    const auto front = shelf->atlas(View::ShoulderThreeQuarter);
    ASSERT_TRUE(front.has_value());
    EXPECT_EQ(front->side, side->side);
    EXPECT_EQ(&front->plate(View::ShoulderThreeQuarter), front->threeQuarter);
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

}  // namespace fb
