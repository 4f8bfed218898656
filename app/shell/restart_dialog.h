// Asks before a policy starts a run anew that has marks in it.
#pragma once

#include <QDialog>

class QLabel;
class QPushButton;

namespace fb {

class RestartDialog : public QDialog {
    Q_OBJECT

public:
    // The file that is to be used; empty: the shipped policy. Accepted: the run starts anew.
    RestartDialog(const QString& policyFile, QWidget* parent);

protected:
    void changeEvent(QEvent* event) override;

private:
    void say();

    QString m_file;
    QLabel* m_title;
    QLabel* m_question;
    QPushButton* m_keep;
    QPushButton* m_restart;
};

}  // namespace fb
