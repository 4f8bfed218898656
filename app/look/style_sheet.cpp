#include <array>
#include <utility>

#include "app/look/style.h"
#include "app/look/type.h"

namespace fb {

namespace sheet_detail {

// @name@ is a colour or a number of this scheme and scale; see filled().
inline constexpr const char* kText = R"(
QToolTip { background: @panel@; color: @ink@; border: 1px solid @line@; padding: 5px 8px; }
QLabel { background: transparent; color: @ink@; }
QLabel[look="title"], QLabel[look="request"], QLabel[look="display"] { font-family: "EB Garamond", "Noto Serif", serif; }
QLabel[look="display"] { font-size: @display@px; }
QLabel[look="title"] { font-size: @title@px; }
QLabel[look="large"] { font-size: @large@px; }
QLabel[look="figure"] { font-size: @figure@px; }
QLabel[look="request"] { font-size: @request@px; }
QLabel[look="small"], QLabel[look="caution"] { font-size: @small@px; color: @quiet@; }
QFrame[look="rule"] { background: @line@; border: none; max-height: 1px; min-height: 1px; }
QMainWindow, QDialog { background: @window@; }
QStatusBar { background: @window@; color: @quiet@; border-top: 1px solid @line@; }
QStatusBar::item { border: none; }
)";

inline constexpr const char* kButtons = R"(
QPushButton, QToolButton { background: transparent; color: @ink@; border: 1px solid @edge@; border-radius: 2px;
  min-height: @inner@px; padding: 2px 15px; margin: 1px; }
QToolButton { padding: 2px 7px; min-width: @innerTool@px; }
QPushButton:hover, QToolButton:hover { background: @hover@; }
QPushButton:pressed, QToolButton:pressed { background: @pressed@; }
QPushButton[look="main"] { background: @accent@; color: @accentInk@; border-color: @accent@; font-weight: 600; }
QPushButton[look="main"]:hover { background: @accentHover@; border-color: @accentHover@; }
QToolButton:checked { background: @chosen@; border: 2px solid @accent@; padding: 1px 6px; }
QPushButton[look="danger"] { border: 2px solid @danger@; padding: 1px 14px; font-weight: 600; }
QPushButton:disabled, QToolButton:disabled { color: @faint@; border-color: @line@; background: transparent; }
QPushButton:focus, QToolButton:focus { border: 3px solid @focus@; margin: 0px; padding: 1px 14px; }
QToolButton:focus { padding: 1px 6px; }
QToolButton[look="layer"] { border-color: transparent; border-bottom: 2px solid @line@; border-radius: 0; color: @quiet@; }
QToolButton[look="layer"]:checked { background: transparent; padding: 2px 7px; border: 1px solid transparent;
  border-bottom: 2px solid @accent@; color: @ink@; }
QToolButton[look="layer"]:focus, QToolButton[look="layer"]:checked:focus { border: 3px solid @focus@; padding: 1px 6px; }
QToolButton[look="layer"]:disabled { color: @faint@; border-color: transparent; }
QPushButton[look="quiet"], QToolButton[look="quiet"] { border-color: transparent; }
QPushButton[look="quiet"]:focus, QToolButton[look="quiet"]:focus { border-color: @focus@; }
QToolButton::menu-indicator { image: none; }
)";

inline constexpr const char* kFields = R"(
QLineEdit, QComboBox, QAbstractSpinBox { background: @paper@; color: @ink@; border: 1px solid @edge@; border-radius: 2px;
  min-height: @inner@px; padding: 2px 8px; margin: 1px; selection-background-color: @accent@; selection-color: @accentInk@; }
QComboBox { padding-right: 28px; combobox-popup: 0; }
QAbstractSpinBox { padding-right: 26px; }
QLineEdit:focus, QComboBox:focus, QAbstractSpinBox:focus { border: 3px solid @focus@; margin: 0px; padding: 1px 7px; }
QComboBox:focus { padding-right: 27px; }
QAbstractSpinBox:focus { padding-right: 25px; }
QLineEdit:disabled, QComboBox:disabled, QAbstractSpinBox:disabled { color: @faint@; background: transparent; border-color: @line@; }
QLineEdit[wrong="true"], QAbstractSpinBox[wrong="true"], QComboBox[wrong="true"] { border: 2px dashed @danger@; padding: 1px 7px; }
QComboBox::drop-down { subcontrol-origin: border; subcontrol-position: center right; width: 26px; border: none; }
QComboBox::down-arrow, QSpinBox::down-arrow, QDoubleSpinBox::down-arrow { image: url(:/icons/chevron-down-@tint@.svg); width: @chevron@px; height: @chevron@px; }
QSpinBox::up-arrow, QDoubleSpinBox::up-arrow { image: url(:/icons/chevron-up-@tint@.svg); width: @chevron@px; height: @chevron@px; }
QAbstractSpinBox::up-button, QAbstractSpinBox::down-button { subcontrol-origin: border; width: 24px; border: none; background: transparent; }
QAbstractSpinBox::up-button { subcontrol-position: top right; }
QAbstractSpinBox::down-button { subcontrol-position: bottom right; }
QAbstractItemView { background: @paper@; color: @ink@; border: 1px solid @edge@; outline: none;
  selection-background-color: @accent@; selection-color: @accentInk@; }
QComboBox QAbstractItemView::item { min-height: @control@px; padding: 0 8px; }
QComboBox QAbstractItemView::item:selected { background: @accent@; color: @accentInk@; }
)";

inline constexpr const char* kChoices = R"(
QCheckBox, QRadioButton { background: transparent; color: @ink@; min-height: @choice@px; spacing: 9px;
  border: 2px solid transparent; border-radius: 2px; padding: 0 4px; }
QCheckBox::indicator, QRadioButton::indicator { width: @mark@px; height: @mark@px; border: 1px solid @edge@; background: @paper@; }
QCheckBox::indicator { border-radius: 2px; }
QRadioButton::indicator { border-radius: @markRound@px; }
QCheckBox::indicator:checked { background: @accent@; border-color: @accent@; image: url(:/icons/tick-@untint@.svg); }
QRadioButton::indicator:checked { width: @markChosen@px; height: @markChosen@px; border: @markThick@px solid @accent@; background: @paper@; }
QCheckBox::indicator:disabled, QRadioButton::indicator:disabled { border-color: @line@; background: transparent; }
QCheckBox:disabled, QRadioButton:disabled { color: @faint@; }
QCheckBox:focus, QRadioButton:focus { outline: none; border-color: @focus@; }
QGroupBox { border: none; border-top: 1px solid @line@; margin-top: @groupTop@px; padding-top: 8px; }
QGroupBox::title { subcontrol-origin: margin; subcontrol-position: top left; padding-right: 8px; color: @quiet@; }
)";

inline constexpr const char* kRest = R"(
QMenuBar { background: @window@; color: @ink@; border-bottom: 1px solid @line@; }
QMenuBar::item { background: transparent; padding: 7px 11px; }
QMenuBar::item:selected { background: @hover@; }
QMenu { background: @paper@; color: @ink@; border: 1px solid @edge@; padding: 4px 0; }
QMenu::item { padding: 7px 26px 7px 22px; }
QMenu::item:selected { background: @accent@; color: @accentInk@; }
QMenu::item:disabled { color: @faint@; }
QMenu::separator { height: 1px; background: @line@; margin: 4px 12px; }
QScrollArea { background: transparent; border: none; }
QScrollBar:vertical { background: transparent; width: 13px; margin: 0; }
QScrollBar:horizontal { background: transparent; height: 13px; margin: 0; }
QScrollBar::handle { background: @edge@; border: 4px solid @window@; min-height: 30px; min-width: 30px; }
QScrollBar::handle:hover { background: @quiet@; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QTextBrowser, QPlainTextEdit, QTextEdit { background: @paper@; color: @ink@; border: 1px solid @line@; }
QTextBrowser:focus, QPlainTextEdit:focus, QTextEdit:focus { border: 3px solid @focus@; }
QProgressBar { background: transparent; border: none; border-bottom: 1px solid @line@; max-height: 3px; }
QProgressBar::chunk { background: @accent@; }
QSplitter::handle { background: @line@; }
)";

// Pixels at 100 percent: what is read standing, a step away from the screen.
constexpr double kDisplay = 44.0;
constexpr double kLarge = 19.0;
// Numbers that are data: in the text face, whose 1 and 0 are no letters.
constexpr double kFigure = 27.0;

QColor between(const QColor& a, const QColor& b, double share)
{
    return QColor::fromRgbF(static_cast<float>(a.redF() + (b.redF() - a.redF()) * share),
                            static_cast<float>(a.greenF() + (b.greenF() - a.greenF()) * share),
                            static_cast<float>(a.blueF() + (b.blueF() - a.blueF()) * share));
}

// Replaces every @name@; a name nobody knows stays and fails the test of the sheet.
QString filled(QString text, const Scheme& s, double textScale, Reach reach)
{
    const int control =
        qMax(leastControlHeight(reach), qRound(leastControlHeight(reach) * (0.4 + 0.6 * textScale)));
    const int mark = qRound(18 * (0.5 + 0.5 * textScale));
    const auto type = [&](Type t) { return QString::number(fontOf(t, textScale).pixelSize()); };
    const auto number = [](int n) { return QString::number(n); };
    const QString tint = s.isDark() ? QStringLiteral("pale") : QStringLiteral("ink");
    const QString untint = s.isDark() ? QStringLiteral("ink") : QStringLiteral("pale");
    const std::array<std::pair<const char*, QString>, 34> words{{
        {"window", s.window.name()},
        {"paper", s.paper.name()},
        {"panel", s.panel.name()},
        {"ink", s.ink.name()},
        {"quiet", s.quietInk.name()},
        {"line", s.line.name()},
        {"accent", s.accent.name()},
        {"accentInk", s.accentInk.name()},
        {"focus", s.focus.name()},
        {"danger", s.danger.name()},
        {"edge", between(s.window, s.ink, 0.5).name()},
        {"hover", between(s.window, s.ink, 0.07).name()},
        {"pressed", between(s.window, s.ink, 0.16).name()},
        {"chosen", between(s.window, s.accent, 0.16).name()},
        {"accentHover", between(s.accent, s.ink, 0.25).name()},
        {"faint", between(s.window, s.ink, 0.45).name()},
        {"display", number(qRound(kDisplay * textScale))},
        {"large", number(qRound(kLarge * textScale))},
        {"figure", number(qRound(kFigure * textScale))},
        {"title", type(Type::Title)},
        {"request", type(Type::Request)},
        {"small", type(Type::Small)},
        {"control", number(control)},
        {"choice", number(control - 4)},
        {"chevron", number(qRound(12 * textScale))},
        {"inner", number(control - 8)},
        {"innerTool", number(control - 18)},
        {"mark", number(mark)},
        {"markRound", number(mark / 2 + 1)},
        {"markChosen", number(mark - 10)},
        {"markThick", number(6)},
        {"groupTop", number(qRound(20 * textScale))},
        {"tint", tint},
        {"untint", untint},
    }};
    for (const auto& [name, value] : words)
        text.replace(QLatin1Char('@') + QLatin1String(name) + QLatin1Char('@'), value);
    return text;
}

}  // namespace sheet_detail

QString styleSheetOf(const Scheme& scheme, double textScale, Reach reach)
{
    QString all;
    for (const char* part : {sheet_detail::kText, sheet_detail::kButtons, sheet_detail::kFields,
                             sheet_detail::kChoices, sheet_detail::kRest})
        all += QLatin1String(part);
    return sheet_detail::filled(all, scheme, heldTextScale(textScale), reach);
}

}  // namespace fb
