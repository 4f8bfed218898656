#include "app/report/sheet_language.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QEvent>
#include <QSignalSpy>
#include <QTest>
#include <QTranslator>
#include <QWidget>
#include <thread>

#include "app/words/site_words.h"
#include "tests/support/pseudo_translator.h"

namespace fb::test::sheet_language_tests {

namespace sheet_language_test {

class ListeningWidget : public QWidget {
public:
    int heard = 0;

protected:
    void changeEvent(QEvent* event) override
    {
        heard += event->type() == QEvent::LanguageChange ? 1 : 0;
        QWidget::changeEvent(event);
    }
};

struct HeardWords {
    QString words, number;
    Qt::LayoutDirection direction{};
    std::thread::id where;
};

HeardWords wordsIn(const QString& language)
{
    HeardWords heard;
    inLanguage(language, [&](Qt::LayoutDirection direction) {
        heard = {sideName(Side::Right), QLocale().toString(1.5), direction, std::this_thread::get_id()};
    });
    return heard;
}

}  // namespace sheet_language_test

using namespace sheet_language_test;

TEST(SheetLanguageTest, WordsAndNumbersAreThoseOfTheLanguageAskedFor)
{
    const HeardWords heard = wordsIn(QStringLiteral("es"));
    EXPECT_EQ(heard.words, QStringLiteral("derecho"));
    EXPECT_EQ(heard.number, QStringLiteral("1,5"));
    EXPECT_EQ(heard.direction, Qt::LeftToRight);
}

TEST(SheetLanguageTest, AfterwardsEverythingIsAsBefore)
{
    const QLocale before(QLocale::German);
    QLocale::setDefault(before);
    (void)wordsIn(QStringLiteral("es"));
    EXPECT_EQ(sideName(Side::Right), QStringLiteral("right"));
    EXPECT_EQ(QLocale(), before);
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
}

TEST(SheetLanguageTest, WithoutALanguageItIsThatOfTheMoment)
{
    PseudoTranslator pseudoLanguage;
    QCoreApplication::installTranslator(&pseudoLanguage);
    QGuiApplication::setLayoutDirection(Qt::RightToLeft);
    for (const char* name : {"", "xx", "nonsense"}) {
        const HeardWords heard = wordsIn(QLatin1String(name));
        EXPECT_EQ(heard.words, pseudo(QStringLiteral("right"))) << name;
        EXPECT_EQ(heard.direction, Qt::RightToLeft) << name;
    }
    QGuiApplication::setLayoutDirection(Qt::LeftToRight);
    QCoreApplication::removeTranslator(&pseudoLanguage);
}

TEST(SheetLanguageTest, EnglishIsEnglishThoughTheProgramSpeaksAnotherLanguage)
{
    PseudoTranslator pseudoLanguage;
    QCoreApplication::installTranslator(&pseudoLanguage);
    EXPECT_EQ(wordsIn(QStringLiteral("en")).words, QStringLiteral("right"));
    EXPECT_EQ(sideName(Side::Right), pseudo(QStringLiteral("right")));
    QCoreApplication::removeTranslator(&pseudoLanguage);
}

TEST(SheetLanguageTest, NoWindowIsToldOfIt)
{
    ListeningWidget widget;
    QCoreApplication::processEvents();
    widget.heard = 0;
    (void)wordsIn(QStringLiteral("es"));
    QCoreApplication::processEvents();
    EXPECT_EQ(widget.heard, 0);
    // And they still hear of a real change.
    QTranslator other;
    ASSERT_TRUE(other.load(QLocale(QStringLiteral("es")), QStringLiteral("fingerbreadth"),
                           QStringLiteral("_"), QStringLiteral(":/i18n")));
    QCoreApplication::installTranslator(&other);
    QCoreApplication::processEvents();
    EXPECT_GT(widget.heard, 0);
    QCoreApplication::removeTranslator(&other);
}

TEST(SheetLanguageTest, AWorkerHasItsWorkDoneInTheWindowsThread)
{
    HeardWords heard;
    std::atomic_bool done = false;
    std::thread worker([&] {
        heard = wordsIn(QStringLiteral("es"));
        done = true;
    });
    EXPECT_TRUE(QTest::qWaitFor([&] { return done.load(); }));
    worker.join();
    EXPECT_EQ(heard.where, std::this_thread::get_id());
    EXPECT_EQ(heard.words, QStringLiteral("derecho"));
}

TEST(SheetLanguageTest, AWorkerGoesOnAloneWhenTheWindowsThreadDoesNotAnswer)
{
    HeardWords heard;
    std::thread worker([&] { heard = wordsIn(QStringLiteral("es")); });
    worker.join();  // this thread turns no events meanwhile
    EXPECT_NE(heard.where, std::this_thread::get_id());
    EXPECT_EQ(heard.words, QStringLiteral("right"));
    // What was asked of this thread in vain is not done afterwards.
    heard.words = QStringLiteral("untouched");
    QCoreApplication::processEvents();
    EXPECT_EQ(heard.words, QStringLiteral("untouched"));
}

TEST(SheetLanguageTest, EachLanguageThatIsOfferedHasWords)
{
    EXPECT_EQ(sheetLanguages(), (QStringList{QStringLiteral("en"), QStringLiteral("es")}));
    for (const QString& each : sheetLanguages())
        EXPECT_FALSE(wordsIn(each).words.isEmpty());
}

}  // namespace fb::test::sheet_language_tests
