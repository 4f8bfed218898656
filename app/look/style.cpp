#include "app/look/style.h"

#include <QApplication>
#include <QPalette>
#include <QStyleFactory>

#include "app/look/type.h"

namespace fb {

namespace style_detail {

QPalette paletteOf(const Scheme& s)
{
    QPalette p;
    p.setColor(QPalette::Window, s.window);
    p.setColor(QPalette::WindowText, s.ink);
    p.setColor(QPalette::Base, s.paper);
    p.setColor(QPalette::AlternateBase, s.panel);
    p.setColor(QPalette::Text, s.ink);
    p.setColor(QPalette::Button, s.panel);
    p.setColor(QPalette::ButtonText, s.ink);
    p.setColor(QPalette::BrightText, s.danger);
    p.setColor(QPalette::Highlight, s.accent);
    p.setColor(QPalette::HighlightedText, s.accentInk);
    p.setColor(QPalette::Link, s.accent);
    p.setColor(QPalette::LinkVisited, s.accent);
    p.setColor(QPalette::ToolTipBase, s.panel);
    p.setColor(QPalette::ToolTipText, s.ink);
    p.setColor(QPalette::PlaceholderText, s.quietInk);
    for (const QPalette::ColorRole role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        p.setColor(QPalette::Disabled, role, s.quietInk);
    return p;
}

}  // namespace style_detail

void applyStyle(QApplication& application, const Scheme& scheme, double textScale, Reach reach)
{
    if (application.property("fbStyled").isNull()) {
        QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
        application.setProperty("fbStyled", true);
    }
    QApplication::setPalette(style_detail::paletteOf(scheme));
    QApplication::setFont(fontOf(Type::Body, textScale));
    application.setStyleSheet(styleSheetOf(scheme, textScale, reach));
}

}  // namespace fb
