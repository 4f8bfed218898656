// One patient's plate as a sheet of paper in a file: title, patient, drawing, target and
// caution, as SVG, PNG or PDF. Needs a QGuiApplication (for its fonts), but no display.
#pragma once

#include <QPointF>
#include <QSet>
#include <QString>
#include <memory>
#include <optional>

#include "app/canvas/ink_painter.h"
#include "app/scene/scene.h"
#include "core/basics/enums.h"
#include "core/basics/problem.h"

namespace fb {

struct PlateSheet {
    QString title;
    QString aside;    // one line under the title
    QString verdict;  // one line over the caution; may be empty
    std::shared_ptr<const Picture> picture;
    std::shared_ptr<const Picture> hand;  // laid over it; null: none
    Scene scene;
    QSet<Layer> layers;
    std::optional<QPointF> mark;  // cm, viewer's frame
};

enum class SheetKind { Svg, Png, Pdf };

inline constexpr int kLeastSheetWidth = 200;
inline constexpr int kMostSheetWidth = 20000;

// By the ending of the name, capitals or not; OutputKindUnknown names the file.
[[nodiscard]] Result<SheetKind> sheetKindOf(const QString& file);

// `width` in pixels, kLeastSheetWidth to kMostSheetWidth; a PDF is one A4 page whatever the
// width. The file is written whole or, with OutputNotWritable, not at all.
[[nodiscard]] Result<bool> writeSheet(const PlateSheet& sheet, const QString& file, int width);

}  // namespace fb
