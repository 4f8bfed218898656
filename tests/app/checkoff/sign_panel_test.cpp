#include "app/checkoff/sign_panel.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "app/records/pin_field.h"
#include "app/words/fault_words.h"
#include "tests/support/manikin_sample.h"

namespace sign_panel_test {

namespace {

using namespace fb;
using namespace fb::test;

class SignPanelTest : public ::testing::Test {
protected:
    SignPanelTest()
    {
        panel.setScheme(dressed());
        state.stage = CheckOffStage::Closing;
        state.desk.assessors = {{3, QStringLiteral("Vera Holm")}};
        panel.showState(state);
        panel.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&panel));
    }
    [[nodiscard]] QLineEdit* line(const char* name) const
    {
        return panel.findChild<QLineEdit*>(QLatin1String(name));
    }
    [[nodiscard]] QString told() const { return panel.findChild<QLabel*>("signFault")->text(); }

    CheckOffState state = manikinState();
    SignPanel panel;
    QSignalSpy asked{&panel, &SignPanel::signAsked};
};

TEST_F(SignPanelTest, WithOneAssessorThePinAndEnterSign)
{
    panel.focusFirst();
    ASSERT_TRUE(line("firstPin")->hasFocus());
    QTest::keyClicks(line("firstPin"), QStringLiteral("482913"));
    QTest::keyClick(line("firstPin"), Qt::Key_Return);
    ASSERT_EQ(asked.size(), 1);
    EXPECT_EQ(asked[0][0].toLongLong(), 3);
    EXPECT_EQ(asked[0][1].toString(), QStringLiteral("482913"));
    EXPECT_EQ(asked[0][2].toLongLong(), 0);
    EXPECT_TRUE(asked[0][3].toString().isEmpty());
}

TEST_F(SignPanelTest, ALastAttemptAsksForASecondAssessorAndEnterGoesThere)
{
    state.desk.assessors = {{3, QStringLiteral("Vera Holm")}, {4, QStringLiteral("Tom Aske")}};
    state.open->needsSecondAssessor = true;
    panel.showState(state);
    panel.findChild<PinField*>()->choose(3);
    QTest::keyClicks(line("firstPin"), QStringLiteral("482913"));
    QTest::keyClick(line("firstPin"), Qt::Key_Return);
    EXPECT_TRUE(asked.isEmpty());
    EXPECT_TRUE(panel.findChildren<PinField*>()[1]->isAncestorOf(QApplication::focusWidget()));
    QTest::mouseClick(panel.findChild<QPushButton*>("sign"), Qt::LeftButton);
    EXPECT_TRUE(asked.isEmpty());
    EXPECT_TRUE(told().contains(QStringLiteral("Tom Aske"))) << told().toStdString();
    EXPECT_TRUE(line("secondPin")->hasFocus()) << "the focus is on what is missing";
    panel.findChildren<PinField*>()[1]->choose(0);
    QTest::mouseClick(panel.findChild<QPushButton*>("sign"), Qt::LeftButton);
    EXPECT_EQ(told(), sentenceOf({Problem::SecondAssessorMissing, {}, {}, 0.0, 0.0}));
    EXPECT_TRUE(panel.findChild<QComboBox*>("secondWho")->hasFocus());
    panel.findChildren<PinField*>()[1]->choose(4);
    QTest::keyClicks(line("secondPin"), QStringLiteral("771204"));
    QTest::keyClick(line("secondPin"), Qt::Key_Return);
    ASSERT_EQ(asked.size(), 1);
    EXPECT_EQ(asked[0][2].toLongLong(), 4);
    EXPECT_EQ(asked[0][3].toString(), QStringLiteral("771204"));
}

TEST_F(SignPanelTest, OfTwoAssessorsTheOtherOneIsTheSecond)
{
    state.desk.assessors = {{3, QStringLiteral("Vera Holm")}, {4, QStringLiteral("Tom Aske")}};
    state.open->needsSecondAssessor = true;
    panel.showState(state);
    const auto fields = panel.findChildren<PinField*>();
    ASSERT_EQ(fields.size(), 2);
    auto* who = fields[0]->findChild<QComboBox*>("firstWho");
    for (const int chosen : {0, 1}) {
        who->setFocus();
        QTest::keyClick(who, chosen == 0 ? Qt::Key_Home : Qt::Key_End);
        EXPECT_EQ(fields[0]->assessor(), chosen == 0 ? 3 : 4);
        EXPECT_EQ(fields[1]->assessor(), chosen == 0 ? 4 : 3);
    }
    state.desk.assessors.push_back({5, QStringLiteral("Ines Castro")});
    SignPanel three;
    three.showState(state);
    three.findChildren<PinField*>()[0]->choose(3);
    EXPECT_EQ(three.findChildren<PinField*>()[1]->assessor(), 0) << "of three nobody is guessed";
}

TEST_F(SignPanelTest, WithoutAPinItAsksForItAndNoTryIsUsedUp)
{
    QSignalSpy spoke(&panel, &SignPanel::spoke);
    auto* sign = panel.findChild<QPushButton*>("sign");
    sign->setFocus();
    QTest::mouseClick(sign, Qt::LeftButton);
    EXPECT_TRUE(asked.isEmpty());
    EXPECT_TRUE(told().contains(QStringLiteral("Vera Holm"))) << told().toStdString();
    EXPECT_TRUE(line("firstPin")->hasFocus()) << "the focus is on what is missing";
    ASSERT_EQ(spoke.size(), 1) << "and it is said aloud, once";
    EXPECT_EQ(spoke[0][0].toString(), told());
    QTest::keyClicks(line("firstPin"), QStringLiteral("4"));
    EXPECT_TRUE(panel.findChild<QLabel*>("signFault")->isHidden());
}

TEST_F(SignPanelTest, AWrongPinIsSaidInOneSentenceAndTypedAgain)
{
    line("firstPin")->setText(QStringLiteral("000111"));
    const Fault held{Problem::PinHeld, {}, {}, 4.0, 0.0};
    panel.tell(held);
    EXPECT_EQ(told(), sentenceOf(held));
    EXPECT_TRUE(told().contains(QLatin1Char('4')));
    EXPECT_TRUE(line("firstPin")->text().isEmpty());
    EXPECT_TRUE(line("firstPin")->hasFocus());
    QTest::keyClicks(line("firstPin"), QStringLiteral("4"));
    EXPECT_TRUE(panel.findChild<QLabel*>("signFault")->isHidden()) << "it goes with the next letter";
}

TEST_F(SignPanelTest, WhereNobodyIsEnrolledTheFirstOneIsAndSignsWithOnePressMore)
{
    state.desk.assessors.clear();
    panel.showState(state);
    EXPECT_TRUE(panel.findChild<QPushButton*>("sign")->isHidden());
    QSignalSpy enrolled(&panel, &SignPanel::enrolAsked);
    panel.focusFirst();
    for (const char* typed : {"Vera Holm", "482913", "482931"}) {
        QTest::keyClicks(QApplication::focusWidget(), QLatin1String(typed));
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    }
    EXPECT_TRUE(enrolled.isEmpty());
    EXPECT_EQ(told(), sentenceOf({Problem::PinsDiffer, {}, {}, 0.0, 0.0}));
    for (const char* typed : {"482913", "482913"}) {
        QTest::keyClicks(QApplication::focusWidget(), QLatin1String(typed));
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    }
    ASSERT_EQ(enrolled.size(), 1);
    EXPECT_EQ(enrolled[0][0].toString(), QStringLiteral("Vera Holm"));
    state.desk.assessors = {{1, QStringLiteral("Vera Holm")}};
    panel.showState(state);
    auto* sign = panel.findChild<QPushButton*>("sign");
    ASSERT_TRUE(sign->hasFocus());
    QTest::keyClick(sign, Qt::Key_Return);
    ASSERT_EQ(asked.size(), 1);
    EXPECT_EQ(asked[0][1].toString(), QStringLiteral("482913"));
}

TEST_F(SignPanelTest, WithSeveralAssessorsNobodySignsUnnamed)
{
    state.desk.assessors.push_back({4, QStringLiteral("Tom Aske")});
    SignPanel fresh;
    fresh.showState(state);
    QSignalSpy none(&fresh, &SignPanel::signAsked);
    QTest::keyClick(fresh.findChild<QLineEdit*>("firstPin"), Qt::Key_Return);
    EXPECT_TRUE(none.isEmpty());
    EXPECT_EQ(fresh.findChild<QLabel*>("signFault")->text(),
              sentenceOf({Problem::AssessorUnknown, {}, {}, 0.0, 0.0}));
    EXPECT_EQ(fresh.focusWidget(), fresh.findChild<QComboBox*>("firstWho"));
}

}  // namespace

}  // namespace sign_panel_test
