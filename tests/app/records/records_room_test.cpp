#include "app/records/records_room.h"

#include <gtest/gtest.h>

#include <QPushButton>
#include <QToolButton>
#include <QTranslator>

#include "tests/support/layout_audit.h"
#include "tests/support/pseudo_translator.h"
#include "tests/support/sample_records.h"

namespace fb::test::records_room_test {

TEST(RecordsRoomTest, EachAreaIsOpenedByItsWordAndTheFocusGoesWithIt)
{
    SampleRecords records;
    RecordsWindow open(records);
    open.unlock();
    const std::array<std::pair<const char*, const char*>, 4> areas{{{"areaCheckOffs", "listWords"},
                                                                    {"areaLog", "verify"},
                                                                    {"areaAssessors", "enrolName"},
                                                                    {"areaBoard", "boardWords"}}};
    for (const auto& [area, first] : areas) {
        open.click(area);
        EXPECT_TRUE(open.find<QToolButton>(area)->isChecked());
        ASSERT_NE(QApplication::focusWidget(), nullptr);
        EXPECT_EQ(QApplication::focusWidget()->objectName(), QLatin1String(first));
    }
}

TEST(RecordsRoomTest, EscapeGoesBackOneStepAtATime)
{
    SampleRecords records;
    const qint64 id = records.signedOne(0, {});
    RecordsWindow open(records);
    open.unlock();
    open.presenter.openHistory(QStringLiteral("S1000"));
    open.presenter.openCheckOff(id);
    open.presenter.replay(0);
    ASSERT_TRUE(open.replayed());
    for (int step = 0; step < 3; ++step) {
        ASSERT_NE(QApplication::focusWidget(), nullptr);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
        open.rest();
    }
    EXPECT_FALSE(open.state().item || open.state().opened || open.state().history);
    EXPECT_TRUE(open.find("boardTable")->isVisible());
}

TEST(RecordsRoomTest, LockShutsItAtOnce)
{
    SampleRecords records;
    RecordsWindow open(records);
    open.unlock();
    open.click("recordsLock");
    EXPECT_EQ(open.state().gate, RecordsGate::Locked);
    EXPECT_EQ(open.window.findChild<RecordsRoom*>(), nullptr);
    EXPECT_EQ(QApplication::focusWidget(), open.find("gatePin"));
}

TEST(RecordsRoomTest, EveryAreaHasRoomWithLargeLettersInAWordyLanguage)
{
    QTranslator spanish;
    ASSERT_TRUE(spanish.load(QStringLiteral(":/i18n/fingerbreadth_es.qm")));
    PseudoTranslator wordy;
    for (QTranslator* language : std::initializer_list<QTranslator*>{&spanish, &wordy}) {
        QCoreApplication::installTranslator(language);
        SampleRecords records;
        (void)records.signedOne(0, {}, Seen::NotDone);
        constexpr QSize kSize{1280, 722};
        RecordsWindow open(records, PaletteKind::Light, 1.5, kSize);
        open.unlock();
        for (const char* area : {"areaBoard", "areaCheckOffs", "areaLog", "areaAssessors"}) {
            open.click(area);
            EXPECT_EQ(layoutFaults(open.window), QStringList()) << area;
            EXPECT_LE(open.window.minimumSizeHint().width(), kSize.width()) << area;
            EXPECT_EQ(open.window.width(), kSize.width()) << area << ": the window had to grow";
        }
        QCoreApplication::removeTranslator(language);
    }
    applyStyle(*qApp, schemeOf(PaletteKind::Light), 1.0);
}

}  // namespace fb::test::records_room_test
