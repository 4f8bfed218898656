// What the program is, what it is not, where its numbers come from, and its licence.
#pragma once

#include <QDialog>
#include <optional>

#include "core/policy/policy.h"

class QLabel;
class QPushButton;
class QTextBrowser;

namespace fb {

class AboutDialog : public QDialog {
    Q_OBJECT

public:
    // Without a policy no sources are listed.
    AboutDialog(const Policy* policy, QWidget* parent);

protected:
    void changeEvent(QEvent* event) override;

private:
    void layOut();
    void say();

    std::optional<Policy> m_policy;
    QLabel* m_title;
    QLabel* m_version;
    QLabel* m_purpose;
    QLabel* m_caution;
    QLabel* m_licence;
    QTextBrowser* m_sources = nullptr;
    QPushButton* m_close;
};

}  // namespace fb
