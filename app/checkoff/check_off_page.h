// The area of check-off: the page that fits the stage, the paper that covers it while paused, and the notice
// under it.
#pragma once

#include <QWidget>
#include <optional>

#include "app/checkoff/check_off_presenter.h"
#include "app/doors/dialogs.h"
#include "app/look/palette.h"

class QStackedLayout;

namespace fb {

class ClosingPage;
class DeskPage;
class HandoverPage;
class IdentityPage;
class InstructionsPage;
class ItemsPage;
class ManikinPage;
class Notice;
class PauseCover;

class CheckOffPage : public QWidget {
    Q_OBJECT

public:
    // Both outlive the page.
    CheckOffPage(CheckOffPresenter& presenter, Dialogs& dialogs, QWidget* parent = nullptr);

    void setScheme(const Scheme& scheme);
    void takeKeys();  // the focus goes to where the stage is worked on

protected:
    void changeEvent(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void showState();
    void showPage();
    [[nodiscard]] QWidget* pageNow() const;

    CheckOffPresenter& m_presenter;
    Scheme m_scheme;
    QStackedLayout* m_stack = nullptr;
    DeskPage* m_desk;
    IdentityPage* m_identity;
    InstructionsPage* m_instructions;
    ItemsPage* m_items;
    HandoverPage* m_handover;
    ManikinPage* m_manikin;
    ClosingPage* m_closing;
    PauseCover* m_cover;
    Notice* m_notice;
};

}  // namespace fb
