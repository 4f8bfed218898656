#include "app/checkoff/pin_dialog.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include "tests/support/layout_audit.h"
#include "tests/support/memory_records.h"

namespace pin_dialog_test {

namespace {

using namespace fb;
using namespace fb::test;

struct Guarded {
    Guarded()
    {
        records.people = {{{1, QStringLiteral("Vera Holm")}, QStringLiteral("482913")},
                          {{2, QStringLiteral("Tom Aske")}, QStringLiteral("150926")}};
        window.show();
    }
    [[nodiscard]] std::vector<Assessor> assessors() const
    {
        std::vector<Assessor> all;
        for (const MemoryRecords::Person& each : records.people)
            all.push_back(each.assessor);
        return all;
    }
    PinDialog* ask()
    {
        PinDialog::ask(records, assessors(), &window, [this] { ++opened; });
        return window.findChild<PinDialog*>();
    }

    MemoryRecords records;
    QWidget window;
    int opened = 0;
};

TEST(PinDialogTest, OnlyTheRightPinGoesOn)
{
    Guarded guarded;
    PinDialog* dialog = guarded.ask();
    ASSERT_NE(dialog, nullptr);
    auto* pin = dialog->findChild<QLineEdit*>(QStringLiteral("guardPin"));
    QTest::keyClicks(pin, QStringLiteral("482913"));
    QTest::keyClick(pin, Qt::Key_Return);
    EXPECT_EQ(guarded.opened, 0) << "nobody is chosen yet";
    dialog->findChild<QComboBox*>(QStringLiteral("guardWho"))->setCurrentIndex(1);
    QTest::keyClick(pin, Qt::Key_Return);
    EXPECT_EQ(guarded.opened, 0) << "another one's PIN";
    auto* told = dialog->findChild<QLabel*>(QStringLiteral("pinDialogTold"));
    EXPECT_TRUE(told->isVisible());
    EXPECT_FALSE(told->text().isEmpty());
    EXPECT_TRUE(pin->text().isEmpty());
    (void)QTest::qWaitFor([&] { return layoutFaults(*dialog).isEmpty(); });  // its sentence has just come
    EXPECT_EQ(layoutFaults(*dialog), QStringList());
    EXPECT_EQ(namelessControls(*dialog), QStringList());
    QTest::keyClicks(pin, QStringLiteral("150926"));
    QTest::mouseClick(dialog->findChild<QPushButton*>(QStringLiteral("pinOpen")), Qt::LeftButton);
    EXPECT_EQ(guarded.opened, 1);
}

TEST(PinDialogTest, AnEmptyPinUsesUpNoTry)
{
    Guarded guarded;
    guarded.records.people.pop_back();
    PinDialog* dialog = guarded.ask();
    ASSERT_NE(dialog, nullptr);
    QTest::mouseClick(dialog->findChild<QPushButton*>(QStringLiteral("pinOpen")), Qt::LeftButton);
    EXPECT_FALSE(dialog->findChild<QLabel*>(QStringLiteral("pinDialogTold"))->isVisible());
    EXPECT_EQ(dialog->focusWidget(), dialog->findChild<QLineEdit*>(QStringLiteral("guardPin")));
}

TEST(PinDialogTest, PutAwayNothingHappensAndWithoutAssessorsNothingIsAsked)
{
    Guarded guarded;
    guarded.ask()->reject();
    EXPECT_EQ(guarded.opened, 0);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    guarded.records.people.clear();
    EXPECT_EQ(guarded.ask(), nullptr);
    EXPECT_EQ(guarded.opened, 1);
}

TEST(PinDialogTest, AHastyEnterAsksOnce)
{
    Guarded guarded;
    guarded.records.waits = true;
    PinDialog* dialog = guarded.ask();
    dialog->findChild<QComboBox*>(QStringLiteral("guardWho"))->setCurrentIndex(0);
    auto* pin = dialog->findChild<QLineEdit*>(QStringLiteral("guardPin"));
    QTest::keyClicks(pin, QStringLiteral("482913"));
    QTest::keyClick(pin, Qt::Key_Return);
    QTest::keyClick(pin, Qt::Key_Return);
    EXPECT_EQ(guarded.records.waiting.size(), 1U);
    guarded.records.answerAll();
    EXPECT_EQ(guarded.opened, 1);
}

}  // namespace

}  // namespace pin_dialog_test
