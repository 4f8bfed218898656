// One student's attempts in the order they were made, with what came between, and where the student stands
// now.
#pragma once

#include "app/records/record_view.h"
#include "app/records/records_presenter.h"

class QLabel;
class QPushButton;

namespace fb {

class HistoryView : public RecordView {
    Q_OBJECT

public:
    explicit HistoryView(RecordsPresenter& presenter, QWidget* parent = nullptr);

    void showState(const RecordsState& state);  // nothing happens without a history in it
    void focusFirst();

private:
    void say() override;
    void rebuild() override;
    [[nodiscard]] bool hasRecord() const override { return m_shown != nullptr; }
    [[nodiscard]] QWidget* attempt(const CheckOffLine& line, QWidget* parent);
    [[nodiscard]] QString between(const CheckOffLine& line) const;

    RecordsPresenter& m_presenter;
    std::shared_ptr<const StudentHistory> m_shown;
    QPushButton* m_back;
    QLabel* m_name;
    QLabel* m_about;
    QLabel* m_icon;
    QLabel* m_standing;
};

}  // namespace fb
