#include "app/lecture/lecture_body.h"

#include "core/site/locate.h"

namespace fb {

Result<LectureBody> makeLectureBody(const Library& library, const Policy& policy, const BodyAsk& ask)
{
    const auto plate = library.plate(ask.view);
    if (!plate)
        return tl::unexpected(plate.error());
    const auto atlas = library.atlas(ask.view);
    if (!atlas)
        return tl::unexpected(atlas.error());
    auto map = bodyMap(*atlas, ask.view, ask.patient);
    if (!map)
        return tl::unexpected(map.error());
    auto target = locate(*atlas, policy, ask.patient, ask.convention, ask.view);
    if (!target)
        return tl::unexpected(target.error());
    LectureBody body{ask,
                     *plate,
                     std::make_shared<const BodyMap>(std::move(*map)),
                     std::make_shared<const Target>(std::move(*target)),
                     nullptr,
                     nullptr};
    if (auto feel = FeelMap::make(*atlas, policy, ask.patient, ask.view))
        body.feel = std::make_shared<const FeelMap>(std::move(*feel));
    body.picture = std::make_shared<const Picture>(
        Picture{*plate, movedInk(**plate, *body.map, ask.patient), ask.skinTone});
    return body;
}

}  // namespace fb
