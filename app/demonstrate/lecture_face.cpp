#include "app/demonstrate/lecture_face.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <cmath>

#include "app/demonstrate/difference_text.h"
#include "app/demonstrate/lecture_painter_labels.h"
#include "app/demonstrate/lecture_painter_page.h"
#include "app/lecture/lecture_look_area.h"
#include "app/words/lecture_words.h"
#include "app/words/site_words.h"

namespace fb {

namespace lecture_face_detail {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(fb::LectureFace)
};

// Two bodies side by side are seen at one scale, or a small one would look as large as a tall one.
void shareArea(std::vector<LecturePane>& panes)
{
    double width = 0.0;
    double height = 0.0;
    for (const LecturePane& pane : panes) {
        width = std::max(width, pane.look.area.width());
        height = std::max(height, pane.look.area.height());
    }
    for (LecturePane& pane : panes) {
        const QPointF middle = pane.look.area.center();
        pane.look.area = QRectF(middle.x() - width / 2.0, middle.y() - height / 2.0, width, height);
    }
}

LecturePane paneOf(const std::shared_ptr<const LectureBody>& body, const LectureState& state,
                   const std::vector<LectureStep>& steps, int step)
{
    LecturePane pane;
    pane.body = body;
    pane.look = lookOf(*body, *state.policy, steps, step, state.progress);
    return pane;
}

QString indexOf(const LectureBody& body) { return bodyMassIndexText(body.ask.patient.bodyMassIndex()); }

// What is compared takes the place of the site's own signs, or they would lie over each other.
void addBeside(LecturePane& pane, const LectureState& state)
{
    pane.look.scene.removeIf(
        [](const SceneShape& shape) { return shape.role == Role::Region || shape.role == Role::Ideal; });
    for (SceneShape& shape : pane.look.scene)
        shape.label.clear();
    const bool conventions = state.compare == Compare::OtherConvention;
    pane.extra +=
        besideScene(*state.shown->target, *state.beside->target,
                    conventions ? conventionName(state.shown->target->convention) : indexOf(*state.shown),
                    conventions ? conventionName(state.beside->target->convention) : indexOf(*state.beside));
}

// Once it is revealed, the room sees what its marks are read against.
void addRevealed(LecturePane& pane, const Target& target)
{
    const bool has = std::ranges::any_of(pane.look.scene + pane.extra,
                                         [](const SceneShape& shape) { return shape.role == Role::Region; });
    if (has)
        return;
    SceneShape region{Role::Region, Figure::Closed, {}, {}, stepName(StepCode::Region)};
    for (const Point corner : target.region.corners())
        region.points.push_back({corner.x, corner.y});
    pane.extra.push_back(region);
    pane.extra.push_back({Role::Ideal,
                          Figure::Point,
                          {QPointF(target.ideal.x, target.ideal.y)},
                          {},
                          stepName(StepCode::IdealPoint)});
}

// What the room is asked, and what came of it.
QString roomCaption(const std::vector<RoomMark>& marks, bool revealed)
{
    if (!revealed)
        return Words::tr("Where would you put the needle?");
    const auto hits = std::ranges::count_if(
        marks, [](const RoomMark& mark) { return mark.grade && mark.grade->verdict == Verdict::OnTarget; });
    //: %n is how many marks there are, %1 how many of them are on target.
    return Words::tr("%1 of %n mark(s) on target", nullptr, static_cast<int>(marks.size()))
        .arg(QLocale().toString(static_cast<int>(hits)));
}

QString besideCaption(const LectureState& state)
{
    constexpr double kLeast = 0.05;  // cm: less is the same place
    const double apart = state.difference->apart.value();
    if (state.compare == Compare::OtherConvention)
        return Words::tr("Two ways to find the site: their ideal points lie %1 apart.").arg(cmText(apart));
    // What moves with the weight alone, and what does not, is worth a word.
    const bool isOfWeight = differInWeightAlone(*state.shown, *state.beside);
    const QString why = whyText(*state.shown, *state.beside, *state.difference);
    if (isOfWeight && !why.isEmpty() &&
        (apart < kLeast || state.shown->target->site == Site::VastusLateralis))
        return why;
    return apart < kLeast
               ? Words::tr("The ideal point lies at the same place on both bodies.")
               : Words::tr("Two bodies, one site: their ideal points lie %1 apart.").arg(cmText(apart));
}

// What of a plate's surroundings is seen with an area in the middle of a sheet. It counts as part of the
// plate: a frame that knew the paper alone would slide with it as a body grows stout, and bones with it.
QRectF seenAround(const QRectF& area, const QRectF& sheet)
{
    const double scale = std::min(sheet.width() / area.width(), sheet.height() / area.height());
    const QSizeF size = sheet.size() / scale;
    return {area.center() - QPointF(size.width(), size.height()) / 2.0, size};
}

}  // namespace lecture_face_detail

LectureLayout lectureLayout(QSizeF picture, int panes, Qt::LayoutDirection direction)
{
    return lecturePlan(picture, panes, direction).scaled();
}

LectureFace faceOf(const LectureState& state, QSizeF size, const Scheme& scheme,
                   Qt::LayoutDirection direction)
{
    using namespace lecture_face_detail;
    LectureFace face;
    face.size = size;
    face.scheme = scheme;
    face.direction = direction;
    face.blank = state.blank;
    face.isReady = state.ready && state.shown && state.policy;
    if (!face.isReady)
        return face;
    face.panes.push_back(paneOf(state.shown, state, state.steps, state.step));
    LecturePane& shown = face.panes.front();
    if (state.beside && state.compare == Compare::SideBySide) {
        const auto steps = lectureSteps(*state.beside->target);
        const int step =
            state.steps.empty() ? 0 : sameStep(steps, state.steps[static_cast<std::size_t>(state.step)]);
        face.panes.push_back(paneOf(state.beside, state, steps, step));
        face.panes[0].name = indexOf(*state.shown);
        const double index = state.beside->ask.patient.bodyMassIndex();
        //: The body that is kept to be compared with; %1 is its body-mass index, a number.
        face.panes[1].name = Words::tr("Pinned: %1").arg(QLocale().toString(std::round(index), 'f', 0));
        shareArea(face.panes);
    } else if (state.beside && state.compare != Compare::Nothing) {
        addBeside(shown, state);
        if (state.difference)
            shown.look.caption = besideCaption(state);
    }
    LecturePane& first = face.panes.front();
    if (!state.room.empty()) {
        if (state.revealed)
            addRevealed(first, *state.shown->target);
        first.extra += roomScene(state.room, state.revealed);
        if (state.tool == LectureTool::Ask)
            first.look.caption = roomCaption(state.room, state.revealed);
    }
    face.strokes = state.strokes;
    face.drawing = state.drawing;
    face.tool = state.tool;
    face.pointer = state.pointer;
    face.spotlight = state.spotlight;
    face.magnification = state.magnification;
    return face;
}

ViewFrame frameOf(const LectureFace& face, int pane)
{
    const LectureLayout layout =
        lectureLayout(face.size, static_cast<int>(face.panes.size()), face.direction);
    const LecturePane& shown = face.panes[static_cast<std::size_t>(pane)];
    const Bounds paper = shown.body->picture->ink.paper;
    const QRectF picture(QPointF(paper.low.x, paper.low.y), QPointF(paper.high.x, paper.high.y));
    const QRectF seen = lecture_face_detail::seenAround(shown.look.area, layout.panes[pane]);
    return ViewFrame::whole(layout.panes[pane], picture.united(seen)).around(shown.look.area);
}

QVector<PaintedText> textsOf(const LectureFace& face)
{
    QVector<PaintedText> texts;
    const LecturePage page = pageOf(face);
    const auto add = [&](const QString& text, const QRectF& box, const QFont& font, const QColor& ink,
                         const QColor& ground) {
        const double unit = page.plan.unit;
        texts.push_back(
            {text, QRectF(box.topLeft() * unit, box.size() * unit), capitalOf(font) * unit, ink, ground});
    };
    for (const LecturePage::Words& words : page.words)
        for (const SetLines::Line& line : words.set.lines)
            add(line.text, line.box, words.set.font, words.ink, face.scheme.paper);
    for (const LecturePage::Pane& pane : page.panes) {
        for (const LectureLabel& label : pane.labels)
            add(label.placed.ask.text, label.placed.box, label.placed.ask.font, label.ink, face.scheme.paper);
        if (!pane.pressWords.isEmpty())
            add(pane.pressText, pane.pressWords, pressFont(), face.scheme.ink, face.scheme.paper);
    }
    return texts;
}

}  // namespace fb
