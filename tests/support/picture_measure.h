// Measures words as an eye would, from the painted picture alone: how large a letter is and how it stands out
// from its ground.
#pragma once

#include <QColor>
#include <QHash>
#include <QImage>
#include <QRect>
#include <algorithm>
#include <cmath>

namespace fb::test {

// WCAG 2, written down a second time so that no mistake is shared with the program.
[[nodiscard]] inline double relativeLight(QRgb pixel)
{
    const auto linear = [](int value) {
        const double channel = value / 255.0;
        return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(qRed(pixel)) + 0.7152 * linear(qGreen(pixel)) + 0.0722 * linear(qBlue(pixel));
}
[[nodiscard]] inline double ratioOf(QRgb a, QRgb b)
{
    const double one = relativeLight(a) + 0.05;
    const double other = relativeLight(b) + 0.05;
    return std::max(one, other) / std::min(one, other);
}

// The colour most pixels of a box have: what its words stand on.
[[nodiscard]] inline QRgb groundOf(const QImage& image, const QRect& box)
{
    QHash<QRgb, int> counts;
    const QRect seen = box & image.rect();
    for (int y = seen.top(); y <= seen.bottom(); ++y)
        for (int x = seen.left(); x <= seen.right(); ++x)
            ++counts[image.pixel(x, y)];
    QRgb ground = 0;
    int most = 0;
    for (auto it = counts.begin(); it != counts.end(); ++it) {
        if (it.value() > most) {
            most = it.value();
            ground = it.key();
        }
    }
    return ground;
}

// The contrast its strokes reach against their ground: of the pixels that stand out most, a twentieth of the
// inked ones, so that neither a stray pixel nor the soft rim of a letter decides.
[[nodiscard]] inline double paintedContrast(const QImage& image, const QRect& box)
{
    const QRgb ground = groundOf(image, box);
    std::vector<double> ratios;
    const QRect seen = box & image.rect();
    for (int y = seen.top(); y <= seen.bottom(); ++y)
        for (int x = seen.left(); x <= seen.right(); ++x)
            if (image.pixel(x, y) != ground)
                ratios.push_back(ratioOf(image.pixel(x, y), ground));
    if (ratios.empty())
        return 1.0;
    std::ranges::sort(ratios, std::greater<>());
    return ratios[ratios.size() / 20];
}

// The rows that ink reaches in a box, of at least half the strongest contrast.
[[nodiscard]] inline int inkedRows(const QImage& image, const QRect& box)
{
    const QRgb ground = groundOf(image, box);
    const double enough = std::sqrt(paintedContrast(image, box));
    int first = -1;
    int last = -1;
    const QRect seen = box & image.rect();
    for (int y = seen.top(); y <= seen.bottom(); ++y) {
        for (int x = seen.left(); x <= seen.right(); ++x) {
            if (ratioOf(image.pixel(x, y), ground) < enough)
                continue;
            first = first < 0 ? y : first;
            last = y;
            break;
        }
    }
    return first < 0 ? 0 : last - first + 1;
}

}  // namespace fb::test
