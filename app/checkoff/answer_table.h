// The items of a check-off and what came of each: what was asked, the verdict with its sign and word, and
// how far and which way it lies from the ideal point.
#pragma once

#include <QWidget>
#include <vector>

#include "app/look/palette.h"
#include "core/session/answer.h"

class QGridLayout;
class QLabel;

namespace fb {

class AnswerTable : public QWidget {
    Q_OBJECT

public:
    explicit AnswerTable(QWidget* parent = nullptr);

    void showAnswers(const std::vector<Answer>& answers);
    void setScheme(const Scheme& scheme);

private:
    void paint();

    QGridLayout* m_grid;
    QLabel* m_title;
    std::vector<QLabel*> m_cells;
    std::vector<std::pair<QLabel*, Verdict>> m_icons;
    Scheme m_scheme;
};

}  // namespace fb
