#include "app/doors/library.h"

#include <QFile>

namespace fb {

namespace library_detail {

// A policy is a page of text; whatever is larger was named by mistake.
constexpr qint64 kLargestPolicy = 1 << 20;

std::optional<QByteArray> contentsOf(const QString& path, qint64 most)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return std::nullopt;
    QByteArray text = file.read(most + 1);
    if (file.error() != QFileDevice::NoError || text.size() > most)
        return std::nullopt;
    return text;
}

std::optional<QByteArray> shipped(const QString& path)
{
    constexpr qint64 kLargestResource = 1 << 24;
    return contentsOf(path, kLargestResource);
}

std::string_view viewOf(const QByteArray& text)
{
    return {text.constData(), static_cast<std::size_t>(text.size())};
}

QString plateFile(View view)
{
    const std::string_view word = wordOf(view);
    // A hand is no picture of a patient and has a folder of its own.
    const QString pattern =
        view >= View::OpenHand ? QStringLiteral(":/hands/%1.svg") : QStringLiteral(":/plates/%1.svg");
    return pattern.arg(QLatin1StringView(word.data(), qsizetype(word.size())));
}

Result<Plate> shippedPlate(View view)
{
    const QString file = plateFile(view);
    const auto text = shipped(file);
    if (!text)
        return fault(Problem::PlateNotReadable, file.toStdString());
    return parsePlate(viewOf(*text), file.toStdString());
}

}  // namespace library_detail

using namespace library_detail;

Result<std::shared_ptr<const Library>> Library::load()
{
    const std::shared_ptr<Library> library(new Library);
    const QString proportionsFile = QStringLiteral(":/proportions/adult.json");
    const auto proportions = shipped(proportionsFile);
    if (!proportions)
        return fault(Problem::ProportionsBroken, proportionsFile.toStdString());
    auto table = Proportions::parse(viewOf(*proportions));
    if (!table)
        return tl::unexpected(table.error());
    library->m_proportions = std::move(*table);

    const QString policyFile = QStringLiteral(":/policy/default.json");
    const auto policy = shipped(policyFile);
    if (!policy)
        return fault(Problem::PolicyNotReadable, policyFile.toStdString());
    auto numbers = Policy::parse(viewOf(*policy));
    if (!numbers)
        return tl::unexpected(numbers.error());
    library->m_policy = std::move(*numbers);
    return std::shared_ptr<const Library>(library);
}

const Result<Plate>& Library::read(View view) const
{
    Shelf& shelf = m_shelves[static_cast<std::size_t>(view)];
    std::call_once(shelf.once, [&] {
        shelf.plate.emplace(shippedPlate(view));
        shelf.isRead = true;
    });
    return *shelf.plate;
}

bool Library::isRead(View view) const { return m_shelves[static_cast<std::size_t>(view)].isRead; }

Result<std::shared_ptr<const Plate>> Library::plate(View view) const
{
    const Result<Plate>& plate = read(view);
    if (!plate)
        return tl::unexpected(plate.error());
    return std::shared_ptr<const Plate>(shared_from_this(), &*plate);
}

Result<Atlas> Library::atlas(View view) const
{
    Atlas atlas;
    atlas.proportions = &*m_proportions;
    for (const View needed : neededPlates(view)) {
        const Result<Plate>& plate = read(needed);
        if (!plate)
            return tl::unexpected(plate.error());
        atlas.plates[static_cast<std::size_t>(needed)] = &*plate;
    }
    return atlas;
}

Result<Policy> Library::policyWith(const QString& file) const
{
    const auto text = contentsOf(file, kLargestPolicy);
    if (!text)
        return fault(Problem::PolicyNotReadable, file.toStdString());
    return Policy::parseOver(viewOf(*text), *m_policy);
}

}  // namespace fb
