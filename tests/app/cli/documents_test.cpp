#include "app/cli/documents.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "app/cli/commands.h"

namespace fb {

namespace documents_test {

using nlohmann::json;

const Library& library()
{
    static const auto loaded = Library::load().value();
    return *loaded;
}

Query query(Side side = Side::Left)
{
    return {Site::Deltoid, View::ShoulderSide, Convention::DeltoidStrip,
            Patient::make(34.5, Sex::Female, Cm{163.0}, Kg{71.0}, side, {0.5, -1.0, 0.0}).value()};
}

json located(const Query& q)
{
    std::string out;
    const Policy& policy = library().defaultPolicy();
    appendLocateJson(out, q, policy, targetFor(q, policy, library()).value());
    return json::parse(out);
}

json graded(const Query& q, Point mark)
{
    std::string out;
    const Policy& policy = library().defaultPolicy();
    const Target target = targetFor(q, policy, library()).value();
    appendGradeJson(out, q, policy, target, mark, gradeFor(q, policy, target, library(), mark).value());
    return json::parse(out);
}

std::vector<std::string> keysOf(const json& object)
{
    std::vector<std::string> keys;
    for (const auto& [key, value] : object.items())
        keys.push_back(key);
    return keys;  // nlohmann sorts them
}

// Every point of the document turned over in x.
json mirrored(json document)
{
    if (document.is_array() && document.size() == 2 && document[0].is_number()) {
        const double x = document[0].get<double>();
        document[0] = x == 0.0 ? 0.0 : -x;
        return document;
    }
    if (document.is_structured()) {
        for (json& part : document)
            part = mirrored(part);
    }
    return document;
}

// A polygon begins where it likes; sorted corners compare alike.
json sorted(json points)
{
    std::sort(points.begin(), points.end());
    return points;
}

}  // namespace documents_test

using namespace documents_test;

TEST(DocumentsTest, LocateHasExactlyTheKeysThatReadmeNames)
{
    const json document = located(query());
    EXPECT_EQ(keysOf(document),
              (std::vector<std::string>{"arm_length_cm", "axilla_depth_cm", "caution", "construction", "convention",
                                        "hazards", "landmarks", "levels", "patient", "policy", "site", "target",
                                        "view"}));
    EXPECT_EQ(keysOf(document["patient"]),
              (std::vector<std::string>{"age_years", "individual", "sex", "side", "stature_cm", "weight_kg"}));
    EXPECT_EQ(keysOf(document["patient"]["individual"]),
              (std::vector<std::string>{"arm_girth", "arm_length", "axilla_gap"}));
    EXPECT_EQ(keysOf(document["target"]), (std::vector<std::string>{"ideal", "region"}));
    for (const json& hazard : document["hazards"])
        EXPECT_EQ(keysOf(hazard), (std::vector<std::string>{"kind", "name", "region"}));
    for (const json& step : document["construction"])
        EXPECT_EQ(keysOf(step), (std::vector<std::string>{"kind", "points", "step"}));
}

TEST(DocumentsTest, LocateSaysAgainWhatWasAsked)
{
    const json document = located(query());
    EXPECT_EQ(document["site"], "deltoid");
    EXPECT_EQ(document["view"], "shoulder-side");
    EXPECT_EQ(document["convention"], "deltoid.strip");
    EXPECT_EQ(document["policy"], library().defaultPolicy().name());
    const json& patient = document["patient"];
    EXPECT_EQ(patient["age_years"], 34.5);
    EXPECT_EQ(patient["sex"], "female");
    EXPECT_EQ(patient["side"], "left");
    EXPECT_EQ(patient["stature_cm"], 163);
    EXPECT_EQ(patient["individual"]["axilla_gap"], -1);
}

TEST(DocumentsTest, LocateTellsTheTargetToAMillionth)
{
    const Query q = query();
    const Target target = targetFor(q, library().defaultPolicy(), library()).value();
    const json document = located(q);
    EXPECT_NEAR(document["arm_length_cm"].get<double>(), target.armLength.value(), 1e-6);
    EXPECT_EQ(document["landmarks"].size(), target.landmarks.size());
    EXPECT_EQ(document["landmarks"]["acromion"], json::array({0, 0}));
    EXPECT_EQ(document["hazards"].size(), target.hazards.size());
    EXPECT_EQ(document["construction"].size(), target.construction.size());
    ASSERT_EQ(document["target"]["region"].size(), target.region.corners().size());
    for (std::size_t i = 0; i < target.region.corners().size(); ++i) {
        EXPECT_NEAR(document["target"]["region"][i][0].get<double>(), target.region.corners()[i].x, 1e-6);
        EXPECT_NEAR(document["target"]["region"][i][1].get<double>(), target.region.corners()[i].y, 1e-6);
    }
}

TEST(DocumentsTest, KeysAreLowerSnakeCase)
{
    const json document = graded(query(), {0.0, -4.0});
    const std::function<void(const json&)> check = [&](const json& part) {
        for (const auto& [key, value] : part.items()) {
            if (part.is_object())
                EXPECT_EQ(key.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789_"), std::string::npos) << key;
            if (value.is_structured())
                check(value);
        }
    };
    check(document);
}

TEST(DocumentsTest, LeftIsTheMirrorImageOfRight)
{
    const json left = located(query(Side::Left));
    const json right = mirrored(located(query(Side::Right)));
    EXPECT_EQ(left["landmarks"], right["landmarks"]);
    EXPECT_EQ(left["levels"], right["levels"]);
    EXPECT_EQ(left["target"]["ideal"], right["target"]["ideal"]);
    EXPECT_EQ(sorted(left["target"]["region"]), sorted(right["target"]["region"]));
    for (std::size_t i = 0; i < left["hazards"].size(); ++i)
        EXPECT_EQ(sorted(left["hazards"][i]["region"]), sorted(right["hazards"][i]["region"]));
}

TEST(DocumentsTest, AMirroredMarkGetsTheSameGrade)
{
    for (const Point mark : {Point{0.0, -4.0}, Point{1.9, -4.0}, Point{-0.4, -2.2}}) {
        json left = graded(query(Side::Left), {-mark.x, mark.y});
        json right = graded(query(Side::Right), mark);
        for (const char* key : {"inside", "distance_to_border_cm", "offset_cm", "distance_to_ideal_cm", "verdict",
                                "hazard", "reason", "points"})
            EXPECT_EQ(left[key], right[key]) << key;
    }
}

TEST(DocumentsTest, GradeHasExactlyTheKeysThatReadmeAdds)
{
    std::vector<std::string> keys = keysOf(located(query()));
    for (const char* key : {"mark", "inside", "distance_to_border_cm", "offset_cm", "distance_to_ideal_cm", "verdict",
                            "hazard", "reason", "points"})
        keys.emplace_back(key);
    std::sort(keys.begin(), keys.end());
    const json document = graded(query(), {0.0, -4.0});
    EXPECT_EQ(keysOf(document), keys);
    EXPECT_EQ(keysOf(document["offset_cm"]), (std::vector<std::string>{"anterior", "distal"}));
    EXPECT_EQ(keysOf(document["reason"]), (std::vector<std::string>{"amount_cm", "clearance_cm", "direction", "note",
                                                                     "sentence", "tissue"}));
}

TEST(DocumentsTest, TheIdealPointIsGradedOnTarget)
{
    const Query q = query();
    const Point ideal = targetFor(q, library().defaultPolicy(), library()).value().ideal;
    const json document = graded(q, ideal);
    EXPECT_EQ(document["verdict"], "on_target");
    EXPECT_EQ(document["inside"], true);
    EXPECT_LT(document["distance_to_border_cm"].get<double>(), 0.0);
    EXPECT_NEAR(document["distance_to_ideal_cm"].get<double>(), 0.0, 1e-6);
    EXPECT_TRUE(document["hazard"].is_null());
    EXPECT_EQ(document["reason"]["direction"], "none");
}

TEST(DocumentsTest, AMarkOverTheBursaIsUnsafeAndSaysSo)
{
    const json document = graded(query(), {0.0, -2.0});
    EXPECT_EQ(document["verdict"], "unsafe");
    EXPECT_EQ(document["inside"], false);
    EXPECT_GT(document["distance_to_border_cm"].get<double>(), 0.0);
    EXPECT_LT(document["offset_cm"]["distal"].get<double>(), 0.0);
    EXPECT_EQ(document["hazard"], "joint_and_bursa");
    EXPECT_EQ(document["reason"]["direction"], "high");
    EXPECT_FALSE(document["reason"]["sentence"].get<std::string>().empty());
}

TEST(DocumentsTest, AnErrorIsOneSentenceUnderOneKey)
{
    std::string out;
    appendErrorJson(out, Fault{Problem::SideUnknown, {}, "\"up\"\n", 0.0, 0.0});
    const json document = json::parse(out);
    EXPECT_EQ(keysOf(document), std::vector<std::string>{"error"});
    EXPECT_EQ(document["error"].get<std::string>().back(), '.');
}

TEST(DocumentsTest, TextsEndWithTheCaution)
{
    const Query q = query();
    const Policy& policy = library().defaultPolicy();
    const Target target = targetFor(q, policy, library()).value();
    const Point mark{0.0, -2.0};
    const Grade grade = gradeFor(q, policy, target, library(), mark).value();
    for (const QString& text : {locateText(q, target), gradeText(q, target, mark, grade)}) {
        EXPECT_TRUE(text.endsWith(cautionText() + QLatin1Char('\n'))) << text.toStdString();
        EXPECT_FALSE(text.contains(QLatin1String("%")));
        EXPECT_TRUE(text.contains(patientText(q.patient)));
    }
    EXPECT_NE(titleText(query(Side::Left)), titleText(query(Side::Right)));
    EXPECT_TRUE(asideText(q).contains(QLatin1String("163")));
}

}  // namespace fb
