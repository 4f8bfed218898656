// A PDF as other programs read it: poppler's pdftotext, pdfinfo and pdffonts.
#pragma once

#include <QList>
#include <QProcess>
#include <QRectF>
#include <QRegularExpression>
#include <QString>
#include <QStringList>

namespace fb::test {

[[nodiscard]] inline QString saidBy(const QString& program, const QStringList& arguments)
{
    QProcess process;
    process.start(program, arguments);
    return process.waitForFinished() && process.exitCode() == 0
               ? QString::fromUtf8(process.readAllStandardOutput())
               : QString();
}

// Ligatures are taken apart again.
[[nodiscard]] inline QString plain(const QString& text)
{
    return text.normalized(QString::NormalizationForm_KC);
}

// Without any space.
[[nodiscard]] inline QString closed(const QString& text)
{
    static const QRegularExpression kSpaces(QStringLiteral("\\s+"));
    return plain(text).remove(kSpaces);
}

// In the order in which it was painted.
[[nodiscard]] inline QString pdfText(const QString& file)
{
    return plain(saidBy(QStringLiteral("pdftotext"), {QStringLiteral("-raw"), file, QStringLiteral("-")}));
}

[[nodiscard]] inline QStringList pdfPages(const QString& file)
{
    return pdfText(file).split(QLatin1Char('\f'), Qt::SkipEmptyParts);
}

[[nodiscard]] inline QString pdfInfo(const QString& file)
{
    return saidBy(QStringLiteral("pdfinfo"), {file}).simplified();
}

struct PdfFont {
    QString name;
    bool isEmbedded = false;
};

[[nodiscard]] inline QList<PdfFont> pdfFonts(const QString& file)
{
    // name, type, encoding, then emb, sub, uni and the object's two numbers.
    static const QRegularExpression kRow(
        QStringLiteral("^(\\S+)\\s.*\\s(yes|no)\\s+(yes|no)\\s+(yes|no)\\s"));
    QList<PdfFont> fonts;
    for (const QString& line :
         saidBy(QStringLiteral("pdffonts"), {file}).split(QLatin1Char('\n'), Qt::SkipEmptyParts))
        if (const auto row = kRow.match(line); row.hasMatch())
            fonts.push_back({row.captured(1), row.captured(2) == QLatin1String("yes")});
    return fonts;
}

struct PdfWord {
    QString text;
    QRectF place;  // points, from the upper left corner of its page
};

[[nodiscard]] inline QList<PdfWord> pdfWords(const QString& file)
{
    static const QRegularExpression kWord(QStringLiteral(
        "<word xMin=\"([-0-9.]+)\" yMin=\"([-0-9.]+)\" xMax=\"([-0-9.]+)\" yMax=\"([-0-9.]+)\">(.*)</word>"));
    QList<PdfWord> words;
    auto each = kWord.globalMatch(
        saidBy(QStringLiteral("pdftotext"), {QStringLiteral("-bbox"), file, QStringLiteral("-")}));
    while (each.hasNext()) {
        const auto word = each.next();
        const QPointF low(word.captured(1).toDouble(), word.captured(2).toDouble());
        const QPointF high(word.captured(3).toDouble(), word.captured(4).toDouble());
        words.push_back({plain(word.captured(5)), QRectF(low, high)});
    }
    return words;
}

// Of the first such word; a null rectangle where there is none.
[[nodiscard]] inline QRectF pdfPlaceOf(const QString& file, const QString& text)
{
    for (const PdfWord& word : pdfWords(file))
        if (word.text == text)
            return word.place;
    return {};
}

}  // namespace fb::test
