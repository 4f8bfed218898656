// What can be handed out, as a menu: this step as PDF, SVG or PNG, the whole site on a page, a blank page
// with its key. Written beside the window's thread, one at a time; says what came of it.
#pragma once

#include <QPushButton>
#include <array>
#include <memory>

#include "app/doors/dialogs.h"
#include "app/doors/library.h"
#include "app/handout/handout.h"

class QAction;

namespace fb {

class LecturePresenter;

class HandoutMenu : public QPushButton {
    Q_OBJECT

public:
    HandoutMenu(LecturePresenter& presenter, Dialogs& dialogs, QWidget* parent = nullptr);

    void useLibrary(const std::shared_ptr<const Library>& library);
    void showState();
    [[nodiscard]] bool isBusy() const { return m_busy; }

Q_SIGNALS:
    void said(const QString& sentence);  // "Writing…", "Written to a.pdf."; faults are the presenter's notice

protected:
    void changeEvent(QEvent* event) override;

private:
    enum What { StepPdf, StepSvg, StepPng, SitePage, BlankPage, WhatCount };

    void say();
    void write(What what);
    [[nodiscard]] QString suggestedName(What what) const;

    LecturePresenter& m_presenter;
    Dialogs& m_dialogs;
    std::shared_ptr<const Library> m_library;
    std::array<QAction*, WhatCount> m_actions{};
    bool m_busy = false;
};

}  // namespace fb
