// The desk after a damage: see desk_page.h.
#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QPushButton>
#include <QTableView>

#include "app/checkoff/desk_page.h"
#include "tests/support/check_off_run.h"
#include "tests/support/layout_audit.h"

namespace desk_page_offer_test {

namespace {

using namespace fb;
using namespace fb::test;

TEST(DeskPageOfferTest, AfterADamageTheBackupIsPutBackByKeyAndTheClassStandsThere)
{
    MemoryRecords records;
    records.backups.offered = backupSample();
    records.backups.fill = [&records] {
        records.students = {{"S-1", "Abara", "Nkechi", "Section A", 0, {}, true}};
        records.sheets = {{QStringLiteral("sheet"), shortSheet()}};
    };
    CountingSeeds seeds;
    AnsweringDialogs dialogs;
    CheckOffPresenter presenter(records, records.clock, seeds);
    DeskPage page(presenter, dialogs);
    page.setScheme(schemeOf(PaletteKind::Light));
    page.resize(1280, 700);
    page.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
    presenter.useLibrary(wholeLibrary(), wholeLibrary()->defaultPolicy(), QStringLiteral("{}"));
    page.focusFirst();
    presenter.openDesk();
    EXPECT_TRUE(QTest::qWaitFor([&] { return layoutFaults(page).isEmpty(); }))
        << layoutFaults(page).join(u'\n').toStdString();
    EXPECT_EQ(namelessControls(page), QStringList());
    auto* putBack = page.findChild<QPushButton*>(QStringLiteral("putBack"));
    ASSERT_EQ(QApplication::focusWidget(), putBack);
    records.waits = true;
    QTest::keyClick(putBack, Qt::Key_Return);
    auto* cancel = page.findChild<QPushButton*>(QStringLiteral("cancelPutBack"));
    ASSERT_EQ(QApplication::focusWidget(), cancel);
    QTest::keyClick(cancel, Qt::Key_Return);
    records.answerAll();
    ASSERT_EQ(QApplication::focusWidget(), putBack) << "cancelled, it is offered as before";
    QTest::keyClick(putBack, Qt::Key_Return);
    records.answerAll();
    EXPECT_EQ(QApplication::focusWidget(), page.findChild<QTableView*>(QStringLiteral("students")));
    auto* note = page.findChild<QLabel*>(QStringLiteral("putBackNote"));
    EXPECT_TRUE(note->isVisible());
    EXPECT_TRUE(QTest::qWaitFor([&] { return layoutFaults(page).isEmpty(); }))
        << layoutFaults(page).join(u'\n').toStdString();
    EXPECT_EQ(namelessControls(page), QStringList());
    QTest::mouseClick(page.findChild<QPushButton*>(QStringLiteral("dismissPutBack")), Qt::LeftButton);
    EXPECT_FALSE(note->isVisible());
}

TEST(DeskPageOfferTest, DeclinedTheOfferMakesRoomForTheWayToStudents)
{
    MemoryRecords records;
    records.backups.offered = backupSample();
    CountingSeeds seeds;
    AnsweringDialogs dialogs;
    CheckOffPresenter presenter(records, records.clock, seeds);
    DeskPage page(presenter, dialogs);
    page.resize(1280, 700);
    page.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
    presenter.useLibrary(wholeLibrary(), wholeLibrary()->defaultPolicy(), QStringLiteral("{}"));
    presenter.openDesk();
    auto* decline = page.findChild<QPushButton*>(QStringLiteral("beginEmpty"));
    ASSERT_TRUE(decline->isVisible());
    decline->setFocus();
    QTest::keyClick(decline, Qt::Key_Space);
    EXPECT_EQ(QApplication::focusWidget(), page.findChild<QPushButton*>(QStringLiteral("useSample")));
}

}  // namespace

}  // namespace desk_page_offer_test
