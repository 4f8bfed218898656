#include "app/records/check_off_view.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QTemporaryDir>
#include <QtPrintSupport/QPrinterInfo>

#include "tests/support/sample_records.h"

namespace fb::test::check_off_view_tests {

namespace check_off_view_test {

struct Opened {
    explicit Opened(Seen critical = Seen::Done)
        : id(records.signedOne(0, {0.2, 0.1}, critical)),
          open(records)
    {
        open.unlock();
        open.presenter.openCheckOff(id);
        open.rest();
    }

    SampleRecords records;
    qint64 id;
    RecordsWindow open;
};

}  // namespace check_off_view_test

using check_off_view_test::Opened;

TEST(CheckOffViewTest, NamesTheStudentAndReplaysAnAnswerByKey)
{
    Opened opened;
    RecordsWindow& open = opened.open;
    EXPECT_EQ(open.find<QLabel>("openedName")->text(), QStringLiteral("Rosa Marlow"));
    ASSERT_NE(QApplication::focusWidget(), nullptr);
    EXPECT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("openedReplay"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    ASSERT_TRUE(open.replayed());
    EXPECT_EQ(open.state().replay->item, 0);
    EXPECT_TRUE(open.find("replayPlate")->isVisible());
    open.click("replayBack");
    open.click("openedBack");
    EXPECT_EQ(open.state().opened, nullptr);
}

TEST(CheckOffViewTest, SavesTheSheetAgainUnderANameTheSystemAskedFor)
{
    const QTemporaryDir folder;
    Opened opened;
    RecordsWindow& open = opened.open;
    open.click("openedSave");
    EXPECT_FALSE(open.state().task.has_value()) << "thought better of it";
    EXPECT_EQ(open.dialogs.suggested, QStringLiteral("Marlow attempt 1"));
    EXPECT_EQ(open.dialogs.asKind, SaveKind::Pdf);
    open.dialogs.answer = folder.filePath(QStringLiteral("again.pdf"));
    open.click("openedSave");
    ASSERT_TRUE(QTest::qWaitFor([&] { return !open.state().task; }, 30000));
    open.rest();
    EXPECT_TRUE(QFile::exists(open.dialogs.answer));
    EXPECT_TRUE(open.find<QLabel>("openedWorking")->text().contains(QStringLiteral("again.pdf")));
}

TEST(CheckOffViewTest, AMissingPrinterIsTold)
{
    if (!QPrinterInfo::availablePrinterNames().isEmpty())
        GTEST_SKIP() << "this machine has a printer";
    Opened opened;
    opened.open.click("openedPrint");
    ASSERT_TRUE(opened.open.state().notice.has_value());
    EXPECT_EQ(opened.open.state().notice->problem, Problem::PrinterMissing);
    EXPECT_TRUE(opened.open.find("notice")->isVisible());
}

TEST(CheckOffViewTest, TheGateMayShutWhileTheSystemAsksForAFile)
{
    struct LateDialogs : AnsweringDialogs {
        QString askSaveFile(QWidget* parent, const QString& name, SaveKind kind) override
        {
            presenter->leave();
            QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
            return AnsweringDialogs::askSaveFile(parent, name, kind);
        }
        RecordsPresenter* presenter = nullptr;
    };
    SampleRecords records;
    const qint64 id = records.signedOne(0, {});
    RecordsPresenter presenter(records, records.clock);
    presenter.useLibrary(sharedLibrary(), sharedLibrary()->defaultPolicy());
    LateDialogs dialogs;
    dialogs.presenter = &presenter;
    dialogs.answer = QStringLiteral("late.pdf");
    RecordsPage page(presenter, dialogs);
    page.setScheme(schemeOf(PaletteKind::Light));
    page.show();
    presenter.open(1, QString::fromLatin1(kPin));
    presenter.openCheckOff(id);
    QTest::mouseClick(page.findChild<QPushButton*>(QStringLiteral("openedSave")), Qt::LeftButton);
    EXPECT_EQ(dialogs.asked, 1);
    EXPECT_FALSE(presenter.state().task.has_value());
    EXPECT_NE(presenter.state().gate, RecordsGate::Open);
}

}  // namespace fb::test::check_off_view_tests
