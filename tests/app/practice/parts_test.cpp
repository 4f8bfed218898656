#include "app/practice/parts.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QRadioButton>
#include <QScrollArea>
#include <QTest>
#include <QVBoxLayout>
#include <QWidget>
#include <cmath>
#include <memory>
#include <vector>

#include "app/look/type.h"

namespace fb::test::parts_test {

TEST(PartsTest, WhatIsSaidIsAlsoToldAndAnAmpersandStaysOne)
{
    QWidget parent;
    QPushButton* button = parts::button(&parent, "both");
    parts::say(button, QStringLiteral("Bone & muscle"));
    EXPECT_EQ(button->text(), QStringLiteral("Bone && muscle"));
    EXPECT_EQ(button->accessibleName(), QStringLiteral("Bone & muscle"));
    EXPECT_EQ(button->objectName(), QStringLiteral("both"));
}

TEST(PartsTest, NumbersAreReadWithAPointOrACommaAndWrittenAsTheLanguageDoes)
{
    EXPECT_EQ(parts::numberIn(QStringLiteral(" 18,5 ")), 18.5);
    EXPECT_EQ(parts::numberIn(QStringLiteral("18.5")), 18.5);
    for (const char* none : {"", " ", "1 8", "18.5.1", "wide"})
        EXPECT_FALSE(std::isfinite(parts::numberIn(QLatin1String(none)))) << none;
    const QLocale before;
    QLocale::setDefault(QLocale(QLocale::Spanish));
    EXPECT_EQ(parts::numberText(18.25), QStringLiteral("18,25"));
    QLocale::setDefault(before);
    EXPECT_EQ(parts::numberText(18.0), QStringLiteral("18"));
}

TEST(PartsTest, LengthsGrowWithTheTextTheyHold)
{
    QWidget small;
    QWidget large;
    small.setFont(fontOf(Type::Body, 1.0));
    large.setFont(fontOf(Type::Body, 2.0));
    EXPECT_EQ(parts::scaled(&small, 100), 100);
    EXPECT_EQ(parts::scaled(&large, 100), 200);
}

TEST(PartsTest, WordsThatStandAloneBeginWithACapital)
{
    EXPECT_EQ(parts::alone(QStringLiteral("deltoid site")), QStringLiteral("Deltoid site"));
    EXPECT_EQ(parts::alone(QString()), QString());
}

TEST(PartsTest, WhatGetsTheFocusByArrowKeyIsScrolledIntoSight)
{
    QScrollArea area;
    auto* content = new QWidget;
    auto* column = new QVBoxLayout(content);
    std::vector<QRadioButton*> choices;
    for (int i = 0; i < 30; ++i) {
        choices.push_back(new QRadioButton(QString::number(i), content));
        column->addWidget(choices.back());
    }
    area.setWidget(content);
    area.setWidgetResizable(true);
    area.resize(200, 120);
    parts::followFocus(&area);
    area.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&area));
    choices.front()->setFocus();
    for (int i = 0; i < 29; ++i)
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Down);
    ASSERT_EQ(QApplication::focusWidget(), choices.back());
    const QRect seen(choices.back()->mapTo(area.viewport(), QPoint()), choices.back()->size());
    EXPECT_TRUE(area.viewport()->rect().intersects(seen));
}

TEST(PartsTest, PointsAreToldToTheHundredth)
{
    EXPECT_EQ(parts::pointsText(11.0 + 1.0 / 6.0), QStringLiteral("11.17"));
    EXPECT_EQ(parts::pointsText(2.5), QStringLiteral("2.5"));
    EXPECT_EQ(parts::pointsText(3.0), QStringLiteral("3"));
}

TEST(PartsTest, WordsAreNeverReadAsMarkup)
{
    QWidget parent;
    QLabel* label = parts::text(&parent, "typed");
    label->setText(QStringLiteral("<b>typed</b>"));
    EXPECT_EQ(label->textFormat(), Qt::PlainText);
}

}  // namespace fb::test::parts_test
