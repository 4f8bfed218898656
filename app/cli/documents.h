// Answers of the command line: the JSON documents README describes field by field, and the
// same for a reader's eye. Lengths in cm in the frame of the program.
#pragma once

#include <QString>
#include <string>

#include "app/cli/arguments.h"
#include "core/grade/grade.h"
#include "core/site/target.h"

namespace fb {

// Each appends one object on one line, without a line feed.
void appendLocateJson(std::string& out, const Query& query, const Policy& policy, const Target& target);
void appendGradeJson(std::string& out, const Query& query, const Policy& policy, const Target& target,
                     Point mark, const Grade& grade);
void appendErrorJson(std::string& out, const Fault& fault);

// Several lines, each ending in a line feed, the last of them the caution.
[[nodiscard]] QString patientText(const Patient& patient);
[[nodiscard]] QString locateText(const Query& query, const Target& target);
[[nodiscard]] QString gradeText(const Query& query, const Target& target, Point mark, const Grade& grade);

// Over a drawn plate: what it shows, and of whom.
[[nodiscard]] QString titleText(const Query& query);
[[nodiscard]] QString asideText(const Query& query);

// The sentence that stands under everything the program says about a body.
[[nodiscard]] QString cautionText();

}  // namespace fb
