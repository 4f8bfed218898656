// The end of a check-off: on one side what it came to and why, on the other the assessor's rating, remark and
// signature, and once signed what comes next. Everything by keyboard: 1 to 5 rates, then PIN and Enter; page
// up and down turn the result.
#pragma once

#include <QWidget>

#include "app/checkoff/check_off_presenter.h"
#include "app/doors/dialogs.h"
#include "app/look/palette.h"

class QLabel;
class QPlainTextEdit;
class QScrollArea;

namespace fb {

class AnswerTable;
class BreachList;
class MissedList;
class OutcomePanel;
class RatingRow;
class SavedPanel;
class SheetOut;
class SignPanel;

class ClosingPage : public QWidget {
    Q_OBJECT

public:
    static constexpr int kLongestRemark = 1000;

    // Both outlive the page.
    ClosingPage(CheckOffPresenter& presenter, Dialogs& dialogs, QWidget* parent = nullptr);

    void setScheme(const Scheme& scheme);
    void focusFirst();

protected:
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void layOut();
    QScrollArea* scroller(QWidget* whole, const char* name);
    QWidget* result();
    QWidget* signature();
    void connectAll();
    void connectSheet();
    void addKeys();
    void say();
    void showState();
    void showNotice();
    void startAnew();
    [[nodiscard]] bool needsRating() const;
    void rate();
    void keepRemark();
    void holdRemark();
    void sign(qint64 first, const QString& pin, qint64 second, const QString& secondPin);
    void print();
    void savePdf();

    CheckOffPresenter& m_presenter;
    Dialogs& m_dialogs;
    qint64 m_shown = 0;
    bool m_wasSigned = false;
    std::optional<Fault> m_told;
    QString m_file;  // the PDF that is being written
    OutcomePanel* m_outcome;
    AnswerTable* m_answers;
    MissedList* m_missed;
    QLabel* m_ordersTitle;
    BreachList* m_orders;
    QWidget* m_unsigned;
    RatingRow* m_rating;
    QLabel* m_remarkTitle;
    QPlainTextEdit* m_remark;
    SignPanel* m_sign;
    SavedPanel* m_saved;
    SheetOut* m_sheet;
    QScrollArea* m_result = nullptr;
    QWidget* m_column = nullptr;
    Scheme m_scheme;
};

}  // namespace fb
