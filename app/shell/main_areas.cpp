// The areas of the window: see main_window.h.
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QStackedWidget>

#include "app/checkoff/check_off_page.h"
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
    if (area == Area::Records && !m_records) {
        m_records = new RecordsPage(m_doors.records, m_doors.dialogs, m_stack);
        m_records->setScheme(scheme);
        m_stack->addWidget(m_records);
    }
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
    QWidget* page = area == Area::Practice   ? static_cast<QWidget*>(m_page)
                    : area == Area::CheckOff ? static_cast<QWidget*>(m_checkOff)
                                             : static_cast<QWidget*>(m_records);
    // A hidden page must not make the window wider than the open one needs.
    for (int i = 0; i < m_stack->count(); ++i)
        m_stack->widget(i)->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    page->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    m_stack->setCurrentWidget(page);
    fitHeader();
    measureScreen();
    if (area == Area::CheckOff)
        m_doors.checkOff.openDesk();
    if (area == Area::Records)
        m_doors.records.enter();
    if (area == Area::CheckOff)
        m_checkOff->takeKeys();
    else
        page->setFocus();
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
