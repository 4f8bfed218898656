// The program's own window, opened as the program opens it, that tells when it is first painted
// and when the plate is drawn, and closes. The side is not asked first, so that a plate shows.
#include <QApplication>
#include <QTemporaryDir>
#include <QTimer>

#include "app/canvas/plate_view.h"
#include "app/shell/main_window.h"
#include "app/shell/services.h"
#include "app/store/profile_store.h"
#include "app/store/record_store.h"
#include "tests/bench/start_clock.h"

namespace fb::bench {

class PlainSettings : public Settings {
public:
    [[nodiscard]] Preferences load() const override
    {
        Preferences preferences;
        preferences.asksSide = false;
        return preferences;
    }
    void save(const Preferences&) override {}
};

// Tells when the window is first asked to paint itself, as the empty window does.
class FirstPaint : public QObject {
public:
    bool eventFilter(QObject* watched, QEvent* event) override
    {
        if (event->type() == QEvent::Paint) {
            watched->removeEventFilter(this);
            tellTime("first");
        }
        return false;
    }
};

class NoDialogs : public Dialogs {
public:
    [[nodiscard]] QString askPolicyFile(QWidget*) override { return {}; }
    [[nodiscard]] QString askRosterFile(QWidget*) override { return {}; }
    [[nodiscard]] QString askSheetFile(QWidget*) override { return {}; }
    [[nodiscard]] QString askMarksFile(QWidget*) override { return {}; }
    [[nodiscard]] QString askSaveFile(QWidget*, const QString&, SaveKind) override { return {}; }
    [[nodiscard]] QString askBackupFile(QWidget*, const QString&) override { return {}; }
};

}  // namespace fb::bench

int main(int argc, char** argv)
{
    using namespace fb::bench;
    QApplication application(argc, argv);
    PlainSettings settings;
    NoDialogs dialogs;
    fb::SystemSeeds seeds;
    // With the real store, in a folder of its own.
    const QTemporaryDir folder;
    fb::ProfileStore profiles(folder.filePath(QStringLiteral("data/profile.db")));
    fb::SystemClock clock;
    fb::RecordStore records(folder.filePath(QStringLiteral("data/records.db")), clock);
    fb::SystemScreens screens;
    fb::Services services({settings, dialogs, seeds, clock, profiles, records, screens});
    FirstPaint firstPaint;
    services.window().installEventFilter(&firstPaint);
    QObject::connect(&services.window(), &fb::MainWindow::firstPainted, [&services] {
        // The window is furnished by now: Services was told before this.
        auto* plate = services.window().findChild<fb::PlateView*>(QStringLiteral("plate"));
        if (plate == nullptr)
            return QCoreApplication::exit(1);
        QObject::connect(plate, &fb::PlateView::sharpened, plate, [&services, told = false]() mutable {
            if (told)
                return;
            told = true;
            tellTime("plate");
            QTimer::singleShot(0, &services.window(), &QWidget::close);
        });
    });
    services.window().show();
    return QApplication::exec();
}
