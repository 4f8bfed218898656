// What a speaker may say at a step: short notes in our own words, with where they come from. Read from
// resources/notes/speaker-notes.json; a file that is missing or damaged leaves the demonstration as it is.
#pragma once

#include <QByteArray>
#include <QString>
#include <map>

#include "core/basics/enums.h"
#include "core/basics/problem.h"

namespace fb {

struct SpeakerNote {
    QString text;    // in the language of the moment
    QString source;  // likewise; "common practice, no source" where there is none
};

class SpeakerNotes {
public:
    // NotesNotReadable names the file and what is wrong.
    [[nodiscard]] static Result<SpeakerNotes> parse(const QByteArray& json);
    [[nodiscard]] static Result<SpeakerNotes> shipped();

    // By site and the key of a lecture step ("press feel_spine"); a note of the convention goes before one of
    // the site, one of the site before one for all. Empty text: there is none.
    [[nodiscard]] SpeakerNote note(Site site, Convention convention, const QString& stepKey) const;

private:
    std::map<QString, SpeakerNote>
        m_notes;  // "deltoid.d0/press feel_acromion", "deltoid/...", "*/skin"; English
};

}  // namespace fb
