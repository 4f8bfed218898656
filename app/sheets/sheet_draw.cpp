#include "app/sheets/sheet_draw.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QLineEdit>
#include <QRadioButton>
#include <QSignalBlocker>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/sheets/sheet_fields.h"
#include "app/words/check_off_words.h"
#include "core/session/sheet_defaults.h"

namespace fb {

SheetDraw::SheetDraw(QWidget* parent)
    : SheetPart(parent),
      m_populationName(parts::text(this, "sheetPopulationName")),
      m_population(fields::choice(this, "sheetPopulation")),
      m_seedName(parts::text(this, "sheetSeedName")),
      m_seed(new QLineEdit(this)),
      m_itemTimeName(parts::text(this, "sheetItemTimeName")),
      m_itemTime(new fields::TimeField("sheetItemTime", kSheetMostSeconds, this)),
      m_screenTimeName(parts::text(this, "sheetScreenTimeName")),
      m_screenTime(new fields::TimeField("sheetScreenTime", kSheetMostSeconds, this)),
      m_manikinTimeName(parts::text(this, "sheetManikinTimeName")),
      m_manikinTime(new fields::TimeField("sheetManikinTime", kSheetMostSeconds, this)),
      m_heldName(parts::text(this, "sheetHeldName")),
      m_held(fields::number(this, "sheetHeld", 0.0, kSheetLongestHold))
{
    m_seed->setObjectName(QStringLiteral("sheetSeed"));
    for (int population = 0; population < kPopulationCount; ++population)
        m_population->addItem({}, population);
    for (std::size_t rule = 0; rule < m_rules.size(); ++rule) {
        m_rules[rule] = new QRadioButton(this);
        m_rules[rule]->setObjectName(QStringLiteral("sheetSeedRule%1").arg(rule));
        connect(m_rules[rule], &QRadioButton::toggled, this, [this](bool on) {
            showSeed();
            if (on)
                Q_EMIT changed();
        });
    }
    connect(m_population, &QComboBox::currentIndexChanged, this, &SheetPart::changed);
    connect(m_seed, &QLineEdit::textChanged, this, &SheetPart::changed);
    for (const fields::TimeField* time : {m_itemTime, m_screenTime, m_manikinTime})
        connect(time, &fields::TimeField::changed, this, &SheetPart::changed);
    connect(m_held, &QDoubleSpinBox::valueChanged, this, &SheetPart::changed);
    layOut();
    say();
}

void SheetDraw::layOut()
{
    fields::Lines lines(this);
    lines.add(m_populationName, m_population);
    for (QRadioButton* rule : m_rules)
        lines.across(rule);
    lines.add(m_seedName, m_seed);
    lines.rule();
    lines.add(m_itemTimeName, m_itemTime);
    lines.add(m_screenTimeName, m_screenTime);
    lines.add(m_manikinTimeName, m_manikinTime);
    lines.add(m_heldName, m_held);
    lines.end();
}

void SheetDraw::say()
{
    fields::say(m_populationName, m_population, tr("Patients"));
    for (int population = 0; population < kPopulationCount; ++population)
        m_population->setItemText(population,
                                  parts::alone(populationName(static_cast<Population>(population))));
    for (std::size_t rule = 0; rule < m_rules.size(); ++rule) {
        m_rules[rule]->setText(parts::alone(seedRuleName(static_cast<SeedRule>(rule))));
        m_rules[rule]->setAccessibleName(m_rules[rule]->text());
    }
    fields::say(m_seedName, m_seed, tr("Seed of these patients"));
    fields::say(m_itemTimeName, m_itemTime, tr("Time for each item"));
    fields::say(m_screenTimeName, m_screenTime, tr("Time on screen in all"));
    fields::say(m_manikinTimeName, m_manikinTime, tr("Time on the manikin"));
    //: How long the needle stays after injecting, with the Z-track.
    fields::say(m_heldName, m_held, tr("To be held after injecting"));
    //: After a number of seconds.
    m_held->setSuffix(tr(" s"));
}

void SheetDraw::fill(const Sheet& sheet)
{
    const QSignalBlocker quiet(this);
    fields::choose(m_population, static_cast<int>(sheet.population));
    m_rules[static_cast<std::size_t>(sheet.seedRule)]->setChecked(true);
    m_seed->setText(QString::number(sheet.seed));
    m_itemTime->setSeconds(sheet.secondsPerItem);
    m_screenTime->setSeconds(sheet.secondsOnScreen);
    m_manikinTime->setSeconds(sheet.secondsOnManikin);
    m_held->setValue(sheet.heldSeconds);
    showSeed();
}

Result<bool> SheetDraw::writeTo(Sheet& sheet) const
{
    sheet.population = static_cast<Population>(fields::chosen(m_population));
    const auto own = static_cast<std::size_t>(SeedRule::OwnForEach);
    sheet.seedRule = m_rules[own]->isChecked() ? SeedRule::OwnForEach : SeedRule::SameForAll;
    sheet.secondsPerItem = m_itemTime->seconds();
    sheet.secondsOnScreen = m_screenTime->seconds();
    sheet.secondsOnManikin = m_manikinTime->seconds();
    sheet.heldSeconds = m_held->value();
    const auto seed = seedFromText(m_seed->text().trimmed().toStdString());
    if (seed)
        sheet.seed = *seed;
    else if (sheet.seedRule == SeedRule::SameForAll)
        return tl::unexpected(seed.error());
    return true;
}

void SheetDraw::showSeed()
{
    const bool isOne = m_rules[static_cast<std::size_t>(SeedRule::SameForAll)]->isChecked();
    m_seedName->setEnabled(isOne);
    m_seed->setEnabled(isOne);
}

}  // namespace fb
