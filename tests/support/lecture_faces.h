// States and pictures of a demonstration without a presenter: any site, view and body at any step, with the
// drawing painted at once.
#pragma once

#include <QImage>
#include <QPainter>
#include <algorithm>
#include <atomic>
#include <memory>
#include <vector>

#include "app/demonstrate/lecture_face.h"
#include "app/demonstrate/pane_painter.h"
#include "core/body/body_values.h"

namespace fb::test {

[[nodiscard]] inline const std::shared_ptr<const Library>& facesLibrary()
{
    static const auto library = Library::load().value();
    return library;
}

[[nodiscard]] inline std::shared_ptr<const LectureBody>
bodyFor(Convention convention, View view, Stoutness stoutness = Stoutness::Average, Side side = Side::Right)
{
    const BodyAsk ask{patientOf(withStoutness({}, stoutness), side), convention, view, 1};
    return std::make_shared<const LectureBody>(
        makeLectureBody(*facesLibrary(), facesLibrary()->defaultPolicy(), ask).value());
}

[[nodiscard]] inline LectureState stateOf(const std::shared_ptr<const LectureBody>& body)
{
    static const auto policy = std::make_shared<const Policy>(facesLibrary()->defaultPolicy());
    LectureState state;
    state.ready = true;
    state.convention = body->ask.convention;
    state.view = body->ask.view;
    state.side = body->ask.patient.side();
    state.policy = policy;
    state.shown = body;
    state.steps = lectureSteps(*body->target);
    return state;
}

[[nodiscard]] inline LectureState stateOf(Convention convention, Stoutness stoutness = Stoutness::Average)
{
    return stateOf(bodyFor(convention, askedViews(siteOf(convention)).front(), stoutness));
}

// The first step of a kind, and of a code of the construction.
[[nodiscard]] inline int stepOf(const LectureState& state, LectureStepKind kind)
{
    const auto found = std::ranges::find(state.steps, kind, &LectureStep::kind);
    return static_cast<int>(found - state.steps.begin());
}
[[nodiscard]] inline int buildOf(const LectureState& state, StepCode code)
{
    const auto found = std::ranges::find_if(state.steps, [code](const LectureStep& step) {
        return step.kind == LectureStepKind::Build && step.code == code;
    });
    return static_cast<int>(found - state.steps.begin());
}

// The views a site is asked in, and the one that only shows it.
[[nodiscard]] inline std::vector<View> viewsOf(Site site)
{
    std::vector<View> views(askedViews(site).begin(), askedViews(site).end());
    const View companion = companionOf(views.front());
    if (std::ranges::find(views, companion) == views.end())
        views.push_back(companion);
    return views;
}

[[nodiscard]] inline LectureFace plainFace(const LectureState& state, QSizeF size,
                                           PaletteKind palette = PaletteKind::Light)
{
    return faceOf(state, size, schemeOf(palette), Qt::LeftToRight);
}

// As the worker will paint them.
[[nodiscard]] inline LectureFace drawnFace(LectureFace face)
{
    const std::atomic_bool never = false;
    const QSet<Layer> all(kLayers.begin(), kLayers.end());
    for (int i = 0; i < static_cast<int>(face.panes.size()); ++i) {
        LecturePane& pane = face.panes[static_cast<std::size_t>(i)];
        PaneJob job{pane, frameOf(face, i), 1.0, face.scheme, all, facesLibrary(), false};
        pane.drawn = PanePainter().sharp(job, never);
    }
    return face;
}

[[nodiscard]] inline QImage paintedFace(const LectureFace& face)
{
    QImage image(face.size.toSize(), QImage::Format_RGB32);
    image.fill(Qt::magenta);  // no palette has it: what is not painted shows
    QPainter painter(&image);
    paintLecture(painter, face);
    return image;
}

}  // namespace fb::test
