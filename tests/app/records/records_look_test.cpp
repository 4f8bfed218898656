#include "app/records/records_look.h"

#include <gtest/gtest.h>

#include <QSet>
#include <algorithm>

namespace fb::test::records_look_test {

TEST(RecordsLookTest, EveryStandingHasAWordAndAShapeOfItsOwn)
{
    QSet<QString> words;
    QSet<int> icons;
    for (int i = 0; i < kStandingCount; ++i) {
        const auto standing = static_cast<Standing>(i);
        words << standingWord(standing);
        icons << static_cast<int>(iconOfStanding(standing));
        EXPECT_FALSE(standingWord(standing).isEmpty());
        EXPECT_TRUE(colourOfStanding(standing, schemeOf(PaletteKind::Light)).isValid());
    }
    EXPECT_EQ(words.size(), kStandingCount);
    EXPECT_EQ(icons.size(), kStandingCount);
}

TEST(RecordsLookTest, APassIsToldFromEveryOtherOutcomeByItsShape)
{
    for (int i = 0; i < kOutcomeCount; ++i) {
        const auto outcome = static_cast<Outcome>(i);
        EXPECT_EQ(iconOfOutcome(outcome) == Icon::Done, outcome == Outcome::Pass);
        for (const Icon ofSites : {Icon::OnTarget, Icon::OffTarget})
            EXPECT_NE(iconOfOutcome(outcome), ofSites) << "target and crescent speak of marks alone";
        EXPECT_TRUE(colourOfOutcome(outcome, schemeOf(PaletteKind::Dark)).isValid());
    }
}

TEST(RecordsLookTest, AnIconOfARowIsDrawnInTheSchemeAndInTheInkOfAChosenRow)
{
    RecordIcons icons;
    const Scheme scheme = schemeOf(PaletteKind::Light);
    icons.setScheme(scheme);
    const auto hasColour = [](const QPixmap& pixmap, const QColor& colour) {
        const QImage image = pixmap.toImage().convertToFormat(QImage::Format_ARGB32);
        for (int y = 0; y < image.height(); ++y) {
            for (int x = 0; x < image.width(); ++x) {
                if (image.pixelColor(x, y) == colour)
                    return true;
            }
        }
        return false;
    };
    const QIcon icon = icons.of(Outcome::Pass);
    EXPECT_TRUE(hasColour(icon.pixmap({54, 54}), scheme.good));
    EXPECT_TRUE(hasColour(icon.pixmap({54, 54}, QIcon::Selected), scheme.accentInk));
    EXPECT_FALSE(icons.of(Standing::NotTried).isNull());
}

TEST(RecordsLookTest, NamesAreSortedByTheirLettersWhateverTheirCaseAndAccents)
{
    const QStringList sorted{QStringLiteral("Nagy"),       QStringLiteral("Ó Súilleabháin"),
                             QStringLiteral("Pallas"),     QStringLiteral("van Aldersloot"),
                             QStringLiteral("Yıldıztepe"), QStringLiteral("Zeman 2"),
                             QStringLiteral("zeman 10")};
    const QLocale before;
    for (const QLocale& locale : {QLocale(QLocale::English), QLocale(QLocale::Spanish), QLocale::c()}) {
        QLocale::setDefault(locale);
        QStringList names = sorted;
        std::ranges::reverse(names);
        std::ranges::sort(names, listOrder());
        EXPECT_EQ(names, sorted) << locale.name().toStdString();
    }
    QLocale::setDefault(before);
}

TEST(RecordsLookTest, NamesScoresAndHeadsAsListsShowThem)
{
    Student student;
    student.family = QStringLiteral("Marlow");
    EXPECT_EQ(listName(student), QStringLiteral("Marlow"));
    student.given = QStringLiteral("Rosa");
    EXPECT_EQ(listName(student), QStringLiteral("Marlow, Rosa"));
    EXPECT_EQ(percentText(83.6), QStringLiteral("84 %"));
    EXPECT_EQ(shortHead(QStringLiteral("31eeae30572c14b1dd7e")), QStringLiteral("31eeae30572c"));
    CheckOffLine line;
    line.assessor = QStringLiteral("Ada");
    EXPECT_EQ(signersOf(line), QStringLiteral("Ada"));
    line.secondAssessor = QStringLiteral("Ines");
    EXPECT_TRUE(signersOf(line).contains(QStringLiteral("Ines")));
    SheetOnFile sheet;
    sheet.sheet.title = "Arm";
    EXPECT_EQ(sheetTitle(sheet), QStringLiteral("Arm"));
    sheet.sheet.invented = true;
    EXPECT_TRUE(sheetTitle(sheet).contains(QStringLiteral("invented")));
    sheet.sheet.title = "Arm (invented sample)";
    EXPECT_EQ(sheetTitle(sheet), QStringLiteral("Arm (invented sample)")) << "not said twice";
}

}  // namespace fb::test::records_look_test
