// What the program is, what it is not, where its numbers come from, and its licence.
#pragma once

#include <QDialog>

#include "core/policy/policy.h"

namespace fb {

class AboutDialog : public QDialog {
    Q_OBJECT

public:
    // Without a policy no sources are listed.
    AboutDialog(const Policy* policy, QWidget* parent);
};

}  // namespace fb
