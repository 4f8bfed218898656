#include "app/look/style.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QImage>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QRegularExpression>
#include <QSpinBox>
#include <QTest>
#include <QToolButton>
#include <QVBoxLayout>

#include "app/look/type.h"

namespace style_test {

namespace {

using namespace fb;

// Puts the look of the other tests back.
class StyleTest : public ::testing::Test {
protected:
    ~StyleTest() override { apply(PaletteKind::Light, 1.0); }
    static void apply(PaletteKind kind, double scale, Reach reach = Reach::Compact)
    {
        applyStyle(*static_cast<QApplication*>(QCoreApplication::instance()), schemeOf(kind), scale, reach);
    }
};

class Controls : public QWidget {
public:
    Controls()
    {
        auto* column = new QVBoxLayout(this);
        auto* combo = new QComboBox(this);
        combo->addItem("one");
        auto* tool = new QToolButton(this);
        tool->setText("tool");
        for (QWidget* control :
             {static_cast<QWidget*>(new QPushButton("press", this)), static_cast<QWidget*>(tool),
              static_cast<QWidget*>(new QLineEdit(this)), static_cast<QWidget*>(combo),
              static_cast<QWidget*>(new QSpinBox(this)), static_cast<QWidget*>(new QCheckBox("check", this)),
              static_cast<QWidget*>(new QRadioButton("radio", this))}) {
            column->addWidget(control);
            all.push_back(control);
        }
        show();
    }
    std::vector<QWidget*> all;
};

TEST_F(StyleTest, ControlsAreTallEnoughToHit)
{
    for (const Reach reach : {Reach::Compact, Reach::Comfortable}) {
        apply(PaletteKind::Light, 1.0, reach);
        const Controls controls;
        for (const QWidget* control : controls.all)
            EXPECT_GE(control->height(), leastControlHeight(reach)) << control->metaObject()->className();
    }
}

TEST_F(StyleTest, NothingIsCutAtDoubleText)
{
    apply(PaletteKind::Light, 2.0);
    const Controls controls;
    for (const QWidget* control : controls.all)
        EXPECT_GE(control->height(), control->fontMetrics().height() + 4)
            << control->metaObject()->className();
}

TEST_F(StyleTest, FocusCanBeSeenOnEveryControl)
{
    for (const PaletteKind kind : kPaletteKinds) {
        apply(kind, 1.0);
        Controls controls;
        ASSERT_TRUE(QTest::qWaitForWindowActive(&controls));
        const QRgb ring = schemeOf(kind).focus.rgb();
        for (QWidget* control : controls.all) {
            control->setFocus(Qt::TabFocusReason);
            const QImage seen = control->grab().toImage();
            int pixels = 0;
            for (int y = 0; y < seen.height(); ++y)
                for (int x = 0; x < seen.width(); ++x)
                    pixels += seen.pixel(x, y) == ring ? 1 : 0;
            EXPECT_GT(pixels, control->width())
                << control->metaObject()->className() << " " << static_cast<int>(kind);
        }
    }
}

TEST_F(StyleTest, TakingTheFocusMovesNothing)
{
    apply(PaletteKind::Light, 1.0);
    Controls controls;
    ASSERT_TRUE(QTest::qWaitForWindowActive(&controls));
    for (QWidget* control : controls.all) {
        controls.setFocus();
        const QSize before = control->sizeHint();
        control->setFocus(Qt::TabFocusReason);
        EXPECT_EQ(control->sizeHint(), before) << control->metaObject()->className();
    }
}

TEST_F(StyleTest, PaletteAndFontFollowTheScheme)
{
    for (const PaletteKind kind : kPaletteKinds) {
        apply(kind, 1.4);
        EXPECT_EQ(QApplication::palette().color(QPalette::Window), schemeOf(kind).window);
        EXPECT_EQ(QApplication::palette().color(QPalette::WindowText), schemeOf(kind).ink);
        EXPECT_NEAR(textScaleOf(QApplication::font()), 1.4, 1e-9);
    }
}

TEST_F(StyleTest, TheSheetHasNoHolesAndNamesOnlyDrawingsThatShip)
{
    static const QRegularExpression picture(QStringLiteral("url\\(([^)]*)\\)"));
    for (const PaletteKind kind : kPaletteKinds) {
        const QString sheet = styleSheetOf(schemeOf(kind), 1.5, Reach::Comfortable);
        EXPECT_FALSE(sheet.contains(QLatin1Char('@')));
        EXPECT_EQ(sheet.count(QLatin1Char('{')), sheet.count(QLatin1Char('}')));
        auto found = picture.globalMatch(sheet);
        ASSERT_TRUE(found.hasNext());
        while (found.hasNext()) {
            const QString name = found.next().captured(1);
            EXPECT_TRUE(QFile::exists(name)) << name.toStdString();
        }
    }
}

}  // namespace

}  // namespace style_test
