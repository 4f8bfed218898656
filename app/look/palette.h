// Colours of the program in one place: three palettes (light, dark, projector), the tones of
// the plates for every skin tone, and the roles of the scene. Colour never carries meaning
// alone: each role also has a line style, shape or word of its own (see scene/scene_painter.h).
#pragma once

#include <QColor>
#include <QString>
#include <array>
#include <vector>

#include "core/plate/plate.h"

namespace fb {

// What a shape drawn over a plate stands for.
enum class Role {
    Landmark,      // a bony point
    Construction,  // a line or figure a hand makes
    Newest,        // the line or point that has just been added to it
    Yours,         // where the learner's own line or figure differs
    Field,         // a field between lines that the learner chose
    Region,        // target region
    Ideal,         // ideal point
    Strike,        // area a needle must not enter
    Near,          // structure to know of
    Arrow,         // from mark to ideal; the label is its length
    Other,         // another convention's point
    MarkOnTarget,  // earlier marks, by their verdict
    MarkAcceptable,
    MarkOffTarget,
    MarkUnsafe
};

inline constexpr int kRoleCount = static_cast<int>(Role::MarkUnsafe) + 1;

enum class PaletteKind { Light, Dark, Projector };

struct Scheme {
    PaletteKind kind = PaletteKind::Light;
    QColor window, paper, panel, ink, quietInk, line, accent, accentInk, focus;
    QColor good, fair, bad, danger;  // verdicts; each also has an icon shape and a word

    [[nodiscard]] QColor of(Role role) const;
    [[nodiscard]] bool isDark() const { return kind == PaletteKind::Dark; }

    friend bool operator==(const Scheme&, const Scheme&) = default;
};

[[nodiscard]] Scheme schemeOf(PaletteKind kind);

// The one fill that two see-through fills come to, so that a large area is filled once.
[[nodiscard]] QColor layered(const QColor& under, const QColor& over);

inline constexpr std::array kPaletteKinds{PaletteKind::Light, PaletteKind::Dark, PaletteKind::Projector};
inline constexpr int kSkinRampCount = 5;  // one for each skin tone a request may have

// One colour for each tone of the plate, in the plate's order, for a skin tone of 0 (lightest)
// to kSkinRampCount - 1. A tone name the look does not know keeps the colour in the file.
[[nodiscard]] std::vector<QColor> toneColours(const Plate& plate, const Scheme& scheme, int skinTone);

}  // namespace fb
