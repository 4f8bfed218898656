#include "app/demonstrate/body_panel.h"

#include <QComboBox>
#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

#include "app/demonstrate/value_row.h"
#include "app/lecture/lecture_presenter.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/lecture_words.h"
#include "app/words/site_words.h"

namespace fb {

namespace body_panel_detail {

constexpr std::array kSexNames{"bodyFemale", "bodyMale"};
constexpr std::array kBuildNames{"bodyLean", "bodyAverage", "bodyHeavy"};

QComboBox* choice(QWidget* parent, const char* name)
{
    auto* box = new QComboBox(parent);
    box->setObjectName(QLatin1String(name));
    // Its longest entry decides; shorter ones change nothing in the column.
    box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    return box;
}

void choose(QComboBox& box, int value) { box.setCurrentIndex(box.findData(value)); }

}  // namespace body_panel_detail

BodyPanel::BodyPanel(LecturePresenter& presenter, QWidget* parent)
    : QWidget(parent),
      m_presenter(presenter),
      m_age(new ValueRow(QStringLiteral("bodyAge"), 0, this)),
      m_stature(new ValueRow(QStringLiteral("bodyStature"), 0, this)),
      m_weight(new ValueRow(QStringLiteral("bodyWeight"), 0, this)),
      m_index(parts::text(this, "bodyMassIndex", "small")),
      m_convention(body_panel_detail::choice(this, "lectureConvention")),
      m_view(body_panel_detail::choice(this, "lectureView")),
      m_tone(body_panel_detail::choice(this, "lectureTone"))
{
    using namespace body_panel_detail;
    for (std::size_t i = 0; i < m_sexes.size(); ++i) {
        m_sexes[i] = parts::toggle(this, kSexNames[i]);
        m_sexes[i]->setToolButtonStyle(Qt::ToolButtonTextOnly);
    }
    for (std::size_t i = 0; i < m_builds.size(); ++i)
        m_builds[i] = parts::button(this, kBuildNames[i]);
    for (QLabel*& name : m_names)
        name = parts::text(this, "", "small");
    m_age->setRange(ageRange());
    m_stature->setRange(statureRange());
    layOut();
    connectAll();
    say();
}

void BodyPanel::layOut()
{
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(space::kNear);
    auto* sexes = new QHBoxLayout;
    sexes->setSpacing(space::kTight);
    for (QToolButton* sex : m_sexes) {
        sex->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
        sexes->addWidget(sex, 1);
    }
    rows->addLayout(sexes);
    for (ValueRow* value : {m_age, m_stature, m_weight})
        rows->addWidget(value);
    auto* builds = new QHBoxLayout;
    builds->setSpacing(space::kTight);
    for (QPushButton* build : m_builds)
        builds->addWidget(build, 1);
    rows->addWidget(m_index);
    rows->addLayout(builds);
    rows->addSpacing(space::kTight);
    rows->addWidget(parts::rule(this));
    auto* choices = new QVBoxLayout;
    choices->setSpacing(space::kTight / 2);
    const std::array<QComboBox*, 3> boxes{m_convention, m_view, m_tone};
    for (std::size_t i = 0; i < boxes.size(); ++i) {
        choices->addWidget(m_names[i]);
        choices->addWidget(boxes[i]);
    }
    rows->addLayout(choices);
    rows->addStretch(1);
}

void BodyPanel::connectAll()
{
    const auto follow = [this](ValueRow* row, double BodyValues::*which) {
        connect(row, &ValueRow::moved, this, [this, which](double value) { change(which, value); });
        connect(row, &ValueRow::rests, &m_presenter, &LecturePresenter::letGo);
    };
    follow(m_age, &BodyValues::ageYears);
    follow(m_stature, &BodyValues::statureCm);
    follow(m_weight, &BodyValues::weightKg);
    for (std::size_t i = 0; i < m_sexes.size(); ++i)
        connect(m_sexes[i], &QToolButton::clicked, this, [this, i] {
            BodyValues values = m_presenter.state().body;
            values.sex = kSexes[i];
            m_presenter.glideTo(values);
            showBody();
        });
    for (std::size_t i = 0; i < m_builds.size(); ++i)
        connect(m_builds[i], &QPushButton::clicked, this,
                [this, i] { m_presenter.setStoutness(kStoutnesses[i]); });
    const auto chosen = [](const QComboBox* box) { return box->currentData().toInt(); };
    connect(m_convention, &QComboBox::activated, this,
            [this, chosen] { m_presenter.setConvention(static_cast<Convention>(chosen(m_convention))); });
    connect(m_view, &QComboBox::activated, this,
            [this, chosen] { m_presenter.setView(static_cast<View>(chosen(m_view))); });
    connect(m_tone, &QComboBox::activated, this, [this, chosen] { m_presenter.setSkinTone(chosen(m_tone)); });
}

void BodyPanel::change(double BodyValues::*which, double value)
{
    BodyValues values = m_presenter.state().body;
    values.*which = value;
    m_presenter.setBody(held(values));
}

void BodyPanel::say()
{
    //: The age of a patient.
    m_age->say(tr("Age"), tr("%1 years"));
    m_stature->say(tr("Stature"), tr("%1 cm"));
    m_weight->say(tr("Weight"), tr("%1 kg"));
    for (std::size_t i = 0; i < m_sexes.size(); ++i)
        parts::say(m_sexes[i], parts::alone(sexName(kSexes[i])));
    for (std::size_t i = 0; i < m_builds.size(); ++i) {
        parts::say(m_builds[i], stoutnessName(kStoutnesses[i]));
        //: %1 is a build: lean, average, heavy.
        m_builds[i]->setToolTip(tr("Glide to this build: %1").arg(stoutnessName(kStoutnesses[i])));
    }
    //: Which published way the site is found by.
    m_names[0]->setText(tr("Convention"));
    m_names[1]->setText(tr("View"));
    m_names[2]->setText(tr("Skin tone"));
    m_convention->setAccessibleName(m_names[0]->text());
    m_view->setAccessibleName(m_names[1]->text());
    m_tone->setAccessibleName(m_names[2]->text());
    m_filled.reset();
    m_tone->clear();
    for (int tone = 0; tone < kSkinRampCount; ++tone) {
        const QString number = QLocale().toString(tone + 1);
        m_tone->addItem(tone == 0                    ? tr("%1, lightest").arg(number)
                        : tone == kSkinRampCount - 1 ? tr("%1, darkest").arg(number)
                                                     : number,
                        tone);
    }
}

void BodyPanel::fillChoices()
{
    const Site site = siteOf(m_presenter.state().convention);
    if (m_filled == site)
        return;
    m_filled = site;
    m_convention->clear();
    for (const Convention convention : conventionsOf(site))
        m_convention->addItem(conventionName(convention), static_cast<int>(convention));
    m_view->clear();
    for (const View view : kViews)
        if (siteOf(view) == site)
            m_view->addItem(viewName(view), static_cast<int>(view));
}

void BodyPanel::showState()
{
    using body_panel_detail::choose;
    const LectureState& state = m_presenter.state();
    fillChoices();
    choose(*m_convention, static_cast<int>(state.convention));
    choose(*m_view, static_cast<int>(state.view));
    choose(*m_tone, state.skinTone);
    showBody();
}

void BodyPanel::showBody()
{
    const BodyValues& body = m_presenter.state().body;
    m_age->setValue(body.ageYears);
    m_stature->setValue(body.statureCm);
    m_weight->setRange(weightRange(body.statureCm));
    m_weight->setValue(body.weightKg);
    for (std::size_t i = 0; i < m_sexes.size(); ++i)
        m_sexes[i]->setChecked(body.sex == kSexes[i]);
    m_index->setText(bodyMassIndexText(patientOf(body, m_presenter.state().side).bodyMassIndex()));
}

void BodyPanel::setScheme(const Scheme& scheme)
{
    for (ValueRow* value : {m_age, m_stature, m_weight})
        value->setScheme(scheme);
}

void BodyPanel::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) {
        say();
        showState();
    }
}

}  // namespace fb
