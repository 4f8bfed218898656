#include "app/store/record_answers.h"

#include <gtest/gtest.h>

#include "app/store/audit_chain.h"
#include "app/store/record_values.h"
#include "tests/support/record_folder.h"

namespace fb::test::record_answers_tests {

namespace record_answers_test {

Answer everything()
{
    Request request = requestFrom(11, 0, {SiteSet::only(Site::Ventrogluteal), false});
    request.skinTone = 3;
    request.finding = Finding{FindingCode::Scar, BodyPart::Hip, Side::Left};
    Answer answer{1, request, Convention::VentroglutealMedians};
    answer.mark = Point{1.25, -3.5};
    answer.byHand = true;
    answer.verdict = Verdict::Unsafe;
    answer.points = 0.25;
    answer.distanceToIdeal = Cm{4.125};
    answer.offDistal = Cm{-1.5};
    answer.offAnterior = Cm{2.75};
    answer.direction = Direction::Forward;
    answer.hazard = static_cast<HazardCode>(0);
    return answer;
}

}  // namespace record_answers_test

using namespace record_answers_test;

TEST(RecordAnswersTest, EveryColumnHoldsItsValue)
{
    RecordFolder folder;
    const SheetOnFile sheet = folder.fill(1);
    ASSERT_TRUE(beginCheckOff(folder.store(), orderOf(QStringLiteral("s-001"), sheet), momentAt(1)));
    const Answer answer = everything();
    ASSERT_TRUE(folder.store().commit(
        {{QStringLiteral("INSERT INTO check_off_event VALUES (1, 1, 'answered', 'then', '{}')")}}));
    ASSERT_TRUE(folder.store().transaction(
        [&] { return addAnswer(folder.store(), 1, 1, QStringLiteral("then"), 1, answerColumns(answer)); }));
    const auto is = [&](const char* column) {
        return folder.one(QStringLiteral("SELECT %1 FROM answer").arg(QLatin1String(column))).toStdString();
    };
    const Patient& patient = answer.request.patient;
    EXPECT_EQ(is("item"), "1");
    EXPECT_EQ(is("site"), "ventrogluteal");
    EXPECT_EQ(is("side"), wordOf(patient.side()));
    EXPECT_EQ(is("body_view"), wordOf(answer.request.view));
    EXPECT_EQ(is("convention"), "vg.medians");
    EXPECT_EQ(is("by_hand"), "1");
    EXPECT_EQ(std::stod(is("patient_age_years")), patient.ageYears());
    EXPECT_EQ(is("patient_sex"), wordOf(patient.sex()));
    EXPECT_EQ(std::stod(is("patient_stature_cm")), patient.stature().value());
    EXPECT_EQ(std::stod(is("patient_weight_kg")), patient.weight().value());
    const Individual& own = patient.individual();
    EXPECT_EQ(std::stod(is("patient_arm_length_sd")), own.armLength);
    EXPECT_EQ(std::stod(is("patient_axilla_gap_sd")), own.axillaGap);
    EXPECT_EQ(std::stod(is("patient_arm_girth_sd")), own.armGirth);
    EXPECT_EQ(std::stod(is("patient_crest_gap_sd")), own.crestGap);
    EXPECT_EQ(std::stod(is("patient_thigh_length_sd")), own.thighLength);
    EXPECT_EQ(std::stod(is("patient_thigh_girth_sd")), own.thighGirth);
    EXPECT_EQ(is("skin_tone"), "3");
    EXPECT_EQ(is("finding"), "scar");
    EXPECT_EQ(is("finding_part"), wordOf(BodyPart::Hip));
    EXPECT_EQ(is("finding_side"), "left");
    EXPECT_EQ(is("time_up"), "0");
    EXPECT_EQ(is("refusal"), "");
    EXPECT_EQ(is("mark_x_cm"), "1.25");
    EXPECT_EQ(is("mark_y_cm"), "-3.5");
    EXPECT_EQ(is("distance_to_ideal_cm"), "4.125");
    EXPECT_EQ(is("off_distal_cm"), "-1.5");
    EXPECT_EQ(is("off_anterior_cm"), "2.75");
    EXPECT_EQ(is("direction"), "forward");
    EXPECT_EQ(is("verdict"), "unsafe");
    EXPECT_EQ(is("hazard"), wordOf(static_cast<HazardCode>(0)));
    EXPECT_EQ(is("points"), "0.25");
}

TEST(RecordAnswersTest, ThereIsAValueForEveryNameAndNoneWhereNothingWasGiven)
{
    const Answer silent = unanswered(0, everything().request, Convention::VentroglutealHand);
    const QStringList names = answerWords() + answerNumbers();
    EXPECT_EQ(answerColumnNames(), names.join(u','));
    const QVariantList values = answerColumns(silent);
    ASSERT_EQ(values.size(), names.size());
    for (const char* empty : {"refusal", "mark_x_cm", "mark_y_cm", "hazard"})
        EXPECT_TRUE(values[names.indexOf(QLatin1String(empty))].isNull()) << empty;
    EXPECT_EQ(values[names.indexOf(QLatin1String("time_up"))].toInt(), 1);
    Answer refused = silent;
    refused.timeUp = false;
    refused.refusal = FindingCode::Rash;
    EXPECT_EQ(answerColumns(refused)[names.indexOf(QLatin1String("refusal"))].toString(),
              QStringLiteral("rash"));
}

TEST(RecordAnswersTest, TheHashIsOfWhatIsReadBackAndOfEveryValue)
{
    RecordFolder folder;
    const SheetOnFile sheet = folder.fill(1);
    ASSERT_TRUE(beginCheckOff(folder.store(), orderOf(QStringLiteral("s-001"), sheet), momentAt(1)));
    ASSERT_TRUE(folder.store().commit(
        {{QStringLiteral("INSERT INTO check_off_event VALUES (1, 1, 'answered', 'then', '{}')")}}));
    Answer answer = everything();
    answer.offDistal = Cm{-0.0};
    answer.distanceToIdeal = Cm{1.0 / 3.0};
    answer.refusal.reset();
    ASSERT_TRUE(folder.store().transaction(
        [&] { return addAnswer(folder.store(), 1, 1, QStringLiteral("then"), 1, answerColumns(answer)); }));
    const auto rows = folder.store().rows({QStringLiteral("SELECT %1 FROM answer").arg(answerColumnNames())});
    const QVariantList meant = answerColumns(answer);
    EXPECT_EQ(answerHash(rows->front()), answerHash(meant));
    for (qsizetype i = 0; i < meant.size(); ++i) {
        QVariantList other = meant;
        other[i] = QStringLiteral("x");
        EXPECT_NE(answerHash(other), answerHash(meant)) << i;
        other[i] = QVariant();
        EXPECT_EQ(answerHash(other) == answerHash(meant), meant[i].isNull()) << i;
    }
    const QString told = answerDetail(1, meant, "text");
    EXPECT_EQ(told, QStringLiteral("item=2 row=%1 event=%2")
                        .arg(QLatin1String(answerHash(meant)), QLatin1String(sha256("text"))));
}

}  // namespace fb::test::record_answers_tests
