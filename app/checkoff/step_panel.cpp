#include "app/checkoff/step_panel.h"

#include <QGridLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <algorithm>

#include "app/checkoff/seen_button.h"
#include "app/checkoff/step_row.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/check_off_words.h"

namespace fb {

StepPanel::StepPanel(QWidget* parent)
    : QWidget(parent),
      m_name(parts::text(this, "nowStep", "request")),
      m_grid(new QGridLayout),
      m_remark(parts::button(this, "nowRemark"))
{
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(space::kTight);
    rows->addWidget(m_name);
    m_grid->setSpacing(space::kTight);
    for (int i = 0; i < kSeenCount; ++i) {
        auto* button = new SeenButton(static_cast<Seen>(i), this);
        button->setObjectName(QStringLiteral("now%1").arg(i + 1));
        button->setFocusPolicy(Qt::TabFocus);
        button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
        button->showWord(true);
        button->setOutlined(true);
        connect(button, &SeenButton::clicked, this, [this, button] {
            button->setChecked(!button->isChecked());  // what is kept is shown
            Q_EMIT seenPressed(button->seen());
        });
        m_buttons[static_cast<std::size_t>(i)] = button;
    }
    m_remark->setFocusPolicy(Qt::TabFocus);
    rows->addLayout(m_grid);
    connect(m_remark, &QPushButton::clicked, this, &StepPanel::remarkPressed);
    say();
    fit(0);
}

// Two by two, or one below the other where the words of the language are too long for that.
void StepPanel::fit(int width)
{
    int widest = m_remark->sizeHint().width();
    for (const SeenButton* button : m_buttons)
        widest = std::max(widest, button->sizeHint().width());
    const int columns = 2 * widest + space::kTight <= width ? 2 : 1;
    if (columns == m_columns)
        return;
    m_columns = columns;
    for (int i = 0; i < kSeenCount; ++i)
        m_grid->addWidget(m_buttons[static_cast<std::size_t>(i)], i / columns, i % columns);
    m_grid->addWidget(m_remark, kSeenCount / columns, kSeenCount % columns);
    m_grid->setColumnStretch(0, 1);
    m_grid->setColumnStretch(1, columns - 1);
}

void StepPanel::say()
{
    const QLocale locale;
    for (int i = 0; i < kSeenCount; ++i) {
        const QString word = parts::alone(seenName(static_cast<Seen>(i)));
        //: A key, then what it does: "1 Done".
        const QString keyed = tr("%1 %2").arg(locale.toString(i + 1), word);
        m_buttons[static_cast<std::size_t>(i)]->say(keyed, tr("This step: %1").arg(word));
    }
    //: The key R, then what it does.
    parts::say(m_remark, tr("R Remark"));
    m_remark->setAccessibleName(tr("Remark on this step"));
}

void StepPanel::showStep(const StepRow* row)
{
    setEnabled(row != nullptr);
    if (!row)
        return;
    const QString name = stepName(row->step().step);
    m_name->setText(row->step().critical ? StepRow::tr("%1 (critical)").arg(name) : name);
    const auto& seen = row->observation();
    for (SeenButton* button : m_buttons)
        button->setChecked(seen && seen->seen == button->seen());
}

void StepPanel::setScheme(const Scheme& scheme)
{
    for (SeenButton* button : m_buttons)
        button->setScheme(scheme);
}

}  // namespace fb
