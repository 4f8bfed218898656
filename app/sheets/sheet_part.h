// One part of a sheet being edited: it shows its share of a sheet and writes that share, and nothing else,
// back. Whatever it is filled with it writes back unchanged.
#pragma once

#include <QWidget>

#include "core/session/sheet.h"

namespace fb {

class SheetPart : public QWidget {
    Q_OBJECT

public:
    using QWidget::QWidget;

    virtual void fill(const Sheet& sheet) = 0;  // without changed()
    // The fault of what is typed and cannot be written.
    [[nodiscard]] virtual Result<bool> writeTo(Sheet& sheet) const = 0;
    virtual void say() = 0;  // in the language of the program

Q_SIGNALS:
    void changed();
};

}  // namespace fb
