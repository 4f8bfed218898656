// verify and backup as a script meets them: the real program, as README writes the commands.
#include <gtest/gtest.h>

#include <QProcess>

#include "tests/support/record_folder.h"

namespace fb::test::record_program_test {

struct Said {
    int code = -1;
    QString out, err;
};

Said run(const QStringList& arguments, const QString& folder)
{
    QProcess program;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QStringLiteral("XDG_DATA_HOME"), folder);
    for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"})
        environment.remove(QLatin1String(name));
    program.setProcessEnvironment(environment);
    program.setWorkingDirectory(folder);
    program.start(QStringLiteral(FINGERBREADTH_BINARY), arguments);
    EXPECT_TRUE(program.waitForFinished(60000));
    return {program.exitCode(), QString::fromUtf8(program.readAllStandardOutput()),
            QString::fromUtf8(program.readAllStandardError())};
}

TEST(RecordProgramTest, VerifiesAndBacksUpAFileThatIsNamedAndTheUsualOne)
{
    RecordFolder folder;
    folder.fill();
    const QString head = folder.one(QStringLiteral("SELECT hash FROM audit ORDER BY seq DESC LIMIT 1"));
    folder.close();
    const Said named = run({QStringLiteral("verify"), folder.file()}, folder.root());
    EXPECT_EQ(named.code, 0) << named.err.toStdString();
    EXPECT_TRUE(named.out.contains(head)) << named.out.toStdString();
    const QString usual = folder.root() + QStringLiteral("/Fingerbreadth");
    ASSERT_TRUE(QDir().mkpath(usual));
    ASSERT_TRUE(QFile::copy(folder.file(), usual + QStringLiteral("/records.db")));
    EXPECT_TRUE(run({QStringLiteral("verify")}, folder.root()).out.contains(head));
    const Said kept = run({QStringLiteral("backup"), QStringLiteral("term-end.db")}, folder.root());
    EXPECT_EQ(kept.code, 0) << kept.err.toStdString();
    const QString copy = folder.root() + QStringLiteral("/term-end.db");
    EXPECT_EQ(modeOf(copy), 0600U);
    EXPECT_TRUE(run({QStringLiteral("verify"), copy}, folder.root()).out.contains(head));
}

TEST(RecordProgramTest, BadArgumentsAreOneSentenceAndCodeTwo)
{
    const RecordFolder folder;
    for (const QStringList& bad :
         {QStringList{"verify"}, QStringList{"verify", "none.db"}, QStringList{"verify", "a.db", "b.db"},
          QStringList{"verify", "--json"}, QStringList{"backup"}, QStringList{"backup", "a.db", "b.db"}}) {
        const Said said = run(bad, folder.root());
        EXPECT_EQ(said.code, 2) << bad.join(u' ').toStdString();
        EXPECT_TRUE(said.out.isEmpty());
        EXPECT_EQ(said.err.count(u'\n'), 1) << said.err.toStdString();
        EXPECT_FALSE(said.err.contains(QStringLiteral("is not known; use"))) << said.err.toStdString();
    }
}

}  // namespace fb::test::record_program_test
