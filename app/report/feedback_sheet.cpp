#include "app/report/feedback_sheet.h"

#include <QBuffer>
#include <QFileInfo>
#include <QLocale>
#include <QPdfWriter>
#include <QSaveFile>

#include "app/report/sheet_language.h"

namespace fb {

namespace feedback_sheet_detail {

Result<Policy> policyOf(const CheckOffOrder& order, const Library& library)
{
    return Policy::parseOver(order.policyText.toStdString(), library.defaultPolicy());
}

Result<CheckOff> runOf(const CheckOffOnFile& file)
{
    CheckOff run({file.sheet.sheet, file.order.seed, file.order.extraPercent});
    for (const CheckOffEvent& event : file.events)
        if (const auto applied = run.apply(event, std::nullopt); !applied)
            return tl::unexpected(applied.error());
    return run;
}

Result<SheetItemFound> itemOf(const Answer& answer, const Library& library, const Policy& policy)
{
    const Request& request = answer.request;
    const auto plate = library.plate(request.view);
    if (!plate)
        return tl::unexpected(plate.error());
    const auto atlas = library.atlas(request.view);
    if (!atlas)
        return tl::unexpected(atlas.error());
    const auto map = bodyMap(*atlas, request.view, request.patient);
    if (!map)
        return tl::unexpected(map.error());
    auto target = locate(*atlas, policy, request.patient, answer.convention, request.view);
    if (!target)
        return tl::unexpected(target.error());
    auto attempt = regraded(answer, *atlas, policy);
    if (!attempt)
        return tl::unexpected(attempt.error());
    return SheetItemFound{answer, std::move(*attempt), std::make_shared<const Target>(std::move(*target)),
                          std::make_shared<const Picture>(
                              Picture{*plate, movedInk(**plate, *map, request.patient), request.skinTone})};
}

QByteArray asPdf(const FeedbackSheet& sheet, QPageSize::PageSizeId paper)
{
    constexpr int kDotsPerInch = 300;
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setTitle(sheet.words.documentTitle);
    writer.setCreator(QStringLiteral("Fingerbreadth"));
    writer.setResolution(kDotsPerInch);
    writer.setPageSize(QPageSize(paper));
    return paintSheet(sheet, writer) > 0 ? bytes : QByteArray();
}

}  // namespace feedback_sheet_detail

Result<FeedbackSheet> feedbackSheet(const CheckOffOnFile& checkOff, const Library& library)
{
    using namespace feedback_sheet_detail;
    const auto policy = policyOf(checkOff.order, library);
    if (!policy)
        return tl::unexpected(policy.error());
    auto run = runOf(checkOff);
    if (!run)
        return tl::unexpected(run.error());
    CheckOffResult result = run->result();
    FeedbackSheet sheet{
        {checkOff, std::move(*run), std::move(result), {}, QString::fromStdString(policy->name())}, {}};
    for (const Answer& answer : sheet.findings.run.answers()) {
        auto item = itemOf(answer, library, *policy);
        if (!item)
            return tl::unexpected(item.error());
        sheet.findings.items.push_back(std::move(*item));
    }
    inLanguage(checkOff.line.student.language, [&sheet](Qt::LayoutDirection direction) {
        sheet.words = sheetWords(sheet.findings, direction);
    });
    return sheet;
}

QPageSize::PageSizeId usualPaper()
{
    switch (QLocale().territory()) {
    case QLocale::UnitedStates:
    case QLocale::Canada:
    case QLocale::Mexico:
    case QLocale::PuertoRico:
    case QLocale::Philippines: return QPageSize::Letter;
    default: return QPageSize::A4;
    }
}

Result<bool> writeSheet(const FeedbackSheet& sheet, const QString& file, QPageSize::PageSizeId paper)
{
    const QByteArray bytes = feedback_sheet_detail::asPdf(sheet, paper);
    // Saving renames a new file into place, which must never take the place of a device or a pipe.
    const QFileInfo there(file);
    QSaveFile out(file);
    const bool taken = !bytes.isEmpty() && (there.isFile() || !there.exists()) &&
                       out.open(QIODevice::WriteOnly) && out.write(bytes) == bytes.size() && out.commit();
    if (!taken)
        return fault(Problem::OutputNotWritable, file.toStdString());
    return true;
}

}  // namespace fb
