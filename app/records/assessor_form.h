// Enrols an assessor: a name, and the PIN twice. Enter goes on to what is still empty and then gives. What
// was typed stays when something is wrong with it, but for the PINs.
#pragma once

#include <QWidget>

class QLabel;
class QLineEdit;
class QPushButton;

namespace fb {

class AssessorForm : public QWidget {
    Q_OBJECT

public:
    explicit AssessorForm(QWidget* parent = nullptr);

    void setAction(const QString& words);
    void setBusy(bool busy);
    void clear();
    void focusFirst();

Q_SIGNALS:
    void given(const QString& name, const QString& pin, const QString& again);
    void edited();

protected:
    void changeEvent(QEvent* event) override;

private:
    void layOut();
    void say();
    void goOn();
    void give();

    QLabel* m_nameName;
    QLineEdit* m_name;
    QLabel* m_pinName;
    QLineEdit* m_pin;
    QLabel* m_againName;
    QLineEdit* m_again;
    QLabel* m_hint;
    QPushButton* m_action;
    QString m_words;
};

}  // namespace fb
