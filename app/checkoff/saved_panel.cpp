#include "app/checkoff/saved_panel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>

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
    auto* sheet = new QHBoxLayout;
    sheet->setSpacing(space::kNear);
    sheet->addWidget(m_print, 1);
    sheet->addWidget(m_pdf, 1);
    rows->addLayout(sheet);
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
    parts::say(m_next, tr("Next student"));
    parts::say(m_print, tr("Print…"));
    parts::say(m_pdf, tr("Save as PDF…"));
    parts::say(m_desk, tr("Back to the desk"));
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
        parts::say(m_next, tr("Next student: %1").arg(fullName(state.next->given, state.next->family)));
}

void SavedPanel::tell(const QString& words)
{
    m_told->setText(words);
    m_told->setVisible(!words.isEmpty());
}

void SavedPanel::setBusy(bool busy)
{
    m_print->setEnabled(!busy);
    m_pdf->setEnabled(!busy);
}

void SavedPanel::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    m_icon->setPixmap(pixmapFor(Icon::Done, scheme.good, parts::scaled(this, saved_panel_detail::kIcon),
                                devicePixelRatioF()));
}

void SavedPanel::focusFirst() { (m_next->isHidden() ? m_desk : m_next)->setFocus(); }

}  // namespace fb
