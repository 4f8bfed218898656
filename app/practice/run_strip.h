// The seed of the run, always in sight: it can be typed to replay a run, and a new run starts
// from here.
#pragma once

#include <QWidget>

#include "app/practice/practice_state.h"

class QLabel;
class QLineEdit;
class QPushButton;

namespace fb {

class RunStrip : public QWidget {
    Q_OBJECT

public:
    explicit RunStrip(QWidget* parent = nullptr);

    // What is being typed is left alone until it is asked for or the run changes.
    void showState(const PracticeState& state);
    void setTight(bool tight);  // without the word before the seed, and room for fewer of its digits
    void setReplayShown(bool shown);  // Enter in the seed does the same

Q_SIGNALS:
    void replayAsked(const QString& seed);
    void newRunAsked();

protected:
    void changeEvent(QEvent* event) override;

private:
    void say();

    void fit();

    bool m_tight = false;
    QLabel* m_name;
    QLineEdit* m_seed;
    QPushButton* m_replay;
    QPushButton* m_new;
    QString m_shownSeed;
};

}  // namespace fb
