// The screens of this machine, behind a door so that a test can plug and unplug them.
#pragma once

#include <QObject>
#include <QRect>
#include <QString>
#include <QVector>

namespace fb {

struct ScreenPlace {
    QString name;
    QRect geometry;  // device-independent pixels

    friend bool operator==(const ScreenPlace&, const ScreenPlace&) = default;
};

class Screens : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;
    [[nodiscard]] virtual QVector<ScreenPlace> all() const = 0;  // the main one first; never empty

Q_SIGNALS:
    void changed();  // plugged, unplugged, moved
};

class SystemScreens : public Screens {
    Q_OBJECT

public:
    explicit SystemScreens(QObject* parent = nullptr);
    [[nodiscard]] QVector<ScreenPlace> all() const override;
};

}  // namespace fb
