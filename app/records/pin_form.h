// A name and its PIN with the button they open or sign by. After a wrong PIN the field is empty and has the
// focus again; while the next try has to wait it says how long.
#pragma once

#include <QWidget>
#include <vector>

#include "app/doors/records.h"

class QLabel;
class QPushButton;

namespace fb {

class PinField;

class PinForm : public QWidget {
    Q_OBJECT

public:
    // The name begins the names of its parts, so that two forms can be told apart.
    explicit PinForm(const char* name, QWidget* parent = nullptr);

    void setAssessors(const std::vector<Assessor>& assessors);  // keeps the chosen one, else the first
    void setAction(const QString& words);
    void choose(qint64 assessor);
    void setBusy(bool busy);
    void setHeld(int seconds);  // 0: may be tried
    void clear();               // the PIN
    void focusFirst();          // whoever is chosen: the PIN
    [[nodiscard]] bool isBlank() const;

Q_SIGNALS:
    void given(qint64 assessor, const QString& pin);

protected:
    void changeEvent(QEvent* event) override;

private:
    void say();
    void give();
    void enable();

    PinField* m_field;
    QPushButton* m_action;
    QLabel* m_wait;
    QString m_words;
    int m_held = 0;
    bool m_busy = false;
};

}  // namespace fb
