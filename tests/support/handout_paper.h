// Hand-outs written into a folder of their own, and what is read in them.
#pragma once

#include <gtest/gtest.h>

#include <QTemporaryDir>

#include "app/handout/handout_words.h"
#include "tests/support/handout_sample.h"
#include "tests/support/pdf_reading.h"

namespace fb::test {

class Paper {
public:
    QString onePage(const HandoutAsk& ask, QPageSize::PageSizeId paper = QPageSize::A4)
    {
        const QString file = m_folder.filePath(QStringLiteral("page.pdf"));
        EXPECT_TRUE(writeHandout(ask, file, paper).has_value());
        return file;
    }
    QString practice(const HandoutAsk& ask, QPageSize::PageSizeId paper = QPageSize::A4)
    {
        const QString file = m_folder.filePath(QStringLiteral("practice.pdf"));
        EXPECT_TRUE(writeBlankHandout(ask, file, paper).has_value());
        return file;
    }
    QString step(const HandoutAsk& ask, int step, PictureKind kind)
    {
        const QString file = m_folder.filePath(QStringLiteral("step"));
        EXPECT_TRUE(writeStep(ask, step, kind, file).has_value());
        return file;
    }
    [[nodiscard]] QString path(const QString& name) const { return m_folder.filePath(name); }

private:
    QTemporaryDir m_folder;
};

// Every space is taken out on both sides: where lines are broken is the paper's affair.
inline void expectSaid(const QString& text, const QString& words)
{
    ASSERT_FALSE(words.isEmpty());
    EXPECT_TRUE(closed(text).contains(closed(words))) << words.toStdString() << "\n\n" << text.toStdString();
}

inline void expectAnswers(const QString& text, const HandoutWords& words)
{
    for (const HandoutStep& step : words.steps)
        expectSaid(text, step.number + QLatin1Char(' ') + step.look.caption);
    for (const QString& each :
         {words.hazardsHeading, words.hazards.caption, words.ruleHeading, words.rule, words.sourcesHeading})
        expectSaid(text, each);
    for (const QString& source : words.sources.split(QLatin1Char('\n')))
        expectSaid(text, source);
}

}  // namespace fb::test
