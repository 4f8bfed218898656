// The board of a cohort: how many students stand where on a sheet, and the list of them, to be narrowed by
// words and standing. A click or Enter opens a student's history.
#pragma once

#include <QWidget>

#include "app/records/board_model.h"
#include "app/records/records_presenter.h"

class QComboBox;
class QLabel;
class QLineEdit;

namespace fb {

class CohortCounts;
class RecordsTable;

class BoardView : public QWidget {
    Q_OBJECT

public:
    explicit BoardView(RecordsPresenter& presenter, QWidget* parent = nullptr);

    void showState(const RecordsState& state);
    void setScheme(const Scheme& scheme);
    void focusFirst();

protected:
    void changeEvent(QEvent* event) override;

private:
    void layOut();
    void say();
    void fillSheets(const RecordsState& state);
    void fillStandings();
    void sayShown();

    RecordsPresenter& m_presenter;
    std::vector<QString> m_sheets;  // keys, as listed
    std::shared_ptr<const Board> m_shown;
    QLabel* m_sheetName;
    QComboBox* m_sheet;
    CohortCounts* m_counts;
    QLabel* m_outcomes;
    QLineEdit* m_words;
    QComboBox* m_standing;
    QLabel* m_rows;
    BoardModel m_model;
    BoardFilter m_filter;
    RecordsTable* m_table;
    QLabel* m_hint;
};

}  // namespace fb
