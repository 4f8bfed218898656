#include "app/checkoff/student_dialog.h"

#include <QComboBox>
#include <QEvent>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>
#include <utility>

#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/report/sheet_language.h"
#include "app/roster/roster.h"
#include "app/sheets/sheet_fields.h"
#include "app/words/check_off_words.h"

namespace fb {

StudentDialog::StudentDialog(Student student, QWidget* parent)
    : QDialog(parent),
      m_student(std::move(student)),
      m_title(parts::text(this, "studentName", "title")),
      m_about(parts::text(this, "studentAbout", "small")),
      m_extraName(parts::text(this, "studentExtraName")),
      m_extra(fields::whole(this, "studentExtra", 0, kMostExtraPercent)),
      m_languageName(parts::text(this, "studentLanguageName")),
      m_language(fields::choice(this, "studentLanguage")),
      m_hint(parts::text(this, "studentHint", "small")),
      m_back(parts::button(this, "studentBack")),
      m_save(parts::mainButton(this, "studentSave"))
{
    setObjectName(QStringLiteral("studentDialog"));
    constexpr int kStep = 5;
    m_extra->setSingleStep(kStep);
    m_extra->setValue(m_student.extraPercent);
    m_language->addItem({}, QString());
    QStringList languages = sheetLanguages();
    // What a roster asked for stays, known or not.
    if (!m_student.language.isEmpty() && !languages.contains(m_student.language))
        languages << m_student.language;
    for (const QString& each : languages)
        m_language->addItem(QLocale(each).nativeLanguageName(), each);
    m_language->setCurrentIndex(m_language->findData(m_student.language));
    layOut();
    connect(m_back, &QPushButton::clicked, this, &QDialog::reject);
    connect(m_save, &QPushButton::clicked, this, &StudentDialog::save);
    m_save->setDefault(true);
    say();
}

void StudentDialog::layOut()
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kMargin, space::kMargin, space::kMargin, space::kMargin);
    column->setSpacing(space::kNear);
    column->addWidget(m_title);
    column->addWidget(m_about);
    column->addSpacing(space::kNear);
    auto* agreed = new QWidget(this);
    fields::Lines lines(agreed);
    lines.add(m_extraName, m_extra);
    lines.add(m_languageName, m_language);
    lines.end();
    column->addWidget(agreed);
    column->addWidget(m_hint);
    column->addStretch(1);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(space::kNear);
    buttons->addStretch(1);
    buttons->addWidget(m_back);
    buttons->addWidget(m_save);
    column->addLayout(buttons);
    constexpr int kWidth = 540;
    setMinimumWidth(parts::scaled(this, kWidth));
}

void StudentDialog::say()
{
    setWindowTitle(tr("What is agreed with this student"));
    m_title->setText(fullName(m_student.given, m_student.family));
    m_about->setText(m_student.section.isEmpty() ? m_student.id
                                                 //: %1 is a student's id, %2 a section of the class.
                                                 : tr("%1, section %2").arg(m_student.id, m_student.section));
    fields::say(m_extraName, m_extra, tr("More time than the others"));
    //: After a number.
    m_extra->setSuffix(tr(" %"));
    fields::say(m_languageName, m_language, tr("Language of the feedback sheet"));
    //: The language of the feedback sheet is that of the program.
    m_language->setItemText(0, tr("The program's own"));
    m_hint->setText(tr("Both hold from the next check-off that is begun."));
    parts::say(m_back, tr("Back"));
    parts::say(m_save, tr("Save"));
}

void StudentDialog::save()
{
    Student agreed = m_student;
    agreed.extraPercent = m_extra->value();
    agreed.language = m_language->currentData().toString();
    if (agreed != m_student)
        Q_EMIT edited(agreed);
    accept();
}

void StudentDialog::changeEvent(QEvent* event)
{
    QDialog::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        say();
}

}  // namespace fb
