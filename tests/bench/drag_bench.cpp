// Dragging over a plate: from a mouse event to the end of the repaint it causes, with a real PlateView and
// the page's part (core's hand laid anew, handles told again) in it.
//
//   bench_drag [HEIGHT ...]     default 1080 2160; one row a drag, milliseconds
//
// Wall-clock time, and the UI thread's own computing time, which a busy machine does not stretch.
#include <QApplication>
#include <QElapsedTimer>
#include <QMouseEvent>
#include <QTextStream>
#include <QThread>
#include <algorithm>
#include <ctime>
#include <functional>
#include <vector>

#include "app/canvas/plate_view.h"
#include "app/doors/library.h"
#include "app/look/type.h"
#include "app/scene/target_scene.h"
#include "core/hand/free_hand.h"
#include "core/session/request.h"

namespace fb {

namespace drag_bench_detail {

constexpr int kMoves = 300;
const HandSize kHand{Cm{18.4}, Cm{1.7}, 0.56, 0.6, 0.97, 0.1, 0.45};

QPointF toQt(Point p) { return {p.x, p.y}; }
Point toCore(QPointF p) { return {p.x(), p.y()}; }

// What a page does with a hand under construction.
class Page : public QObject {
public:
    Page(const Library& library, QSize size, double textScale) : m_art(library.plate(View::OpenHand).value())
    {
        const Request request = [] {
            Request made = requestFrom(1, 0, {SiteSet::only(Site::Ventrogluteal), false});
            made.view = View::HipSide;
            return made;
        }();
        const Atlas atlas = library.atlas(request.view).value();
        const auto plate = library.plate(request.view).value();
        const BodyMap map = bodyMap(atlas, request.view, request.patient).value();
        const Policy& policy = library.defaultPolicy();
        const Target target =
            locate(atlas, policy, request.patient, policy.convention(request.site), request.view).value();
        view.resize(size);
        view.setFont(fontOf(Type::Body, textScale));
        view.setPicture(std::make_shared<Picture>(
            Picture{plate, movedInk(*plate, map, request.patient), request.skinTone}));
        view.setScene(targetScene(target));
        view.setFlags(
            {{toQt(target.ideal) + QPointF(6, 5), QStringLiteral("Iliac crest"), {}},
             {toQt(target.ideal) + QPointF(-7, 3), QStringLiteral("Anterior superior iliac spine"), {}},
             {toQt(target.ideal) + QPointF(3, -8), QStringLiteral("Greater trochanter"), {}}});
        m_free = {handFor(request.patient.side()), target.ideal, Degrees{120.0}, Degrees{30.0}};
        connect(&view, &PlateView::pressed, this, &Page::press);
        connect(&view, &PlateView::handleMoved, this, &Page::move);
        view.show();
        waitFor([this] { return view.isSharp(); });
    }

    void layHand()
    {
        view.setTool(PlateTool::Handles);
        view.setPress({});
        tell();
        view.setCurrentHandle(0);
        waitFor([this] { return view.isHeldSharp(); });
    }

    // The places a handle of the hand has, widget.
    [[nodiscard]] QPointF handle(int id) const { return view.toWidget(m_handles[id].cm); }

    void waitFor(const std::function<bool()>& done) const
    {
        QElapsedTimer clock;
        clock.start();
        while (!done() && clock.elapsed() < 20000) {
            QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
            QThread::msleep(2);
        }
    }

    PlateView view;

private:
    void tell()
    {
        const HandPose pose = poseOf(m_free, kHand);
        m_handles = {{0, toQt(m_free.palm), QStringLiteral("Palm"), HandleShape::Grip},
                     {1, toQt(pose.indexTip), QStringLiteral("Index fingertip"), HandleShape::Turn},
                     {2, toQt(pose.middleTip), QStringLiteral("Middle fingertip"), HandleShape::Point}};
        view.setHandles(m_handles);
        view.setHeldHand(std::make_shared<const HandLook>(HandLook{m_art, pose}));
    }

    void move(int id, QPointF cm)
    {
        const Point to = toCore(cm);
        m_free = id == 0   ? slid(m_free, to)
                 : id == 1 ? turnedTo(m_free, kHand, to)
                           : openedTo(m_free, kHand, to);
        tell();
    }

    void press(QPointF cm)
    {
        const int step = static_cast<int>(std::abs(cm.x() + cm.y()) * 2.0) % 3;
        PressLook look{
            cm, 1.7, Firmness{step}, BoneShape{step == 2 ? 2 : 0}, Clearness::Plain, {}, QPointF(1, 0),
            {}, {}};
        look.words = step == 2 ? QStringLiteral("Hard, an edge") : QStringLiteral("Soft");
        view.setPress(look);
    }

    std::shared_ptr<const Plate> m_art;
    FreeHand m_free;
    QVector<HandleLook> m_handles;
};

void send(PlateView& view, QEvent::Type type, QPointF at)
{
    const bool moves = type == QEvent::MouseMove;
    QMouseEvent event(type, at, view.mapToGlobal(at), moves ? Qt::NoButton : Qt::LeftButton,
                      type == QEvent::MouseButtonRelease ? Qt::NoButton : Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&view, &event);
}

double computedMs()
{
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) / 1e6;
}

double percentile(std::vector<double> times, double share)
{
    std::ranges::sort(times);
    return times[static_cast<std::size_t>(share * static_cast<double>(times.size() - 1))];
}

// Counts the paintings that really took place.
class PaintCounter : public QObject {
public:
    bool eventFilter(QObject*, QEvent* event) override
    {
        painted += event->type() == QEvent::Paint ? 1 : 0;
        return false;
    }
    int painted = 0;
};

void measure(Page& page, const char* what, QPointF from, double radius)
{
    PaintCounter counter;
    page.view.installEventFilter(&counter);
    std::vector<double> times, computed;
    QElapsedTimer clock;
    send(page.view, QEvent::MouseButtonPress, from);
    QCoreApplication::processEvents();
    counter.painted = 0;
    for (int i = 1; i <= kMoves; ++i) {
        const double angle = 0.05 * i;
        const QPointF at = from + QPointF(std::sin(angle), std::cos(angle) - 1.0) * radius;
        const double before = computedMs();
        clock.start();
        send(page.view, QEvent::MouseMove, at);
        QCoreApplication::processEvents();
        computed.push_back(computedMs() - before);
        times.push_back(static_cast<double>(clock.nsecsElapsed()) / 1e6);
        QThread::msleep(4);
    }
    const int painted = counter.painted;
    send(page.view, QEvent::MouseButtonRelease, page.view.rect().center());
    clock.start();
    page.waitFor([&] { return page.view.isHeldSharp(); });
    const auto sharp = clock.elapsed();
    QTextStream(stdout) << QStringLiteral(
                               "  %1  p50 %2  p95 %3  max %4  computing p95 %5  painted %6 of %7  sharp "
                               "after %8\n")
                               .arg(QLatin1StringView(what), -22)
                               .arg(percentile(times, 0.5), 6, 'f', 2)
                               .arg(percentile(times, 0.95), 6, 'f', 2)
                               .arg(percentile(times, 1.0), 6, 'f', 2)
                               .arg(percentile(computed, 0.95), 6, 'f', 2)
                               .arg(painted)
                               .arg(kMoves)
                               .arg(sharp);
    page.view.removeEventFilter(&counter);
}

void measureAll(const Library& library, int height, double textScale, double zoom)
{
    const QSize size(height * 16 / 9, height);
    QTextStream(stdout) << size.width() << "x" << size.height() << ", text " << textScale * 100 << " %, zoom "
                        << zoom << "\n";
    Page page(library, size, textScale);
    page.layHand();
    page.view.zoomBy(zoom);
    page.waitFor([&] { return page.view.isSharp() && page.view.isHeldSharp(); });
    const double radius = height / 14.0;
    measure(page, "palm slides", page.handle(0), radius);
    measure(page, "index turns the hand", page.handle(1), radius);
    measure(page, "middle finger opens", page.handle(2), radius);
    page.view.setTool(PlateTool::Press);
    measure(page, "fingertip sweeps", page.handle(1), radius);
}

}  // namespace drag_bench_detail

}  // namespace fb

int main(int argc, char** argv)
{
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    const auto library = fb::Library::load().value();
    std::vector<int> heights;
    for (int i = 1; i < argc; ++i)
        heights.push_back(std::atoi(argv[i]));
    if (heights.empty())
        heights = {1080, 2160};
    for (const int height : heights)
        for (const double textScale : {1.0, 1.5})
            fb::drag_bench_detail::measureAll(*library, height, textScale, 1.0);
    fb::drag_bench_detail::measureAll(*library, 1080, 1.0, 3.0);
    return 0;
}
