// Nothing of a language is left open: every text of the source is in its file, translated,
// with the same placeholders.
#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QRegularExpression>
#include <QSet>
#include <QTemporaryDir>

#include "tests/support/translation_file.h"

namespace fb::test::translation_files_tests {

namespace translation_files_test {

std::string listed(const QStringList& names) { return names.join(QLatin1Char('\n')).toStdString(); }

// Sorted, each once: a language may say a number twice or change the order.
QStringList placeholdersOf(const QString& text)
{
    static const QRegularExpression kPlaceholder(QStringLiteral("%L?(\\d+|n)"));
    QStringList found;
    for (const auto& match : kPlaceholder.globalMatch(text))
        found << match.captured();
    found.sort();
    found.removeDuplicates();
    return found;
}

qsizetype mnemonicsOf(QString text) { return text.remove(QStringLiteral("&&")).count(QLatin1Char('&')); }

// The blanks and the stop a text ends with: what a sentence, a title or a line is known by.
QString endOf(const QString& text)
{
    static const QRegularExpression kEnd(QStringLiteral("[.:…?!]?\\s*$"));
    return kEnd.match(text).captured();
}

QSet<QString> sameInBoth(const QString& language)
{
    QFile file(QStringLiteral(FINGERBREADTH_SOURCE_DIR "/tests/app/languages/same_in_both.json"));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    QSet<QString> same;
    for (const QJsonValue& text : QJsonDocument::fromJson(file.readAll()).object()[language].toArray())
        same << text.toString();
    return same;
}

// Context and source of every text, as the tool that reads the source finds them.
QSet<QString> textsIn(const QVector<Message>& messages)
{
    QSet<QString> texts;
    for (const Message& message : messages)
        texts << message.context + QStringLiteral(": ") + message.source;
    return texts;
}

}  // namespace translation_files_test

using namespace translation_files_test;

TEST(TranslationFilesTest, ThereIsEnglishAndSpanish)
{
    QStringList languages;
    for (const QString& path : translationFiles())
        languages << languageOf(path);
    EXPECT_EQ(languages, (QStringList{QStringLiteral("en"), QStringLiteral("es")}));
}

TEST(TranslationFilesTest, NoTextIsUnfinishedEmptyOrObsolete)
{
    for (const QString& path : translationFiles()) {
        QStringList offenders;
        for (const Message& message : messagesOf(path)) {
            bool isEmpty = message.forms.isEmpty();
            for (const QString& form : message.forms)
                isEmpty = isEmpty || form.trimmed().isEmpty();
            if (isEmpty || !message.state.isEmpty())
                offenders << message.name();
        }
        EXPECT_TRUE(offenders.isEmpty()) << path.toStdString() << "\n" << listed(offenders);
    }
}

TEST(TranslationFilesTest, EveryTextOfTheSourceIsThereAndNoOther)
{
    const QTemporaryDir folder;
    for (const QString& path : completeLanguages()) {
        const QString fresh = folder.filePath(languageOf(path) + QStringLiteral(".ts"));
        QProcess lupdate;
        lupdate.setWorkingDirectory(QStringLiteral(FINGERBREADTH_SOURCE_DIR));
        lupdate.start(QStringLiteral(FINGERBREADTH_LUPDATE),
                      {QStringLiteral("-I"), QStringLiteral("."), QStringLiteral("-recursive"),
                       QStringLiteral("app"), QStringLiteral(FINGERBREADTH_POLICY_SOURCES),
                       QStringLiteral(FINGERBREADTH_NOTES_SOURCES), QStringLiteral("-ts"), fresh});
        ASSERT_TRUE(lupdate.waitForFinished() && lupdate.exitCode() == 0) << lupdate.readAll().toStdString();
        const QSet<QString> wanted = textsIn(messagesOf(fresh));
        const QSet<QString> there = textsIn(messagesOf(path));
        ASSERT_FALSE(wanted.isEmpty());
        EXPECT_TRUE(there.contains(wanted)) << path.toStdString() << " lacks\n"
                                            << listed((wanted - there).values());
        EXPECT_TRUE(wanted.contains(there)) << path.toStdString() << " has too many\n"
                                            << listed((there - wanted).values());
    }
}

TEST(TranslationFilesTest, ATextLikeTheEnglishStandsInTheList)
{
    for (const QString& path : completeLanguages()) {
        QSet<QString> listedSame = sameInBoth(languageOf(path));
        QSet<QString> found;
        QStringList offenders;
        for (const Message& message : messagesOf(path)) {
            if (!message.forms.contains(message.source))
                continue;
            found << message.source;
            if (!listedSame.contains(message.source))
                offenders << message.name();
        }
        EXPECT_TRUE(offenders.isEmpty()) << path.toStdString() << "\n" << listed(offenders);
        EXPECT_TRUE(found.contains(listedSame)) << "listed as alike, but no longer so:\n"
                                                << listed((listedSame - found).values());
    }
}

TEST(TranslationFilesTest, PlaceholdersMnemonicsAndStopsAgree)
{
    for (const QString& path : completeLanguages()) {
        QStringList offenders;
        for (const Message& message : messagesOf(path)) {
            for (const QString& form : message.forms) {
                if (placeholdersOf(form) != placeholdersOf(message.source) ||
                    mnemonicsOf(form) != mnemonicsOf(message.source) || endOf(form) != endOf(message.source))
                    offenders << message.name() + QStringLiteral(" -> ") + form;
            }
        }
        EXPECT_TRUE(offenders.isEmpty()) << path.toStdString() << "\n" << listed(offenders);
    }
}

TEST(TranslationFilesTest, APluralSaysItsNumber)
{
    for (const QString& path : translationFiles()) {
        int plurals = 0;
        for (const Message& message : messagesOf(path)) {
            if (!message.isPlural)
                continue;
            ++plurals;
            EXPECT_EQ(message.forms.size(), 2) << message.name().toStdString();  // English and Spanish alike
            const QLatin1String number(message.source.contains(QLatin1String("%Ln")) ? "%Ln" : "%n");
            for (const QString& form : message.forms)
                EXPECT_TRUE(form.contains(number)) << message.name().toStdString();
        }
        EXPECT_GT(plurals, 0) << path.toStdString();
    }
}

}  // namespace fb::test::translation_files_tests
