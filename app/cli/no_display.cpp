// One whole request where there is no display: see runWithoutDisplay in cli.h.
#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QLocale>

#include "app/cli/cli.h"
#include "app/cli/commands.h"
#include "app/cli/console.h"
#include "app/cli/documents.h"
#include "app/words/fault_words.h"

namespace fb {

namespace no_display_detail {

struct NoDisplayWords {
    Q_DECLARE_TR_FUNCTIONS(fb::WithoutDisplay)
};

// An invented patient and a mark that is a little too high.
constexpr std::array<std::string_view, 15> kExample{"grade", "--site",   "deltoid", "--side", "left",
                                                    "--age", "34y",      "--sex",   "female", "--stature",
                                                    "163",   "--weight", "71",      "--at",   "0.4,-2.2"};

Result<bool> written(const PlateSheet& sheet, QString& path)
{
    constexpr int kWidth = 1600;
    const QString name = QStringLiteral("fingerbreadth-plate.png");
    Result<bool> done = fault(Problem::OutputNotWritable, name.toStdString());
    // Not where the program was started, unless it must be: that is often its own source folder.
    for (const QDir& folder : {QDir::temp(), QDir::current()}) {
        path = QDir::toNativeSeparators(folder.absoluteFilePath(name));
        if (QFileInfo(path).isSymLink())  // somebody else's trap in a folder that all share
            continue;
        done = writeSheet(sheet, path, kWidth);
        if (done)
            return done;
    }
    return done;
}

// Says everything there is to say in its order; the first fault ends it.
Result<bool> oneRequest(const Library& library)
{
    const auto arguments = parseArguments(kExample);
    const Policy& policy = library.defaultPolicy();
    const auto query = arguments.and_then([&](const Arguments& a) { return queryOf(a, policy); });
    if (!query)
        return tl::unexpected(query.error());
    const auto mark = markOf(*arguments);
    const auto target = targetFor(*query, policy, library);
    if (!target)
        return tl::unexpected(target.error());
    const auto grade = gradeFor(*query, policy, *target, library, *mark);
    if (!grade)
        return tl::unexpected(grade.error());
    auto sheet = sheetOf(*query, policy, library, *mark);
    if (!sheet)
        return tl::unexpected(sheet.error());
    sheet->layers = QSet<Layer>(kLayers.begin(), kLayers.end());
    QString path;
    if (const auto saved = written(*sheet, path); !saved)
        return saved;
    const QString words = gradeText(*query, *target, *mark, *grade) +
                          NoDisplayWords::tr("The plate is drawn in %1\n").arg(path);
    if (!toOutput(words.toStdString()))
        return fault(Problem::OutputNotWritable, "standard output");
    return true;
}

}  // namespace no_display_detail

using namespace no_display_detail;

int runWithoutDisplay()
{
    QLocale::setDefault(QLocale::c());
    char name[] = "fingerbreadth";
    char* argv[] = {name, nullptr};
    const OffscreenApplication application(argv);
    (void)toOutput(NoDisplayWords::tr("There is no display, so here is one whole request without a window.\n"
                                      "(fingerbreadth --help shows the command line.)\n\n")
                       .toStdString());
    const auto done = Library::load().and_then([](const auto& library) { return oneRequest(*library); });
    if (done)
        return kExitGood;
    toErrors(sentenceOf(done.error()));
    return kExitBad;
}

}  // namespace fb
