// An answer as one line of JSON, and back.
#include <utility>

#include "core/session/answer_json.h"
#include "core/session/sheet_defaults.h"

namespace fb {

namespace answer_text_detail {

using nlohmann::ordered_json;

ordered_json jsonOf(Point point) { return ordered_json::array({point.x, point.y}); }

ordered_json jsonOf(const Patient& patient)
{
    const Individual& own = patient.individual();
    return {{"age", patient.ageYears()},
            {"sex", wordOf(patient.sex())},
            {"stature", patient.stature().value()},
            {"weight", patient.weight().value()},
            {"side", wordOf(patient.side())},
            {"arm_length", own.armLength},
            {"axilla_gap", own.axillaGap},
            {"arm_girth", own.armGirth},
            {"crest_gap", own.crestGap},
            {"thigh_length", own.thighLength},
            {"thigh_girth", own.thighGirth}};
}

ordered_json jsonOf(const Finding& finding)
{
    return {{"code", wordOf(finding.code)}, {"part", wordOf(finding.part)}, {"side", wordOf(finding.side)}};
}

ordered_json jsonOf(const Request& request)
{
    ordered_json object{{"number", request.number},
                        {"site", wordOf(request.site)},
                        {"view", wordOf(request.view)},
                        {"patient", jsonOf(request.patient)},
                        {"tone", request.skinTone}};
    if (request.finding)
        object["finding"] = jsonOf(*request.finding);
    return object;
}

Patient patientIn(JsonFields& request)
{
    static const Patient somebody =
        Patient::make(40.0, Sex::Female, Cm{165.0}, Kg{65.0}, Side::Right).value();
    JsonFields fields = request.object("patient");
    const auto own = [&](std::string_view name) { return fields.number(name, -3.0, 3.0); };
    const double age = fields.number("age", 0.0, kFarthestKept);
    const Sex sex = fields.word("sex", sexFrom);
    const Cm stature{fields.number("stature", 0.0, kFarthestKept)};
    const Kg weight{fields.number("weight", 0.0, kFarthestKept)};
    const Side side = fields.word("side", sideFrom);
    const Individual individual{own("arm_length"), own("axilla_gap"),   own("arm_girth"),
                                own("crest_gap"),  own("thigh_length"), own("thigh_girth")};
    fields.noMore();
    const auto patient = Patient::make(age, sex, stature, weight, side, individual);
    if (!patient)
        request.wrong("patient", patient.error().what);
    return patient.value_or(somebody);
}

Finding findingIn(JsonFields fields)
{
    Finding finding;
    finding.code = fields.word(
        "code", [](std::string_view word) { return enumFrom<FindingCode>(word, kFindingCodeCount); });
    finding.part = fields.word("part", [](std::string_view word) {
        return enumFrom<BodyPart>(word, static_cast<int>(BodyPart::WholeSide) + 1);
    });
    finding.side = fields.word("side", sideFrom);
    fields.noMore();
    return finding;
}

Request requestIn(JsonFields fields)
{
    const int number = fields.whole("number", 0, kSheetMostItems - 1);
    const Site site = fields.word("site", siteFrom);
    const View view = fields.word("view", viewFrom);
    if (siteOf(view) != site)
        fields.wrong("view", std::string(wordOf(view)));
    Request request{number, site, view, patientIn(fields), fields.whole("tone", 0, kSkinToneCount - 1), {}};
    if (fields.has("finding"))
        request.finding = findingIn(fields.object("finding"));
    fields.noMore();
    return request;
}

void addGrade(ordered_json& object, const Answer& answer)
{
    object["verdict"] = wordOf(answer.verdict);
    object["points"] = answer.points;
    object["distance"] = answer.distanceToIdeal.value();
    object["distal"] = answer.offDistal.value();
    object["anterior"] = answer.offAnterior.value();
    object["direction"] = wordOf(answer.direction);
    if (answer.hazard)
        object["hazard"] = wordOf(*answer.hazard);
}

void readGrade(JsonFields& fields, Answer& answer)
{
    answer.verdict =
        fields.word("verdict", [](std::string_view word) { return enumFrom<Verdict>(word, kVerdictCount); });
    answer.points = fields.number("points", 0.0, 1.0);
    answer.distanceToIdeal = Cm{fields.number("distance", 0.0, kFarthestKept)};
    answer.offDistal = Cm{fields.number("distal", -kFarthestKept, kFarthestKept)};
    answer.offAnterior = Cm{fields.number("anterior", -kFarthestKept, kFarthestKept)};
    answer.direction = fields.word(
        "direction", [](std::string_view word) { return enumFrom<Direction>(word, kDirectionCount); });
    if (fields.has("hazard"))
        answer.hazard = fields.word(
            "hazard", [](std::string_view word) { return enumFrom<HazardCode>(word, kHazardCodeCount); });
}

void readGiven(JsonFields& fields, Answer& answer)
{
    answer.timeUp = fields.flag("time_up");
    if (fields.has("mark"))
        answer.mark = fields.point("mark", kFarthestKept);
    if (fields.has("refusal"))
        answer.refusal = fields.word(
            "refusal", [](std::string_view word) { return enumFrom<FindingCode>(word, kFindingCodeCount); });
    answer.byHand = fields.has("build") || fields.has("flags");
    if (answer.byHand)
        readHand(fields, answer);
    const int given = (answer.timeUp ? 1 : 0) + (answer.mark ? 1 : 0) + (answer.refusal ? 1 : 0);
    if (given != 1 || (answer.byHand && !answer.mark))
        fields.wrong("mark", {});
}

}  // namespace answer_text_detail

using answer_text_detail::addGrade;

nlohmann::ordered_json jsonOf(const Answer& answer)
{
    nlohmann::ordered_json object{{"item", answer.item},
                                  {"request", answer_text_detail::jsonOf(answer.request)},
                                  {"convention", wordOf(answer.convention)},
                                  {"time_up", answer.timeUp}};
    if (answer.mark)
        object["mark"] = answer_text_detail::jsonOf(*answer.mark);
    if (answer.refusal)
        object["refusal"] = wordOf(*answer.refusal);
    if (answer.byHand)
        addHand(object, answer);
    addGrade(object, answer);
    return object;
}

Answer answerIn(JsonFields fields)
{
    using namespace answer_text_detail;
    const int item = fields.whole("item", 0, kSheetMostItems - 1);
    const Request request = requestIn(fields.object("request"));
    Answer answer{item, request, fields.word("convention", conventionFrom)};
    if (siteOf(answer.convention) != request.site)
        fields.wrong("convention", std::string(wordOf(answer.convention)));
    readGiven(fields, answer);
    readGrade(fields, answer);
    fields.noMore();
    return answer;
}

std::string textOf(const Answer& answer) { return lineOf(jsonOf(answer)); }

Result<Answer> answerFrom(std::string_view text)
{
    constexpr Problem kProblem = Problem::AnswerNotReadable;
    JsonText read(text, {kProblem, kProblem, kProblem, kProblem});
    Answer answer = answerIn(JsonFields(read));
    if (read.fault())
        return tl::unexpected(*read.fault());
    return answer;
}

}  // namespace fb
