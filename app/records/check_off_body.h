// A signed check-off in words: what came of it and why, each answer, each step, each broken order. Made anew
// for every one that is opened.
#pragma once

#include <QWidget>
#include <memory>

#include "app/look/icons.h"
#include "app/records/opened_check_off.h"

class QGridLayout;
class QLabel;
class QVBoxLayout;

namespace fb {

// Outcome, who, when, reasons, what to practise.
class CheckOffHead : public QWidget {
    Q_OBJECT

public:
    CheckOffHead(const OpenedCheckOff& opened, const Scheme& scheme, QWidget* parent = nullptr);

private:
    void addOutcome(QVBoxLayout& column, const OpenedCheckOff& opened, const Scheme& scheme);
    void addFacts(QVBoxLayout& column, const OpenedCheckOff& opened);
};

// Answers, broken orders, steps.
class CheckOffBody : public QWidget {
    Q_OBJECT

public:
    CheckOffBody(const OpenedCheckOff& opened, const Scheme& scheme, QWidget* parent = nullptr);

Q_SIGNALS:
    void replayAsked(int item);

private:
    void addAnswers(QVBoxLayout& column, const OpenedCheckOff& opened, const Scheme& scheme);
    void addSteps(QVBoxLayout& column, const OpenedCheckOff& opened, const Scheme& scheme);
    void addStep(QGridLayout& grid, const SheetStep& step, const Observation* seen, const Scheme& scheme);
};

}  // namespace fb
