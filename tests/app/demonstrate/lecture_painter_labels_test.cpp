#include "app/demonstrate/lecture_painter_labels.h"

#include <gtest/gtest.h>

#include <QFontMetricsF>

#include "app/demonstrate/lecture_face.h"

namespace fb::test::lecture_painter_labels_test {

const QRectF kPaper(0, 0, 900, 360);

SceneShape pointShape(QPointF at, const QString& label, Role role = Role::Landmark)
{
    return {role, Figure::Point, {at}, label, {}};
}
SceneShape square(QRectF box, const QString& label, Role role)
{
    return {role,
            Figure::Closed,
            {box.topLeft(), box.topRight(), box.bottomRight(), box.bottomLeft()},
            label,
            {}};
}

QVector<LectureLabel> placed(const Scene& scene, const QVector<QRectF>& taken = {},
                             PaletteKind palette = PaletteKind::Light)
{
    return lectureLabels(scene, schemeOf(palette), QTransform(), kPaper, taken);
}

void expectApart(const QVector<LectureLabel>& labels)
{
    for (qsizetype i = 0; i < labels.size(); ++i) {
        EXPECT_TRUE(kPaper.contains(labels[i].placed.box));
        for (qsizetype k = i + 1; k < labels.size(); ++k)
            EXPECT_FALSE(labels[i].placed.box.intersects(labels[k].placed.box));
    }
}

TEST(LecturePainterLabelsTest, ContrastIsThatOfTheStandard)
{
    EXPECT_NEAR(contrastOf(Qt::black, Qt::white), 21.0, 1e-9);
    EXPECT_NEAR(contrastOf(Qt::white, Qt::black), 21.0, 1e-9);
    EXPECT_NEAR(contrastOf(Qt::red, Qt::red), 1.0, 1e-9);
    // From the standard's own examples: mid grey 777777 on white is 4.48.
    EXPECT_NEAR(contrastOf(QColor(0x77, 0x77, 0x77), Qt::white), 4.48, 0.005);
}

TEST(LecturePainterLabelsTest, EveryInkOnPaperIsLegible)
{
    for (const PaletteKind kind : kPaletteKinds) {
        const Scheme scheme = schemeOf(kind);
        EXPECT_GE(contrastOf(scheme.ink, scheme.paper), kLeastContrast);
        for (int i = 0; i < kRoleCount; ++i)
            EXPECT_GE(contrastOf(legible(scheme.of(static_cast<Role>(i)), scheme), scheme.paper),
                      kLeastContrast);
        EXPECT_EQ(legible(scheme.paper, scheme), scheme.ink);
    }
}

TEST(LecturePainterLabelsTest, AreasAndNamesAndNumbersHaveTheirPlaces)
{
    const Scene scene{square({100, 50, 300, 120}, "Belly", Role::Strike),
                      pointShape({500, 200}, "Greater trochanter"),
                      {Role::Newest, Figure::Line, {{600, 60}, {800, 60}}, "Base", {}},
                      pointShape({700, 250}, "12", Role::MarkUnsafe)};
    const auto labels = placed(scene);
    ASSERT_EQ(labels.size(), 4);
    expectApart(labels);
    EXPECT_TRUE(QRectF(100, 50, 300, 120).contains(labels[0].placed.box));
    EXPECT_FALSE(labels[3].placed.hasLeader);
    EXPECT_LT(QLineF(labels[3].placed.box.center(), {700, 250}).length(), 60.0);
}

TEST(LecturePainterLabelsTest, ALinesNameStandsBesideItsMiddle)
{
    const Scene scene{{Role::Newest, Figure::Line, {{200, 180}, {700, 180}}, "Outer line", {}}};
    const auto labels = placed(scene);
    ASSERT_EQ(labels.size(), 1);
    const QRectF box = labels[0].placed.box;
    EXPECT_NEAR(box.center().x(), 450.0, 30.0);
    EXPECT_FALSE(box.contains(QPointF(box.center().x(), 180.0)));
    EXPECT_LT(std::abs(box.center().y() - 180.0), 60.0);
}

TEST(LecturePainterLabelsTest, WhatFindsNoPlaceIsLeftOutTheLeastFirst)
{
    Scene scene;
    for (int i = 0; i < 14; ++i)
        scene.push_back(square({100.0 + i, 100.0, 40, 30},
                               QStringLiteral("Something near, number %1").arg(QChar(u'a' + i)), Role::Near));
    scene.push_back(pointShape({450, 180}, "Greater trochanter"));
    const auto labels = placed(scene);
    expectApart(labels);
    EXPECT_LT(labels.size(), scene.size());
    EXPECT_TRUE(std::any_of(labels.begin(), labels.end(), [](const LectureLabel& label) {
        return label.placed.ask.text == "Greater trochanter";
    }));
}

TEST(LecturePainterLabelsTest, TakenPlacesStayFree)
{
    const QRectF taken(0, 100, 440, 160);
    for (const LectureLabel& label : placed({pointShape({450, 180}, "Greater trochanter")}, {taken}))
        EXPECT_FALSE(label.placed.box.intersects(taken));
}

TEST(LecturePainterLabelsTest, ManyNumbersNeverLieOverEachOther)
{
    Scene scene;
    for (int i = 0; i < 60; ++i)
        scene.push_back(pointShape({300.0 + (i * 37) % 200, 100.0 + (i * 53) % 150}, QString::number(i + 1)));
    const auto labels = placed(scene);
    EXPECT_GT(labels.size(), 5);
    expectApart(labels);
}

TEST(LecturePainterLabelsTest, LettersFitTheirBoxes)
{
    const Scene scene{square({100, 50, 300, 120}, "Superior gluteal nerve and artery", Role::Strike),
                      pointShape({500, 200}, "Anterior superior iliac spine"),
                      pointShape({520, 250}, "3: Off target, 1.8 cm")};
    for (const LectureLabel& label : placed(scene)) {
        const QRectF room = label.placed.box.adjusted(3, 2, -3, -2);
        const QRectF words = QFontMetricsF(label.placed.ask.font)
                                 .boundingRect(room, static_cast<int>(Qt::AlignCenter) | Qt::TextWordWrap,
                                               label.placed.ask.text);
        EXPECT_TRUE(label.placed.box.contains(words)) << qPrintable(label.placed.ask.text);
    }
}

}  // namespace fb::test::lecture_painter_labels_test
