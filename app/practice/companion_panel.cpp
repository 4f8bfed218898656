#include "app/practice/companion_panel.h"

#include <QEvent>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>

#include "app/look/style.h"
#include "app/look/type.h"
#include "app/practice/parts.h"
#include "app/words/why_words.h"

namespace fb {

namespace companion_panel_detail {

constexpr int kRing = 6;  // px between a plate's widget and its paper

}  // namespace companion_panel_detail

CompanionPanel::CompanionPanel(QWidget* parent)
    : QWidget(parent),
      m_parts(new QBoxLayout(QBoxLayout::TopToBottom, this)),
      m_plate(new PlateView(this)),
      m_title(parts::text(this, "whyNotTitle")),
      m_scroll(new QScrollArea(this)),
      m_words(parts::text(nullptr, "whyNot", "small"))
{
    m_plate->setObjectName(QStringLiteral("companionPlate"));
    m_plate->setMarkable(false);
    m_title->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    m_words->setAlignment(Qt::AlignTop | Qt::AlignLeading);
    m_scroll->setObjectName(QStringLiteral("whyNotScroll"));
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setWidget(m_words);
    m_parts->setContentsMargins(0, 0, 0, 0);
    m_parts->setSpacing(space::kTight);
    m_parts->addWidget(m_plate, 1);
    // The plate keeps room for its focus ring; its words keep in line with the paper.
    using companion_panel_detail::kRing;
    auto* words = new QVBoxLayout;
    words->setContentsMargins(kRing, 0, kRing, kRing);
    words->setSpacing(space::kTight);
    words->addWidget(m_title);
    words->addWidget(m_scroll);
    words->addStretch();
    m_parts->addLayout(words);
    say();
}

void CompanionPanel::say() { m_plate->setAccessibleName(tr("Other view, to look at only")); }

void CompanionPanel::showState(const PracticeState& state)
{
    if (state.companion)
        m_plate->setPicture(state.companion);
    m_plate->setScene(state.companionScene);
    m_plate->setLayers(state.layers);
    if (!state.request)
        return;
    const View view = companionOf(state.request->view);
    m_title->setText(whyNotTitle(view));
    m_words->setText(whyNotText(view));
    m_scroll->setAccessibleName(m_title->text());
    // Before the grade it would tell where not to look.
    const bool tells = state.graded && !m_words->text().isEmpty();
    m_title->setVisible(tells);
    m_scroll->setVisible(tells);
    fitWords();
}

void CompanionPanel::setScheme(const Scheme& scheme) { m_plate->setScheme(scheme); }

void CompanionPanel::setBeside(bool beside)
{
    m_parts->setDirection(beside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    fitWords();
    fitLetters();
}

void CompanionPanel::fitWords()
{
    constexpr double kMost = 0.42;        // of the height, under the picture
    constexpr double kWordsShare = 0.38;  // of the width, beside it
    const bool beside = m_parts->direction() == QBoxLayout::LeftToRight;
    const int ring = 2 * companion_panel_detail::kRing;
    const int wide = (beside ? static_cast<int>(kWordsShare * width()) : width()) - ring;
    const int title = m_title->heightForWidth(std::max(wide, 1)) + space::kTight;
    const int most = beside ? height() - title - ring : static_cast<int>(kMost * height());
    const int needed = m_words->text().isEmpty() ? 0 : m_words->heightForWidth(std::max(wide, 1));
    const bool scrolls = needed > most;
    // Only what scrolls has to be reached by key.
    m_scroll->setFocusPolicy(scrolls ? Qt::StrongFocus : Qt::NoFocus);
    m_scroll->setFixedHeight(scrolls ? std::max(most, 1) : needed);
    for (QWidget* part : std::initializer_list<QWidget*>{m_title, m_scroll}) {
        part->setMinimumWidth(beside ? std::max(wide, 1) : 0);
        part->setMaximumWidth(beside ? std::max(wide, 1) : QWIDGETSIZE_MAX);
    }
}

// Names on a small picture would lie over each other: there they are no larger than the picture has room for.
// The words beside it keep their size, and the picture can be zoomed.
void CompanionPanel::fitLetters()
{
    constexpr double kRoomy = 310.0;  // px at which names of 100 percent find their places
    constexpr double kPictureShare = 0.62;
    const bool beside = m_parts->direction() == QBoxLayout::LeftToRight;
    const double breadth = beside ? kPictureShare * width() : width();
    const double scale = textScaleOf(font());
    const QFont letters = fontOf(Type::Body, std::clamp(breadth / kRoomy, 1.0, scale));
    if (m_plate->font().pixelSize() != letters.pixelSize())
        m_plate->setFont(letters);
}

void CompanionPanel::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fitWords();
    fitLetters();
}

void CompanionPanel::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
    else if (event->type() == QEvent::FontChange) {
        fitWords();
        fitLetters();
    }
}

}  // namespace fb
