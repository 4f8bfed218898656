#include "app/canvas/scene_layer.h"

#include <gtest/gtest.h>

#include <QPainter>

#include "tests/support/sample_picture.h"

namespace scene_layer_test {

namespace {

using namespace fb;

PlateFace face()
{
    PlateFace made;
    made.widget = QRectF(0, 0, 500, 400);
    made.frame = ViewFrame::whole(sheetOf(made.widget), QRectF(-10, -10, 20, 20));
    made.scheme = schemeOf(PaletteKind::Light);
    made.hasPicture = true;
    made.scene = {{Role::Landmark, Figure::Point, {{0, 3}}, "Acromion", {}},
                  {Role::Construction, Figure::Line, {{0, 0}, {3, 1}}, {}, {}}};
    return made;
}

QImage painted(const PlateFace& made)
{
    QImage image(made.widget.size().toSize(), QImage::Format_RGB32);
    QPainter painter(&image);
    paintFace(painter, made);
    return image;
}

TEST(SceneLayerTest, ALayerShowsWhatThePaintedSceneShows)
{
    PlateFace made = face();
    made.tools.flags = {{{-4, 2}, "Deltoid", {}}};
    const QImage wanted = painted(made);
    SceneLayer layer;
    made.sceneLayer = layer.of(made, 1.0);
    const QImage got = painted(made);
    for (int y = 0; y < wanted.height(); ++y)
        for (int x = 0; x < wanted.width(); ++x)
            ASSERT_NEAR(qGray(wanted.pixel(x, y)), qGray(got.pixel(x, y)), 45) << x << "," << y;
}

TEST(SceneLayerTest, ItIsPaintedAnewOnlyWhenSomethingItShowsChanges)
{
    SceneLayer layer;
    PlateFace made = face();
    const auto first = layer.of(made, 1.0).cacheKey();
    made.tools.handles = {{0, {0, 0}, "Palm", HandleShape::Grip}};
    made.crosshair = QPointF(1, 1);
    made.scene = face().scene;  // another vector of the same shapes
    EXPECT_EQ(layer.of(made, 1.0).cacheKey(), first);
    std::vector<PlateFace> others(6, made);
    others[0].scene[1].points[1] = {3, 2};
    others[1].tools.flags = {{{-4, 2}, "Deltoid", {}}};
    others[2].mark = QPointF(1, 1);
    others[3].scheme = schemeOf(PaletteKind::Dark);
    others[4].textScale = 1.5;
    others[5].frame = made.frame.zoomedAt({250, 200}, 2.0);
    for (const PlateFace& other : others) {
        const auto before = layer.of(made, 1.0).cacheKey();
        EXPECT_NE(layer.of(other, 1.0).cacheKey(), before);
    }
    EXPECT_EQ(layer.of(made, 2.0).size(), 2 * made.frame.sheet().size().toSize());
}

// Two figures and a word of a flag beside them.
PlateFace looseFace(double end)
{
    PlateFace made = face();
    made.scene = {{Role::Field, Figure::Closed, {{-3, -3}, {3, -3}, {end, 3}}, {}, "Field"},
                  {Role::Construction, Figure::Line, {{0, 0}, {end, 1}}, {}, "Line"},
                  {Role::Newest, Figure::Point, {{end, -2}}, {}, {}}};
    made.tools.flags = {{{end - 1, 1}, "Deltoid", {}}};
    return made;
}

TEST(SceneLayerTest, FiguresThatNoLabelMindsArePaintedUnderTheLayerAsTheyWouldBeWithoutOne)
{
    PlateFace made = looseFace(5);
    const QImage wanted = painted(made);
    SceneLayer layer;
    static_cast<void>(layer.of(looseFace(3), 1.0));
    made.sceneLayer = layer.of(made, 1.0);
    const QImage got = painted(made);
    for (int y = 0; y < wanted.height(); ++y)
        for (int x = 0; x < wanted.width(); ++x)
            ASSERT_NEAR(qGray(wanted.pixel(x, y)), qGray(got.pixel(x, y)), 45) << x << "," << y;
}

TEST(SceneLayerTest, MovingSuchFiguresLeavesTheLayerAsItIs)
{
    SceneLayer layer;
    PlateFace made = looseFace(5);
    const auto first = layer.of(made, 1.0).cacheKey();
    made.scene[1].points[1] = {6, 6};
    EXPECT_EQ(layer.of(made, 1.0).cacheKey(), first);
    made.scene.clear();
    EXPECT_EQ(layer.of(made, 1.0).cacheKey(), first);
    made.scene = face().scene;
    EXPECT_NE(layer.of(made, 1.0).cacheKey(), first);
}

TEST(SceneLayerTest, AnythingALabelMayMindIsNotLoose)
{
    EXPECT_TRUE(isLoose({}));
    EXPECT_TRUE(isLoose(looseFace(5).scene));
    Scene labelled = looseFace(5).scene;
    labelled[1].label = "Line";
    EXPECT_FALSE(isLoose(labelled));
    for (const Role role :
         {Role::Region, Role::Strike, Role::Near, Role::Landmark, Role::Ideal, Role::Arrow}) {
        Scene other = looseFace(5).scene;
        other[0].role = role;
        EXPECT_FALSE(isLoose(other));
    }
}

TEST(SceneLayerTest, TheirBoxHoldsAllThatTheyPaint)
{
    for (const double textScale : {1.0, 2.0}) {
        PlateFace made = looseFace(5);
        made.scheme = schemeOf(PaletteKind::Projector);
        made.textScale = textScale;
        made.tools.flags.clear();
        const QImage got = painted(made);
        const QRect box = looseBox(made.scene, made.frame.cmToWidget(), textScale).toAlignedRect();
        made.scene.clear();
        const QImage bare = painted(made);
        EXPECT_NE(got, bare);
        for (int y = 0; y < got.height(); ++y)
            for (int x = 0; x < got.width(); ++x)
                ASSERT_TRUE(got.pixel(x, y) == bare.pixel(x, y) || box.contains(x, y)) << x << "," << y;
    }
}

TEST(SceneLayerTest, NothingToShowIsNoImage)
{
    SceneLayer layer;
    PlateFace empty = face();
    empty.scene.clear();
    EXPECT_TRUE(layer.of(empty, 1.0).isNull());
    PlateFace blank = face();
    blank.hasPicture = false;
    EXPECT_TRUE(layer.of(blank, 1.0).isNull());
}

TEST(SceneLayerTest, FlagNamesAreLabelsAmongTheOthers)
{
    PlateFace made = face();
    made.scene.clear();
    const QImage bare = painted(made);
    made.tools.flags = {{{0, 3}, "Acromion", {}}, {{0.5, 3.2}, "Armpit level", {}}};
    const QImage flagged = painted(made);
    int changed = 0;
    for (int y = 0; y < 400; ++y)
        for (int x = 0; x < 500; ++x)
            changed += bare.pixel(x, y) != flagged.pixel(x, y) ? 1 : 0;
    EXPECT_GT(changed, 600);
}

TEST(SceneLayerTest, ScenesAreTheSameByWhatTheyShow)
{
    Scene other = face().scene;
    EXPECT_TRUE(sameScene(face().scene, other));
    other[0].description = "Acromion, here";
    EXPECT_FALSE(sameScene(face().scene, other));
    EXPECT_FALSE(sameScene(face().scene, {}));
}

}  // namespace

}  // namespace scene_layer_test
