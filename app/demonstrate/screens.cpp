#include "app/demonstrate/screens.h"

#include <QGuiApplication>
#include <QScreen>

namespace fb {

// Queued: a screen that goes is told of while it is still half there.
SystemScreens::SystemScreens(QObject* parent) : Screens(parent)
{
    const auto watch = [this](QScreen* screen) {
        connect(screen, &QScreen::geometryChanged, this, &Screens::changed, Qt::QueuedConnection);
    };
    for (QScreen* screen : QGuiApplication::screens())
        watch(screen);
    connect(qGuiApp, &QGuiApplication::screenAdded, this, watch);
    connect(qGuiApp, &QGuiApplication::screenAdded, this, &Screens::changed, Qt::QueuedConnection);
    connect(qGuiApp, &QGuiApplication::screenRemoved, this, &Screens::changed, Qt::QueuedConnection);
    connect(qGuiApp, &QGuiApplication::primaryScreenChanged, this, &Screens::changed, Qt::QueuedConnection);
}

QVector<ScreenPlace> SystemScreens::all() const
{
    QVector<ScreenPlace> places;
    for (const QScreen* screen : QGuiApplication::screens()) {
        const ScreenPlace place{screen->name(), screen->geometry()};
        if (screen == QGuiApplication::primaryScreen())
            places.prepend(place);
        else
            places.append(place);
    }
    if (places.isEmpty())
        places.append(ScreenPlace{});
    return places;
}

}  // namespace fb
