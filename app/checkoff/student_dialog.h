// What is agreed with one student: more time, and the language of the feedback sheet. Id, name and section
// are the roster's.
#pragma once

#include <QDialog>

#include "app/doors/records.h"

class QComboBox;
class QLabel;
class QPushButton;
class QSpinBox;

namespace fb {

class StudentDialog : public QDialog {
    Q_OBJECT

public:
    explicit StudentDialog(Student student, QWidget* parent);

Q_SIGNALS:
    void edited(const fb::Student& student);  // only when something changed

protected:
    void changeEvent(QEvent* event) override;

private:
    void layOut();
    void say();
    void save();

    Student m_student;
    QLabel* m_title;
    QLabel* m_about;
    QLabel* m_extraName;
    QSpinBox* m_extra;
    QLabel* m_languageName;
    QComboBox* m_language;
    QLabel* m_hint;
    QPushButton* m_back;
    QPushButton* m_save;
};

}  // namespace fb
