// Records that are kept in memory and answer at once, by the same rules as the ones on disk; with trouble
// they keep nothing, as a store that cannot be written. With `waits` nothing is answered before answerAll().
#pragma once

#include <QCryptographicHash>
#include <algorithm>
#include <deque>
#include <map>

#include "tests/support/memory_backups.h"
#include "tests/support/memory_entry.h"

namespace fb::test {

class MemoryRecords : public MemoryBackups {
public:
    using Person = MemoryPerson;
    void openDesk(const QString& sheet, QObject*, Then<Desk> then) override
    {
        answer([this, sheet, then] { then(desk(sheet)); });
    }
    void saveStudents(const std::vector<Student>& given, QObject*, Then<int> then) override
    {
        answer([this, given, then] {
            if (trouble)
                return then(tl::unexpected(*trouble));
            int added = 0;
            for (const Student& student : given) {
                const auto known = std::ranges::find(students, student.id, &Student::id);
                added += known == students.end() ? 1 : 0;
                if (known == students.end())
                    students.push_back(student);
                else
                    *known = student;
            }
            then(added);
        });
    }
    void saveSheet(const Sheet& sheet, QObject*, Then<SheetOnFile> then) override
    {
        answer([this, sheet, then] {
            if (trouble)
                return then(tl::unexpected(*trouble));
            const QByteArray text = QByteArray::fromStdString(textOf(sheet));
            const SheetOnFile file{
                QString::fromLatin1(QCryptographicHash::hash(text, QCryptographicHash::Sha256).toHex()),
                sheet};
            if (std::ranges::find(sheets, file.key, &SheetOnFile::key) == sheets.end())
                sheets.push_back(file);
            current = file.key;
            then(file);
        });
    }
    void begin(const CheckOffOrder& order, QObject*, Then<RunningCheckOff> then) override
    {
        answer([this, order, then] { then(begun(order)); });
    }
    void keep(qint64 checkOff, const CheckOffEvent& event, QObject*, Then<bool> then) override
    {
        answer([this, checkOff, event, then] {
            if (trouble)
                return then(tl::unexpected(*trouble));
            kept.at(checkOff).open.events.push_back(event);
            ++keeps;
            then(true);
        });
    }
    void keepTime(qint64 checkOff, Ms onScreen, Ms onManikin) override
    {
        ++timesKept;
        kept.at(checkOff).open.onScreen = onScreen;
        kept.at(checkOff).open.onManikin = onManikin;
    }
    void sign(qint64 checkOff, const CheckOffEvent& event, const CheckOffResult& result, const Proof& first,
              const std::optional<Proof>& second, QObject*, Then<SignedOff> then) override
    {
        answer([this, checkOff, event, result, first, second, then] {
            MemoryEntry& entry = kept.at(checkOff);
            if (trouble)
                return then(tl::unexpected(*trouble));
            if (entry.open.needsSecondAssessor && !second)
                return then(fault(Problem::SecondAssessorMissing));
            if (second && second->assessor == first.assessor)
                return then(fault(Problem::SameAssessor));
            entry.open.events.push_back(event);
            entry.at = clock.wall();
            SignedOff done{checkOff, result,
                           entry.at, QStringLiteral("31eeae30572c14b1dd7e221d391ba36e"),
                           7,        {first.assessor}};
            if (second)
                done.assessors.push_back(second->assessor);
            entry.signedOff = done;
            then(done);
        });
    }
    void signRemediation(qint64 checkOff, const QString& what, const Proof&, QObject*,
                         Then<bool> then) override
    {
        answer([this, checkOff, what, then] {
            if (trouble)
                return then(tl::unexpected(*trouble));
            kept.at(checkOff).remediation = what;
            then(true);
        });
    }
    void enrol(const QString& name, const QString& pin, const std::optional<Proof>&, QObject*,
               Then<Proof> then) override
    {
        answer([this, name, pin, then] {
            if (trouble)
                return then(tl::unexpected(*trouble));
            if (name.trimmed().isEmpty())
                return then(fault(Problem::NameMissing));
            if (pin.size() < 6)
                return then(fault(Problem::PinTooShort, {}, {}, 6.0));
            people.push_back({{static_cast<qint64>(people.size()) + 1, name}, pin});
            then(Proof{people.back().assessor});
        });
    }
    // The third wrong PIN in a row and each further one holds the next try for 2 s.
    void prove(qint64 assessor, const QString& pin, QObject*, Then<Proof> then) override
    {
        answer([this, assessor, pin, then] {
            const auto person = std::ranges::find_if(
                people, [&](const Person& each) { return each.assessor.id == assessor; });
            if (person == people.end())
                return then(fault(Problem::AssessorUnknown));
            if (person->pin == pin) {
                person->wrong = 0;
                return then(Proof{person->assessor});
            }
            constexpr int kFree = 3;
            if (++person->wrong >= kFree)
                return then(fault(Problem::PinHeld, {}, {}, 2.0));
            then(fault(Problem::PinWrong));
        });
    }
    void board(const QString& sheet, QObject*, Then<Board> then) override
    {
        answer([this, sheet, then] {
            if (trouble)
                return then(tl::unexpected(*trouble));
            Board all;
            all.students = standings(sheet.isEmpty() ? current : sheet);
            for (const StudentStanding& each : all.students)
                count(each.where.standing, all.count);
            all.outcomes = outcomesOf(kept);
            then(all);
        });
    }
    void find(const CheckOffFilter& filter, QObject*, Then<std::vector<CheckOffLine>> then) override
    {
        answer([this, filter, then] {
            if (trouble)
                return then(tl::unexpected(*trouble));
            std::vector<CheckOffLine> lines;
            for (auto entry = kept.rbegin(); entry != kept.rend(); ++entry) {
                if (entry->second.signedOff && fits(filter, lineOf(entry->second)))
                    lines.push_back(lineOf(entry->second));
            }
            then(lines);
        });
    }
    void read(qint64 checkOff, QObject*, Then<CheckOffOnFile> then) override
    {
        answer([this, checkOff, then] {
            if (trouble)
                return then(tl::unexpected(*trouble));
            const MemoryEntry& entry = kept.at(checkOff);
            then(CheckOffOnFile{lineOf(entry), entry.open.begunAt, entry.open.sheet, entry.open.order,
                                entry.open.events, QStringLiteral("31eeae30572c14b1dd7e221d391ba36e"), 7});
        });
    }
    void write(ExportKind, const QString&, const QString& file, const std::shared_ptr<LongWork>& work,
               QObject*, Then<bool> then) override
    {
        written << file;
        longWork(work, then);
    }
    void backup(const QString& file, const std::shared_ptr<LongWork>& work, QObject*,
                Then<bool> then) override
    {
        written << file;
        longWork(work, then);
    }
    void verify(const std::shared_ptr<LongWork>& work, QObject*, Then<Verified> then) override
    {
        work->percent = 100;
        answer([this, then] {
            if (trouble)
                return then(tl::unexpected(*trouble));
            then(Verified{7, QStringLiteral("31eeae30572c14b1dd7e221d391ba36e"), 1, 3, true});
        });
    }

    void answerAll()
    {
        while (!waiting.empty()) {
            const auto next = waiting.front();
            waiting.pop_front();
            next();
        }
    }

    std::optional<Fault> trouble;
    bool waits = false;
    TestClock clock;
    std::vector<Student> students;
    std::vector<SheetOnFile> sheets;
    QString current;
    std::vector<Person> people;
    std::map<qint64, MemoryEntry> kept;
    std::deque<std::function<void()>> waiting;
    QStringList written;
    int keeps = 0, timesKept = 0;

private:
    void answer(const std::function<void()>& what) override
    {
        if (waits)
            waiting.push_back(what);
        else
            what();
    }
    void longWork(const std::shared_ptr<LongWork>& work, const Then<bool>& then)
    {
        work->percent = 50;
        answer([this, work, then] {
            if (trouble)
                return then(tl::unexpected(*trouble));
            work->percent = 100;
            then(!work->cancelled);
        });
    }
    [[nodiscard]] const SheetOnFile* sheetOf(const QString& key) const
    {
        const auto at = std::ranges::find(sheets, key, &SheetOnFile::key);
        return at == sheets.end() ? nullptr : &*at;
    }
    [[nodiscard]] std::vector<StudentStanding> standings(const QString& key) const
    {
        std::vector<StudentStanding> lines;
        const SheetOnFile* sheet = sheetOf(key);
        for (const Student& student : students)
            lines.push_back(sheet ? standingOf(kept, student, *sheet, clock.wall().date())
                                  : StudentStanding{student, {}, {}, {}, 0.0});
        std::ranges::sort(lines, [](const StudentStanding& a, const StudentStanding& b) {
            return std::pair(a.student.family, a.student.given) <
                   std::pair(b.student.family, b.student.given);
        });
        return lines;
    }
    [[nodiscard]] Result<Desk> desk(const QString& sheet)
    {
        if (trouble)
            return tl::unexpected(*trouble);
        if (sheetOf(sheet))
            current = sheet;
        Desk all;
        all.sheets = sheets;
        all.currentSheet = current;
        all.students = standings(current);
        for (const Person& person : people)
            all.assessors.push_back(person.assessor);
        for (const auto& [id, entry] : kept) {
            if (!entry.signedOff)
                all.running = entry.open;
        }
        backups.tell(all);
        return all;
    }
    [[nodiscard]] Result<RunningCheckOff> begun(const CheckOffOrder& order)
    {
        if (trouble)
            return tl::unexpected(*trouble);
        const auto student = std::ranges::find(students, order.student, &Student::id);
        if (student == students.end())
            return fault(Problem::StudentUnknown, {}, order.student.toStdString());
        for (const auto& [id, entry] : kept) {
            if (!entry.signedOff)
                return fault(Problem::CheckOffRunning, {}, entry.open.student.family.toStdString());
        }
        const SheetOnFile& sheet = *sheetOf(order.sheet);
        const WhereTheyStand where = standingOf(kept, *student, sheet, clock.wall().date()).where;
        if (const auto refused = refusalOf(where.standing))
            return tl::unexpected(*refused);
        RunningCheckOff open;
        open.id = static_cast<qint64>(kept.size()) + 1;
        open.student = *student;
        open.sheet = sheet;
        open.order = order;
        open.attempt = where.used + 1;
        open.needsSecondAssessor = where.needsSecondAssessor;
        open.begunAt = clock.wall();
        kept[open.id] = MemoryEntry{open, {}, {}, {}};
        return open;
    }
};

}  // namespace fb::test
