// The exam manner of a practice: see practice_presenter.h.
#include <utility>

#include "app/practice/practice_presenter.h"

namespace fb {

namespace practice_exam_detail {
constexpr int kBehindPictures = -1;
}

void PracticePresenter::lendLibrary(const std::shared_ptr<const Library>& library)
{
    m_library = library;
    m_atlas = {};
    m_atlas.proportions = &library->proportions();
}

void PracticePresenter::examine(std::vector<SetRequest> set, int from, const Policy& policy)
{
    if (!m_library)
        return;
    const View view = set[static_cast<std::size_t>(from)].request.view;
    withPlates(view, [this, set = std::move(set), from, policy] { beginExam(set, from, policy); });
}

void PracticePresenter::beginExam(const std::vector<SetRequest>& set, int from, const Policy& policy)
{
    m_state.exam = true;
    m_state.keeping = Keeping::Open;
    m_state.notice.reset();
    m_state.own = {};
    m_state.policy = std::make_shared<const Policy>(policy);
    m_practice.emplace(m_atlas, policy, set, from);
    m_state.setup = m_practice->setup();
    m_state.ready = true;
    refreshRequest();
    for (const SetRequest& each : set) {
        if (!holds(each.request.view))
            readPlates(each.request.view, practice_exam_detail::kBehindPictures);
    }
}

const Attempt* PracticePresenter::confirmedAnswer() const
{
    return m_state.exam && m_practice ? m_practice->graded() : nullptr;
}

void PracticePresenter::setKeeping(Keeping keeping)
{
    if (!m_state.exam || m_state.keeping == keeping)
        return;
    m_state.keeping = keeping;
    refresh();
}

void PracticePresenter::confirm()
{
    if (m_state.keeping == Keeping::Saving)
        return;
    setKeeping(Keeping::Saving);
    Q_EMIT confirmed();
}

}  // namespace fb
