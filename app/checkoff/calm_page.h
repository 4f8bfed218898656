// A page that is read standing: few large words and at most three buttons in the middle of calm paper. Made
// by the pages that say something on it.
#pragma once

#include <QWidget>

class QHBoxLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace fb {

class CalmPage : public QWidget {
    Q_OBJECT

public:
    explicit CalmPage(const char* name, QWidget* parent = nullptr);

    // One under the other, in the order they are added; looks as in look/style.h.
    QLabel* addWords(const char* name, const char* look);
    void addPart(QWidget* part);             // under the words so far
    QPushButton* addMain(const char* name);  // beside one another, under the words
    QPushButton* addButton(const char* name);

protected:
    void changeEvent(QEvent* event) override;

private:
    QPushButton* place(QPushButton* button);
    void fit();

    QWidget* m_sheet;
    QVBoxLayout* m_words;
    QHBoxLayout* m_buttons;
};

}  // namespace fb
