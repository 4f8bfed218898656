#include "app/checkoff/saved_panel.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <algorithm>

#include "app/look/icons.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/check_off_words.h"

namespace fb {

namespace saved_panel_detail {

constexpr int kIcon = 24;

QString namesOf(const std::vector<Assessor>& assessors)
{
    QStringList names;
    for (const Assessor& assessor : assessors)
        names << assessor.name;
    return QLocale().createSeparatedList(names);
}

}  // namespace saved_panel_detail

SavedPanel::SavedPanel(QWidget* parent)
    : QWidget(parent),
      m_icon(new QLabel(this)),
      m_title(parts::text(this, "savedTitle", "title")),
      m_who(parts::text(this, "savedWho")),
      m_chain(parts::text(this, "savedChain", "small")),
      m_told(parts::text(this, "savedTold")),
      m_next(parts::mainButton(this, "nextStudent")),
      m_print(parts::button(this, "printSheet")),
      m_pdf(parts::button(this, "savePdf")),
      m_desk(parts::button(this, "backToDesk"))
{
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(space::kNear);
    auto* line = new QHBoxLayout;
    line->setSpacing(space::kNear);
    m_icon->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
    line->addWidget(m_icon);
    line->addWidget(m_title, 1);
    rows->addLayout(line);
    rows->addWidget(m_who);
    rows->addWidget(m_chain);
    rows->addSpacing(space::kNear);
    rows->addWidget(m_next);
    m_sheet = new QBoxLayout(QBoxLayout::LeftToRight);
    m_sheet->setSpacing(space::kNear);
    m_sheet->addWidget(m_print, 1);
    m_sheet->addWidget(m_pdf, 1);
    rows->addLayout(m_sheet);
    // However long a name or a word: what is beside the panel must not be pushed aside.
    for (QPushButton* button : {m_next, m_print, m_pdf})
        button->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    rows->addWidget(m_desk);
    rows->addWidget(m_told);
    rows->addStretch(1);
    connect(m_next, &QPushButton::clicked, this, &SavedPanel::nextPressed);
    connect(m_print, &QPushButton::clicked, this, &SavedPanel::printPressed);
    connect(m_pdf, &QPushButton::clicked, this, &SavedPanel::pdfPressed);
    connect(m_desk, &QPushButton::clicked, this, &SavedPanel::deskPressed);
    m_chain->setTextInteractionFlags(Qt::TextSelectableByMouse);
    say();
    tell({});
}

void SavedPanel::say()
{
    m_title->setText(tr("Signed and saved"));
    m_nextWords = tr("Next student");
    parts::say(m_print, tr("Print…"));
    parts::say(m_pdf, tr("Save as PDF…"));
    parts::say(m_desk, tr("Back to the desk"));
    fit();
}

void SavedPanel::showState(const CheckOffState& state)
{
    if (!state.signedOff)
        return;
    const SignedOff& done = *state.signedOff;
    //: %1 names who signed, %2 is date and time.
    m_who->setText(tr("By %1, %2.").arg(saved_panel_detail::namesOf(done.assessors), whenText(done.at)));
    //: %1 is the beginning of a check number that stands on the printed sheet too.
    m_chain->setText(tr("Log: %1").arg(done.chainHead.left(kShownChainDigits)));
    m_next->setVisible(state.next.has_value());
    if (state.next)
        //: Begins the check-off of whoever is due; %1 is the name.
        m_nextWords = tr("Next student: %1").arg(fullName(state.next->given, state.next->family));
    fit();
}

void SavedPanel::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fit();
}

// Side by side where both have room; a name that is too long is cut in sight and whole for a screen reader.
void SavedPanel::fit()
{
    const bool isWide =
        2 * std::max(m_print->sizeHint().width(), m_pdf->sizeHint().width()) + space::kNear <= width();
    m_sheet->setDirection(isWide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    m_next->ensurePolished();
    const int frame = m_next->sizeHint().width() - m_next->fontMetrics().horizontalAdvance(m_next->text());
    const QString cut = m_next->fontMetrics().elidedText(m_nextWords, Qt::ElideRight, width() - frame);
    parts::say(m_next, cut);
    m_next->setAccessibleName(m_nextWords);
    m_next->setToolTip(cut == m_nextWords ? QString() : m_nextWords);
}

void SavedPanel::tell(const QString& words)
{
    m_told->setText(words);
    m_told->setVisible(!words.isEmpty());
}

// A button that is disabled loses the keys to its neighbour; once it is free they go to what comes next.
void SavedPanel::setBusy(bool busy)
{
    const bool hadKeys = isAncestorOf(QApplication::focusWidget());
    m_print->setEnabled(!busy);
    m_pdf->setEnabled(!busy);
    if (!busy && hadKeys)
        focusFirst();
}

void SavedPanel::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    m_icon->setPixmap(pixmapFor(Icon::Done, scheme.good, parts::scaled(this, saved_panel_detail::kIcon),
                                devicePixelRatioF()));
}

void SavedPanel::focusFirst() { (m_next->isHidden() ? m_desk : m_next)->setFocus(); }

}  // namespace fb
