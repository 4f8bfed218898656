// What a run came to: all marks on one small plate, the hit rate with its interval, mean
// distance, which way they lean, sides picked right; again, or a new run.
#pragma once

#include <QWidget>
#include <array>

#include "app/practice/practice_state.h"

class QLabel;
class QPushButton;

namespace fb {

class PlateView;

class SummaryPage : public QWidget {
    Q_OBJECT

public:
    explicit SummaryPage(QWidget* parent = nullptr);

    void showState(const PracticeState& state);  // nothing happens without a summary in it
    void setScheme(const Scheme& scheme);
    void focusFirst();

Q_SIGNALS:
    void repeatAsked();
    void newRunAsked();

private:
    struct CountRow {
        QLabel* icon = nullptr;
        QLabel* name = nullptr;
        QLabel* count = nullptr;
    };
    void layOut();
    void sayNumbers(const Summary& summary);
    void showPlate(const PracticeState& state);
    void paintIcons();

    PlateView* m_plate;
    QLabel* m_caption;
    QLabel* m_title;
    QLabel* m_hits;
    QLabel* m_interval;
    QLabel* m_distance;
    QLabel* m_lean;
    QLabel* m_sides;
    QLabel* m_points;
    std::array<CountRow, kVerdictCount> m_counts;
    QPushButton* m_repeat;
    QPushButton* m_new;
    std::shared_ptr<const Picture> m_shown;  // laid close up once
    Scheme m_scheme;
};

}  // namespace fb
