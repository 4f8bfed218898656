// All signed check-offs, newest first, to be searched by words, sheet, outcome and day. A click or Enter
// opens one.
#pragma once

#include <QTimer>
#include <QWidget>

#include "app/records/list_model.h"
#include "app/records/records_presenter.h"
#include "app/records/sorted_rows.h"

class QComboBox;
class QDateEdit;
class QLabel;
class QLineEdit;

namespace fb {

class RecordsTable;

class ListView : public QWidget {
    Q_OBJECT

public:
    static constexpr int kTypingMs = 200;  // a search begins when nothing was typed for so long

    explicit ListView(RecordsPresenter& presenter, QWidget* parent = nullptr);

    void showState(const RecordsState& state);
    void setScheme(const Scheme& scheme);
    void focusFirst();

protected:
    void changeEvent(QEvent* event) override;

private:
    enum Span { AnyTime, Today, LastWeek, LastMonth, Between };

    void layOut();
    void say();
    void fillSheets(const RecordsState& state);
    void fillChoices();
    void search();
    [[nodiscard]] CheckOffFilter filter() const;

    RecordsPresenter& m_presenter;
    std::vector<QString> m_sheets;  // keys, as listed after "every sheet"
    ListModel::Lines m_shown;
    QLineEdit* m_words;
    QComboBox* m_sheet;
    QComboBox* m_outcome;
    QComboBox* m_span;
    QWidget* m_days;
    QDateEdit* m_from;
    QLabel* m_toName;
    QDateEdit* m_to;
    QLabel* m_rows;
    ListModel m_model;
    SortedRows m_sorted;
    RecordsTable* m_table;
    QLabel* m_hint;
    QTimer m_typing;
};

}  // namespace fb
