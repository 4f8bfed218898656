#include "app/profile/profile_dialog.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QScreen>
#include <QScrollArea>
#include <QScrollBar>
#include <QShowEvent>
#include <algorithm>
#include <cmath>

#include "app/look/style.h"
#include "app/practice/hand_field.h"
#include "app/practice/parts.h"
#include "app/profile/measure_dialog.h"
#include "app/words/fault_words.h"
#include "core/hand/free_hand.h"

namespace fb {

ProfileDialog::ProfileDialog(Doors doors, QWidget* parent)
    : QDialog(parent),
      m_doors(std::move(doors)),
      m_title(parts::text(this, "profileTitle", "title")),
      m_hand(new HandField(this)),
      m_fingerName(parts::text(this, "profileFingerName")),
      m_finger(new QLineEdit(this)),
      m_fingerUnit(parts::text(this, "profileFingerUnit")),
      m_fingerHint(parts::text(this, "profileFingerHint", "small")),
      m_measure(parts::button(this, "measureHand")),
      m_writingName(parts::text(this, "profileWritingName")),
      m_writingHint(parts::text(this, "profileWritingHint", "small")),
      m_notice(parts::text(this, "profileNotice", "notice")),
      m_scroll(new QScrollArea(this)),
      m_cancel(parts::button(this, "cancelProfile")),
      m_unsavedButton(parts::button(this, "useUnsaved")),
      m_save(parts::mainButton(this, "saveProfile"))
{
    setObjectName(QStringLiteral("profileDialog"));
    m_finger->setObjectName(QStringLiteral("profileFinger"));
    for (const Side side : kSides) {
        QRadioButton*& button = m_writing[static_cast<std::size_t>(side)];
        button = new QRadioButton(this);
        button->setObjectName(side == Side::Left ? QStringLiteral("writesLeft")
                                                 : QStringLiteral("writesRight"));
    }
    m_unsavedButton->hide();
    m_save->setDefault(true);
    connect(m_hand, &HandField::estimateAsked, this, &ProfileDialog::estimate);
    connect(m_measure, &QPushButton::clicked, this, &ProfileDialog::measure);
    connect(m_cancel, &QPushButton::clicked, this, &QDialog::reject);
    connect(m_save, &QPushButton::clicked, this, &ProfileDialog::save);
    connect(m_unsavedButton, &QPushButton::clicked, this, &ProfileDialog::useUnsaved);
    layOut();
    fill();
    say();
    tell(m_doors.learner.trouble());
}

void ProfileDialog::layOut()
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kMargin, space::kMargin, space::kMargin, space::kMargin);
    column->setSpacing(space::kApart);
    column->addWidget(m_title);
    column->addWidget(parts::rule(this));
    m_scroll->setObjectName(QStringLiteral("profileScroll"));
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->setWidget(fields());
    parts::followFocus(m_scroll);
    column->addWidget(m_scroll, 1);
    column->addWidget(m_notice);
    column->addWidget(parts::rule(this));
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(space::kNear);
    buttons->addStretch(1);
    for (QPushButton* each : {m_cancel, m_unsavedButton, m_save})
        buttons->addWidget(each);
    column->addLayout(buttons);
}

QWidget* ProfileDialog::fields()
{
    constexpr int kDigits = 70;
    auto* whole = new QWidget;
    auto* column = new QVBoxLayout(whole);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kApart);
    column->addWidget(m_hand);
    auto* finger = new QVBoxLayout;
    finger->setSpacing(space::kTight);
    auto* typed = new QHBoxLayout;
    typed->setSpacing(space::kNear);
    m_finger->setFixedWidth(parts::scaled(this, kDigits));
    for (QWidget* part : std::initializer_list<QWidget*>{m_fingerName, m_finger, m_fingerUnit})
        typed->addWidget(part);
    typed->addStretch(1);
    finger->addLayout(typed);
    finger->addWidget(m_fingerHint);
    column->addLayout(finger);
    column->addWidget(m_measure, 0, Qt::AlignLeft);
    column->addWidget(parts::rule(whole));
    auto* writing = new QVBoxLayout;
    writing->setSpacing(space::kTight);
    auto* sides = new QHBoxLayout;
    sides->setSpacing(space::kApart);
    sides->addWidget(m_writingName);
    for (QRadioButton* button : m_writing)
        sides->addWidget(button);
    sides->addStretch(1);
    writing->addLayout(sides);
    writing->addWidget(m_writingHint);
    column->addLayout(writing);
    for (QLabel* name : {m_fingerName, m_fingerUnit, m_writingName})
        name->setWordWrap(false);
    return whole;
}

void ProfileDialog::showEvent(QShowEvent* event)
{
    // Only now every part has its letters and knows its size.
    fitFields();
    QDialog::showEvent(event);
}

// What is too high for the screen scrolls.
void ProfileDialog::fitFields()
{
    constexpr double kShare = 0.92;
    constexpr int kWidth = 560;
    const QWidget* fields = m_scroll->widget();
    const QSize most =
        (parentWidget() ? parentWidget()->window()->size() : screen()->availableSize()) * kShare;
    const int bar = m_scroll->verticalScrollBar()->sizeHint().width();
    m_scroll->setMinimumWidth(fields->minimumSizeHint().width() + bar);
    const int wide = std::min(
        most.width(), std::max(parts::scaled(this, kWidth), m_scroll->minimumWidth() + 2 * space::kMargin));
    const int inner = wide - 2 * space::kMargin;
    int high = fields->heightForWidth(inner - bar) + space::kTight;
    // Title, two rules, buttons and, where one is shown, the notice with the spaces between.
    high += m_title->sizeHint().height() + m_save->sizeHint().height() + 2 + 4 * space::kApart +
            2 * space::kMargin;
    if (!m_notice->isHidden())
        high += m_notice->heightForWidth(inner) + space::kApart;
    resize(wide, std::min(high, most.height()));
}

void ProfileDialog::fill()
{
    const Profile& profile = m_doors.learner.profile();
    m_hand->setUsual(m_doors.usualHand);
    m_finger->setPlaceholderText(parts::numberText(m_doors.usualFinger.value()));
    if (profile.handLength)
        m_hand->setLength(*profile.handLength);
    if (profile.sex && profile.stature)
        m_hand->setEstimate(*profile.sex, *profile.stature);
    if (profile.fingerWidth)
        m_finger->setText(parts::numberText(profile.fingerWidth->value()));
    m_writing[static_cast<std::size_t>(profile.handedness)]->setChecked(true);
}

void ProfileDialog::say()
{
    setWindowTitle(tr("Your hand"));
    m_title->setText(tr("Your hand"));
    //: Of the learner: the index finger.
    m_fingerName->setText(tr("Width of your finger"));
    m_finger->setAccessibleName(tr("Width of your index finger in centimetres"));
    m_fingerUnit->setText(tr("cm"));
    m_fingerHint->setText(tr("Across the middle joint of your index finger."));
    parts::say(m_measure, tr("Measure on the screen…"));
    m_writingName->setText(tr("Writing hand"));
    //: A hand.
    m_writing[0]->setText(tr("Left"));
    m_writing[1]->setText(tr("Right"));
    m_writing[0]->setAccessibleName(tr("You write with your left hand"));
    m_writing[1]->setAccessibleName(tr("You write with your right hand"));
    m_writingHint->setText(tr("On an arm the other hand finds the site, and this one holds the syringe. On a "
                              "hip, the hip decides which hand is laid."));
    parts::say(m_cancel, tr("Cancel"));
    //: The profile is used although it cannot be kept on disk.
    parts::say(m_unsavedButton, tr("Use it until you quit"));
    parts::say(m_save, tr("Save"));
    tell(m_fault);
}

void ProfileDialog::changeEvent(QEvent* event)
{
    QDialog::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
}

void ProfileDialog::estimate()
{
    const auto length =
        m_hand->stature().and_then([this](Cm stature) { return m_doors.estimate(m_hand->sex(), stature); });
    if (!length)
        return tell(length.error());
    constexpr double kTenths = 10.0;
    m_hand->setLength(Cm{std::round(length->value() * kTenths) / kTenths});
    tell(std::nullopt);
}

void ProfileDialog::measure()
{
    auto* dialog = new MeasureDialog(m_doors.learner, m_doors.scheme, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::accepted, this, [this, dialog] { takeMeasured(*dialog); });
    dialog->open();
}

void ProfileDialog::takeMeasured(const MeasureDialog& measured)
{
    if (const auto length = measured.handLength())
        m_hand->setLength(*length);
    if (const auto width = measured.fingerWidth())
        m_finger->setText(parts::numberText(width->value()));
    // What was wrong with the number that stood there is no longer so.
    if (measured.handLength() || measured.fingerWidth())
        tell(std::nullopt);
}

// The first fault from top to bottom. A blank field is a length that is not known.
Result<Profile> ProfileDialog::typed() const
{
    Profile profile;
    if (!m_hand->isBlank()) {
        const auto length = m_hand->length();
        if (!length)
            return tl::unexpected(length.error());
        profile.handLength = *length;
    }
    if (m_hand->hasStature()) {
        const auto stature = m_hand->stature();
        const auto hand = stature.and_then([this](Cm tall) { return m_doors.estimate(m_hand->sex(), tall); });
        if (!hand)
            return tl::unexpected(hand.error());
        profile.sex = m_hand->sex();
        profile.stature = *stature;
    }
    if (!m_finger->text().trimmed().isEmpty()) {
        const auto width = checkedFingerWidth(Cm{parts::numberIn(m_finger->text())});
        if (!width)
            return tl::unexpected(width.error());
        profile.fingerWidth = *width;
    }
    profile.handedness =
        m_writing[static_cast<std::size_t>(Side::Left)]->isChecked() ? Side::Left : Side::Right;
    return profile;
}

void ProfileDialog::save()
{
    if (m_isSaving)
        return;
    const auto profile = typed();
    if (!profile)
        return tell(profile.error());
    m_isSaving = true;
    m_doors.learner.save(*profile, this, [this](const Result<bool>& saved) { takeAnswer(saved); });
}

void ProfileDialog::takeAnswer(const Result<bool>& saved)
{
    m_isSaving = false;
    if (saved)
        return accept();
    m_unsavedButton->show();
    tell(saved.error());
}

void ProfileDialog::useUnsaved()
{
    const auto profile = typed();
    if (!profile)
        return tell(profile.error());
    m_doors.learner.useUnsaved(*profile);
    accept();
}

void ProfileDialog::tell(const std::optional<Fault>& fault)
{
    m_fault = fault;
    m_notice->setVisible(fault.has_value());
    m_notice->setText(fault ? sentenceOf(*fault) : QString());
    if (isVisible())
        fitFields();
}

}  // namespace fb
