#include "app/demonstrate/site_row.h"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QToolButton>

#include "app/lecture/lecture_presenter.h"
#include "app/look/icons.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/site_words.h"

namespace fb {

namespace site_row_detail {

constexpr std::array kPeelNames{"lecturePeelSkin", "lecturePeelMuscle", "lecturePeelNerves",
                                "lecturePeelBone"};
constexpr std::array kPeelIcons{Icon::LayerSkin, Icon::LayerMuscle, Icon::LayerNerves, Icon::LayerBone};

}  // namespace site_row_detail

SiteRow::SiteRow(LecturePresenter& presenter, QWidget* parent)
    : QWidget(parent),
      m_presenter(presenter),
      m_site(new QComboBox(this)),
      m_side(new QComboBox(this))
{
    m_site->setObjectName(QStringLiteral("lectureSite"));
    m_side->setObjectName(QStringLiteral("lectureSide"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::kNear);
    for (QComboBox* box : {m_site, m_side}) {
        box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
        row->addWidget(box);
    }
    row->addStretch(1);
    for (std::size_t i = 0; i < kPeels.size(); ++i) {
        m_peels[i] = parts::toggle(this, site_row_detail::kPeelNames[i]);
        m_peels[i]->setToolButtonStyle(Qt::ToolButtonIconOnly);
        row->addWidget(m_peels[i]);
        connect(m_peels[i], &QToolButton::clicked, this, [this, peel = kPeels[i]](bool shown) {
            for (const Layer layer : layersOf(peel))
                m_presenter.setLayerShown(layer, shown);
        });
    }
    for (const Site site : kSites)
        m_site->addItem({}, static_cast<int>(site));
    for (const Side side : {Side::Right, Side::Left})
        m_side->addItem({}, static_cast<int>(side));
    connect(m_site, &QComboBox::activated, this,
            [this](int at) { m_presenter.openSite(static_cast<Site>(m_site->itemData(at).toInt())); });
    connect(m_side, &QComboBox::activated, this,
            [this](int at) { m_presenter.setSide(static_cast<Side>(m_side->itemData(at).toInt())); });
    say();
}

void SiteRow::say()
{
    for (int i = 0; i < m_site->count(); ++i)
        m_site->setItemText(i, parts::alone(siteName(static_cast<Site>(m_site->itemData(i).toInt()))));
    for (int i = 0; i < m_side->count(); ++i)
        m_side->setItemText(i, parts::alone(sideName(static_cast<Side>(m_side->itemData(i).toInt()))));
    m_site->setAccessibleName(tr("Site that is shown"));
    m_side->setAccessibleName(tr("Side of the patient"));
    m_site->setToolTip(m_site->accessibleName());
    m_side->setToolTip(m_side->accessibleName());
    //: Layers of the drawing that can be taken off.
    parts::say(m_peels[0], tr("Skin"));
    parts::say(m_peels[1], tr("Muscle"));
    parts::say(m_peels[2], tr("Nerves and vessels"));
    parts::say(m_peels[3], tr("Bone"));
}

void SiteRow::showState()
{
    const LectureState& state = m_presenter.state();
    m_site->setCurrentIndex(m_site->findData(static_cast<int>(siteOf(state.convention))));
    m_side->setCurrentIndex(m_side->findData(static_cast<int>(state.side)));
    for (std::size_t i = 0; i < kPeels.size(); ++i)
        m_peels[i]->setChecked(state.layers.contains(*layersOf(kPeels[i]).begin()));
}

void SiteRow::setScheme(const Scheme& scheme)
{
    for (std::size_t i = 0; i < kPeels.size(); ++i)
        m_peels[i]->setIcon(iconFor(site_row_detail::kPeelIcons[i], scheme));
    fitIcons();
}

void SiteRow::fitIcons()
{
    constexpr int kIcon = 18;
    const int icon = parts::scaled(this, kIcon);
    for (QToolButton* peel : m_peels)
        peel->setIconSize({icon, icon});
}

void SiteRow::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
    else if (event->type() == QEvent::FontChange)
        fitIcons();
}

}  // namespace fb
