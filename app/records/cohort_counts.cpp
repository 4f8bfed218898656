#include "app/records/cohort_counts.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPainter>

#include "app/look/style.h"
#include "app/practice/parts.h"

namespace fb {

CohortCounts::CohortCounts(QWidget* parent) : QWidget(parent)
{
    static constexpr std::array kNames{"countPassed", "countDue", "countNotTried", "countOut",
                                       "countRunning"};
    static constexpr std::array kWords{"wordPassed", "wordDue", "wordNotTried", "wordOut", "wordRunning"};
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::kMargin);
    for (std::size_t i = 0; i < m_cells.size(); ++i) {
        Cell& cell = m_cells[i];
        cell.number = parts::text(this, kNames[i], "figure");
        cell.word = parts::text(this, kWords[i], "small");
        cell.bar = new ShareBar(this);
        auto* column = new QVBoxLayout;
        column->setSpacing(space::kTight);
        column->addWidget(cell.number);
        column->addWidget(cell.bar);
        column->addWidget(cell.word, 1, Qt::AlignTop);
        row->addLayout(column, 1);
    }
    say();
}

void CohortCounts::say()
{
    //: Under a number of students, likewise the next four.
    m_cells[0].word->setText(tr("passed"));
    m_cells[1].word->setText(tr("due again"));
    m_cells[2].word->setText(tr("not tried"));
    m_cells[3].word->setText(tr("no attempt left"));
    m_cells[4].word->setText(tr("open now"));
    showCount(m_count);
}

void CohortCounts::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
}

void CohortCounts::showCount(const CohortCount& count)
{
    m_count = count;
    const std::array numbers{count.passed, count.due, count.notTried, count.outOfAttempts, count.running};
    int all = 0;
    for (const int number : numbers)
        all += number;
    for (std::size_t i = 0; i < m_cells.size(); ++i) {
        m_cells[i].number->setText(QLocale().toString(numbers[i]));
        m_cells[i].bar->setShare(all > 0 ? static_cast<double>(numbers[i]) / all : 0.0);
    }
}

void CohortCounts::setScheme(const Scheme& scheme)
{
    for (const Cell& cell : m_cells)
        cell.bar->setColours(scheme.accent, scheme.line);
}

ShareBar::ShareBar(QWidget* parent) : QWidget(parent)
{
    constexpr int kHeight = 6;
    setFixedHeight(kHeight);
}

void ShareBar::setShare(double share)
{
    m_share = share;
    update();
}

void ShareBar::setColours(const QColor& firm, const QColor& line)
{
    m_firm = firm;
    m_line = line;
    update();
}

void ShareBar::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.fillRect(0, height() - 1, width(), 1, m_line);
    const int firm = qRound(width() * m_share);
    painter.fillRect(isRightToLeft() ? width() - firm : 0, 0, firm, height(), m_firm);
}

}  // namespace fb
