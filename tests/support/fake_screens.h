// Screens that a test plugs and unplugs.
#pragma once

#include <algorithm>

#include "app/demonstrate/screens.h"

namespace fb::test {

inline const ScreenPlace kLaptop{QStringLiteral("laptop"), QRect(0, 0, 1280, 800)};
inline const ScreenPlace kProjector{QStringLiteral("projector"), QRect(1280, 0, 1024, 768)};
inline const ScreenPlace kThird{QStringLiteral("third"), QRect(0, 800, 1920, 1080)};

class FakeScreens : public Screens {
public:
    explicit FakeScreens(const QVector<ScreenPlace>& places = {kLaptop}) : m_places(places) {}
    [[nodiscard]] QVector<ScreenPlace> all() const override { return m_places; }

    void plug(const ScreenPlace& place)
    {
        m_places.append(place);
        Q_EMIT changed();
    }
    void unplug(const ScreenPlace& place)
    {
        m_places.removeAll(place);
        Q_EMIT changed();
    }

private:
    QVector<ScreenPlace> m_places;
};

}  // namespace fb::test
