#include "app/checkoff/saved_panel.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "app/words/check_off_words.h"
#include "tests/support/manikin_sample.h"

namespace saved_panel_test {

namespace {

using namespace fb;
using namespace fb::test;

class SavedPanelTest : public ::testing::Test {
protected:
    SavedPanelTest()
    {
        panel.setScheme(dressed());
        state.signedOff = SignedOff{1,
                                    {},
                                    QDateTime(QDate(2026, 12, 1), QTime(9, 30), Qt::UTC),
                                    QStringLiteral("31eeae30572c14b1dd7e221d391ba36e"),
                                    7,
                                    {{3, QStringLiteral("Vera Holm")}, {4, QStringLiteral("Tom Aske")}}};
        state.next = Student{"S-1043", "Pallas", "Ioan", {}, 0, {}, true};
        panel.showState(state);
        panel.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&panel));
    }
    [[nodiscard]] QString text(const char* name) const
    {
        return panel.findChild<QLabel*>(QLatin1String(name))->text();
    }
    [[nodiscard]] QPushButton* button(const char* name) const
    {
        return panel.findChild<QPushButton*>(QLatin1String(name));
    }

    CheckOffState state = manikinState();
    SavedPanel panel;
};

TEST_F(SavedPanelTest, SaysWhoSignedWhenAndTheFirstTwelveDigitsOfTheLog)
{
    EXPECT_TRUE(text("savedWho").contains(QLatin1String("Vera Holm")));
    EXPECT_TRUE(text("savedWho").contains(QLatin1String("Tom Aske")));
    EXPECT_TRUE(text("savedWho").contains(whenText(state.signedOff->at)));
    EXPECT_TRUE(text("savedChain").endsWith(QLatin1String(" 31eeae30572c")));
}

TEST_F(SavedPanelTest, TheNextStudentIsOnePressAwayByNameAndHasTheFocus)
{
    QSignalSpy next(&panel, &SavedPanel::nextPressed);
    panel.focusFirst();
    EXPECT_TRUE(button("nextStudent")->text().contains(fullName(state.next->given, state.next->family)));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_EQ(next.size(), 1);
}

TEST_F(SavedPanelTest, ALongNameStaysInsideThePanelAndIsWholeForAScreenReader)
{
    state.next->family = QString(60, QLatin1Char('m'));
    panel.showState(state);
    panel.resize(300, 500);
    EXPECT_LE(panel.minimumSizeHint().width(), 300);
    EXPECT_LE(button("nextStudent")->geometry().right(), panel.width());
    EXPECT_LT(button("nextStudent")->text().size(), 60);
    EXPECT_TRUE(button("nextStudent")->accessibleName().endsWith(state.next->family));
    panel.resize(180, 500);
    EXPECT_TRUE(QTest::qWaitFor([&] {
        return button("savePdf")->y() > button("printSheet")->geometry().bottom();
    })) << "one under the other";
}

TEST_F(SavedPanelTest, OnceTheSheetIsWrittenTheKeysAreWithWhatComesNext)
{
    button("savePdf")->setFocus();
    panel.setBusy(true);
    panel.setBusy(false);
    EXPECT_TRUE(button("nextStudent")->hasFocus());
}

TEST_F(SavedPanelTest, AfterTheLastStudentTheDeskIsNext)
{
    state.next.reset();
    panel.showState(state);
    EXPECT_TRUE(button("nextStudent")->isHidden());
    QSignalSpy desk(&panel, &SavedPanel::deskPressed);
    panel.focusFirst();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_EQ(desk.size(), 1);
}

TEST_F(SavedPanelTest, WhileASheetIsWrittenNoOtherIsAskedFor)
{
    QSignalSpy pdf(&panel, &SavedPanel::pdfPressed);
    QSignalSpy print(&panel, &SavedPanel::printPressed);
    panel.setBusy(true);
    for (const char* name : {"savePdf", "printSheet"})
        QTest::mouseClick(button(name), Qt::LeftButton);
    EXPECT_EQ(pdf.size() + print.size(), 0);
    panel.setBusy(false);
    for (const char* name : {"savePdf", "printSheet"})
        QTest::mouseClick(button(name), Qt::LeftButton);
    EXPECT_EQ(pdf.size(), 1);
    EXPECT_EQ(print.size(), 1);
    panel.tell(QStringLiteral("Saved as a.pdf."));
    EXPECT_FALSE(panel.findChild<QLabel*>("savedTold")->isHidden());
    panel.tell({});
    EXPECT_TRUE(panel.findChild<QLabel*>("savedTold")->isHidden());
}

}  // namespace

}  // namespace saved_panel_test
