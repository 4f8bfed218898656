// Stable words of the build room, for tests and records.
#include "core/build/build.h"

namespace fb {

std::string_view wordOf(BuildKind kind)
{
    switch (kind) {
    case BuildKind::FingersAndTriangle: return "fingers_and_triangle";
    case BuildKind::HalvedLine: return "halved_line";
    case BuildKind::ThighGrid: return "thigh_grid";
    case BuildKind::HandOnHip: return "hand_on_hip";
    case BuildKind::TriangleAndMedians: return "triangle_and_medians";
    }
    return {};
}

std::string_view wordOf(Handle handle)
{
    switch (handle) {
    case Handle::Fingers: return "fingers";
    case Handle::FingersTurn: return "fingers_turn";
    case Handle::BaseFront: return "base_front";
    case Handle::BaseBack: return "base_back";
    case Handle::Apex: return "apex";
    case Handle::LineTop: return "line_top";
    case Handle::LineBottom: return "line_bottom";
    case Handle::LineMiddle: return "line_middle";
    case Handle::ThighTop: return "thigh_top";
    case Handle::ThighBottom: return "thigh_bottom";
    case Handle::UpperLine: return "upper_line";
    case Handle::LowerLine: return "lower_line";
    case Handle::FrontLine: return "front_line";
    case Handle::OuterLine: return "outer_line";
    case Handle::Palm: return "palm";
    case Handle::IndexTip: return "index_tip";
    case Handle::MiddleTip: return "middle_tip";
    case Handle::CornerTrochanter: return "corner_trochanter";
    case Handle::CornerTubercle: return "corner_tubercle";
    case Handle::CornerSpine: return "corner_spine";
    case Handle::FootTrochanter: return "foot_trochanter";
    case Handle::FootTubercle: return "foot_tubercle";
    case Handle::FootSpine: return "foot_spine";
    }
    return {};
}

std::string_view wordOf(BuildChoice choice)
{
    switch (choice) {
    case BuildChoice::WhichHand: return "which_hand";
    case BuildChoice::HowManyFingers: return "how_many_fingers";
    case BuildChoice::WhichCell: return "which_cell";
    }
    return {};
}

std::string_view wordOf(ThighRow row)
{
    switch (row) {
    case ThighRow::Upper: return "upper";
    case ThighRow::Middle: return "middle";
    case ThighRow::Lower: return "lower";
    }
    return {};
}

std::string_view wordOf(ThighColumn column)
{
    switch (column) {
    case ThighColumn::Inside: return "inside";
    case ThighColumn::Between: return "between";
    case ThighColumn::Behind: return "behind";
    }
    return {};
}

}  // namespace fb
