#include "app/doors/dialogs.h"

#include <QCoreApplication>
#include <QFileDialog>

namespace fb {

QString SystemDialogs::askPolicyFile(QWidget* parent)
{
    //: The lab's own clinical numbers, a file.
    return QFileDialog::getOpenFileName(
        parent, QCoreApplication::translate("fb::Dialogs", "Choose a policy file"), {},
        QCoreApplication::translate("fb::Dialogs", "Policy files (*.json)"));
}

}  // namespace fb
