#include "app/store/record_people.h"

#include "app/store/audit_chain.h"

namespace fb {

namespace record_people_detail {

const char* const kStudent =
    "SELECT student_id, family, given, section, extra_percent, language, invented FROM student ";

Student studentIn(const QVariantList& row)
{
    return {row[0].toString(), row[1].toString(), row[2].toString(), row[3].toString(),
            row[4].toInt(),    row[5].toString(), row[6].toBool()};
}

Result<bool> saveStudent(Store& store, const Student& student, const Moment& now)
{
    return store.change(
        {QStringLiteral(
             "INSERT INTO student (student_id, family, given, section, extra_percent, language, invented, "
             "saved_at) VALUES (?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (student_id) DO UPDATE SET "
             "family = excluded.family, given = excluded.given, section = excluded.section, "
             "extra_percent = excluded.extra_percent, language = excluded.language, "
             "invented = excluded.invented, saved_at = excluded.saved_at"),
         {student.id, notNull(student.family), notNull(student.given), notNull(student.section),
          student.extraPercent, notNull(student.language), student.invented ? 1 : 0, isoText(now.at)}});
}

Result<int> countStudents(const Store& store)
{
    return store.rows({QStringLiteral("SELECT count(*) FROM student")}).map([](const auto& rows) {
        return rows.front().front().toInt();
    });
}

}  // namespace record_people_detail

using namespace record_people_detail;

Result<int> saveStudents(Store& store, const std::vector<Student>& students, const Moment& now)
{
    int added = 0;
    const auto saved = store.transaction([&]() -> Result<bool> {
        const auto before = countStudents(store);
        if (!before)
            return tl::unexpected(before.error());
        for (const Student& student : students) {
            if (const auto one = saveStudent(store, student, now); !one)
                return one;
        }
        const auto after = countStudents(store);
        if (!after)
            return tl::unexpected(after.error());
        added = *after - *before;
        const QString detail = QStringLiteral("added=%1 known=%2")
                                   .arg(added)
                                   .arg(static_cast<qsizetype>(students.size()) - added);
        const auto noted = appendAudit(
            store,
            {.actor = QStringLiteral("program"), .event = QStringLiteral("STUDENTS"), .detail = detail},
            now.at);
        return noted.map([](const ChainEnd&) { return true; });
    });
    return saved.map([&](bool) { return added; });
}

Result<std::vector<Student>> readStudents(const Store& store)
{
    return store.rows({QString::fromLatin1(kStudent) + QStringLiteral("ORDER BY student_id")})
        .map([](const auto& rows) {
            std::vector<Student> students;
            for (const QVariantList& row : rows)
                students.push_back(studentIn(row));
            return students;
        });
}

Result<Student> readStudent(const Store& store, const QString& id)
{
    const auto rows =
        store.rows({QString::fromLatin1(kStudent) + QStringLiteral("WHERE student_id = ?"), {id}});
    if (!rows)
        return tl::unexpected(rows.error());
    if (rows->empty())
        return fault(Problem::StudentUnknown, {}, id.toStdString());
    return studentIn(rows->front());
}

Result<std::vector<Assessor>> readAssessors(const Store& store)
{
    return store.rows({QStringLiteral("SELECT assessor_id, name FROM assessor ORDER BY assessor_id")})
        .map([](const auto& rows) {
            std::vector<Assessor> assessors;
            for (const QVariantList& row : rows)
                assessors.push_back({row[0].toLongLong(), row[1].toString()});
            return assessors;
        });
}

Result<Assessor> readAssessor(const Store& store, qint64 id)
{
    const auto rows =
        store.rows({QStringLiteral("SELECT assessor_id, name FROM assessor WHERE assessor_id = ?"), {id}});
    if (!rows)
        return tl::unexpected(rows.error());
    if (rows->empty())
        return fault(Problem::AssessorUnknown);
    return Assessor{rows->front()[0].toLongLong(), rows->front()[1].toString()};
}

QString actorName(const Assessor& assessor) { return QStringLiteral("assessor-%1").arg(assessor.id); }

}  // namespace fb
