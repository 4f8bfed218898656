// One record looked at: a heading above, the rest in a scroller. What it shows is made anew when the record,
// the language or the colours change.
#pragma once

#include <QWidget>

#include "app/look/palette.h"

class QScrollArea;

namespace fb {

class RecordView : public QWidget {
    Q_OBJECT

public:
    // scroll: the scroller's name.
    explicit RecordView(const char* scroll, QWidget* parent = nullptr);

    void setScheme(const Scheme& scheme);

protected:
    virtual void say() = 0;      // what stands there whatever the record
    virtual void rebuild() = 0;  // what is made of the record
    [[nodiscard]] virtual bool hasRecord() const = 0;
    void changeEvent(QEvent* event) override;

    [[nodiscard]] QScrollArea* scroller() const { return m_scroll; }
    [[nodiscard]] const Scheme& scheme() const { return m_scheme; }

private:
    QScrollArea* m_scroll;
    Scheme m_scheme;
};

}  // namespace fb
