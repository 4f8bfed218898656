#include "app/doors/speaker_notes.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSet>
#include <QTranslator>

#include "app/lecture/lecture_body.h"
#include "app/lecture/lecture_step.h"
#include "core/body/body_values.h"
#include "tests/support/shipped.h"

namespace fb::test::speaker_notes_tests {

namespace speaker_notes_test {

QByteArray shippedFile()
{
    QFile file(QStringLiteral(":/notes/speaker-notes.json"));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return file.readAll();
}

QByteArray notesWith(const char* rows) { return QByteArray("{\"notes\": {") + rows + "}}"; }

QString worded(std::string_view word)
{
    return QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size()));
}

struct Shown {
    Convention convention{};
    QString key;
};

// Every step of every convention in every view of its site, on bodies that show all of them.
std::vector<Shown> everyStep()
{
    std::vector<Shown> all;
    for (const Convention convention : kConventions)
        for (const View view : kViews)
            for (const Stoutness stoutness : kStoutnesses) {
                if (siteOf(view) != siteOf(convention))
                    continue;
                const Patient patient = patientOf(withStoutness({}, stoutness), Side::Left);
                const auto body = makeLectureBody(shippedLibrary(), shippedLibrary().defaultPolicy(),
                                                  {patient, convention, view, 0});
                EXPECT_TRUE(body.has_value());
                for (const LectureStep& step : lectureSteps(*body->target))
                    all.push_back({convention, QString::fromStdString(keyOf(step))});
            }
    return all;
}

// What stands for a text of the notes in another language.
class Elsewhere : public QTranslator {
public:
    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char* context, const char* text, const char*, int) const override
    {
        return QLatin1StringView(context) == QLatin1StringView("fb::SpeakerNotes")
                   ? QStringLiteral("<%1>").arg(QString::fromUtf8(text))
                   : QString();
    }
};

}  // namespace speaker_notes_test

using namespace speaker_notes_test;

TEST(SpeakerNotesTest, EveryStepOfEveryConventionHasANoteAndSaysWhereItIsFrom)
{
    const auto notes = SpeakerNotes::shipped();
    ASSERT_TRUE(notes.has_value()) << notes.error().what;
    const auto steps = everyStep();
    ASSERT_GT(steps.size(), 200U);
    for (const Shown& shown : steps) {
        const SpeakerNote note = notes->note(siteOf(shown.convention), shown.convention, shown.key);
        EXPECT_FALSE(note.text.isEmpty()) << wordOf(shown.convention) << " " << shown.key.toStdString();
        EXPECT_FALSE(note.source.isEmpty()) << wordOf(shown.convention) << " " << shown.key.toStdString();
    }
}

TEST(SpeakerNotesTest, NoShippedNoteIsLongAndNoneIsNeverShown)
{
    const QJsonObject rows =
        QJsonDocument::fromJson(shippedFile()).object()[QStringLiteral("notes")].toObject();
    QSet<QString> reached;
    for (const Shown& shown : everyStep())
        for (const QString& whose : {worded(wordOf(shown.convention)),
                                     worded(wordOf(siteOf(shown.convention))), QStringLiteral("*")})
            if (const QString key = whose + QLatin1Char('/') + shown.key; rows.contains(key)) {
                reached << key;
                break;
            }
    for (auto row = rows.begin(); row != rows.end(); ++row) {
        EXPECT_TRUE(reached.contains(row.key())) << row.key().toStdString() << " is never shown";
        const QString text = row.value().toObject()[QStringLiteral("text")].toString();
        EXPECT_LE(text.size(), 260) << text.toStdString();
        EXPECT_TRUE(text.endsWith(QLatin1Char('.'))) << text.toStdString();
        EXPECT_LE(text.count(QStringLiteral(". ")), 2) << "three sentences at most: " << text.toStdString();
    }
    EXPECT_EQ(shippedFile().count("\"text\": "), rows.size()) << "a key stands twice";
}

TEST(SpeakerNotesTest, TheMostSpecialNoteIsShown)
{
    const auto notes = SpeakerNotes::parse(notesWith(R"("*/skin": {"text": "all", "source": "a"},
                     "deltoid/skin": {"text": "site", "source": "s"},
                     "deltoid.strip/skin": {"text": " convention ", "source": "c"})"));
    ASSERT_TRUE(notes.has_value());
    const QString skin = QStringLiteral("skin");
    const SpeakerNote strip = notes->note(Site::Deltoid, Convention::DeltoidStrip, skin);
    EXPECT_EQ(strip.text, QStringLiteral("convention"));
    EXPECT_EQ(strip.source, QStringLiteral("c"));
    EXPECT_EQ(notes->note(Site::Deltoid, Convention::DeltoidFingers, skin).text, QStringLiteral("site"));
    EXPECT_EQ(notes->note(Site::Ventrogluteal, Convention::VentroglutealHand, skin).text,
              QStringLiteral("all"));
    EXPECT_TRUE(
        notes->note(Site::Deltoid, Convention::DeltoidStrip, QStringLiteral("hazards")).text.isEmpty());
}

TEST(SpeakerNotesTest, EveryKindOfStepMayHaveANote)
{
    for (const Shown& shown : everyStep()) {
        const QByteArray row =
            '"' + QByteArray("*/") + shown.key.toUtf8() + R"(": {"text": "t", "source": "s"})";
        EXPECT_TRUE(SpeakerNotes::parse(notesWith(row.constData())).has_value()) << row.toStdString();
    }
}

TEST(SpeakerNotesTest, TextAndSourceAreSaidInTheLanguageOfTheMoment)
{
    const auto notes = SpeakerNotes::parse(notesWith(R"("*/skin": {"text": "Look.", "source": "book"})"));
    ASSERT_TRUE(notes.has_value());
    const auto said = [&] {
        return notes->note(Site::Deltoid, Convention::DeltoidStrip, QStringLiteral("skin"));
    };
    Elsewhere elsewhere;
    QCoreApplication::installTranslator(&elsewhere);
    const SpeakerNote there = said();
    QCoreApplication::removeTranslator(&elsewhere);
    EXPECT_EQ(there.text, QStringLiteral("<Look.>"));
    EXPECT_EQ(there.source, QStringLiteral("<book>"));
    EXPECT_EQ(said().text, QStringLiteral("Look."));
}

TEST(SpeakerNotesTest, AFileThatIsDamagedIsAFaultThatNamesTheFileAndTheKey)
{
    struct Row {
        QByteArray json;
        const char* what;  // nullptr: whatever the reader says
    };
    const Row rows[] = {
        {"", nullptr},
        {"{\"notes\": {\"*/skin\": {\"text\": \"cut", nullptr},
        {QByteArray(5000, '['), nullptr},
        {"[]", "notes"},
        {"{}", "notes"},
        {"{\"notes\": {}}", "notes"},
        {"{\"notes\": []}", "notes"},
        {"{\"notes\": {\"*/skin\": {\"text\": \"t\", \"source\": \"s\"}}, \"more\": 1}", "more"},
        {notesWith(R"("skin": {"text": "t", "source": "s"})"), "skin"},
        {notesWith(R"("/skin": {"text": "t", "source": "s"})"), "/skin"},
        {notesWith(R"("elbow/skin": {"text": "t", "source": "s"})"), "elbow/skin"},
        {notesWith(R"("*/skin ": {"text": "t", "source": "s"})"), "*/skin "},
        {notesWith(R"("*/skin bare": {"text": "t", "source": "s"})"), "*/skin bare"},
        {notesWith(R"("*/press": {"text": "t", "source": "s"})"), "*/press"},
        {notesWith(R"("*/press nose": {"text": "t", "source": "s"})"), "*/press nose"},
        {notesWith(R"("*/build sciatic_nerve": {"text": "t", "source": "s"})"), "*/build sciatic_nerve"},
        {notesWith(R"("*/wrong_place feel_spine": {"text": "t", "source": "s"})"),
         "*/wrong_place feel_spine"},
        {notesWith(R"("*/skin": "text")"), "*/skin"},
        {notesWith(R"("*/skin": {"text": "t"})"), "*/skin"},
        {notesWith(R"("*/skin": {"text": " ", "source": "s"})"), "*/skin"},
        {notesWith(R"("*/skin": {"text": "t", "source": 3})"), "*/skin"},
        {notesWith(R"("*/skin": {"text": "t", "source": "s", "more": "m"})"), "*/skin"},
    };
    for (const Row& row : rows) {
        const auto notes = SpeakerNotes::parse(row.json);
        ASSERT_FALSE(notes.has_value()) << row.json.left(80).toStdString();
        EXPECT_EQ(notes.error().problem, Problem::NotesNotReadable);
        EXPECT_EQ(notes.error().where, "speaker-notes.json");
        if (row.what)
            EXPECT_EQ(notes.error().what, row.what);
        else
            EXPECT_FALSE(notes.error().what.empty());
    }
}

}  // namespace fb::test::speaker_notes_tests
