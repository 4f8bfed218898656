#include "app/look/type.h"

#include <QStringList>
#include <algorithm>
#include <cmath>

namespace fb {

namespace type_detail {

inline constexpr double kBodyPixels = 15.0;

double pixelsOf(Type type)
{
    switch (type) {
    case Type::Title: return 30.0;
    case Type::Request: return 23.0;
    case Type::Body: return kBodyPixels;
    case Type::Small: return 13.0;
    case Type::PlateLabel: return 17.0;
    case Type::PlateWord: return 15.0;
    }
    return kBodyPixels;
}

}  // namespace type_detail

double heldTextScale(double textScale)
{
    return std::isfinite(textScale) ? std::clamp(textScale, 1.0, 2.0) : 1.0;
}

QFont fontOf(Type type, double textScale)
{
    const bool text = type == Type::Body || type == Type::Small;
    QFont font;
    if (text) {
        font.setFamilies({QStringLiteral("Noto Sans"), QStringLiteral("DejaVu Sans")});
        font.setStyleHint(QFont::SansSerif);
    } else {
        font.setFamilies(
            {QStringLiteral("EB Garamond"), QStringLiteral("Noto Serif"), QStringLiteral("DejaVu Serif")});
        font.setStyleHint(QFont::Serif);
        // One drawing of the face for every size: the 8-point cut is meant for footnotes in lead.
        font.setStyleName(QString());
    }
    font.setPixelSize(static_cast<int>(std::lround(type_detail::pixelsOf(type) * heldTextScale(textScale))));
    font.setItalic(type == Type::PlateLabel);
    if (type == Type::PlateWord)
        font.setLetterSpacing(QFont::PercentageSpacing, 104.0);
    return font;
}

double textScaleOf(const QFont& body)
{
    if (body.pixelSize() <= 0)
        return 1.0;
    return heldTextScale(body.pixelSize() / type_detail::kBodyPixels);
}

}  // namespace fb
