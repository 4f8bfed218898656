// The areas of the window: see main_window.h.
#include <QCloseEvent>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QStackedWidget>

#include "app/checkoff/check_off_page.h"
#include "app/demonstrate/audience_window.h"
#include "app/demonstrate/speaker_page.h"
#include "app/practice/practice_page.h"
#include "app/practice/run_dialog.h"
#include "app/practice/run_strip.h"
#include "app/profile/screen_scale.h"
#include "app/records/records_page.h"
#include "app/shell/main_window.h"

namespace fb {

void MainWindow::makeArea(Area area)
{
    const Scheme scheme = schemeOf(m_preferences.palette);
    if (area == Area::CheckOff && !m_checkOff) {
        m_checkOff = new CheckOffPage(m_doors.checkOff, m_doors.dialogs, m_stack);
        m_checkOff->setScheme(scheme);
        m_stack->addWidget(m_checkOff);
    }
    if (area == Area::Demonstrate && !m_speaker) {
        m_speaker = new SpeakerPage(m_doors.lecture, m_doors.dialogs, m_doors.screens, m_stack);
        m_speaker->useLibrary(m_doors.lecture.library());
        m_speaker->useNotes(SpeakerNotes::shipped());
        m_speaker->setScheme(scheme);
        m_stack->addWidget(m_speaker);
    }
    if (area == Area::Records && !m_records) {
        m_records = new RecordsPage(m_doors.records, m_doors.dialogs, m_stack);
        m_records->setScheme(scheme);
        m_stack->addWidget(m_records);
    }
}

QWidget* MainWindow::pageOf(Area area) const
{
    switch (area) {
    case Area::Practice: return m_page;
    case Area::CheckOff: return m_checkOff;
    case Area::Demonstrate: return m_speaker;
    case Area::Records: return m_records;
    }
    return m_page;
}

void MainWindow::enter(Area area)
{
    switch (area) {
    case Area::Practice: m_page->setFocus(); break;
    case Area::CheckOff:
        m_doors.checkOff.openDesk();
        m_checkOff->takeKeys();
        break;
    case Area::Demonstrate:
        if (!m_doors.lecture.state().ready)
            m_doors.lecture.openSite(Site::Deltoid);
        m_speaker->setFocus();
        break;
    case Area::Records:
        m_doors.records.enter();
        m_records->setFocus();
        break;
    }
}

void MainWindow::closeEvent(QCloseEvent* event)
{
    // The audience's window does not stay behind alone.
    if (m_speaker)
        m_speaker->audience().close();
    QMainWindow::closeEvent(event);
}

void MainWindow::openArea(Area area)
{
    if (!m_stack || area == m_area || m_doors.checkOff.holdsTheWindow())
        return;
    // Whoever comes back to the records proves anew who they are.
    if (m_area == Area::Records)
        m_doors.records.leave();
    makeArea(area);
    m_area = area;
    m_areas->showArea(area);
    m_run->setVisible(area == Area::Practice);
    QWidget* page = pageOf(area);
    // A hidden page must not make the window wider than the open one needs.
    for (int i = 0; i < m_stack->count(); ++i)
        m_stack->widget(i)->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    page->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    m_stack->setCurrentWidget(page);
    fitHeader();
    measureScreen();
    enter(area);
}

void MainWindow::followCheckOff()
{
    // What a crash cut off is offered before anything else.
    if (!m_offeredRunning && m_doors.checkOff.state().desk.running) {
        m_offeredRunning = true;
        openArea(Area::CheckOff);
    }
    const bool held = m_doors.checkOff.holdsTheWindow();
    m_areas->setFree(!held);
    m_policy->setEnabled(!held);
}

void MainWindow::measureScreen()
{
    const auto scale = m_doors.learner.scaleOf(screenKey(*screen()));
    m_doors.checkOff.setPixelsPerMm(scale ? scale->value() : 0.0);
}

}  // namespace fb
