// Records of a test's own in a folder that does not exist yet, used in this thread, and looked at from
// outside.
#pragma once

#include <gtest/gtest.h>
#include <sys/stat.h>

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include "app/store/record_check_off.h"
#include "app/store/record_people.h"
#include "app/store/record_sheets.h"
#include "app/store/record_signing.h"
#include "app/store/record_store.h"
#include "tests/support/check_off_course.h"

namespace fb::test {

// So many days after the first of November 2026, ten in the morning UTC, and so many seconds.
[[nodiscard]] inline Moment momentAt(int days, int seconds = 0)
{
    return momentOf(QDateTime(QDate(2026, 11, 1), QTime(10, 0), Qt::UTC).addDays(days).addSecs(seconds));
}

// As `ls` shows it: 0700, 0600.
[[nodiscard]] inline unsigned modeOf(const QString& path)
{
    struct stat seen {};
    return ::stat(QFile::encodeName(path).constData(), &seen) == 0 ? seen.st_mode & 07777U : 0U;
}

[[nodiscard]] inline Student inventedStudent(int number)
{
    return {QStringLiteral("s-%1").arg(number, 3, 10, QChar(u'0')),
            QStringLiteral("Family%1").arg(number, 3, 10, QChar(u'0')),
            QStringLiteral("Given"),
            QStringLiteral("A"),
            0,
            QString(),
            true};
}

// Two marks and two steps; the rule of the re-tests as it ships.
[[nodiscard]] inline Sheet twoMarks()
{
    Sheet sheet = plainSheet(2, {ProcedureStep::HandHygiene, ProcedureStep::Insert});
    sheet.title = "Two marks";
    return sheet;
}

class RecordFolder {
public:
    [[nodiscard]] QString folder() const { return m_root.filePath(QStringLiteral("data/program")); }
    [[nodiscard]] QString root() const { return m_root.path(); }
    [[nodiscard]] QString file() const { return folder() + QStringLiteral("/records.db"); }

    Store& store()
    {
        if (!m_store)
            open();
        return *m_store;
    }
    // What opening told.
    std::optional<Fault> open()
    {
        auto opened = openRecords(file(), momentAt(0).at);
        EXPECT_TRUE(opened);
        if (!opened)
            std::abort();
        m_store = std::move(opened->store);
        return opened->told;
    }
    void close() { m_store.reset(); }

    // What SQLite's own command line says; an empty answer with its error when it fails.
    QString sqlite3(const QString& sql) const
    {
        QProcess shell;
        shell.start(QStringLiteral("sqlite3"), {file(), sql});
        if (!shell.waitForFinished())
            return QStringLiteral("sqlite3 did not run");
        return QString::fromUtf8(shell.readAllStandardOutput() + shell.readAllStandardError()).trimmed();
    }
    [[nodiscard]] QString one(const QString& sql)
    {
        const auto rows = store().rows({sql});
        return rows && !rows->empty() ? rows->front().front().toString() : QStringLiteral("none");
    }

    // So many students, a sheet and two assessors.
    SheetOnFile fill(int students = 3, const Sheet& sheet = twoMarks())
    {
        std::vector<Student> all;
        for (int i = 1; i <= students; ++i)
            all.push_back(inventedStudent(i));
        EXPECT_TRUE(saveStudents(store(), all, momentAt(0)));
        for (const char* name : {"First Assessor", "Second Assessor"})
            addAssessor(QString::fromLatin1(name));
        return saveSheet(store(), sheet, momentAt(0)).value();
    }
    // Without the work a PIN is.
    void addAssessor(const QString& name)
    {
        const auto added = store().commit(
            {{QStringLiteral(
                  "INSERT INTO assessor (assessor_id, name, pin_hash, wrong_in_a_row, enrolled_at) "
                  "SELECT coalesce(max(assessor_id), 0) + 1, ?, '', 0, '' FROM assessor"),
              {name}}});
        EXPECT_TRUE(added);
    }

private:
    QTemporaryDir m_root;
    std::unique_ptr<Store> m_store;
};

inline const Proof kFirst{{1, QStringLiteral("First Assessor")}};
inline const Proof kSecond{{2, QStringLiteral("Second Assessor")}};

[[nodiscard]] inline CheckOffOrder orderOf(const QString& student, const SheetOnFile& sheet,
                                           std::uint64_t seed = 5)
{
    return {student,
            sheet.key,
            seed,
            0,
            QStringLiteral("{\"policy\": \"of the lab\"}"),
            QStringLiteral("shoulder-side=abc hip-side=") + QStringLiteral("def").repeated(7),
            QStringLiteral("0.1.0"),
            3.75};
}

// A course whose events are kept one after another from that moment on, a second each.
[[nodiscard]] inline Result<bool> keepAll(Store& store, qint64 checkOff,
                                          const std::vector<CheckOffEvent>& events, const Moment& from)
{
    Moment now = from;
    for (const CheckOffEvent& event : events) {
        now.at = now.at.addSecs(1);
        if (const auto kept = keepEvent(store, checkOff, event, now); !kept)
            return kept;
    }
    return true;
}

// Every item answered with that verdict, every step done, rated 4.
[[nodiscard]] inline Course wholeCourse(const Sheet& sheet, Verdict verdict, std::uint64_t seed = 5)
{
    Course course(sheet, 0, seed);
    course.begin();
    while (course.off.stage() == CheckOffStage::OnScreen)
        course.answer(verdict, verdict == Verdict::OnTarget ? 1.0 : 0.0);
    course.keep(course.off.takeOver(course.now));
    for (const SheetStep& step : sheet.steps)
        course.observe(step.step);
    if (!sheet.steps.empty())
        course.keep(course.off.finish(course.now));
    course.keep(course.off.rate(4, "Steady hands.", course.now));
    return course;
}

// Begun, gone through and signed: passed, or failed by marks off target.
[[nodiscard]] inline Result<SignedOff> signedCheckOff(Store& store, const QString& student,
                                                      const SheetOnFile& sheet, bool passes, const Moment& at,
                                                      const std::optional<Proof>& second = std::nullopt)
{
    const auto begun = beginCheckOff(store, orderOf(student, sheet), at);
    if (!begun)
        return tl::unexpected(begun.error());
    Course course = wholeCourse(sheet.sheet, passes ? Verdict::OnTarget : Verdict::OffTarget);
    if (const auto kept = keepAll(store, begun->id, course.kept, at); !kept)
        return tl::unexpected(kept.error());
    const auto event = course.off.sign(course.now);
    EXPECT_TRUE(event);
    return signCheckOff(store, begun->id, *event, course.off.result(), kFirst, second, at);
}

}  // namespace fb::test
