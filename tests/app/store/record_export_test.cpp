#include "app/store/record_export.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "app/roster/csv.h"
#include "app/store/audit_chain.h"
#include "app/store/record_answers.h"
#include "tests/support/record_folder.h"

namespace fb::test::record_export_tests {

namespace record_export_test {

// Passed at the second try after a void; failed; not tried, under a name a spreadsheet would run.
struct Filled {
    Filled()
    {
        Store& store = folder.store();
        Student odd = inventedStudent(3);
        odd.family = QStringLiteral("=2+5+cmd|' /C calc'!A0");
        odd.given = QStringLiteral("Smith, \"Ann\"");
        odd.section = QStringLiteral("-3.5");
        EXPECT_TRUE(saveStudents(store, {odd}, momentAt(0)));
        EXPECT_TRUE(signedCheckOff(store, QStringLiteral("s-001"), sheet, false, momentAt(1)));
        EXPECT_TRUE(signRemediation(store, 1, QStringLiteral("an hour"), kFirst, momentAt(1)));
        EXPECT_TRUE(signedCheckOff(store, QStringLiteral("s-001"), sheet, true, momentAt(2)));
        EXPECT_TRUE(signedCheckOff(store, QStringLiteral("s-002"), sheet, false, momentAt(3)));
        const auto begun = beginCheckOff(store, orderOf(QStringLiteral("s-003"), sheet), momentAt(4));
        Course course(sheet.sheet);
        course.begin();
        course.keep(course.off.voidTechnical("=1+1", course.now));
        EXPECT_TRUE(keepAll(store, begun->id, course.kept, momentAt(4)));
        EXPECT_TRUE(signCheckOff(store, begun->id, *course.off.sign(course.now), course.off.result(), kFirst,
                                 {}, momentAt(4)));
    }
    QByteArray exported(ExportKind kind, const QString& only = {})
    {
        LongWork work;
        const auto done = exportRecords(folder.store(), kind, only, file(), momentAt(5), work);
        EXPECT_TRUE(done && *done);
        EXPECT_EQ(work.percent, 100);
        EXPECT_EQ(modeOf(file()), 0600U);
        QFile written(file());
        EXPECT_TRUE(written.open(QIODevice::ReadOnly));
        return written.readAll();
    }
    // Header and rows, the mark of the byte order taken off.
    std::vector<QStringList> table(ExportKind kind, const QString& only = {})
    {
        const QByteArray bytes = exported(kind, only);
        EXPECT_TRUE(bytes.startsWith("\xEF\xBB\xBF"));
        EXPECT_EQ(bytes.count('\n'), bytes.count("\r\n"));
        std::vector<QStringList> rows;
        const auto read = parseCsv(file(), QString::fromUtf8(bytes.mid(3)), u',');
        EXPECT_TRUE(read);
        for (const CsvRow& row : *read)
            rows.push_back(row.fields);
        for (const QStringList& row : rows)
            EXPECT_EQ(row.size(), rows.front().size());
        return rows;
    }
    [[nodiscard]] QString file() const { return folder.root() + QStringLiteral("/out"); }

    RecordFolder folder;
    SheetOnFile sheet = folder.fill();
};

}  // namespace record_export_test

using namespace record_export_test;

TEST(RecordExportTest, TheGradebookHasARowForEveryStudent)
{
    Filled filled;
    const auto rows = filled.table(ExportKind::GradebookCsv);
    ASSERT_EQ(rows.size(), 4U);
    EXPECT_EQ(rows[0], (QStringList{"id", "family", "given", "section", "Two marks", "Two marks outcome",
                                    "Two marks attempts", "Two marks date"}));
    EXPECT_EQ(rows[1], (QStringList{"s-001", "Family001", "Given", "A", "100.0", "pass", "2", "2026-11-03"}));
    EXPECT_EQ(rows[2],
              (QStringList{"s-002", "Family002", "Given", "A", "50.0", "fail_score", "1", "2026-11-04"}));
    EXPECT_EQ(rows[3].mid(4), (QStringList{"", "", "", ""})) << "a void is no judgement";
    EXPECT_EQ(rows[3][1], QStringLiteral("'=2+5+cmd|' /C calc'!A0"));
    EXPECT_EQ(rows[3][2], QStringLiteral("Smith, \"Ann\""));
    EXPECT_EQ(rows[3][3], QStringLiteral("'-3.5"));
}

TEST(RecordExportTest, SheetsOfOneTitleStayApartAndOneAloneCanBeAsked)
{
    Filled filled;
    Sheet edited = twoMarks();
    edited.cutPercent = 10.0;
    const SheetOnFile later = saveSheet(filled.folder.store(), edited, momentAt(5)).value();
    EXPECT_EQ(filled.table(ExportKind::GradebookCsv)[0].size(), 8) << "nothing was signed on it yet";
    EXPECT_EQ(filled.table(ExportKind::GradebookCsv, later.key)[1][4], QString());
    ASSERT_TRUE(signedCheckOff(filled.folder.store(), QStringLiteral("s-002"), later, false, momentAt(6)));
    const auto both = filled.table(ExportKind::GradebookCsv);
    EXPECT_EQ(both[0].mid(4, 5), (QStringList{"Two marks", "Two marks outcome", "Two marks attempts",
                                              "Two marks date", "Two marks (2)"}));
    EXPECT_EQ(both[2].mid(4),
              (QStringList{"50.0", "fail_score", "1", "2026-11-04", "50.0", "pass", "1", "2026-11-07"}));
    EXPECT_EQ(filled.table(ExportKind::FullCsv, later.key).size(), 3U);
}

TEST(RecordExportTest, TheFullTableHasARowForEveryAnswerAndKeepsNumbersNumbers)
{
    Filled filled;
    const auto rows = filled.table(ExportKind::FullCsv);
    ASSERT_EQ(rows.size(), 7U) << "two marks of each of the three that were answered";
    const auto is = [&](std::size_t row, const char* column) {
        const auto at = rows[0].indexOf(QLatin1String(column));
        EXPECT_GE(at, 0) << column;
        return rows[row].value(at);
    };
    EXPECT_EQ(rows[0].indexOf(QStringLiteral("points")), rows[0].size() - 1);
    EXPECT_EQ(is(1, "student_id"), u"s-001");
    EXPECT_EQ(is(1, "item"), u"0");
    EXPECT_EQ(is(2, "item"), u"1");
    EXPECT_EQ(is(1, "outcome"), u"fail_score");
    EXPECT_EQ(is(3, "outcome"), u"pass");
    EXPECT_EQ(is(3, "percent"), u"100");
    EXPECT_EQ(is(1, "mark_y_cm"), u"-4.25") << "a number below zero is no formula";
    EXPECT_EQ(is(1, "mark_x_cm"), u"1.5");
    EXPECT_EQ(is(1, "verdict"), u"off_target");
    EXPECT_EQ(is(1, "refusal"), QString());
    EXPECT_EQ(is(1, "answered_at"), u"2026-11-02T10:00:03.000Z");
    EXPECT_EQ(is(1, "assessor"), kFirst.assessor.name);
    EXPECT_EQ(is(1, "plate_hashes"), u"shoulder-side=abc hip-side=defdefdefdef") << "twelve digits";
    EXPECT_EQ(is(1, "seed"), u"5");
    EXPECT_EQ(is(1, "sheet_key"), filled.sheet.key.left(12));
    EXPECT_EQ(is(1, "chain_head").size(), 12);
    for (const QString& name : answerWords() + answerNumbers())
        EXPECT_TRUE(rows[0].contains(name)) << name.toStdString();
}

TEST(RecordExportTest, AWordThatIsNoneOfCoresIsGuardedAllTheSame)
{
    Filled filled;
    for (const char* odd : {"=1+1", "a,b", "-x", "@a", "say \"hi\"", "ü"}) {
        filled.folder.sqlite3(QStringLiteral("DROP TRIGGER IF EXISTS answer_stays"));
        filled.folder.sqlite3(
            QStringLiteral("UPDATE answer SET verdict = '%1' WHERE check_off_id = 1 AND item = 0")
                .arg(QString::fromUtf8(odd)));
        const QByteArray bytes = filled.exported(ExportKind::FullCsv);
        EXPECT_TRUE(bytes.contains(',' + csvText(QString::fromUtf8(odd)) + ',')) << odd;
        const auto rows = filled.table(ExportKind::FullCsv);
        EXPECT_EQ(rows[1].size(), rows[0].size()) << odd;
    }
}

TEST(RecordExportTest, TheJsonHoldsEverythingAndItsEventsReadBack)
{
    Filled filled;
    const QByteArray bytes = filled.exported(ExportKind::FullJson);
    const auto json = nlohmann::json::parse(bytes.toStdString());
    EXPECT_EQ(json["format"], "fingerbreadth-records");
    EXPECT_EQ(json["version"], 1);
    EXPECT_EQ(json["chain"]["head"], chainEnd(filled.folder.store())->head.toStdString());
    ASSERT_EQ(json["students"].size(), 3U);
    EXPECT_EQ(json["students"][2]["given"], "Smith, \"Ann\"");
    EXPECT_EQ(json["students"][2]["family"], "=2+5+cmd|' /C calc'!A0") << "no spreadsheet reads this";
    EXPECT_EQ(json["assessors"].size(), 2U);
    EXPECT_EQ(json["sheets"][0]["key"], filled.sheet.key.toStdString());
    EXPECT_EQ(sheetFrom(json["sheets"][0]["sheet"].dump()).value(), twoMarks());
    EXPECT_EQ(json["policies"][0]["text"], orderOf({}, {}).policyText.toStdString());
    ASSERT_EQ(json["check_offs"].size(), 4U);
    for (std::size_t i = 0; i < 4; ++i) {
        const auto& one = json["check_offs"][i];
        EXPECT_EQ(one["id"], i + 1);
        const auto events = readEvents(filled.folder.store(), static_cast<qint64>(i + 1)).value();
        ASSERT_EQ(one["events"].size(), events.size());
        for (std::size_t j = 0; j < events.size(); ++j) {
            EXPECT_EQ(one["events"][j]["seq"], j + 1);
            EXPECT_EQ(textOf(eventFrom(one["events"][j]["event"].dump()).value()), textOf(events[j]));
        }
    }
    EXPECT_EQ(json["check_offs"][0]["remediation"], "an hour");
    EXPECT_TRUE(json["check_offs"][1]["remediation"].is_null());
    EXPECT_EQ(json["check_offs"][3]["outcome"], "void_technical");
}

TEST(RecordExportTest, AnEmptyStoreIsExportedAsOne)
{
    RecordFolder folder;
    LongWork work;
    const QString file = folder.root() + QStringLiteral("/out");
    for (const ExportKind kind : {ExportKind::GradebookCsv, ExportKind::FullCsv, ExportKind::FullJson})
        EXPECT_TRUE(exportRecords(folder.store(), kind, {}, file, momentAt(0), work).value_or(false));
    QFile written(file);
    ASSERT_TRUE(written.open(QIODevice::ReadOnly));
    EXPECT_TRUE(nlohmann::json::parse(written.readAll().toStdString())["check_offs"].empty());
}

TEST(RecordExportTest, CancelledNoFileIsLeftAndWhatStoodThereStays)
{
    Filled filled;
    LongWork work;
    work.cancelled = true;
    for (const ExportKind kind : {ExportKind::GradebookCsv, ExportKind::FullCsv, ExportKind::FullJson}) {
        const auto done = exportRecords(filled.folder.store(), kind, {}, filled.file(), momentAt(5), work);
        ASSERT_TRUE(done);
        EXPECT_FALSE(*done);
    }
    EXPECT_TRUE(QDir(filled.folder.root()).entryList(QDir::Files | QDir::Hidden).isEmpty());
}

TEST(RecordExportTest, WhereItCannotBeWrittenThatIsSaid)
{
    Filled filled;
    LongWork work;
    const auto done = exportRecords(filled.folder.store(), ExportKind::FullCsv, {}, filled.folder.root(),
                                    momentAt(5), work);
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().problem, Problem::OutputNotWritable);
}

}  // namespace fb::test::record_export_tests
