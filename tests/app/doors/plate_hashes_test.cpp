#include "app/doors/plate_hashes.h"

#include <gtest/gtest.h>

#include <QProcess>
#include <QRegularExpression>
#include <QStringList>

#include "tests/support/exam_run.h"

namespace plate_hashes_test {

namespace {

using namespace fb;
using namespace fb::test;

TEST(PlateHashesTest, NamesEveryPlateOnceThatATargetNeeds)
{
    const QString hashes = plateHashesOf(examSet({Site::VastusLateralis, Site::Deltoid, Site::Deltoid}));
    static const QRegularExpression kEach(QStringLiteral("^[a-z-]+=[0-9a-f]{64}$"));
    QStringList views;
    for (const QString& each : hashes.split(QLatin1Char(' '))) {
        EXPECT_TRUE(kEach.match(each).hasMatch()) << each.toStdString();
        views << each.section(QLatin1Char('='), 0, 0);
    }
    EXPECT_EQ(views, (QStringList{QStringLiteral("shoulder-side"), QStringLiteral("thigh-front"),
                                  QStringLiteral("thigh-side")}));
    EXPECT_TRUE(plateHashesOf({}).isEmpty());
}

// The oracle is the system's own tool on the file that is shipped.
TEST(PlateHashesTest, AreTheHashesOfTheShippedFiles)
{
    QProcess sha;
    sha.start(QStringLiteral("sha256sum"),
              {QStringLiteral(FINGERBREADTH_SOURCE_DIR "/resources/plates/hip-side.svg")});
    ASSERT_TRUE(sha.waitForFinished());
    const QString expected = QString::fromLatin1(sha.readAllStandardOutput().left(64));
    ASSERT_EQ(expected.size(), 64);
    EXPECT_EQ(plateHashesOf(examSet({Site::Ventrogluteal})), QStringLiteral("hip-side=") + expected);
}

}  // namespace

}  // namespace plate_hashes_test
