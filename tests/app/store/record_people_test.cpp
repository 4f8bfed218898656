#include "app/store/record_people.h"

#include <gtest/gtest.h>

#include "tests/support/record_folder.h"

namespace fb::test::record_people_test {

TEST(RecordPeopleTest, WhoIsNewIsAddedAndWhoIsKnownChanged)
{
    RecordFolder folder;
    Store& store = folder.store();
    EXPECT_EQ(saveStudents(store, {inventedStudent(1), inventedStudent(2)}, momentAt(0)).value(), 2);
    Student changed = inventedStudent(2);
    changed.family = QStringLiteral("O'Néill; DROP TABLE student; --");
    changed.section = QStringLiteral("=1+1");
    changed.extraPercent = 25;
    changed.language = QStringLiteral("es");
    changed.invented = false;
    EXPECT_EQ(saveStudents(store, {changed, inventedStudent(3)}, momentAt(0)).value(), 1);
    const auto students = readStudents(store);
    ASSERT_EQ(students->size(), 3U);
    EXPECT_EQ((*students)[0], inventedStudent(1)) << "nobody is taken away";
    EXPECT_EQ((*students)[1], changed);
    EXPECT_EQ(readStudent(store, QStringLiteral("s-003")).value(), inventedStudent(3));
    const auto unknown = readStudent(store, QStringLiteral("s-9"));
    ASSERT_FALSE(unknown);
    EXPECT_EQ(unknown.error().problem, Problem::StudentUnknown);
    EXPECT_EQ(unknown.error().what, "s-9");
    EXPECT_EQ(
        folder.one(QStringLiteral("SELECT detail FROM audit WHERE event = 'STUDENTS' ORDER BY seq DESC")),
        QStringLiteral("added=1 known=1"));
}

TEST(RecordPeopleTest, OneThatCannotBeSavedLeavesAllAsTheyWere)
{
    RecordFolder folder;
    Store& store = folder.store();
    Student odd = inventedStudent(2);
    odd.extraPercent = 201;
    EXPECT_FALSE(saveStudents(store, {inventedStudent(1), odd}, momentAt(0)));
    EXPECT_TRUE(readStudents(store)->empty());
    EXPECT_EQ(folder.one(QStringLiteral("SELECT count(*) FROM audit WHERE event = 'STUDENTS'")), u"0");
}

TEST(RecordPeopleTest, AssessorsComeInOrderOfEnrolment)
{
    RecordFolder folder;
    folder.addAssessor(QStringLiteral("Zoe"));
    folder.addAssessor(QStringLiteral("Amir"));
    const std::vector<Assessor> all{{1, QStringLiteral("Zoe")}, {2, QStringLiteral("Amir")}};
    EXPECT_EQ(readAssessors(folder.store()).value(), all);
    EXPECT_EQ(readAssessor(folder.store(), 2).value(), all[1]);
    EXPECT_EQ(readAssessor(folder.store(), 3).error().problem, Problem::AssessorUnknown);
    EXPECT_EQ(actorName(all[1]), QStringLiteral("assessor-2"));
}

}  // namespace fb::test::record_people_test
