// A backup that was chosen and looked into: what it holds and what would become of the present records,
// before a word is given.
#pragma once

#include <QWidget>

#include "app/records/records_state.h"

class QLabel;
class QPushButton;

namespace fb {

class PutBackPanel : public QWidget {
    Q_OBJECT

public:
    explicit PutBackPanel(QWidget* parent = nullptr);

    // Hidden where none is chosen and while long work is done. Newly shown it takes the keys, at the way
    // back.
    void showState(const RecordsState& state);
    void say();

Q_SIGNALS:
    void accepted();
    void rejected();

private:
    QLabel* m_file;
    QLabel* m_holds;
    QLabel* m_means;
    QPushButton* m_accept;
    QPushButton* m_reject;
};

}  // namespace fb
