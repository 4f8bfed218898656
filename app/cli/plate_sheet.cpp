#include "app/cli/plate_sheet.h"

#include <QBuffer>
#include <QImage>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QSvgGenerator>
#include <cmath>
#include <functional>

#include "app/canvas/hand_painter.h"
#include "app/canvas/paper_shades.h"
#include "app/cli/documents.h"
#include "app/doors/saved_file.h"
#include "app/look/palette.h"
#include "app/look/style.h"
#include "app/look/type.h"
#include "app/scene/scene_painter.h"

namespace fb {

namespace plate_sheet_detail {

// The sheet is laid out at this width and scaled to the size asked for.
constexpr double kSheetWidth = 1000.0;

class SheetPainter {
public:
    explicit SheetPainter(const PlateSheet& sheet) : m_sheet(sheet), m_scheme(schemeOf(PaletteKind::Light))
    {
        const Bounds& paper = sheet.picture->ink.paper;
        const double width = kSheetWidth - 2 * space::kMargin;
        m_scale = width / (paper.high.x - paper.low.x);
        m_plate = QRectF(space::kMargin, kHead, width, m_scale * (paper.high.y - paper.low.y));
    }

    [[nodiscard]] QSizeF size() const { return {kSheetWidth, m_plate.bottom() + foot()}; }

    // pixelScale: device pixels to one unit of the layout; 0 for a device without pixels.
    void paint(QPainter& painter, double pixelScale) const
    {
        painter.setRenderHint(QPainter::Antialiasing);
        painter.fillRect(QRectF(QPointF(), size()), m_scheme.paper);
        plate(painter, pixelScale);
        words(painter);
    }

private:
    [[nodiscard]] double foot() const { return m_sheet.verdict.isEmpty() ? kFoot : kFoot + kVerdict; }

    [[nodiscard]] QTransform cmToSheet() const
    {
        const Point low = m_sheet.picture->ink.paper.low;
        QTransform transform;
        transform.translate(m_plate.left(), m_plate.bottom());
        transform.scale(m_scale, -m_scale);
        transform.translate(-low.x, -low.y);
        return transform;
    }

    void plate(QPainter& painter, double pixelScale) const
    {
        static const std::atomic_bool kNeverCancelled{false};
        const ReadyInk ink(*m_sheet.picture);
        const InkManner manner{cmToSheet(), m_sheet.layers,
                               pixelScale > 0.0 ? kLeastHatchPixels / pixelScale : 0.0, m_scheme.line};
        const auto drawing = [&](QPainter& into) {
            (void)paintInk(into, ink,
                           toneColours(*m_sheet.picture->plate, m_scheme, m_sheet.picture->skinTone), manner,
                           kNeverCancelled);
            if (m_sheet.hand)
                paintHand(into, *m_sheet.hand, m_scheme, cmToSheet());
        };
        painter.save();
        painter.setClipRect(m_plate);
        if (losesFading(painter))
            painter.drawImage(m_plate, onPaper(painter, drawing));
        else
            drawing(painter);
        scene(painter, ink);
        painter.restore();
    }

    // The drawing as a fine picture without anything to see through.
    [[nodiscard]] QImage onPaper(const QPainter& painter, const std::function<void(QPainter&)>& drawing) const
    {
        return pictureOf(m_plate, kPdfFineness * dotsPerUnit(painter),
                         [&](QPainter& into) {
                             into.fillRect(m_plate, m_scheme.paper);
                             drawing(into);
                         })
            .convertToFormat(QImage::Format_RGB32);
    }

    // Labels stand beside the body where the paper has room, and never on the mark.
    void scene(QPainter& painter, const ReadyInk& ink) const
    {
        const QTransform toSheet = cmToSheet();
        LabelShyness shyness;
        for (const QRectF& row : ink.silhouette())
            shyness.body += toSheet.mapRect(row);
        if (!m_sheet.mark) {
            paintScene(painter, m_sheet.scene, m_scheme, toSheet, 1.0, m_plate, {}, shyness);
            return;
        }
        const QPointF at = toSheet.map(*m_sheet.mark);
        const QPointF corner(kMark, kMark);
        paintScene(painter, m_sheet.scene, m_scheme, toSheet, 1.0, m_plate,
                   {QRectF(at - corner, at + corner)}, shyness);
        mark(painter, at);
    }

    // A ring with a dot, on a halo of paper.
    void mark(QPainter& painter, QPointF at) const
    {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(m_scheme.paper, 5.0));
        painter.drawEllipse(at, kMark, kMark);
        painter.setPen(QPen(m_scheme.ink, 2.0));
        painter.drawEllipse(at, kMark, kMark);
        painter.setPen(Qt::NoPen);
        painter.setBrush(m_scheme.ink);
        painter.drawEllipse(at, 2.5, 2.5);
    }

    void words(QPainter& painter) const
    {
        const double left = m_plate.left();
        const double width = m_plate.width();
        const auto line = [&](Type type, const QColor& colour, double top, double height,
                              const QString& text) {
            painter.setFont(fontOf(type, 1.0));
            painter.setPen(colour);
            painter.drawText(QRectF(left, top, width, height),
                             Qt::AlignLeading | Qt::AlignVCenter | Qt::TextWordWrap, text);
        };
        line(Type::Title, m_scheme.ink, space::kMargin - 8.0, 44.0, m_sheet.title);
        line(Type::Body, m_scheme.quietInk, space::kMargin + 36.0, 28.0, m_sheet.aside);
        painter.setPen(QPen(m_scheme.line, 1.0));
        painter.drawLine(QPointF(left, m_plate.bottom()), QPointF(left + width, m_plate.bottom()));
        double top = m_plate.bottom() + space::kNear;
        if (!m_sheet.verdict.isEmpty()) {
            line(Type::Request, m_scheme.ink, top, kVerdict - space::kNear, m_sheet.verdict);
            top += kVerdict;
        }
        line(Type::Small, m_scheme.quietInk, top, 24.0, cautionText());
    }

    static constexpr double kHead = 108.0;
    static constexpr double kFoot = 48.0;
    static constexpr double kVerdict = 72.0;
    static constexpr double kMark = 9.0;
    static constexpr double kLeastHatchPixels = 0.7;
    static constexpr double kPdfFineness = 2.0;  // dots of the drawing to one of the printer's

    const PlateSheet& m_sheet;
    Scheme m_scheme;
    double m_scale = 1.0;
    QRectF m_plate;
};

QByteArray asPng(const SheetPainter& sheet, int width)
{
    const double scale = width / kSheetWidth;
    const QSizeF size = sheet.size() * scale;
    QImage image(width, static_cast<int>(std::ceil(size.height())), QImage::Format_RGB32);
    image.fill(schemeOf(PaletteKind::Light).paper);
    QPainter painter(&image);
    painter.scale(scale, scale);
    sheet.paint(painter, scale);
    painter.end();
    QByteArray bytes;
    QBuffer buffer(&bytes);
    return image.save(&buffer, "PNG") ? bytes : QByteArray();
}

QByteArray asSvg(const SheetPainter& sheet, int width, const QString& title)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setTitle(title);
    generator.setDescription(cautionText());
    generator.setSize((sheet.size() * (width / kSheetWidth)).toSize());
    generator.setViewBox(QRectF(QPointF(), sheet.size()));
    QPainter painter(&generator);
    sheet.paint(painter, 0.0);
    painter.end();
    return bytes;
}

QByteArray asPdf(const SheetPainter& sheet, const QString& title)
{
    constexpr int kDotsPerInch = 300;
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setTitle(title);
    writer.setPageSize(QPageSize(QPageSize::A4));
    if (sheet.size().width() > sheet.size().height())
        writer.setPageOrientation(QPageLayout::Landscape);
    writer.setPageMargins(QMarginsF());
    writer.setResolution(kDotsPerInch);
    const QSizeF page(writer.width(), writer.height());
    const double scale = std::min(page.width() / sheet.size().width(), page.height() / sheet.size().height());
    QPainter painter(&writer);
    painter.translate((page.width() - scale * sheet.size().width()) / 2.0, 0.0);
    painter.scale(scale, scale);
    sheet.paint(painter, 0.0);
    painter.end();
    return bytes;
}

}  // namespace plate_sheet_detail

using namespace plate_sheet_detail;

Result<SheetKind> sheetKindOf(const QString& file)
{
    const auto ends = [&](const char* ending) {
        return file.endsWith(QLatin1StringView(ending), Qt::CaseInsensitive);
    };
    if (ends(".svg"))
        return SheetKind::Svg;
    if (ends(".png"))
        return SheetKind::Png;
    if (ends(".pdf"))
        return SheetKind::Pdf;
    return fault(Problem::OutputKindUnknown, file.toStdString());
}

Result<bool> writeSheet(const PlateSheet& sheet, const QString& file, int width)
{
    const auto kind = sheetKindOf(file);
    if (!kind)
        return tl::unexpected(kind.error());
    const SheetPainter painter(sheet);
    const QByteArray bytes = *kind == SheetKind::Svg   ? asSvg(painter, width, sheet.title)
                             : *kind == SheetKind::Png ? asPng(painter, width)
                                                       : asPdf(painter, sheet.title);
    return saveWhole(bytes, file);
}

}  // namespace fb
