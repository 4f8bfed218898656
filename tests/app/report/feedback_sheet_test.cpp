#include "app/report/feedback_sheet.h"

#include <gtest/gtest.h>

#include <QGuiApplication>
#include <QTemporaryDir>
#include <QTranslator>

#include "app/words/check_off_words.h"
#include "app/words/site_words.h"
#include "tests/support/pdf_reading.h"
#include "tests/support/pseudo_translator.h"
#include "tests/support/report_sample.h"

namespace fb::test::feedback_sheet_tests {

namespace feedback_sheet_test {

const FeedbackSheet& usualSheet()
{
    static const FeedbackSheet kSheet = [] {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        return sheetOf(usualSample());
    }();
    return kSheet;
}

QString writtenText(const FeedbackSheet& sheet, QPageSize::PageSizeId paper = QPageSize::A4)
{
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("sheet.pdf"));
    EXPECT_TRUE(writeSheet(sheet, file, paper).has_value());
    return pdfText(file);
}

// Every line and space is taken out on both sides: where lines are broken is the paper's affair.
void expectPrinted(const QString& text, const QString& words)
{
    EXPECT_TRUE(closed(text).contains(closed(words))) << words.toStdString() << "\n\n" << text.toStdString();
}

void expectAllWordsPrinted(const FeedbackSheet& sheet, QPageSize::PageSizeId paper)
{
    const QString text = writtenText(sheet, paper);
    const SheetWords& words = sheet.words;
    QStringList all{words.title,           words.invented, words.student,      words.about,  words.outcome,
                    words.outcomeSentence, words.score,    words.cut,          words.rating, words.remark,
                    words.caution,         words.held,     words.readByStudent};
    all += words.reasons + words.practice + words.orders;
    for (const auto& facts : {words.facts, words.record})
        for (const SheetFact& fact : facts)
            all += {fact.first, fact.second};
    for (const SheetItemWords& item : words.items)
        all += {item.name, item.patient, item.verdict, item.finding, item.reason};
    for (const SheetStepWords& step : words.steps)
        all += {step.name, step.remark};
    for (const QString& each : all)
        expectPrinted(text, each);
}

void useLanguage(QTranslator& words, const char* name)
{
    ASSERT_TRUE(words.load(QLocale(QLatin1String(name)), QStringLiteral("fingerbreadth"), QStringLiteral("_"),
                           QStringLiteral(":/i18n")));
    QCoreApplication::installTranslator(&words);
}

}  // namespace feedback_sheet_test

using namespace feedback_sheet_test;

TEST(FeedbackSheetTest, EveryRequiredFieldIsFoundOnThePrintedSheet)
{
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    const QString text = writtenText(usualSheet());
    for (const char* field : {"Marguerite Okonkwo-Lindqvist",
                              "S-1042",
                              "section B",
                              "Sample: invented people",
                              "Intramuscular injection, second year",
                              "2 of 3",
                              "29 November 2026",
                              "Begun",
                              "13:41",
                              "14:05",
                              "Not passed: a critical point",
                              "the cut is 80 %",
                              "Asks about allergies (critical)",
                              "Allergies not asked about before the needle",
                              "Ventrogluteal",
                              "2.0 cm, too far forward and too low",
                              "Off target",
                              "prompted",
                              "not done",
                              "felt for the crest only when asked where it was",
                              "6.4 s",
                              "asked for: 10 s",
                              "What to practise",
                              "3 of 5",
                              "Calm hands, good talk",
                              "Signed by",
                              "Ines Valdemar",
                              "5f0c1db2a97e",
                              "entry 1,234",
                              "Fingerbreadth 0.1.0",
                              "Training aid. Local policy and licensed practice decide.",
                              "page 1 of"})
        expectPrinted(text, QString::fromUtf8(field));
    EXPECT_FALSE(closed(text).contains(QStringLiteral("5f0c1db2a97e4"))) << "only twelve digits are shown";
}

TEST(FeedbackSheetTest, LettersThatAFaceWouldJoinAreFoundOneByOne)
{
    QTranslator spanish;
    useLanguage(spanish, "es");
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("sheet.pdf"));
    ASSERT_TRUE(writeSheet(sheetOf(usualSample()), file, QPageSize::A4).has_value());
    const QString text = pdfText(file);
    QCoreApplication::removeTranslator(&spanish);
    EXPECT_TRUE(text.contains(QStringLiteral("Qué practicar")));
    EXPECT_TRUE(text.contains(QStringLiteral("Identifica")));
    EXPECT_FALSE(text.contains(QChar(0xFB01))) << "no ligature";
}

TEST(FeedbackSheetTest, EveryWordIsPrintedOnBothPapers)
{
    for (const auto paper : {QPageSize::A4, QPageSize::Letter})
        expectAllWordsPrinted(usualSheet(), paper);
}

TEST(FeedbackSheetTest, PaperTitleAndFontsOfTheFileAreRight)
{
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("sheet.pdf"));
    const FeedbackSheet& sheet = usualSheet();
    for (const auto& [paper, size] :
         {std::pair{QPageSize::A4, "595 x 842"}, {QPageSize::Letter, "612 x 792"}}) {
        ASSERT_TRUE(writeSheet(sheet, file, paper).has_value());
        const QString about = pdfInfo(file);
        EXPECT_TRUE(about.contains(QLatin1String(size))) << about.toStdString();
        EXPECT_TRUE(about.contains(sheet.words.documentTitle)) << about.toStdString();
        const QList<PdfFont> fonts = pdfFonts(file);
        EXPECT_GE(fonts.size(), 2);
        for (const PdfFont& font : fonts)
            EXPECT_TRUE(font.isEmbedded) << font.name.toStdString();
    }
}

TEST(FeedbackSheetTest, EachPageHasTheCautionAndItsNumber)
{
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("sheet.pdf"));
    ASSERT_TRUE(writeSheet(usualSheet(), file, QPageSize::A4).has_value());
    const QStringList pages = pdfPages(file);
    ASSERT_GE(pages.size(), 2);
    for (qsizetype i = 0; i < pages.size(); ++i) {
        expectPrinted(pages[i], cautionSentence());
        expectPrinted(pages[i], QStringLiteral("page %1 of %2").arg(i + 1).arg(pages.size()));
    }
}

TEST(FeedbackSheetTest, LongNamesManyItemsAndFormulasArePrintedWhole)
{
    SignedSample sample = usualSample();
    sample.student.given =
        QStringLiteral("=HYPERLINK(\"http://x\",\"%1 %2\") ") + QString(90, QLatin1Char('M'));
    sample.student.family = QStringLiteral("von und zu Sehr-Lang-Namen ").repeated(6);
    sample.student.id = QStringLiteral("+44-@SUM(A1:A9)");
    sample.sheet.title = std::string(117, 'T');
    while (sample.sheet.items.size() < 20)
        sample.sheet.items.push_back(sample.sheet.items[sample.sheet.items.size() % 5]);
    const FeedbackSheet sheet = sheetOf(sample);
    ASSERT_EQ(sheet.words.items.size(), 20U);
    for (const auto paper : {QPageSize::A4, QPageSize::Letter})
        expectAllWordsPrinted(sheet, paper);
}

TEST(FeedbackSheetTest, TheStudentsOwnLanguageIsPrinted)
{
    SignedSample sample = usualSample();
    sample.student.language = QStringLiteral("es");
    const FeedbackSheet sheet = sheetOf(sample);
    QTranslator spanish;
    useLanguage(spanish, "es");
    const QString caution = cautionSentence();
    QCoreApplication::removeTranslator(&spanish);
    ASSERT_NE(caution, cautionSentence());
    expectPrinted(writtenText(sheet), caution);
    expectPrinted(writtenText(sheet), QStringLiteral("2,0 cm"));
    expectAllWordsPrinted(sheet, QPageSize::A4);
}

TEST(FeedbackSheetTest, AWordyLanguageFromRightToLeftHasItsPlace)
{
    PseudoTranslator wordy;
    QCoreApplication::installTranslator(&wordy);
    QGuiApplication::setLayoutDirection(Qt::RightToLeft);
    const FeedbackSheet sheet = sheetOf(usualSample());
    QGuiApplication::setLayoutDirection(Qt::LeftToRight);
    QCoreApplication::removeTranslator(&wordy);
    ASSERT_EQ(sheet.words.direction, Qt::RightToLeft);
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("sheet.pdf"));
    ASSERT_TRUE(writeSheet(sheet, file, QPageSize::A4).has_value());
    const QRectF name = pdfPlaceOf(file, QStringLiteral("Marguerite"));
    EXPECT_GT(name.center().x(), 595.0 / 2.0) << "the name begins at the right";
    ASSERT_TRUE(writeSheet(usualSheet(), file, QPageSize::A4).has_value());
    EXPECT_LT(pdfPlaceOf(file, QStringLiteral("Marguerite")).center().x(), 595.0 / 2.0);
}

TEST(FeedbackSheetTest, NoWordLiesOutsideTheMargins)
{
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("sheet.pdf"));
    ASSERT_TRUE(writeSheet(usualSheet(), file, QPageSize::A4).has_value());
    constexpr double kMargin = 17.0 / 25.4 * 72.0;
    const QRectF allowed =
        QRectF(0, 0, 595, 842).adjusted(kMargin - 1, kMargin - 1, 1 - kMargin, 1 - kMargin);
    const QList<PdfWord> words = pdfWords(file);
    ASSERT_GT(words.size(), 200);
    for (const PdfWord& word : words)
        EXPECT_TRUE(allowed.contains(word.place)) << word.text.toStdString();
}

TEST(FeedbackSheetTest, AnEndWithoutAResultIsToldWithoutAScore)
{
    SignedSample sample = usualSample();
    sample.rating = 0;
    sample.ends = [](const CheckOff& run, Ms now) { return run.voidTechnical("power cut", now); };
    const FeedbackSheet sheet = sheetOf(sample);
    EXPECT_TRUE(sheet.words.score.isEmpty());
    EXPECT_TRUE(sheet.words.steps.empty());
    const QString text = writtenText(sheet);
    expectPrinted(text, QStringLiteral("Void, technical"));
    expectPrinted(text, QStringLiteral("power cut"));
    EXPECT_FALSE(text.contains(QStringLiteral("What to practise")));
}

TEST(FeedbackSheetTest, EventsThatDoNotFollowAndAPolicyThatIsBrokenAreFaults)
{
    CheckOffOnFile file = signedCheckOff(usualSample());
    std::swap(file.events[0], file.events[1]);
    EXPECT_EQ(feedbackSheet(file, shippedLibrary()).error().problem, Problem::CheckOffOutOfOrder);
    file = signedCheckOff(usualSample());
    file.order.policyText = QStringLiteral("{ broken");
    EXPECT_EQ(feedbackSheet(file, shippedLibrary()).error().problem, Problem::PolicyCutShort);
}

TEST(FeedbackSheetTest, TheUsualPaperIsThatOfTheCountry)
{
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
    EXPECT_EQ(usualPaper(), QPageSize::Letter);
    QLocale::setDefault(QLocale(QLocale::Spanish, QLocale::Spain));
    EXPECT_EQ(usualPaper(), QPageSize::A4);
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
}

}  // namespace fb::test::feedback_sheet_tests
