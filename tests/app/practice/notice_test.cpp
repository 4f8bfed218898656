#include "app/practice/notice.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "app/words/fault_words.h"

namespace fb::test::notice_tests {

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

TEST(NoticeTest, IsAnnouncedOnceToAScreenReader)
{
    Notice notice;
    QSignalSpy spoke(&notice, &Notice::spoke);
    const Fault fault{Problem::SeedNotANumber, {}, "twelve", 0.0, 0.0};
    notice.showFault(std::nullopt);
    EXPECT_EQ(spoke.count(), 0) << "nothing is said of nothing";
    notice.showFault(fault);
    notice.showFault(fault);
    ASSERT_EQ(spoke.count(), 1) << "once, however often the page is shown anew";
    EXPECT_EQ(spoke[0].front().toString(), sentenceOf(fault));
    notice.showFault(std::nullopt);
    notice.showFault(fault);
    EXPECT_EQ(spoke.count(), 2) << "put away, it is news again";
}

}  // namespace fb::test::notice_tests
