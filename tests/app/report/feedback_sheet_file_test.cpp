// A feedback sheet's file is written whole or not at all, in any thread.
#include <gtest/gtest.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include <QDir>
#include <QFile>
#include <QPdfWriter>
#include <QTemporaryDir>
#include <QTest>
#include <csignal>
#include <thread>

#include "app/report/feedback_sheet.h"
#include "tests/support/pdf_reading.h"
#include "tests/support/report_sample.h"

namespace fb::test::feedback_sheet_file_test {

namespace feedback_file_test {

const FeedbackSheet& usualSheet()
{
    static const FeedbackSheet kSheet = sheetOf(usualSample());
    return kSheet;
}

// What `work` comes to while no file of this process grows beyond some bytes, as on a disk that is full.
template <class Work>
auto onAFullDisk(rlim_t bytes, const Work& work)
{
    std::signal(SIGXFSZ, SIG_IGN);
    rlimit before{};
    ::getrlimit(RLIMIT_FSIZE, &before);
    rlimit small = before;
    small.rlim_cur = bytes;
    ::setrlimit(RLIMIT_FSIZE, &small);
    const auto came = work();
    ::setrlimit(RLIMIT_FSIZE, &before);
    return came;
}

}  // namespace feedback_file_test

using namespace feedback_file_test;

TEST(FeedbackSheetFileTest, AFileIsWrittenWholeOrNotAtAll)
{
    const FeedbackSheet& sheet = usualSheet();
    const QTemporaryDir folder;
    const QDir there(folder.path());
    ASSERT_TRUE(there.mkdir(QStringLiteral("taken.pdf")));
    ASSERT_TRUE(there.mkdir(QStringLiteral("shut")));
    const QString shut = folder.filePath(QStringLiteral("shut"));
    // What is no file is never taken the place of.
    const QString pipe = folder.filePath(QStringLiteral("pipe.pdf"));
    ASSERT_EQ(::mkfifo(pipe.toLocal8Bit().constData(), S_IRUSR | S_IWUSR), 0);
    QFile old(folder.filePath(QStringLiteral("old.pdf")));
    ASSERT_TRUE(old.open(QIODevice::WriteOnly));
    old.write("old");
    old.close();
    QStringList impossible{folder.filePath(QStringLiteral("taken.pdf")),
                           folder.filePath(QStringLiteral("none/sheet.pdf")), pipe, QString()};
    ::chmod(shut.toLocal8Bit().constData(), S_IRUSR | S_IXUSR);
    if (::geteuid() != 0)  // root may write anywhere
        impossible += shut + QStringLiteral("/sheet.pdf");
    for (const QString& file : impossible) {
        const auto written = writeSheet(sheet, file, QPageSize::A4);
        ASSERT_FALSE(written.has_value()) << file.toStdString();
        EXPECT_EQ(written.error().problem, Problem::OutputNotWritable);
        EXPECT_EQ(written.error().where, file.toStdString());
    }
    ::chmod(shut.toLocal8Bit().constData(), S_IRWXU);
    EXPECT_EQ(there.entryList(QDir::Files | QDir::Hidden), QStringList{QStringLiteral("old.pdf")});
    EXPECT_TRUE(QDir(shut).isEmpty());
    ASSERT_TRUE(writeSheet(sheet, old.fileName(), QPageSize::A4).has_value());
    EXPECT_GT(QFile(old.fileName()).size(), 1000);
}

TEST(FeedbackSheetFileTest, OnAFullDiskNothingIsLeftBehindAndTheOldFileStays)
{
    constexpr rlim_t kRoom = 20000;
    const FeedbackSheet& sheet = usualSheet();
    const QTemporaryDir folder;
    QFile old(folder.filePath(QStringLiteral("old.pdf")));
    ASSERT_TRUE(old.open(QIODevice::WriteOnly));
    old.write("old");
    old.close();
    for (const QString& file : {old.fileName(), folder.filePath(QStringLiteral("new.pdf"))}) {
        const auto written = onAFullDisk(kRoom, [&] { return writeSheet(sheet, file, QPageSize::A4); });
        ASSERT_FALSE(written.has_value());
        EXPECT_EQ(written.error().problem, Problem::OutputNotWritable);
    }
    EXPECT_EQ(QDir(folder.path()).entryList(QDir::Files | QDir::Hidden),
              QStringList{QStringLiteral("old.pdf")});
    EXPECT_EQ(old.size(), 3);
}

TEST(FeedbackSheetFileTest, ADeviceThatTakesNoPaintingGetsNoPage)
{
    QPdfWriter writer(QStringLiteral("/no-such-folder/sheet.pdf"));
    EXPECT_EQ(paintSheet(usualSheet(), writer), 0);
}

TEST(FeedbackSheetFileTest, AWorkerMakesAndWritesItWhileTheWindowLives)
{
    const CheckOffOnFile file = signedCheckOff(usualSample());
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("sheet.pdf"));
    std::atomic_bool done = false;
    bool written = false;
    std::thread worker([&] {
        const auto sheet = feedbackSheet(file, shippedLibrary());
        written = sheet && writeSheet(*sheet, path, QPageSize::A4).has_value();
        done = true;
    });
    EXPECT_TRUE(QTest::qWaitFor([&] { return done.load(); }, 20000));
    worker.join();
    EXPECT_TRUE(written);
    EXPECT_GE(pdfPages(path).size(), 2);
}

}  // namespace fb::test::feedback_sheet_file_test
