// The area of practice: the plate on its paper, a column of words beside it, the slim row of
// layers and zoom below, the summary at the end of a run. Shows the presenter's state and
// forwards what the learner does; everything can be done by keyboard alone.
#pragma once

#include <QWidget>

#include "app/practice/practice_presenter.h"

class QLabel;
class QPushButton;
class QScrollArea;
class QStackedLayout;
class QToolButton;
class QVBoxLayout;

namespace fb {

class ByHandColumn;
class ByHandPanel;
class CompanionPanel;
class GradePanel;
class Notice;
class PlateBar;
class RefusalPanel;
class RequestPanel;
class RunDialog;
class SidePicker;
class StageRail;
class SummaryPage;
class WhyPanel;

class PracticePage : public QWidget {
    Q_OBJECT

public:
    // The presenter outlives the page.
    explicit PracticePage(PracticePresenter& presenter, QWidget* parent = nullptr);

    void setScheme(const Scheme& scheme);
    void askNewRun();  // opens the dialog of a run's setup
    void takeKeys();   // the focus goes to where an answer is given

Q_SIGNALS:
    void handAsked(fb::RunDialog* dialog);  // the dialog wants the learner's hand looked after

protected:
    void changeEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;  // Escape closes the choice of reasons

private:
    void layOut();
    QWidget* stage();
    QWidget* column();
    QLayout* buttons();
    void connectAll();
    void connectByHand();
    void say();
    void showState();
    void showPlates(const PracticeState& state);
    void showCompanion(const PracticeState& state);
    void showColumn(const PracticeState& state);
    void showFeedback(const PracticeState& state);
    void showButtons(const PracticeState& state);
    void showSaving(const PracticeState& state);
    void showWhy();
    void scrollToWhy();
    void showSummary(const PracticeState& state);
    void refuse();
    void takeMark(QPointF cm);
    void goOn();  // from a stage of the hand to the next
    void showByHand(const PracticeState& state);
    void lookClose(const PracticeState& state);
    void keepHandInSight();
    void showByHandFeedback(const PracticeState& state);
    [[nodiscard]] QString plateName(const PracticeState& state) const;
    [[nodiscard]] QRectF closeUp(const PracticeState& state) const;
    void focusFor(const PracticeState& state);
    void makeSidePicker();
    void makeCompanion();
    [[nodiscard]] QString hintText(const PracticeState& state) const;

    PracticePresenter& m_presenter;
    Scheme m_scheme;
    std::optional<Phase> m_shownPhase;
    int m_shownRequest = -1;
    Keeping m_shownKeeping = Keeping::Open;
    bool m_shownChoosing = false;
    bool m_shownWatching = false;
    bool m_watchedClose = false;
    std::optional<ByHandStage> m_shownStage;
    bool m_askedChoice = false;  // of the construction
    bool m_followsWhy = false;   // keeps the opened answer in sight while its words find their place

    QStackedLayout* m_pages = nullptr;  // practising, summary
    QWidget* m_practising;
    QStackedLayout* m_stage = nullptr;  // plates, side question
    PlateView* m_plate;
    const Picture* m_closeUp = nullptr;     // the picture that was last shown close up; only compared
    CompanionPanel* m_companion = nullptr;  // made when first asked for, like the next two
    SidePicker* m_sidePicker = nullptr;
    SummaryPage* m_summary = nullptr;
    WhyPanel* m_why = nullptr;
    QWidget* m_plates = nullptr;
    PlateBar* m_bar;
    QWidget* m_column = nullptr;
    QScrollArea* m_scroll = nullptr;
    QVBoxLayout* m_words = nullptr;
    StageRail* m_rail;
    RequestPanel* m_request;
    QLabel* m_hint;
    ByHandColumn* m_byHand;
    RefusalPanel* m_refusal;
    ByHandPanel* m_byHandGrade = nullptr;  // made when first wanted
    GradePanel* m_grade;
    QToolButton* m_whyButton;
    Notice* m_notice;
    QPushButton* m_goOnButton;
    QPushButton* m_gradeButton;
    QPushButton* m_refuseButton;
    QPushButton* m_confirmButton;
    QPushButton* m_withdrawButton;
    QPushButton* m_backButton;
    QPushButton* m_nextButton;
};

}  // namespace fb
