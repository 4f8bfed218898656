#include "app/sheets/sheet_dialog.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <QTemporaryDir>
#include <QTest>
#include <optional>

#include "app/look/style.h"
#include "app/sheets/sheet_file.h"
#include "app/words/check_off_words.h"
#include "tests/support/fakes.h"
#include "tests/support/layout_audit.h"
#include "tests/support/odd_sheet.h"

namespace fb::test::sheet_dialog_tests {

namespace sheet_dialog_test {

class OpenSheet {
public:
    explicit OpenSheet(const Sheet& sheet) : dialog(sheet, dialogs, &window)
    {
        window.resize(1280, 800);
        QObject::connect(&dialog, &SheetDialog::edited, &dialog,
                         [this](const Sheet& made) { edited = made; });
        dialog.show();
    }

    void press(const char* name)
    {
        QTest::mouseClick(dialog.findChild<QPushButton*>(QLatin1String(name)), Qt::LeftButton);
    }
    [[nodiscard]] bool may(const char* name)
    {
        return dialog.findChild<QPushButton*>(QLatin1String(name))->isEnabled();
    }
    // Empty while it is hidden.
    [[nodiscard]] QString shown(const char* name)
    {
        const auto* label = dialog.findChild<QLabel*>(QLatin1String(name));
        return label->isVisible() ? label->text() : QString();
    }
    void title(const QString& text) { dialog.findChild<QLineEdit*>("sheetTitle")->setText(text); }

    AnsweringDialogs dialogs;
    std::optional<Sheet> edited;
    QWidget window;
    SheetDialog dialog;
};

}  // namespace sheet_dialog_test

TEST(SheetDialogTest, AnUntouchedSheetComesBackAsItWas)
{
    sheet_dialog_test::OpenSheet open(oddSheet());
    EXPECT_EQ(open.dialog.sheet(), Result<Sheet>(oddSheet()));
    EXPECT_EQ(open.shown("sheetWords"), sheetInWords(oddSheet()).join(QString::fromUtf8(" · ")));
    open.press("useSheet");
    EXPECT_EQ(open.edited, oddSheet());
    EXPECT_EQ(open.dialog.result(), QDialog::Accepted);
}

TEST(SheetDialogTest, WhatCannotBeUsedIsSaidAndCannotBeTaken)
{
    sheet_dialog_test::OpenSheet open(plainSheet());
    EXPECT_EQ(open.shown("sheetReason"), "");
    open.title("  ");
    EXPECT_EQ(open.shown("sheetReason"), "The sheet has no title; give it one.");
    EXPECT_EQ(open.shown("sheetWords"), "");
    EXPECT_FALSE(open.may("useSheet"));
    EXPECT_FALSE(open.may("saveSheet"));
    open.title(QString(400, u'x'));
    EXPECT_EQ(open.shown("sheetReason"), "The title is too long; shorten it.");
    open.title("Spring");
    EXPECT_TRUE(open.may("useSheet"));
    open.press("removeItem");
    EXPECT_FALSE(open.may("useSheet"));
    EXPECT_FALSE(open.shown("sheetReason").isEmpty());
    open.press("addItem");
    EXPECT_TRUE(open.may("useSheet"));
    open.press("cancelSheet");
    EXPECT_FALSE(open.edited);
}

TEST(SheetDialogTest, TheWordsFollowEveryChange)
{
    sheet_dialog_test::OpenSheet open(plainSheet());
    const QString before = open.shown("sheetWords");
    open.press("addItem");
    EXPECT_NE(open.shown("sheetWords"), before);
    EXPECT_EQ(open.shown("sheetWords"), sheetInWords(*open.dialog.sheet()).join(QString::fromUtf8(" · ")));
}

TEST(SheetDialogTest, ASheetIsKeptAsAFileAndOpenedFromOne)
{
    const QTemporaryDir folder;
    sheet_dialog_test::OpenSheet open(oddSheet());
    open.dialogs.answer = folder.filePath("odd.json");
    open.press("saveSheet");
    EXPECT_EQ(open.dialogs.asKind, SaveKind::Json);
    EXPECT_EQ(open.dialogs.suggested, "odd");
    ASSERT_TRUE(QTest::qWaitFor([&] { return !open.shown("sheetFileWords").isEmpty(); }));
    EXPECT_EQ(readSheet(open.dialogs.answer), Result<Sheet>(oddSheet()));

    sheet_dialog_test::OpenSheet other(plainSheet());
    other.dialogs.answer = open.dialogs.answer;
    other.press("openSheet");
    ASSERT_TRUE(QTest::qWaitFor([&] { return other.dialog.sheet() == Result<Sheet>(oddSheet()); }));
    EXPECT_EQ(other.shown("sheetFileWords"), "");
}

TEST(SheetDialogTest, ADamagedFileIsToldAndChangesNothing)
{
    const QTemporaryDir folder;
    QFile file(folder.filePath("bad.json"));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("{\"title\": \"x\"");
    file.close();
    sheet_dialog_test::OpenSheet open(plainSheet());
    open.dialogs.answer = file.fileName();
    open.press("openSheet");
    ASSERT_TRUE(QTest::qWaitFor([&] { return !open.shown("sheetFileWords").isEmpty(); }));
    EXPECT_EQ(open.dialog.sheet(), Result<Sheet>(plainSheet()));
    EXPECT_TRUE(open.may("useSheet"));
    // Thinking better of it asks no more.
    open.dialogs.answer.clear();
    open.press("openSheet");
    open.press("saveSheet");
    EXPECT_EQ(open.dialogs.asked, 3);
}

TEST(SheetDialogTest, EveryPageHasRoomForItsWordsAndNamesForItsControls)
{
    for (const double scale : {1.0, 1.5}) {
        applyStyle(*qApp, schemeOf(PaletteKind::Light), scale);
        sheet_dialog_test::OpenSheet open(oddSheet());
        for (int page = 0; page < SheetDialog::kPageCount; ++page) {
            open.dialog.showPage(static_cast<SheetDialog::Page>(page));
            EXPECT_EQ(open.dialog.findChild<QStackedWidget*>()->currentIndex(), page);
            QTest::qWait(20);
            EXPECT_EQ(layoutFaults(open.dialog).join(u';').toStdString(), "") << page << " " << scale;
            EXPECT_EQ(namelessControls(open.dialog).join(u';').toStdString(), "") << page;
        }
        EXPECT_LE(open.dialog.width(), 1280);
        EXPECT_LE(open.dialog.height(), 800);
    }
    applyStyle(*qApp, schemeOf(PaletteKind::Light), 1.0);
}

}  // namespace fb::test::sheet_dialog_tests
