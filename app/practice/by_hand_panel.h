// What a site found by hand came to: what went wrong first, the three parts each with shape and
// word, then every landmark and every step of the construction with what its slip would have done.
#pragma once

#include <QWidget>
#include <array>
#include <vector>

#include "app/look/palette.h"
#include "core/session/practice.h"

class QGridLayout;
class QLabel;

namespace fb {

class ByHandPanel : public QWidget {
    Q_OBJECT

public:
    explicit ByHandPanel(QWidget* parent = nullptr);

    // The attempt was found by hand.
    void showAttempt(const Attempt& attempt, const Target& target, const Policy& policy);
    void setScheme(const Scheme& scheme);

private:
    static constexpr int kParts = 3;
    struct Row {
        QLabel* icon = nullptr;
        QLabel* name = nullptr;
        QLabel* words = nullptr;
        Verdict look{};  // whose shape and colour it has
    };
    struct Line {
        QLabel* icon = nullptr;
        QLabel* words = nullptr;
        Verdict look{};
    };
    void layOut();
    void sayParts(const Attempt& attempt);
    void sayDetails(const Attempt& attempt, const Target& target);
    void paintIcons();

    QLabel* m_firstTitle;
    QLabel* m_first;
    std::array<Row, kParts> m_parts{};
    QLabel* m_lucky;
    QLabel* m_watched;
    QLabel* m_noted;
    QLabel* m_landmarksTitle;
    QLabel* m_stepsTitle;
    QGridLayout* m_landmarks;
    QGridLayout* m_steps;
    std::vector<Line> m_landmarkLines;
    std::vector<Line> m_stepLines;
    Scheme m_scheme;
};

}  // namespace fb
