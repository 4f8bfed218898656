// One student's attempts in the order they were made, with what came between, and where the student stands
// now.
#pragma once

#include <QWidget>

#include "app/records/records_presenter.h"

class QLabel;
class QPushButton;
class QScrollArea;

namespace fb {

class HistoryView : public QWidget {
    Q_OBJECT

public:
    explicit HistoryView(RecordsPresenter& presenter, QWidget* parent = nullptr);

    void showState(const RecordsState& state);  // nothing happens without a history in it
    void setScheme(const Scheme& scheme);
    void focusFirst();

protected:
    void changeEvent(QEvent* event) override;

private:
    void say();
    void rebuild();
    [[nodiscard]] QWidget* attempt(const CheckOffLine& line, QWidget* parent);
    [[nodiscard]] QString between(const CheckOffLine& line) const;

    RecordsPresenter& m_presenter;
    Scheme m_scheme;
    std::shared_ptr<const StudentHistory> m_shown;
    QPushButton* m_back;
    QLabel* m_name;
    QLabel* m_about;
    QLabel* m_icon;
    QLabel* m_standing;
    QScrollArea* m_scroll;
};

}  // namespace fb
