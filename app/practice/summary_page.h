// What a run came to: all marks of a site on one small plate, the hit rate with its interval,
// mean distance, which way they lean, what was refused, sides picked right, each site for
// itself; again, or a new run.
#pragma once

#include <QWidget>
#include <array>

#include "app/practice/practice_state.h"

class QLabel;
class QPushButton;

namespace fb {

class PlateView;
class RunByHand;
class RunBySite;

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
    void siteAsked(Site site);

private:
    struct CountRow {
        QLabel* icon = nullptr;
        QLabel* name = nullptr;
        QLabel* count = nullptr;
    };
    void layOut();
    QWidget* figure();
    QWidget* words();
    QLayout* counts();
    void sayFound(const std::vector<ByHandGrade>& found);
    void sayPoints(const Summary& summary);
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
    QLabel* m_refusals;
    QLabel* m_sides;
    QLabel* m_points;
    RunByHand* m_byHand;
    RunBySite* m_bySite;
    QWidget* m_column;
    std::array<CountRow, kVerdictCount> m_counts;
    QPushButton* m_repeat;
    QPushButton* m_new;
    std::shared_ptr<const Picture> m_shown;  // laid close up once
    Scheme m_scheme;
};

}  // namespace fb
