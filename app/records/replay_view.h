// One answer, looked at again on the plate it was given on: the patient, the site as it was found then, the
// mark, and the numbers as they were recorded.
#pragma once

#include <QSet>
#include <QWidget>

#include "app/records/records_presenter.h"

class QLabel;
class QPushButton;
class QScrollArea;

namespace fb {

class ByHandPanel;
class GradePanel;
class PlateBar;
class PlateView;
class RequestPanel;

class ReplayView : public QWidget {
    Q_OBJECT

public:
    explicit ReplayView(RecordsPresenter& presenter, QWidget* parent = nullptr);

    void showState(const RecordsState& state);  // nothing happens without an answer to replay
    void setScheme(const Scheme& scheme);
    void focusFirst();

protected:
    void changeEvent(QEvent* event) override;

private:
    void layOut();
    [[nodiscard]] QWidget* column();
    void say();
    void showReplay();
    void showPlate();
    void showGrade();
    void sayRecorded();
    [[nodiscard]] QString note() const;
    void peel(Peel peel, bool shown);
    void step(int delta);

    RecordsPresenter& m_presenter;
    Scheme m_scheme;
    std::shared_ptr<const Replay> m_shown;
    int m_item = 0;
    int m_answers = 0;
    QSet<Layer> m_layers = allLayers();
    PlateView* m_plate;
    PlateBar* m_bar;
    QWidget* m_column = nullptr;
    QPushButton* m_back;
    QLabel* m_counter;
    RequestPanel* m_request;
    QLabel* m_recordedName;
    QLabel* m_icon;
    QLabel* m_recorded;
    QLabel* m_note;
    GradePanel* m_grade;
    ByHandPanel* m_byHand;
    QPushButton* m_before;
    QPushButton* m_next;
};

}  // namespace fb
