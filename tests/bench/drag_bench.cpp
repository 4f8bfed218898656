// Dragging over a plate: from a mouse event to the end of the repaint it causes; first in the real window,
// then with a PlateView alone, as large as the window, and a page's part (core's hand laid anew, handles told
// again).
//
//   bench_drag [HEIGHT ...]     default 1080 2160; one row a drag, milliseconds: median, 95 %, most
//
// Wall-clock time, and the UI thread's own computing time, which a busy machine does not stretch.
#include <QApplication>
#include <QTextStream>
#include <vector>

#include "app/canvas/plate_view.h"
#include "app/doors/library.h"
#include "app/look/type.h"
#include "app/scene/target_scene.h"
#include "core/hand/free_hand.h"
#include "core/session/request.h"
#include "tests/bench/drag_measure.h"
#include "tests/bench/page_drag.h"

namespace fb {

namespace drag_bench_detail {

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
        bench::waitFor([this] { return view.isSharp(); });
    }

    void layHand()
    {
        view.setTool(PlateTool::Handles);
        view.setPress({});
        tell();
        view.setCurrentHandle(0);
        bench::waitFor([this] { return view.isHeldSharp(); });
    }

    // The places a handle of the hand has, widget.
    [[nodiscard]] QPointF handle(int id) const { return view.toWidget(m_handles[id].cm); }

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

void measureAll(const Library& library, int height, double textScale, double zoom)
{
    const QSize size(height * 16 / 9, height);
    QTextStream(stdout) << size.width() << "x" << size.height() << ", text " << textScale * 100 << " %, zoom "
                        << zoom << "\n";
    Page page(library, size, textScale);
    page.layHand();
    page.view.zoomBy(zoom);
    bench::waitFor([&] { return page.view.isSharp() && page.view.isHeldSharp(); });
    const double radius = height / 14.0;
    bench::measureDrag(page.view, "palm slides", page.handle(0), radius);
    bench::measureDrag(page.view, "index turns the hand", page.handle(1), radius);
    bench::measureDrag(page.view, "middle finger opens", page.handle(2), radius);
    page.view.setTool(PlateTool::Press);
    bench::measureDrag(page.view, "fingertip sweeps", page.handle(1), radius);
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
    for (const int height : heights) {
        for (const int textPercent : {100, 150})
            fb::bench::measurePage({height * 16 / 9, height}, textPercent, 1.0);
        fb::bench::measurePage({height * 16 / 9, height}, 100, 3.0);
    }
    for (const int height : heights)
        for (const double textScale : {1.0, 1.5})
            fb::drag_bench_detail::measureAll(*library, height, textScale, 1.0);
    fb::drag_bench_detail::measureAll(*library, 1080, 1.0, 3.0);
    return 0;
}
