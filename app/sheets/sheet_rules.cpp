#include "app/sheets/sheet_rules.h"

#include <QCheckBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QSignalBlocker>
#include <QSpinBox>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/sheets/sheet_fields.h"
#include "core/session/sheet_defaults.h"

namespace fb {

namespace sheet_rules_detail {

constexpr double kPercent = 100.0;

}  // namespace sheet_rules_detail

SheetRules::SheetRules(QWidget* parent)
    : SheetPart(parent),
      m_cutName(parts::text(this, "sheetCutName")),
      m_cut(fields::number(this, "sheetCut", 0.0, sheet_rules_detail::kPercent)),
      m_promptedName(parts::text(this, "sheetPromptedName")),
      m_prompted(fields::number(this, "sheetPrompted", 0.0, sheet_rules_detail::kPercent)),
      m_weightName(parts::text(this, "sheetWeightName")),
      m_weight(fields::number(this, "sheetWeight", kSheetLeastWeight, kSheetMostWeight)),
      m_always(parts::text(this, "sheetAlways", "small")),
      m_attemptsName(parts::text(this, "sheetAttemptsName")),
      m_attempts(fields::whole(this, "sheetAttempts", 1, kSheetMostAttempts)),
      m_daysName(parts::text(this, "sheetDaysName")),
      m_days(fields::whole(this, "sheetDays", 0, kSheetMostDays)),
      m_remediation(fields::tick(this, "sheetRemediation")),
      m_second(fields::tick(this, "sheetSecondAssessor")),
      m_noShow(fields::tick(this, "sheetNoShow"))
{
    constexpr double kWeightStep = 0.5;
    m_weight->setSingleStep(kWeightStep);
    for (const QDoubleSpinBox* box : {m_cut, m_prompted, m_weight})
        connect(box, &QDoubleSpinBox::valueChanged, this, &SheetPart::changed);
    for (const QSpinBox* box : {m_attempts, m_days})
        connect(box, &QSpinBox::valueChanged, this, &SheetPart::changed);
    for (const QCheckBox* box : {m_remediation, m_second, m_noShow})
        connect(box, &QCheckBox::toggled, this, &SheetPart::changed);
    layOut();
    say();
}

void SheetRules::layOut()
{
    fields::Lines lines(this);
    lines.add(m_cutName, m_cut);
    lines.add(m_promptedName, m_prompted);
    lines.add(m_weightName, m_weight);
    lines.across(m_always);
    lines.rule();
    lines.add(m_attemptsName, m_attempts);
    lines.add(m_daysName, m_days);
    lines.across(m_remediation);
    lines.across(m_second);
    lines.across(m_noShow);
    lines.end();
}

void SheetRules::say()
{
    fields::say(m_cutName, m_cut, tr("Score to reach"));
    fields::say(m_promptedName, m_prompted, tr("A step that was prompted counts"));
    //: Points of one item on screen, where one step on the manikin counts one.
    fields::say(m_weightName, m_weight, tr("An item counts as so many steps"));
    for (QDoubleSpinBox* percent : {m_cut, m_prompted})
        //: After a number.
        percent->setSuffix(tr(" %"));
    m_always->setText(
        tr("Whatever the score: a critical step missed, an unsafe mark, an unsafe order, a safety "
           "stop or too little time is no pass."));
    fields::say(m_attemptsName, m_attempts, tr("Attempts"));
    fields::say(m_daysName, m_days, tr("Days between two attempts, at least"));
    fields::say(m_remediation, tr("Practice is signed before the next attempt"));
    fields::say(m_second, tr("A second assessor watches the last attempt"));
    fields::say(m_noShow, tr("Not coming uses up an attempt"));
}

void SheetRules::fill(const Sheet& sheet)
{
    using namespace sheet_rules_detail;
    const QSignalBlocker quiet(this);
    m_cut->setValue(sheet.cutPercent);
    m_prompted->setValue(sheet.promptedShare * kPercent);
    m_weight->setValue(sheet.itemWeight);
    m_attempts->setValue(sheet.retest.attempts);
    m_days->setValue(sheet.retest.daysBetween);
    m_remediation->setChecked(sheet.retest.remediationFirst);
    m_second->setChecked(sheet.retest.secondAssessorOnLast);
    m_noShow->setChecked(sheet.retest.noShowCounts);
}

Result<bool> SheetRules::writeTo(Sheet& sheet) const
{
    sheet.cutPercent = m_cut->value();
    sheet.promptedShare = m_prompted->value() / sheet_rules_detail::kPercent;
    sheet.itemWeight = m_weight->value();
    sheet.retest = {m_attempts->value(), m_days->value(), m_remediation->isChecked(), m_second->isChecked(),
                    m_noShow->isChecked()};
    return true;
}

}  // namespace fb
