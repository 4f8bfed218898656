#include "app/store/record_pins.h"

#include <gtest/gtest.h>

#include "app/lock/pin.h"
#include "tests/support/record_folder.h"

namespace fb::test::record_pins_tests {

namespace record_pins_test {

const QString kPin = QStringLiteral("493817");
const QString kWrong = QStringLiteral("111222");

struct Lock {
    Lock()
    {
        const auto enrolled = enrolAssessor(folder.store(), QStringLiteral("Ada"), kPin, {}, momentAt(0));
        EXPECT_TRUE(enrolled);
        ada = enrolled->assessor.id;
    }
    // Tried at that second of both clocks.
    Result<Proof> at(int second, const QString& pin) { return at(second, momentAt(1, second), pin); }
    Result<Proof> at(int second, const Moment& now, const QString& pin)
    {
        return check.prove(folder.store(), ada, pin, now, std::chrono::seconds{second});
    }
    // A fresh start of the program: its monotonic clock begins anew.
    void startAgain()
    {
        folder.close();
        check = PinCheck();
    }

    RecordFolder folder;
    PinCheck check;
    qint64 ada = 0;
};

double heldFor(const Result<Proof>& tried)
{
    EXPECT_FALSE(tried);
    EXPECT_EQ(tried.error().problem, Problem::PinHeld);
    return tried ? 0.0 : tried.error().low;
}

Problem refusalOf(const Result<Proof>& tried) { return tried ? Problem{} : tried.error().problem; }

}  // namespace record_pins_test

using namespace record_pins_test;

TEST(RecordPinsTest, TheRightPinProvesAndTheWrongOneDoesNot)
{
    Lock lock;
    EXPECT_EQ(refusalOf(lock.at(1, kWrong)), Problem::PinWrong);
    const auto proof = lock.at(2, kPin);
    ASSERT_TRUE(proof);
    EXPECT_EQ(proof->assessor, (Assessor{lock.ada, QStringLiteral("Ada")}));
    EXPECT_EQ(refusalOf(lock.check.prove(lock.folder.store(), 7, kPin, momentAt(1), Ms{0})),
              Problem::AssessorUnknown);
    EXPECT_FALSE(lock.folder.one(QStringLiteral("SELECT pin_hash FROM assessor")).contains(kPin));
}

TEST(RecordPinsTest, EachWrongTryFromTheThirdOnMakesTheNextWaitLonger)
{
    Lock lock;
    for (int i = 0; i < 3; ++i)
        EXPECT_EQ(refusalOf(lock.at(10, kWrong)), Problem::PinWrong) << i;
    EXPECT_EQ(heldFor(lock.at(10, kPin)), pinDelay(3)) << "even the right one waits";
    EXPECT_EQ(refusalOf(lock.at(11, kWrong)), Problem::PinWrong);
    EXPECT_EQ(heldFor(lock.at(11, kPin)), pinDelay(4));
    EXPECT_EQ(heldFor(lock.at(12, kPin)), pinDelay(4) - 1);
    EXPECT_TRUE(lock.at(13, kPin));
    EXPECT_EQ(refusalOf(lock.at(13, kWrong)), Problem::PinWrong) << "the right one forgives the wrong ones";
    EXPECT_TRUE(lock.at(13, kPin));
}

TEST(RecordPinsTest, AStartForgivesNothing)
{
    Lock lock;
    for (int i = 0; i < 8; ++i)
        EXPECT_EQ(refusalOf(lock.at(i * 100, kWrong)), Problem::PinWrong) << i;
    lock.startAgain();
    EXPECT_EQ(heldFor(lock.at(0, momentAt(1, 702), kPin)), pinDelay(8) - 2);
    EXPECT_EQ(heldFor(lock.at(10, momentAt(1, 712), kPin)), pinDelay(8) - 12);
    EXPECT_TRUE(lock.at(31, momentAt(1, 733), kPin));
}

TEST(RecordPinsTest, ACalendarThatIsSetBackOrForthHoldsNobodyForADayAndFreesNobody)
{
    Lock lock;
    for (int i = 0; i < 8; ++i)
        EXPECT_EQ(refusalOf(lock.at(i * 100, kWrong)), Problem::PinWrong);
    EXPECT_EQ(heldFor(lock.at(701, momentAt(20), kPin)), pinDelay(8) - 1) << "forth, while it runs";
    EXPECT_EQ(heldFor(lock.at(702, momentAt(-20), kPin)), pinDelay(8) - 2) << "back, while it runs";
    lock.startAgain();
    EXPECT_EQ(heldFor(lock.at(0, momentAt(-20), kPin)), pinDelay(8)) << "back, before a start";
    EXPECT_EQ(heldFor(lock.at(30, momentAt(-20, 30), kPin)), pinDelay(8) - 30) << "and it runs down";
    EXPECT_TRUE(lock.at(32, momentAt(-20, 32), kPin));
}

TEST(RecordPinsTest, TheFirstIsEnrolledByAnybodyAndEachFurtherOneByOneWhoIsProved)
{
    RecordFolder folder;
    Store& store = folder.store();
    const auto enrol = [&](const char* name, const QString& pin, const std::optional<Proof>& by) {
        return enrolAssessor(store, QString::fromLatin1(name), pin, by, momentAt(0));
    };
    EXPECT_EQ(refusalOf(enrol("  ", kPin, {})), Problem::NameMissing);
    EXPECT_EQ(refusalOf(enrol("Ada", QStringLiteral("4938"), {})), Problem::PinTooShort);
    EXPECT_EQ(refusalOf(enrol("Ada", QStringLiteral("123456"), {})), Problem::PinTooCommon);
    EXPECT_TRUE(readAssessors(store)->empty());
    const auto first = enrol(" Ada ", kPin, {});
    ASSERT_TRUE(first);
    EXPECT_EQ(first->assessor, (Assessor{1, QStringLiteral("Ada")}));
    EXPECT_EQ(refusalOf(enrol("Ben", kPin, {})), Problem::AssessorUnknown);
    EXPECT_EQ(refusalOf(enrol("Ben", kPin, Proof{{8, QStringLiteral("x")}})), Problem::AssessorUnknown);
    EXPECT_EQ(enrol("Ben", kPin, *first)->assessor.id, 2);
    EXPECT_EQ(
        folder.one(QStringLiteral("SELECT group_concat(actor || ' ' || object) FROM audit WHERE event = "
                                  "'ENROL'")),
        u"assessor-1 assessor-1,assessor-1 assessor-2");
}

}  // namespace fb::test::record_pins_tests
