// The area of the records: the gate, and behind it what was recorded. Being shown it asks who comes; being
// left it locks.
#pragma once

#include <QPointer>
#include <QWidget>

#include "app/doors/dialogs.h"
#include "app/records/records_presenter.h"

class QStackedLayout;

namespace fb {

class GatePage;
class Notice;
class RecordsRoom;

class RecordsPage : public QWidget {
    Q_OBJECT

public:
    // Both outlive the page.
    RecordsPage(RecordsPresenter& presenter, Dialogs& dialogs, QWidget* parent = nullptr);
    ~RecordsPage() override;

    void setScheme(const Scheme& scheme);

protected:
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    bool eventFilter(QObject* watched,
                     QEvent* event) override;  // of the application: use holds the gate open

private:
    void showState();
    void shutRoom();

    RecordsPresenter& m_presenter;
    Dialogs& m_dialogs;
    Scheme m_scheme;
    QStackedLayout* m_pages;
    GatePage* m_gate;
    RecordsRoom* m_room = nullptr;  // only while the gate is open
    QPointer<QWidget> m_left;       // the last room, until it is gone
    Notice* m_notice;
};

}  // namespace fb
