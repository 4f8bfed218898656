// The reasons a learner may give for "not here", one to be chosen.
#pragma once

#include <QWidget>
#include <array>
#include <optional>

#include "core/session/finding.h"

class QLabel;
class QRadioButton;

namespace fb {

class RefusalPanel : public QWidget {
    Q_OBJECT

public:
    explicit RefusalPanel(QWidget* parent = nullptr);

    void clear();  // nothing chosen
    [[nodiscard]] std::optional<FindingCode> reason() const;
    void focusFirst();

Q_SIGNALS:
    void reasonChosen();

protected:
    void changeEvent(QEvent* event) override;

private:
    void say();

    QLabel* m_title;
    QLabel* m_hint;
    std::array<QRadioButton*, kFindingCodeCount> m_reasons{};
};

}  // namespace fb
