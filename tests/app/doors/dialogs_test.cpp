#include "app/doors/dialogs.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QFileDialog>
#include <QTemporaryDir>
#include <QTimer>
#include <functional>
#include <utility>
#include <vector>

namespace fb::test::dialogs_tests {

namespace dialogs_test {

// What the file dialog that is about to open will be done with.
void once(const std::function<void(QFileDialog&)>& then)
{
    QApplication::setAttribute(Qt::AA_DontUseNativeDialogs);
    QTimer::singleShot(100, qApp, [then] {
        for (QWidget* widget : QApplication::topLevelWidgets()) {
            if (auto* dialog = qobject_cast<QFileDialog*>(widget))
                then(*dialog);
        }
    });
}

}  // namespace dialogs_test

TEST(DialogsTest, ThinkingBetterOfAFileAnswersNothing)
{
    SystemDialogs dialogs;
    const std::vector<std::pair<QString, std::function<QString()>>> questions{
        {QStringLiteral("Choose a policy file"), [&] { return dialogs.askPolicyFile(nullptr); }},
        {QStringLiteral("Choose a roster"), [&] { return dialogs.askRosterFile(nullptr); }},
        {QStringLiteral("Choose a sheet"), [&] { return dialogs.askSheetFile(nullptr); }},
        {QStringLiteral("Choose a file of marks"), [&] { return dialogs.askMarksFile(nullptr); }},
        {QStringLiteral("Save the picture as"),
         [&] { return dialogs.askSaveFile(nullptr, QStringLiteral("a"), SaveKind::Png); }},
        {QStringLiteral("Save as PDF"),
         [&] { return dialogs.askSaveFile(nullptr, QStringLiteral("a"), SaveKind::Pdf); }}};
    for (const auto& [words, ask] : questions) {
        QString title;
        dialogs_test::once([&title](QFileDialog& dialog) {
            title = dialog.windowTitle();
            dialog.reject();
        });
        EXPECT_EQ(ask(), QString());
        EXPECT_EQ(title, words);
    }
}

TEST(DialogsTest, AFileToSaveGetsTheEndingOfItsKind)
{
    const QTemporaryDir folder;
    SystemDialogs dialogs;
    for (int index = 0; index < kSaveKindCount; ++index) {
        const auto kind = static_cast<SaveKind>(index);
        ASSERT_FALSE(endingOf(kind).isEmpty());
        dialogs_test::once([](QFileDialog& dialog) { QMetaObject::invokeMethod(&dialog, "accept"); });
        const QString bare = folder.filePath(QStringLiteral("grades"));
        EXPECT_EQ(dialogs.askSaveFile(nullptr, bare, kind), bare + QLatin1Char('.') + endingOf(kind));
    }
}

}  // namespace fb::test::dialogs_tests
