#include "app/records/replay.h"

#include <gtest/gtest.h>

#include <QCryptographicHash>
#include <QFile>
#include <algorithm>

#include "app/words/site_words.h"
#include "tests/support/sample_records.h"

namespace fb::test::replay_tests {

namespace replay_test {

struct Kept {
    explicit Kept(Point off = {0.3, -0.4}) : id(records.signedOne(0, off)) {}

    [[nodiscard]] OpenedCheckOff opened()
    {
        std::optional<OpenedCheckOff> made;
        records.read(id, nullptr, [&](const Result<CheckOffOnFile>& file) {
            made = openedCheckOff(file.value()).value();
        });
        return *made;
    }
    [[nodiscard]] Replay replay(int item)
    {
        return replayOf(opened(), item, *sharedLibrary(), sharedLibrary()->defaultPolicy());
    }

    SampleRecords records;
    qint64 id;
};

int countOf(const Scene& scene, Role role)
{
    return static_cast<int>(std::ranges::count(scene, role, &SceneShape::role));
}

}  // namespace replay_test

using namespace replay_test;

TEST(ReplayTest, EveryRecordedAnswerComesToWhatWasRecordedOnItsOwnPatient)
{
    Kept kept;
    for (int item = 0; item < 3; ++item) {
        const Replay replay = kept.replay(item);
        EXPECT_FALSE(replay.broken.has_value());
        EXPECT_TRUE(replay.sameDrawing);
        EXPECT_TRUE(replay.sameGrade);
        ASSERT_TRUE(replay.shown.graded.has_value());
        ASSERT_NE(replay.shown.picture, nullptr);
        EXPECT_EQ(replay.shown.graded->grade.verdict, replay.recorded.verdict);
        EXPECT_EQ(replay.shown.target->site, replay.recorded.request.site);
        EXPECT_EQ(replay.shown.request->patient, replay.recorded.request.patient);
        EXPECT_EQ(countOf(replay.shown.scene, Role::Arrow), 1);
        EXPECT_EQ(replay.items, 3);
    }
    EXPECT_NE(kept.replay(1).shown.hand, nullptr) << "the hip's convention lays a hand";
}

TEST(ReplayTest, TheLabsOwnNumbersAreReadOverTheShippedOnes)
{
    Kept kept({0.0, 1.5});
    auto& order = kept.records.kept.at(kept.id).open.order;
    order.policyText = QStringLiteral(R"({"conventions": {"deltoid": "deltoid.halfway"}})");
    const Replay replay = kept.replay(0);
    EXPECT_FALSE(replay.broken.has_value());
    EXPECT_EQ(replay.shown.policy->convention(Site::Deltoid), Convention::DeltoidHalfway);
    EXPECT_EQ(replay.shown.target->convention, replay.recorded.convention) << "the recorded one is drawn";
    EXPECT_TRUE(replay.sameGrade);
    order.policyText = QStringLiteral("{ this is cut");
    const Replay broken = kept.replay(0);
    ASSERT_TRUE(broken.broken.has_value());
    EXPECT_EQ(broken.shown.picture, nullptr);
    EXPECT_EQ(broken.recorded.mark, replay.recorded.mark) << "what was recorded is still told";
}

TEST(ReplayTest, AnotherDrawingAndAnotherGradeAreFoundOut)
{
    Kept kept;
    auto& order = kept.records.kept.at(kept.id).open.order;
    order.plateHashes.replace(plateHash(View::HipSide), QString(64, u'0'));
    EXPECT_FALSE(kept.replay(1).sameDrawing);
    EXPECT_TRUE(kept.replay(0).sameDrawing);
    kept.records.answerOfItem(kept.id, 0).offDistal = Cm{9.0};
    const Replay changed = kept.replay(0);
    EXPECT_FALSE(changed.sameGrade);
    EXPECT_EQ(countOf(changed.shown.scene, Role::Arrow), 0) << "no number is drawn that was not recorded";
    EXPECT_EQ(countOf(changed.shown.scene, Role::Region), 1);
}

TEST(ReplayTest, NoAnswerShowsTheTargetAlone)
{
    Kept kept;
    kept.records.leaveUnanswered(kept.id, 0);
    Replay replay = kept.replay(0);
    EXPECT_FALSE(replay.broken.has_value());
    EXPECT_FALSE(replay.shown.graded.has_value());
    EXPECT_EQ(countOf(replay.shown.scene, Role::Region), 1);
    replay.shown.scene.clear();
    retranslate(replay);
    EXPECT_EQ(countOf(replay.shown.scene, Role::Region), 1);
}

TEST(ReplayTest, HashesAreOfTheShippedFilesAndReadFromTheRecord)
{
    QFile file(QStringLiteral(":/plates/thigh-side.svg"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QString hash =
        QString::fromLatin1(QCryptographicHash::hash(file.readAll(), QCryptographicHash::Sha256).toHex());
    EXPECT_EQ(plateHash(View::ThighSide), hash);
    const QString recorded = QStringLiteral("thigh-front=aa thigh-side=bb");
    EXPECT_EQ(recordedHash(recorded, View::ThighSide), QStringLiteral("bb"));
    EXPECT_EQ(recordedHash(recorded, View::HipSide), QString());
}

TEST(ReplayTest, AgreesToTheLastDigitThatLeavesCoreAndNoFurther)
{
    Kept kept;
    const Answer recorded = kept.records.answerOfItem(kept.id, 0);
    Answer again = recorded;
    EXPECT_TRUE(agree(recorded, again));
    again.distanceToIdeal = Cm{recorded.distanceToIdeal.value() + 1e-7};
    EXPECT_TRUE(agree(recorded, again));
    again.distanceToIdeal = Cm{recorded.distanceToIdeal.value() + 1e-5};
    EXPECT_FALSE(agree(recorded, again));
    again = recorded;
    again.verdict = Verdict::Unsafe;
    EXPECT_FALSE(agree(recorded, again));
    again = recorded;
    again.points += 0.25;
    EXPECT_FALSE(agree(recorded, again));
}

TEST(ReplayTest, OfTheAreasThatMustBeSparedOnlyTheOneThatWasStruckIsNamed)
{
    for (const Point off : {Point{0.0, 0.0}, Point{-4.0, 3.0}}) {
        Kept kept(off);
        const Replay replay = kept.replay(1);
        ASSERT_TRUE(replay.shown.graded.has_value());
        const auto hazard = replay.shown.graded->grade.hazard;
        int areas = 0;
        for (const SceneShape& shape : replay.shown.scene) {
            if (shape.role != Role::Strike && shape.role != Role::Near)
                continue;
            ++areas;
            EXPECT_FALSE(spoken(shape).isEmpty()) << "a screen reader still tells of it";
            EXPECT_TRUE(shape.label.isEmpty() || (hazard && shape.label == hazardName(*hazard)))
                << shape.label.toStdString();
        }
        EXPECT_GT(areas, 2) << "all of them are drawn";
    }
}

}  // namespace fb::test::replay_tests
