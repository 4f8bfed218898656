// What a run by hand came to beside its marks: in how many requests each of the three parts was
// right, and what went wrong first most often.
#pragma once

#include <QWidget>
#include <array>
#include <span>
#include <vector>

#include "app/practice/practice_state.h"

class QLabel;

namespace fb {

// How often one cause stood first.
struct CauseCount {
    Cause cause;
    int times = 0;
};

// The most frequent first, of equals the one that came first; at most so many.
[[nodiscard]] std::vector<CauseCount> commonCauses(std::span<const ByHandGrade> grades, std::size_t most);

class RunByHand : public QWidget {
    Q_OBJECT

public:
    explicit RunByHand(QWidget* parent = nullptr);

    void showState(const PracticeState& state);  // hidden where nothing was found by hand

private:
    static constexpr int kParts = 3;

    QLabel* m_title;
    std::array<QLabel*, kParts> m_names{};
    std::array<QLabel*, kParts> m_counts{};
    QLabel* m_causesTitle;
    QLabel* m_causes;
};

}  // namespace fb
