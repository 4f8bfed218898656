#include "app/checkoff/student_dialog.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QTest>

#include "tests/support/layout_audit.h"

namespace student_dialog_test {

namespace {

using namespace fb;
using namespace fb::test;

struct Agreed {
    explicit Agreed(const QString& language = {})
    {
        Student student{QStringLiteral("S-1"),
                        QStringLiteral("Birch"),
                        QStringLiteral("Ana"),
                        QStringLiteral("B"),
                        25,
                        language,
                        true};
        dialog = new StudentDialog(student, &window);
        QObject::connect(dialog, &StudentDialog::edited,
                         [this](const Student& changed) { edited.push_back(changed); });
        window.show();
        dialog->show();
    }
    template <class Widget>
    [[nodiscard]] Widget& part(const char* name) const
    {
        return *dialog->findChild<Widget*>(QLatin1String(name));
    }
    void save() const { QTest::mouseClick(&part<QPushButton>("studentSave"), Qt::LeftButton); }

    QWidget window;
    StudentDialog* dialog = nullptr;
    std::vector<Student> edited;
};

TEST(StudentDialogTest, MoreTimeAndLanguageAreAgreedAndNothingElseChanges)
{
    Agreed agreed;
    EXPECT_EQ(agreed.part<QLabel>("studentName").text(), QStringLiteral("Ana Birch"));
    EXPECT_EQ(agreed.part<QSpinBox>("studentExtra").value(), 25);
    EXPECT_EQ(layoutFaults(*agreed.dialog), QStringList());
    EXPECT_EQ(namelessControls(*agreed.dialog), QStringList());
    agreed.part<QSpinBox>("studentExtra").setValue(50);
    auto& language = agreed.part<QComboBox>("studentLanguage");
    ASSERT_GE(language.findData(QStringLiteral("es")), 0);
    language.setCurrentIndex(language.findData(QStringLiteral("es")));
    agreed.save();
    ASSERT_EQ(agreed.edited.size(), 1U);
    const Student& student = agreed.edited.front();
    EXPECT_EQ(student.id, QStringLiteral("S-1"));
    EXPECT_EQ(student.section, QStringLiteral("B"));
    EXPECT_TRUE(student.invented);
    EXPECT_EQ(student.extraPercent, 50);
    EXPECT_EQ(student.language, QStringLiteral("es"));
    EXPECT_FALSE(agreed.dialog->isVisible());
}

TEST(StudentDialogTest, NothingIsKeptWhereNothingChangedOrItIsPutAway)
{
    Agreed same;
    same.save();
    EXPECT_TRUE(same.edited.empty());
    Agreed away;
    away.part<QSpinBox>("studentExtra").setValue(100);
    QTest::keyClick(away.dialog, Qt::Key_Escape);
    EXPECT_TRUE(away.edited.empty());
}

TEST(StudentDialogTest, ALanguageThatIsNotKnownHereStaysUntilAnotherIsChosen)
{
    Agreed other(QStringLiteral("pt_BR"));
    EXPECT_EQ(other.part<QComboBox>("studentLanguage").currentData().toString(), QStringLiteral("pt_BR"));
    other.part<QSpinBox>("studentExtra").setValue(30);
    other.save();
    ASSERT_EQ(other.edited.size(), 1U);
    EXPECT_EQ(other.edited.front().language, QStringLiteral("pt_BR"));
}

}  // namespace

}  // namespace student_dialog_test
