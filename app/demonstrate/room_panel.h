// Asking the room: volunteers' points as a list, clicked on the picture or read from a file, then revealed
// and graded all at once.
#pragma once

#include <QWidget>

#include "app/demonstrate/room_model.h"
#include "app/doors/dialogs.h"

class QLabel;
class QPushButton;
class QTableView;
class QToolButton;

namespace fb {

class LecturePresenter;

class RoomPanel : public QWidget {
    Q_OBJECT

public:
    RoomPanel(LecturePresenter& presenter, Dialogs& dialogs, QWidget* parent = nullptr);

    void showState();
    void setScheme(const Scheme& scheme);

protected:
    void changeEvent(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;  // Delete drops a mark

private:
    void layOut();
    void connectAll();
    void say();
    void fit();
    void readMarks();

    LecturePresenter& m_presenter;
    Dialogs& m_dialogs;
    RoomModel m_model;
    QLabel* m_hint;
    QToolButton* m_ask;
    QPushButton* m_read;
    QLabel* m_count;
    QTableView* m_table;
    QPushButton* m_drop;
    QPushButton* m_clear;
    QPushButton* m_reveal;
};

}  // namespace fb
