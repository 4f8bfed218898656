#include "app/practice/plate_bar.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QToolButton>

#include "app/look/icons.h"
#include "app/look/style.h"
#include "app/practice/by_hand_bar.h"
#include "app/practice/parts.h"

namespace fb {

namespace plate_bar_detail {

constexpr double kZoomStep = 1.25;

Icon iconOfPeel(Peel peel)
{
    switch (peel) {
    case Peel::Skin: return Icon::LayerSkin;
    case Peel::Muscle: return Icon::LayerMuscle;
    case Peel::NervesAndVessels: return Icon::LayerNerves;
    case Peel::Bone: return Icon::LayerBone;
    }
    return Icon::LayerSkin;
}

}  // namespace plate_bar_detail

PlateBar::PlateBar(QWidget* parent)
    : QWidget(parent),
      m_hand(new ByHandBar(this)),
      m_companion(parts::toggle(this, "companion"))
{
    static constexpr std::array kPeelNames{"peelSkin", "peelMuscle", "peelNerves", "peelBone"};
    static constexpr std::array kZoomNames{"zoomOut", "zoomIn", "zoomWhole"};
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSizeConstraint(QLayout::SetNoConstraint);
    row->setSpacing(space::kTight);
    row->addWidget(m_hand);
    for (std::size_t i = 0; i < kPeels.size(); ++i) {
        m_peels[i] = parts::toggle(this, kPeelNames[i]);
        row->addWidget(m_peels[i]);
        connect(m_peels[i], &QToolButton::clicked, this,
                [this, peel = kPeels[i]](bool shown) { Q_EMIT peelToggled(peel, shown); });
    }
    row->addStretch(1);
    for (std::size_t i = 0; i < m_zooms.size(); ++i) {
        m_zooms[i] = parts::toggle(this, kZoomNames[i]);
        m_zooms[i]->setCheckable(false);
        m_zooms[i]->setProperty("look", QLatin1String("quiet"));
        m_zooms[i]->setToolButtonStyle(Qt::ToolButtonIconOnly);
        row->addWidget(m_zooms[i]);
    }
    row->addSpacing(space::kNear);
    row->addWidget(m_companion);
    using plate_bar_detail::kZoomStep;
    connect(m_zooms[ZoomOutButton], &QToolButton::clicked, this,
            [this] { Q_EMIT zoomAsked(1.0 / kZoomStep); });
    connect(m_zooms[ZoomInButton], &QToolButton::clicked, this, [this] { Q_EMIT zoomAsked(kZoomStep); });
    connect(m_zooms[ZoomWholeButton], &QToolButton::clicked, this, &PlateBar::wholeAsked);
    connect(m_companion, &QToolButton::clicked, this, &PlateBar::companionToggled);
    say();
}

void PlateBar::say()
{
    //: Layers of the drawing that can be taken off.
    parts::say(m_peels[0], tr("Skin"));
    parts::say(m_peels[1], tr("Muscle"));
    parts::say(m_peels[2], tr("Nerves and vessels"));
    parts::say(m_peels[3], tr("Bone"));
    parts::say(m_zooms[ZoomOutButton], tr("Smaller"));
    parts::say(m_zooms[ZoomInButton], tr("Larger"));
    parts::say(m_zooms[ZoomWholeButton], tr("Whole plate"));
    //: The same shoulder seen from another angle, beside the plate.
    parts::say(m_companion, tr("Other view"));
    fitWords();
}

void PlateBar::showState(const PracticeState& state)
{
    for (std::size_t i = 0; i < kPeels.size(); ++i) {
        m_peels[i]->setChecked(state.layers.contains(*layersOf(kPeels[i]).begin()));
        m_peels[i]->setEnabled(state.canPeel);
        // While a site is found by hand nothing can be taken off, and the room is needed; an exam that grants
        // no help has nothing to offer either.
        const bool never = state.byHand || (state.exam && state.setup.help != HelpLevel::DrawnAndNamed);
        m_peels[i]->setVisible(!never);
    }
    m_hand->showState(state);
    m_companion->setChecked(state.companionShown);
    fitWords();
}

void PlateBar::setScheme(const Scheme& scheme)
{
    for (std::size_t i = 0; i < kPeels.size(); ++i)
        m_peels[i]->setIcon(iconFor(plate_bar_detail::iconOfPeel(kPeels[i]), scheme));
    m_hand->setScheme(scheme);
    m_zooms[ZoomOutButton]->setIcon(iconFor(Icon::ZoomOut, scheme));
    m_zooms[ZoomInButton]->setIcon(iconFor(Icon::ZoomIn, scheme));
    m_zooms[ZoomWholeButton]->setIcon(iconFor(Icon::ZoomWhole, scheme));
    fitWords();
}

QSize PlateBar::minimumSizeHint() const
{
    // Icons alone must fit; words are shown where there is room for them.
    return {m_iconsWidth, m_companion->sizeHint().height()};
}

int PlateBar::widthWith(Qt::ToolButtonStyle style)
{
    for (QToolButton* peel : m_peels)
        peel->setToolButtonStyle(style);
    for (QToolButton* button : m_hand->findChildren<QToolButton*>())
        button->setToolButtonStyle(style);
    const QMargins margins = contentsMargins();
    int width = margins.left() + margins.right() + space::kNear;
    for (const QToolButton* button : findChildren<QToolButton*>())
        width += button->isVisibleTo(this) ? button->sizeHint().width() + space::kTight : 0;
    return width;
}

void PlateBar::fitWords()
{
    constexpr int kIcon = 18;
    const int icon = parts::scaled(this, kIcon);
    for (QToolButton* button : findChildren<QToolButton*>())
        button->setIconSize({icon, icon});
    const int before = m_iconsWidth;
    m_iconsWidth = widthWith(Qt::ToolButtonIconOnly);
    if (widthWith(Qt::ToolButtonTextBesideIcon) > width())
        widthWith(Qt::ToolButtonIconOnly);
    if (m_iconsWidth != before)
        updateGeometry();
}

void PlateBar::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fitWords();
}

void PlateBar::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
    else if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange)
        fitWords();
}

}  // namespace fb
