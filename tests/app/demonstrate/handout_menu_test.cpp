#include "app/demonstrate/handout_menu.h"

#include <gtest/gtest.h>

#include <QAction>
#include <QFileInfo>
#include <QMenu>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include "tests/support/fakes.h"
#include "tests/support/lecture_sample.h"

namespace fb::test::handout_menu_test {

struct Menu {
    Menu()
    {
        QObject::connect(&sample.presenter, &LecturePresenter::changed, &menu, &HandoutMenu::showState);
        menu.useLibrary(lectureLibrary());
    }
    [[nodiscard]] QAction* action(const char* name)
    {
        return menu.menu()->findChild<QAction*>(QLatin1String(name));
    }
    // False: it was never done.
    bool write(const char* name, const QString& file)
    {
        dialogs.answer = file;
        action(name)->trigger();
        return QTest::qWaitFor([this] { return !menu.isBusy(); }, 60000);
    }
    [[nodiscard]] QString path(const char* name) const { return folder.filePath(QLatin1String(name)); }

    QTemporaryDir folder;
    AnsweringDialogs dialogs;
    LectureSample sample{Site::Ventrogluteal};
    HandoutMenu menu{sample.presenter, dialogs};
    QSignalSpy said{&menu, &HandoutMenu::said};
};

TEST(HandoutMenuTest, EachIsWrittenAndSaid)
{
    Menu shown;
    struct Row {
        const char* action;
        const char* file;
        SaveKind kind;
        QByteArray begins;
    };
    for (const Row& row : std::initializer_list<Row>{{"handStepPdf", "a.pdf", SaveKind::Pdf, "%PDF"},
                                                     {"handStepSvg", "b.svg", SaveKind::Svg, "<?xml"},
                                                     {"handStepPng", "c.png", SaveKind::Png, "\x89PNG"},
                                                     {"handSite", "d.pdf", SaveKind::Pdf, "%PDF"},
                                                     {"handBlank", "e.pdf", SaveKind::Pdf, "%PDF"}}) {
        shown.said.clear();
        ASSERT_TRUE(shown.write(row.action, shown.path(row.file)));
        EXPECT_EQ(shown.dialogs.asKind, row.kind);
        EXPECT_FALSE(shown.dialogs.suggested.isEmpty());
        QFile file(shown.path(row.file));
        ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << row.file;
        EXPECT_TRUE(file.readAll().startsWith(row.begins)) << row.file;
        ASSERT_EQ(shown.said.count(), 2);
        EXPECT_EQ(shown.said[0][0].toString(), QStringLiteral("Writing…"));
        EXPECT_TRUE(shown.said[1][0].toString().contains(QLatin1String(row.file)));
    }
    EXPECT_FALSE(shown.sample.state().notice.has_value());
}

TEST(HandoutMenuTest, WhatCannotBeWrittenIsTold)
{
    Menu shown;
    ASSERT_TRUE(shown.write("handStepPng", shown.path("none/there.png")));
    ASSERT_TRUE(shown.sample.state().notice.has_value());
    EXPECT_EQ(shown.sample.state().notice->problem, Problem::OutputNotWritable);
    ASSERT_FALSE(shown.said.isEmpty());
    EXPECT_EQ(shown.said.last()[0].toString(), QString()) << "no longer writing";
}

TEST(HandoutMenuTest, OneAtATime)
{
    Menu shown;
    shown.dialogs.answer = shown.path("site.pdf");
    shown.action("handSite")->trigger();
    EXPECT_TRUE(shown.menu.isBusy());
    EXPECT_FALSE(shown.action("handBlank")->isEnabled());
    EXPECT_TRUE(QTest::qWaitFor([&] { return !shown.menu.isBusy(); }, 60000));
    EXPECT_TRUE(shown.action("handBlank")->isEnabled());
}

TEST(HandoutMenuTest, NothingBeforeThereIsABodyAndNothingWithoutAName)
{
    LectureSample none(std::nullopt);
    AnsweringDialogs dialogs;
    HandoutMenu menu(none.presenter, dialogs);
    for (const QAction* action : menu.menu()->actions())
        EXPECT_TRUE(action->isSeparator() || !action->isEnabled());
    Menu shown;
    shown.action("handStepPdf")->trigger();
    EXPECT_EQ(shown.dialogs.asked, 1);
    EXPECT_FALSE(shown.menu.isBusy());
}

}  // namespace fb::test::handout_menu_test
