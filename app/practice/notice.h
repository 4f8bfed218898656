// A calm notice in the page: one clear sentence of what went wrong, until it is put away.
#pragma once

#include <QWidget>
#include <optional>

#include "app/look/palette.h"
#include "core/basics/problem.h"

class QLabel;
class QPushButton;

namespace fb {

class Notice : public QWidget {
    Q_OBJECT

public:
    explicit Notice(QWidget* parent = nullptr);

    void showFault(const std::optional<Fault>& fault);  // none: hidden
    void setScheme(const Scheme& scheme);

Q_SIGNALS:
    void dismissed();
    void spoke(const QString& words);  // to a screen reader

private:
    QLabel* m_icon;
    QLabel* m_sentence;
    QPushButton* m_close;
};

}  // namespace fb
