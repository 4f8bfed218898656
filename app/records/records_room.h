// What lies behind the gate: the four areas by words on top, and over them what is opened. Made when the gate
// opens, thrown away when it shuts, so that nothing of it is left to be found.
#pragma once

#include <QWidget>
#include <array>

#include "app/doors/dialogs.h"
#include "app/records/records_presenter.h"

class QLabel;
class QPushButton;
class QStackedLayout;
class QToolButton;

namespace fb {

class AssessorsPage;
class BoardView;
class CheckOffView;
class HistoryView;
class ListView;
class LogPage;
class ReplayView;

class RecordsRoom : public QWidget {
    Q_OBJECT

public:
    RecordsRoom(RecordsPresenter& presenter, Dialogs& dialogs, const Scheme& scheme,
                QWidget* parent = nullptr);

    void showState(const RecordsState& state);
    void showProgress(const RecordsState& state);
    void setScheme(const Scheme& scheme);

protected:
    void changeEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;  // Escape goes back

private:
    void layOut();
    void say();
    [[nodiscard]] QWidget* shownFor(const RecordsState& state) const;
    void focusFor(const QWidget* shown);

    RecordsPresenter& m_presenter;
    std::array<QToolButton*, kRecordsAreaCount> m_areas{};
    QWidget* m_nav;
    QLabel* m_who;
    QPushButton* m_lock;
    QStackedLayout* m_stack = nullptr;
    BoardView* m_board;
    ListView* m_list;
    LogPage* m_log;
    AssessorsPage* m_assessors;
    HistoryView* m_history;
    CheckOffView* m_opened;
    ReplayView* m_replay;
    QWidget* m_focused = nullptr;  // what had the focus set last
};

}  // namespace fb
