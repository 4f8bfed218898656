#include "tests/support/translation_file.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QXmlStreamReader>

namespace fb::test {

namespace translation_file_detail {

void readTranslation(QXmlStreamReader& xml, Message& message)
{
    message.state = xml.attributes().value(QLatin1String("type")).toString();
    if (!message.isPlural) {
        message.forms << xml.readElementText();
        return;
    }
    while (xml.readNextStartElement())
        message.forms << xml.readElementText();
}

Message readMessage(QXmlStreamReader& xml, const QString& context)
{
    Message message;
    message.context = context;
    message.isPlural = xml.attributes().value(QLatin1String("numerus")) == QLatin1String("yes");
    while (xml.readNextStartElement()) {
        if (xml.name() == QLatin1String("source"))
            message.source = xml.readElementText();
        else if (xml.name() == QLatin1String("translation"))
            readTranslation(xml, message);
        else
            xml.skipCurrentElement();
    }
    return message;
}

}  // namespace translation_file_detail

QVector<Message> messagesOf(const QString& path)
{
    QVector<Message> messages;
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    QXmlStreamReader xml(&file);
    QString context;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement)
            continue;
        if (xml.name() == QLatin1String("name"))
            context = xml.readElementText();
        else if (xml.name() == QLatin1String("message"))
            messages << translation_file_detail::readMessage(xml, context);
    }
    EXPECT_FALSE(xml.hasError()) << path.toStdString() << ": " << xml.errorString().toStdString();
    return messages;
}

QStringList translationFiles()
{
    const QDir folder(QStringLiteral(FINGERBREADTH_SOURCE_DIR "/translations"));
    QStringList paths;
    for (const QString& name : folder.entryList({QStringLiteral("*.ts")}, QDir::Files))
        paths << folder.filePath(name);
    return paths;
}

QStringList completeLanguages()
{
    QStringList paths = translationFiles();
    paths.removeIf([](const QString& path) { return languageOf(path) == QLatin1String("en"); });
    return paths;
}

QString languageOf(const QString& path) { return path.section(QLatin1Char('_'), -1).chopped(3); }

}  // namespace fb::test
