#include "app/report/print_choice.h"

#include <QPrintDialog>
#include <QPrinter>
#include <QPrinterInfo>

namespace fb {

Result<bool> choosePrinter(QWidget* parent, const std::function<void(std::shared_ptr<QPrinter>)>& then)
{
    if (QPrinterInfo::availablePrinterNames().isEmpty())
        return fault(Problem::PrinterMissing);
    const auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
    auto* dialog = new QPrintDialog(printer.get(), parent);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    // The dialog looks at the printer until it is gone.
    QObject::connect(dialog, &QDialog::accepted, parent, [then, printer] { then(printer); });
    dialog->open();
    return true;
}

}  // namespace fb
