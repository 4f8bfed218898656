// What a learner may type for a landmark, in every language: no term of one bone is another's, and
// the language's own names and short forms are taken.
#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QHash>
#include <QTranslator>
#include <map>

#include "app/words/landmark_words.h"
#include "tests/support/translation_file.h"

namespace fb::test::landmark_terms_tests {

namespace landmark_terms_test {

// Speaks as a translation file of the source tree does.
class FileTranslator : public QTranslator {
public:
    explicit FileTranslator(const QString& path)
    {
        for (const Message& message : messagesOf(path))
            if (!message.forms.isEmpty())
                m_texts.insert(message.context + QLatin1Char('\n') + message.source, message.forms.first());
        QCoreApplication::installTranslator(this);
    }
    FileTranslator(const FileTranslator&) = delete;
    FileTranslator& operator=(const FileTranslator&) = delete;
    ~FileTranslator() override { QCoreApplication::removeTranslator(this); }

    [[nodiscard]] bool isEmpty() const override { return m_texts.isEmpty(); }
    [[nodiscard]] QString translate(const char* context, const char* source, const char*, int) const override
    {
        return m_texts.value(QString::fromUtf8(context) + QLatin1Char('\n') + QString::fromUtf8(source));
    }

private:
    QHash<QString, QString> m_texts;
};

}  // namespace landmark_terms_test

using namespace landmark_terms_test;

TEST(LandmarkTermsTest, NoTermOfASiteBelongsToTwoLandmarksInAnyLanguage)
{
    for (const QString& path : completeLanguages()) {
        const FileTranslator translator(path);
        for (const Site site : kSites) {
            std::map<std::u32string, int> owner;
            for (const AcceptedTerm& term : acceptedTerms(site)) {
                const auto [at, isNew] = owner.emplace(term.text, term.id);
                EXPECT_EQ(at->second, term.id) << languageOf(path).toStdString() << ": "
                                               << QString::fromStdU32String(term.text).toStdString();
            }
        }
    }
}

TEST(LandmarkTermsTest, EveryLanguageTakesItsOwnNamesHoweverTheyAreWritten)
{
    for (const QString& path : completeLanguages()) {
        const FileTranslator translator(path);
        for (const Site site : kSites) {
            for (const Landmark landmark : offeredLandmarks(site)) {
                const TermMatch match = named(landmarkName(landmark).toUpper(), site);
                EXPECT_EQ(match.fit, TermFit::Exact) << wordOf(landmark);
                EXPECT_EQ(match.id, static_cast<int>(landmark)) << wordOf(landmark);
            }
        }
    }
}

TEST(LandmarkTermsTest, SpanishHasItsOwnShortFormsAndForgivesMissingAccents)
{
    const FileTranslator translator(
        QStringLiteral(FINGERBREADTH_SOURCE_DIR "/translations/fingerbreadth_es.ts"));
    const auto means = [](const char* typed, Site site) { return named(QString::fromUtf8(typed), site).id; };
    EXPECT_EQ(means("EIAS", Site::Ventrogluteal), static_cast<int>(Landmark::AnteriorSuperiorIliacSpine));
    EXPECT_EQ(means("EIPS", Site::Ventrogluteal), static_cast<int>(Landmark::PosteriorSuperiorIliacSpine));
    EXPECT_EQ(means("trocanter mayor", Site::VastusLateralis), static_cast<int>(Landmark::GreaterTrochanter));
    EXPECT_EQ(means("rotula", Site::VastusLateralis), static_cast<int>(Landmark::Patella));
    EXPECT_EQ(means("trocanter menor", Site::Ventrogluteal), static_cast<int>(Landmark::LesserTrochanter));
}

}  // namespace fb::test::landmark_terms_tests
