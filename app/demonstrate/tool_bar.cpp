#include "app/demonstrate/tool_bar.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QToolButton>

#include "app/demonstrate/tool_signs.h"
#include "app/lecture/lecture_presenter.h"
#include "app/look/icons.h"
#include "app/look/style.h"
#include "app/practice/parts.h"

namespace fb {

namespace tool_bar_detail {

constexpr std::array kToolNames{"toolPoint", "toolPen", "toolEraser", "toolMagnifier", "toolAsk"};
constexpr std::array kToolSigns{ToolSign::Pointer, ToolSign::Pen, ToolSign::Eraser, ToolSign::Lens,
                                ToolSign::Ask};

}  // namespace tool_bar_detail

ToolBar::ToolBar(LecturePresenter& presenter, QWidget* parent) : QWidget(parent), m_presenter(presenter)
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSizeConstraint(QLayout::SetNoConstraint);
    row->setSpacing(space::kTight);
    for (std::size_t i = 0; i < m_tools.size(); ++i)
        m_tools[i] = add(tool_bar_detail::kToolNames[i], true);
    row->addStretch(1);
    m_spotlight = add("toolSpotlight", true);
    m_inks = {add("penFirst", true), add("penSecond", true)};
    m_dashed = add("penDashed", true);
    m_undo = add("undoStroke", false);
    m_wipe = add("wipeStrokes", false);
    m_stay = add("strokesStay", true);
    connectAll();
    say();
}

QToolButton* ToolBar::add(const char* name, bool stays)
{
    QToolButton* button = parts::toggle(this, name);
    button->setCheckable(stays);
    if (!stays)
        button->setProperty("look", QLatin1String("quiet"));
    layout()->addWidget(button);
    return button;
}

void ToolBar::connectAll()
{
    for (std::size_t i = 0; i < m_tools.size(); ++i)
        connect(m_tools[i], &QToolButton::clicked, this, [this, i] {
            m_presenter.setTool(static_cast<LectureTool>(i));
            showState();  // a tool that was in use stays pressed
        });
    connect(m_spotlight, &QToolButton::clicked, this, [this](bool on) { m_presenter.setSpotlight(on); });
    const auto line = [this] { return m_dashed->isChecked() ? PenLine::Dashed : PenLine::Plain; };
    for (std::size_t i = 0; i < m_inks.size(); ++i)
        connect(m_inks[i], &QToolButton::clicked, this, [this, i, line] {
            m_presenter.setPen(static_cast<PenInk>(i), line());
            showState();
        });
    connect(m_dashed, &QToolButton::clicked, this,
            [this, line] { m_presenter.setPen(m_presenter.state().ink, line()); });
    connect(m_undo, &QToolButton::clicked, &m_presenter, &LecturePresenter::undoStroke);
    connect(m_wipe, &QToolButton::clicked, &m_presenter, &LecturePresenter::wipe);
    connect(m_stay, &QToolButton::clicked, this, [this](bool stay) { m_presenter.setStrokesStay(stay); });
}

void ToolBar::say()
{
    //: Tools of a speaker, over the picture that is shown.
    parts::say(m_tools[0], tr("Point"));
    parts::say(m_tools[1], tr("Pen"));
    parts::say(m_tools[2], tr("Eraser"));
    parts::say(m_tools[3], tr("Magnifier"));
    //: A tool: each click on the picture is the place a learner in the room has named.
    parts::say(m_tools[4], tr("Ask the room"));
    //: All but a circle around the pointer is dimmed.
    parts::say(m_spotlight, tr("Spotlight"));
    //: The pen's two inks; each has a line of its own.
    parts::say(m_inks[0], tr("First ink, a full line"));
    parts::say(m_inks[1], tr("Second ink, a line with two edges"));
    parts::say(m_dashed, tr("Dashed line"));
    parts::say(m_undo, tr("Take back the last stroke"));
    parts::say(m_wipe, tr("Wipe away every stroke"));
    //: What is drawn goes along with the body when it changes.
    parts::say(m_stay, tr("Stays with the patient"));
    m_stay->setAccessibleName(tr("What is drawn stays with the patient when the body changes"));
    m_stay->setToolTip(m_stay->accessibleName());
    fitWords();
}

void ToolBar::showState()
{
    const LectureState& state = m_presenter.state();
    for (std::size_t i = 0; i < m_tools.size(); ++i)
        m_tools[i]->setChecked(static_cast<std::size_t>(state.tool) == i);
    const bool draws = state.tool == LectureTool::Pen || state.tool == LectureTool::Eraser;
    m_spotlight->setVisible(state.tool == LectureTool::Point);
    m_spotlight->setChecked(state.spotlight);
    for (std::size_t i = 0; i < m_inks.size(); ++i) {
        m_inks[i]->setVisible(state.tool == LectureTool::Pen);
        m_inks[i]->setChecked(static_cast<std::size_t>(state.ink) == i);
    }
    m_dashed->setVisible(state.tool == LectureTool::Pen);
    m_dashed->setChecked(state.line == PenLine::Dashed);
    m_undo->setVisible(draws);
    m_wipe->setVisible(draws);
    m_undo->setEnabled(!state.strokes.isEmpty());
    m_wipe->setEnabled(!state.strokes.isEmpty());
    m_stay->setVisible(draws);
    m_stay->setChecked(state.strokesStay);
    if (m_shownTool != state.tool) {
        m_shownTool = state.tool;
        fitWords();
    }
}

void ToolBar::setScheme(const Scheme& scheme)
{
    const auto sign = [&](ToolSign which) { return toolIcon(which, scheme.ink, scheme.line); };
    for (std::size_t i = 0; i < m_tools.size(); ++i)
        m_tools[i]->setIcon(sign(tool_bar_detail::kToolSigns[i]));
    m_spotlight->setIcon(sign(ToolSign::Spotlight));
    m_inks[0]->setIcon(sign(ToolSign::PlainLine));
    m_inks[1]->setIcon(sign(ToolSign::EdgedLine));
    m_dashed->setIcon(sign(ToolSign::DashedLine));
    m_undo->setIcon(iconFor(Icon::Undo, scheme));
    m_wipe->setIcon(sign(ToolSign::Wipe));
    m_stay->setIcon(sign(ToolSign::Stay));
    fitWords();
}

QSize ToolBar::minimumSizeHint() const
{
    // Pictures alone must fit; words are shown where there is room for them.
    return {m_iconsWidth, m_tools[0]->sizeHint().height()};
}

int ToolBar::widthWith(Qt::ToolButtonStyle tools, Qt::ToolButtonStyle stay)
{
    for (QToolButton* tool : m_tools)
        tool->setToolButtonStyle(tools);
    m_spotlight->setToolButtonStyle(tools);
    m_stay->setToolButtonStyle(stay);
    int width = 0;
    for (const QToolButton* button : findChildren<QToolButton*>())
        width += button->isVisibleTo(this) ? button->sizeHint().width() + space::kTight : 0;
    return width;
}

void ToolBar::fitWords()
{
    if (!m_stay)
        return;
    constexpr int kIcon = 19;
    const int icon = parts::scaled(this, kIcon);
    for (QToolButton* button : findChildren<QToolButton*>())
        button->setIconSize({icon, icon});
    for (QToolButton* button : {m_inks[0], m_inks[1], m_dashed, m_undo, m_wipe})
        button->setToolButtonStyle(Qt::ToolButtonIconOnly);
    const int before = m_iconsWidth;
    m_iconsWidth = widthWith(Qt::ToolButtonIconOnly, Qt::ToolButtonIconOnly);
    if (m_iconsWidth != before)
        updateGeometry();
    constexpr auto kWords = Qt::ToolButtonTextBesideIcon;
    constexpr auto kPicture = Qt::ToolButtonIconOnly;
    if (widthWith(kWords, kWords) > width() && widthWith(kWords, kPicture) > width())
        widthWith(kPicture, kPicture);
}

void ToolBar::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fitWords();
}

void ToolBar::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
    else if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange)
        fitWords();
}

}  // namespace fb
