// Every step of every site by every convention in every view, for lean, average and heavy patients: no word
// is cut off, lies over another or is too small, at three sizes, in English, Spanish and a wordier tongue, in
// both reading directions; and what the painted picture itself shows of them.
#include <gtest/gtest.h>

#include <QApplication>
#include <QFontMetricsF>
#include <QTranslator>
#include <cmath>

#include "app/demonstrate/lecture_painter_page.h"
#include "app/words/site_words.h"
#include "tests/support/drawn_hand.h"
#include "tests/support/lecture_faces.h"
#include "tests/support/picture_measure.h"
#include "tests/support/pseudo_translator.h"

namespace fb::test::lecture_steps_audit_test {

constexpr QSizeF kSizes[]{{1024, 768}, {1920, 1080}, {3840, 2160}};

enum class Tongue { English, Spanish, Wordy };

struct Installed {
    Installed() { QCoreApplication::installTranslator(&translator); }
    ~Installed() { QCoreApplication::removeTranslator(&translator); }
    Installed(const Installed&) = delete;
    Installed& operator=(const Installed&) = delete;
    PseudoTranslator translator;
};

struct InSpanish {
    InSpanish()
    {
        EXPECT_TRUE(translator.load(QStringLiteral(":/i18n/fingerbreadth_es.qm")));
        QCoreApplication::installTranslator(&translator);
    }
    ~InSpanish() { QCoreApplication::removeTranslator(&translator); }
    InSpanish(const InSpanish&) = delete;
    InSpanish& operator=(const InSpanish&) = delete;
    QTranslator translator;
};

constexpr double kMostOnHand = 0.08;    // of a name
constexpr double kMostOfRegion = 0.03;  // of the region
constexpr double kSign = 7.0;           // units
constexpr double kFarthest = 190.0;     // units, of some 650 that a picture is high

double areaOf(const QPolygonF& polygon)
{
    double twice = 0.0;
    for (qsizetype i = 0; i < polygon.size(); ++i) {
        const QPointF a = polygon[i];
        const QPointF b = polygon[(i + 1) % polygon.size()];
        twice += a.x() * b.y() - b.x() * a.y();
    }
    return std::abs(twice) / 2.0;
}

double gapBetween(const QRectF& box, QPointF p)
{
    const double dx = std::max({box.left() - p.x(), 0.0, p.x() - box.right()});
    const double dy = std::max({box.top() - p.y(), 0.0, p.y() - box.bottom()});
    return std::hypot(dx, dy);
}

class LectureStepsAudit : public ::testing::TestWithParam<Convention> {
protected:
    static std::string about(const LectureState& state, const LectureFace& face)
    {
        return std::string(wordOf(state.convention)) + " " + std::string(wordOf(state.view)) + " " +
               keyOf(state.steps[static_cast<std::size_t>(state.step)]) + " at " +
               std::to_string(static_cast<int>(face.size.width())) +
               (face.direction == Qt::RightToLeft ? " right to left" : "");
    }

    static void expectClear(const LectureFace& face, const std::string& about)
    {
        const QVector<PaintedText> texts = textsOf(face);
        const QRectF picture(QPointF(), face.size);
        EXPECT_GE(texts.size(), 4) << about;
        for (qsizetype i = 0; i < texts.size(); ++i) {
            const std::string word = texts[i].text.toStdString();
            EXPECT_TRUE(picture.contains(texts[i].box)) << about << ": " << word << " is cut off";
            EXPECT_GE(texts[i].capHeight, kLeastLetter * face.size.height()) << about << ": " << word;
            EXPECT_GE(ratioOf(texts[i].ink.rgb(), texts[i].ground.rgb()), kLeastContrast)
                << about << ": " << word;
            for (qsizetype k = i + 1; k < texts.size(); ++k)
                EXPECT_FALSE(
                    texts[i].box.adjusted(1, 1, -1, -1).intersects(texts[k].box.adjusted(1, 1, -1, -1)))
                    << about << ": " << word << " over " << texts[k].text.toStdString();
        }
    }

    static void expectFewLines(const LectureFace& face, const std::string& about)
    {
        const LecturePage page = pageOf(face);
        for (const LecturePage::Words& words : page.words)
            EXPECT_LE(words.set.lines.size(), 3) << about;
        // What is set in a box fits it.
        for (const LecturePage::Pane& pane : page.panes) {
            for (const LectureLabel& label : pane.labels) {
                const QRectF room = label.placed.box.adjusted(3, 2, -3, -2);
                const QRectF words =
                    QFontMetricsF(label.placed.ask.font)
                        .boundingRect(room, static_cast<int>(Qt::AlignCenter) | Qt::TextWordWrap,
                                      label.placed.ask.text);
                EXPECT_TRUE(label.placed.box.contains(words))
                    << about << ": " << label.placed.ask.text.toStdString();
            }
        }
    }

    // Of what a step names nothing is left out.
    static void expectNamed(const LectureFace& face, const std::string& about)
    {
        QStringList texts;
        for (const PaintedText& text : textsOf(face))
            texts << text.text;
        const ViewFrame frame = frameOf(face, 0);
        for (const SceneShape& shape : face.panes[0].look.scene) {
            const QRectF box = frame.cmToWidget().map(QPolygonF(shape.points)).boundingRect();
            if (!shape.label.isEmpty() && frame.sheet().intersects(box.adjusted(-1, -1, 1, 1))) {
                EXPECT_TRUE(texts.contains(shape.label)) << about << ": " << shape.label.toStdString();
            }
        }
    }

    // A name stands beside what it names and tied to it, and covers nothing of hand, region or point.
    // Measured on what is drawn: the share of the name that lies on the hand, and of the region that lies
    // under names.
    static void expectBeside(const LectureFace& face, const DrawnHand& hand, const std::string& about)
    {
        const LecturePage page = pageOf(face);
        const LecturePage::Pane& pane = page.panes[0];
        const Target& target = *face.panes[0].body->target;
        const QTransform toCm = pane.cmToUnits.inverted();
        const auto isArea = [](const SceneShape& shape) {
            return shape.role == Role::Strike || shape.role == Role::Near;
        };
        for (const SceneShape& shape : face.panes[0].look.scene) {
            const auto label = std::ranges::find_if(
                pane.labels, [&](const LectureLabel& each) { return each.placed.ask.text == shape.label; });
            if (shape.label.isEmpty() || isArea(shape) || label == pane.labels.end())
                continue;
            const QRectF& box = label->placed.box;
            const QRectF cm = toCm.mapRect(box);
            const std::string word = shape.label.toStdString();
            EXPECT_LE(hand.shareOf(cm), kMostOnHand) << about << ": " << word << " covers the hand";
            QPolygonF region;
            for (const Point corner : target.region.corners())
                region.push_back({corner.x, corner.y});
            if (shape.role == Role::Region || shape.role == Role::Ideal) {
                EXPECT_LE(areaOf(region.intersected(QPolygonF(cm))), kMostOfRegion * areaOf(region))
                    << about << ": " << word << " covers the region";
            }
            if (shape.figure == Figure::Point) {
                EXPECT_FALSE(box.adjusted(-kSign, -kSign, kSign, kSign)
                                 .contains(pane.cmToUnits.map(shape.points.front())))
                    << about << ": " << word << " covers its point";
            }
            EXPECT_TRUE(label->placed.hasLeader) << about << ": " << word << " is tied to nothing";
            EXPECT_LE(gapBetween(box, label->placed.anchor), kFarthest)
                << about << ": " << word << " is far away";
        }
    }

    // Every step of a body, in a state of its own.
    template <typename Each>
    static void walk(LectureState state, Each each)
    {
        for (state.step = 0; state.step < static_cast<int>(state.steps.size()); ++state.step)
            each(state);
    }

    void audit(Tongue tongue)
    {
        for (const View view : viewsOf(siteOf(GetParam()))) {
            for (const Stoutness stoutness : kStoutnesses) {
                walk(stateOf(bodyFor(GetParam(), view, stoutness)), [&](const LectureState& state) {
                    const DrawnHand hand(
                        lookOf(*state.shown, *state.policy, state.steps, state.step, state.progress));
                    for (const QSizeF size : kSizes) {
                        for (const auto direction : {Qt::LeftToRight, Qt::RightToLeft}) {
                            const LectureFace face =
                                faceOf(state, size, schemeOf(PaletteKind::Light), direction);
                            expectClear(face, about(state, face));
                            expectFewLines(face, about(state, face));
                            expectBeside(face, hand, about(state, face));
                            const LectureStep& step = state.steps[static_cast<std::size_t>(state.step)];
                            if (tongue != Tongue::Wordy || step.kind != LectureStepKind::Hazards)
                                expectNamed(face, about(state, face));
                        }
                    }
                });
            }
        }
    }
};

TEST_P(LectureStepsAudit, NoWordIsCutOffCoveredOrSmall) { audit(Tongue::English); }

TEST_P(LectureStepsAudit, NorInAWordierTongue)
{
    const Installed wordy;
    audit(Tongue::Wordy);
}

TEST_P(LectureStepsAudit, NorInSpanish)
{
    const InSpanish spanish;
    audit(Tongue::Spanish);
}

TEST_P(LectureStepsAudit, SideBySideTwoBodiesHaveRoomAsWell)
{
    LectureState state = stateOf(GetParam(), Stoutness::Lean);
    state.compare = Compare::SideBySide;
    state.beside = bodyFor(GetParam(), state.view, Stoutness::Heavy);
    const auto expectAllClear = [&] {
        walk(state, [&](const LectureState& at) {
            for (const QSizeF size : kSizes) {
                const LectureFace face = plainFace(at, size);
                expectClear(face, about(at, face));
            }
        });
    };
    expectAllClear();
    const Installed wordy;
    expectAllClear();
}

TEST_P(LectureStepsAudit, ThePaintedPictureHasTheContrastInEveryPalette)
{
    for (const PaletteKind palette : kPaletteKinds) {
        const LectureState state = stateOf(GetParam());
        const LectureFace first = drawnFace(plainFace(state, {1024, 768}, palette));
        walk(state, [&](const LectureState& at) {
            LectureFace face = plainFace(at, {1024, 768}, palette);
            face.panes[0].drawn = first.panes[0].drawn;
            const QImage image = paintedFace(face);
            for (const PaintedText& text : textsOf(face)) {
                const QRect box = text.box.adjusted(2, 2, -2, -2).toAlignedRect();
                EXPECT_EQ(groundOf(image, box), text.ground.rgb())
                    << about(at, face) << ": " << text.text.toStdString();
                EXPECT_GE(paintedContrast(image, box), kLeastContrast)
                    << about(at, face) << ": " << text.text.toStdString();
            }
        });
    }
}

INSTANTIATE_TEST_SUITE_P(Conventions, LectureStepsAudit, ::testing::ValuesIn(kConventions),
                         [](const auto& convention) {
                             std::string name(wordOf(convention.param));
                             std::ranges::replace_if(
                                 name, [](char c) { return c == '.' || c == '-'; }, '_');
                             return name;
                         });

// Capitals measured in the painted picture, in every face that letters are set in.
TEST(LectureLetters, CapitalsAreTallEnoughInThePaintedPicture)
{
    for (const QSizeF size : kSizes) {
        LectureState state = stateOf(Convention::VentroglutealHand);
        state.step = stepOf(state, LectureStepKind::Press);
        LectureFace face = plainFace(state, size);
        LectureLook& look = face.panes[0].look;
        look.heading = look.manner = look.caption = QStringLiteral("HEH");
        look.press->words = QStringLiteral("EHE");
        look.scene = {{Role::Landmark, Figure::Point, {look.area.center()}, QStringLiteral("HHE"), {}},
                      {Role::Strike,
                       Figure::Closed,
                       {look.area.topLeft(), look.area.topRight(), look.area.bottomRight()},
                       QStringLiteral("EEH"),
                       {}}};
        const QImage image = paintedFace(face);
        int measured = 0;
        for (const PaintedText& text : textsOf(face)) {
            if (text.text.size() > 3)
                continue;
            const QRect box = text.box.adjusted(4, 4, -4, -4).toAlignedRect();
            EXPECT_GE(inkedRows(image, box), kLeastLetter * size.height())
                << text.text.toStdString() << " at " << size.height();
            ++measured;
        }
        EXPECT_EQ(measured, 6);
    }
}

}  // namespace fb::test::lecture_steps_audit_test
