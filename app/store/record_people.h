// Students and assessors in the records.
#pragma once

#include <vector>

#include "app/doors/records.h"
#include "app/store/record_values.h"
#include "app/store/store.h"

namespace fb {

// Adds and changes, in one transaction with its entry in the log. How many are new.
[[nodiscard]] Result<int> saveStudents(Store& store, const std::vector<Student>& students, const Moment& now);
// By id.
[[nodiscard]] Result<std::vector<Student>> readStudents(const Store& store);
// StudentUnknown.
[[nodiscard]] Result<Student> readStudent(const Store& store, const QString& id);

// In order of enrolment.
[[nodiscard]] Result<std::vector<Assessor>> readAssessors(const Store& store);
// AssessorUnknown.
[[nodiscard]] Result<Assessor> readAssessor(const Store& store, qint64 id);

// How the log calls them.
[[nodiscard]] QString actorName(const Assessor& assessor);

}  // namespace fb
