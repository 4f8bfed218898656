// The JSON documents of documents.h. Their keys are a promise: README lists them all.
#include "app/cli/documents.h"
#include "app/cli/json.h"
#include "app/words/fault_words.h"
#include "app/words/grade_words.h"

namespace fb {

namespace documents_json_detail {

void putPatient(JsonWriter& json, const Patient& patient)
{
    const Individual& individual = patient.individual();
    json.key("patient").beginObject();
    json.key("age_years").number(patient.ageYears());
    json.key("sex").text(wordOf(patient.sex()));
    json.key("stature_cm").number(patient.stature().value());
    json.key("weight_kg").number(patient.weight().value());
    json.key("side").text(wordOf(patient.side()));
    json.key("individual").beginObject();
    json.key("arm_length").number(individual.armLength);
    json.key("axilla_gap").number(individual.axillaGap);
    json.key("arm_girth").number(individual.armGirth);
    json.key("crest_gap").number(individual.crestGap);
    json.key("thigh_length").number(individual.thighLength);
    json.key("thigh_girth").number(individual.thighGirth);
    json.endObject().endObject();
}

// The lengths of the site at hand.
void putLengths(JsonWriter& json, const Target& target)
{
    switch (target.site) {
    case Site::Deltoid:
        json.key("arm_length_cm").number(target.armLength.value());
        json.key("axilla_depth_cm").number(target.axillaDepth.value());
        return;
    case Site::VastusLateralis: json.key("thigh_length_cm").number(target.thighLength.value()); break;
    case Site::Ventrogluteal:
        json.key("asis_to_trochanter_cm").number(target.asisToTrochanter.value());
        break;
    }
    json.key("heights_cm").beginObject();
    for (const auto& [name, height] : target.heights)
        json.key(name).number(height);
    json.endObject();
}

// The hand that finds the site, where the convention lays one.
void putHand(JsonWriter& json, const Target& target)
{
    if (!target.hand)
        return;
    const HandPose& hand = *target.hand;
    json.key("hand").beginObject();
    json.key("which").text(wordOf(hand.hand));
    json.key("length_cm").number(hand.length.value());
    json.key("opening_degrees").number(hand.opening.value());
    json.key("pinned_by").text(wordOf(hand.pin));
    json.key("wrist").point(hand.wrist);
    json.key("fork").point(hand.fork);
    json.key("index_tip").point(hand.indexTip);
    json.key("middle_tip").point(hand.middleTip);
    json.endObject();
}

void putPlaces(JsonWriter& json, const Target& target)
{
    json.key("landmarks").beginObject();
    for (const auto& [name, at] : target.landmarks)
        json.key(name).point(at);
    json.endObject();
    json.key("levels").beginObject();
    for (const auto& [name, y] : target.levels)
        json.key(name).number(y);
    json.endObject();
}

void putTarget(JsonWriter& json, const Target& target)
{
    json.key("target").beginObject();
    json.key("region").points(target.region.corners());
    json.key("ideal").point(target.ideal);
    json.endObject();
    json.key("hazards").beginArray();
    for (const Hazard& hazard : target.hazards) {
        json.beginObject();
        json.key("name").text(wordOf(hazard.code));
        json.key("kind").text(wordOf(hazard.kind));
        json.key("region").points(hazard.plane.corners());
        json.endObject();
    }
    json.endArray();
    json.key("construction").beginArray();
    for (const Step& step : target.construction) {
        json.beginObject();
        json.key("step").text(wordOf(step.code));
        json.key("kind").text(wordOf(step.kind));
        json.key("points").points(step.points);
        json.endObject();
    }
    json.endArray();
}

void putLocated(JsonWriter& json, const Query& query, const Policy& policy, const Target& target)
{
    json.key("site").text(wordOf(query.site));
    putPatient(json, query.patient);
    json.key("view").text(wordOf(query.view));
    json.key("convention").text(wordOf(query.convention));
    json.key("policy").text(policy.name());
    json.key("measured_in").text(target.surface.isSkin() ? "skin_cm" : "plane_cm");
    putLengths(json, target);
    putPlaces(json, target);
    putTarget(json, target);
    putHand(json, target);
}

void putHazardOrNull(JsonWriter& json, std::string_view key, const std::optional<HazardCode>& code)
{
    json.key(key);
    if (code)
        json.text(wordOf(*code));
    else
        json.null();
}

void putReason(JsonWriter& json, Site site, const Grade& grade)
{
    const Reason& reason = grade.reason;
    json.key("reason").beginObject();
    json.key("direction").text(wordOf(reason.direction));
    json.key("amount_cm").number(reason.amount.value());
    json.key("tissue").text(wordOf(reason.tissue));
    putHazardOrNull(json, "note", reason.note);
    json.key("clearance_cm");
    if (reason.note)
        json.number(reason.clearance.value());
    else
        json.null();
    json.key("sentence").text(reasonSentence(site, grade).toStdString());
    json.endObject();
}

void putGrade(JsonWriter& json, Site site, Point mark, const Grade& grade)
{
    json.key("mark").point(mark);
    json.key("inside").boolean(grade.inside);
    json.key("distance_to_border_cm").number(grade.distanceToBorder.value());
    json.key("offset_cm").beginObject();
    json.key("distal").number(grade.offDistal.value());
    json.key("anterior").number(grade.offAnterior.value());
    json.endObject();
    json.key("distance_to_ideal_cm").number(grade.distanceToIdeal.value());
    json.key("verdict").text(wordOf(grade.verdict));
    putHazardOrNull(json, "hazard", grade.hazard);
    putReason(json, site, grade);
    json.key("points").number(grade.points);
}

void putCaution(JsonWriter& json) { json.key("caution").text(cautionText().toStdString()); }

}  // namespace documents_json_detail

using namespace documents_json_detail;

void appendLocateJson(std::string& out, const Query& query, const Policy& policy, const Target& target)
{
    JsonWriter json(out);
    json.beginObject();
    putLocated(json, query, policy, target);
    putCaution(json);
    json.endObject();
}

void appendGradeJson(std::string& out, const Query& query, const Policy& policy, const Target& target,
                     Point mark, const Grade& grade)
{
    JsonWriter json(out);
    json.beginObject();
    putLocated(json, query, policy, target);
    putGrade(json, target.site, mark, grade);
    putCaution(json);
    json.endObject();
}

void appendErrorJson(std::string& out, const Fault& fault)
{
    JsonWriter(out).beginObject().key("error").text(sentenceOf(fault).toStdString()).endObject();
}

}  // namespace fb
