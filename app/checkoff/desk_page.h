// The assessor's desk: who is to be checked, how each stands, on which sheet, and what was left open. Shows
// the presenter's state and passes on what is pressed; Enter on a student starts.
#pragma once

#include <QWidget>

#include "app/checkoff/check_off_presenter.h"
#include "app/doors/dialogs.h"
#include "app/look/palette.h"

class QDialog;
class QLabel;
class QLineEdit;
class QPushButton;
class QStackedLayout;

namespace fb {

class DeskColumn;
class DeskEmpty;
class DeskFilter;
class DeskModel;
class DeskNote;
class DeskTable;

class DeskPage : public QWidget {
    Q_OBJECT

public:
    // Both outlive the page.
    DeskPage(CheckOffPresenter& presenter, Dialogs& dialogs, QWidget* parent = nullptr);

    void setScheme(const Scheme& scheme);
    void focusFirst();

protected:
    void changeEvent(QEvent* event) override;

private:
    QWidget* list();
    void layOut();
    void connectAll();
    void say();
    void showState();
    void showChosen();
    void showChosenRow();
    void search(const QString& words);
    void choose(const QModelIndex& row);
    void start();
    void guarded(void (DeskPage::*then)());  // by a PIN
    void importRoster();
    void editSheet();
    void editStudent();
    void showDialog(QDialog* dialog);  // and gives the keys back to the desk
    void voidRunning();
    void noShow();
    [[nodiscard]] QString whyNot() const;  // empty: the chosen student may start

    CheckOffPresenter& m_presenter;
    Dialogs& m_dialogs;
    Scheme m_scheme;
    bool m_wantsKeys = false;  // as soon as there is something to do by them
    bool m_showing = false;
    DeskModel* m_model;
    DeskFilter* m_filter;
    QStackedLayout* m_stack = nullptr;
    QWidget* m_desk;
    DeskEmpty* m_empty;
    DeskNote* m_note;
    QLineEdit* m_search;
    QLabel* m_count;
    DeskTable* m_table;
    QLabel* m_chosen;
    QLabel* m_standing;
    QPushButton* m_student;
    QPushButton* m_noShow;
    QPushButton* m_start;
    DeskColumn* m_column;
};

}  // namespace fb
