#include "app/checkoff/desk_empty.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "tests/support/memory_backups.h"

namespace fb::test::desk_empty_tests {

TEST(DeskEmptyTest, ShowsTheWayToStudentsOrAfterADamageTheOffer)
{
    DeskEmpty empty;
    CheckOffState state;
    empty.resize(1000, 640);
    empty.showState(state);
    empty.show();
    EXPECT_TRUE(empty.findChild<QLabel*>(QStringLiteral("noStudentsTitle"))->isVisible());
    EXPECT_EQ(empty.first()->objectName(), QStringLiteral("useSample"));
    state.offered = backupSample();
    empty.showState(state);
    EXPECT_FALSE(empty.findChild<QLabel*>(QStringLiteral("noStudentsTitle"))->isVisible());
    EXPECT_TRUE(empty.findChild<QLabel*>(QStringLiteral("offerTitle"))->isVisible());
    EXPECT_EQ(empty.first()->objectName(), QStringLiteral("putBack"));
}

TEST(DeskEmptyTest, BothBeginningsArePassedOnUnlessSomethingIsBeingSaved)
{
    DeskEmpty empty;
    empty.show();
    QSignalSpy sample(&empty, &DeskEmpty::sampleAsked);
    QSignalSpy import(&empty, &DeskEmpty::importAsked);
    const auto press = [&] {
        for (const char* name : {"useSample", "importFirst"})
            QTest::mouseClick(empty.findChild<QPushButton*>(QLatin1String(name)), Qt::LeftButton);
    };
    press();
    CheckOffState state;
    state.saving = true;
    empty.showState(state);
    press();
    EXPECT_EQ(sample.count(), 1);
    EXPECT_EQ(import.count(), 1);
}

}  // namespace fb::test::desk_empty_tests
