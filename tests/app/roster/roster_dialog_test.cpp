#include "app/roster/roster_dialog.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <optional>

#include "app/look/style.h"
#include "tests/support/fakes.h"
#include "tests/support/layout_audit.h"

namespace fb::test::roster_dialog_tests {

namespace roster_dialog_test {

class OpenRoster {
public:
    explicit OpenRoster(std::vector<Student> known = {})
        : dialog(std::move(known), dialogs, schemeOf(PaletteKind::Light), &window)
    {
        window.resize(1280, 800);
        QObject::connect(&dialog, &RosterDialog::imported, &dialog,
                         [this](const std::vector<Student>& students) { saved = students; });
        dialog.show();
    }

    // Written to a file that the user then chooses.
    bool choose(const QByteArray& text)
    {
        dialogs.answer = m_folder.filePath(QStringLiteral("class.csv"));
        QFile file(dialogs.answer);
        if (!file.open(QIODevice::WriteOnly) || file.write(text) != text.size())
            return false;
        file.close();
        QTest::mouseClick(find<QPushButton>("chooseRoster"), Qt::LeftButton);
        return settled();
    }

    bool settled()
    {
        return QTest::qWaitFor([this] { return !find<QWidget>("rosterProgress")->isVisible(); }, 10000);
    }

    template <class Widget>
    [[nodiscard]] Widget* find(const char* name)
    {
        return dialog.findChild<Widget*>(QLatin1String(name));
    }

    [[nodiscard]] QString counts() { return find<QLabel>("rosterCounts")->text(); }
    [[nodiscard]] QPushButton* import() { return find<QPushButton>("importRoster"); }
    [[nodiscard]] QLabel* notice() { return find<QLabel>("rosterNotice"); }
    [[nodiscard]] QComboBox* choice(RosterColumn column)
    {
        return find<QComboBox>(("rosterChoice" + QByteArray::number(static_cast<int>(column))).constData());
    }

    AnsweringDialogs dialogs;
    std::optional<std::vector<Student>> saved;
    QWidget window;
    RosterDialog dialog;

private:
    QTemporaryDir m_folder;
};

}  // namespace roster_dialog_test

TEST(RosterDialogTest, ShowsWhatAFileWillDoAndSavesOnlyWhenAsked)
{
    using roster_dialog_test::OpenRoster;
    OpenRoster open({{"7", "Ruiz", "Ana", {}, 0, {}, false}, {"8", "Li", "Bo", {}, 0, {}, false}});
    EXPECT_FALSE(open.import()->isEnabled());
    EXPECT_TRUE(open.find<QLabel>("rosterHint")->isVisible());
    ASSERT_TRUE(open.choose("id,name\n7,Ana Ruiz\n8,Bo Lee\n9,Cy Wu\n9,Cy Wu\n,Di Fo\n"));
    EXPECT_EQ(
        open.counts(),
        "1 new, 1 changed, 1 the same as before, 1 doubled and left out, 1 without a usable id and left out");
    EXPECT_EQ(open.find<QTableView>("rosterTable")->model()->rowCount(), 5);
    EXPECT_FALSE(open.notice()->isVisible());
    EXPECT_FALSE(open.find<QLabel>("rosterShown")->isVisible());
    EXPECT_FALSE(open.saved);
    QTest::mouseClick(open.import(), Qt::LeftButton);
    ASSERT_TRUE(open.saved);
    ASSERT_EQ(open.saved->size(), 2U);
    EXPECT_EQ((*open.saved)[0].family, "Lee");
    EXPECT_EQ((*open.saved)[1].given, "Cy");
    EXPECT_EQ(open.dialog.result(), QDialog::Accepted);
}

TEST(RosterDialogTest, AColumnCanBePointedOut)
{
    using roster_dialog_test::OpenRoster;
    OpenRoster open;
    ASSERT_TRUE(open.choose("key,who\nabc,Ana Ruiz\n"));
    EXPECT_EQ(open.choice(RosterColumn::Id)->currentData().toInt(), -1);
    EXPECT_TRUE(open.notice()->isVisible());
    EXPECT_EQ(open.notice()->text(),
              QString::fromUtf8("Point out above which column holds the students’ ids."));
    EXPECT_FALSE(open.import()->isEnabled());
    open.choice(RosterColumn::Id)->setCurrentIndex(1);
    open.choice(RosterColumn::Family)->setCurrentIndex(0);
    open.choice(RosterColumn::Given)->setCurrentIndex(0);
    ASSERT_TRUE(open.settled());
    EXPECT_EQ(open.notice()->text(),
              QString::fromUtf8("Point out above which column holds the students’ names."));
    open.choice(RosterColumn::FullName)->setCurrentIndex(2);
    ASSERT_TRUE(open.settled());
    EXPECT_FALSE(open.notice()->isVisible());
    EXPECT_EQ(open.counts(), "1 new");
    EXPECT_TRUE(open.import()->isEnabled());
}

TEST(RosterDialogTest, AFileWithoutHeaderShowsWhatStandsInItsColumns)
{
    using roster_dialog_test::OpenRoster;
    OpenRoster open;
    ASSERT_TRUE(open.choose("004217,Ruiz,Ana\n004218,Li,Bo\n"));
    EXPECT_EQ(open.choice(RosterColumn::Family)->currentText(), "Column 2: Ruiz");
    EXPECT_EQ(open.counts(), "2 new");
}

TEST(RosterDialogTest, ABadFileIsToldAndAnotherMayBeChosen)
{
    using roster_dialog_test::OpenRoster;
    OpenRoster open;
    ASSERT_TRUE(open.choose("id,name\n7,N\xfa\n"));
    EXPECT_TRUE(open.notice()->isVisible());
    EXPECT_TRUE(open.notice()->text().contains("class.csv"));
    EXPECT_FALSE(open.import()->isEnabled());
    EXPECT_FALSE(open.find<QTableView>("rosterTable")->isVisible());
    ASSERT_TRUE(open.choose("id,name\n7,Ana Ruiz\n"));
    EXPECT_FALSE(open.notice()->isVisible());
    EXPECT_TRUE(open.import()->isEnabled());
}

TEST(RosterDialogTest, ThinkingBetterOfItChangesNothing)
{
    using roster_dialog_test::OpenRoster;
    OpenRoster open;
    ASSERT_TRUE(open.choose("id,name\n7,Ana Ruiz\n"));
    open.dialogs.answer.clear();
    QTest::mouseClick(open.find<QPushButton>("chooseRoster"), Qt::LeftButton);
    EXPECT_EQ(open.counts(), "1 new");
    QTest::mouseClick(open.find<QPushButton>("cancelRoster"), Qt::LeftButton);
    EXPECT_FALSE(open.saved);
    EXPECT_EQ(open.dialog.result(), QDialog::Rejected);
}

TEST(RosterDialogTest, NothingToSaveIsNothingToImport)
{
    using roster_dialog_test::OpenRoster;
    OpenRoster open({{"7", "Ruiz", "Ana", {}, 0, {}, false}});
    ASSERT_TRUE(open.choose("id,name\n7,Ana Ruiz\n"));
    EXPECT_EQ(open.counts(), "1 the same as before");
    EXPECT_FALSE(open.import()->isEnabled());
}

TEST(RosterDialogTest, ALongListShowsItsFirstRowsAndSaysSo)
{
    using roster_dialog_test::OpenRoster;
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    QByteArray text = "id,name\n";
    for (int i = 0; i < 1200; ++i)
        text += QByteArray::number(i) + ",Ana Ruiz\n";
    OpenRoster open;
    ASSERT_TRUE(open.choose(text));
    EXPECT_TRUE(open.find<QLabel>("rosterShown")->isVisible());
    EXPECT_EQ(open.find<QLabel>("rosterShown")->text(),
              "Shown: 200 of 1,200 rows, those that want a second look first.");
    QTest::mouseClick(open.import(), Qt::LeftButton);
    EXPECT_EQ(open.saved.value_or(std::vector<Student>{}).size(), 1200U);
}

TEST(RosterDialogTest, ItsWordsHaveRoomAndItsControlsHaveNames)
{
    using roster_dialog_test::OpenRoster;
    for (const double scale : {1.0, 1.5}) {
        applyStyle(*qApp, schemeOf(PaletteKind::Light), scale);
        OpenRoster open;
        EXPECT_EQ(layoutFaults(open.dialog).join(u';').toStdString(), "");
        ASSERT_TRUE(open.choose("id,name,section,extra time,language\n7,Ana Ruiz,A,25,es\n7,Ana Ruiz,,,\n"));
        QTest::qWait(20);
        EXPECT_EQ(layoutFaults(open.dialog).join(u';').toStdString(), "") << scale;
        EXPECT_EQ(namelessControls(open.dialog).join(u';').toStdString(), "");
        EXPECT_LE(open.dialog.width(), 1280);
        EXPECT_LE(open.dialog.height(), 800);
    }
    applyStyle(*qApp, schemeOf(PaletteKind::Light), 1.0);
}

}  // namespace fb::test::roster_dialog_tests
