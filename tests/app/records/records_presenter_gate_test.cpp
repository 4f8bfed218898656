// The gate of the records: see records_presenter.h.
#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>

#include "tests/support/records_inside.h"

namespace fb::test::records_presenter_gate_test {

TEST(RecordsPresenterTest, NothingOfAnybodyIsThereBeforeThePin)
{
    Inside inside(false);
    inside.records.signedOne(0, {});
    EXPECT_EQ(inside.state().gate, RecordsGate::Locked);
    EXPECT_EQ(inside.state().assessors.size(), 2U);
    inside.presenter.show(RecordsArea::CheckOffs);
    inside.presenter.find({});
    inside.presenter.openHistory(QStringLiteral("S1000"));
    inside.presenter.openCheckOff(1);
    inside.presenter.backup(QStringLiteral("/nowhere/x.db"));
    inside.presenter.verify();
    inside.presenter.enrol(QStringLiteral("Eve"), QStringLiteral("918273"), QStringLiteral("918273"));
    EXPECT_TRUE(isEmptyHanded(inside.state()));
    EXPECT_TRUE(inside.records.written.isEmpty());
    EXPECT_EQ(inside.records.people.size(), 2U) << "nobody enrols from outside";
    EXPECT_FALSE(inside.state().done.has_value());
}

TEST(RecordsPresenterTest, AWrongPinIsToldAndTheThirdHasToWait)
{
    Inside inside(false);
    inside.presenter.open(1, QStringLiteral("000001"));
    EXPECT_EQ(inside.state().notice->problem, Problem::PinWrong);
    inside.presenter.open(1, QStringLiteral("000001"));
    inside.presenter.open(1, QStringLiteral("000001"));
    EXPECT_EQ(inside.state().notice->problem, Problem::PinHeld);
    EXPECT_EQ(inside.state().heldSeconds, 2);
    inside.presenter.open(1, QString::fromLatin1(kPin));
    EXPECT_EQ(inside.state().gate, RecordsGate::Locked) << "the right PIN has to wait as well";
    inside.presenter.leave();
    inside.presenter.enter();
    EXPECT_EQ(inside.state().heldSeconds, 2) << "leaving does not shorten it";
    inside.records.clock.now += Ms{1200};
    ASSERT_TRUE(QTest::qWaitFor([&] { return inside.state().heldSeconds == 1; }, 3000));
    inside.records.clock.now += Ms{900};
    ASSERT_TRUE(QTest::qWaitFor([&] { return inside.state().heldSeconds == 0; }, 3000));
    inside.presenter.open(1, QString::fromLatin1(kPin));
    EXPECT_EQ(inside.state().gate, RecordsGate::Open);
    EXPECT_EQ(inside.state().who->name, QStringLiteral("Ada Brook"));
    ASSERT_NE(inside.state().board, nullptr);
    EXPECT_EQ(inside.state().board->count.notTried, 4);
}

TEST(RecordsPresenterTest, LeavingOrTenMinutesWithoutUseShutTheGateAndKeepNothing)
{
    Inside inside;
    const qint64 id = inside.records.signedOne(0, {});
    inside.presenter.show(RecordsArea::CheckOffs);
    inside.presenter.openCheckOff(id);
    ASSERT_NE(inside.state().opened, nullptr);
    inside.records.clock.now += RecordsPresenter::kIdle - Ms{1};
    EXPECT_TRUE(inside.presenter.used()) << "just in time";
    inside.records.clock.now += RecordsPresenter::kIdle - Ms{1};
    EXPECT_EQ(inside.state().gate, RecordsGate::Open);
    inside.records.clock.now += Ms{1};
    EXPECT_FALSE(inside.presenter.used());
    EXPECT_EQ(inside.state().gate, RecordsGate::Locked);
    EXPECT_TRUE(isEmptyHanded(inside.state()));
    // The tick alone does it too, and a night asleep counts although the steady clock stood.
    inside.presenter.open(1, QString::fromLatin1(kPin));
    inside.records.clock.day = inside.records.clock.day.addSecs(8 * 3600);
    ASSERT_TRUE(QTest::qWaitFor([&] { return inside.state().gate == RecordsGate::Locked; }, 3000));
    inside.presenter.open(1, QString::fromLatin1(kPin));
    ASSERT_NE(inside.state().board, nullptr);
    inside.presenter.leave();
    EXPECT_TRUE(isEmptyHanded(inside.state()));
}

TEST(RecordsPresenterTest, WhatAnswersAfterTheGateWasShutIsDropped)
{
    Inside inside;
    inside.records.signedOne(0, {});
    inside.records.waits = true;
    inside.presenter.find({});
    inside.presenter.openCheckOff(1);
    inside.presenter.leave();
    inside.records.answerAll();
    EXPECT_TRUE(isEmptyHanded(inside.state()));
    inside.presenter.enter();
    inside.records.answerAll();
    inside.presenter.open(1, QString::fromLatin1(kPin));
    inside.presenter.leave();
    inside.records.answerAll();
    EXPECT_NE(inside.state().gate, RecordsGate::Open) << "a PIN that is proved too late opens nothing";
}

TEST(RecordsPresenterTest, TheFirstAssessorOpensTheGateAndFurtherOnesAreLetInFromInside)
{
    SampleRecords records;
    records.people.clear();
    RecordsPresenter presenter(records, records.clock);
    presenter.enter();
    EXPECT_EQ(presenter.state().gate, RecordsGate::NobodyEnrolled);
    presenter.enrol(QStringLiteral("Ada"), QStringLiteral("918273"), QStringLiteral("918274"));
    EXPECT_EQ(presenter.state().notice->problem, Problem::PinsDiffer);
    presenter.enrol(QStringLiteral(" "), QStringLiteral("918273"), QStringLiteral("918273"));
    EXPECT_EQ(presenter.state().notice->problem, Problem::NameMissing);
    presenter.enrol(QStringLiteral("Ada"), QStringLiteral("918273"), QStringLiteral("918273"));
    EXPECT_EQ(presenter.state().gate, RecordsGate::Open);
    QSignalSpy enrolled(&presenter, &RecordsPresenter::enrolled);
    presenter.enrol(QStringLiteral("Ines"), QStringLiteral("5519"), QStringLiteral("5519"));
    EXPECT_EQ(presenter.state().notice->problem, Problem::PinTooShort);
    presenter.enrol(QStringLiteral("Ines"), QStringLiteral("551903"), QStringLiteral("551903"));
    EXPECT_EQ(enrolled.count(), 1);
    EXPECT_EQ(presenter.state().assessors.size(), 2U);
    EXPECT_EQ(presenter.state().gate, RecordsGate::Open);
    EXPECT_EQ(presenter.state().who->name, QStringLiteral("Ada")) << "who is inside stays who she is";
}

}  // namespace fb::test::records_presenter_gate_test
