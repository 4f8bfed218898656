#include "app/checkoff/desk_column.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>

#include "tests/support/check_off_run.h"

namespace desk_column_test {

namespace {

using namespace fb;
using namespace fb::test;

TEST(DeskColumnTest, TellsWhatStandsOpenAndHowFarItIs)
{
    CheckOffRun run;
    DeskColumn column;
    column.show();
    column.showState(run.state());
    EXPECT_FALSE(column.findChild<QLabel*>(QStringLiteral("openTitle"))->isVisible());
    run.toItems();
    run.confirm();
    run.records.keepTime(1, Ms{134000}, Ms{0});
    run.restart();
    column.showState(run.state());
    EXPECT_TRUE(column.findChild<QLabel*>(QStringLiteral("openTitle"))
                    ->text()
                    .contains(QStringLiteral("Nkechi Abara")));
    EXPECT_EQ(column.findChild<QLabel*>(QStringLiteral("openWords"))->text(),
              QStringLiteral("Item 2 of 3, 2:14 used."));
    QSignalSpy goOn(&column, &DeskColumn::goOnAsked);
    QSignalSpy voids(&column, &DeskColumn::voidAsked);
    QTest::mouseClick(column.findChild<QPushButton*>(QStringLiteral("goOnOpen")), Qt::LeftButton);
    QTest::mouseClick(column.findChild<QPushButton*>(QStringLiteral("voidOpen")), Qt::LeftButton);
    EXPECT_EQ(goOn.count(), 1);
    EXPECT_EQ(voids.count(), 1);
}

TEST(DeskColumnTest, NamesTheStageOfOneThatIsFurther)
{
    CheckOffRun run;
    run.toHandover();
    EXPECT_TRUE(howFar(run.records.kept.at(1).open).endsWith(u'.'));
    run.presenter->takeOver();
    run.records.keepTime(1, Ms{0}, Ms{61000});
    EXPECT_EQ(howFar(run.records.kept.at(1).open), QStringLiteral("On the manikin, 1:01 used."));
}

TEST(DeskColumnTest, TheSheetStandsInWordsAndAnotherCanBeChosen)
{
    CheckOffRun run;
    Sheet other = shortSheet();
    other.title = "Another";
    other.items.resize(1);
    run.records.sheets.push_back({QStringLiteral("other"), other});
    run.presenter->openDesk();
    DeskColumn column;
    column.show();
    column.showState(run.state());
    auto* sheets = column.findChild<QComboBox*>(QStringLiteral("sheets"));
    EXPECT_EQ(sheets->count(), 2);
    EXPECT_EQ(sheets->currentText(), QStringLiteral("Invented sheet"));
    auto* words = column.findChild<QLabel*>(QStringLiteral("sheetWords"));
    const QString before = words->text();
    EXPECT_FALSE(before.isEmpty());
    QSignalSpy chosen(&column, &DeskColumn::sheetChosen);
    sheets->setFocus();
    QTest::keyClick(sheets, Qt::Key_Down);
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen.front().front().toString(), QStringLiteral("other"));
    run.presenter->chooseSheet(QStringLiteral("other"));
    column.showState(run.state());
    EXPECT_EQ(sheets->currentText(), QStringLiteral("Another"));
    EXPECT_EQ(column.findChild<QLabel*>(QStringLiteral("sheetTitle"))->text(), QStringLiteral("Another"));
    EXPECT_NE(words->text(), before);
}

TEST(DeskColumnTest, WithoutASheetItSaysSo)
{
    DeskColumn column;
    column.show();
    CheckOffState state;
    column.showState(state);
    EXPECT_TRUE(column.findChild<QLabel*>(QStringLiteral("sheetWords"))->text().isEmpty())
        << "while nothing is read it is not known";
    state.ready = true;
    column.showState(state);
    EXPECT_FALSE(column.findChild<QComboBox*>(QStringLiteral("sheets"))->isVisible());
    EXPECT_TRUE(column.findChild<QLabel*>(QStringLiteral("sheetTitle"))->text().isEmpty());
    EXPECT_TRUE(column.findChild<QLabel*>(QStringLiteral("sheetWords"))
                    ->text()
                    .contains(QStringLiteral("no sheet yet")));
}

}  // namespace

}  // namespace desk_column_test
