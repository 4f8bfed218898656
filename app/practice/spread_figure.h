// All marks of a run on one small figure: the target region at the reference arm, its ideal
// point, acromion and armpit level, and each mark by the shape of its verdict. Front is to the right, the shoulder up.
#pragma once

#include <QWidget>

#include "app/look/palette.h"
#include "core/session/summary.h"
#include "core/site/target.h"

namespace fb {

class SpreadFigure : public QWidget {
    Q_OBJECT

public:
    explicit SpreadFigure(QWidget* parent = nullptr);

    void showRun(const Summary& summary, const Target& target);
    void setScheme(const Scheme& scheme);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    // From (anterior, distal) cm to the widget; everything shown lies inside it.
    [[nodiscard]] QPointF place(Point offset) const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void paintRuler(QPainter& painter) const;
    void paintWords(QPainter& painter) const;
    void paintLevel(QPainter& painter, double distal, const QString& word) const;
    void paintMarks(QPainter& painter) const;

    Scheme m_scheme;
    Summary m_summary;
    std::vector<Point> m_region;  // (anterior, distal) from the ideal, at the reference arm
    double m_acromion = 0.0;      // distal from the ideal, cm: where the arm begins
    double m_armpit = 0.0;
    double m_reach = 1.0;         // cm shown from the ideal point to each side
};

}  // namespace fb
