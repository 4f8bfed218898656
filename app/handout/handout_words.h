// Every word of a hand-out, and the looks of the steps it shows, collected before anything is painted.
#pragma once

#include <QString>
#include <QStringList>
#include <vector>

#include "app/handout/handout.h"

namespace fb {

struct HandoutStep {
    LectureLook look;
    QString number;  // "1"
};

struct HandoutWords {
    Qt::LayoutDirection direction = Qt::LeftToRight;
    QString heading;  // "Ventrogluteal site, right hip"
    QString manner;   // the convention
    QString patient;  // who, how stout, how they lie
    std::vector<HandoutStep> steps;
    LectureLook skin, hazards;  // nothing drawn; all that lies around
    QString hazardsHeading, ruleHeading, rule, sourcesHeading, sources;
    QString caution;
    // Of the page to practise on.
    QString task, name, day, howTo, order, keepClear, keyHeading, keyHowTo, page;
};

// The steps of finding the site that are worth a plate: what is laid or drawn, region and ideal point. Of a
// figure that is repeated (fingers, medians) the last. Indices of ask.steps, ascending.
[[nodiscard]] std::vector<int> keySteps(const std::vector<LectureStep>& steps);

[[nodiscard]] HandoutWords handoutWords(const HandoutAsk& ask);

}  // namespace fb
