#include "app/profile/measure_dialog.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QRadioButton>
#include <QScreen>
#include <QShowEvent>
#include <QVBoxLayout>
#include <QWindow>
#include <algorithm>
#include <cmath>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/fault_words.h"
#include "core/hand/free_hand.h"
#include "core/hand/hand_pose.h"

namespace fb {

namespace measure_dialog_detail {

constexpr int kSteps = 3;

Cm rounded(Cm length, double parts) { return Cm{std::round(length.value() * parts) / parts}; }

}  // namespace measure_dialog_detail

using namespace measure_dialog_detail;

MeasureDialog::MeasureDialog(Learner& learner, const Scheme& scheme, QWidget* parent)
    : QDialog(parent),
      m_learner(learner),
      m_title(parts::text(this, "measureTitle", "title")),
      m_place(parts::text(this, "measurePlace", "small")),
      m_words(parts::text(this, "measureWords")),
      m_board(new MeasureBoard(this)),
      m_notice(parts::text(this, "measureNotice", "notice")),
      m_back(parts::button(this, "measureBack")),
      m_cancel(parts::button(this, "measureCancel")),
      m_skip(parts::button(this, "measureSkip")),
      m_take(parts::mainButton(this, "measureTake"))
{
    setObjectName(QStringLiteral("measureDialog"));
    for (std::size_t i = 0; i < m_by.size(); ++i) {
        m_by[i] = new QRadioButton(this);
        m_by[i]->setObjectName(i == 0 ? QStringLiteral("byCard") : QStringLiteral("byRuler"));
        connect(m_by[i], &QRadioButton::toggled, this, [this](bool isChosen) {
            if (!isChosen)
                return;
            m_isScaleWrong = false;
            m_notice->hide();
            lay();
            say();
        });
    }
    m_board->setScheme(scheme);
    m_notice->hide();
    m_take->setDefault(true);
    connect(m_take, &QPushButton::clicked, this, &MeasureDialog::take);
    connect(m_skip, &QPushButton::clicked, this, &MeasureDialog::leaveOut);
    connect(m_back, &QPushButton::clicked, this, &MeasureDialog::back);
    connect(m_cancel, &QPushButton::clicked, this, &QDialog::reject);
    layOut();
    m_by[0]->setChecked(true);
    beginOnScreen();
}

void MeasureDialog::layOut()
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kMargin, space::kApart, space::kMargin, space::kApart);
    column->setSpacing(space::kNear);
    auto* head = new QHBoxLayout;
    head->addWidget(m_title);
    head->addStretch(1);
    head->addWidget(m_place);
    m_title->setWordWrap(false);
    m_place->setWordWrap(false);
    column->addLayout(head);
    column->addWidget(m_words);
    auto* by = new QHBoxLayout;
    by->setSpacing(space::kApart);
    for (QRadioButton* each : m_by)
        by->addWidget(each);
    by->addStretch(1);
    column->addLayout(by);
    column->addWidget(m_board, 1);
    column->addWidget(m_notice);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(space::kNear);
    buttons->addWidget(m_back);
    buttons->addStretch(1);
    for (QPushButton* each : {m_cancel, m_skip, m_take})
        buttons->addWidget(each);
    column->addLayout(buttons);
}

void MeasureDialog::showEvent(QShowEvent* event)
{
    QDialog::showEvent(event);
    if (event->spontaneous())
        return;
    // Wide enough for the longest hand, where the screen is.
    constexpr double kShare = 0.94;
    constexpr double kWidestMm = 300.0;
    constexpr double kHighestMm = 190.0;
    constexpr QSize kLeast{900, 640};
    const double mm = (m_scale ? *m_scale : guessedScale(*screen())).value() / devicePixelRatioF();
    const QSize most = screen()->availableSize() * kShare;
    const QSize wanted(std::max(parts::scaled(this, kLeast.width()), qRound(kWidestMm * mm)),
                       std::max(parts::scaled(this, kLeast.height()), qRound(kHighestMm * mm)));
    resize(wanted.boundedTo(most));
    // Another screen is as fine as it is.
    if (windowHandle())
        connect(windowHandle(), &QWindow::screenChanged, this, &MeasureDialog::beginOnScreen);
    m_board->setFocus();
    lay();
}

void MeasureDialog::beginOnScreen()
{
    m_screen = screenKey(*screen());
    m_scale = m_learner.scaleOf(m_screen);
    goTo(m_scale ? Step::Hand : Step::Scale);
}

void MeasureDialog::goTo(Step step)
{
    m_step = step;
    m_fault.reset();
    m_isScaleWrong = false;
    m_notice->hide();
    for (QRadioButton* each : m_by)
        each->setVisible(step == Step::Scale);
    m_back->setVisible(step != Step::Scale);
    m_skip->setVisible(step != Step::Scale);
    lay();
    say();
    m_board->setFocus();
}

void MeasureDialog::lay()
{
    const PixelsPerMm scale = m_scale ? *m_scale : guessedScale(*screen());
    switch (m_step) {
    case Step::Scale: return m_board->lay(m_by[1]->isChecked() ? Laid::Ruler : Laid::Card, scale);
    case Step::Hand: return m_board->lay(Laid::Hand, scale);
    case Step::Finger: return m_board->lay(Laid::Finger, scale);
    }
}

void MeasureDialog::take()
{
    constexpr double kTenths = 10.0;
    constexpr double kHundredths = 100.0;
    if (m_step == Step::Scale) {
        const Mm known = m_board->laid() == Laid::Card ? kCardWidth : kRulerLength;
        const auto scale = scaleFrom(m_board->value(), known);
        m_isScaleWrong = !scale;
        if (!scale)
            return tell(impossibleScale());
        m_scale = scale;
        m_learner.useScale(m_screen, *scale);
        return goOn();
    }
    const auto length = m_step == Step::Hand ? checkedHandLength(rounded(m_board->length(), kTenths))
                                             : checkedFingerWidth(rounded(m_board->length(), kHundredths));
    if (!length) {
        m_fault = length.error();
        return tell(sentenceOf(*m_fault));
    }
    (m_step == Step::Hand ? m_hand : m_finger) = *length;
    goOn();
}

void MeasureDialog::leaveOut()
{
    (m_step == Step::Hand ? m_hand : m_finger).reset();
    goOn();
}

void MeasureDialog::goOn()
{
    if (m_step == Step::Finger)
        accept();
    else
        goTo(m_step == Step::Scale ? Step::Hand : Step::Finger);
}

void MeasureDialog::back() { goTo(m_step == Step::Finger ? Step::Hand : Step::Scale); }

void MeasureDialog::tell(const QString& sentence)
{
    m_notice->setText(sentence);
    m_notice->show();
}

QString MeasureDialog::impossibleScale() const
{
    return m_board->laid() == Laid::Card
               ? tr("No screen draws a card that small or that large; make the outline as large as the card "
                    "that lies on it.")
               : tr("No screen draws 100 mm that short or that long; make the line as long as 100 mm of the "
                    "ruler that lies on it.");
}

QString MeasureDialog::instruction() const
{
    switch (m_step) {
    case Step::Scale:
        return m_by[1]->isChecked()
                   ? tr("Lay a ruler flat against the glass, along the line. Drag an end, or press + and −, "
                        "until the line is exactly 100 mm long.")
                   : tr("Lay a bank card flat against the glass, on the outline. Drag a corner, or press + "
                        "and "
                        "−, until the outline is exactly as large.");
    case Step::Hand:
        return tr(
            "Lay your hand flat against the glass, fingers closed. Move the lines until one touches the "
            "crease of your wrist and the other the tip of your middle finger.");
    case Step::Finger:
        return tr(
            "Lay your index finger against the glass, tip up. Move the lines until they touch both sides "
            "of its middle joint.");
    }
    return {};
}

void MeasureDialog::say()
{
    setWindowTitle(tr("Measure on the screen"));
    const int place = static_cast<int>(m_step);
    //: Titles of the three steps.
    const std::array titles{tr("How fine is this screen?"), tr("Your hand"), tr("Your finger")};
    const std::array takes{tr("It fits exactly"), tr("Take this length"), tr("Take this width")};
    m_title->setText(titles[static_cast<std::size_t>(place)]);
    //: Of a short sequence.
    m_place->setText(tr("Step %1 of %2").arg(QLocale().toString(place + 1), QLocale().toString(kSteps)));
    m_words->setText(instruction());
    m_by[0]->setText(tr("Bank card"));
    m_by[1]->setText(tr("Ruler"));
    for (QRadioButton* each : m_by)
        each->setAccessibleName(each->text());
    parts::say(m_take, takes[static_cast<std::size_t>(place)]);
    parts::say(m_back, tr("Back"));
    parts::say(m_cancel, tr("Cancel"));
    //: Goes on without measuring this.
    parts::say(m_skip, tr("Skip"));
    if (m_fault)
        m_notice->setText(sentenceOf(*m_fault));
    else if (m_isScaleWrong)
        m_notice->setText(impossibleScale());
}

void MeasureDialog::changeEvent(QEvent* event)
{
    QDialog::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
}

}  // namespace fb
