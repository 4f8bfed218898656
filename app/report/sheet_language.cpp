#include "app/report/sheet_language.h"

#include <QDir>
#include <QEvent>
#include <QGuiApplication>
#include <QThread>
#include <QTranslator>
#include <condition_variable>
#include <memory>
#include <mutex>

namespace fb {

namespace sheet_language_detail {

using Work = std::function<void(Qt::LayoutDirection)>;

// Answers for every text, so that the window's language never shows through: English has no words of its
// own beside the source's.
class WholeLanguage : public QTranslator {
public:
    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char* context, const char* source, const char* comment,
                                    int n) const override
    {
        const QString words = QTranslator::translate(context, source, comment, n);
        return words.isNull() ? QString::fromUtf8(source) : words;
    }
};

// Keeps from the windows that a translator comes and goes.
class Unheard : public QObject {
public:
    bool eventFilter(QObject*, QEvent* event) override { return event->type() == QEvent::LanguageChange; }
};

void inWindowsThread(const QString& name, const Work& work)
{
    WholeLanguage words;
    const QLocale locale(name);
    if (name.isEmpty() ||
        !words.load(locale, QStringLiteral("fingerbreadth"), QStringLiteral("_"), QStringLiteral(":/i18n"))) {
        work(QGuiApplication::layoutDirection());
        return;
    }
    const QLocale before;
    Unheard unheard;
    QCoreApplication::instance()->installEventFilter(&unheard);
    QCoreApplication::installTranslator(&words);
    QLocale::setDefault(locale);
    work(locale.textDirection());
    QLocale::setDefault(before);
    QCoreApplication::removeTranslator(&words);
    QCoreApplication::instance()->removeEventFilter(&unheard);
}

// Who comes first takes the work: the window's thread, or the asker that has waited long enough.
struct Errand {
    std::mutex mutex;
    std::condition_variable ended;
    bool taken = false;
    bool done = false;

    [[nodiscard]] bool take()
    {
        const std::lock_guard lock(mutex);
        return !std::exchange(taken, true);
    }
};

}  // namespace sheet_language_detail

void inLanguage(const QString& name, const std::function<void(Qt::LayoutDirection)>& work)
{
    using namespace sheet_language_detail;
    constexpr auto kLongest = std::chrono::seconds(2);
    QCoreApplication* application = QCoreApplication::instance();
    if (QThread::currentThread() == application->thread())
        return inWindowsThread(name, work);
    const auto errand = std::make_shared<Errand>();
    QMetaObject::invokeMethod(
        application,
        [errand, name, &work] {
            if (!errand->take())
                return;
            inWindowsThread(name, work);
            const std::lock_guard lock(errand->mutex);
            errand->done = true;
            errand->ended.notify_all();
        },
        Qt::QueuedConnection);
    std::unique_lock lock(errand->mutex);
    errand->ended.wait_for(lock, kLongest, [&] { return errand->done || errand->taken; });
    if (errand->taken) {
        errand->ended.wait(lock, [&] { return errand->done; });
        return;
    }
    errand->taken = true;
    lock.unlock();
    work(QGuiApplication::layoutDirection());
}

QStringList sheetLanguages()
{
    const QString before = QStringLiteral("fingerbreadth_");
    QStringList names;
    for (const QString& file : QDir(QStringLiteral(":/i18n")).entryList({before + QStringLiteral("*.qm")}))
        names << file.mid(before.size()).chopped(3);
    return names;
}

}  // namespace fb
