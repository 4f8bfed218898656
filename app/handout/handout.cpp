#include "app/handout/handout.h"

#include <QBuffer>
#include <QImage>
#include <QPainter>
#include <QPdfWriter>
#include <QSvgGenerator>
#include <cmath>
#include <functional>

#include "app/doors/saved_file.h"
#include "app/handout/handout_page.h"

namespace fb {

namespace handout_detail {

constexpr double kMarginMm = 14.0;
constexpr int kDotsPerInch = 300;
constexpr double kMmPerInch = 25.4;
constexpr double kPictureMargin = 28.0;    // units
constexpr QSizeF kPicture(1200.0, 900.0);  // units of a step as SVG or PNG
constexpr int kPngWidth = 2400;            // pixels
using PaintPage = std::function<void(QPainter&, QSizeF)>;

QByteArray asPdf(const QString& title, const QPageLayout& layout, const std::vector<PaintPage>& pages)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setTitle(title);
    writer.setCreator(QStringLiteral("Fingerbreadth"));
    writer.setResolution(kDotsPerInch);
    writer.setPageLayout(layout);
    const double dotsPerUnit = kSheetUnitMm * kDotsPerInch / kMmPerInch;
    const QSizeF size = QSizeF(writer.width(), writer.height()) / dotsPerUnit;
    QPainter painter;
    if (!painter.begin(&writer))
        return {};
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(dotsPerUnit, dotsPerUnit);
    for (std::size_t i = 0; i < pages.size(); ++i) {
        if (i > 0 && !writer.newPage())
            return {};
        pages[i](painter, size);
    }
    return painter.end() ? bytes : QByteArray();
}

QPageLayout layoutOf(QPageSize::PageSizeId paper, QPageLayout::Orientation orientation)
{
    return {QPageSize(paper), orientation, QMarginsF(kMarginMm, kMarginMm, kMarginMm, kMarginMm),
            QPageLayout::Millimeter};
}

// White, with the page within its margin.
void paintPicture(QPainter& painter, const PaintPage& page)
{
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(QRectF(QPointF(), kPicture), Qt::white);
    painter.translate(kPictureMargin, kPictureMargin);
    page(painter, kPicture - QSizeF(2.0 * kPictureMargin, 2.0 * kPictureMargin));
}

QByteArray asPng(const PaintPage& page)
{
    const double scale = kPngWidth / kPicture.width();
    QImage image((kPicture * scale).toSize(), QImage::Format_RGB32);
    const int dotsPerMeter = static_cast<int>(std::lround(kDotsPerInch / kMmPerInch * 1000.0));
    image.setDotsPerMeterX(dotsPerMeter);
    image.setDotsPerMeterY(dotsPerMeter);
    QPainter painter(&image);
    painter.scale(scale, scale);
    paintPicture(painter, page);
    painter.end();
    QByteArray bytes;
    QBuffer buffer(&bytes);
    return image.save(&buffer, "PNG") ? bytes : QByteArray();
}

QByteArray asSvg(const QString& title, const QString& about, const PaintPage& page)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setTitle(title);
    generator.setDescription(about);
    generator.setSize(kPicture.toSize());
    generator.setViewBox(QRectF(QPointF(), kPicture));
    QPainter painter(&generator);
    paintPicture(painter, page);
    painter.end();
    return bytes;
}

}  // namespace handout_detail

Result<bool> writeStep(const HandoutAsk& ask, int step, PictureKind kind, const QString& file)
{
    using namespace handout_detail;
    const auto body = PaperBody::make(ask.body, *ask.library, Tint::Full);
    if (!body)
        return tl::unexpected(body.error());
    const HandoutWords words = handoutWords(ask);
    const LectureLook look = lookOf(ask.body, ask.policy, ask.steps, step);
    const PaintPage page = [&](QPainter& painter, QSizeF size) {
        paintStepPage(painter, size, {words, *body}, look);
    };
    switch (kind) {
    case PictureKind::Pdf:
        return saveWhole(asPdf(look.heading, layoutOf(usualPaper(), QPageLayout::Landscape), {page}), file);
    case PictureKind::Svg: return saveWhole(asSvg(look.heading, look.caption, page), file);
    case PictureKind::Png: return saveWhole(asPng(page), file);
    }
    return fault(Problem::OutputKindUnknown, file.toStdString());
}

Result<bool> writeHandout(const HandoutAsk& ask, const QString& file, QPageSize::PageSizeId paper)
{
    using namespace handout_detail;
    const auto body = PaperBody::make(ask.body, *ask.library, Tint::Grey);
    if (!body)
        return tl::unexpected(body.error());
    const HandoutWords words = handoutWords(ask);
    return saveWhole(
        asPdf(words.heading, layoutOf(paper, QPageLayout::Portrait), {[&](QPainter& painter, QSizeF size) {
                  paintStepsPage(painter, size, {words, *body});
              }}),
        file);
}

Result<bool> writeBlankHandout(const HandoutAsk& ask, const QString& file, QPageSize::PageSizeId paper)
{
    using namespace handout_detail;
    const auto body = PaperBody::make(ask.body, *ask.library, Tint::Grey);
    if (!body)
        return tl::unexpected(body.error());
    const HandoutWords words = handoutWords(ask);
    return saveWhole(asPdf(words.task, layoutOf(paper, QPageLayout::Portrait),
                           {[&](QPainter& painter, QSizeF size) {
                                paintPracticePage(painter, size, {words, *body});
                            },
                            [&](QPainter& painter, QSizeF size) {
                                paintKeyPage(painter, size, {words, *body});
                            }}),
                     file);
}

}  // namespace fb
