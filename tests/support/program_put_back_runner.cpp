// Puts one backup back after the other without end, so that a test can end it at any moment.
// put_back_runner FILE BACKUP OTHER-BACKUP
//
// Says "began" before and "done" after each. Ends with a code of its own when one is refused.
#include <QCoreApplication>
#include <cstdio>
#include <cstdlib>

#include "app/store/record_store.h"

namespace {

using namespace fb;

enum Refused { kArguments = 2, kPutBack };

class Runner : public QObject {
public:
    explicit Runner(const QStringList& files) : m_files(files), m_store(files[1], m_clock) { next(); }

private:
    static void say(const char* words)
    {
        std::puts(words);
        std::fflush(stdout);
    }
    void next()
    {
        say("began");
        // The first assessor of either backup.
        m_store.putBack(m_files[2 + m_done % 2], Proof{{1, QStringLiteral("First Assessor")}},
                        std::make_shared<LongWork>(), this, [this](const Result<PutBack>& done) {
                            if (!done)
                                std::_Exit(kPutBack);
                            say("done");
                            ++m_done;
                            next();
                        });
    }

    const QStringList m_files;
    int m_done = 0;
    SystemClock m_clock;
    RecordStore m_store;
};

}  // namespace

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    constexpr int kArgumentsWanted = 4;
    if (arguments.size() != kArgumentsWanted)
        return kArguments;
    const Runner runner(arguments);
    return QCoreApplication::exec();
}
