#include "app/sheets/sheet_steps.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/sheets/sheet_fields.h"

namespace fb {

SheetSteps::SheetSteps(QWidget* parent)
    : SheetPart(parent),
      m_protocolName(parts::text(this, "sheetProtocol", "small")),
      m_all(parts::button(this, "allSteps")),
      m_none(parts::button(this, "noSteps"))
{
    constexpr std::array kProtocol{"cleansSkin", "zTrack", "aspirates", "filterNeedle"};
    for (std::size_t i = 0; i < m_protocol.size(); ++i) {
        m_protocol[i] = fields::tick(this, kProtocol[i]);
        connect(m_protocol[i], &QCheckBox::toggled, this, [this] {
            fitRows();
            Q_EMIT changed();
        });
    }
    for (std::size_t group = 0; group < m_groups.size(); ++group)
        m_groups[group] = parts::text(
            this, ("stepGroup" + QByteArray::number(static_cast<int>(group))).constData(), "request");
    for (std::size_t step = 0; step < m_rows.size(); ++step)
        makeRow(procedureStepAt(static_cast<int>(step)));
    connect(m_all, &QPushButton::clicked, this, [this] { watchAll(true); });
    connect(m_none, &QPushButton::clicked, this, [this] { watchAll(false); });
    layOut();
    say();
    fitRows();
}

void SheetSteps::makeRow(ProcedureStep step)
{
    const std::string_view word = wordOf(step);
    const QByteArray name(word.data(), static_cast<qsizetype>(word.size()));
    Row& row = m_rows[static_cast<std::size_t>(step)];
    row.watched = fields::tick(this, ("watched." + name).constData());
    row.critical = fields::tick(this, ("critical." + name).constData());
    connect(row.watched, &QCheckBox::toggled, this, [this, critical = row.critical](bool on) {
        critical->setEnabled(on);
        Q_EMIT changed();
    });
    connect(row.critical, &QCheckBox::toggled, this, &SheetPart::changed);
}

void SheetSteps::layOut()
{
    m_grid = new QGridLayout(this);
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(space::kApart);
    m_grid->setVerticalSpacing(0);
    m_grid->setColumnStretch(0, 1);
    int row = 0;
    m_grid->addWidget(m_protocolName, row++, 0, 1, 2);
    for (QCheckBox* choice : m_protocol)
        m_grid->addWidget(choice, row++, 0, 1, 2);
    auto* buttons = new QHBoxLayout;
    buttons->setContentsMargins(0, space::kApart, 0, 0);
    buttons->setSpacing(space::kNear);
    buttons->addWidget(m_all);
    buttons->addWidget(m_none);
    buttons->addStretch(1);
    m_grid->addLayout(buttons, row++, 0, 1, 2);
    int group = -1;
    for (std::size_t step = 0; step < m_rows.size(); ++step) {
        const int its = static_cast<int>(groupOf(procedureStepAt(static_cast<int>(step))));
        if (its != group) {
            group = its;
            m_groups[static_cast<std::size_t>(group)]->setContentsMargins(0, space::kApart, 0, space::kTight);
            m_grid->addWidget(m_groups[static_cast<std::size_t>(group)], row++, 0, 1, 2);
        }
        m_grid->addWidget(m_rows[step].watched, row, 0);
        m_grid->addWidget(m_rows[step].critical, row++, 1);
    }
    m_grid->setRowStretch(row, 1);
}

void SheetSteps::say()
{
    m_protocolName->setText(tr("The lab’s protocol"));
    fields::say(m_protocol[0], tr("The skin is cleaned"));
    fields::say(m_protocol[1], tr("The skin is shifted and the needle held (Z-track)"));
    fields::say(m_protocol[2], tr("The student aspirates"));
    fields::say(m_protocol[3], tr("The drug is drawn up through a filter needle"));
    //: Of the steps on the manikin.
    parts::say(m_all, tr("Watch all steps"));
    parts::say(m_none, tr("Watch none"));
    for (std::size_t group = 0; group < m_groups.size(); ++group)
        m_groups[group]->setText(groupName(static_cast<StepGroup>(group)));
    for (std::size_t step = 0; step < m_rows.size(); ++step) {
        const QString name = stepName(procedureStepAt(static_cast<int>(step)));
        fields::say(m_rows[step].watched, name);
        //: A step without which there is no pass.
        m_rows[step].critical->setText(tr("critical"));
        //: %1 is the name of a step.
        m_rows[step].critical->setAccessibleName(tr("Critical: %1").arg(name));
    }
}

Protocol SheetSteps::protocol() const
{
    return {m_protocol[0]->isChecked(), m_protocol[1]->isChecked(), m_protocol[2]->isChecked(),
            m_protocol[3]->isChecked()};
}

void SheetSteps::fill(const Sheet& sheet)
{
    const QSignalBlocker quiet(this);
    const std::array protocol{sheet.protocol.cleansSkin, sheet.protocol.zTrack, sheet.protocol.aspirates,
                              sheet.protocol.filterNeedle};
    for (std::size_t i = 0; i < m_protocol.size(); ++i)
        m_protocol[i]->setChecked(protocol[i]);
    for (const Row& row : m_rows) {
        row.watched->setChecked(false);
        row.critical->setChecked(false);
    }
    for (const SheetStep& step : sheet.steps) {
        // A used needle's recap is no step, and checkedSheet() refuses it.
        if (step.step == ProcedureStep::Recap)
            continue;
        const Row& row = m_rows[static_cast<std::size_t>(step.step)];
        row.watched->setChecked(true);
        row.critical->setChecked(step.critical);
    }
    for (const Row& row : m_rows)
        row.critical->setEnabled(row.watched->isChecked());
    fitRows();
}

Result<bool> SheetSteps::writeTo(Sheet& sheet) const
{
    sheet.protocol = protocol();
    sheet.steps.clear();
    for (std::size_t step = 0; step < m_rows.size(); ++step) {
        const ProcedureStep its = procedureStepAt(static_cast<int>(step));
        if (m_rows[step].watched->isChecked() && belongs(its, sheet.protocol))
            sheet.steps.push_back({its, m_rows[step].critical->isChecked()});
    }
    return true;
}

void SheetSteps::fitRows()
{
    const Protocol now = protocol();
    for (std::size_t step = 0; step < m_rows.size(); ++step) {
        const bool shown = belongs(procedureStepAt(static_cast<int>(step)), now);
        m_rows[step].watched->setVisible(shown);
        m_rows[step].critical->setVisible(shown);
    }
}

void SheetSteps::watchAll(bool on)
{
    {
        const QSignalBlocker quiet(this);
        for (const Row& row : m_rows)
            row.watched->setChecked(on);
    }
    Q_EMIT changed();
}

}  // namespace fb
