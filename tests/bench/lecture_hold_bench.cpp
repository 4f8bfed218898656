// How long one event holds the window's thread in a demonstration: the speaker's page at 1920x1080 and the
// audience's window beside it, both painted.
//
//   bench_hold [HEIGHT ...]       of the audience's picture; default 1080 2160; a row a site and deed
//
// Longest: from the beginning of an event to its end. All: the most that all threads computed meanwhile,
// which a busy machine does not stretch; own: the window's thread; then what event it was.
#include <QApplication>
#include <QElapsedTimer>
#include <QMetaEnum>
#include <QMouseEvent>
#include <QTextStream>
#include <algorithm>
#include <cmath>
#include <ctime>
#include <functional>

#include "app/demonstrate/audience_window.h"
#include "app/demonstrate/lecture_view.h"
#include "app/demonstrate/speaker_page.h"
#include "app/lecture/body_worker.h"
#include "app/lecture/lecture_presenter.h"
#include "app/look/style.h"
#include "tests/support/fake_screens.h"

namespace fb {

namespace hold_bench_detail {

double computedMs(clockid_t of)
{
    timespec now{};
    clock_gettime(of, &now);
    return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) / 1e6;
}

// Measures every event it hands on; one within another counts as part of that.
class MeasuringApplication : public QApplication {
public:
    using QApplication::QApplication;

    double longest = 0.0;         // ms
    double all = 0.0, own = 0.0;  // the most, ms
    QString event;                // the one with the most

    void forget() { longest = all = own = 0.0; }

    bool notify(QObject* receiver, QEvent* event_) override
    {
        if (m_isWithin)
            return QApplication::notify(receiver, event_);
        m_isWithin = true;
        const QEvent::Type type = event_->type();
        const QString name =
            QString::fromLatin1(receiver->metaObject()->className()) + ' ' + receiver->objectName();
        QElapsedTimer clock;
        clock.start();
        const double ownBefore = computedMs(CLOCK_THREAD_CPUTIME_ID);
        const double before = computedMs(CLOCK_PROCESS_CPUTIME_ID);
        const bool handled = QApplication::notify(receiver, event_);
        const double spent = computedMs(CLOCK_PROCESS_CPUTIME_ID) - before;
        own = std::max(own, computedMs(CLOCK_THREAD_CPUTIME_ID) - ownBefore);
        longest = std::max(longest, static_cast<double>(clock.nsecsElapsed()) / 1e6);
        if (spent > all) {
            all = spent;
            event = QString::fromLatin1(QMetaEnum::fromType<QEvent::Type>().valueToKey(type)) + ' ' + name;
        }
        m_isWithin = false;
        return handled;
    }

private:
    bool m_isWithin = false;
};

MeasuringApplication& application() { return *static_cast<MeasuringApplication*>(qApp); }

void waitFor(const std::function<bool()>& done)
{
    QElapsedTimer clock;
    clock.start();
    while (!done() && clock.elapsed() < 20000)
        QCoreApplication::processEvents(QEventLoop::AllEvents, 2);
}

void spin(int ms)
{
    QElapsedTimer clock;
    clock.start();
    waitFor([&] { return clock.elapsed() >= ms; });
}

class Demonstration {
public:
    Demonstration(const std::shared_ptr<const Library>& library, QSize audience)
        : presenter(m_bodies, m_clock),
          m_screens({{QStringLiteral("laptop"), QRect(0, 0, 1920, 1080)},
                     {QStringLiteral("projector"), QRect(QPoint(1920, 0), audience)}}),
          m_page(presenter, m_dialogs, m_screens)
    {
        m_page.setScheme(schemeOf(PaletteKind::Projector));
        presenter.useLibrary(library, library->defaultPolicy());
        m_page.useLibrary(library);
        m_page.resize(1920, 1080);
        m_page.show();
        m_page.audience().open(&m_page);
        m_picture = m_page.findChild<LectureView*>(QStringLiteral("lecturePicture"));
        presenter.setCalm(true);
    }

    void rest()
    {
        waitFor([this] { return m_picture->isSharp() && m_page.audience().view().isSharp(); });
        spin(60);
    }

    // Every step is gone to twice, the second time with its words ready.
    void throughSteps()
    {
        for (const bool isWarm : {false, true}) {
            presenter.goTo(0);
            rest();
            spin(isWarm ? 300 : 0);
            if (isWarm)
                application().forget();
            while (presenter.state().step + 1 < static_cast<int>(presenter.state().steps.size())) {
                QKeyEvent key(QEvent::KeyPress, Qt::Key_PageDown, Qt::NoModifier);
                QCoreApplication::sendEvent(m_picture, &key);
                rest();
            }
        }
    }

    // Over the plate, with a button down where something is drawn.
    void moveAbout(bool isPressed)
    {
        const QPointF from(m_picture->width() * 0.4, m_picture->height() * 0.4);
        const auto send = [&](QEvent::Type type, QPointF at) {
            const Qt::MouseButtons held = isPressed ? Qt::LeftButton : Qt::NoButton;
            QMouseEvent event(type, at, m_picture->mapToGlobal(at),
                              type == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton, held,
                              Qt::NoModifier);
            QCoreApplication::sendEvent(m_picture, &event);
            QCoreApplication::processEvents();
        };
        if (isPressed)
            send(QEvent::MouseButtonPress, from);
        constexpr int kMoves = 60;
        for (int i = 0; i < kMoves; ++i) {
            send(QEvent::MouseMove, from + QPointF(4.0 * i, 30.0 * std::sin(i / 6.0)));
            spin(4);
        }
        if (isPressed)
            send(QEvent::MouseButtonRelease, from);
        spin(100);
    }

private:
    SystemClock m_clock;
    BodyWorker m_bodies;

public:
    LecturePresenter presenter;

private:
    SystemDialogs m_dialogs;
    test::FakeScreens m_screens;
    SpeakerPage m_page;
    LectureView* m_picture = nullptr;
};

void measure(Demonstration& shown, Site site)
{
    QTextStream out(stdout);
    const auto tell = [&](const char* what) {
        out << QStringLiteral("  %1 %2: longest %3, all %4, own %5 (%6)\n")
                   .arg(QLatin1StringView(wordOf(site).data()), -16)
                   .arg(QLatin1StringView(what), -12)
                   .arg(application().longest, 6, 'f', 1)
                   .arg(application().all, 6, 'f', 1)
                   .arg(application().own, 6, 'f', 1)
                   .arg(application().event);
        out.flush();
        application().forget();
    };
    shown.presenter.openSite(site);
    shown.rest();
    spin(1500);
    shown.throughSteps();
    tell("steps");
    // At what lies around: the fullest of all.
    const auto& steps = shown.presenter.state().steps;
    const auto fullest = std::ranges::find(steps, LectureStepKind::Hazards, &LectureStep::kind);
    shown.presenter.goTo(static_cast<int>(fullest - steps.begin()));
    shown.rest();
    const std::pair<LectureTool, const char*> tools[]{
        {LectureTool::Point, "pointer"}, {LectureTool::Magnifier, "lens"}, {LectureTool::Pen, "pen"}};
    for (const auto& [tool, what] : tools) {
        shown.presenter.setTool(tool);
        shown.rest();
        application().forget();
        shown.moveAbout(tool == LectureTool::Pen);
        tell(what);
    }
    shown.presenter.setTool(LectureTool::Point);
    shown.presenter.setSpotlight(true);
    shown.rest();
    application().forget();
    shown.moveAbout(false);
    tell("spotlight");
    shown.presenter.setSpotlight(false);
    shown.presenter.wipe();
    shown.rest();
    application().forget();
}

}  // namespace hold_bench_detail

}  // namespace fb

int main(int argc, char** argv)
{
    using namespace fb::hold_bench_detail;
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    MeasuringApplication application(argc, argv);
    const fb::Scheme scheme = fb::schemeOf(fb::PaletteKind::Projector);
    fb::applyStyle(application, scheme, 1.0);
    const auto library = fb::Library::load().value();
    std::vector<int> heights;
    for (const QString& height : QApplication::arguments().mid(1))
        heights.push_back(height.toInt());
    if (heights.empty())
        heights = {1080, 2160};
    for (const int height : heights) {
        QTextStream(stdout) << height * 16 / 9 << "x" << height << "\n";
        Demonstration shown(library, {height * 16 / 9, height});
        for (const fb::Site site : {fb::Site::Deltoid, fb::Site::VastusLateralis, fb::Site::Ventrogluteal})
            measure(shown, site);
    }
    return 0;
}
