#include "app/checkoff/sheet_out.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include "tests/support/manikin_run.h"

namespace sheet_out_test {

namespace {

using namespace fb;
using namespace fb::test;

constexpr int kLongest = 30000;  // ms; a Debug build reads and paints plates slowly

// Signed, as only a signed one has a sheet.
class SheetOutTest : public ::testing::Test {
protected:
    SheetOutTest()
    {
        run.seeAll({{ProcedureStep::Explain, Seen::Prompted}});
        run.presenter.finish();
        run.presenter.rate(4, QStringLiteral("Calm hands."));
        run.presenter.sign(1, QLatin1String(ManikinRun::kPin), 0, {});
        EXPECT_TRUE(run.state().signedOff.has_value());
    }

    ManikinRun run;
    SheetOut out{run.records};
    QSignalSpy done{&out, &SheetOut::done};
    QSignalSpy failed{&out, &SheetOut::failed};
    QTemporaryDir folder;
};

TEST_F(SheetOutTest, AFileIsWrittenAwayFromTheWindowsThread)
{
    const QString name = folder.filePath(QStringLiteral("sheet.pdf"));
    out.writePdf(1, name);
    EXPECT_TRUE(out.isBusy());
    EXPECT_FALSE(QFile::exists(name)) << "the window would have waited for it";
    out.writePdf(1, folder.filePath(QStringLiteral("other.pdf")));
    ASSERT_TRUE(QTest::qWaitFor([this] { return !out.isBusy(); }, kLongest));
    EXPECT_EQ(done.size(), 1) << "one at a time";
    EXPECT_TRUE(failed.isEmpty());
    QFile file(name);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.read(5), QByteArray("%PDF-"));
    EXPECT_FALSE(QFile::exists(folder.filePath(QStringLiteral("other.pdf"))));
}

TEST_F(SheetOutTest, ASheetThatIsBeingWrittenIsFinishedBeforeTheWindowGoes)
{
    const QString name = folder.filePath(QStringLiteral("sheet.pdf"));
    auto own = std::make_unique<SheetOut>(run.records);
    own->writePdf(1, name);
    own.reset();
    QFile file(name);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().trimmed().endsWith("%%EOF"));
}

TEST_F(SheetOutTest, WhatCannotBeReadOrWrittenIsSaid)
{
    out.writePdf(1, folder.filePath(QStringLiteral("missing/sheet.pdf")));
    ASSERT_TRUE(QTest::qWaitFor([this] { return !out.isBusy(); }, kLongest));
    ASSERT_EQ(failed.size(), 1);
    EXPECT_EQ(failed[0][0].value<Fault>().problem, Problem::OutputNotWritable);
    run.records.trouble = Fault{Problem::StoreBusy, "records.db", {}, 0.0, 0.0};
    out.writePdf(1, folder.filePath(QStringLiteral("sheet.pdf")));
    ASSERT_EQ(failed.size(), 2);
    EXPECT_EQ(failed[1][0].value<Fault>().problem, Problem::StoreBusy);
    EXPECT_FALSE(out.isBusy());
    EXPECT_TRUE(done.isEmpty());
}

TEST(SheetFileNameTest, HoldsTheNameAndTheDayAndNothingAFileNameMayNotHave)
{
    const QDateTime at(QDate(2026, 12, 1), QTime(12, 0), Qt::UTC);
    EXPECT_EQ(sheetFileName({"1", "Marsh", "Ada", {}, 0, {}, true}, at),
              QStringLiteral("Marsh-Ada-2026-12-01.pdf"));
    EXPECT_EQ(sheetFileName({"1", "../..\\Núñez O’Dea", "=Zoë", {}, 0, {}, true}, at),
              QStringLiteral("Núñez-O-Dea-Zoë-2026-12-01.pdf"));
}

}  // namespace

}  // namespace sheet_out_test
