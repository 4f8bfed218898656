#include "app/doors/speaker_notes.h"

#include <QCoreApplication>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>
#include <array>

#include "core/site/construction.h"
#include "core/site/hazard.h"

namespace fb {

namespace speaker_notes_detail {

constexpr auto kFile = "speaker-notes.json";
constexpr qint64 kLargest = 1 << 20;
const QLatin1StringView kForAll("*");

QString worded(std::string_view word)
{
    return QString::fromLatin1(word.data(), static_cast<qsizetype>(word.size()));
}

tl::unexpected<Fault> broken(const QString& what)
{
    return fault(Problem::NotesNotReadable, kFile, what.toStdString());
}

// Whether it is the word of one of so many codes.
template <class Code>
bool isWordOf(const QString& word, int count)
{
    for (int i = 0; i < count; ++i)
        if (word == worded(wordOf(static_cast<Code>(i))))
            return true;
    return false;
}

bool isWhose(const QString& whose)
{
    const std::string word = whose.toStdString();
    return whose == kForAll || siteFrom(word) || conventionFrom(word);
}

// As keyOf(LectureStep) writes them; the lecture itself lies beyond this room.
bool isStep(const QString& key)
{
    const qsizetype space = key.indexOf(QLatin1Char(' '));
    const QString kind = space < 0 ? key : key.left(space);
    const QString code = space < 0 ? QString() : key.mid(space + 1);
    if (kind == QLatin1StringView("press") || kind == QLatin1StringView("build"))
        return isWordOf<StepCode>(code, kStepCodeCount);
    if (kind == QLatin1StringView("wrong_place"))
        return isWordOf<HazardCode>(code, kHazardCodeCount);
    return space < 0 && (kind == QLatin1StringView("skin") || kind == QLatin1StringView("hazards"));
}

bool isKey(const QString& key)
{
    const qsizetype slash = key.indexOf(QLatin1Char('/'));
    return slash > 0 && isWhose(key.left(slash)) && isStep(key.mid(slash + 1));
}

// Both texts and nothing else.
bool isNote(const QJsonObject& row)
{
    return row.size() == 2 && std::ranges::all_of(std::array{"text", "source"}, [&row](const char* field) {
               return !row[QLatin1StringView(field)].toString().trimmed().isEmpty();
           });
}

QString translated(const QString& english)
{
    return QCoreApplication::translate("fb::SpeakerNotes", english.toUtf8().constData());
}

}  // namespace speaker_notes_detail

Result<SpeakerNotes> SpeakerNotes::parse(const QByteArray& json)
{
    using namespace speaker_notes_detail;
    const QString about = QStringLiteral("about");
    const QString notes = QStringLiteral("notes");
    QJsonParseError error;
    const QJsonObject root = QJsonDocument::fromJson(json, &error).object();
    if (error.error != QJsonParseError::NoError)
        return broken(error.errorString());
    for (const QString& key : root.keys())
        if (key != about && key != notes)
            return broken(key);
    if (!root[notes].isObject() || root[notes].toObject().isEmpty())
        return broken(notes);
    SpeakerNotes made;
    const QJsonObject rows = root[notes].toObject();
    for (auto row = rows.begin(); row != rows.end(); ++row) {
        const QJsonObject fields = row.value().toObject();
        if (!isKey(row.key()) || !isNote(fields))
            return broken(row.key());
        made.m_notes.emplace(row.key(), SpeakerNote{fields[QStringLiteral("text")].toString().trimmed(),
                                                    fields[QStringLiteral("source")].toString().trimmed()});
    }
    return made;
}

Result<SpeakerNotes> SpeakerNotes::shipped()
{
    using namespace speaker_notes_detail;
    QFile file(QStringLiteral(":/notes/speaker-notes.json"));
    if (!file.open(QIODevice::ReadOnly))
        return broken(file.errorString());
    return parse(file.read(kLargest));
}

SpeakerNote SpeakerNotes::note(Site site, Convention convention, const QString& stepKey) const
{
    using namespace speaker_notes_detail;
    for (const QString& whose : {worded(wordOf(convention)), worded(wordOf(site)), QString(kForAll)}) {
        const auto found = m_notes.find(whose + QLatin1Char('/') + stepKey);
        if (found != m_notes.end())
            return {translated(found->second.text), translated(found->second.source)};
    }
    return {};
}

}  // namespace fb
