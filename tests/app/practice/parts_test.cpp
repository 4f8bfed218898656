#include "app/practice/parts.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QWidget>
#include <memory>

#include "app/look/type.h"

namespace fb::test {

TEST(PartsTest, WhatIsSaidIsAlsoToldAndAnAmpersandStaysOne)
{
    QWidget parent;
    QPushButton* button = parts::button(&parent, "both");
    parts::say(button, QStringLiteral("Bone & muscle"));
    EXPECT_EQ(button->text(), QStringLiteral("Bone && muscle"));
    EXPECT_EQ(button->accessibleName(), QStringLiteral("Bone & muscle"));
    EXPECT_EQ(button->objectName(), QStringLiteral("both"));
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

TEST(PartsTest, WordsAreNeverReadAsMarkup)
{
    QWidget parent;
    QLabel* label = parts::text(&parent, "typed");
    label->setText(QStringLiteral("<b>typed</b>"));
    EXPECT_EQ(label->textFormat(), Qt::PlainText);
}

}  // namespace fb::test
