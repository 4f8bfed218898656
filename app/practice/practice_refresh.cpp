// From the practice to the state, and the worker that makes the pictures: see
// practice_presenter.h.
#include <utility>

#include "app/canvas/hand_painter.h"
#include "app/practice/practice_presenter.h"
#include "app/practice/watched.h"
#include "app/scene/by_hand_scene.h"
#include "app/scene/target_scene.h"
#include "core/basics/seed_stream.h"

namespace fb {

namespace practice_refresh_detail {

QPointF toPointF(Point at) { return {at.x, at.y}; }

std::vector<OtherPoint> othersOf(const Atlas& atlas, const Policy& policy, const Patient& patient,
                                 const Target& target)
{
    std::vector<OtherPoint> others;
    for (const OtherConvention& other :
         otherConventions(atlas, policy, patient, target.convention, target.view)) {
        OtherPoint point;
        point.convention = other.convention;
        point.ideal = toPointF(other.ideal);
        const Point skin = target.toSkin(other.ideal);
        point.lower = Cm{target.idealSkin.y - skin.y};
        point.forward = Cm{skin.x - target.idealSkin.x};
        others.push_back(point);
    }
    return others;
}

// A refusal has no mark: the target alone is shown, and that only where the site could be used.
Scene feedbackScene(const Target& target, const Attempt& attempt, const Policy& policy)
{
    if (attempt.byHand)
        return gradedByHandScene(target, attempt, Builder::from(policy));
    if (!attempt.refusal)
        return gradedScene(target, attempt.mark, attempt.grade);
    return isRuledOut(attempt.request) ? helpScene(target, HelpLevel::DrawnAndNamed) : targetScene(target);
}

// While a site is sought by hand: what was built, once it is being built; or what is shown.
Scene handScene(const Target& target, const ByHandState& byHand)
{
    if (byHand.watching)
        return watchScene(watchedTarget(target, byHand.builder), *byHand.watching);
    if (byHand.stage == ByHandStage::Feeling)
        return {};
    return buildScene(target, byHand.build, byHand.builder);
}

}  // namespace practice_refresh_detail

using practice_refresh_detail::toPointF;

// What the worker brings home.
struct PracticePresenter::Made {
    int wanted = 0;
    View view{};
    std::optional<Fault> broken;
    std::shared_ptr<const Picture> picture;
    std::shared_ptr<const Picture> hand;
    std::shared_ptr<const Plate> handArt;
    std::array<std::shared_ptr<const Plate>, 2> fingerArt{};
    std::shared_ptr<const Target> target;  // of this view
};

void PracticePresenter::refreshRequest()
{
    ++m_wantedPicture;
    m_state.request = m_practice->request();
    m_state.convention = m_practice->target().convention;
    m_state.choosingReason = false;
    m_state.target = std::make_shared<const Target>(m_practice->target());
    // From the seed, so that a replay looks alike and no place becomes a habit.
    constexpr std::uint64_t kFigures = 0x5eed;
    SeedStream figures(m_state.setup.seed +
                       kFigures * static_cast<std::uint64_t>(m_state.request->number + 1));
    m_state.firstFigure = kSides[static_cast<std::size_t>(figures.below(static_cast<int>(kSides.size())))];
    m_state.others.clear();
    m_state.layers = allLayers();
    m_state.picture.reset();
    m_state.hand.reset();
    m_state.handArt.reset();
    m_state.fingerArt = {};
    m_state.companion.reset();
    m_companionTarget.reset();
    m_state.runPicture.reset();
    m_runTarget.reset();
    m_byHand.open();
    refresh();
    if (m_practice->phase() == Phase::Summary)
        return makeRunPicture();
    const View view = m_state.request->view;
    makePicture(view, *m_state.request);
    if (m_state.companionShown)
        makePicture(companionOf(view), *m_state.request);
}

void PracticePresenter::makeRunPicture()
{
    ++m_wantedPicture;
    const View view = askedViews(m_state.runSite).front();
    // Its request was asked, so its plate is there.
    const ReferenceBody& body = m_atlas.plate(view).reference;
    const auto patient = Patient::make(body.ageYears, body.sex, body.stature, body.weight, Side::Right);
    if (!patient)
        return tell(patient.error());
    Request model = *m_state.request;
    model.patient = *patient;
    model.site = m_state.runSite;
    model.view = view;
    makePicture(view, model);
}

void PracticePresenter::refresh()
{
    const Practice& practice = *m_practice;
    const bool shut = m_state.keeping != Keeping::Open;
    m_state.phase = shut ? Phase::Graded : practice.phase();
    m_state.pickedWrongSide = practice.pickedWrongSide();
    m_state.mark = practice.mark() ? std::optional(toPointF(*practice.mark())) : std::nullopt;
    const Attempt* graded = m_state.exam ? nullptr : practice.graded();
    m_state.graded = graded ? std::optional(*graded) : std::nullopt;
    const bool answering = isAnswering(m_state.phase);
    const bool shown = practice.setup().help == HelpLevel::DrawnAndNamed && !practice.setup().byHand;
    m_state.canPeel = graded || (answering && shown);
    m_state.canRefuse = answering && practice.setup().mix.findings;
    m_state.choosingReason = m_state.choosingReason && m_state.canRefuse;
    if (graded && m_state.others.empty()) {
        m_state.others = practice_refresh_detail::othersOf(m_atlas, practice.policy(),
                                                           practice.request().patient, practice.target());
    }
    refreshByHand();
    refreshSummary();
    refreshScenes();
    Q_EMIT changed();
}

// What was found by hand stays in sight while the answer of an exam is on its way.
void PracticePresenter::refreshByHand()
{
    if (m_state.keeping == Keeping::Open)
        return m_byHand.refresh();
    if (!m_state.byHand)
        return;
    m_state.byHand->canUndo = false;
    m_state.byHand->canRedo = false;
    m_state.byHand->canClear = false;
}

void PracticePresenter::refreshSummary()
{
    m_state.bySite.clear();
    m_state.summary.reset();
    m_state.foundByHand.clear();
    if (m_practice->phase() != Phase::Summary)
        return;
    m_state.summary = summed(m_practice->attempts());
    for (const Attempt& attempt : m_practice->attempts()) {
        if (attempt.byHand)
            m_state.foundByHand.push_back(*attempt.byHand);
    }
    for (const Site site : kSites) {
        const Summary own = summed(m_practice->attempts(), site);
        if (own.attempts > 0)
            m_state.bySite.push_back({site, own});
    }
    m_state.runSite = m_state.bySite.front().site;
}

void PracticePresenter::refreshScenes()
{
    m_state.scene.clear();
    m_state.companionScene.clear();
    m_state.runScene.clear();
    for (const SiteSummary& each : m_state.bySite) {
        if (m_runTarget && m_runTarget->site == each.site)
            m_state.runScene = runScene(*m_runTarget, each.summary);
    }
    if (!m_state.target)
        return;
    const HelpLevel help = m_state.setup.byHand ? HelpLevel::Nothing : m_state.setup.help;
    if (!m_state.graded) {
        m_state.scene = m_state.byHand ? practice_refresh_detail::handScene(*m_state.target, *m_state.byHand)
                                       : helpScene(*m_state.target, help);
        if (m_companionTarget)
            m_state.companionScene = helpScene(*m_companionTarget, help);
        return;
    }
    m_state.scene = practice_refresh_detail::feedbackScene(*m_state.target, *m_state.graded, *m_state.policy);
    for (const OtherPoint& other : m_state.others) {
        if (other.shown)
            m_state.scene += otherScene(other.convention, other.ideal);
    }
    if (m_companionTarget)
        m_state.companionScene = companionScene(*m_companionTarget);
}

// The hand a target lays, and those a learner may lay in its place.
Result<bool> PracticePresenter::readHands(const Library& library, const Target& target, bool byHand,
                                          Made& made)
{
    if (!target.hand && !byHand)
        return true;
    const auto open = library.plate(View::OpenHand);
    if (!open)
        return tl::unexpected(open.error());
    if (target.hand)
        made.hand = handPicture(*open, target.hand);
    if (!byHand)
        return true;
    made.handArt = *open;
    static constexpr std::array kFingers{View::TwoFingers, View::ThreeFingers};
    for (std::size_t i = 0; i < kFingers.size(); ++i) {
        const auto fingers = library.plate(kFingers[i]);
        if (!fingers)
            return tl::unexpected(fingers.error());
        made.fingerArt[i] = *fingers;
    }
    return true;
}

void PracticePresenter::makePicture(View view, const Request& request)
{
    const auto make = [this, view, wanted = m_wantedPicture, library = m_library, request,
                       policy = m_state.policy, byHand = m_state.setup.byHand] {
        Made made{wanted, view, std::nullopt, nullptr, nullptr, nullptr, {}, nullptr};
        const auto work = [&]() -> Result<bool> {
            const auto plate = library->plate(view);
            if (!plate)
                return tl::unexpected(plate.error());
            const auto atlas = library->atlas(view);
            if (!atlas)
                return tl::unexpected(atlas.error());
            const auto map = bodyMap(*atlas, view, request.patient);
            if (!map)
                return tl::unexpected(map.error());
            const auto target =
                locate(*atlas, *policy, request.patient, policy->convention(request.site), view);
            if (!target)
                return tl::unexpected(target.error());
            made.target = std::make_shared<const Target>(*target);
            if (const auto read = readHands(*library, *target, byHand, made); !read)
                return read;
            made.picture = std::make_shared<const Picture>(
                Picture{*plate, movedInk(**plate, *map, request.patient), request.skinTone});
            return true;
        };
        if (const auto worked = work(); !worked)
            made.broken = worked.error();
        QMetaObject::invokeMethod(
            this, [this, made] { take(made); }, Qt::QueuedConnection);
    };
    m_pool.start(make);
}

void PracticePresenter::take(const Made& made)
{
    if (made.wanted != m_wantedPicture)
        return;
    if (made.broken) {
        tell(*made.broken);
        return;
    }
    if (m_state.summary) {
        m_runTarget = made.target;
        m_state.runPicture = made.picture;
        refreshScenes();
    } else if (made.view == m_state.request->view) {
        m_state.picture = made.picture;
        m_state.hand = m_state.exam ? nullptr : made.hand;
        m_state.handArt = made.handArt;
        m_state.fingerArt = made.fingerArt;
    } else {
        m_state.companion = made.picture;
        m_companionTarget = made.target;
        refreshScenes();
    }
    Q_EMIT changed();
}

}  // namespace fb
