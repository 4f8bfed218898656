// A check-off is signed and on disk: by whom and when, the first digits of the log's head, the sheet for the
// student, and who comes next.
#pragma once

#include <QWidget>
#include <optional>

#include "app/checkoff/check_off_state.h"
#include "app/look/palette.h"

class QBoxLayout;
class QLabel;
class QPushButton;

namespace fb {

inline constexpr int kShownChainDigits = 12;

class SavedPanel : public QWidget {
    Q_OBJECT

public:
    explicit SavedPanel(QWidget* parent = nullptr);

    void showState(const CheckOffState& state);
    void tell(const QString& words);  // of printing and saving; empty: nothing
    void setBusy(bool busy);
    void setScheme(const Scheme& scheme);
    void say();
    void focusFirst();

Q_SIGNALS:
    void nextPressed();
    void printPressed();
    void pdfPressed();
    void deskPressed();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void fit();

    QString m_nextWords;
    QBoxLayout* m_sheet = nullptr;
    QLabel* m_icon;
    QLabel* m_title;
    QLabel* m_who;
    QLabel* m_chain;
    QLabel* m_told;
    QPushButton* m_next;
    QPushButton* m_print;
    QPushButton* m_pdf;
    QPushButton* m_desk;
    Scheme m_scheme;
};

}  // namespace fb
