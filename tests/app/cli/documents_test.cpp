#include "app/cli/documents.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <nlohmann/json.hpp>

#include "app/cli/commands.h"
#include "tests/support/shipped.h"

namespace fb::documents_tests {

namespace documents_test {

Query documentQuery(Side side = Side::Left)
{
    return {Site::Deltoid, View::ShoulderSide, Convention::DeltoidStrip,
            Patient::make(34.5, Sex::Female, Cm{163.0}, Kg{71.0}, side, {0.5, -1.0, 0.0}).value()};
}

nlohmann::json locatedDocument(const Query& q)
{
    std::string out;
    const Policy& policy = shippedLibrary().defaultPolicy();
    appendLocateJson(out, q, policy, targetFor(q, policy, shippedLibrary()).value());
    return nlohmann::json::parse(out);
}

nlohmann::json gradedDocument(const Query& q, Point mark)
{
    std::string out;
    const Policy& policy = shippedLibrary().defaultPolicy();
    const Target target = targetFor(q, policy, shippedLibrary()).value();
    appendGradeJson(out, q, policy, target, mark,
                    gradeFor(q, policy, target, shippedLibrary(), mark).value());
    return nlohmann::json::parse(out);
}

std::vector<std::string> keysOf(const nlohmann::json& object)
{
    std::vector<std::string> keys;
    for (const auto& [key, value] : object.items())
        keys.push_back(key);
    return keys;  // nlohmann sorts them
}

// Every point of the document turned over in x.
nlohmann::json mirroredDocument(nlohmann::json document)
{
    if (document.is_array() && document.size() == 2 && document[0].is_number()) {
        const double x = document[0].get<double>();
        document[0] = x == 0.0 ? 0.0 : -x;
        return document;
    }
    if (document.is_structured()) {
        for (nlohmann::json& part : document)
            part = mirroredDocument(part);
    }
    return document;
}

// A polygon begins where it likes; sorted corners compare alike.
nlohmann::json sortedPoints(nlohmann::json points)
{
    std::sort(points.begin(), points.end());
    return points;
}

}  // namespace documents_test

using namespace documents_test;

TEST(DocumentsTest, LocateHasExactlyTheKeysThatReadmeNames)
{
    const nlohmann::json document = locatedDocument(documentQuery());
    EXPECT_EQ(keysOf(document),
              (std::vector<std::string>{"arm_length_cm", "axilla_depth_cm", "caution", "construction",
                                        "convention", "hazards", "landmarks", "levels", "measured_in",
                                        "patient", "policy", "site", "target", "view"}));
    EXPECT_EQ(keysOf(document["patient"]), (std::vector<std::string>{"age_years", "individual", "sex", "side",
                                                                     "stature_cm", "weight_kg"}));
    EXPECT_EQ(keysOf(document["patient"]["individual"]),
              (std::vector<std::string>{"arm_girth", "arm_length", "axilla_gap", "crest_gap", "thigh_girth",
                                        "thigh_length"}));
    EXPECT_EQ(keysOf(document["target"]), (std::vector<std::string>{"ideal", "region"}));
    for (const nlohmann::json& hazard : document["hazards"])
        EXPECT_EQ(keysOf(hazard), (std::vector<std::string>{"kind", "name", "region"}));
    for (const nlohmann::json& step : document["construction"])
        EXPECT_EQ(keysOf(step), (std::vector<std::string>{"kind", "points", "step"}));
}

TEST(DocumentsTest, EverySiteTellsItsOwnLengthAndTheHipItsHand)
{
    Query thigh = documentQuery();
    thigh.site = Site::VastusLateralis;
    thigh.view = View::ThighFront;
    thigh.convention = Convention::VastusThirds;
    const nlohmann::json thirds = locatedDocument(thigh);
    EXPECT_TRUE(thirds.contains("thigh_length_cm"));
    EXPECT_FALSE(thirds.contains("arm_length_cm"));
    EXPECT_FALSE(thirds.contains("hand"));
    EXPECT_EQ(thirds["measured_in"], "skin_cm");
    Query hip = documentQuery();
    hip.site = Site::Ventrogluteal;
    hip.view = View::HipSide;
    hip.convention = Convention::VentroglutealHand;
    hip.hand = Cm{18.2};
    const nlohmann::json fingers = locatedDocument(hip);
    EXPECT_TRUE(fingers.contains("asis_to_trochanter_cm"));
    EXPECT_EQ(fingers["measured_in"], "plane_cm");
    EXPECT_EQ(fingers["hand"]["which"], "right") << "of a left hip";
    EXPECT_EQ(fingers["hand"]["length_cm"], 18.2);
    EXPECT_EQ(fingers["hand"]["pinned_by"], "spine");
    EXPECT_EQ(fingers["hand"]["index_tip"], fingers["landmarks"]["asis"]);
    EXPECT_EQ(keysOf(fingers["heights_cm"]),
              (std::vector<std::string>{"asis", "greater_trochanter", "iliac_crest",
                                        "lateral_femoral_epicondyle"}));
}

TEST(DocumentsTest, LocateSaysAgainWhatWasAsked)
{
    const nlohmann::json document = locatedDocument(documentQuery());
    EXPECT_EQ(document["site"], "deltoid");
    EXPECT_EQ(document["view"], "shoulder-side");
    EXPECT_EQ(document["convention"], "deltoid.strip");
    EXPECT_EQ(document["policy"], shippedLibrary().defaultPolicy().name());
    const nlohmann::json& patient = document["patient"];
    EXPECT_EQ(patient["age_years"], 34.5);
    EXPECT_EQ(patient["sex"], "female");
    EXPECT_EQ(patient["side"], "left");
    EXPECT_EQ(patient["stature_cm"], 163);
    EXPECT_EQ(patient["individual"]["axilla_gap"], -1);
}

TEST(DocumentsTest, LocateTellsTheTargetToAMillionth)
{
    const Query q = documentQuery();
    const Target target = targetFor(q, shippedLibrary().defaultPolicy(), shippedLibrary()).value();
    const nlohmann::json document = locatedDocument(q);
    EXPECT_NEAR(document["arm_length_cm"].get<double>(), target.armLength.value(), 1e-6);
    EXPECT_EQ(document["landmarks"].size(), target.landmarks.size());
    EXPECT_EQ(document["landmarks"]["acromion"], nlohmann::json::array({0, 0}));
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
    const nlohmann::json document = gradedDocument(documentQuery(), {0.0, -4.0});
    const std::function<void(const nlohmann::json&)> check = [&](const nlohmann::json& part) {
        for (const auto& [key, value] : part.items()) {
            if (part.is_object()) {
                EXPECT_EQ(key.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789_"), std::string::npos)
                    << key;
            }
            if (value.is_structured())
                check(value);
        }
    };
    check(document);
}

TEST(DocumentsTest, LeftIsTheMirrorImageOfRight)
{
    const nlohmann::json left = locatedDocument(documentQuery(Side::Left));
    const nlohmann::json right = mirroredDocument(locatedDocument(documentQuery(Side::Right)));
    EXPECT_EQ(left["landmarks"], right["landmarks"]);
    EXPECT_EQ(left["levels"], right["levels"]);
    EXPECT_EQ(left["target"]["ideal"], right["target"]["ideal"]);
    EXPECT_EQ(sortedPoints(left["target"]["region"]), sortedPoints(right["target"]["region"]));
    for (std::size_t i = 0; i < left["hazards"].size(); ++i)
        EXPECT_EQ(sortedPoints(left["hazards"][i]["region"]), sortedPoints(right["hazards"][i]["region"]));
}

TEST(DocumentsTest, AMirroredMarkGetsTheSameGrade)
{
    for (const Point mark : {Point{0.0, -4.0}, Point{1.9, -4.0}, Point{-0.4, -2.2}}) {
        nlohmann::json left = gradedDocument(documentQuery(Side::Left), {-mark.x, mark.y});
        nlohmann::json right = gradedDocument(documentQuery(Side::Right), mark);
        for (const char* key : {"inside", "distance_to_border_cm", "offset_cm", "distance_to_ideal_cm",
                                "verdict", "hazard", "reason", "points"})
            EXPECT_EQ(left[key], right[key]) << key;
    }
}

TEST(DocumentsTest, GradeHasExactlyTheKeysThatReadmeAdds)
{
    std::vector<std::string> keys = keysOf(locatedDocument(documentQuery()));
    for (const char* key : {"mark", "inside", "distance_to_border_cm", "offset_cm", "distance_to_ideal_cm",
                            "verdict", "hazard", "reason", "points"})
        keys.emplace_back(key);
    std::sort(keys.begin(), keys.end());
    const nlohmann::json document = gradedDocument(documentQuery(), {0.0, -4.0});
    EXPECT_EQ(keysOf(document), keys);
    EXPECT_EQ(keysOf(document["offset_cm"]), (std::vector<std::string>{"anterior", "distal"}));
    EXPECT_EQ(keysOf(document["reason"]), (std::vector<std::string>{"amount_cm", "clearance_cm", "direction",
                                                                    "note", "sentence", "tissue"}));
}

TEST(DocumentsTest, TheIdealPointIsGradedOnTarget)
{
    const Query q = documentQuery();
    const Point ideal = targetFor(q, shippedLibrary().defaultPolicy(), shippedLibrary()).value().ideal;
    const nlohmann::json document = gradedDocument(q, ideal);
    EXPECT_EQ(document["verdict"], "on_target");
    EXPECT_EQ(document["inside"], true);
    EXPECT_LT(document["distance_to_border_cm"].get<double>(), 0.0);
    EXPECT_NEAR(document["distance_to_ideal_cm"].get<double>(), 0.0, 1e-6);
    EXPECT_TRUE(document["hazard"].is_null());
    EXPECT_EQ(document["reason"]["direction"], "none");
}

TEST(DocumentsTest, AMarkOverTheBursaIsUnsafeAndSaysSo)
{
    const nlohmann::json document = gradedDocument(documentQuery(), {0.0, -2.0});
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
    const nlohmann::json document = nlohmann::json::parse(out);
    EXPECT_EQ(keysOf(document), std::vector<std::string>{"error"});
    EXPECT_EQ(document["error"].get<std::string>().back(), '.');
}

TEST(DocumentsTest, TextsEndWithTheCaution)
{
    const Query q = documentQuery();
    const Policy& policy = shippedLibrary().defaultPolicy();
    const Target target = targetFor(q, policy, shippedLibrary()).value();
    const Point mark{0.0, -2.0};
    const Grade grade = gradeFor(q, policy, target, shippedLibrary(), mark).value();
    for (const QString& text : {locateText(q, target), gradeText(q, target, mark, grade)}) {
        EXPECT_TRUE(text.endsWith(cautionText() + QLatin1Char('\n'))) << text.toStdString();
        EXPECT_FALSE(text.contains(QLatin1String("%")));
        EXPECT_TRUE(text.contains(patientText(q.patient)));
    }
    EXPECT_NE(titleText(documentQuery(Side::Left)), titleText(documentQuery(Side::Right)));
    EXPECT_TRUE(asideText(q).contains(QLatin1String("163")));
}

}  // namespace fb::documents_tests
