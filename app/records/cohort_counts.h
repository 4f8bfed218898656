// How many students stand where: a number, its word and a bar of their share, side by side.
#pragma once

#include <QWidget>
#include <array>

#include "app/doors/records.h"
#include "app/look/palette.h"

class QLabel;

namespace fb {

class ShareBar;

class CohortCounts : public QWidget {
    Q_OBJECT

public:
    explicit CohortCounts(QWidget* parent = nullptr);

    void showCount(const CohortCount& count);
    void setScheme(const Scheme& scheme);

protected:
    void changeEvent(QEvent* event) override;

private:
    static constexpr int kKinds = 5;  // passed, due, not tried, out of attempts, running
    struct Cell {
        QLabel* number = nullptr;
        QLabel* word = nullptr;
        ShareBar* bar = nullptr;
    };
    void say();

    std::array<Cell, kKinds> m_cells;
    CohortCount m_count;
};

// A hairline with the share of it that is meant drawn firm.
class ShareBar : public QWidget {
    Q_OBJECT

public:
    explicit ShareBar(QWidget* parent = nullptr);

    void setShare(double share);  // 0 to 1
    void setColours(const QColor& firm, const QColor& line);
    [[nodiscard]] double share() const { return m_share; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    double m_share = 0.0;
    QColor m_firm, m_line;
};

}  // namespace fb
