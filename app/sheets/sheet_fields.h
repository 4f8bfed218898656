// The fields a sheet is edited in: numbers with their borders and units, and times.
#pragma once

#include <QWidget>

class QCheckBox;
class QComboBox;
class QDoubleSpinBox;
class QGridLayout;
class QLabel;
class QSpinBox;

namespace fb::fields {

// A wheel turns them only where they have the focus: over them it scrolls the page.
[[nodiscard]] QSpinBox* whole(QWidget* parent, const char* name, int low, int high);
[[nodiscard]] QDoubleSpinBox* number(QWidget* parent, const char* name, double low, double high);
[[nodiscard]] QComboBox* choice(QWidget* parent, const char* name);
[[nodiscard]] QCheckBox* tick(QWidget* parent, const char* name);

// The data of the present entry, and back; an entry that is not there leaves the choice as it is.
[[nodiscard]] int chosen(const QComboBox* choice);
void choose(QComboBox* choice, int data);

// Minutes and seconds; nought is no limit, and says so.
class TimeField : public QWidget {
    Q_OBJECT

public:
    TimeField(const char* name, int mostSeconds, QWidget* parent);

    [[nodiscard]] int seconds() const;
    void setSeconds(int seconds);
    void say(const QString& what);  // for whom listens

Q_SIGNALS:
    void changed();

private:
    void showLimit();

    int m_most;
    QSpinBox* m_minutes;
    QSpinBox* m_seconds;
    QLabel* m_limit;
};

// Lays out a part of the editor: a name beside each field, line under line.
class Lines {
public:
    explicit Lines(QWidget* whole);

    void add(QWidget* name, QWidget* field);
    void across(QWidget* part);
    void rule();
    void end();  // room that is left stays below

private:
    QWidget* m_whole;
    QGridLayout* m_grid;
    int m_row = 0;
};

// What stands beside a field is its accessible name too.
void say(QLabel* name, QWidget* field, const QString& words);
void say(QLabel* name, TimeField* field, const QString& words);
void say(QCheckBox* box, const QString& words);

}  // namespace fb::fields
