#include "app/cli/plate_sheet.h"

#include <gtest/gtest.h>
#include <sys/resource.h>
#include <sys/stat.h>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QImage>
#include <QPainter>
#include <QSvgRenderer>
#include <QTemporaryDir>
#include <csignal>

#include "app/cli/commands.h"
#include "tests/support/pdf_reading.h"
#include "tests/support/shipped.h"

namespace fb::plate_sheet_tests {

namespace plate_sheet_test {

// A sheet of an invented patient with a mark, every layer shown.
PlateSheet markedSheet()
{
    const Query query{Site::Deltoid, View::ShoulderSide, Convention::DeltoidStrip,
                      Patient::make(34.0, Sex::Female, Cm{163.0}, Kg{71.0}, Side::Left).value()};
    auto made = sheetOf(query, shippedLibrary().defaultPolicy(), shippedLibrary(), Point{0.0, -2.0}).value();
    made.layers = QSet<Layer>(kLayers.begin(), kLayers.end());
    return made;
}

QByteArray sheetBytes(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

// While it lives no file of this process grows beyond some bytes, as on a disk that is full.
class SmallDisk {
public:
    explicit SmallDisk(rlim_t bytes)
    {
        std::signal(SIGXFSZ, SIG_IGN);
        ::getrlimit(RLIMIT_FSIZE, &m_before);
        rlimit small = m_before;
        small.rlim_cur = bytes;
        ::setrlimit(RLIMIT_FSIZE, &small);
    }
    SmallDisk(const SmallDisk&) = delete;
    SmallDisk& operator=(const SmallDisk&) = delete;
    ~SmallDisk() { ::setrlimit(RLIMIT_FSIZE, &m_before); }

private:
    rlimit m_before{};
};

int differentPixels(const QImage& a, const QImage& b)
{
    int different = 0;
    for (int y = 0; y < a.height(); ++y) {
        for (int x = 0; x < a.width(); ++x)
            different += a.pixel(x, y) != b.pixel(x, y);
    }
    return different;
}

}  // namespace plate_sheet_test

using namespace plate_sheet_test;

TEST(PlateSheetTest, TheKindIsTheEndingOfTheName)
{
    EXPECT_EQ(sheetKindOf(QStringLiteral("a.svg")).value(), SheetKind::Svg);
    EXPECT_EQ(sheetKindOf(QStringLiteral("b/a.PNG")).value(), SheetKind::Png);
    EXPECT_EQ(sheetKindOf(QStringLiteral("a.b.pdf")).value(), SheetKind::Pdf);
    for (const char* name : {"a.gif", "a", "svg", "a.svg.gz", ""})
        EXPECT_EQ(sheetKindOf(QLatin1String(name)).error().problem, Problem::OutputKindUnknown) << name;
}

TEST(PlateSheetTest, APngHasTheWidthAskedForAndIsDrawnOn)
{
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("a.png"));
    for (const int width : {kLeastSheetWidth, 700}) {
        ASSERT_TRUE(writeSheet(markedSheet(), file, width).has_value());
        const QImage image(file);
        ASSERT_EQ(image.width(), width);
        EXPECT_GT(image.height(), width / 2);
        QImage blank(image.size(), QImage::Format_RGB32);
        blank.fill(image.pixel(0, 0));
        EXPECT_GT(differentPixels(image, blank), image.width() * image.height() / 20);
    }
}

TEST(PlateSheetTest, AnSvgIsReadByAnotherPainterAsTheSamePicture)
{
    const QTemporaryDir folder;
    const QString svg = folder.filePath(QStringLiteral("a.svg"));
    const QString png = folder.filePath(QStringLiteral("a.png"));
    ASSERT_TRUE(writeSheet(markedSheet(), svg, 700).has_value());
    ASSERT_TRUE(writeSheet(markedSheet(), png, 700).has_value());
    QSvgRenderer renderer(svg);
    ASSERT_TRUE(renderer.isValid());
    const QImage expected = QImage(png).convertToFormat(QImage::Format_RGB32).scaled(70, 70);
    QImage drawn(QImage(png).size(), QImage::Format_RGB32);
    QPainter painter(&drawn);
    renderer.render(&painter);
    painter.end();
    const QImage small = drawn.scaled(70, 70, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    double sum = 0.0;
    for (int y = 0; y < 70; ++y) {
        for (int x = 0; x < 70; ++x)
            sum += std::abs(qGray(small.pixel(x, y)) - qGray(expected.pixel(x, y)));
    }
    EXPECT_LT(sum / (70 * 70), 12.0);
}

TEST(PlateSheetTest, APdfIsOneWholeDocument)
{
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("a.pdf"));
    ASSERT_TRUE(writeSheet(markedSheet(), file, 700).has_value());
    const QByteArray bytes = sheetBytes(file);
    EXPECT_TRUE(bytes.startsWith("%PDF-"));
    EXPECT_TRUE(bytes.trimmed().endsWith("%%EOF"));
    EXPECT_EQ(bytes.count("/Type /Page\n"), 1);
    EXPECT_TRUE(bytes.contains("/FontFile"));
}

// Qt writes shades that fade as opaque blocks; see paper_shades.h.
TEST(PlateSheetTest, APdfIsSeenByAnotherProgramAsTheSamePicture)
{
    const QTemporaryDir folder;
    const QString pdf = folder.filePath(QStringLiteral("a.pdf"));
    const QString png = folder.filePath(QStringLiteral("a.png"));
    ASSERT_TRUE(writeSheet(markedSheet(), pdf, 700).has_value());
    ASSERT_TRUE(writeSheet(markedSheet(), png, 700).has_value());
    (void)test::saidBy(QStringLiteral("pdftoppm"),
                       {QStringLiteral("-r"), QStringLiteral("72"), QStringLiteral("-png"),
                        QStringLiteral("-singlefile"), pdf, folder.filePath(QStringLiteral("seen"))});
    const QImage page(folder.filePath(QStringLiteral("seen.png")));
    ASSERT_FALSE(page.isNull());
    const QImage expected(png);
    const double scale = std::min(static_cast<double>(page.width()) / expected.width(),
                                  static_cast<double>(page.height()) / expected.height());
    const QSizeF size = QSizeF(expected.size()) * scale;
    const QImage sheet = page.copy(QRectF(QPointF((page.width() - size.width()) / 2.0, 0.0), size).toRect());
    constexpr int kSide = 70;
    const auto small = [](const QImage& image) {
        return image.convertToFormat(QImage::Format_RGB32)
            .scaled(kSide, kSide, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    };
    const QImage one = small(sheet);
    const QImage other = small(expected);
    double sum = 0.0;
    for (int y = 0; y < kSide; ++y)
        for (int x = 0; x < kSide; ++x)
            sum += std::abs(qGray(one.pixel(x, y)) - qGray(other.pixel(x, y)));
    EXPECT_LT(sum / (kSide * kSide), 1.8);
}

TEST(PlateSheetTest, PeeledLayersChangeThePicture)
{
    const QTemporaryDir folder;
    PlateSheet peeled = markedSheet();
    peeled.layers = {Layer::Bone, Layer::Nerve};
    const QString whole = folder.filePath(QStringLiteral("whole.png"));
    const QString bones = folder.filePath(QStringLiteral("bones.png"));
    ASSERT_TRUE(writeSheet(markedSheet(), whole, 400).has_value());
    ASSERT_TRUE(writeSheet(peeled, bones, 400).has_value());
    EXPECT_GT(differentPixels(QImage(whole), QImage(bones)), 5000);
}

TEST(PlateSheetTest, ThePictureIsTheSameEveryTime)
{
    const QTemporaryDir folder;
    const QString one = folder.filePath(QStringLiteral("one.png"));
    const QString two = folder.filePath(QStringLiteral("two.png"));
    ASSERT_TRUE(writeSheet(markedSheet(), one, 400).has_value());
    ASSERT_TRUE(writeSheet(markedSheet(), two, 400).has_value());
    EXPECT_EQ(sheetBytes(one), sheetBytes(two));
}

TEST(PlateSheetTest, WhatCannotBeWrittenIsNamedAndLeavesNothingBehind)
{
    const QTemporaryDir folder;
    const QString taken = folder.filePath(QStringLiteral("folder.png"));
    ASSERT_TRUE(QDir().mkpath(taken));
    const QString nowhere = folder.filePath(QStringLiteral("absent/a.png"));
    for (const QString& file : {taken, nowhere}) {
        const auto written = writeSheet(markedSheet(), file, 400);
        ASSERT_FALSE(written.has_value()) << file.toStdString();
        EXPECT_EQ(written.error().problem, Problem::OutputNotWritable);
        EXPECT_EQ(written.error().where, file.toStdString());
    }
    EXPECT_FALSE(QFile::exists(nowhere));
}

TEST(PlateSheetTest, ADeviceOrPipeIsNeverReplacedByAFile)
{
    const QTemporaryDir folder;
    const QString pipe = folder.filePath(QStringLiteral("pipe.png"));
    const QString link = folder.filePath(QStringLiteral("link.png"));
    ASSERT_EQ(::mkfifo(QFile::encodeName(pipe).constData(), 0600), 0);
    ASSERT_TRUE(QFile::link(pipe, link));
    for (const QString& file : {pipe, link})
        EXPECT_EQ(writeSheet(markedSheet(), file, 400).error().problem, Problem::OutputNotWritable);
    EXPECT_FALSE(QFileInfo(pipe).isFile());
    EXPECT_TRUE(QFileInfo(link).isSymLink());
}

TEST(PlateSheetTest, ADiskThatFillsUpLeavesTheEarlierFileAsItWas)
{
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("a.png"));
    ASSERT_TRUE(writeSheet(markedSheet(), file, 400).has_value());
    const QByteArray before = sheetBytes(file);
    const PlateSheet again = markedSheet();
    const auto written = [&] {
        const SmallDisk disk(1000);
        return writeSheet(again, file, 900);
    }();
    ASSERT_FALSE(written.has_value());
    EXPECT_EQ(written.error().problem, Problem::OutputNotWritable);
    EXPECT_EQ(sheetBytes(file), before);
    EXPECT_EQ(QDir(folder.path()).entryList(QDir::Files).size(), 1);
}

}  // namespace fb::plate_sheet_tests
