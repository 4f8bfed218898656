// What is asked and of whom: the counter, the request, the note of the chart, the patient's
// strip, the help level.
#pragma once

#include <QWidget>

#include "app/practice/practice_state.h"

class QGridLayout;
class QLabel;

namespace fb {

class RequestPanel : public QWidget {
    Q_OBJECT

public:
    explicit RequestPanel(QWidget* parent = nullptr);

    void showState(const PracticeState& state);

private:
    void addField(QGridLayout& grid, int field, int row, int column, int span);

    enum Field {
        AgeField,
        SexField,
        SideField,
        StatureField,
        WeightField,
        PostureField,
        ConventionField,
        HelpField,
        FieldCount
    };

    QLabel* m_counter;
    QLabel* m_request;
    QLabel* m_chart;
    QLabel* m_names[FieldCount];
    QLabel* m_values[FieldCount];
    QWidget* m_details;  // what is no longer needed once the mark is graded
};

}  // namespace fb
