#include "app/doors/dialogs.h"

#include <QCoreApplication>
#include <QFileDialog>

namespace fb {

struct DialogsWords {
    Q_DECLARE_TR_FUNCTIONS(fb::Dialogs)
};

namespace dialogs_detail {

QString filterOf(SaveKind kind)
{
    switch (kind) {
    case SaveKind::Csv: return DialogsWords::tr("Tables (*.csv)");
    case SaveKind::Json: return DialogsWords::tr("JSON files (*.json)");
    case SaveKind::Pdf: return DialogsWords::tr("PDF files (*.pdf)");
    case SaveKind::Svg: return DialogsWords::tr("SVG drawings (*.svg)");
    case SaveKind::Png: return DialogsWords::tr("PNG pictures (*.png)");
    case SaveKind::Records: return DialogsWords::tr("Records (*.db)");
    }
    return {};
}

QString titleOf(SaveKind kind)
{
    switch (kind) {
    case SaveKind::Csv:
    case SaveKind::Json: return DialogsWords::tr("Save the file as");
    case SaveKind::Pdf: return DialogsWords::tr("Save as PDF");
    case SaveKind::Svg:
    case SaveKind::Png: return DialogsWords::tr("Save the picture as");
    case SaveKind::Records: return DialogsWords::tr("Save the backup as");
    }
    return {};
}

}  // namespace dialogs_detail

QString endingOf(SaveKind kind)
{
    switch (kind) {
    case SaveKind::Csv: return QStringLiteral("csv");
    case SaveKind::Json: return QStringLiteral("json");
    case SaveKind::Pdf: return QStringLiteral("pdf");
    case SaveKind::Svg: return QStringLiteral("svg");
    case SaveKind::Png: return QStringLiteral("png");
    case SaveKind::Records: return QStringLiteral("db");
    }
    return {};
}

QString SystemDialogs::askPolicyFile(QWidget* parent)
{
    //: The lab's own clinical numbers, a file.
    return QFileDialog::getOpenFileName(parent, DialogsWords::tr("Choose a policy file"), {},
                                        DialogsWords::tr("Policy files (*.json)"));
}

QString SystemDialogs::askRosterFile(QWidget* parent)
{
    //: The list of students, a file.
    return QFileDialog::getOpenFileName(parent, DialogsWords::tr("Choose a roster"), {},
                                        DialogsWords::tr("Rosters (*.csv *.tsv *.txt)"));
}

QString SystemDialogs::askSheetFile(QWidget* parent)
{
    //: What a check-off asks, a file.
    return QFileDialog::getOpenFileName(parent, DialogsWords::tr("Choose a sheet"), {},
                                        DialogsWords::tr("Sheets (*.json)"));
}

QString SystemDialogs::askMarksFile(QWidget* parent)
{
    //: Points on the body that learners have named, a file.
    return QFileDialog::getOpenFileName(parent, DialogsWords::tr("Choose a file of marks"), {},
                                        DialogsWords::tr("Tables (*.csv)"));
}

QString SystemDialogs::askSaveFile(QWidget* parent, const QString& suggestedName, SaveKind kind)
{
    using namespace dialogs_detail;
    QFileDialog dialog(parent, titleOf(kind), {}, filterOf(kind));
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    // The ending is added before the system asks whether to write over a file.
    dialog.setDefaultSuffix(endingOf(kind));
    dialog.selectFile(suggestedName);
    if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty())
        return {};
    return dialog.selectedFiles().constFirst();
}

QString SystemDialogs::askBackupFile(QWidget* parent, const QString& folder)
{
    return QFileDialog::getOpenFileName(parent, DialogsWords::tr("Choose a backup"), folder,
                                        dialogs_detail::filterOf(SaveKind::Records));
}

}  // namespace fb
