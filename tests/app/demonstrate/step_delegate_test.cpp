#include "app/demonstrate/step_delegate.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>
#include <QStandardItemModel>

namespace fb::test::step_delegate_test {

constexpr int kThumbRole = Qt::UserRole;

struct Painted {
    Painted()
    {
        delegate.setScheme(scheme);
        auto* item = new QStandardItem(
            QStringLiteral("Press: a name so long that two lines hold but the half of all its words"));
        QImage thumb(112, 63, QImage::Format_RGB32);
        thumb.fill(Qt::magenta);
        item->setData(thumb, kThumbRole);
        model.appendRow(item);
    }
    QImage image(bool shown, Qt::LayoutDirection direction = Qt::LeftToRight)
    {
        QStyleOptionViewItem option;
        option.font = QFont();
        option.direction = direction;
        option.rect = QRect(QPoint(), delegate.sizeHint(option, model.index(0, 0)));
        option.state = QStyle::State_Enabled;
        option.state.setFlag(QStyle::State_Selected, shown);
        QImage drawn(option.rect.size(), QImage::Format_RGB32);
        drawn.fill(scheme.window);
        QPainter painter(&drawn);
        delegate.paint(&painter, option, model.index(0, 0));
        return drawn;
    }
    static int count(const QImage& image, const QColor& colour)
    {
        int found = 0;
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x)
                found += image.pixelColor(x, y) == colour ? 1 : 0;
        return found;
    }

    Scheme scheme = schemeOf(PaletteKind::Light);
    QStandardItemModel model;
    StepDelegate delegate{kThumbRole, nullptr};
};

TEST(StepDelegateTest, TheThumbnailStandsInItsFrame)
{
    Painted painted;
    EXPECT_GT(Painted::count(painted.image(false), Qt::magenta), 100 * 55);
}

TEST(StepDelegateTest, TheShownStepHasAHeavyFrameWhichIsSeenWithoutColour)
{
    Painted painted;
    const QImage rests = painted.image(false);
    const QImage shown = painted.image(true);
    EXPECT_EQ(Painted::count(rests, painted.scheme.accent), 0);
    EXPECT_GT(Painted::count(shown, painted.scheme.accent), 2 * (112 + 63) * 2) << "at least two pixels wide";
    EXPECT_LT(Painted::count(rests, painted.scheme.line), 2 * (114 + 65) + 20) << "one pixel wide";
}

TEST(StepDelegateTest, WordsKeepToTheirPlaceInEitherDirection)
{
    Painted painted;
    for (const auto direction : {Qt::LeftToRight, Qt::RightToLeft}) {
        const QImage drawn = painted.image(false, direction);
        int inked = 0;
        for (int y = 72; y < drawn.height(); ++y) {
            EXPECT_EQ(drawn.pixelColor(0, y), painted.scheme.window);
            EXPECT_EQ(drawn.pixelColor(drawn.width() - 1, y), painted.scheme.window);
            for (int x = 0; x < drawn.width(); ++x)
                inked += drawn.pixelColor(x, y) != painted.scheme.window ? 1 : 0;
        }
        EXPECT_GT(inked, 100);
        EXPECT_EQ(drawn.pixelColor(drawn.width() / 2, drawn.height() - 1), painted.scheme.window);
    }
}

}  // namespace fb::test::step_delegate_test
