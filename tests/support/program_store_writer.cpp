// Writes profiles to a store without end and says each hand length once it is kept, so that a test
// can end it at any moment. store_writer FILE FIRST REST, the last in milliseconds after each write.
#include <QCoreApplication>
#include <QThread>
#include <cstdio>
#include <cstdlib>

#include "app/store/profile_store.h"

int main(int argc, char** argv)
{
    QCoreApplication application(argc, argv);
    if (argc != 4)
        return 2;
    const auto rest = static_cast<unsigned long>(std::atoi(argv[3]));
    auto opened = fb::Store::open(QString::fromLocal8Bit(argv[1]));
    if (!opened)
        return 1;
    // 13.000 to 23.999 cm, in steps of a hundredth of a millimetre.
    constexpr int kLeast = 13000;
    constexpr int kSteps = 11000;
    constexpr double kThousandths = 1000.0;
    for (int i = std::atoi(argv[2]);; ++i) {
        const int length = kLeast + i % kSteps;
        fb::Profile profile;
        profile.handLength = fb::Cm{length / kThousandths};
        profile.sex = fb::Sex::Female;
        if (!fb::writeProfile(*opened->store, profile))
            return 3;
        std::printf("%d\n", length);
        std::fflush(stdout);
        if (rest > 0)
            QThread::msleep(rest);
    }
}
