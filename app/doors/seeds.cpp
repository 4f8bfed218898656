#include "app/doors/seeds.h"

#include <QRandomGenerator>

namespace fb {

std::uint64_t SystemSeeds::fresh()
{
    constexpr quint32 kLowest = 10000;
    constexpr quint32 kEnd = 100000;
    return QRandomGenerator::global()->bounded(kLowest, kEnd);
}

}  // namespace fb
