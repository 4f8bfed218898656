// What a run came to at each site that was asked, and which site's marks are drawn: one line a
// site, to be chosen.
#pragma once

#include <QWidget>
#include <vector>

#include "app/practice/practice_state.h"

class QGridLayout;
class QLabel;
class QRadioButton;

namespace fb {

class RunBySite : public QWidget {
    Q_OBJECT

public:
    explicit RunBySite(QWidget* parent = nullptr);

    void showState(const PracticeState& state);  // hidden where a single site was asked

Q_SIGNALS:
    void siteAsked(Site site);

private:
    struct Row {
        Site site{};
        QRadioButton* name = nullptr;
        QLabel* numbers = nullptr;
    };
    void makeRows(const std::vector<SiteSummary>& sites);

    QLabel* m_title;
    QGridLayout* m_grid;
    std::vector<Row> m_rows;
};

// "3 of 4 in the target region, 0.8 cm from the ideal point on average."
[[nodiscard]] QString siteNumbers(const Summary& summary);
// What was refused and what should have been, a sentence each; empty where the charts ruled
// nothing out and nothing was refused.
[[nodiscard]] QString refusalNumbers(const Summary& summary);

}  // namespace fb
