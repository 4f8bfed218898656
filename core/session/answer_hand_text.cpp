// Flags and build of an answer by hand as JSON, and back.
#include <algorithm>

#include "core/session/answer_json.h"

namespace fb {

namespace answer_hand_detail {

using nlohmann::ordered_json;

ordered_json placeOf(Point point) { return ordered_json::array({point.x, point.y}); }

ordered_json jsonOf(const FreeHand& hand)
{
    return {{"hand", wordOf(hand.hand)},
            {"palm", placeOf(hand.palm)},
            {"turn", hand.turn.value()},
            {"opening", hand.opening.value()}};
}

ordered_json jsonOf(const LaidFingers& fingers)
{
    return {{"count", fingers.count},
            {"hand", wordOf(fingers.hand)},
            {"top", placeOf(fingers.top)},
            {"turn", fingers.turn.value()}};
}

ordered_json jsonOf(const Build& build)
{
    ordered_json object = ordered_json::object();
    if (build.hand)
        object["hand"] = jsonOf(*build.hand);
    if (build.fingers)
        object["fingers"] = jsonOf(*build.fingers);
    for (int i = 0; i < kHandleCount; ++i)
        if (const auto& point = build.point(static_cast<Handle>(i)))
            object[std::string(wordOf(static_cast<Handle>(i)))] = placeOf(*point);
    if (build.cell)
        object["cell"] = {{"row", wordOf(build.cell->row)}, {"column", wordOf(build.cell->column)}};
    return object;
}

FreeHand handIn(JsonFields fields)
{
    const FreeHand hand{fields.word("hand", sideFrom), fields.point("palm", kFarthestKept),
                        Degrees{fields.number("turn", -kFarthestKept, kFarthestKept)},
                        Degrees{fields.number("opening", kClosedOpening, kMostOpening)}};
    fields.noMore();
    return hand;
}

LaidFingers fingersIn(JsonFields fields)
{
    const LaidFingers fingers{fields.whole("count", 2, 3), fields.word("hand", sideFrom),
                              fields.point("top", kFarthestKept),
                              Degrees{fields.number("turn", -kMostFingerTurn, kMostFingerTurn)}};
    fields.noMore();
    return fingers;
}

ThighCell cellIn(JsonFields fields)
{
    constexpr int kCount = 3;
    const ThighCell cell{
        fields.word("row", [](std::string_view word) { return enumFrom<ThighRow>(word, kCount); }),
        fields.word("column", [](std::string_view word) { return enumFrom<ThighColumn>(word, kCount); })};
    fields.noMore();
    return cell;
}

Build buildIn(JsonFields fields, Convention convention, Side side)
{
    Build build;
    build.convention = convention;
    build.side = side;
    if (fields.has("hand"))
        build.hand = handIn(fields.object("hand"));
    if (fields.has("fingers"))
        build.fingers = fingersIn(fields.object("fingers"));
    for (int i = 0; i < kHandleCount; ++i) {
        const Handle handle = static_cast<Handle>(i);
        if (handle != Handle::Fingers && fields.has(wordOf(handle)))
            build.point(handle) = fields.point(wordOf(handle), kFarthestKept);
    }
    if (fields.has("cell"))
        build.cell = cellIn(fields.object("cell"));
    fields.noMore();
    return build;
}

}  // namespace answer_hand_detail

void addHand(nlohmann::ordered_json& object, const Answer& answer)
{
    nlohmann::ordered_json flags = nlohmann::ordered_json::array();
    for (const Flag& flag : answer.flags)
        flags.push_back({{"name", wordOf(flag.name)}, {"at", answer_hand_detail::placeOf(flag.at)}});
    object["flags"] = std::move(flags);
    if (answer.build)
        object["build"] = answer_hand_detail::jsonOf(*answer.build);
}

void readHand(JsonFields& fields, Answer& answer)
{
    for (JsonFields& each : fields.objects("flags")) {
        const Landmark name =
            each.word("name", [](std::string_view word) { return enumFrom<Landmark>(word, kLandmarkCount); });
        if (std::ranges::find(answer.flags, name, &Flag::name) != answer.flags.end())
            each.wrong("name", std::string(wordOf(name)));
        answer.flags.push_back({name, each.point("at", kFarthestKept)});
        each.noMore();
    }
    answer.build =
        answer_hand_detail::buildIn(fields.object("build"), answer.convention, answer.request.patient.side());
    if (!isWhole(*answer.build))
        fields.wrong("build", {});
}

}  // namespace fb
