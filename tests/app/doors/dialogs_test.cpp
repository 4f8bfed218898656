#include "app/doors/dialogs.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QFileDialog>
#include <QTimer>

namespace fb::test {

TEST(DialogsTest, ThinkingBetterOfAPolicyFileAnswersNothing)
{
    QApplication::setAttribute(Qt::AA_DontUseNativeDialogs);
    QString title;
    QTimer::singleShot(100, [&title] {
        for (QWidget* widget : QApplication::topLevelWidgets()) {
            if (auto* dialog = qobject_cast<QFileDialog*>(widget)) {
                title = dialog->windowTitle();
                dialog->reject();
            }
        }
    });
    SystemDialogs dialogs;
    EXPECT_EQ(dialogs.askPolicyFile(nullptr), QString());
    EXPECT_EQ(title, QStringLiteral("Choose a policy file"));
}

}  // namespace fb::test
