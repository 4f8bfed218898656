#include "app/demonstrate/room_panel.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>

#include "tests/support/fakes.h"
#include "tests/support/layout_audit.h"
#include "tests/support/lecture_sample.h"

namespace fb::test::room_panel_test {

struct Panel {
    Panel()
    {
        sample.presenter.setCalm(true);
        panel.setScheme(schemeOf(PaletteKind::Light));
        QObject::connect(&sample.presenter, &LecturePresenter::changed, &panel, &RoomPanel::showState);
        panel.showState();
        panel.resize(380, 560);
        panel.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&panel));
    }
    template <class Widget = QAbstractButton>
    [[nodiscard]] Widget* find(const char* name)
    {
        return panel.findChild<Widget*>(QLatin1String(name));
    }
    void click(const char* name) { QTest::mouseClick(find(name), Qt::LeftButton); }
    // Three volunteers: on the ideal point, far off on the body, beside it.
    void askThree()
    {
        click("askRoom");
        for (const QPointF off : {QPointF(0, 0), QPointF(1.0, -6.0), QPointF(80, 80)})
            sample.presenter.press(sample.ideal() + off);
    }
    [[nodiscard]] QString cell(int row, int column)
    {
        return find<QTableView>("roomMarks")->model()->index(row, column).data().toString();
    }
    // Reads a file with those bytes; false: nothing came of it.
    bool read(const QByteArray& bytes)
    {
        QFile file(folder.filePath(QStringLiteral("room.csv")));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
        file.close();
        return readFile(file.fileName());
    }
    bool readFile(const QString& name)
    {
        dialogs.answer = name;
        sample.presenter.dismissNotice();
        const int before = sample.changes;
        click("readMarks");
        return QTest::qWaitFor([&] { return sample.changes > before; }, 10000);
    }
    [[nodiscard]] const LectureState& state() const { return sample.state(); }

    QTemporaryDir folder;
    AnsweringDialogs dialogs;
    LectureSample sample;
    RoomPanel panel{sample.presenter, dialogs};
};

TEST(RoomPanelTest, VolunteersAreListedThenRevealedAtOnce)
{
    Panel shown;
    EXPECT_FALSE(shown.find("revealMarks")->isEnabled());
    shown.askThree();
    EXPECT_EQ(shown.state().tool, LectureTool::Ask);
    ASSERT_EQ(shown.state().room.size(), 3U);
    EXPECT_EQ(shown.cell(0, RoomModel::VerdictColumn), QString());
    shown.click("revealMarks");
    EXPECT_TRUE(shown.state().revealed);
    EXPECT_EQ(shown.cell(0, RoomModel::VerdictColumn), QStringLiteral("On target"));
    EXPECT_NE(shown.cell(1, RoomModel::VerdictColumn), QStringLiteral("On target"));
    EXPECT_EQ(shown.cell(2, RoomModel::VerdictColumn), QStringLiteral("Not on the body"));
    EXPECT_EQ(shown.find("revealMarks")->text(), QStringLiteral("Hide"));
    shown.click("revealMarks");
    EXPECT_FALSE(shown.state().revealed);
    EXPECT_EQ(shown.cell(0, RoomModel::VerdictColumn), QString());
}

TEST(RoomPanelTest, ANameIsTypedIntoTheListByKeysAlone)
{
    Panel shown;
    shown.askThree();
    auto* table = shown.find<QTableView>("roomMarks");
    table->setFocus();
    table->setCurrentIndex(table->model()->index(1, RoomModel::NameColumn));
    QTest::keyClick(table, Qt::Key_F2);
    auto* field = table->findChild<QLineEdit*>();
    ASSERT_NE(field, nullptr);
    QTest::keyClicks(field, QStringLiteral("Third row"));
    shown.sample.presenter.setBlank(true);
    EXPECT_EQ(field->text(), QStringLiteral("Third row")) << "other news do not type over it";
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_TRUE(
        QTest::qWaitFor([&] { return shown.state().room[1].name == QStringLiteral("Third row"); }, 3000));
    EXPECT_EQ(shown.cell(1, RoomModel::NameColumn), QStringLiteral("Third row"));
}

TEST(RoomPanelTest, OneMarkIsRemovedOrAllAreCleared)
{
    Panel shown;
    shown.askThree();
    auto* table = shown.find<QTableView>("roomMarks");
    EXPECT_FALSE(shown.find("dropMark")->isEnabled());
    table->setCurrentIndex(table->model()->index(2, RoomModel::NameColumn));
    shown.click("dropMark");
    EXPECT_EQ(shown.state().room.size(), 2U);
    table->setCurrentIndex(table->model()->index(0, RoomModel::NameColumn));
    QTest::keyClick(table, Qt::Key_Delete);
    EXPECT_EQ(shown.state().room.size(), 1U);
    shown.click("clearMarks");
    EXPECT_TRUE(shown.state().room.empty());
    EXPECT_FALSE(shown.find("clearMarks")->isEnabled());
}

TEST(RoomPanelTest, MarksAreReadFromAFile)
{
    Panel shown;
    ASSERT_TRUE(shown.read("name,x_cm,y_cm\nAda,0.5,-4\n,1.5,-5\n"));
    ASSERT_EQ(shown.state().room.size(), 2U);
    EXPECT_EQ(shown.cell(0, RoomModel::NameColumn), QStringLiteral("Ada"));
    EXPECT_FALSE(shown.state().notice.has_value());
}

TEST(RoomPanelTest, AFileThatCannotBeReadIsToldAndChangesNothing)
{
    Panel shown;
    shown.askThree();
    struct Row {
        QByteArray bytes;
        Problem problem;
    };
    for (const Row& row : std::initializer_list<Row>{{"name,x,y\nAda,1,2\n", Problem::MarksNoColumn},
                                                     {"name,x_cm,y_cm\nAda,one,2\n", Problem::MarksBadValue},
                                                     {"name,x_cm,y_cm\n", Problem::MarksEmpty},
                                                     {QByteArray(3 << 20, 'x'), Problem::MarksTooMany}}) {
        ASSERT_TRUE(shown.read(row.bytes));
        ASSERT_TRUE(shown.state().notice.has_value());
        EXPECT_EQ(shown.state().notice->problem, row.problem);
        EXPECT_EQ(shown.state().notice->where, "room.csv");
        EXPECT_EQ(shown.state().room.size(), 3U);
    }
    ASSERT_TRUE(shown.readFile(shown.folder.filePath(QStringLiteral("missing.csv"))));
    EXPECT_EQ(shown.state().notice->problem, Problem::FileNotReadable);
    ASSERT_TRUE(shown.readFile(shown.folder.path()));
    EXPECT_EQ(shown.state().notice->problem, Problem::FileNotReadable);
    EXPECT_TRUE(shown.find("readMarks")->isEnabled());
}

TEST(RoomPanelTest, ThinkingBetterOfAFileDoesNothing)
{
    Panel shown;
    shown.dialogs.answer.clear();
    shown.click("readMarks");
    EXPECT_EQ(shown.dialogs.asked, 1);
    EXPECT_TRUE(shown.find("readMarks")->isEnabled());
}

TEST(RoomPanelTest, NothingIsCutAndNothingNameless)
{
    Panel shown;
    shown.askThree();
    QTest::qWait(1);
    EXPECT_EQ(namelessControls(shown.panel).join('\n').toStdString(), std::string());
    EXPECT_EQ(layoutFaults(shown.panel).join('\n').toStdString(), std::string());
}

}  // namespace fb::test::room_panel_test
