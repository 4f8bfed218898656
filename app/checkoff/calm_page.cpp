#include "app/checkoff/calm_page.h"

#include <QEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/style.h"
#include "app/practice/parts.h"

namespace fb {

CalmPage::CalmPage(const char* name, QWidget* parent)
    : QWidget(parent),
      m_sheet(new QWidget(this)),
      m_words(new QVBoxLayout),
      m_buttons(new QHBoxLayout)
{
    setObjectName(QLatin1String(name));
    auto* rows = new QVBoxLayout(m_sheet);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(space::kBroad);
    m_words->setSpacing(space::kNear);
    rows->addLayout(m_words);
    m_buttons->setSpacing(space::kApart);
    rows->addLayout(m_buttons);
    m_buttons->addStretch(1);
    auto* middle = new QVBoxLayout(this);
    middle->setContentsMargins(space::kMargin, space::kMargin, space::kMargin, space::kMargin);
    middle->addStretch(2);
    // Stretches and no alignment: aligned, wrapped words would get too little height.
    auto* across = new QHBoxLayout;
    across->addStretch(1);
    across->addWidget(m_sheet);
    across->addStretch(1);
    middle->addLayout(across);
    middle->addStretch(3);
    fit();
}

QLabel* CalmPage::addWords(const char* name, const char* look)
{
    QLabel* words = parts::text(m_sheet, name, look);
    m_words->addWidget(words);
    return words;
}

void CalmPage::addPart(QWidget* part) { m_words->addWidget(part); }

QPushButton* CalmPage::addMain(const char* name) { return place(parts::mainButton(m_sheet, name)); }

QPushButton* CalmPage::addButton(const char* name) { return place(parts::button(m_sheet, name)); }

QPushButton* CalmPage::place(QPushButton* button)
{
    m_buttons->insertWidget(m_buttons->count() - 1, button);
    return button;
}

// High enough for a finger, whatever the rest of the program is set to.
void CalmPage::fit()
{
    constexpr int kWidth = 640;
    m_sheet->setFixedWidth(parts::columnWidth(this, kWidth));
    constexpr int kBorders = 8;
    m_sheet->setStyleSheet(QStringLiteral("QPushButton { min-height: %1px; }")
                               .arg(parts::scaled(this, leastControlHeight(Reach::Comfortable)) - kBorders));
}

void CalmPage::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        fit();
}

}  // namespace fb
