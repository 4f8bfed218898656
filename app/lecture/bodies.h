// Where bodies come from, behind a door so that a test needs no thread.
#pragma once

#include <functional>
#include <memory>

#include "app/lecture/lecture_body.h"

class QObject;

namespace fb {

class Bodies {
public:
    Bodies() = default;
    Bodies(const Bodies&) = delete;
    Bodies& operator=(const Bodies&) = delete;
    virtual ~Bodies() = default;

    using Then = std::function<void(const Result<std::shared_ptr<const LectureBody>>&)>;
    // The window's thread asks and is answered. The newest ask of a lane wins: an older one that has not
    // begun is never answered. Lane 0: the shown body, lane 1: the one beside it. No answer once the asker is
    // gone.
    virtual void ask(int lane, const std::shared_ptr<const Library>& library,
                     const std::shared_ptr<const Policy>& policy, const BodyAsk& ask, QObject* asker,
                     Then then) = 0;
};

}  // namespace fb
