// What a real window shows while a hand is dragged over the plate.
#include <gtest/gtest.h>

#include <QPaintEvent>
#include <QPainter>
#include <QTest>
#include <algorithm>
#include <array>
#include <cmath>

#include "app/canvas/plate_view.h"
#include "tests/support/core_atlas.h"
#include "tests/support/sample_picture.h"

namespace plate_view_drag_test {

namespace {

using namespace fb;

// Of any channel, anywhere.
int mostApart(const QImage& a, const QImage& b)
{
    int most = 0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x)
            for (int (*part)(QRgb) : std::array<int (*)(QRgb), 3>{qRed, qGreen, qBlue})
                most = std::max(most, std::abs(part(a.pixel(x, y)) - part(b.pixel(x, y))));
    return most;
}

// What a window shows of a view: of every picture only the parts that were painted.
class Shown : public QObject {
public:
    explicit Shown(QWidget& view) : m_view(view), m_image(view.grab().toImage())
    {
        view.installEventFilter(this);
    }
    bool eventFilter(QObject*, QEvent* event) override
    {
        if (event->type() == QEvent::Paint && !m_grabs)
            m_painted |= static_cast<QPaintEvent*>(event)->region();
        return false;
    }
    // Most that any channel of any pixel is off the picture painted from scratch.
    [[nodiscard]] int off()
    {
        m_grabs = true;
        const QImage whole = m_view.grab().toImage();
        m_grabs = false;
        if (!m_painted.isEmpty() && m_painted.boundingRect() != m_view.rect())
            ++parts;
        QPainter painter(&m_image);
        painter.setClipRegion(m_painted);
        painter.drawImage(0, 0, whole);
        painter.end();
        m_painted = {};
        return mostApart(m_image, whole);
    }
    int parts = 0;  // pictures of which less than all was painted

private:
    QWidget& m_view;
    QImage m_image;
    QRegion m_painted;
    bool m_grabs = false;
};

TEST(PlateViewDragTest, AfterADragTheWindowShowsWhatPaintingItFromScratchShows)
{
    PlateView view;
    view.resize(520, 480);
    view.setPicture(test::samplePicture());
    view.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&view));
    ASSERT_TRUE(QTest::qWaitFor([&view] { return view.isSharp(); }));
    view.setTool(PlateTool::Handles);
    const auto pixel = [&view](double x, double y) { return view.toWidget({x, y}).toPoint(); };
    view.setFlags({{{3, 4}, "Iliac crest", {}}, {{-6, -5}, "Trochanter", {}}});
    const auto lay = [&view](QPointF at) {
        HandLook look;
        look.art = {std::shared_ptr<const Plate>(), &test::plateOf(View::OpenHand)};
        look.pose.hand = Side::Left;
        look.pose.wrist = {at.x(), at.y() - 3};
        look.pose.fork = {at.x() + 0.3 * at.y(), at.y() + 1};
        look.pose.opening = Degrees{30.0 + at.x()};
        view.setScene({{Role::Construction, Figure::Line, {at, {3, -4}}, {}, "Line"},
                       {Role::Field, Figure::Closed, {at, {3, -4}, {6, 2}}, {}, "Field"},
                       {Role::Newest, Figure::Point, {QPointF(-7, -7) - at * 0.4}, {}, {}}});
        view.setHandles(
            {{4, at, "Palm", HandleShape::Grip}, {9, at + QPointF(-3, 2), "Tip", HandleShape::Turn}});
        view.setCurrentHandle(4);
        view.setHeldHand(std::make_shared<const HandLook>(look));
    };
    QObject::connect(&view, &PlateView::handleMoved, &view, [&](int, QPointF cm) { lay(cm); });
    lay({1, 1});
    QCoreApplication::processEvents();
    Shown shown(view);
    QTest::mousePress(&view, Qt::LeftButton, {}, pixel(1, 1));
    for (int i = 1; i <= 12; ++i) {
        QTest::mouseMove(&view, pixel(1 + 4 * std::sin(0.4 * i), 1 + 3 * std::cos(0.7 * i)));
        QCoreApplication::processEvents();
        EXPECT_EQ(shown.off(), 0) << "move " << i;
    }
    EXPECT_GE(shown.parts, 10);
    QTest::mouseRelease(&view, Qt::LeftButton, {}, pixel(2, 2));
    ASSERT_TRUE(QTest::qWaitFor([&view] { return view.isHeldSharp(); }));
    QCoreApplication::processEvents();
    EXPECT_EQ(shown.off(), 0);
}

}  // namespace

}  // namespace plate_view_drag_test
