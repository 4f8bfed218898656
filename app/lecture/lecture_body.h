// One body as a demonstration shows it: the same plate, map, target and feel that a grade is made from.
#pragma once

#include <memory>

#include "app/canvas/ink_painter.h"
#include "app/doors/library.h"
#include "core/body/body_map.h"
#include "core/feel/feel.h"
#include "core/site/target.h"

namespace fb {

struct BodyAsk {
    Patient patient;
    Convention convention{};
    View view{};
    int skinTone = 0;

    friend bool operator==(const BodyAsk&, const BodyAsk&) = default;
};

struct LectureBody {
    BodyAsk ask;
    std::shared_ptr<const Plate> plate;
    std::shared_ptr<const BodyMap> map;
    std::shared_ptr<const Target> target;
    std::shared_ptr<const FeelMap> feel;  // null in a view that cannot be felt
    std::shared_ptr<const Picture> picture;
};

// Some milliseconds: away from the window's thread. A plate's fault, or locate()'s.
[[nodiscard]] Result<LectureBody> makeLectureBody(const Library& library, const Policy& policy,
                                                  const BodyAsk& ask);

}  // namespace fb
