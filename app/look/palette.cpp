#include "app/look/palette.h"

namespace fb {

namespace palette_detail {

Scheme light()
{
    Scheme s;
    s.kind = PaletteKind::Light;
    s.window = QColor(0xea, 0xe2, 0xd3);
    s.paper = QColor(0xf9, 0xf3, 0xe7);
    s.panel = QColor(0xf3, 0xec, 0xdf);
    s.ink = QColor(0x2a, 0x24, 0x1e);
    s.quietInk = QColor(0x5f, 0x55, 0x49);
    s.line = QColor(0xc4, 0xb7, 0xa1);
    s.accent = QColor(0x17, 0x53, 0x60);
    s.accentInk = QColor(0xfb, 0xf7, 0xee);
    s.focus = QColor(0x0e, 0x77, 0x8c);
    s.good = QColor(0x27, 0x61, 0x3e);
    s.fair = QColor(0x6f, 0x53, 0x0d);
    s.bad = QColor(0x96, 0x40, 0x18);
    s.danger = QColor(0x8c, 0x1b, 0x2a);
    return s;
}

Scheme dark()
{
    Scheme s;
    s.kind = PaletteKind::Dark;
    s.window = QColor(0x14, 0x13, 0x11);
    s.paper = QColor(0x22, 0x1f, 0x1b);
    s.panel = QColor(0x1b, 0x19, 0x16);
    s.ink = QColor(0xee, 0xe6, 0xd8);
    s.quietInk = QColor(0xb3, 0xa8, 0x98);
    s.line = QColor(0x52, 0x4a, 0x40);
    s.accent = QColor(0x86, 0xc5, 0xcf);
    s.accentInk = QColor(0x0e, 0x1f, 0x22);
    s.focus = QColor(0xf0, 0xc6, 0x74);
    s.good = QColor(0x8c, 0xcb, 0xa0);
    s.fair = QColor(0xe0, 0xbd, 0x6a);
    s.bad = QColor(0xee, 0xa2, 0x78);
    s.danger = QColor(0xf4, 0x95, 0x95);
    return s;
}

// A washed-out beam eats middle tones: white paper, black ink, deep saturated colours.
Scheme projector()
{
    Scheme s;
    s.kind = PaletteKind::Projector;
    s.window = QColor(0xff, 0xff, 0xff);
    s.paper = QColor(0xff, 0xff, 0xff);
    s.panel = QColor(0xff, 0xff, 0xff);
    s.ink = QColor(0x00, 0x00, 0x00);
    s.quietInk = QColor(0x2c, 0x2c, 0x2c);
    s.line = QColor(0x5a, 0x5a, 0x5a);
    s.accent = QColor(0x00, 0x36, 0x6b);
    s.accentInk = QColor(0xff, 0xff, 0xff);
    s.focus = QColor(0xc2, 0x00, 0x5d);
    s.good = QColor(0x00, 0x4d, 0x1d);
    s.fair = QColor(0x52, 0x38, 0x00);
    s.bad = QColor(0x7d, 0x22, 0x00);
    s.danger = QColor(0x9a, 0x00, 0x18);
    return s;
}

}  // namespace palette_detail

Scheme schemeOf(PaletteKind kind)
{
    switch (kind) {
    case PaletteKind::Light: return palette_detail::light();
    case PaletteKind::Dark: return palette_detail::dark();
    case PaletteKind::Projector: return palette_detail::projector();
    }
    return palette_detail::light();
}

QColor layered(const QColor& under, const QColor& over)
{
    const float below = under.alphaF() * (1.0F - over.alphaF());
    const float alpha = below + over.alphaF();
    if (alpha <= 0.0F)
        return over;
    const auto part = [&](float a, float b) { return (a * below + b * over.alphaF()) / alpha; };
    return QColor::fromRgbF(part(under.redF(), over.redF()), part(under.greenF(), over.greenF()),
                            part(under.blueF(), over.blueF()), alpha);
}

QColor Scheme::of(Role role) const
{
    switch (role) {
    case Role::Landmark:
    case Role::Construction:
    case Role::Arrow: return ink;
    case Role::Newest:
    case Role::Field:
    case Role::Region:
    case Role::Ideal: return accent;
    case Role::Strike: return danger;
    case Role::Near: return fair;
    case Role::Yours:
    case Role::Other: return bad;
    case Role::MarkOnTarget: return good;
    case Role::MarkAcceptable: return fair;
    case Role::MarkOffTarget: return bad;
    case Role::MarkUnsafe: return danger;
    }
    return ink;
}

}  // namespace fb
