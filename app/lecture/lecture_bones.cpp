#include "app/lecture/lecture_bones.h"

#include <QPainter>
#include <QPainterPath>
#include <QPainterPathStroker>
#include <algorithm>
#include <atomic>

#include "app/canvas/ink_painter.h"
#include "app/lecture/lecture_look_hand.h"

namespace fb {

namespace lecture_bones_detail {

constexpr double kWash = 0.34;     // of a bone's first wash
constexpr double kContour = 0.62;  // of its lines
constexpr double kLeastHatch = 0.7;

// Seen from behind the trochanter is drawn with its femur.
std::vector<std::string> bonesOf(StepCode code)
{
    switch (code) {
    case StepCode::FeelTrochanter: return {"bone.thigh.femur", "bone.thigh.greater-trochanter"};
    case StepCode::FeelSpine:
    case StepCode::FeelCrest:
    case StepCode::FeelTubercle:
    case StepCode::FeelBackSpine: return {"bone.pelvis.ilium"};
    default: return {};
    }
}

// Its contours, and the washes that cover: the form, without its modelling.
Picture faint(const Picture& picture, const std::vector<std::string>& bones)
{
    constexpr double kCovers = 0.9;
    Picture made{picture.plate, {picture.ink.gradients, {}, picture.ink.paper}, picture.skinTone};
    for (const MovedShape& shape : picture.ink.shapes) {
        const Structure& structure = picture.plate->structures[static_cast<std::size_t>(shape.structure)];
        if (std::ranges::find(bones, structure.id) == bones.end() ||
            (!shape.penStroke && shape.opacity < kCovers))
            continue;
        made.ink.shapes.push_back(shape);
        made.ink.shapes.back().opacity *= shape.penStroke ? kContour : kWash;
    }
    return made;
}

QPainterPath pathOf(const std::vector<LaidBar>& bars)
{
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    for (const LaidBar& bar : bars) {
        QPainterPath line(QPointF(bar.from.x, bar.from.y));
        line.lineTo(bar.to.x, bar.to.y);
        QPainterPathStroker stroker;
        stroker.setWidth(2.0 * bar.half.value());
        stroker.setCapStyle(Qt::RoundCap);
        path.addPath(stroker.createStroke(line));
    }
    return path;
}

}  // namespace lecture_bones_detail

std::vector<std::string> bonesFound(const LectureBody& body, const LectureStep& step)
{
    using namespace lecture_bones_detail;
    std::vector<std::string> bones;
    if (body.target->site != Site::Ventrogluteal)
        return bones;
    int index = 0;
    for (const Step& each : body.target->construction) {
        if (each.points.empty())
            continue;
        // What is pressed is named by the next step.
        const bool isNamed =
            step.kind == LectureStepKind::Press ? index < step.construction : index <= step.construction;
        if (isNamed)
            for (const std::string& bone : bonesOf(each.code))
                if (std::ranges::find(bones, bone) == bones.end())
                    bones.push_back(bone);
        ++index;
    }
    return bones;
}

void paintBones(QPainter& painter, const LectureBody& body, const LectureLook& look, const Scheme& scheme,
                const QTransform& cmToDevice)
{
    using namespace lecture_bones_detail;
    if (look.bones.empty())
        return;
    static const std::atomic_bool kNeverCancelled{false};
    painter.save();
    const auto bars = laidBars(look);
    if (!bars.empty()) {
        QPainterPath open;
        const Bounds paper = body.picture->ink.paper;
        open.addRect(QRectF(QPointF(paper.low.x, paper.low.y), QPointF(paper.high.x, paper.high.y)));
        painter.setClipPath(cmToDevice.map(open.subtracted(pathOf(bars))), Qt::IntersectClip);
    }
    const Picture bones = faint(*body.picture, look.bones);
    (void)paintInk(painter, ReadyInk(bones, ReadyInk::Rows::None),
                   toneColours(*bones.plate, scheme, bones.skinTone),
                   InkManner{cmToDevice, {Layer::Bone}, kLeastHatch, QColor()}, kNeverCancelled);
    painter.restore();
}

}  // namespace fb
