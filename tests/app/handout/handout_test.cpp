#include "app/handout/handout.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QTranslator>
#include <future>

#include "app/words/site_words.h"
#include "tests/support/handout_paper.h"
#include "tests/support/pseudo_translator.h"

namespace fb::test::handout_tests {

namespace handout_test {

constexpr double kMarginPoints = 14.0 / 25.4 * 72.0;

void expectWholePage(const QString& file, const HandoutWords& words)
{
    const QStringList pages = pdfPages(file);
    ASSERT_EQ(pages.size(), 1) << words.heading.toStdString();
    for (const QString& each : {words.heading, words.manner, words.patient, words.caution})
        expectSaid(pages.front(), each);
    expectAnswers(pages.front(), words);
}

// A page that held too much would print its last words over its foot.
void expectNothingUnderTheFoot(const QString& file, const HandoutWords& words)
{
    const QStringList foot = plain(words.caution).split(QLatin1Char(' '), Qt::SkipEmptyParts);
    const QList<PdfWord> all = pdfWords(file);
    QRectF last;
    for (const PdfWord& word : all)
        if (word.text == foot.front() && word.place.top() > last.top())
            last = word.place;
    ASSERT_GT(last.top(), 500.0);
    for (const PdfWord& word : all)
        EXPECT_TRUE(word.place.bottom() <= last.top() + 1.0 || foot.contains(word.text))
            << word.text.toStdString();
}

// The words of the first line, together.
QRectF topLine(const QString& file)
{
    const QList<PdfWord> all = pdfWords(file);
    double top = 1e9;
    for (const PdfWord& word : all)
        top = std::min(top, word.place.top());
    QRectF line;
    for (const PdfWord& word : all)
        if (word.place.top() < top + 5.0)
            line |= word.place;
    return line;
}

std::vector<std::pair<Convention, View>> everything()
{
    std::vector<std::pair<Convention, View>> all;
    for (const Convention convention : kConventions)
        for (const View view : kViews)
            if (siteOf(view) == siteOf(convention))
                all.emplace_back(convention, view);
    return all;
}

}  // namespace handout_test

using namespace handout_test;

TEST(HandoutTest, EveryConventionInEveryViewIsOnePageWithAllItsWords)
{
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    Paper paper;
    for (const auto& [convention, view] : everything()) {
        const HandoutAsk ask = handoutAsk(convention, view);
        const HandoutWords words = handoutWords(ask);
        const QString file = paper.onePage(ask, QPageSize::Letter);
        expectWholePage(file, words);
        expectNothingUnderTheFoot(file, words);
    }
}

TEST(HandoutTest, ThePracticePageGivesNothingAwayAndItsKeyTellsAll)
{
    Paper paper;
    for (const Convention convention : kConventions) {
        const HandoutAsk ask = handoutAsk(convention, {}, 95.0, Side::Left);
        const HandoutWords words = handoutWords(ask);
        const QStringList pages = pdfPages(paper.practice(ask));
        ASSERT_EQ(pages.size(), 2);
        for (const QString& each : {words.task, words.manner, words.patient, words.name, words.day,
                                    words.howTo, words.order, words.keepClear, words.caution})
            expectSaid(pages.front(), each);
        for (const HandoutStep& step : words.steps)
            EXPECT_FALSE(closed(pages.front()).contains(closed(step.look.caption)));
        EXPECT_FALSE(closed(pages.front()).contains(closed(words.rule)));
        for (const QString& each : {words.keyHeading, words.keyHowTo, words.caution})
            expectSaid(pages.back(), each);
        expectAnswers(pages.back(), words);
        expectSaid(pages.front(), QStringLiteral("Page 1 of 2"));
        expectSaid(pages.back(), QStringLiteral("Page 2 of 2"));
    }
}

TEST(HandoutTest, PaperAndTitleAreRightAndEveryFontIsEmbedded)
{
    Paper paper;
    const HandoutAsk ask = handoutAsk(Convention::VentroglutealHand);
    for (const auto& [size, points] :
         {std::pair{QPageSize::A4, "595 x 842"}, {QPageSize::Letter, "612 x 792"}}) {
        for (const auto& [file, pages] :
             {std::pair{paper.onePage(ask, size), "Pages: 1"}, {paper.practice(ask, size), "Pages: 2"}}) {
            const QString about = pdfInfo(file);
            EXPECT_TRUE(about.contains(QLatin1String(points))) << about.toStdString();
            EXPECT_TRUE(about.contains(QLatin1String(pages))) << about.toStdString();
            EXPECT_TRUE(about.contains(QStringLiteral("entrogluteal site, right hip")))
                << about.toStdString();
            const QList<PdfFont> fonts = pdfFonts(file);
            EXPECT_GE(fonts.size(), 3);
            for (const PdfFont& font : fonts)
                EXPECT_TRUE(font.isEmbedded) << font.name.toStdString();
        }
    }
}

TEST(HandoutTest, WhatCannotBeWrittenIsAFaultThatNamesTheFileAndLeavesNothing)
{
    Paper paper;
    const HandoutAsk ask = handoutAsk(Convention::DeltoidStrip);
    const QString nowhere = paper.path(QStringLiteral("no/such/folder/page"));
    const QString folder = QDir::tempPath();
    const QString device = QStringLiteral("/dev/null");
    for (const QString& file : {nowhere, folder, device}) {
        std::vector<Result<bool>> all{writeHandout(ask, file, QPageSize::A4),
                                      writeBlankHandout(ask, file, QPageSize::A4)};
        for (const PictureKind kind : {PictureKind::Pdf, PictureKind::Svg, PictureKind::Png})
            all.push_back(writeStep(ask, 0, kind, file));
        for (const Result<bool>& written : all) {
            ASSERT_FALSE(written.has_value()) << file.toStdString();
            EXPECT_EQ(written.error().problem, Problem::OutputNotWritable);
            EXPECT_EQ(written.error().where, file.toStdString());
        }
    }
    EXPECT_FALSE(QFile::exists(nowhere));
    EXPECT_FALSE(QFileInfo(device).isFile()) << "a device was replaced";
}

TEST(HandoutTest, ItIsWrittenAwayFromTheWindowsThreadAsInIt)
{
    Paper paper;
    const HandoutAsk ask = handoutAsk(Convention::VentroglutealMedians);
    const QString here = pdfText(paper.onePage(ask));
    const QString there = std::async(std::launch::async, [&] { return paper.onePage(ask); }).get();
    EXPECT_EQ(pdfText(there), here);
    EXPECT_FALSE(here.isEmpty());
}

TEST(HandoutTest, AnOlderFileIsReplaced)
{
    Paper paper;
    const QString file = paper.path(QStringLiteral("page.pdf"));
    {
        QFile old(file);
        ASSERT_TRUE(old.open(QIODevice::WriteOnly));
        old.write("old");
    }
    EXPECT_TRUE(
        pdfInfo(paper.onePage(handoutAsk(Convention::DeltoidHalfway))).contains(QStringLiteral("Pages: 1")));
}

TEST(HandoutTest, SpanishIsPrintedInSpanish)
{
    QTranslator spanish;
    ASSERT_TRUE(spanish.load(QStringLiteral(":/i18n/fingerbreadth_es.qm")));
    const QString english = cautionSentence();
    QCoreApplication::installTranslator(&spanish);
    QLocale::setDefault(QLocale(QLocale::Spanish, QLocale::Spain));
    Paper paper;
    const HandoutAsk ask = handoutAsk(Convention::VentroglutealHand);
    const HandoutWords words = handoutWords(ask);
    expectWholePage(paper.onePage(ask), words);
    const QString text = pdfText(paper.practice(ask));
    QCoreApplication::removeTranslator(&spanish);
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    EXPECT_NE(words.caution, english);
    EXPECT_TRUE(words.rule.contains(QStringLiteral("18,1"))) << words.rule.toStdString();
    expectAnswers(text, words);
}

TEST(HandoutTest, AWordyLanguageFromRightToLeftStillHasOnePage)
{
    PseudoTranslator wordy;
    QCoreApplication::installTranslator(&wordy);
    Paper paper;
    for (const Convention convention : kConventions) {
        HandoutAsk ask = handoutAsk(convention);
        ask.direction = Qt::RightToLeft;
        const HandoutWords words = handoutWords(ask);
        const QString file = paper.onePage(ask, QPageSize::Letter);
        EXPECT_TRUE(pdfInfo(file).contains(QStringLiteral("Pages: 1")));
        expectNothingUnderTheFoot(file, words);
        const QRectF line = topLine(file);
        EXPECT_GT(line.right(), 612.0 - kMarginPoints - 3.0) << "the heading begins at the right";
        EXPECT_GT(line.left(), kMarginPoints + 50.0);
        EXPECT_TRUE(pdfInfo(paper.practice(ask, QPageSize::Letter)).contains(QStringLiteral("Pages: 2")));
    }
    QCoreApplication::removeTranslator(&wordy);
}

TEST(HandoutTest, NoWordLiesOutsideTheMargins)
{
    Paper paper;
    const QRectF allowed =
        QRectF(0, 0, 595, 842)
            .adjusted(kMarginPoints - 1, kMarginPoints - 1, 1 - kMarginPoints, 1 - kMarginPoints);
    for (const Convention convention :
         {Convention::DeltoidStrip, Convention::VastusThirds, Convention::VentroglutealHand}) {
        const HandoutAsk ask = handoutAsk(convention);
        for (const QString& file : {paper.onePage(ask), paper.practice(ask)}) {
            const QList<PdfWord> words = pdfWords(file);
            ASSERT_GT(words.size(), 80);
            for (const PdfWord& word : words)
                EXPECT_TRUE(allowed.contains(word.place)) << word.text.toStdString();
        }
    }
}

}  // namespace fb::test::handout_tests
