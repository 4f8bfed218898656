#include "app/practice/notice.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "app/words/fault_words.h"

namespace fb::test::notice_test {

TEST(NoticeTest, ShowsOneSentenceUntilItIsPutAway)
{
    Notice notice;
    notice.setScheme(schemeOf(PaletteKind::Light));
    EXPECT_TRUE(notice.isHidden());
    const Fault fault{Problem::SeedNotANumber, {}, "twelve", 0.0, 0.0};
    notice.showFault(fault);
    EXPECT_FALSE(notice.isHidden());
    EXPECT_EQ(notice.findChild<QLabel*>(QStringLiteral("noticeText"))->text(), sentenceOf(fault));
    QSignalSpy away(&notice, &Notice::dismissed);
    QTest::keyClick(notice.findChild<QPushButton*>(QStringLiteral("dismissNotice")), Qt::Key_Space);
    EXPECT_EQ(away.count(), 1);
    notice.showFault(std::nullopt);
    EXPECT_TRUE(notice.isHidden());
}

}  // namespace fb::test::notice_test
