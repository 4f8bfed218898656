// From core's values to what is drawn over a plate: help before the mark, feedback after it.
// Words come from app/words in the language of the moment.
#pragma once

#include <QRectF>

#include "app/scene/scene.h"
#include "core/grade/grade.h"
#include "core/session/request.h"
#include "core/session/summary.h"
#include "core/site/target.h"

namespace fb {

// Drawn and named: a point and a name for each landmark. Named only: the names in anatomical
// order, without a place. Nothing: nothing. Never the region or anything it is built from.
[[nodiscard]] Scene helpScene(const Target& target, HelpLevel help);

// Region, construction and ideal point.
[[nodiscard]] Scene targetScene(const Target& target);

// What a view opened beside another is for: where not, each territory with its word, against the
// region; of an arm the target alone.
[[nodiscard]] Scene companionScene(const Target& target);

// The target with what a needle can hit, and the arrow from mark to ideal point labelled with
// its length as it is measured there. mark is in the viewer's frame, cm.
[[nodiscard]] Scene gradedScene(const Target& target, Point mark, const Grade& grade);

// Where to look once a mark is graded: the construction and the mark with room around them
// for words; cm, low corner first.
[[nodiscard]] QRectF closeUpOf(const Target& target, Point mark);

// All marks of a run at one site laid on one body, each as far from the ideal point as it was on its
// own and in the shape of its verdict, with the region and the chief lines of that body.
[[nodiscard]] Scene runScene(const Target& model, const Summary& summary);

// Another convention's ideal point on the same body.
[[nodiscard]] Scene otherScene(Convention convention, QPointF ideal);

}  // namespace fb
