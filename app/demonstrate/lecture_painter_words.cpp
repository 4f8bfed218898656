#include "app/demonstrate/lecture_painter_words.h"

#include <QCache>
#include <QImage>
#include <QMutex>
#include <QPaintEngine>
#include <QPainter>
#include <cmath>

namespace fb {

namespace lecture_words_painter_detail {

// Up to here the engine keeps glyphs itself (measured: 64 pixels).
constexpr double kLargeLetters = 60.0;
// With half of it the words of a hip pushed each other out on a tall screen: 118 ms a step instead of 33.
constexpr int kMostKilobytes = 96 * 1024;

struct Key {
    QString text, font;
    QRgb colour = 0;
    QTransform scaling;
    double fineness = 1.0;  // device pixels to a pixel
    QSizeF size;
    int flags = 0;
    Qt::LayoutDirection direction{};

    friend bool operator==(const Key&, const Key&) = default;
};

size_t qHash(const Key& key, size_t seed = 0) noexcept
{
    return qHashMulti(seed, key.text, key.font, key.colour, key.flags, key.size.width(), key.size.height());
}

QImage drawn(const Key& key, const QFont& font)
{
    const QSizeF size = key.scaling.mapRect(QRectF(QPointF(), key.size)).size() * key.fineness;
    // Letters may reach a little over their box.
    QImage image(
        QSize(static_cast<int>(std::ceil(size.width())) + 1, static_cast<int>(std::ceil(size.height())) + 1),
        QImage::Format_ARGB32_Premultiplied);
    image.setDevicePixelRatio(key.fineness);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setWorldTransform(key.scaling);
    painter.setLayoutDirection(key.direction);
    painter.setFont(font);
    painter.setPen(QColor::fromRgba(key.colour));
    painter.drawText(QRectF(QPointF(), key.size), key.flags, key.text);
    return image;
}

struct Shelf {
    QMutex mutex;
    QCache<Key, QImage> images{kMostKilobytes};
};

Shelf& shelf()
{
    static Shelf shelf;
    return shelf;
}

QImage kept(const Key& key, const QFont& font)
{
    {
        const QMutexLocker lock(&shelf().mutex);
        if (const QImage* image = shelf().images.object(key))
            return *image;
    }
    const QImage image = drawn(key, font);
    const QMutexLocker lock(&shelf().mutex);
    shelf().images.insert(key, new QImage(image), static_cast<int>(image.sizeInBytes() / 1024) + 1);
    return image;
}

}  // namespace lecture_words_painter_detail

void paintWords(QPainter& painter, const QRectF& box, int flags, const QString& text, const QFont& font)
{
    using namespace lecture_words_painter_detail;
    const QTransform world = painter.worldTransform();
    const double fineness = painter.device()->devicePixelRatioF();
    const bool isScreen = painter.paintEngine()->type() == QPaintEngine::Raster;
    if (!isScreen || world.type() > QTransform::TxScale ||
        font.pixelSize() * world.m11() * fineness <= kLargeLetters) {
        painter.setFont(font);
        painter.drawText(box, flags, text);
        return;
    }
    const QTransform scaling = QTransform::fromScale(world.m11(), world.m22());
    const Key key{text,       font.key(), painter.pen().color().rgba(), scaling, fineness,
                  box.size(), flags,      painter.layoutDirection()};
    const QImage image = kept(key, font);
    const QPointF at = world.map(box.topLeft()) * fineness;
    painter.save();
    painter.resetTransform();
    painter.drawImage(QPointF(std::round(at.x()), std::round(at.y())) / fineness, image);
    painter.restore();
}

qsizetype keptWords()
{
    using lecture_words_painter_detail::shelf;
    const QMutexLocker lock(&shelf().mutex);
    return shelf().images.size();
}

}  // namespace fb
