// A clinical term is said as the glossary has it, and the glossary says where it has it from.
#include <gtest/gtest.h>

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QRegularExpression>
#include <QSet>

#include "tests/support/translation_file.h"

namespace fb::test::glossary_tests {

namespace glossary_test {

QJsonArray terms()
{
    QFile file(QStringLiteral(FINGERBREADTH_SOURCE_DIR "/resources/glossary/clinical-terms.json"));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return QJsonDocument::fromJson(file.readAll()).object()[QLatin1String("terms")].toArray();
}

QStringList stringsOf(const QJsonValue& list)
{
    QStringList strings;
    for (const QJsonValue& each : list.toArray())
        strings << each.toString();
    return strings;
}

// The term as it may stand in an English sentence: whole words, and none of the command line's.
QRegularExpression englishOf(const QJsonObject& term)
{
    QStringList forms = stringsOf(term[QLatin1String("english_forms")]);
    if (forms.isEmpty()) {
        const QString english = term[QLatin1String("english")].toString();
        forms << english << english + QLatin1Char('s');
    }
    for (QString& form : forms)
        form = QRegularExpression::escape(form);
    return QRegularExpression(
        QStringLiteral("(?<![\\w.|-])(%1)(?![\\w|-])").arg(forms.join(QLatin1Char('|'))),
        QRegularExpression::CaseInsensitiveOption);
}

// "a|b" is said when either stands in the text.
bool says(const QString& text, const QString& stem)
{
    for (const QString& choice : stem.split(QLatin1Char('|'))) {
        if (text.contains(choice, Qt::CaseInsensitive))
            return true;
    }
    return false;
}

// Words that look like a term and are none: a journal's name, words of the command line.
QString withoutNames(QString text)
{
    for (const char* name :
         {"Fingerbreadth", "J Bone Joint Surg", "bone,vessel,nerve,muscle,skin,surface,cloth"})
        text.remove(QLatin1String(name));
    return text;
}

}  // namespace glossary_test

using namespace glossary_test;

TEST(GlossaryTest, EveryTermHasBothWordsItsStemsAndASource)
{
    QSet<QString> ids;
    const QJsonArray all = terms();
    EXPECT_GE(all.size(), 70);
    for (const QJsonValue& each : all) {
        const QJsonObject term = each.toObject();
        const QString id = term[QLatin1String("id")].toString();
        EXPECT_FALSE(ids.contains(id)) << id.toStdString() << " stands twice";
        ids << id;
        for (const char* key : {"id", "english", "spanish", "source"})
            EXPECT_FALSE(term[QLatin1String(key)].toString().trimmed().isEmpty())
                << id.toStdString() << " " << key;
        const QStringList stems = stringsOf(term[QLatin1String("spanish_stems")]);
        EXPECT_FALSE(stems.isEmpty()) << id.toStdString();
        for (const QString& stem : stems)
            EXPECT_TRUE(says(term[QLatin1String("spanish")].toString(), stem))
                << id.toStdString() << ": its own Spanish lacks " << stem.toStdString();
    }
}

TEST(GlossaryTest, ATermOfAnEnglishTextIsSaidByItsSpanishTerm)
{
    const auto messages =
        messagesOf(QStringLiteral(FINGERBREADTH_SOURCE_DIR "/translations/fingerbreadth_es.ts"));
    int used = 0;
    for (const QJsonValue& each : terms()) {
        const QJsonObject term = each.toObject();
        const QRegularExpression english = englishOf(term);
        const QStringList stems = stringsOf(term[QLatin1String("spanish_stems")]);
        for (const Message& message : messages) {
            if (!english.match(withoutNames(message.source)).hasMatch())
                continue;
            ++used;
            for (const QString& form : message.forms) {
                for (const QString& stem : stems)
                    EXPECT_TRUE(says(form, stem))
                        << term[QLatin1String("id")].toString().toStdString() << " (" << stem.toStdString()
                        << "): " << message.source.toStdString() << "\n -> " << form.toStdString();
            }
        }
    }
    EXPECT_GT(used, 100) << "the glossary touches next to nothing";
}

}  // namespace fb::test::glossary_tests
