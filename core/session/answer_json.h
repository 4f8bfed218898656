// An answer as a JSON object, by itself or as part of an event.
#pragma once

#include "core/session/answer.h"
#include "core/session/json_fields.h"

namespace fb {

// Coordinates farther off than this are no place on a plate, cm; likewise angles, degrees.
inline constexpr double kFarthestKept = 1000.0;

[[nodiscard]] nlohmann::ordered_json jsonOf(const Answer& answer);
// Where the text has a fault, somebody and something in place of what could not be read.
[[nodiscard]] Answer answerIn(JsonFields fields);

// What the student's own hand did: flags and build.
void addHand(nlohmann::ordered_json& object, const Answer& answer);
void readHand(JsonFields& fields, Answer& answer);

}  // namespace fb
