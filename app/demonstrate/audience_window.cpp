#include "app/demonstrate/audience_window.h"

#include <QCloseEvent>
#include <QGuiApplication>
#include <QScreen>
#include <QVBoxLayout>
#include <algorithm>

#include "app/demonstrate/lecture_view.h"

namespace fb {

namespace audience_detail {

// nullptr for a place that is no screen of this machine's.
QScreen* systemScreen(const ScreenPlace& place)
{
    const auto screens = QGuiApplication::screens();
    const auto found = std::ranges::find_if(screens, [&place](const QScreen* screen) {
        return screen->name() == place.name && screen->geometry() == place.geometry;
    });
    return found == screens.end() ? nullptr : *found;
}

// To the same place on the other screen, as far as its size allows; full or maximised it stays so.
void moveWindow(QWidget& window, const QRect& from, const QRect& to)
{
    const Qt::WindowStates was = window.windowState();
    const bool fills = was.testFlag(Qt::WindowMaximized) || was.testFlag(Qt::WindowFullScreen);
    if (fills)
        window.showNormal();
    window.resize(window.size().boundedTo(to.size()));
    const QPoint most = to.bottomRight() + QPoint(1, 1) - QPoint(window.width(), window.height());
    const QPoint wished = window.pos() - from.topLeft() + to.topLeft();
    window.move(std::clamp(wished.x(), to.left(), most.x()), std::clamp(wished.y(), to.top(), most.y()));
    if (fills) {
        window.setWindowState(was);
        window.show();
    }
}

}  // namespace audience_detail

AudienceWindow::AudienceWindow(LecturePresenter& presenter, Screens& screens)
    : QWidget(nullptr, Qt::Window | Qt::FramelessWindowHint),
      m_screens(screens),
      m_view(new LectureView(presenter, LectureView::For::Audience, this))
{
    setObjectName(QStringLiteral("audienceWindow"));
    // The program ends with the speaker's window.
    setAttribute(Qt::WA_QuitOnClose, false);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->addWidget(m_view);
    setFocusProxy(m_view);
    connect(m_view, &LectureView::asksSwap, this, &AudienceWindow::swap);
    connect(m_view, &LectureView::asksClose, this, &AudienceWindow::close);
    connect(&m_screens, &Screens::changed, this, &AudienceWindow::screensChanged);
    retranslate();
}

void AudienceWindow::retranslate() { setWindowTitle(tr("Fingerbreadth: the audience's picture")); }

void AudienceWindow::setScheme(const Scheme& scheme) { m_view->setScheme(scheme); }

ScreenPlace AudienceWindow::speakersScreen() const
{
    const auto screens = m_screens.all();
    if (!m_speaker)
        return screens.front();
    const QPoint middle = m_speaker->window()->frameGeometry().center();
    const auto found = std::ranges::find_if(
        screens, [middle](const ScreenPlace& place) { return place.geometry.contains(middle); });
    return found == screens.end() ? screens.front() : *found;
}

// Two screens that show the same are one.
QVector<ScreenPlace> AudienceWindow::otherScreens() const
{
    const QRect home = speakersScreen().geometry;
    QVector<ScreenPlace> others = m_screens.all();
    others.removeIf([&home](const ScreenPlace& place) { return place.geometry.intersects(home); });
    return others;
}

void AudienceWindow::open(QWidget* speaker)
{
    m_speaker = speaker;
    go(otherScreens().isEmpty() ? Where::OverSpeaker : Where::OtherScreen);
}

void AudienceWindow::close() { go(Where::Closed); }

void AudienceWindow::swap()
{
    switch (m_where) {
    case Where::Closed: return;
    case Where::OverSpeaker: return go(Where::PutAway);
    case Where::PutAway: return go(Where::OverSpeaker);
    case Where::OtherScreen: break;
    }
    if (m_speaker)
        audience_detail::moveWindow(*m_speaker->window(), speakersScreen().geometry, geometry());
    go(Where::OtherScreen);
}

void AudienceWindow::go(Where where)
{
    const bool isNew = where != m_where;
    m_where = where;
    const bool covers = where == Where::OverSpeaker;
    setAttribute(Qt::WA_ShowWithoutActivating, !covers);
    // Whoever has but this picture before them points and draws on it.
    m_view->setTakesPointer(covers);
    if (where == Where::OtherScreen) {
        const auto others = otherScreens();
        const auto same = std::ranges::find(others, geometry(), &ScreenPlace::geometry);
        showOn(same == others.end() ? others.front() : *same);
    } else if (covers) {
        showOn(speakersScreen());
        raise();
        activateWindow();
        m_view->setFocus();
    } else {
        hide();
    }
    if (!covers && isNew && m_speaker && m_speaker->isVisible())
        m_speaker->activateWindow();
    if (isNew)
        Q_EMIT moved();
}

// A window that fills one screen has to be put away before it can fill another.
void AudienceWindow::showOn(const ScreenPlace& place)
{
    if (isVisible() && geometry() == place.geometry)
        return;
    hide();
    setWindowState(Qt::WindowNoState);
    QScreen* screen = audience_detail::systemScreen(place);
    if (screen)
        setScreen(screen);
    setGeometry(place.geometry);
    screen ? showFullScreen() : show();
}

void AudienceWindow::screensChanged()
{
    if (m_where == Where::Closed)
        return;
    const bool hasOther = !otherScreens().isEmpty();
    if (hasOther) {
        go(Where::OtherScreen);
    } else if (m_where == Where::OtherScreen) {
        go(Where::PutAway);
        Q_EMIT screenLost();
    } else if (m_where == Where::OverSpeaker) {
        showOn(speakersScreen());
    }
}

void AudienceWindow::closeEvent(QCloseEvent* event)
{
    close();
    event->accept();
}

void AudienceWindow::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange)
        retranslate();
    QWidget::changeEvent(event);
}

}  // namespace fb
