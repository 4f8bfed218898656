// draw: one patient's plate with construction and target, and a graded mark where one is named.
#include <algorithm>
#include <charconv>
#include <functional>
#include <iterator>

#include <QCoreApplication>
#include <QFile>

#include "app/canvas/hand_painter.h"
#include "app/cli/commands.h"
#include "app/cli/documents.h"
#include "app/cli/plate_sheet.h"
#include "app/scene/target_scene.h"
#include "app/words/grade_words.h"

namespace fb {

namespace draw_detail {

struct DrawWords {
    Q_DECLARE_TR_FUNCTIONS(fb::CommandLineDraw)
};

constexpr int kUsualWidth = 1600;

Result<int> widthFrom(const std::string& text)
{
    if (text.empty())
        return kUsualWidth;
    int width = 0;
    const char* end = text.data() + text.size();
    const auto [rest, error] = std::from_chars(text.data(), end, width);
    if (error != std::errc{} || rest != end || width < kLeastSheetWidth || width > kMostSheetWidth)
        return fault(Problem::ArgumentBadValue, "--width", text, kLeastSheetWidth, kMostSheetWidth);
    return width;
}

// What only draw asks for, checked before anything is computed.
struct Wanted {
    QString file;
    int width = 0;
    QSet<Layer> layers;
    std::optional<Point> mark;
};

Result<Wanted> wantedOf(const Arguments& arguments)
{
    Wanted wanted;
    if (arguments.value(Option::Out).empty())
        return fault(Problem::ArgumentMissing, "--out");
    wanted.file = QFile::decodeName(QByteArray::fromStdString(arguments.value(Option::Out)));
    if (const auto kind = sheetKindOf(wanted.file); !kind)
        return tl::unexpected(kind.error());
    const auto width = widthFrom(arguments.value(Option::Width));
    if (!width)
        return tl::unexpected(width.error());
    wanted.width = *width;
    const auto layers = layersFrom(arguments.value(Option::Layers));
    if (!layers)
        return tl::unexpected(layers.error());
    wanted.layers = QSet<Layer>(layers->begin(), layers->end());
    if (!arguments.value(Option::At).empty()) {
        const auto mark = markOf(arguments);
        if (!mark)
            return tl::unexpected(mark.error());
        wanted.mark = *mark;
    }
    return wanted;
}

Result<std::shared_ptr<const Picture>> pictureOf(const Query& query, const Library& library)
{
    const auto plate = library.plate(query.view);
    if (!plate)
        return tl::unexpected(plate.error());
    return library.atlas(query.view)
        .and_then([&](const Atlas& atlas) { return bodyMap(atlas, query.view, query.patient); })
        .map([&](const BodyMap& map) -> std::shared_ptr<const Picture> {
            return std::make_shared<const Picture>(Picture{*plate, movedInk(**plate, map, query.patient), 0});
        });
}

// The target and every landmark, each named once. A view to look at only shows where not to go.
Scene sceneOf(const Target& target)
{
    const auto asked = askedViews(target.site);
    if (std::ranges::find(asked, target.view) == asked.end())
        return companionScene(target);
    Scene scene = targetScene(target);
    const Scene landmarks = helpScene(target, HelpLevel::DrawnAndNamed);
    const auto named = [&scene](const SceneShape& landmark) {
        return std::ranges::any_of(scene,
                                   [&](const SceneShape& shape) { return shape.label == landmark.label; });
    };
    std::ranges::copy_if(landmarks, std::back_inserter(scene), std::not_fn(named));
    return scene;
}

}  // namespace draw_detail

using namespace draw_detail;

Result<PlateSheet> sheetOf(const Query& query, const Policy& policy, const Library& library,
                           std::optional<Point> mark)
{
    const auto target = targetFor(query, policy, library);
    if (!target)
        return tl::unexpected(target.error());
    PlateSheet sheet;
    sheet.title = titleText(query);
    sheet.aside = asideText(query);
    sheet.scene = sceneOf(*target);
    if (mark) {
        const auto grade = gradeFor(query, policy, *target, library, *mark);
        if (!grade)
            return tl::unexpected(grade.error());
        sheet.mark = QPointF(mark->x, mark->y);
        sheet.scene = gradedScene(*target, *mark, *grade);
        //: The verdict, then the sentence of reason.
        sheet.verdict =
            DrawWords::tr("%1. %2").arg(verdictName(grade->verdict), reasonSentence(query.site, *grade));
    }
    auto picture = pictureOf(query, library);
    if (!picture)
        return tl::unexpected(picture.error());
    sheet.picture = std::move(*picture);
    if (target->hand) {
        const auto art = library.plate(View::OpenHand);
        if (!art)
            return tl::unexpected(art.error());
        sheet.hand = handPicture(*art, target->hand);
    }
    return sheet;
}

Result<std::string> drawAnswer(const Arguments& arguments, const Library& library)
{
    const auto policy = policyFor(arguments, library);
    if (!policy)
        return tl::unexpected(policy.error());
    const auto query = queryOf(arguments, *policy);
    if (!query)
        return tl::unexpected(query.error());
    const auto wanted = wantedOf(arguments);
    if (!wanted)
        return tl::unexpected(wanted.error());
    auto sheet = sheetOf(*query, *policy, library, wanted->mark);
    if (!sheet)
        return tl::unexpected(sheet.error());
    sheet->layers = wanted->layers;
    return writeSheet(*sheet, wanted->file, wanted->width).map([&](bool) {
        return DrawWords::tr("Written: %1\n").arg(wanted->file).toStdString();
    });
}

}  // namespace fb
